package lodeswing.web.representation;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Locale;
import org.springframework.web.util.HtmlUtils;

/**
 * A page of the service's own: one frame, one style and one policy for all of them. It needs no
 * script, and nothing of anybody else.
 */
public final class HtmlDocument {

  /** Colours hold 4.5:1 on both grounds (WCAG 2.2, success criterion 1.4.3). */
  private static final String STYLE =
      """
      :root{color-scheme:light dark;--ink:#22262b;--ground:#fcfbf7;--line:#8f8978;--link:#2c5c94;--field:#f4f1e9}
      body{font:1rem/1.5 system-ui,sans-serif;margin:0;background:var(--ground);color:var(--ink)}
      main{max-width:60rem;margin:0 auto;padding:1rem;overflow-wrap:break-word}
      h1{font-size:1.5rem;margin:.2em 0 .6em}h2{font-size:1.15rem;margin:1.6em 0 .4em}
      a{color:var(--link)}code{font-size:.9em}img{max-width:100%;height:auto;display:block}
      ul.cards{list-style:none;padding:0;display:grid;gap:1rem;grid-template-columns:repeat(auto-fill,minmax(13rem,1fr))}
      ul.cards li{border:1px solid var(--line);border-radius:.3em;padding:.7em;background:var(--field)}
      ul.cards img{background:#fcfbf7;margin-bottom:.5em}ul.cards p{margin:.3em 0;font-size:.9rem}
      footer{border-top:1px solid var(--line);margin-top:2em;padding-top:.5em}
      @media (prefers-color-scheme:dark){:root{--ink:#e9e6de;--ground:#16191d;--line:#6d7480;--link:#9dc3f0;--field:#1f242a}}
      @media print{body,ul.cards li{background:none}ul.cards li{break-inside:avoid}}
      """;

  /** What such a page may load and do, for {@code Content-Security-Policy}. */
  public static final String POLICY =
      "default-src 'none'; style-src 'sha256-"
          + digest()
          + "'; img-src 'self' data:; base-uri 'none'; form-action 'none'; frame-ancestors 'none'";

  private HtmlDocument() {}

  /**
   * The page.
   *
   * @param locale its language
   * @param title its title and heading, as text
   * @param content what follows the heading, as markup: whoever writes it escapes what is not its
   *     own
   */
  public static byte[] of(Locale locale, String title, String content) {
    return """
    <!doctype html>
    <html lang="%1$s">
    <head><meta charset="utf-8"><meta name="viewport" content="width=device-width, initial-scale=1">
    <title>%2$s</title>
    <link rel="icon" href="data:,">
    <style>%3$s</style></head>
    <body>
    <main>
    <h1>%2$s</h1>
    %4$s</main>
    </body>
    </html>
    """
        .formatted(locale.toLanguageTag(), escaped(title), STYLE, content)
        .getBytes(StandardCharsets.UTF_8);
  }

  /** Text as it may stand in markup, in quotation marks too. */
  public static String escaped(String text) {
    return HtmlUtils.htmlEscape(text, StandardCharsets.UTF_8.name());
  }

  private static String digest() {
    try {
      byte[] digest =
          MessageDigest.getInstance("SHA-256").digest(STYLE.getBytes(StandardCharsets.UTF_8));
      return Base64.getEncoder().encodeToString(digest);
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }
}
