package lodeswing.web.front;

import static lodeswing.web.representation.HtmlDocument.escaped;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.words.Words;

/** The root as a page: what the service is, where each client begins, and the sample layouts. */
final class FrontPage {

  private final SampleLayouts samples;
  private final Words words;

  FrontPage(SampleLayouts samples, Locale locale) {
    this.samples = samples;
    words = Words.of("front", locale);
  }

  /** Its title. */
  String title() {
    return words.text("title");
  }

  /** What follows the heading, as markup. */
  String content() {
    String first = "/v1/layouts/" + samples.all().get(0).document().layoutId();
    String embedded = "/embed/" + samples.all().get(0).document().layoutId();
    String release = "?x=-70&y=30";
    return paragraph(words.text("about"))
        + client(
            "site",
            List.of(
                link(embedded, "site.page"),
                link(first + "/trace" + release + "&durationS=12&format=svg", "site.picture"),
                link(first + "/basin?format=png", "site.map")))
        + client(
            "sheet",
            List.of(
                link(first + "/outcome" + release + "&format=text", "sheet.cell"),
                link(first + "/trace" + release + "&durationS=5&format=csv", "sheet.table"),
                link(first + "/template", "sheet.print")))
        + client(
            "mobile",
            List.of(
                link("/docs", "mobile.docs"),
                link("/v3/api-docs.yaml", "mobile.contract"),
                link("/v1/limits", "mobile.limits")))
        + heading(words.text("samples"))
        + "<ul class=\"cards\">\n"
        + samples.all().stream().map(this::card).collect(Collectors.joining())
        + "</ul>\n<footer>\n"
        + paragraph(words.text("safety"))
        + "<p>"
        + link("/problems", "problems")
        + "</p>\n</footer>\n";
  }

  private String client(String name, List<String> links) {
    return heading(words.text(name))
        + links.stream()
            .map(link -> "<li>" + link + "</li>\n")
            .collect(Collectors.joining("", "<ul>\n", "</ul>\n"));
  }

  private String card(SampleLayouts.Sample sample) {
    String id = sample.document().layoutId();
    String title = escaped(sample.document().title().orElse(sample.name()));
    // Samples tell of themselves in English; a reader's program must know it.
    return """
    <li><a href="/embed/%1$s"><img src="/v1/layouts/%1$s/plate?format=svg" alt="" loading="lazy" width="400" height="361">
    <span lang="en">%2$s</span></a>
    <p lang="en">%3$s</p>
    <p><code>%4$s</code> · <a href="/v1/layouts/%1$s/safety-notes?format=html">%5$s</a></p></li>
    """
        .formatted(
            id,
            title,
            escaped(sample.description()),
            escaped(sample.name()),
            escaped(words.text("notes")));
  }

  private String link(String url, String key) {
    return "<a href=\"" + escaped(url) + "\">" + escaped(words.text(key)) + "</a>";
  }

  private static String heading(String text) {
    return "<h2>" + escaped(text) + "</h2>\n";
  }

  private static String paragraph(String text) {
    return "<p>" + escaped(text) + "</p>\n";
  }
}
