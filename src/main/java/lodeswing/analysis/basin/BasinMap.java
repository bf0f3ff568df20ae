package lodeswing.analysis.basin;

import java.util.function.DoubleConsumer;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.landscape.MirrorSymmetry;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.ParallelOutcomes;
import lodeswing.core.outcome.SharedFinder;
import lodeswing.core.window.PixelGrid;

/**
 * Where the release from each pixel ends, and from when that was certain.
 *
 * <p>Owns its arrays, row by row from the top. Indices are those of the rest points, then of {@link
 * SpecialEnd}.
 */
public final class BasinMap {

  private final int width;
  private final int height;
  private final int restPoints;
  private final short[] index;
  private final float[] sealedAt;
  private final float[] settledAt;

  /**
   * A map of given arrays.
   *
   * @param width columns
   * @param height rows
   * @param restPoints how many rest points the layout has
   * @param index end of each pixel, kept
   * @param sealedAt when it was certain, NaN where it never was, kept
   */
  public BasinMap(int width, int height, int restPoints, short[] index, float[] sealedAt) {
    if (index.length != width * height || sealedAt.length != index.length) {
      throw new IllegalArgumentException("a map has one entry a pixel");
    }
    this.width = width;
    this.height = height;
    this.restPoints = restPoints;
    this.index = index;
    this.sealedAt = sealedAt;
    this.settledAt = new float[0];
  }

  private BasinMap(BasinMap sealed, float[] settledAt) {
    this.width = sealed.width;
    this.height = sealed.height;
    this.restPoints = sealed.restPoints;
    this.index = sealed.index;
    this.sealedAt = sealed.sealedAt;
    this.settledAt = settledAt;
  }

  /**
   * The same map with settling times.
   *
   * @param settledAt when the bob of each pixel had settled, NaN where it never did, kept
   */
  public BasinMap settling(float[] settledAt) {
    if (settledAt.length != index.length) {
      throw new IllegalArgumentException("a map has one entry a pixel");
    }
    return new BasinMap(this, settledAt);
  }

  /**
   * Computes a map on all cores.
   *
   * @param landscape the layout made ready
   * @param grid its pixels
   * @param finder finds the ends over that landscape
   * @param progress told the fraction done; may throw to end the work
   */
  public static BasinMap of(
      Landscape landscape, PixelGrid grid, SharedFinder finder, DoubleConsumer progress) {
    return sealed(landscape, grid, ends(grid, finder, progress));
  }

  /**
   * Computes a map with settling times on all cores.
   *
   * @param landscape the layout made ready
   * @param grid its pixels
   * @param finder finds ends and settling times over that landscape
   * @param progress told the fraction done; may throw to end the work
   */
  public static BasinMap ofSettling(
      Landscape landscape, PixelGrid grid, SharedFinder finder, DoubleConsumer progress) {
    Ends ends = ends(grid, finder, progress);
    float[] settledAt = new float[grid.count()];
    for (int i = 0; i < settledAt.length; i++) {
      settledAt[i] = (float) ends.settledAt(i);
    }
    return sealed(landscape, grid, ends).settling(settledAt);
  }

  private static Ends ends(PixelGrid grid, SharedFinder finder, DoubleConsumer progress) {
    return new ParallelOutcomes(finder).find(grid.count(), grid, progress);
  }

  private static BasinMap sealed(Landscape landscape, PixelGrid grid, Ends ends) {
    int restPoints = landscape.restPoints().list().size();
    short[] index = new short[grid.count()];
    float[] sealedAt = new float[grid.count()];
    for (int i = 0; i < index.length; i++) {
      index[i] = (short) SpecialEnd.index(ends.end(i), restPoints);
      sealedAt[i] = (float) ends.sealedAt(i);
    }
    return new BasinMap(grid.width(), grid.height(), restPoints, index, sealedAt);
  }

  /**
   * The map of the mirror image of this one's window, which to the bit is what computing it anew
   * would give.
   *
   * @param symmetry the layout's mirrors
   * @param x whether x is turned to -x
   * @param y whether y is turned to -y
   */
  public BasinMap mirrored(MirrorSymmetry symmetry, boolean x, boolean y) {
    short[] turned = new short[index.length];
    float[] sealed = new float[index.length];
    float[] settled = new float[settledAt.length];
    for (int row = 0; row < height; row++) {
      for (int column = 0; column < width; column++) {
        int from = (y ? height - 1 - row : row) * width + (x ? width - 1 - column : column);
        int to = row * width + column;
        int number = index[from] & 0xffff;
        turned[to] = number < restPoints ? (short) symmetry.unfold(number, x, y) : index[from];
        sealed[to] = sealedAt[from];
        if (settles()) {
          settled[to] = settledAt[from];
        }
      }
    }
    BasinMap map = new BasinMap(width, height, restPoints, turned, sealed);
    return settles() ? map.settling(settled) : map;
  }

  /** Columns. */
  public int width() {
    return width;
  }

  /** Rows. */
  public int height() {
    return height;
  }

  /** How many rest points the layout has; indices from here on are those of special ends. */
  public int restPoints() {
    return restPoints;
  }

  /** The end of a pixel, rows counted from the top. */
  public int index(int column, int row) {
    return index[row * width + column] & 0xffff;
  }

  /** When a pixel's end was certain; NaN where it never was. */
  public float sealedAt(int column, int row) {
    return sealedAt[row * width + column];
  }

  /** Whether it has settling times. */
  public boolean settles() {
    return settledAt.length > 0;
  }

  /**
   * When a pixel's bob had settled; NaN where it never did.
   *
   * @throws IndexOutOfBoundsException where the map has no settling times
   */
  public float settledAt(int column, int row) {
    return settledAt[row * width + column];
  }

  /** The end of each pixel, row by row from the top, as {@link Ends} codes it. */
  public int[] ends() {
    int[] ends = new int[index.length];
    for (int i = 0; i < ends.length; i++) {
      int number = index[i] & 0xffff;
      ends[i] = number < restPoints ? number : SpecialEnd.at(number - restPoints).code();
    }
    return ends;
  }

  /** How many pixels each index has, special ends included. */
  public int[] counts() {
    int[] counts = new int[restPoints + SpecialEnd.values().length];
    for (short i : index) {
      counts[i & 0xffff]++;
    }
    return counts;
  }
}
