package lodeswing.analysis.check;

import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import lodeswing.analysis.check.Finding.Measure;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.core.chance.DiscSpread;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.ParallelOutcomes;
import lodeswing.core.statistics.ShiftedSobol;
import lodeswing.core.swing.SmallSwings;

/** How many swings there are to see before the bob has settled: neither a few nor for ever. */
record SwingsLine() implements CheckLine {

  private static final int RELEASES = 48;
  private static final double RELATIVE = 1e-5;

  @Override
  public CheckCode code() {
    return CheckCode.SWINGS_BEFORE_REST;
  }

  @Override
  public Judged judge(Trial trial) {
    if (!trial.model().pulls()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOTHING_PULLS, Needs.magnets(trial));
    }
    Landscape landscape = trial.landscape();
    double radius = trial.spec().radius();
    double period = SmallSwings.of(landscape.layout()).periodX();
    double longest = trial.spec().longest();
    double fewest = CheckLimits.FEWEST_SWINGS;
    double most =
        trial.bench().isPresent() ? CheckLimits.PATIENCE / period : CheckLimits.MOST_SWINGS;
    double median = landscape.lossless() ? Double.POSITIVE_INFINITY : median(trial, radius);
    if (Double.isNaN(median)) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOWHERE_TO_RELEASE, List.of());
    }
    boolean never = Double.isInfinite(median);
    double swings = (never ? longest : median) / period;
    boolean few = swings < fewest;
    double margin = never ? -1e9 : Math.min(swings - fewest, most - swings);
    boolean lost = few ? swings < CheckLimits.TOO_FEW_SWINGS : landscape.lossless();
    Verdict verdict = margin >= 0 ? Verdict.GOOD : lost ? Verdict.FAILS : Verdict.WATCH;
    return new Judged(
        new Measure(
            verdict,
            OptionalDouble.of(swings),
            OptionalDouble.of(few || margin >= 0 ? fewest : most),
            never ? Cause.NEVER_RESTS : Cause.SWINGS,
            List.of(never ? longest : median, period),
            List.of()),
        margin,
        List.of(few ? Way.down(Knob.LOSS) : Way.up(Knob.LOSS)));
  }

  /** The median time until rest; infinite where most never rest, NaN where none can begin. */
  private static double median(Trial trial, double radius) {
    Landscape landscape = trial.landscape();
    double[] releases = new double[4 * RELEASES];
    var points = new ShiftedSobol(2, trial.spec().seed());
    var disc = new DiscSpread(radius);
    double[] place = new double[2];
    for (int i = 0; i < RELEASES; i++) {
      double[] point = points.next();
      disc.place(point[0], point[1], place);
      System.arraycopy(place, 0, releases, 4 * i, 2);
    }
    var finder =
        trial
            .finders()
            .settling(
                landscape,
                landscape.planScale().tolerance(RELATIVE, radius),
                trial.spec().longest());
    Ends ends =
        new ParallelOutcomes(finder)
            .find(
                RELEASES,
                (from, to, out) -> System.arraycopy(releases, 4 * from, out, 0, 4 * (to - from)),
                trial.heard());
    double[] times = new double[RELEASES];
    int known = 0;
    for (int i = 0; i < RELEASES; i++) {
      if (ends.end(i) >= 0 || ends.end(i) == Ends.UNSETTLED || ends.end(i) == Ends.HELD) {
        double settled = ends.settledAt(i);
        times[known++] = Double.isNaN(settled) ? Double.POSITIVE_INFINITY : settled;
      }
    }
    Arrays.sort(times, 0, known);
    return known == 0 ? Double.NaN : times[known / 2];
  }
}
