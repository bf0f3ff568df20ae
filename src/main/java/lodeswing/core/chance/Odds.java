package lodeswing.core.chance;

import java.util.Map;
import java.util.TreeMap;
import java.util.function.DoubleConsumer;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.outcome.ParallelOutcomes;
import lodeswing.core.outcome.SharedFinder;

/**
 * Counts where the tries of a wandering hand end, until every chance is known as well as asked.
 *
 * <p>The tries are the points of {@link lodeswing.core.statistics.ShiftedSobol}.
 *
 * <p>The intervals take tries as drawn apart from each other. Where borders between ends are smooth
 * the tries are far more even than that and the intervals hold more often than stated; where ends
 * are mixed beyond all tries they hold as stated ({@code OddsCoverageTest} counts it).
 */
public final class Odds {

  /**
   * Error of a step as a share of the hand's spread: as fine as a map whose pixel is the spread.
   * Such errors move a release by as much, which a spread over thousands of them does not feel.
   */
  private static final double SPREAD_SHARE = 5e-4;

  private static final double LOOSEST = 1e-5;
  private static final double TIGHTEST = 1e-12;

  private final Landscape landscape;
  private final HandSpread hand;
  private final SharedFinder finder;
  private final Tolerance tolerance;

  /**
   * Odds on a rig.
   *
   * @param landscape the layout made ready
   * @param hand how the hand wanders
   * @param finders find the ends of releases
   * @param longest how long a release is followed at most
   */
  public Odds(Landscape landscape, HandSpread hand, OutcomeFinders finders, double longest) {
    this.landscape = landscape;
    this.hand = hand;
    this.tolerance = tolerance();
    this.finder = finders.of(landscape, tolerance, longest);
  }

  /** The error of a step that is allowed. */
  public Tolerance allowed() {
    return tolerance;
  }

  private Tolerance tolerance() {
    double rate = landscape.motion().naturalRate();
    double reach = Math.max(hand.reach(rate), Double.MIN_NORMAL);
    double share = SPREAD_SHARE * hand.size(rate) / reach;
    double relative = Math.min(LOOSEST, Math.max(TIGHTEST, share));
    return landscape.planScale().tolerance(relative, reach);
  }

  /**
   * Counts until every interval is short enough.
   *
   * @param spec what is asked, of this hand
   * @param progress told the fraction done by several threads; may throw to end the work
   */
  public EndCounts count(OddsSpec spec, DoubleConsumer progress) {
    return new AdaptiveCount(spec).run(new Tries(hand, spec.seed()), this::ends, progress);
  }

  /**
   * Counts the ends of a fixed number of tries.
   *
   * @param tries how many
   * @param seed of the tries
   * @param progress told the fraction done by several threads; may throw to end the work
   */
  public EndCounts count(int tries, long seed, DoubleConsumer progress) {
    return EndCounts.NONE.and(ends(new Tries(hand, seed).next(tries), progress));
  }

  private Map<Integer, Integer> ends(double[] releases, DoubleConsumer progress) {
    Ends ends =
        new ParallelOutcomes(finder)
            .find(
                releases.length / 4,
                (from, to, out) -> System.arraycopy(releases, 4 * from, out, 0, 4 * (to - from)),
                progress);
    Map<Integer, Integer> counts = new TreeMap<>();
    for (int i = 0; i < ends.size(); i++) {
      counts.merge(ends.end(i), 1, Integer::sum);
    }
    return counts;
  }
}
