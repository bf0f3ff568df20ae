package lodeswing.web.representation;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import org.springframework.http.HttpHeaders;

/**
 * What a request says about the answer that it wants: all by which an answer is made, and nothing
 * of how it is sent. So another part of the service can ask for an answer without HTTP.
 *
 * @param query the query string as it was sent
 * @param accept the values of Accept
 * @param acceptLanguage the values of Accept-Language
 */
public record Asking(Optional<String> query, List<String> accept, List<String> acceptLanguage) {

  /** What a request over HTTP says. */
  public static Asking of(HttpServletRequest request) {
    return new Asking(
        Optional.ofNullable(request.getQueryString()),
        Collections.list(request.getHeaders(HttpHeaders.ACCEPT)),
        Collections.list(request.getHeaders(HttpHeaders.ACCEPT_LANGUAGE)));
  }

  /** An asking by a query alone. */
  public static Asking of(String query) {
    return new Asking(Optional.of(query), List.of(), List.of());
  }
}
