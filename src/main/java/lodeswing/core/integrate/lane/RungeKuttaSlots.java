package lodeswing.core.integrate.lane;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;
import static lodeswing.core.integrate.lane.LaneBlock.OWN;

/** Slots of a Runge-Kutta step of a rig on the bench. */
public final class RungeKuttaSlots {

  /** State of a stage, four slots. */
  public static final int PLACE = OWN;

  /** Second estimate of the errors, four slots. */
  public static final int SECOND = OWN + 4 * LANES;

  /** Sine of q0 and its cosine. */
  public static final int ANGLES = OWN + 8 * LANES;

  /** Potential energy and its two slopes. */
  public static final int POTENTIAL = OWN + 10 * LANES;

  /** Rates of the losses about the two axes. */
  public static final int RATES = OWN + 13 * LANES;

  /** Step times derivatives, of as many stages as there are, four slots each. */
  public static final int STAGES = OWN + 15 * LANES;

  private RungeKuttaSlots() {}

  /** First of the four slots of a stage. */
  public static int stage(int stage) {
    return STAGES + 4 * stage * LANES;
  }
}
