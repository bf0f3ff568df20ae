package lodeswing.config;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.time.Clock;
import lodeswing.store.Backlog;
import lodeswing.store.ComputationCache;
import lodeswing.store.CountedComputations;
import lodeswing.store.ResultTable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Primary;

/** What is counted, for {@code /actuator/prometheus}. */
@Configuration(proxyBeanMethods = false)
class MeterWiring {

  /** What all others get where they ask for computations. */
  @Bean
  @Primary
  CountedComputations countedComputations(
      ComputationCache computations, Clock clock, MeterRegistry meters) {
    return new CountedComputations(computations, new Backlog(computations, clock, meters), meters);
  }

  @Bean
  MeterBinder storeMeters(ResultTable table) {
    return new StoreMeters(table);
  }
}
