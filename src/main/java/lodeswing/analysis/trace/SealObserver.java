package lodeswing.analysis.trace;

import java.util.OptionalInt;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.StepObserver;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rest.SealRule;

/** Follows a release only until its outcome is certain or the model ends. */
final class SealObserver implements StepObserver {

  private final Motion motion;
  private final SealRule rule;
  private final double[] state = new double[4];
  private int well = SealRule.NONE;

  SealObserver(Landscape landscape) {
    this.motion = landscape.motion();
    this.rule = landscape.sealRule();
  }

  /** Whether the outcome is certain at a state already. */
  boolean sealedAlready(double[] start) {
    double energy = motion.energy(start[0], start[1], start[2], start[3]);
    well = rule.sealedWell(start[0], start[1], energy);
    return well >= 0;
  }

  @Override
  public boolean accept(Step step) {
    step.endState(state);
    for (Limit limit : motion.limits()) {
      if (limit.margin(state) <= 0) {
        return false;
      }
    }
    return !sealedAlready(state) && motion.slideMargin(state) > 0;
  }

  /** The one rest point that can still be reached; empty where none was certain. */
  OptionalInt outcome() {
    return well >= 0 ? OptionalInt.of(well) : OptionalInt.empty();
  }
}
