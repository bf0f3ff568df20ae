package lodeswing.web.tuning;

import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How a tuning is computed again from its id. */
@Configuration(proxyBeanMethods = false)
class TuningRecipes {

  @Bean
  Recipe tuningRecipe(TuningStore tunings, TuningComputations computations) {
    return new Recipe(
        "tuning", words -> computations.of(tunings.get(words.get(0)).today(), LayoutPlace.STORED));
  }
}
