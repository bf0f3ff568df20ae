package lodeswing.analysis.twins;

import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.statistics.Estimate;

/**
 * What two paths are to each other.
 *
 * @param shownUntil up to when their separation is known
 * @param shownEnd what ends that
 * @param rate weight of the velocities in distances of phase space, the natural rate
 * @param partedDistance distance in plan at which they count as parted
 * @param partedAt when they first were so far apart; empty where they were not while known
 * @param growth how their separation grew; empty where there was no time to tell
 * @param separation the curve
 */
public record TwinsResult(
    double shownUntil,
    Cut shownEnd,
    double rate,
    double partedDistance,
    OptionalDouble partedAt,
    Optional<Growth> growth,
    Separation separation) {

  /**
   * Growth over one window from the release on.
   *
   * @param until its end
   * @param end what ends it
   * @param rate of the separation: the slope of its logarithm, with its interval
   * @param atStart the line's separation at the release
   * @param first finite-time Lyapunov exponent over the window, of the first path
   * @param second the same of the second path
   */
  public record Growth(
      double until, Cut end, Estimate rate, double atStart, double first, double second) {}
}
