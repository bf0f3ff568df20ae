package lodeswing.render.csv;

import java.util.ArrayList;
import java.util.List;

/** Reads a table strictly by the grammar of RFC 4180, section 2. */
final class CsvReader {
  private final String text;
  private final char separator;
  private int at;

  private CsvReader(String text, char separator) {
    this.text = text;
    this.separator = separator;
  }

  static List<List<String>> read(String text, char separator) {
    return new CsvReader(text, separator).table();
  }

  private List<List<String>> table() {
    List<List<String>> rows = new ArrayList<>();
    while (at < text.length()) {
      List<String> row = new ArrayList<>();
      row.add(cell());
      while (at < text.length() && text.charAt(at) == separator) {
        at++;
        row.add(cell());
      }
      if (!text.startsWith("\r\n", at)) {
        throw new IllegalArgumentException("No line end at " + at);
      }
      at += 2;
      rows.add(row);
    }
    return rows;
  }

  private String cell() {
    StringBuilder cell = new StringBuilder();
    if (at < text.length() && text.charAt(at) == '"') {
      at++;
      while (text.charAt(at) != '"' || text.startsWith("\"\"", at)) {
        at += text.charAt(at) == '"' ? 1 : 0;
        cell.append(text.charAt(at++));
      }
      at++;
      return cell.toString();
    }
    while (text.charAt(at) != separator && text.charAt(at) != '\r') {
      if (text.charAt(at) == '"' || text.charAt(at) == '\n') {
        throw new IllegalArgumentException("A bare quote or line feed at " + at);
      }
      cell.append(text.charAt(at++));
    }
    return cell.toString();
  }
}
