package lodeswing.config;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.List;
import lodeswing.web.representation.ServerTiming;
import org.springframework.web.filter.OncePerRequestFilter;

/**
 * Begins to measure each request, and lets the pages that may ask read what came of it
 * (Timing-Allow-Origin of the W3C's Resource Timing, section 4.5.1).
 */
final class TimingFilter extends OncePerRequestFilter {

  private final String origins;

  TimingFilter(List<String> origins) {
    this.origins = String.join(", ", origins);
  }

  @Override
  protected void doFilterInternal(
      HttpServletRequest request, HttpServletResponse response, FilterChain chain)
      throws ServletException, IOException {
    ServerTiming.begin(request);
    if (!origins.isEmpty()) {
      response.setHeader("Timing-Allow-Origin", origins);
    }
    chain.doFilter(request, response);
  }
}
