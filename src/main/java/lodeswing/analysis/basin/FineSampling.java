package lodeswing.analysis.basin;

import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.random.RandomGenerator;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinder;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.outcome.ParallelOutcomes;
import lodeswing.core.outcome.SharedFinder;
import lodeswing.core.statistics.ScalingLaw;
import lodeswing.core.statistics.UncertaintySampling;
import lodeswing.core.window.BasinWindow;

/**
 * The uncertainty exponent of a window at distances below the pixels of a map.
 *
 * <p>Where outcomes are mixed so finely that neighbouring pixels are as good as drawn at random,
 * the map itself has no exponent, but closer releases may have. Distances run from the map's pixel
 * down to the pixel of the deepest zoom that the survey found, {@value #OCTAVES} halvings at most;
 * the tolerance is that of a map with the smallest distance as its pixel.
 *
 * @param window what the map shows
 * @param largest side of the map's pixel [plan unit]
 * @param smallest the smallest distance, at which labels still hold
 */
public record FineSampling(BasinWindow window, double largest, double smallest) {

  private static final int OCTAVES = 12;
  private static final int DISTANCES = 13;
  private static final int PLACES = 1_024;
  private static final int TILE = 256;

  /** Fewer halvings than this tell no exponent. */
  private static final double LEAST_RANGE = 16;

  /**
   * The sampling below a map.
   *
   * @param side pixels along the map's side
   * @return empty where labels below the map's pixels are chance
   */
  public static Optional<FineSampling> below(BasinWindow window, int side, BasinSurvey survey) {
    double width = 2 * window.halfWidth();
    double largest = width / side;
    double steady = Math.scalb(width / TILE, -survey.deepestZoom());
    double smallest = Math.max(steady, Math.scalb(largest, -OCTAVES));
    return largest < LEAST_RANGE * smallest
        ? Optional.empty()
        : Optional.of(new FineSampling(window, largest, smallest));
  }

  /** How many releases it follows. */
  public int releases() {
    return Math.toIntExact(sampling().labels());
  }

  private UncertaintySampling sampling() {
    return new UncertaintySampling(
        window.x(), window.y(), window.halfWidth(), smallest, largest, DISTANCES, PLACES);
  }

  /**
   * Follows the releases on all cores.
   *
   * @param landscape the layout made ready
   * @param finders find the ends of releases
   * @param longest how long a release is followed at most
   * @param random source of the draws
   * @param progress told the fraction done; may throw to end the work
   * @return empty where fewer than three distances have an uncertain share that can be told
   */
  public Optional<ScalingLaw> run(
      Landscape landscape,
      OutcomeFinders finders,
      double longest,
      RandomGenerator random,
      DoubleConsumer progress) {
    SharedFinder one = finders.of(landscape, window.tolerance(landscape, smallest), longest);
    var done = new int[1];
    OutcomeFinder all =
        (releases, from, to, ends) -> {
          int before = done[0];
          DoubleConsumer part =
              fraction -> progress.accept((before + fraction * (to - from)) / releases());
          copy(spread(one, releases, from, to, part), from, ends);
          done[0] += to - from;
        };
    return sampling().run(new ReleasePlane(all), random);
  }

  private static Ends spread(
      SharedFinder finder, double[] releases, int from, int to, DoubleConsumer progress) {
    return new ParallelOutcomes(finder)
        .find(
            to - from,
            (first, last, out) ->
                System.arraycopy(releases, 4 * (from + first), out, 0, 4 * (last - first)),
            progress);
  }

  private static void copy(Ends found, int from, Ends ends) {
    for (int i = 0; i < found.size(); i++) {
      ends.set(from + i, found.end(i), found.sealedAt(i));
    }
  }
}
