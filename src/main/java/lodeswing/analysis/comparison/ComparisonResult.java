package lodeswing.analysis.comparison;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What a comparison found. Times are the recording's own, lengths in plan.
 *
 * @param verdict what it comes to
 * @param track the two paths side by side
 * @param noise of a recorded coordinate that differences are held against [m]
 * @param partedDistance from which on the two count as parted [m]
 * @param partedAt when they did; empty where they never did
 * @param departedAt from when on they are farther apart than any start of this rig explains; empty
 *     where nothing says so
 * @param trustedUntil until when the computed path is right; empty where that was not reached
 * @param foretoldUntil until when it can be foretold from the start; empty where that was not
 *     reached
 * @param near how near they are to each other at first and up to the nearer horizon
 * @param end where the recorded bob is at rest in the end; empty where it is not
 * @param hints what alone would explain a difference
 */
public record ComparisonResult(
    Verdict verdict,
    Track track,
    double noise,
    double partedDistance,
    OptionalDouble partedAt,
    OptionalDouble departedAt,
    OptionalDouble trustedUntil,
    OptionalDouble foretoldUntil,
    Nearness near,
    Optional<RecordedEnd> end,
    List<Hint> hints) {

  /** Standard deviations beyond which a distance is not explained. */
  public static final double BEYOND = 4;

  public ComparisonResult {
    hints = List.copyOf(hints);
  }

  /**
   * How near two paths are to each other, as distances in plan [m].
   *
   * @param startRms root of the mean square over the stretch that the start was held against
   * @param rms the same up to the nearer horizon, or the end
   * @param greatest the greatest one up to there
   * @param until when that is
   */
  public record Nearness(double startRms, double rms, double greatest, double until) {}
}
