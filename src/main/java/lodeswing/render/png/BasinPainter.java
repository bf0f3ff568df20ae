package lodeswing.render.png;

import lodeswing.analysis.basin.BasinMap;
import lodeswing.core.window.PixelGrid;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Pattern;
import lodeswing.figure.Tint;
import lodeswing.render.Palette;

/**
 * Paints maps of where releases end: colour for the end, lightness for how late it was certain.
 *
 * <p>The depth of a shade is t^2/(t^2 + half time^2): 0 for what is certain at the release, 1/2 at
 * the window's median, near 1 for what is decided late. Patterns are counted from the window's
 * corner, so that tiles fit together.
 */
public final class BasinPainter {

  /** Steps of lightness. */
  private static final int LEVELS = 32;

  private final BasinMap map;
  private final double halfTime;
  private final boolean patterns;
  private final int[] colours;

  /**
   * A painter of a map.
   *
   * @param map where releases end
   * @param halfTime when shading is halfway, positive
   * @param patterns whether every end has its pattern, not only those that share a colour
   */
  public BasinPainter(BasinMap map, double halfTime, boolean patterns) {
    this.map = map;
    this.halfTime = halfTime;
    this.patterns = patterns;
    this.colours = new int[map.counts().length * LEVELS * 2];
    java.util.Arrays.fill(colours, -1);
  }

  /** The pattern that the index of an end is drawn with. */
  public static Pattern pattern(int index, int restPoints, boolean patterns) {
    if (index >= restPoints) {
      return Palette.neutralPattern(index - restPoints);
    }
    return patterns ? Palette.hatch(index) : Palette.pattern(index);
  }

  /** The tint of the index of an end. */
  public static Tint tint(int index, int restPoints, double depth, boolean ink) {
    return index >= restPoints
        ? new Tint.Neutral(index - restPoints, ink)
        : new Tint.Shade(index, depth, ink);
  }

  /** The map as a PNG file. */
  public byte[] png(PixelGrid grid) {
    return RasterWriter.write(pixels(grid), map.width(), map.height());
  }

  /** The map as a PNG file with its text in it. */
  public byte[] png(PixelGrid grid, AlternativeText text) {
    return PngText.added(png(grid), text);
  }

  private int[] pixels(PixelGrid grid) {
    Pattern[] byIndex = new Pattern[map.counts().length];
    for (int i = 0; i < byIndex.length; i++) {
      byIndex[i] = pattern(i, map.restPoints(), patterns);
    }
    int left = phase(grid.firstColumn());
    int top = phase(grid.firstRow());
    int[] pixels = new int[map.width() * map.height()];
    for (int row = 0; row < map.height(); row++) {
      for (int column = 0; column < map.width(); column++) {
        int index = map.index(column, row);
        boolean ink = byIndex[index].inked(left + column, top + row);
        pixels[row * map.width() + column] = colour(index, level(map.sealedAt(column, row)), ink);
      }
    }
    return pixels;
  }

  private static int phase(double first) {
    return (int) Math.floorMod((long) Math.floor(first), (long) Pattern.PERIOD);
  }

  private int level(float time) {
    double ratio = time / halfTime;
    double depth = time >= 0 ? ratio * ratio / (ratio * ratio + 1) : 1;
    return Math.min(LEVELS - 1, (int) (depth * LEVELS));
  }

  private int colour(int index, int level, boolean ink) {
    int key = (index * LEVELS + level) * 2 + (ink ? 1 : 0);
    if (colours[key] < 0) {
      double depth = (level + 0.5) / LEVELS;
      colours[key] = Palette.colour(tint(index, map.restPoints(), depth, ink)).packed();
    }
    return colours[key];
  }
}
