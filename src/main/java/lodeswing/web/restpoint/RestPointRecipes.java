package lodeswing.web.restpoint;

import lodeswing.job.Recipe;
import lodeswing.web.landscape.Landscapes;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutStore;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How rest points are found again from a layout's id. */
@Configuration(proxyBeanMethods = false)
class RestPointRecipes {

  @Bean
  Recipe restPointRecipe(LayoutStore layouts, Landscapes landscapes) {
    return new Recipe(
        "rest-points",
        words ->
            RestPointComputation.of(layouts.get(words.get(0)), landscapes, LayoutPlace.STORED));
  }
}
