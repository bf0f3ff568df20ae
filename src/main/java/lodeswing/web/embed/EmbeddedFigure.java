package lodeswing.web.embed;

import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.words.Words;
import org.springframework.web.util.HtmlUtils;

/**
 * One figure as it is put on a page: the layout, the releases shown first, and the reader's
 * language.
 *
 * @param layout what it shows
 * @param releases which paths it opens with
 * @param language the language that was asked for by name, if any was
 * @param locale the language of the words around it
 */
record EmbeddedFigure(
    LayoutDocument layout, ShownReleases releases, Optional<String> language, Locale locale) {

  /** Side of the picture that stands in for the figure where no scripts run [px]. */
  private static final int PICTURE = 512;

  /** The texts about it. */
  Words words() {
    return Words.of("embed", locale);
  }

  /** What it is called. */
  String title() {
    return layout
        .title()
        .map(own -> words().text("heading", Map.of("title", own)))
        .orElseGet(() -> words().text("heading.untitled"));
  }

  /** The address of its page, without the host. */
  String page() {
    return "/embed/" + layout.layoutId() + query();
  }

  /** The address of the figure alone, to be framed. */
  String frame() {
    return "/embed/" + layout.layoutId() + "/frame" + query();
  }

  private String query() {
    String shown = releases.query("?");
    return shown + language.map(tag -> (shown.isEmpty() ? "?" : "&") + "lang=" + tag).orElse("");
  }

  /** The address of the map's document, word for word as the script asks for it. */
  String map() {
    return "/v1/layouts/" + layout.layoutId() + "/basin?format=json&wait=3";
  }

  /** The address of a picture of the map, without the host. */
  String picture(int side) {
    return "/v1/layouts/"
        + layout.layoutId()
        + "/basin?format=png&patterns=true&width="
        + side
        + "&wait=60";
  }

  /** The tag that loads the script. */
  String script(String origin, FigureScript script) {
    return "<script type=\"module\" src=\"%s\" integrity=\"%s\" crossorigin=\"anonymous\"></script>"
        .formatted(escaped(origin + script.path()), script.integrity());
  }

  /** The element; within it what is seen where no scripts run. */
  String element(String origin) {
    return """
    <lodeswing-figure layout="%s"%s%s>
      <a href="%s">%s</a>
      <noscript><img src="%s" width="%d" height="%d" alt="%s"></noscript>
    </lodeswing-figure>
    """
        .formatted(
            layout.layoutId(),
            releases.attributes(),
            language.map(tag -> " lang=\"" + escaped(tag) + "\"").orElse(""),
            escaped(origin + page()),
            escaped(title()),
            escaped(origin + picture(PICTURE)),
            PICTURE,
            PICTURE,
            escaped(words().text("picture")));
  }

  /** A frame that shows it, for sites that take no scripts. */
  String iframe(String origin, int width, int height) {
    return "<iframe src=\"%s\" width=\"%d\" height=\"%d\" title=\"%s\" loading=\"lazy\"></iframe>"
        .formatted(escaped(origin + frame()), width, height, escaped(title()));
  }

  static String escaped(String text) {
    return HtmlUtils.htmlEscape(text, "UTF-8");
  }
}
