package lodeswing.analysis.check;

import java.util.List;
import java.util.OptionalDouble;
import java.util.TreeSet;
import lodeswing.analysis.check.Judged.Way;
import lodeswing.core.chance.DiscSpread;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.chance.HandSpread;
import lodeswing.core.chance.NormalSpread;
import lodeswing.core.chance.Odds;
import lodeswing.core.outcome.Ends;
import lodeswing.core.rig.Release;
import lodeswing.core.statistics.ShiftedSobol;

/**
 * How lively the rig is: the chance that two tries of one hand at one place end apart, on the
 * average over places of the region. Of n tries with n_i at the ends it is 1 - sum n_i (n_i - 1)/(n
 * (n - 1)), free of bias (E. H. Simpson, Nature 163 (1949) 688).
 */
record LivelinessLine() implements CheckLine {

  private static final int AIMS = 8;
  private static final int TRIES = 64;

  @Override
  public CheckCode code() {
    return CheckCode.TWO_TRIES_DIFFER;
  }

  @Override
  public Judged judge(Trial trial) {
    if (!trial.model().pulls()) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOTHING_PULLS, Needs.magnets(trial));
    }
    CheckSpec spec = trial.spec();
    var points = new ShiftedSobol(2, spec.seed());
    var disc = new DiscSpread(spec.radius());
    var hand = new NormalSpread(spec.wander());
    var met = new TreeSet<Integer>();
    double[] place = new double[2];
    double sum = 0;
    int aims = 0;
    for (int k = 0; k < AIMS; k++) {
      double[] point = points.next();
      disc.place(point[0], point[1], place);
      var aimed = new HandSpread(new Release(place[0], place[1], 0, 0), hand, 0);
      EndCounts counts =
          new Odds(trial.landscape(), aimed, trial.finders(), spec.longest())
              .count(TRIES, spec.seed() + k, trial.heard());
      OptionalDouble differ = differ(counts);
      if (differ.isPresent()) {
        sum += differ.getAsDouble();
        aims++;
        counts.byEnd().keySet().stream().filter(Ends::known).forEach(met::add);
      }
    }
    if (aims == 0) {
      return Judged.unknown(OptionalDouble.empty(), Cause.NOWHERE_TO_RELEASE, List.of());
    }
    boolean chooser = trial.labels() > 1;
    Judged judged =
        Judged.by(
            CheckLimits.LIVELY,
            sum / aims,
            Cause.TRIES,
            chooser
                ? List.of(Way.down(Knob.LOSS), Way.down(Knob.GAP), Way.down(Knob.PLANE_HEIGHT))
                : List.of(),
            met.size(),
            spec.wander(),
            (double) AIMS * TRIES);
    return judged.measure().verdict() == Verdict.FAILS && !chooser
        ? judged.as(Verdict.WATCH)
        : judged;
  }

  private static OptionalDouble differ(EndCounts counts) {
    double all = 0;
    double alike = 0;
    for (var entry : counts.byEnd().entrySet()) {
      if (Ends.known(entry.getKey())) {
        double n = entry.getValue();
        all += n;
        alike += n * (n - 1);
      }
    }
    return all > 1 ? OptionalDouble.of(1 - alike / (all * (all - 1))) : OptionalDouble.empty();
  }
}
