package lodeswing.analysis.basin;

import java.util.function.DoubleConsumer;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.ParallelOutcomes;
import lodeswing.core.outcome.SharedFinder;

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
    Ends ends = new ParallelOutcomes(finder).find(grid.count(), grid, progress);
    int restPoints = landscape.restPoints().list().size();
    short[] index = new short[grid.count()];
    float[] sealedAt = new float[grid.count()];
    for (int i = 0; i < index.length; i++) {
      index[i] = (short) SpecialEnd.index(ends.end(i), restPoints);
      sealedAt[i] = (float) ends.sealedAt(i);
    }
    return new BasinMap(grid.width(), grid.height(), restPoints, index, sealedAt);
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
