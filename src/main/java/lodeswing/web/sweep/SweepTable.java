package lodeswing.web.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/** A sweep's rows by its columns. */
final class SweepTable {

  private final SweepRequest request;
  private final List<SweepColumn> columns;
  private final List<List<Object>> rows;

  SweepTable(SweepRequest request, StoredSweep stored) {
    this.request = request;
    this.columns = new SweepColumns(request).all();
    this.rows = stored.rows();
  }

  SweepRequest request() {
    return request;
  }

  List<SweepColumn> columns() {
    return columns;
  }

  List<List<Object>> rows() {
    return rows;
  }

  /** The columns of measures that a picture shows, by their numbers. */
  List<Integer> shown() {
    return IntStream.range(0, columns.size()).filter(c -> columns.get(c).shown()).boxed().toList();
  }

  /** The number of a column by its name in the document or in CSV. */
  Optional<Integer> column(String name) {
    return IntStream.range(0, columns.size())
        .filter(c -> columns.get(c).name().equals(name) || columns.get(c).csvName().equals(name))
        .boxed()
        .findFirst();
  }

  /** A number; NaN where the cell has none. */
  double number(int row, int column) {
    return rows.get(row).get(column) instanceof Double number ? number : Double.NaN;
  }

  /** A word or flag as text; empty where the cell has none. */
  Optional<String> word(int row, int column) {
    Object cell = rows.get(row).get(column);
    if (cell instanceof Boolean flag) {
      return Optional.of(flag ? "yes" : "no");
    }
    return cell instanceof String text ? Optional.of(text) : Optional.empty();
  }

  /** Why a point has no figures, or not all of them. */
  Optional<String> problem(int row) {
    return word(row, columns.size() - 1);
  }

  long problems() {
    return IntStream.range(0, rows.size()).filter(row -> problem(row).isPresent()).count();
  }

  /** Rows from whose predecessor a word differs, where one quantity varies. */
  List<Integer> changes(int column) {
    List<Integer> changes = new ArrayList<>();
    int before = -1;
    for (int row = 0; row < rows.size(); row++) {
      if (word(row, column).isEmpty()) {
        continue;
      }
      if (before >= 0 && !word(row, column).equals(word(before, column))) {
        changes.add(row);
      }
      before = row;
    }
    return changes;
  }

  /** The row with the least or the greatest number of a column; the first of several. */
  Optional<Integer> extreme(int column, boolean greatest) {
    int found = -1;
    for (int row = 0; row < rows.size(); row++) {
      double value = number(row, column);
      if (Double.isNaN(value)) {
        continue;
      }
      boolean better =
          found < 0 || (greatest ? value > number(found, column) : value < number(found, column));
      found = better ? row : found;
    }
    return found < 0 ? Optional.empty() : Optional.of(found);
  }
}
