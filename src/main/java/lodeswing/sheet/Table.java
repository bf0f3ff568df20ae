package lodeswing.sheet;

import java.util.List;

/**
 * A table to print.
 *
 * @param columns its columns
 * @param rows a text for each column
 */
public record Table(List<Column> columns, List<List<String>> rows) {

  /**
   * Copies the lists.
   *
   * @throws IllegalArgumentException where a row has not one text a column
   */
  public Table {
    columns = List.copyOf(columns);
    rows = rows.stream().map(List::copyOf).toList();
    int count = columns.size();
    if (count == 0 || rows.stream().anyMatch(row -> row.size() != count)) {
      throw new IllegalArgumentException("A table has columns, and a text for each in every row.");
    }
  }

  /**
   * A column.
   *
   * @param head what it holds
   * @param figures whether it holds figures, which stand at its right edge
   */
  public record Column(String head, boolean figures) {}
}
