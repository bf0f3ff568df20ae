package lodeswing.core.field;

/**
 * Where the numbers of a block of points lie: one array of slots, each slot one number of every
 * point.
 *
 * <p>Slot s of point i lies at {@code s + i}, slots being multiples of {@link #POINTS}. What the
 * series of a far source needs lies where a near one has its faces: no source is both in one pass.
 */
public final class FieldSlots {

  /**
   * Points of a block: a square of eight by eight of a grid; 16 kB of slots, half a first cache.
   */
  public static final int POINTS = 64;

  /** Place [m]: x, y, z in three slots. */
  public static final int X = 0;

  public static final int Y = POINTS;
  public static final int Z = 2 * POINTS;

  /** Flux density [T]: x, y, z in three slots. */
  public static final int BX = 3 * POINTS;

  public static final int BY = 4 * POINTS;
  public static final int BZ = 5 * POINTS;

  /** Place from the source's centre: x, y, z, distance from the axis, square of the distance. */
  public static final int DX = 6 * POINTS;

  public static final int DY = 7 * POINTS;
  public static final int DZ = 8 * POINTS;
  public static final int RHO = 9 * POINTS;
  public static final int R2 = 10 * POINTS;

  /** First slot of the upper face; of the lower face. */
  public static final int UPPER = 11 * POINTS;

  public static final int LOWER = 21 * POINTS;

  /** Within a face: the mean, both its partners, the characteristic, both pairs of numerators. */
  public static final int MEAN = 0;

  public static final int PARTNER = POINTS;
  public static final int PRODUCT = 2 * POINTS;
  public static final int CHARACTER = 3 * POINTS;
  public static final int AXIAL_A = 4 * POINTS;
  public static final int AXIAL_B = 5 * POINTS;
  public static final int RADIAL_A = 6 * POINTS;
  public static final int RADIAL_B = 7 * POINTS;

  /** Within a face: height over it by the greatest distance from the edge, and 1 by that. */
  public static final int AXIAL = 8 * POINTS;

  public static final int RADIAL = 9 * POINTS;

  /** Of a series: q, q u^2, q^2, and the last two of both backward recurrences. */
  public static final int Q = 11 * POINTS;

  public static final int QU = 12 * POINTS;
  public static final int QQ = 13 * POINTS;
  public static final int EVEN = 14 * POINTS;
  public static final int EVEN_BEFORE = 15 * POINTS;
  public static final int SLOPE = 16 * POINTS;
  public static final int SLOPE_BEFORE = 17 * POINTS;

  /** Numbers in a block. */
  public static final int COUNT = 31 * POINTS;

  private FieldSlots() {}
}
