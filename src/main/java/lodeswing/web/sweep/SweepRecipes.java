package lodeswing.web.sweep;

import lodeswing.job.Recipe;
import lodeswing.web.posted.PostedRequests;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How sweeps are kept and computed again from their ids. */
@Configuration(proxyBeanMethods = false)
class SweepRecipes {

  @Bean
  PostedRequests<SweepRequest> postedSweep(PostedRequests.Source source) {
    return source.of(SweepRequest.KIND, SweepRequest::of);
  }

  @Bean
  Recipe sweepRecipe(PostedRequests<SweepRequest> sweeps, SweepComputations computations) {
    return sweeps.recipe(computations::of);
  }
}
