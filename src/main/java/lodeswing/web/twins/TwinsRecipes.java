package lodeswing.web.twins;

import java.util.List;
import lodeswing.job.Computation;
import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How twins are computed again from their id. */
@Configuration(proxyBeanMethods = false)
class TwinsRecipes {

  @Bean
  Recipe twinsRecipe(TwinsStore pairs, TwinsComputations computations) {
    return new Recipe(TwinsRequest.KIND, words -> twins(words, pairs, computations));
  }

  private static Computation twins(
      List<String> words, TwinsStore pairs, TwinsComputations computations) {
    TwinsRequest asked = pairs.get(words.get(0)).today();
    return computations.of(asked, asked.url(), LayoutPlace.STORED);
  }
}
