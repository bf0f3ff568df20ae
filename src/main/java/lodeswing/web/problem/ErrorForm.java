package lodeswing.web.problem;

import jakarta.servlet.http.HttpServletRequest;
import org.jspecify.annotations.Nullable;

/**
 * How a request wants to hear of errors and of answers that are not ready.
 *
 * @param asLine as one line of plain text
 * @param inline with status 200
 */
public record ErrorForm(boolean asLine, boolean inline) {

  /**
   * Reads the query alone, and forgivingly: it must work where everything else is wrong.
   *
   * @param request as it came
   */
  public static ErrorForm of(HttpServletRequest request) {
    return ofQuery(request.getQueryString());
  }

  static ErrorForm ofQuery(@Nullable String query) {
    boolean asLine = false;
    boolean inline = false;
    boolean oneValue = false;
    boolean formNamed = false;
    if (query != null) {
      for (String pair : query.split("&")) {
        asLine |= pair.equals("format=text") || pair.equals("format=csv");
        inline |= pair.equals("errors=inline");
        oneValue |= pair.startsWith("value=");
        formNamed |= pair.startsWith("format=");
      }
    }
    // A single value is text where no form is named.
    return new ErrorForm(asLine || inline || (oneValue && !formNamed), inline);
  }

  /** The status to send for a true one. */
  public int status(int status) {
    return inline ? 200 : status;
  }
}
