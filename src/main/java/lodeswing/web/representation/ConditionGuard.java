package lodeswing.web.representation;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletRequestWrapper;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.Collections;
import java.util.Enumeration;
import org.jspecify.annotations.Nullable;
import org.springframework.http.HttpHeaders;
import org.springframework.stereotype.Component;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Hides an If-None-Match that is no list of entity tags, since the framework reads it too, and
 * finds a tag in the midst of anything.
 */
@Component
final class ConditionGuard extends OncePerRequestFilter {

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    boolean readable =
        Collections.list(request.getHeaders(HttpHeaders.IF_NONE_MATCH)).stream()
            .allMatch(EntityTag::isListOrStar);
    chain.doFilter(readable ? request : new Unconditional(request), response);
  }

  /** A request without the field. */
  private static final class Unconditional extends HttpServletRequestWrapper {
    Unconditional(HttpServletRequest request) {
      super(request);
    }

    private static boolean hides(String name) {
      return name.equalsIgnoreCase(HttpHeaders.IF_NONE_MATCH);
    }

    @Override
    public @Nullable String getHeader(String name) {
      return hides(name) ? null : super.getHeader(name);
    }

    @Override
    public Enumeration<String> getHeaders(String name) {
      return hides(name) ? Collections.emptyEnumeration() : super.getHeaders(name);
    }
  }
}
