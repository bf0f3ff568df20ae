package lodeswing.core.outcome;

import java.util.Arrays;
import lodeswing.core.landscape.MirrorSymmetry;

/**
 * How many releases ended, one entry a release; filled by an {@link OutcomeFinder}.
 *
 * <p>An end is the index of a rest point, 0 or above, or one of the negative codes of this class.
 * Several threads may write different entries at once.
 */
public final class Ends {

  /** The outcome was not certain when the longest time was over. */
  public static final int UNSETTLED = -1;

  /** The bob cannot be let go there: beyond the angles, in a magnet, or with a slack support. */
  public static final int CANNOT_START = -2;

  /** The bob touched a magnet of the plate. */
  public static final int MAGNET_CONTACT = -3;

  /** The bob touched the plate. */
  public static final int PLATE_CONTACT = -4;

  /** The support no longer pulled. */
  public static final int SUSPENSION_SLACK = -5;

  /** An angle left the allowed range. */
  public static final int ANGLE_LIMIT = -6;

  /** Pivot friction holds the bob at a place that belongs to no one rest point. */
  public static final int HELD = -7;

  private final int[] end;
  private final double[] sealedAt;
  private final double[] settledAt;

  /** Room for some releases, all unsettled. */
  public Ends(int size) {
    end = new int[size];
    sealedAt = new double[size];
    settledAt = new double[size];
    Arrays.fill(end, UNSETTLED);
    Arrays.fill(sealedAt, Double.NaN);
    Arrays.fill(settledAt, Double.NaN);
  }

  /**
   * Whether an end says what becomes of the bob; else the release cannot begin, or is not followed
   * far enough.
   *
   * @param end a rest point's index, or a negative code
   */
  public static boolean known(int end) {
    return end != CANNOT_START && end != UNSETTLED;
  }

  /** How many releases there are. */
  public int size() {
    return end.length;
  }

  /** The end of a release: a rest point's index, or a negative code. */
  public int end(int release) {
    return end[release];
  }

  /** When the end was certain [s on the bench]; NaN where it never was. */
  public double sealedAt(int release) {
    return sealedAt[release];
  }

  /** When the bob had settled, sticking included; NaN where it never did, or was not asked. */
  public double settledAt(int release) {
    return settledAt[release];
  }

  /**
   * Writes when a bob had settled.
   *
   * @param release its index
   * @param time when it had settled, NaN where it never did
   */
  public void settle(int release, double time) {
    settledAt[release] = time;
  }

  /**
   * Writes down the ends that were found of folded releases.
   *
   * @param found their ends
   * @param from the index here of the first of them
   * @param symmetry what they were folded by
   * @param turned what that did to each
   */
  void take(Ends found, int from, MirrorSymmetry symmetry, byte[] turned) {
    for (int i = 0; i < found.size(); i++) {
      int folded = found.end[i];
      int own = turned.length == 0 ? folded : symmetry.unfold(folded, turned[i]);
      set(from + i, own, found.sealedAt[i]);
      settle(from + i, found.settledAt[i]);
    }
  }

  /**
   * Writes an end.
   *
   * @param release its index
   * @param code a rest point's index, or a negative code
   * @param time when it was certain, NaN where it never was
   */
  public void set(int release, int code, double time) {
    end[release] = code;
    sealedAt[release] = time;
  }
}
