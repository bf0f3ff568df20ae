package lodeswing.web.safety;

import java.util.List;
import java.util.stream.Collectors;
import lodeswing.safety.SafetyNote;
import org.springframework.web.util.HtmlUtils;

/** The notes as a page to read and to print. */
final class SafetyPage {

  private static final String STYLE =
      """
      body{font-family:sans-serif;line-height:1.4;max-width:46em;margin:2em auto;padding:0 1em}
      h2{font-size:1.1em;margin:1.6em 0 .3em}h2 b{border:1px solid;padding:0 .4em;margin-right:.4em}
      :root{color-scheme:light dark}h1,p,td,th{overflow-wrap:break-word}
      .scroll{overflow-x:auto}
      p{margin:.3em 0}.small{font-size:.85em}table{border-collapse:collapse}
      th,td{border:1px solid;padding:.2em .5em;text-align:left}
      footer{border-top:1px solid;margin-top:2em;padding-top:.5em}
      """;

  private SafetyPage() {}

  /**
   * The page.
   *
   * @param brief whether only the lines that sheets print are on it
   */
  static String of(SafetyNotes notes, boolean brief) {
    SafetyWords words = notes.words();
    String heading = escaped(words.heading(notes.layout().title()));
    return """
    <!doctype html>
    <html lang="%1$s">
    <head><meta charset="utf-8"><meta name="viewport" content="width=device-width"><title>%2$s</title>
    <style>
    %3$s</style></head>
    <body>
    <main>
    <h1>%2$s</h1>
    %4$s</main>
    </body>
    </html>
    """
        .formatted(words.language(), heading, STYLE, brief ? lines(notes) : full(notes));
  }

  private static String lines(SafetyNotes notes) {
    return notes.shortLines().stream()
        .map(line -> "<li>" + escaped(line) + "</li>\n")
        .collect(Collectors.joining("", "<ul>\n", "</ul>\n"));
  }

  private static String full(SafetyNotes notes) {
    SafetyWords words = notes.words();
    String needs =
        notes.needs().isEmpty() ? "" : "<p>" + escaped(words.needs(notes.needs())) + "</p>\n";
    return notes.review().notes().stream()
            .map(note -> section(note, words))
            .collect(Collectors.joining())
        + table(new MagnetTable(notes), words)
        + needs
        + "<footer><p>"
        + escaped(words.deferral())
        + "</p></footer>\n";
  }

  private static String section(SafetyNote note, SafetyWords words) {
    return """
    <section id="%s">
    <h2><b>%s</b>%s</h2>
    <p>%s</p>
    <details class="small"><summary>%s, %s, %s</summary>
    <p>%s</p>
    <p>%s: %s</p>
    <p>%s: %s</p>
    </details>
    </section>
    """
        .formatted(
            note.code().word(),
            escaped(words.severity(note.severity())),
            escaped(words.title(note)),
            escaped(words.text(note)),
            escaped(words.label("label.rule")),
            escaped(words.label("label.source")),
            escaped(words.label("label.not-covered")),
            escaped(words.rule(note)),
            escaped(words.label("label.source")),
            escaped(words.source(note)),
            escaped(words.label("label.not-covered")),
            escaped(words.notCovered(note)));
  }

  private static String table(MagnetTable table, SafetyWords words) {
    if (table.rows().isEmpty()) {
      return "";
    }
    String titles =
        table.titles().stream().map(SafetyPage::columnHead).collect(Collectors.joining());
    String rows = table.rows().stream().map(SafetyPage::row).collect(Collectors.joining());
    // A narrow screen scrolls the table and not the page; by the keyboard too.
    return """
    <h2 id="magnets">%s</h2>
    <div class="scroll" role="region" aria-labelledby="magnets" tabindex="0">
    <table>
    <thead><tr>%s</tr></thead>
    <tbody>
    %s</tbody>
    </table>
    </div>
    """
        .formatted(escaped(words.label("label.magnets")), titles, rows);
  }

  private static String columnHead(String title) {
    return "<th scope=\"col\">" + escaped(title) + "</th>";
  }

  /** A row, named by its first cell. */
  private static String row(List<String> cells) {
    String name = "<th scope=\"row\" dir=\"auto\">" + escaped(cells.get(0)) + "</th>";
    return cells.stream()
        .skip(1)
        .map(cell -> "<td>" + escaped(cell) + "</td>")
        .collect(Collectors.joining("", "<tr>" + name, "</tr>\n"));
  }

  private static String escaped(String text) {
    return HtmlUtils.htmlEscape(text, "UTF-8");
  }
}
