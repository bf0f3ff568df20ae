package lodeswing.web.fit;

import lodeswing.job.Recipe;
import lodeswing.web.posted.PostedRequests;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How fits are kept and computed again from their ids. */
@Configuration(proxyBeanMethods = false)
class FitRecipes {

  @Bean
  PostedRequests<FitRequest> postedFit(PostedRequests.Source source) {
    return source.of(FitRequest.KIND, FitRequest::of);
  }

  @Bean
  Recipe fitRecipe(PostedRequests<FitRequest> fits, FitComputations computations) {
    return fits.recipe(computations::of);
  }
}
