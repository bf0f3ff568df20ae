package lodeswing.analysis.swingcount;

import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * What was counted and measured.
 *
 * @param along the axis
 * @param timing time of counted swings; empty where none were timed
 * @param amplitude greatest angle of the first swing [rad]; empty where it is taken as small
 * @param half full swings after which half the amplitude is left; empty where that was not counted
 * @param length how much longer the suspension may be than the rig says: 0 and an uncertainty [m]
 * @param gravity local acceleration of gravity [m/s^2]
 */
public record Readings(
    Along along,
    Optional<Timing> timing,
    Optional<Measured> amplitude,
    Optional<Measured> half,
    Measured length,
    Measured gravity) {

  /**
   * Timed swings.
   *
   * @param swings full swings, there and back, 1 or more
   * @param time of all of them [s]
   */
  public record Timing(int swings, Measured time) {

    private static final double HALF_CONFIDENCE = 0.975;

    /**
     * The mean of several countings of as many swings.
     *
     * @param times of each [s], one or more
     * @param off half the 95 % interval of one of them [s]; where they scatter more than that
     *     allows, the mean's is Student's
     */
    public static Timing of(int swings, List<Double> times, double off) {
      int count = times.size();
      double mean = times.stream().mapToDouble(Double::doubleValue).average().orElseThrow();
      double half = off / Math.sqrt(count);
      if (count > 1) {
        double squares = times.stream().mapToDouble(t -> (t - mean) * (t - mean)).sum();
        double student =
            new TDistribution(count - 1.0).inverseCumulativeProbability(HALF_CONFIDENCE);
        half = Math.max(half, student * Math.sqrt(squares / (count - 1) / count));
      }
      return new Timing(swings, Measured.within(mean, half));
    }
  }
}
