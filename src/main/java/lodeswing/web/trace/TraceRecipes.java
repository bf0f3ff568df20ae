package lodeswing.web.trace;

import java.util.List;
import lodeswing.job.Computation;
import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How a trace is computed again from its id. */
@Configuration(proxyBeanMethods = false)
class TraceRecipes {

  @Bean
  Recipe traceRecipe(TraceStore traces, TraceComputations computations) {
    return new Recipe("trace", words -> trace(words, traces, computations));
  }

  private static Computation trace(
      List<String> words, TraceStore traces, TraceComputations computations) {
    TraceRequest asked = traces.get(words.get(0)).today();
    return computations.of(asked, asked.url(), LayoutPlace.STORED);
  }
}
