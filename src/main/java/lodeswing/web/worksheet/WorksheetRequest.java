package lodeswing.web.worksheet;

import java.util.List;
import lodeswing.core.rig.BenchLayout;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;

/**
 * The figures behind a worksheet as they are asked for.
 *
 * @param layout a layout of the bench
 * @param spreadMm standard deviation of the hand that lets go [mm]
 */
record WorksheetRequest(LayoutDocument layout, double spreadMm) {

  static final String KIND = "worksheet";

  /** Raised with every change of what is computed or how it is stored. */
  private static final String FORM = "form=1";

  private static final double MILLI = 1e-3;

  BenchLayout bench() {
    return (BenchLayout) layout.layout();
  }

  /** Whether there are magnets that act on a bob's. */
  boolean magnets() {
    return !bench().magnets().isEmpty() && bench().bob().isPresent();
  }

  double spread() {
    return spreadMm * MILLI;
  }

  /** Names the result: labels do not change it. */
  ComputationKey key() {
    return new ComputationKey(
        "wsh", KIND + "|" + FORM + "|" + layout.physicsKey() + "|" + Numbers.shortest(spreadMm));
  }

  /** All of it in words without blanks, the layout's id first. */
  List<String> words() {
    return List.of(layout.layoutId(), Numbers.shortest(spreadMm));
  }

  /** The request that such words tell. */
  static WorksheetRequest of(LayoutDocument layout, List<String> words) {
    return new WorksheetRequest(layout, Double.parseDouble(words.get(1)));
  }

  /** Where a sheet of these figures is answered. */
  String url() {
    return "/v1/layouts/" + layout.layoutId() + "/worksheet?spreadMm=" + words().get(1);
  }
}
