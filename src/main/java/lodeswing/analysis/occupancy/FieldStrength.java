package lodeswing.analysis.occupancy;

import java.util.Optional;
import lodeswing.core.field.BobPath;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;

/**
 * How strong the field of the plate's magnets is where the bob magnet's centre passes.
 *
 * <p>On the bench the flux density of all magnets [T]. In a textbook layout that of the point poles
 * whose pull in the plane the model takes for its force: sum of k_i (X_i - x, Y_i - y, h)/(|r -
 * R_i|^2 + h^2)^(3/2), whose size is a plain number.
 */
public final class FieldStrength {

  private final Layout layout;
  private final Optional<BobPath> path;
  private final Optional<MagnetArray> magnets;

  /** The field of a layout along the places that a motion allows. */
  public FieldStrength(Layout layout, Motion motion) {
    this.layout = layout;
    this.path =
        layout instanceof BenchLayout bench
            ? Optional.of(new BobPath(bench, motion))
            : Optional.empty();
    this.magnets =
        layout instanceof BenchLayout bench
            ? Optional.of(new MagnetArray(bench.magnets(), bench.backing()))
            : Optional.empty();
  }

  /** The strength above a place of the plan; NaN where the bob cannot hang. */
  public double at(double x, double y) {
    double[] field = new double[3];
    if (layout instanceof TextbookLayout textbook) {
      plane(textbook, x, y, field);
    } else {
      double z = path.orElseThrow().height(x, y);
      if (Double.isNaN(z)) {
        return Double.NaN;
      }
      magnets.orElseThrow().field(x, y, z, field);
    }
    return Math.sqrt(field[0] * field[0] + field[1] * field[1] + field[2] * field[2]);
  }

  private static void plane(TextbookLayout layout, double x, double y, double[] field) {
    double height = layout.height();
    for (TextbookLayout.Attractor magnet : layout.magnets()) {
      double dx = magnet.x() - x;
      double dy = magnet.y() - y;
      double square = dx * dx + dy * dy + height * height;
      double scale = magnet.strength() / (square * Math.sqrt(square));
      field[0] += scale * dx;
      field[1] += scale * dy;
      field[2] += scale * height;
    }
  }
}
