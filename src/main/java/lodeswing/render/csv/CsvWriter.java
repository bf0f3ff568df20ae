package lodeswing.render.csv;

import java.io.IOException;

/**
 * Writes one table, cell by cell, to any receiver; holds no more than a cell.
 *
 * <p>Lines end in CRLF, cells with separators, quotes or line ends are quoted, quotes doubled
 * (Shafranovich, RFC 4180, section 2). Text is {@link CellText#guarded}; numbers are never touched
 * by that. Every row must have as many cells as the header.
 */
public final class CsvWriter {
  private static final String LINE_END = "\r\n";
  private static final char BYTE_ORDER_MARK = '\uFEFF';

  private final Appendable out;
  private final CsvDialect dialect;
  private final int columns;
  private int cell;

  /**
   * Writes the header at once.
   *
   * @param out receives the table
   * @param dialect its separators
   * @param header the columns' names with their units, such as {@code t_s}
   * @throws IllegalArgumentException where there are no columns
   * @throws IOException where the receiver fails
   */
  public CsvWriter(Appendable out, CsvDialect dialect, String... header) throws IOException {
    if (header.length == 0) {
      throw new IllegalArgumentException("A table has at least one column.");
    }
    this.out = out;
    this.dialect = dialect;
    this.columns = header.length;
    if (dialect.byteOrderMark()) {
      out.append(BYTE_ORDER_MARK);
    }
    for (String name : header) {
      text(name);
    }
    endRow();
  }

  /**
   * A number in the fewest digits that give the same double back, as every Java version writes them
   * alike.
   *
   * @throws IllegalArgumentException where it is not finite: write {@link #empty} instead
   * @throws IllegalStateException where the row is full
   */
  public CsvWriter number(double value) throws IOException {
    return figure(Decimal.shortest(value));
  }

  /**
   * A number rounded to significant digits, trailing zeros left out.
   *
   * @param digits 1 to 17
   * @throws IllegalArgumentException where it is not finite or the digits lie outside
   * @throws IllegalStateException where the row is full
   */
  public CsvWriter number(double value, int digits) throws IOException {
    return figure(Decimal.rounded(value, digits));
  }

  /** A whole number. */
  public CsvWriter integer(long value) throws IOException {
    begin();
    out.append(Long.toString(value));
    return this;
  }

  /** A text, escaped so that no spreadsheet runs it. */
  public CsvWriter text(String text) throws IOException {
    begin();
    String safe = CellText.guarded(text);
    if (needsQuotes(safe)) {
      out.append('"').append(safe.replace("\"", "\"\"")).append('"');
    } else {
      out.append(safe);
    }
    return this;
  }

  /** A cell without a value. */
  public CsvWriter empty() throws IOException {
    begin();
    if (columns == 1) {
      // A lone empty cell would be an empty line, which readers skip.
      out.append("\"\"");
    }
    return this;
  }

  /**
   * Ends the row.
   *
   * @throws IllegalStateException where the row has not as many cells as the header
   */
  public CsvWriter endRow() throws IOException {
    if (cell != columns) {
      throw new IllegalStateException("A row has " + columns + " cells, not " + cell + ".");
    }
    out.append(LINE_END);
    cell = 0;
    return this;
  }

  private CsvWriter figure(String decimal) throws IOException {
    begin();
    out.append(dialect.decimalComma() ? decimal.replace('.', dialect.decimalSign()) : decimal);
    return this;
  }

  private void begin() throws IOException {
    if (cell == columns) {
      throw new IllegalStateException("A row has " + columns + " cells; this one is full.");
    }
    if (cell > 0) {
      out.append(dialect.separator());
    }
    cell++;
  }

  private boolean needsQuotes(String text) {
    if (text.isEmpty()) {
      return columns == 1;
    }
    if (text.charAt(0) == ' ' || text.charAt(text.length() - 1) == ' ') {
      return true;
    }
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      // Both separators: a sheet may split at the one that its language uses.
      if (c == ',' || c == ';' || c == '"' || c == '\r' || c == '\n' || c == '\t') {
        return true;
      }
    }
    return false;
  }
}
