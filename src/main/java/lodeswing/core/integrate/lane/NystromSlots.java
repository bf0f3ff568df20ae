package lodeswing.core.integrate.lane;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;
import static lodeswing.core.integrate.lane.LaneBlock.OWN;

/** Slots of a Nystrom step, in the frame y(tau) = e^(k tau) x in which the loss is gone. */
public final class NystromSlots {

  /** Square of the step's size. */
  public static final int SQUARE = OWN;

  /** Step times speed in the frame, two slots. */
  public static final int FIRST = OWN + LANES;

  /** Place of a stage, and sums at the end, two slots. */
  public static final int PLACE = OWN + 3 * LANES;

  /** Sums for the speed at the end, two slots. */
  public static final int SPEED = OWN + 5 * LANES;

  /** Square of the step times the stages' second derivatives, nine stages of two slots. */
  public static final int STAGES = OWN + 7 * LANES;

  /** Factors e^(k c h) at the seven times of stages, from the second stage on. */
  public static final int GROW = OWN + 25 * LANES;

  /** Factors e^(-k c h). */
  public static final int DECAY = OWN + 32 * LANES;

  /** The last of these over the size of the step. */
  public static final int PER_STEP = OWN + 39 * LANES;

  /** One past the last slot. */
  public static final int END = OWN + 40 * LANES;

  private NystromSlots() {}

  /** First of the two slots of a stage, 0 to 8. */
  public static int stage(int stage) {
    return STAGES + 2 * stage * LANES;
  }
}
