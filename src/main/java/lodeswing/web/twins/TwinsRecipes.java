package lodeswing.web.twins;

import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.posted.PostedRequests;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How twins are kept and computed again from their ids. */
@Configuration(proxyBeanMethods = false)
class TwinsRecipes {

  @Bean
  PostedRequests<TwinsRequest> postedTwins(PostedRequests.Source source) {
    return source.of(TwinsRequest.KIND, (layout, stored) -> TwinsRequest.of(layout, stored, false));
  }

  @Bean
  Recipe twinsRecipe(PostedRequests<TwinsRequest> pairs, TwinsComputations computations) {
    return pairs.recipe(asked -> computations.of(asked, LayoutPlace.STORED));
  }
}
