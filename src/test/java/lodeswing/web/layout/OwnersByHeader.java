package lodeswing.web.layout;

import jakarta.servlet.FilterChain;
import jakarta.servlet.ServletException;
import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import java.util.EnumSet;
import java.util.Optional;
import lodeswing.web.access.Caller;
import lodeswing.web.access.Scope;
import org.springframework.boot.web.servlet.FilterRegistrationBean;
import org.springframework.context.annotation.Bean;
import org.springframework.core.Ordered;
import org.springframework.web.filter.OncePerRequestFilter;

/** Takes a request's word for who sends it, so that what belongs to whom is tested by itself. */
class OwnersByHeader {

  static final String FIELD = "Test-Owner";

  @Bean
  FilterRegistrationBean<OncePerRequestFilter> markingCallers() {
    var registration = new FilterRegistrationBean<OncePerRequestFilter>(new Marking());
    registration.setOrder(Ordered.LOWEST_PRECEDENCE);
    return registration;
  }

  private static final class Marking extends OncePerRequestFilter {

    @Override
    protected void doFilterInternal(
        HttpServletRequest request, HttpServletResponse response, FilterChain chain)
        throws ServletException, IOException {
      Optional<String> owner = Optional.ofNullable(request.getHeader(FIELD));
      owner.ifPresent(
          name ->
              new Caller("key:" + name, owner, EnumSet.of(Scope.READ, Scope.COMPUTE))
                  .mark(request));
      chain.doFilter(request, response);
    }
  }
}
