package lodeswing.web.sweep;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** A sweep as document, table and single values. */
final class SweepAnswers {

  private static final String NONE = "none";

  private final SweepRequest request;
  private final StoredSweep stored;
  private final SweepTable table;
  private final SweepWords words;

  SweepAnswers(SweepRequest request, byte[] result) {
    this.request = request;
    this.stored = StoredSweep.read(result);
    this.table = new SweepTable(request, stored);
    this.words = new SweepWords(table);
  }

  SweepTable table() {
    return table;
  }

  SweepWords words() {
    return words;
  }

  /** The document. */
  byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("sweepId", request.id());
    members.put("layoutId", request.layout().layoutId());
    members.put("model", request.layout().model());
    members.putAll(request.canonical().members());
    members.put("columns", table.columns().stream().map(SweepColumn::name).toList());
    Map<String, Object> units = new LinkedHashMap<>();
    for (SweepColumn column : table.columns()) {
      if (!column.unit().isEmpty()) {
        units.put(column.name(), column.unit());
      }
    }
    members.put("units", Body.of(units));
    members.put("rows", table.rows());
    members.put("points", (double) table.rows().size());
    members.put("problems", (double) table.problems());
    members.put("sentence", words.sentence());
    members.put("followedS", stored.followed());
    members.put("notes", words.notes(stored.followed()));
    members.put("engineRevision", (double) request.revision());
    members.put("links", links());
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private Body links() {
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", request.url());
    links.put("csv", request.url() + "?format=csv");
    links.put("plot", request.url() + "/plot");
    links.put("layout", "/v1/layouts/" + request.layout().layoutId());
    links.put("variant", "/v1/layouts/" + request.layout().layoutId() + "/variant");
    return Body.of(links);
  }

  /** The table, a point a row. */
  byte[] csv(CsvDialect dialect) {
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              table.columns().stream().map(SweepColumn::csvName).toArray(String[]::new));
      for (List<Object> row : table.rows()) {
        for (Object cell : row) {
          write(csv, cell);
        }
        csv.endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void write(CsvWriter csv, Object cell) throws IOException {
    if (cell instanceof Double number) {
      csv.number(number);
    } else if (cell instanceof Optional<?>) {
      csv.empty();
    } else {
      csv.text(cell.toString());
    }
  }

  /**
   * The column that a value or a picture is of.
   *
   * @param name as the query has it; the first measure where empty
   * @throws ProblemException {@code invalid-request} where there is none of that name
   */
  int column(Optional<String> name) {
    if (name.isEmpty()) {
      return table.shown().get(0);
    }
    return table
        .column(name.get())
        .orElseThrow(
            () ->
                new ProblemException(
                    ProblemCode.INVALID_REQUEST,
                    "The sweep has no column of this name.",
                    List.of(
                        new Fault(
                            "?column",
                            "is none of "
                                + String.join(
                                    ", ",
                                    table.columns().stream().map(SweepColumn::name).toList())))));
  }

  /** One value for a cell. */
  Object value(SweepValue value, int column, int row) {
    return switch (value) {
      case SENTENCE -> words.sentence();
      case CELL -> cell(row, column);
      case LEAST -> extreme(column, false).map(r -> cell(r + 1, column)).orElse(NONE);
      case GREATEST -> extreme(column, true).map(r -> cell(r + 1, column)).orElse(NONE);
      case LEAST_AT -> extreme(column, false).map(r -> cell(r + 1, 0)).orElse(NONE);
      case GREATEST_AT -> extreme(column, true).map(r -> cell(r + 1, 0)).orElse(NONE);
      case CHANGES ->
          table.changes(column).isEmpty()
              ? NONE
              : String.join("; ", table.changes(column).stream().map(words::where).toList());
      case POINTS -> (double) table.rows().size();
      case PROBLEMS -> (double) table.problems();
      case SWEEP_ID -> request.id();
    };
  }

  private Optional<Integer> extreme(int column, boolean greatest) {
    return table.extreme(column, greatest);
  }

  private Object cell(int row, int column) {
    if (row < 1 || row > table.rows().size()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "The sweep has no such row.",
          List.of(new Fault("?row", "is " + row + "; rows go from 1 to " + table.rows().size())));
    }
    Object cell = table.rows().get(row - 1).get(column);
    return cell instanceof Optional<?> ? table.problem(row - 1).orElse(NONE) : cell;
  }

  /** A number as a cell shows it. */
  static String shown(double number) {
    return Numbers.shortest(number);
  }
}
