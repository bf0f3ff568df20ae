package lodeswing.analysis.basin;

import java.util.OptionalInt;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.Release;
import lodeswing.core.window.BasinWindow;
import lodeswing.core.window.PixelGrid;

/**
 * What a map of a window names as the end of one release, without the map.
 *
 * <p>A map's tolerance follows its pixel, so that it may name another end than a trace, which is
 * computed more exactly. A release from a pixel's centre gets that pixel's label to the bit: a
 * place that differs from a centre by no more than what units are converted by counts as there.
 */
public final class MapLabel {

  /** Part of a pixel within which a place is a centre. */
  private static final double AT_CENTRE = 1e-6;

  private final Landscape landscape;
  private final PixelGrid grid;
  private final BasinWindow window;

  /**
   * Labels of a map.
   *
   * @param landscape the layout made ready
   * @param window what the map shows
   * @param side how many pixels it has along a side
   */
  public MapLabel(Landscape landscape, BasinWindow window, int side) {
    this.landscape = landscape;
    this.window = window;
    this.grid = PixelGrid.tile(window, 0, 0, 0, side);
  }

  /**
   * The end of a release as {@link Ends} codes it; empty where the map does not show it: outside
   * the window, or with a push.
   *
   * @param finders find the ends of releases
   * @param longest how long a release is followed at most
   */
  public OptionalInt of(Release release, OutcomeFinders finders, double longest) {
    double column = Math.floor((release.x() - grid.left()) / grid.pixel());
    double row = Math.floor((grid.top() - release.y()) / grid.pixel());
    boolean shown = column >= 0 && column < grid.width() && row >= 0 && row < grid.height();
    if (!shown || release.vx() != 0 || release.vy() != 0) {
      return OptionalInt.empty();
    }
    double x = nearby(release.x(), grid.x((int) column));
    double y = nearby(release.y(), grid.y((int) row));
    Ends ends = new Ends(1);
    finders
        .of(landscape, window.tolerance(landscape, grid.pixel()), longest)
        .find(new double[] {x, y, 0, 0}, 0, 1, ends);
    return OptionalInt.of(ends.end(0));
  }

  private double nearby(double place, double centre) {
    return Math.abs(place - centre) <= AT_CENTRE * grid.pixel() ? centre : place;
  }
}
