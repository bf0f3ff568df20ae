package lodeswing.web.basin;

import java.util.List;
import lodeswing.job.Computation;
import lodeswing.job.Recipe;
import lodeswing.web.posted.PostedRequests;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How the work behind maps and lists is made again from the ids of what was asked. */
@Configuration(proxyBeanMethods = false)
class BasinRecipes {

  @Bean
  PostedRequests<BasinRequest> postedBasins(PostedRequests.Source source) {
    return source.of(BasinRequest.KIND, BasinRequest::of);
  }

  @Bean
  Recipe surveyRecipe(PostedRequests<BasinRequest> basins, BasinComputations computations) {
    return new Recipe("basin-survey", words -> computations.survey(asked(basins, words)));
  }

  @Bean
  Recipe tileRecipe(PostedRequests<BasinRequest> basins, BasinComputations computations) {
    return new Recipe("basin-tile", words -> tile(asked(basins, words), words, computations));
  }

  private static Computation tile(
      BasinRequest basin, List<String> words, BasinComputations computations) {
    String[] place = words.get(1).split("/");
    return computations.tile(
        basin,
        TilePlace.read(place[0], place[1], place[2]),
        Integer.parseInt(words.get(2)),
        Boolean.parseBoolean(words.get(3)));
  }

  @Bean
  Recipe previewRecipe(PostedRequests<BasinRequest> basins, BasinComputations computations) {
    return new Recipe(
        "basin-preview",
        words ->
            computations.preview(
                asked(basins, words),
                Integer.parseInt(words.get(1)),
                Integer.parseInt(words.get(2))));
  }

  @Bean
  Recipe summaryRecipe(PostedRequests<BasinRequest> basins, SummaryComputations computations) {
    return new Recipe(
        "basin-summary",
        words ->
            computations.of(
                new SummaryRequest(
                    asked(basins, words),
                    Integer.parseInt(words.get(1)),
                    Integer.parseInt(words.get(2)))));
  }

  @Bean
  Recipe outcomesRecipe(OutcomeListComputations computations) {
    return new Recipe("outcomes", words -> computations.of(computations.get(words.get(0)).today()));
  }

  private static BasinRequest asked(PostedRequests<BasinRequest> basins, List<String> words) {
    return basins.get(words.get(0)).today();
  }
}
