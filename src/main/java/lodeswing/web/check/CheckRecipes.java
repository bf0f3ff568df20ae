package lodeswing.web.check;

import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutStore;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How a check is made again from its words. */
@Configuration(proxyBeanMethods = false)
class CheckRecipes {

  @Bean
  Recipe checkRecipe(LayoutStore layouts, CheckComputations computations) {
    return new Recipe(
        CheckComputations.KIND,
        words ->
            computations.of(CheckRequest.of(layouts.get(words.get(0)), words), LayoutPlace.STORED));
  }
}
