package lodeswing.analysis.field;

import lodeswing.core.field.BobPath;
import lodeswing.core.field.FieldSources;
import lodeswing.core.field.Surface;
import lodeswing.core.field.SurfaceField;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.rig.BenchLayout;

/**
 * The field of a plate's magnets, the bob's own left out.
 *
 * @param layout the rig
 * @param magnets its plate's magnets with their images
 * @param sources the same for lanes
 */
public record PlateField(BenchLayout layout, MagnetArray magnets, FieldSources sources) {

  /** Detail of a field without extended magnets [m]. */
  private static final double USUAL_DETAIL = 1e-3;

  /** The field of a rig. */
  public static PlateField of(BenchLayout layout) {
    MagnetArray magnets = new MagnetArray(layout.magnets(), layout.backing());
    return new PlateField(layout, magnets, new FieldSources(magnets));
  }

  /** Highest top of a magnet [m]; 0 without magnets. */
  public double highestTop() {
    return layout.magnets().stream()
        .mapToDouble(placed -> placed.centre().z() + placed.magnet().halfHeight())
        .reduce(Math::max)
        .orElse(0);
  }

  /** Half of the least extent of a magnet, the scale on which the field may change [m]. */
  double detail() {
    return layout.magnets().stream()
        .map(PlacedMagnet::magnet)
        .mapToDouble(magnet -> Math.min(magnet.planRadius(), magnet.halfHeight()))
        .filter(size -> size > 0)
        .min()
        .orElse(USUAL_DETAIL);
  }

  /** The surface at a height. */
  public Surface level(double height) {
    return Surface.level(height);
  }

  /** The surface on which the bob magnet's centre moves. */
  public Surface bobPath() {
    return new BobPath(layout);
  }

  /** The field along a surface as a function of the plan. */
  public SurfaceField along(Surface surface) {
    return new SurfaceField(sources, surface, detail());
  }
}
