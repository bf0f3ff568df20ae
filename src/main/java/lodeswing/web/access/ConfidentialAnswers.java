package lodeswing.web.access;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import jakarta.servlet.http.HttpServletResponseWrapper;
import java.io.IOException;
import lodeswing.job.Realm;
import org.springframework.http.HttpHeaders;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Lets nobody in between keep what is answered about a private layout (RFC 9111, section 5.2.2):
 * whatever an answer says of how long it may be kept, and wherever it names such a layout.
 */
public final class ConfidentialAnswers extends OncePerRequestFilter {

  private static final String NOT_KEPT = "private, no-store";

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    var confining = new Confining(response);
    if (Realm.in(AddressedText.of(request)).isPresent()) {
      confining.confine();
    }
    chain.doFilter(request, confining);
  }

  /** An answer whose fields tell whether it is about a private layout. */
  private static final class Confining extends HttpServletResponseWrapper {

    private boolean confined;

    Confining(HttpServletResponse response) {
      super(response);
    }

    void confine() {
      confined = true;
      super.setHeader(HttpHeaders.CACHE_CONTROL, NOT_KEPT);
      super.addHeader(HttpHeaders.VARY, HttpHeaders.AUTHORIZATION);
    }

    @Override
    public void setHeader(String name, String value) {
      super.setHeader(name, sent(name, value));
    }

    @Override
    public void addHeader(String name, String value) {
      if (confined && name.equalsIgnoreCase(HttpHeaders.CACHE_CONTROL)) {
        super.setHeader(name, NOT_KEPT);
      } else {
        super.addHeader(name, sent(name, value));
      }
    }

    /** Named by its answer alone: what a post has made is told in Location and Link. */
    private String sent(String name, String value) {
      if (!confined && value != null && Realm.in(value).isPresent()) {
        confine();
      }
      return confined && name.equalsIgnoreCase(HttpHeaders.CACHE_CONTROL) ? NOT_KEPT : value;
    }
  }
}
