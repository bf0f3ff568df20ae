package lodeswing.web.trace;

import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.posted.PostedRequests;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How traces are kept and computed again from their ids. */
@Configuration(proxyBeanMethods = false)
class TraceRecipes {

  @Bean
  PostedRequests<TraceRequest> postedTrace(PostedRequests.Source source) {
    return source.of(TraceRequest.KIND, TraceRequest::of);
  }

  @Bean
  Recipe traceRecipe(PostedRequests<TraceRequest> traces, TraceComputations computations) {
    return traces.recipe(asked -> computations.of(asked, LayoutPlace.STORED));
  }
}
