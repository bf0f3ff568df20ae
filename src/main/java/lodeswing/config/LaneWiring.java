package lodeswing.config;

import io.micrometer.core.instrument.Counter;
import io.micrometer.core.instrument.MeterRegistry;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.outcome.OutcomeFinders;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What many releases are computed with, chosen once; health shows the choice. */
@Configuration(proxyBeanMethods = false)
class LaneWiring {

  @Bean
  LaneProvider laneProvider() {
    return LaneProvider.choose();
  }

  @Bean
  OutcomeFinders outcomeFinders(LaneProvider lanes, MeterRegistry meters) {
    Counter releases =
        Counter.builder("lodeswing.releases")
            .description("Releases whose end was sought; those of the warm-up are not counted")
            .register(meters);
    return new OutcomeFinders(lanes, releases::increment);
  }

  /** Always up: without vectors everything works, only slower. */
  @Bean
  HealthIndicator lanesHealthIndicator(LaneProvider lanes, WarmUp warmUp) {
    return () ->
        Health.up()
            .withDetail("bits", lanes.bits())
            .withDetail("onVectors", lanes.onVectors())
            .withDetail("reason", lanes.reason())
            .withDetail("warm", warmUp.over())
            .build();
  }
}
