package lodeswing.core.outcome;

import java.util.Arrays;
import java.util.OptionalDouble;
import lodeswing.core.integrate.Step;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Motion;
import lodeswing.core.rest.SealRule;
import org.apache.commons.math3.analysis.solvers.BracketingNthOrderBrentSolver;

/**
 * Watches the energy fall past the passes and towards rest.
 *
 * <p>The seal rule tells which well a bob is shut in, sometimes a step late, since it wants a whole
 * cell in that well. The well was shut at the moment the energy fell below its pass: components of
 * the region below a pass are apart, so a bob that is in one of them later was in it from that
 * moment. The crossings of every well's level are therefore kept, each as a root on the dense
 * output. Without loss a bob ends nowhere: nothing is sealed and nothing settles. Traces and
 * outcomes of many releases share it, so that their sealing times agree. One owner, one thread.
 */
public final class EnergyWatch {

  private final Motion motion;
  private final SealRule rule;
  private final boolean lossless;
  private final double[] shutAt;
  private final double[] state = new double[4];
  private double before;
  private int well = SealRule.NONE;
  private double settledAt = Double.NaN;

  /**
   * A watch that has seen the release.
   *
   * @param landscape what moves, and when an outcome is certain
   * @param start state {q0, q1, v0, v1} of the release
   */
  public EnergyWatch(Landscape landscape, double[] start) {
    this.motion = landscape.motion();
    this.rule = landscape.sealRule();
    this.lossless = landscape.lossless();
    this.shutAt = new double[rule.wells()];
    Arrays.fill(shutAt, Double.NaN);
    before = motion.energy(start[0], start[1], start[2], start[3]);
    for (int w = 0; w < shutAt.length; w++) {
      if (before < rule.sealEnergy(w)) {
        shutAt[w] = 0;
      }
    }
    decide(start, before);
    if (well >= 0 && before < rule.settledEnergy(well)) {
      settledAt = 0;
    }
  }

  /**
   * Looks at a step up to a time.
   *
   * @param step the step
   * @param until within the step; its end, or where an event cut it short
   */
  public void look(Step step, double until) {
    place(step, until);
    double energy = motion.energy(state[0], state[1], state[2], state[3]);
    for (int w = 0; w < shutAt.length; w++) {
      if (Double.isNaN(shutAt[w]) && energy < rule.sealEnergy(w)) {
        shutAt[w] = crossing(step, until, rule.sealEnergy(w), energy);
      }
    }
    place(step, until);
    decide(state, energy);
    if (well >= 0 && Double.isNaN(settledAt) && energy < rule.settledEnergy(well)) {
      settledAt = crossing(step, until, rule.settledEnergy(well), energy);
    }
    before = energy;
  }

  /** The end of a step is known without its dense output, which costs evaluations. */
  private void place(Step step, double time) {
    if (time == step.endTime()) {
      step.endState(state);
    } else {
      step.at(time, state);
    }
  }

  private void decide(double[] at, double energy) {
    if (well == SealRule.NONE && !lossless) {
      well = rule.sealedWell(at[0], at[1], energy);
    }
  }

  private double crossing(Step step, double until, double level, double after) {
    double start = step.startTime();
    if (!(before > level) || until <= start) {
      return start;
    }
    if (after >= level) {
      return until;
    }
    return new BracketingNthOrderBrentSolver(0, 1e-13 * (until - start) + Math.ulp(until), 0, 5)
        .solve(200, time -> energyAt(step, time) - level, start, until);
  }

  private double energyAt(Step step, double time) {
    step.at(time, state);
    return motion.energy(state[0], state[1], state[2], state[3]);
  }

  /** The well the bob is shut in, or {@link SealRule#NONE}. */
  public int well() {
    return well;
  }

  /** From when the outcome was certain. */
  public OptionalDouble sealedAt() {
    return well == SealRule.NONE ? OptionalDouble.empty() : OptionalDouble.of(shutAt[well]);
  }

  /** When the energy fell below a hundredth of the well's barrier. */
  public OptionalDouble settledAt() {
    return Double.isNaN(settledAt) ? OptionalDouble.empty() : OptionalDouble.of(settledAt);
  }
}
