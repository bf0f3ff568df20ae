package lodeswing.config;

import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.binder.MeterBinder;
import java.time.Clock;
import lodeswing.store.Backlog;
import lodeswing.store.ComputationCache;
import lodeswing.store.CountedComputations;
import lodeswing.store.JobDesk;
import lodeswing.store.ResultTable;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What is counted, for {@code /actuator/prometheus}. */
@Configuration(proxyBeanMethods = false)
class MeterWiring {

  @Bean
  CountedComputations countedComputations(
      ComputationCache computations, JobDesk desk, Clock clock, MeterRegistry meters) {
    return new CountedComputations(computations, new Backlog(desk, clock, meters), meters);
  }

  @Bean
  MeterBinder storeMeters(ResultTable table) {
    return new StoreMeters(table);
  }
}
