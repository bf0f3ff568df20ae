package lodeswing.web.basin;

import java.util.LinkedHashMap;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.body.ColumnTable;
import lodeswing.web.body.NumberShape;
import lodeswing.web.problem.ProblemException;

/** Reads releases from a table with columns x and y, perhaps vx and vy. */
final class ReleaseTable {

  private static final Map<String, NumberShape> PLACES = new LinkedHashMap<>();
  private static final Map<String, NumberShape> PUSHES = new LinkedHashMap<>();

  static {
    PLACES.put("x", BasinShapes.PLACE);
    PLACES.put("y", BasinShapes.PLACE);
    PUSHES.put("vx", OutcomeShapes.SPEED);
    PUSHES.put("vy", OutcomeShapes.SPEED);
  }

  private ReleaseTable() {}

  /**
   * Reads a table into columns.
   *
   * @param bytes the table, UTF-8
   * @param most releases at most
   * @throws ProblemException {@code malformed-body}, {@code too-costly}, or {@code invalid-request}
   *     with every fault
   */
  static Body read(byte[] bytes, int most) {
    var form = new ColumnTable.Form("releases", PLACES, PUSHES, most, false, "");
    return Body.of(new LinkedHashMap<>(ColumnTable.read(bytes, form).columns()));
  }
}
