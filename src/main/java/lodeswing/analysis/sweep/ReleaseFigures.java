package lodeswing.analysis.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.DoubleConsumer;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.outcome.ParallelOutcomes;
import lodeswing.core.outcome.SharedFinder;
import lodeswing.core.rig.Release;
import lodeswing.core.swing.SmallSwings;

/**
 * What a sweep measures of one release, on the path that a trace of it takes: a point tells what a
 * single request for its outcome tells.
 *
 * @param end a rest point's index, or a code of {@link Ends}
 * @param sealedAt when that was certain; NaN where it never was
 * @param settledAt when the bob had settled; NaN where it never did, or was not asked
 * @param sure whether the end is certain and the same at a tenfold tighter tolerance; false where
 *     that was not asked
 * @param periodX period of the release's swing along x, were it alone and without magnets and loss;
 *     empty where it would turn over
 * @param periodY the same along y
 */
public record ReleaseFigures(
    int end,
    double sealedAt,
    double settledAt,
    boolean sure,
    OptionalDouble periodX,
    OptionalDouble periodY) {

  private static final double TIGHTER = 0.1;

  /**
   * What is asked of each release.
   *
   * @param followed whether its end is asked for at all
   * @param settled whether it is followed until the bob has settled, at its own cost
   * @param sure whether it is followed once more at a tighter tolerance
   */
  public record Asked(boolean followed, boolean settled, boolean sure) {

    /** How many times each release is followed, about: none, once or twice. */
    public int runs() {
      return (followed ? 1 : 0) + (sure ? 1 : 0);
    }
  }

  /**
   * Measures releases on all cores; the figures of each depend on itself alone.
   *
   * @param landscape the layout made ready
   * @param releases the releases
   * @param asked what is asked of each
   * @param finders find the ends of releases
   * @param longest how long a release is followed at most
   * @param progress told the fraction done by several threads; may throw to end the work
   */
  public static List<ReleaseFigures> of(
      Landscape landscape,
      List<Release> releases,
      Asked asked,
      OutcomeFinders finders,
      double longest,
      DoubleConsumer progress) {
    Tolerance own = Tolerance.TRACE;
    SharedFinder first = finders.single(landscape, own, longest, asked.settled());
    double half = asked.sure() ? 0.5 : 1;
    Ends none = new Ends(releases.size());
    Ends ends = asked.followed() ? find(first, releases, f -> progress.accept(half * f)) : none;
    Ends again = none;
    if (asked.sure()) {
      var tighter = new Tolerance(TIGHTER * own.absolute(), TIGHTER * own.relative());
      SharedFinder second = finders.single(landscape, tighter, longest, false);
      again = find(second, releases, f -> progress.accept(half + half * f));
    }
    List<ReleaseFigures> figures = new ArrayList<>();
    for (int i = 0; i < releases.size(); i++) {
      boolean certain = ends.end(i) >= 0 && !Double.isNaN(ends.sealedAt(i));
      figures.add(
          new ReleaseFigures(
              ends.end(i),
              ends.sealedAt(i),
              ends.settledAt(i),
              asked.sure() && certain && ends.end(i) == again.end(i),
              period(landscape, releases.get(i), true),
              period(landscape, releases.get(i), false)));
    }
    return figures;
  }

  private static Ends find(SharedFinder finder, List<Release> releases, DoubleConsumer progress) {
    return new ParallelOutcomes(finder)
        .find(
            releases.size(),
            (from, to, out) -> {
              for (int i = from; i < to; i++) {
                int k = 4 * (i - from);
                out[k] = releases.get(i).x();
                out[k + 1] = releases.get(i).y();
                out[k + 2] = releases.get(i).vx();
                out[k + 3] = releases.get(i).vy();
              }
            },
            progress);
  }

  private static OptionalDouble period(Landscape landscape, Release release, boolean alongX) {
    Optional<double[]> state = landscape.motion().toState(release);
    return state.isEmpty()
        ? OptionalDouble.empty()
        : SmallSwings.of(landscape.layout()).periodAt(landscape.layout(), state.get(), alongX);
  }
}
