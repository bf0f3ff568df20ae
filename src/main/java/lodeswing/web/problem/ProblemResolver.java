package lodeswing.web.problem;

import jakarta.servlet.http.HttpServletRequest;
import jakarta.servlet.http.HttpServletResponse;
import java.io.IOException;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.Ordered;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.HandlerExceptionResolver;
import org.springframework.web.servlet.ModelAndView;
import org.springframework.web.util.DisconnectedClientHelper;

/** Answers every exception of every handler, and of the search for one, with a problem. */
@Component
final class ProblemResolver implements HandlerExceptionResolver, Ordered {

  private static final Logger LOG = LoggerFactory.getLogger(ProblemResolver.class);

  private final ProblemWriter writer;

  ProblemResolver(ProblemWriter writer) {
    this.writer = writer;
  }

  @Override
  public int getOrder() {
    return Ordered.HIGHEST_PRECEDENCE;
  }

  @Override
  public ModelAndView resolveException(
      HttpServletRequest request,
      HttpServletResponse response,
      @Nullable Object handler,
      Exception thrown) {
    if (DisconnectedClientHelper.isClientDisconnectedException(thrown)) {
      return new ModelAndView();
    }
    ProblemException problem = ThrownProblems.of(thrown);
    try {
      writer.write(request, response, Problem.of(problem), problem.headers());
    } catch (IOException e) {
      LOG.debug("The client left before its problem was written", e);
    }
    return new ModelAndView();
  }
}
