package lodeswing.analysis.trace;

import java.util.Arrays;
import lodeswing.core.integrate.Step;
import lodeswing.core.motion.Motion;

/** Takes samples on the uniform grid as the steps go by. */
final class SampleGrid {

  private static final double ROUNDING = 1e-12;

  private final Motion motion;
  private final double interval;
  private final int wanted;
  private final double[][] columns;
  private final double[] state = new double[4];
  private final double[] plan = new double[4];
  private int taken;

  SampleGrid(Motion motion, TraceSpec spec, double[] start) {
    this.motion = motion;
    this.interval = spec.sampleInterval();
    this.wanted = spec.samples();
    this.columns = new double[5][wanted];
    put(start);
  }

  /** Takes the samples of a step up to a time. */
  void take(Step step, double until) {
    // The last sample may lie a rounding past the end.
    while (taken < wanted && taken * interval <= until * (1 + ROUNDING)) {
      step.at(Math.min(taken * interval, step.endTime()), state);
      put(state);
    }
  }

  /** Fills the rest of the grid with a bob that no longer moves. */
  void stay(double[] where) {
    double[] still = {where[0], where[1], 0, 0};
    while (taken < wanted) {
      put(still);
    }
  }

  Samples samples() {
    double[][] cut = new double[columns.length][];
    Arrays.setAll(cut, c -> Arrays.copyOf(columns[c], taken));
    return new Samples(interval, cut);
  }

  private void put(double[] at) {
    motion.toPlan(at, plan);
    for (int c = 0; c < 4; c++) {
      columns[c][taken] = plan[c];
    }
    columns[4][taken] = motion.energy(at[0], at[1], at[2], at[3]);
    taken++;
  }
}
