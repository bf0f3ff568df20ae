package lodeswing.web.layout;

import java.util.ArrayList;
import java.util.List;
import lodeswing.web.body.FaultList;
import lodeswing.web.problem.ProblemCode;

/** Collects what is wrong or odd about a layout while it is mapped. */
final class LayoutFindings {
  private final FaultList unknown = new FaultList();
  private final FaultList impossible = new FaultList();
  private final List<LayoutWarning> warnings = new ArrayList<>();

  /** A word or figure that is not known or missing. */
  void unknown(String pointer, String detail) {
    unknown.add(pointer, detail);
  }

  /** Something that nobody could build. */
  void impossible(String pointer, String detail) {
    impossible.add(pointer, detail);
  }

  /** Something that was probably not meant. */
  void warn(String code, String pointer, String detail) {
    warnings.add(new LayoutWarning(code, detail, pointer));
  }

  /** The warnings so far. */
  List<LayoutWarning> warnings() {
    return List.copyOf(warnings);
  }

  /** Whether the layout can be built as far as it was looked at. */
  boolean clean() {
    return unknown.isEmpty() && impossible.isEmpty();
  }

  /** Every fault, what is not known first. */
  FaultList faults() {
    var all = new FaultList();
    unknown.listed().forEach(fault -> all.add(fault.pointer(), fault.detail()));
    impossible.listed().forEach(fault -> all.add(fault.pointer(), fault.detail()));
    return all;
  }

  /** Ends the request with every fault; a word that is not known names the problem. */
  void refuseIfAny() {
    faults()
        .refuseIfAny(
            unknown.isEmpty() ? ProblemCode.IMPOSSIBLE_LAYOUT : ProblemCode.INVALID_REQUEST,
            "The layout");
  }
}
