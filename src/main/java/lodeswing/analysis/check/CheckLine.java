package lodeswing.analysis.check;

import java.util.List;

/** One line of the check. */
interface CheckLine {

  /** Which one. */
  CheckCode code();

  /** Measures and judges a rig. */
  Judged judge(Trial trial);

  /**
   * The room to where good begins on a changed rig, found as cheaply as a search needs it.
   *
   * @param changed the changed rig
   * @param base the rig as it is
   */
  default double estimate(Trial changed, Trial base) {
    return judge(changed).margin();
  }

  /** Every line, in the order of the codes. */
  static List<CheckLine> all() {
    return List.of(
        new RoomLine(CheckCode.CLEARANCE_AT_REST),
        new RoomLine(CheckCode.CLEARANCE_ON_THE_WAY),
        new PullAndWeightLine(),
        new PullAndSlowingLine(),
        new WeightLine(),
        new StickingLine(),
        new SlackLine(),
        new HookLoadLine(),
        new HookDepthLine(),
        new SwingsLine(),
        new LabelWellsLine(),
        new OtherWellsLine(),
        new LivelinessLine(),
        new SlidingLine(),
        new LiftingLine(),
        new StandTippingLine(),
        new StandLeaningLine());
  }
}
