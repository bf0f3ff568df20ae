package lodeswing.config;

import com.zaxxer.hikari.HikariDataSource;
import com.zaxxer.hikari.HikariPoolMXBean;
import java.nio.file.Path;
import java.time.Clock;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.UUID;
import java.util.stream.Collectors;
import javax.sql.DataSource;
import lodeswing.job.Computations;
import lodeswing.job.Pace;
import lodeswing.job.Recipe;
import lodeswing.job.ResultStore;
import lodeswing.store.Claims;
import lodeswing.store.ComputationCache;
import lodeswing.store.DataFolder;
import lodeswing.store.FileCare;
import lodeswing.store.JobDesk;
import lodeswing.store.JobQueue;
import lodeswing.store.JobTable;
import lodeswing.store.LeasedClaims;
import lodeswing.store.ResultTable;
import lodeswing.store.WriteProbe;
import lodeswing.web.jobs.FailureDocuments;
import lodeswing.web.limits.Limits;
import org.springframework.beans.factory.annotation.Value;
import org.springframework.boot.health.contributor.Health;
import org.springframework.boot.health.contributor.HealthIndicator;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;
import org.springframework.context.annotation.Profile;
import org.springframework.jdbc.core.simple.JdbcClient;

/** The store, the memory in front of it, and the threads that compute. */
@Configuration(proxyBeanMethods = false)
class StoreWiring {

  private static final int CONNECTIONS = 8;
  private static final long PATIENCE_MS = 5000;

  /**
   * Names a run of a service among all that share a database.
   *
   * @param text unlike any other
   */
  record RunName(String text) {}

  @Bean
  RunName runName() {
    return new RunName("run-" + UUID.randomUUID());
  }

  @Bean
  Clock clock() {
    return Clock.systemUTC();
  }

  @Bean
  DataFolder dataFolder(@Value("${lodeswing.data-folder}") String folder) {
    return new DataFolder(Path.of(folder)).prepared();
  }

  @Bean
  @Profile("!postgres")
  HikariDataSource embeddedDatabase(DataFolder folder) {
    return pool(folder.databaseUrl(), "lodeswing", "");
  }

  @Bean
  @Profile("postgres")
  HikariDataSource sharedDatabase(
      @Value("${spring.datasource.url}") String url,
      @Value("${spring.datasource.username}") String user,
      @Value("${spring.datasource.password}") String password) {
    return pool(url, user, password);
  }

  private static HikariDataSource pool(String url, String user, String password) {
    var pool = new HikariDataSource();
    pool.setPoolName("store");
    pool.setJdbcUrl(url);
    pool.setUsername(user);
    pool.setPassword(password);
    pool.setMaximumPoolSize(CONNECTIONS);
    pool.setConnectionTimeout(PATIENCE_MS);
    return pool;
  }

  @Bean
  @Profile("!postgres")
  Claims noClaims() {
    return Claims.alone();
  }

  @Bean
  @Profile("postgres")
  Claims leasedClaims(JdbcClient database, RunName run) {
    return new LeasedClaims(
        database, run.text(), JobQueue.HEARTBEAT.multipliedBy(JobQueue.MISSED_HEARTBEATS));
  }

  @Bean
  JobTable jobTable(JdbcClient database, Clock clock, FailureDocuments documents) {
    return new JobTable(database, clock, documents);
  }

  @Bean
  JobDesk jobDesk(JobTable table, DataSource database, Claims claims, Clock clock) {
    return new JobDesk(table, JobQueue.entry(database, clock), claims, clock);
  }

  @Bean(initMethod = "start")
  JobQueue jobQueue(
      RunName run,
      DataSource database,
      JobTable table,
      JobDesk desk,
      Claims claims,
      List<Recipe> recipes,
      Computations computations,
      @Value("${lodeswing.computing-threads}") int threads) {
    Map<String, Recipe> byKind =
        recipes.stream().collect(Collectors.toUnmodifiableMap(Recipe::kind, recipe -> recipe));
    return new JobQueue(
        database,
        new JobQueue.Worker(
            run.text(),
            orAllCores(threads),
            claims,
            table,
            desk,
            words ->
                Optional.ofNullable(byKind.get(words.get(0)))
                    .orElseThrow()
                    .remake()
                    .apply(words.subList(1, words.size())),
            computations));
  }

  @Bean
  ResultTable resultStore(JdbcClient database, Clock clock, Limits limits) {
    return new ResultTable(database, clock, limits.storedBytes());
  }

  @Bean(initMethod = "start")
  WriteProbe writeProbe(JdbcClient database, Clock clock, HikariDataSource pool) {
    return new WriteProbe(
        database,
        clock,
        () ->
            Optional.ofNullable(pool.getHikariPoolMXBean())
                .ifPresent(HikariPoolMXBean::softEvictConnections));
  }

  @Bean(initMethod = "start")
  @Profile("!postgres")
  FileCare fileCare(DataSource database) {
    return new FileCare(database);
  }

  /** Down while nothing can be written. */
  @Bean
  HealthIndicator writingHealthIndicator(WriteProbe probe) {
    return () -> (probe.writes() ? Health.up() : Health.down()).build();
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
  ComputationCache computations(
      ResultStore store,
      Clock clock,
      Limits limits,
      Claims claims,
      JobDesk desk,
      @Value("${lodeswing.computing-threads}") int threads) {
    return new ComputationCache(
        store,
        clock,
        new ComputationCache.Size(
            limits.memoryBytes(),
            orAllCores(threads),
            limits.waitingComputations(),
            limits.waitingReleases()),
        claims,
        desk);
  }

  @Bean
  Pace pace(ComputationCache computations) {
    return computations.pace();
  }

  /** Always up: how fast this process is, and whether that was measured, tells of its refusals. */
  @Bean
  HealthIndicator paceHealthIndicator(Pace pace) {
    return () ->
        Health.up()
            .withDetail("releasesPerSecond", Math.round(pace.releasesPerSecond()))
            .withDetail("basis", pace.guessed() ? "guess" : "measured")
            .build();
  }

  private static int orAllCores(int threads) {
    return threads > 0 ? threads : Runtime.getRuntime().availableProcessors();
  }
}
