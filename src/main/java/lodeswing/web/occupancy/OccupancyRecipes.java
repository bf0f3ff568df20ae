package lodeswing.web.occupancy;

import lodeswing.job.Recipe;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutStore;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How an occupancy is computed again from its words. */
@Configuration(proxyBeanMethods = false)
class OccupancyRecipes {

  @Bean
  Recipe occupancyRecipe(LayoutStore layouts, OccupancyComputations computations) {
    return new Recipe(
        OccupancyComputations.KIND,
        words ->
            computations.of(
                OccupancyRequest.of(layouts.get(words.get(0)), words), LayoutPlace.STORED));
  }
}
