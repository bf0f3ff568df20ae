package lodeswing.web.problempage;

import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.representation.HtmlDocument;

/**
 * What is to be known about a kind of problem.
 *
 * @param type address of this page
 * @param code the kind as one word
 * @param title short title
 * @param status HTTP status
 * @param meaning what it means
 * @param remedy how to mend it
 */
record ProblemPage(
    String type, String code, String title, int status, String meaning, String remedy) {

  static ProblemPage of(ProblemCode code) {
    return new ProblemPage(
        code.type(), code.code(), code.title(), code.status(), code.meaning(), code.remedy());
  }

  byte[] html() {
    return document(
        title,
        """
        <p><code>%s</code>, HTTP status %d</p>
        <h2>What it means</h2>
        <p>%s</p>
        <h2>How to mend it</h2>
        <p>%s</p>
        <p><a href="/problems">All problems</a></p>
        """
            .formatted(
                HtmlDocument.escaped(code),
                status,
                HtmlDocument.escaped(meaning),
                HtmlDocument.escaped(remedy)));
  }

  static byte[] htmlOfAll(List<ProblemPage> pages) {
    String items =
        pages.stream()
            .map(
                page ->
                    "<li><a href=\"%s\">%s</a> (<code>%s</code>)</li>\n"
                        .formatted(page.type(), HtmlDocument.escaped(page.title()), page.code()))
            .collect(Collectors.joining());
    return document("Problems", "<ul>\n" + items + "</ul>\n");
  }

  /** These pages are in English, as all problems are. */
  private static byte[] document(String title, String content) {
    return HtmlDocument.of(Locale.ENGLISH, title, content);
  }
}
