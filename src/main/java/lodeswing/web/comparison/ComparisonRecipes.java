package lodeswing.web.comparison;

import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.posted.PostedRequests;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How comparisons are kept and computed again from their ids. */
@Configuration(proxyBeanMethods = false)
class ComparisonRecipes {

  @Bean
  PostedRequests<ComparisonRequest> postedComparison(PostedRequests.Source source) {
    return source.of(ComparisonRequest.KIND, ComparisonRequest::of);
  }

  @Bean
  Recipe comparisonRecipe(
      PostedRequests<ComparisonRequest> comparisons, ComparisonComputations computations) {
    return comparisons.recipe(asked -> computations.of(asked, LayoutPlace.STORED));
  }
}
