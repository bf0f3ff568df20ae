package lodeswing.web.tuning;

import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.posted.PostedRequests;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How tunings are kept and computed again from their ids. */
@Configuration(proxyBeanMethods = false)
class TuningRecipes {

  @Bean
  PostedRequests<TuningRequest> postedTuning(PostedRequests.Source source) {
    return source.of(TuningRequest.KIND, TuningRequest::of);
  }

  @Bean
  Recipe tuningRecipe(PostedRequests<TuningRequest> tunings, TuningComputations computations) {
    return tunings.recipe(asked -> computations.of(asked, LayoutPlace.STORED));
  }
}
