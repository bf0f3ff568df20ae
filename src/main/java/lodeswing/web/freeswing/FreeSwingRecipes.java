package lodeswing.web.freeswing;

import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutStore;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How a free swing is computed again from its words. */
@Configuration(proxyBeanMethods = false)
class FreeSwingRecipes {

  @Bean
  Recipe freeSwingRecipe(LayoutStore layouts, FreeSwingComputations computations) {
    return new Recipe(
        FreeSwingComputations.KIND,
        words ->
            computations.of(
                FreeSwingRequest.of(layouts.get(words.get(0)), words), LayoutPlace.STORED));
  }
}
