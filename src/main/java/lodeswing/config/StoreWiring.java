package lodeswing.config;

import com.zaxxer.hikari.HikariDataSource;
import java.nio.file.Path;
import java.time.Clock;
import lodeswing.job.ResultStore;
import lodeswing.store.ComputationCache;
import lodeswing.store.DataFolder;
import lodeswing.store.ResultTable;
import lodeswing.web.limits.Limits;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The store, the memory in front of it, and the threads that compute. */
@Configuration(proxyBeanMethods = false)
class StoreWiring {

  private static final int CONNECTIONS = 8;

  @Bean
  Clock clock() {
    return Clock.systemUTC();
  }

  @Bean
  DataFolder dataFolder(@Value("${lodeswing.data-folder}") String folder) {
    return new DataFolder(Path.of(folder)).prepared();
  }

  @Bean
  HikariDataSource dataSource(DataFolder folder) {
    var pool = new HikariDataSource();
    pool.setPoolName("store");
    pool.setJdbcUrl(folder.databaseUrl());
    pool.setUsername("lodeswing");
    pool.setPassword("");
    pool.setMaximumPoolSize(CONNECTIONS);
    return pool;
  }

  @Bean
  ResultTable resultStore(JdbcClient database, Clock clock, Limits limits) {
    return new ResultTable(database, clock, limits.storedBytes());
  }

  /** Always up: a damaged result is computed again, but an operator wants to know of it. */
  @Bean
  HealthIndicator storeHealthIndicator(ResultTable table) {
    return () ->
        Health.up()
            .withDetail("damagedResults", table.damaged().count())
            .withDetail("droppedResults", table.budget().dropped())
            .withDetail("storedBytes", table.budget().total())
            .build();
  }

  @Bean
  ComputationCache computations(ResultStore store, Clock clock, Limits limits) {
    int cores = Runtime.getRuntime().availableProcessors();
    return new ComputationCache(
        store,
        clock,
        new ComputationCache.Size(limits.memoryBytes(), cores, limits.waitingComputations()));
  }
}
