package lodeswing.web.body;

import java.nio.ByteBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.regex.Pattern;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * Reads columns of numbers from a CSV table (RFC 4180): a header that names them, with or without a
 * unit behind an underscore, then a row for each of something.
 *
 * <p>Semicolons between the cells mean decimal commas; tabs are read too. Other columns are passed
 * over. Faults name the line, counted from 1.
 */
public final class ColumnTable {

  private static final Pattern NUMBER =
      Pattern.compile("[+-]?(\\d{1,40}(\\.\\d{0,40})?|\\.\\d{1,40})([eE][+-]?\\d{1,3})?");

  /** Cells that say that there is nothing, in what is recorded. */
  private static final Pattern NOTHING = Pattern.compile("|-|nan|NaN|NAN|null|NA");

  /**
   * What a table may hold.
   *
   * @param things what its rows are, such as releases
   * @param required columns that must be there, with what their cells may be
   * @param optional columns that may be there
   * @param most rows at most
   * @param gaps whether rows that lack a number are passed over
   * @param pointer what faults' pointers begin with
   */
  public record Form(
      String things,
      Map<String, NumberShape> required,
      Map<String, NumberShape> optional,
      int most,
      boolean gaps,
      String pointer) {

    public Form {
      required = new LinkedHashMap<>(required);
      optional = new LinkedHashMap<>(optional);
    }

    private Map<String, NumberShape> all() {
      var all = new LinkedHashMap<>(required);
      all.putAll(optional);
      return all;
    }
  }

  /**
   * What was read.
   *
   * @param columns numbers by column, all of one length
   * @param units what stood behind the underscore of a column's name
   * @param gaps rows that were passed over
   */
  public record Read(Map<String, List<Double>> columns, Map<String, String> units, int gaps) {}

  private final Form form;
  private final FaultList faults = new FaultList();
  private final Map<String, List<Double>> columns = new LinkedHashMap<>();
  private final Map<String, String> units = new LinkedHashMap<>();
  private final String separator;
  private final List<String> header = new ArrayList<>();
  private int rows;
  private int gaps;

  private ColumnTable(Form form, String first) {
    this.form = form;
    separator = first.indexOf(';') >= 0 ? ";" : first.indexOf('\t') >= 0 ? "\t" : ",";
    for (String cell : first.split(separator, -1)) {
      String name = cell.strip().replace("\"", "").toLowerCase(Locale.ROOT);
      String plain = name.replaceAll("_.*", "");
      boolean known = form.all().containsKey(plain) && !columns.containsKey(plain);
      header.add(known ? plain : "");
      if (known) {
        columns.put(plain, new ArrayList<>());
        if (name.length() > plain.length() + 1) {
          units.put(plain, name.substring(plain.length() + 1));
        }
      }
    }
  }

  /**
   * Reads a table.
   *
   * @param bytes UTF-8, with or without a byte-order mark
   * @throws ProblemException {@code malformed-body}, {@code too-costly}, or {@code invalid-request}
   *     with every fault
   */
  public static Read read(byte[] bytes, Form form) {
    return read(decoded(bytes), form);
  }

  /**
   * Reads a table.
   *
   * @param text with or without a byte-order mark, which spreadsheets write
   * @throws ProblemException {@code malformed-body}, {@code too-costly}, or {@code invalid-request}
   *     with every fault
   */
  public static Read read(String text, Form form) {
    String[] lines = (text.startsWith("\uFEFF") ? text.substring(1) : text).split("\r\n|\n|\r", -1);
    var table = new ColumnTable(form, lines[0]);
    if (!table.columns.keySet().containsAll(form.required().keySet())) {
      throw malformed(
          "The first row must name the columns "
              + String.join(", ", form.required().keySet()).replaceFirst(", (?=[^,]*$)", " and ")
              + ".");
    }
    for (int line = 1; line < lines.length; line++) {
      if (!lines[line].isBlank()) {
        table.row(line + 1, lines[line].split(table.separator, -1));
      }
      if (table.rows > form.most()) {
        throw new ProblemException(
            ProblemCode.TOO_COSTLY,
            "The table is too long.",
            List.of(
                new Fault(
                    form.pointer() + "/line/" + (line + 1),
                    "lower the " + form.things() + " to " + form.most())));
      }
    }
    table.faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The table");
    if (table.rows == 0) {
      throw malformed("The table has no " + form.things() + ".");
    }
    return new Read(table.columns, table.units, table.gaps);
  }

  private static String decoded(byte[] bytes) {
    try {
      return StandardCharsets.UTF_8.newDecoder().decode(ByteBuffer.wrap(bytes)).toString();
    } catch (CharacterCodingException e) {
      throw malformed("The table is not text in UTF-8.");
    }
  }

  private void row(int line, String[] cells) {
    if (cells.length != header.size()) {
      faults.add(
          form.pointer() + "/line/" + line,
          "has " + cells.length + " cells; must have " + header.size());
      return;
    }
    Map<String, String> row = new LinkedHashMap<>();
    for (int i = 0; i < cells.length; i++) {
      if (!header.get(i).isEmpty()) {
        row.put(header.get(i), cells[i].strip().replace("\"", ""));
      }
    }
    if (form.gaps()
        && form.required().keySet().stream()
            .anyMatch(name -> NOTHING.matcher(row.getOrDefault(name, "")).matches())) {
      gaps++;
      return;
    }
    rows++;
    row.forEach(
        (name, cell) -> columns.getOrDefault(name, List.of()).add(number(line, name, cell)));
  }

  private double number(int line, String name, String cell) {
    NumberShape shape = form.all().getOrDefault(name, NumberShape.between(0, 0));
    String plain = separator.equals(";") ? cell.replace(',', '.') : cell;
    double value = NUMBER.matcher(plain).matches() ? Double.parseDouble(plain) : Double.NaN;
    if (value >= shape.least() && value <= shape.most()) {
      return value + 0.0;
    }
    faults.add(form.pointer() + "/line/" + line + "/" + name, "must be " + shape.accepted());
    return 0;
  }

  private static ProblemException malformed(String detail) {
    return new ProblemException(ProblemCode.MALFORMED_BODY, detail, List.of());
  }
}
