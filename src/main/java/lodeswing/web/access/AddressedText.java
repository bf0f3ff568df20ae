package lodeswing.web.access;

import jakarta.servlet.http.HttpServletRequest;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import org.springframework.web.util.UriUtils;

/** What a request's address says, escapes undone. */
final class AddressedText {

  private AddressedText() {}

  /** Path and query, as they were sent and with escapes undone; either may name a realm. */
  static String of(HttpServletRequest request) {
    String sent =
        request.getRequestURI()
            + Optional.ofNullable(request.getQueryString()).map(query -> "?" + query).orElse("");
    return sent.indexOf('%') < 0 ? sent : sent + "\n" + unescaped(sent);
  }

  private static String unescaped(String sent) {
    try {
      return UriUtils.decode(sent, StandardCharsets.UTF_8);
    } catch (IllegalArgumentException e) {
      // Broken escapes are refused by whoever reads the address.
      return "";
    }
  }
}
