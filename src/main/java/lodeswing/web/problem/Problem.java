package lodeswing.web.problem;

import java.util.List;
import lodeswing.render.csv.CellText;

/**
 * The problem document of RFC 9457, with two members of our own.
 *
 * @param type address of the page that explains the kind
 * @param title short title of the kind
 * @param status HTTP status
 * @param detail one sentence about this occurrence
 * @param code the kind as one word
 * @param errors everything that is wrong, each with its place
 */
public record Problem(
    String type, String title, int status, String detail, String code, List<Fault> errors) {

  private static final int LONGEST_LINE = 1_000;

  /** The document of an occurrence. */
  public static Problem of(ProblemCode code, String detail, List<Fault> faults) {
    return new Problem(
        code.type(), code.title(), code.status(), detail, code.code(), List.copyOf(faults));
  }

  /** The document of a problem that was thrown. */
  public static Problem of(ProblemException thrown) {
    return of(thrown.code(), String.valueOf(thrown.getMessage()), thrown.faults());
  }

  /** All of it in one line for a cell of a sheet, nothing said twice. */
  public String line() {
    var text = new StringBuilder("ERROR ").append(code).append(": ").append(detail);
    for (Fault fault : errors) {
      if (!detail.contains(fault.detail())) {
        text.append(" [").append(fault.pointer()).append("] ").append(fault.detail());
      }
    }
    if (text.length() > LONGEST_LINE) {
      text.setLength(LONGEST_LINE);
      text.append('…');
    }
    return CellText.line(text.toString());
  }
}
