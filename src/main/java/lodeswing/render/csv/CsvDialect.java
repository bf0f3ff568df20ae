package lodeswing.render.csv;

/**
 * How a table is written.
 *
 * @param decimalComma decimal commas and semicolons between cells, as many spreadsheets on the
 *     European continent expect; else decimal points and commas
 * @param byteOrderMark whether the table begins with U+FEFF, which tells some spreadsheets that it
 *     is UTF-8
 */
public record CsvDialect(boolean decimalComma, boolean byteOrderMark) {

  /** RFC 4180 with decimal points and no mark. */
  public static final CsvDialect STANDARD = new CsvDialect(false, false);

  char separator() {
    return decimalComma ? ';' : ',';
  }

  char decimalSign() {
    return decimalComma ? ',' : '.';
  }
}
