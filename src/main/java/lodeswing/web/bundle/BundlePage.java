package lodeswing.web.bundle;

import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import lodeswing.job.ComputationKey;
import lodeswing.web.bundle.BundlePlan.Planned;
import lodeswing.web.bundle.BundlePlan.Section;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.safety.SafetyNotes;
import lodeswing.web.worksheet.SurePlace;
import lodeswing.words.Words;
import org.springframework.web.util.HtmlUtils;

/** The page at which a reader of a bundle begins; it needs neither network nor script. */
final class BundlePage {

  private static final String STYLE =
      """
      :root{color-scheme:light dark}
      body{font-family:sans-serif;line-height:1.45;max-width:62em;margin:0 auto;padding:1em}
      h1{margin-bottom:0;overflow-wrap:anywhere}h2{margin:1.8em 0 .4em}.sub{margin-top:.2em}
      a:focus-visible{outline:3px solid;outline-offset:2px}
      .safety{border:3px solid;border-radius:.4em;padding:0 1em 1em;margin:1.2em 0}
      .safety li{margin:.3em 0}.small{font-size:.88em}
      table{border-collapse:collapse;width:100%}
      th,td{border:1px solid;padding:.35em .5em;text-align:left;vertical-align:top}
      td{overflow-wrap:anywhere}td.size,td.form{white-space:nowrap;overflow-wrap:normal}
      td.size{text-align:right}code{overflow-wrap:anywhere}
      .pictures{display:grid;gap:1.2em;grid-template-columns:repeat(auto-fill,minmax(min(22em,100%),1fr))}
      figure{margin:0;break-inside:avoid}
      img{display:block;width:100%;height:auto;background:#fff;border:1px solid}
      img.map{image-rendering:pixelated}figcaption{margin-top:.3em}
      @media print{body{max-width:none;padding:0}section{break-inside:auto}tr{break-inside:avoid}
      .pictures{grid-template-columns:1fr 1fr}}
      """;

  private static final int DIGITS = 3;
  private static final int PLACE_DIGITS = 7;
  private static final double KILO = 1e3;
  private static final double MEGA = 1e6;

  private final BundleContents contents;
  private final LayoutDocument layout;
  private final Words words;

  private BundlePage(BundleContents contents) {
    this.contents = contents;
    this.layout = contents.request().layout();
    this.words = Words.of("bundle", contents.style().locale());
  }

  /** The page as HTML. */
  static String of(BundleContents contents) {
    return new BundlePage(contents).page();
  }

  private String page() {
    String title = layout.title().orElse(words.text("untitled"));
    String sections =
        Arrays.stream(Section.values())
            .filter(section -> section != Section.SAFETY)
            .map(this::section)
            .collect(Collectors.joining());
    return """
    <!doctype html>
    <html lang="%1$s">
    <head><meta charset="utf-8"><meta name="viewport" content="width=device-width,initial-scale=1">
    <title>%2$s \u2013 %3$s</title>
    <style>
    %4$s</style></head>
    <body>
    <header><h1 dir="auto">%2$s</h1><p class="sub">%3$s</p></header>
    <main>
    %5$s<p>%6$s</p>
    %7$s%8$s%9$s</main>
    </body>
    </html>
    """
        .formatted(
            words.locale().toLanguageTag(),
            escaped(title),
            escaped(words.text("subtitle")),
            STYLE,
            safety(),
            escaped(words.text("intro")),
            sections,
            leftOut(),
            about());
  }

  /** On top, since what it says counts before anything is touched. */
  private String safety() {
    String lines =
        SafetyNotes.of(layout, words.locale()).shortLines().stream()
            .map(line -> "<li dir=\"auto\">" + escaped(line) + "</li>\n")
            .collect(Collectors.joining());
    return """
    <section class="safety" aria-labelledby="safety">
    <h2 id="safety">%s</h2>
    <ul>
    %s</ul>
    %s</section>
    """
        .formatted(escaped(words.text("section.safety")), lines, table(Section.SAFETY));
  }

  private String section(Section section) {
    boolean pictures = section == Section.PICTURES;
    String inside = pictures ? figures() : table(section);
    return inside.isEmpty()
        ? ""
        : """
        <section aria-labelledby="%1$s">
        <h2 id="%1$s">%2$s</h2>
        %3$s</section>
        """
            .formatted(section.word(), escaped(words.text("section." + section.word())), inside);
  }

  private List<BundleFile> in(Section section) {
    return contents.files().stream().filter(file -> file.planned().section() == section).toList();
  }

  private String table(Section section) {
    String rows = in(section).stream().map(this::row).collect(Collectors.joining());
    return rows.isEmpty()
        ? ""
        : "<table>\n<thead><tr><th scope=\"col\">%s</th><th scope=\"col\">%s</th><th scope=\"col\">%s</th></tr></thead>\n<tbody>\n%s</tbody>\n</table>\n"
            .formatted(heading("file"), heading("form"), heading("size"), rows);
  }

  private String heading(String column) {
    return escaped(words.text("column." + column));
  }

  private String row(BundleFile file) {
    return """
    <tr><td><a href="%1$s">%2$s</a><br><code class="small">%1$s</code></td>\
    <td class="form">%3$s</td><td class="size">%4$s</td></tr>
    """
        .formatted(
            file.planned().path(),
            escaped(described(file.planned())),
            form(file),
            escaped(size(file.bytes())));
  }

  private String figures() {
    String all = in(Section.PICTURES).stream().map(this::figure).collect(Collectors.joining());
    return all.isEmpty() ? "" : "<div class=\"pictures\">\n" + all + "</div>\n";
  }

  private String figure(BundleFile file) {
    Planned planned = file.planned();
    return """
    <figure><a href="%1$s"><img src="%1$s" alt="%2$s"%3$s></a>
    <figcaption>%4$s <span class="small">(%5$s, %6$s)</span></figcaption></figure>
    """
        .formatted(
            planned.path(),
            escaped(words.text("alt." + planned.key(), arguments())),
            planned.path().endsWith(".png") ? " class=\"map\"" : "",
            escaped(described(planned)),
            form(file),
            escaped(size(file.bytes())));
  }

  private static String form(BundleFile file) {
    return file.form().word().toUpperCase(Locale.ROOT);
  }

  private String described(Planned file) {
    String key = "file." + file.section().word() + "." + file.key();
    int hyphen = key.lastIndexOf('-');
    // A page of a sheet has its number at the end of its name.
    return words.has(key)
        ? words.text(key, arguments())
        : words.text(
            key.substring(0, hyphen) + ".page",
            Map.of("page", Integer.parseInt(key.substring(hyphen + 1))));
  }

  private Map<String, Object> arguments() {
    return Map.of("place", place());
  }

  private String place() {
    SurePlace release = contents.release();
    return words.text(
        "place." + layout.model(),
        Map.of(
            "x",
            words.number(release.x(), PLACE_DIGITS),
            "y",
            words.number(release.y(), PLACE_DIGITS)));
  }

  private String size(int bytes) {
    if (bytes < KILO) {
      return words.quantity(bytes, DIGITS, "B");
    }
    return bytes < MEGA
        ? words.quantity(bytes / KILO, DIGITS, "kB")
        : words.quantity(bytes / MEGA, DIGITS, "MB");
  }

  private String leftOut() {
    if (contents.leftOut().isEmpty()) {
      return "";
    }
    String rows =
        contents.leftOut().stream()
            .map(
                one ->
                    "<tr><td>%s<br><code class=\"small\">%s</code></td><td>%s%s</td><td><code class=\"small\">%s</code></td></tr>\n"
                        .formatted(
                            escaped(missing(one.planned())),
                            one.planned().path(),
                            escaped(reason(one.code())),
                            one.detail().isEmpty()
                                ? ""
                                : "<br><span lang=\"en\" class=\"small\">"
                                    + escaped(one.detail())
                                    + "</span>",
                            escaped("GET " + one.url())))
            .collect(Collectors.joining());
    return """
    <section aria-labelledby="left-out">
    <h2 id="left-out">%s</h2>
    <p>%s</p>
    <table>
    <thead><tr><th scope="col">%s</th><th scope="col">%s</th><th scope="col">%s</th></tr></thead>
    <tbody>
    %s</tbody>
    </table>
    </section>
    """
        .formatted(
            escaped(words.text("left-out.heading")),
            escaped(words.text("left-out.intro")),
            heading("file"),
            heading("why"),
            heading("request"),
            rows);
  }

  private String missing(Planned file) {
    return file.isOfPages() ? words.text("file.sheets.placing-sheet") : described(file);
  }

  private String reason(String code) {
    String key = "reason." + code;
    return words.text(words.has(key) ? key : "reason.other");
  }

  private String about() {
    Map<String, Object> facts =
        Map.of(
            "layout",
            layout.layoutId(),
            "revision",
            Integer.toString(ComputationKey.ENGINE_REVISION),
            "place",
            place(),
            "spread",
            words.text(
                "size." + layout.model(),
                Map.of("value", words.number(contents.request().spreadMm(), PLACE_DIGITS))),
            "request",
            contents.url());
    String lines =
        List.of("made", "release", "manifest", "post", "language").stream()
            .map(key -> "<p>" + escaped(words.text("about." + key, facts)) + "</p>\n")
            .collect(Collectors.joining());
    return """
    <section aria-labelledby="about">
    <h2 id="about">%s</h2>
    %s<p>%s <code class="small">%s</code></p>
    <p><a href="manifest.json">manifest.json</a></p>
    </section>
    """
        .formatted(
            escaped(words.text("about.heading")),
            lines,
            escaped(words.text("about.request")),
            escaped("GET " + contents.url()));
  }

  private static String escaped(String text) {
    return HtmlUtils.htmlEscape(text, "UTF-8");
  }
}
