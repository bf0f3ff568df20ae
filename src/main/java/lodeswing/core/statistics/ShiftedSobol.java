package lodeswing.core.statistics;

import java.util.SplittableRandom;
import org.apache.commons.math3.random.SobolSequenceGenerator;

/**
 * Points that fill the unit cube more evenly than draws at random would: a Sobol' sequence, each
 * coordinate's binary digits turned over by a random shift of its own.
 *
 * <p>Every point by itself is uniform over the seeds, so that a share of the points in a set has
 * the set's volume as its mean; blocks of a power of two keep the sequence's evenness. Sources: I.
 * M. Sobol', USSR Comput. Math. Math. Phys. 7 (1967) 86; direction numbers of S. Joe and F. Y. Kuo,
 * SIAM J. Sci. Comput. 30 (2008) 2635; digital shift: P. L'Ecuyer and C. Lemieux, in Modeling
 * Uncertainty (2002) 419.
 *
 * <p>Changes with every point; for one thread.
 */
public final class ShiftedSobol {

  /** Binary digits of a coordinate. */
  private static final int DIGITS = 52;

  private final SobolSequenceGenerator sequence;
  private final long[] shift;
  private final double[] point;

  /**
   * The sequence of a seed.
   *
   * @param dimension how many coordinates a point has, 1 to 1000
   * @param seed of the shifts
   */
  public ShiftedSobol(int dimension, long seed) {
    this.sequence = new SobolSequenceGenerator(dimension);
    this.shift = new long[dimension];
    this.point = new double[dimension];
    var random = new SplittableRandom(seed);
    for (int k = 0; k < dimension; k++) {
      shift[k] = random.nextLong() >>> (Long.SIZE - DIGITS);
    }
  }

  /** The next point, each coordinate above 0 and below 1; the same array each time. */
  public double[] next() {
    double[] plain = sequence.nextVector();
    for (int k = 0; k < point.length; k++) {
      long digits = (long) Math.scalb(plain[k], DIGITS) ^ shift[k];
      // The middle of its last digit, so that neither 0 nor 1 is met.
      point[k] = Math.scalb((double) (2 * digits + 1), -DIGITS - 1);
    }
    return point;
  }
}
