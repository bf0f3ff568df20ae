package lodeswing.web.basin;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import lodeswing.web.body.Body;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.NumberShape;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * Reads releases from a CSV table (RFC 4180): a header that names x and y, perhaps vx and vy, with
 * or without a unit behind an underscore, then a row for each release.
 *
 * <p>Semicolons between the cells mean decimal commas. Faults name the line, counted from 1.
 */
final class ReleaseTable {

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,40}(\\.\\d{0,40})?|\\.\\d{1,40})([eE][+-]?\\d{1,3})?");
  private static final List<String> COLUMNS = List.of("x", "y", "vx", "vy");

  private final FaultList faults = new FaultList();
  private final Map<String, List<Double>> columns = new LinkedHashMap<>();
  private final String separator;
  private final List<String> header;

  private ReleaseTable(String first) {
    separator = first.indexOf(';') >= 0 ? ";" : first.indexOf('\t') >= 0 ? "\t" : ",";
    header = new ArrayList<>();
    for (String name : first.split(separator, -1)) {
      String plain = name.strip().replace("\"", "").toLowerCase(Locale.ROOT).replaceAll("_.*", "");
      header.add(plain);
      if (COLUMNS.contains(plain)) {
        columns.put(plain, new ArrayList<>());
      }
    }
  }

  /**
   * Reads a table into columns.
   *
   * @param bytes the table, UTF-8
   * @param most releases at most
   * @throws ProblemException {@code malformed-body}, {@code too-costly}, or {@code invalid-request}
   *     with every fault
   */
  static Body read(byte[] bytes, int most) {
    String[] lines = decoded(bytes).split("\r\n|\n|\r", -1);
    var table = new ReleaseTable(lines[0]);
    if (!table.columns.containsKey("x") || !table.columns.containsKey("y")) {
      throw malformed("The first row must name the columns x and y.");
    }
    for (int line = 1; line < lines.length; line++) {
      if (!lines[line].isBlank()) {
        table.row(line + 1, lines[line].split(table.separator, -1));
      }
      if (table.columns.values().iterator().next().size() > most) {
        throw new ProblemException(
            ProblemCode.TOO_COSTLY,
            "The list is too long.",
            List.of(new Fault("/line/" + (line + 1), "lower the releases to " + most)));
      }
    }
    table.faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The table");
    if (table.columns.values().iterator().next().isEmpty()) {
      throw malformed("The table has no releases.");
    }
    return Body.of(new LinkedHashMap<>(table.columns));
  }

  private static String decoded(byte[] bytes) {
    try {
      String text = StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
      return text.startsWith("\uFEFF") ? text.substring(1) : text;
    } catch (CharacterCodingException e) {
      throw malformed("The table is not text in UTF-8.");
    }
  }

  private void row(int line, String[] cells) {
    if (cells.length != header.size()) {
      faults.add("/line/" + line, "has " + cells.length + " cells; must have " + header.size());
      return;
    }
    for (int i = 0; i < cells.length; i++) {
      List<Double> column = columns.get(header.get(i));
      if (column != null) {
        column.add(number(line, header.get(i), cells[i].strip().replace("\"", "")));
      }
    }
  }

  private double number(int line, String name, String cell) {
    NumberShape shape = name.startsWith("v") ? OutcomeShapes.SPEED : BasinShapes.PLACE;
    String plain = separator.equals(";") ? cell.replace(',', '.') : cell;
    double value = NUMBER.matcher(plain).matches() ? Double.parseDouble(plain) : Double.NaN;
    if (value >= shape.least() && value <= shape.most()) {
      return value + 0.0;
    }
    faults.add("/line/" + line + "/" + name, "must be " + shape.accepted());
    return 0;
  }

  private static ProblemException malformed(String detail) {
    return new ProblemException(ProblemCode.MALFORMED_BODY, detail, List.of());
  }
}
