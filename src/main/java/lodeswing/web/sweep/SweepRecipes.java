package lodeswing.web.sweep;

import lodeswing.job.Recipe;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** How sweeps are computed again from their id. */
@Configuration(proxyBeanMethods = false)
class SweepRecipes {

  @Bean
  Recipe sweepRecipe(SweepStore sweeps, SweepComputations computations) {
    return new Recipe("sweep", words -> computations.of(sweeps.get(words.get(0)).today()));
  }
}
