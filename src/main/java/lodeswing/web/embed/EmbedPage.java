package lodeswing.web.embed;

import static lodeswing.web.embed.EmbeddedFigure.escaped;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import lodeswing.words.Words;

/** The pages that hold a figure: one to read and to copy from, one to be framed. */
final class EmbedPage {

  private static final String STYLE =
      """
      :root{color-scheme:light dark}
      body{font:1rem/1.5 system-ui,sans-serif;margin:0;background:#fcfbf7;color:#22262b}
      main{max-width:66rem;margin:0 auto;padding:1rem}
      h1{font-size:1.35rem;margin:.2em 0 .8em}h2{font-size:1.1rem;margin:1.6em 0 .3em}
      pre{padding:.8em;border:1px solid #8f8978;border-radius:.3em;background:#f4f1e9;font-size:.85rem;
      white-space:pre-wrap;overflow-wrap:anywhere;user-select:all}
      a{color:#2c5c94}img{max-width:100%;height:auto}lodeswing-figure{display:block}
      lodeswing-figure>a{display:block}
      .framed{padding:.5rem}
      .unseen{position:absolute;width:1px;height:1px;overflow:hidden;clip-path:inset(50%)}
      @media (prefers-color-scheme:dark){body{background:#16191d;color:#e9e6de}
      pre{background:#1f242a;border-color:#6d7480}a{color:#9dc3f0}}
      @media print{.copy{display:none}body{background:none}}
      """;

  static final String OEMBED = "application/json+oembed";
  static final String OEMBED_XML = "text/xml+oembed";

  private final EmbeddedFigure figure;
  private final FigureScript script;
  private final String origin;

  EmbedPage(EmbeddedFigure figure, FigureScript script, String origin) {
    this.figure = figure;
    this.script = script;
    this.origin = origin;
  }

  /**
   * What a page may do: run our script, ask us, show our pictures; nothing of anybody else.
   *
   * @param ancestors who may frame it, as {@code frame-ancestors} takes it
   */
  static String policy(String ancestors) {
    return "default-src 'none'; script-src 'self'; style-src 'sha256-%s'; img-src 'self' data:;"
            .formatted(digest(STYLE))
        + " connect-src 'self'; base-uri 'none'; form-action 'none';"
        + " require-trusted-types-for 'script'; trusted-types 'none'; frame-ancestors "
        + ancestors;
  }

  private static String digest(String style) {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(style.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }

  /** Where oEmbed tells how to embed the page, in a form. */
  String oembed(String form) {
    return origin + Oembed.path(origin + figure.page(), form);
  }

  /** The page with the figure alone. */
  String framed() {
    return document(
        """
        <main class="framed">
        <h1 class="unseen">%s</h1>
        %s</main>
        """
            .formatted(escaped(figure.title()), figure.element("")));
  }

  /** The page with the figure and what to copy. */
  String whole() {
    Words words = figure.words();
    return document(
        """
        <main>
        <h1>%s</h1>
        %s<section class="copy">
        <h2>%s</h2>
        <p>%s</p>
        <pre><code>%s</code></pre>
        <p>%s</p>
        <pre><code>%s</code></pre>
        <p>%s</p>
        <pre><code>%s</code></pre>
        </section>
        </main>
        """
            .formatted(
                escaped(figure.title()),
                figure.element(""),
                escaped(words.text("copy.heading")),
                escaped(words.text("copy.element")),
                escaped(figure.script(origin, script) + "\n" + figure.element(origin).strip()),
                escaped(words.text("copy.frame")),
                escaped(figure.iframe(origin, Oembed.WIDTH, Oembed.HEIGHT)),
                escaped(words.text("copy.policy")),
                escaped("script-src %1$s; connect-src %1$s; img-src %1$s".formatted(origin))));
  }

  private String document(String body) {
    String title = escaped(figure.title());
    return """
    <!doctype html>
    <html lang="%1$s">
    <head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
    <title>%2$s</title>
    <link rel="alternate" type="%3$s" href="%4$s" title="%2$s">
    <link rel="alternate" type="%5$s" href="%6$s" title="%2$s">
    <link rel="icon" href="data:,">
    <link rel="preload" as="fetch" crossorigin href="%10$s">
    %7$s
    <style>%8$s</style></head>
    <body>
    %9$s</body>
    </html>
    """
        .formatted(
            figure.locale().toLanguageTag(),
            title,
            OEMBED,
            escaped(oembed("json")),
            OEMBED_XML,
            escaped(oembed("xml")),
            figure.script("", script),
            STYLE,
            body,
            escaped(figure.map()));
  }
}
