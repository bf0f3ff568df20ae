package lodeswing.web.odds;

import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.posted.PostedRequests;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How odds are kept and computed again from their ids. */
@Configuration(proxyBeanMethods = false)
class OddsRecipes {

  @Bean
  PostedRequests<OddsRequest> postedOdds(PostedRequests.Source source) {
    return source.of(OddsRequest.KIND, OddsRequest::of);
  }

  @Bean
  Recipe oddsRecipe(PostedRequests<OddsRequest> odds, OddsComputations computations) {
    return odds.recipe(asked -> computations.of(asked, LayoutPlace.STORED));
  }
}
