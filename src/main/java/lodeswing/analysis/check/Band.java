package lodeswing.analysis.check;

/**
 * A limit with room: from one figure on a line is good, beyond another it fails.
 *
 * @param good where good begins
 * @param fails where it fails
 * @param rising whether greater figures are better
 */
record Band(double good, double fails, boolean rising) {

  /** Greater is better. */
  static Band atLeast(double good, double fails) {
    return new Band(good, fails, true);
  }

  /** Less is better. */
  static Band atMost(double good, double fails) {
    return new Band(good, fails, false);
  }

  /** Room to where good begins, negative where it is missed. */
  double margin(double figure) {
    return rising ? figure - good : good - figure;
  }

  Verdict verdict(double figure) {
    if (margin(figure) >= 0) {
      return Verdict.GOOD;
    }
    boolean lost = rising ? figure <= fails : figure >= fails;
    return lost ? Verdict.FAILS : Verdict.WATCH;
  }
}
