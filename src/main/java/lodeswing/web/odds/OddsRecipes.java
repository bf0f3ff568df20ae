package lodeswing.web.odds;

import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How odds are computed again from their id. */
@Configuration(proxyBeanMethods = false)
class OddsRecipes {

  @Bean
  Recipe oddsRecipe(OddsStore odds, OddsComputations computations) {
    return new Recipe(
        "odds", words -> computations.of(odds.get(words.get(0)).today(), LayoutPlace.STORED));
  }
}
