package lodeswing.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.ZoneId;
import java.time.ZoneOffset;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.Set;
import java.util.concurrent.locks.LockSupport;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lodeswing.job.ComputationKey;
import lodeswing.job.StoredResult;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.jdbc.core.simple.JdbcClient;

@Timeout(60)
class StoreBudgetTest {

  private static final long BUDGET = 100_000;

  private Instant now = Instant.parse("2026-03-01T12:00:00Z");
  private final JdbcClient database =
      StoredRows.migrated(StoredRows.source(StoredRows.memoryUrl("budget-" + System.nanoTime())));
  private final ResultTable table = new ResultTable(database, new Watch(), BUDGET);

  /** A clock that stands where the test puts it. */
  private final class Watch extends Clock {
    @Override
    public ZoneId getZone() {
      return ZoneOffset.UTC;
    }

    @Override
    public Clock withZone(ZoneId zone) {
      return this;
    }

    @Override
    public Instant instant() {
      return now;
    }
  }

  private StoredResult result(String name, int bytes) {
    return StoredResult.computed(new ComputationKey("tst", name), "test", new byte[bytes], now);
  }

  private Set<String> kept() {
    return database.sql("SELECT id FROM stored_result").query(String.class).set().stream()
        .collect(Collectors.toUnmodifiableSet());
  }

  private void sweep(Set<String> needed) {
    table.makeRoom(() -> needed);
    while (table.budget().total() > 0.9 * BUDGET) {
      LockSupport.parkNanos(1_000_000);
    }
  }

  @ParameterizedTest
  @ValueSource(longs = {1, 2, 3, 4, 5, 6, 7, 8})
  void whatIsWorthLeastGoesAndDocumentsStay(long seed) {
    var random = new Random(seed);
    Map<String, Double> worth = new LinkedHashMap<>();
    List<String> documents = new ArrayList<>();
    for (int i = 0; i < 150; i++) {
      StoredResult result = result(seed + " " + i, 1 + random.nextInt(3_000));
      Duration cost = Duration.ofMillis(1 + random.nextInt(60_000));
      table.saveIfAbsent(result, cost);
      worth.put(result.id(), (cost.toMillis() / 1e3 + 1e-3) / (StoreBudget.weight(result) + 1.0));
      byte[] layout = ("layout " + i).getBytes(StandardCharsets.UTF_8);
      String id = "lay-" + seed + "-" + i;
      table.saveIfAbsent(StoredResult.document(id, "layout", "layout " + i, layout, now));
      documents.add(id);
    }
    sweep(Set.of());

    Set<String> kept = kept();
    assertTrue(kept.containsAll(documents));
    long weight =
        database
            .sql("SELECT SUM(weight_bytes) FROM stored_result WHERE engine_revision > 0")
            .query(Long.class)
            .single();
    assertEquals(table.budget().total(), weight);
    assertTrue(weight <= 0.9 * BUDGET && weight > 0.8 * BUDGET, weight + " bytes");
    double leastKept =
        kept.stream().filter(worth::containsKey).mapToDouble(worth::get).min().orElseThrow();
    double greatestGone =
        worth.keySet().stream()
            .filter(id -> !kept.contains(id))
            .mapToDouble(worth::get)
            .max()
            .orElseThrow();
    assertTrue(greatestGone <= leastKept * (1 + 1e-12), greatestGone + " " + leastKept);
  }

  @Test
  void whatWasLongUnusedGoesBeforeWhatWasUsed() {
    List<StoredResult> old =
        IntStream.range(0, 5).mapToObj(i -> result("old " + i, 9_000)).toList();
    old.forEach(result -> table.saveIfAbsent(result, Duration.ofSeconds(8)));
    now = now.plus(Duration.ofDays(15));
    table.find(old.get(3).id());
    // Half the cost of the old ones, which two weeks have brought to a quarter.
    List<StoredResult> young =
        IntStream.range(0, 6).mapToObj(i -> result("new " + i, 9_000)).toList();
    young.forEach(result -> table.saveIfAbsent(result, Duration.ofSeconds(4)));
    awaitStamp(old.get(3).id());
    sweep(Set.of());
    Set<String> kept = kept();
    assertTrue(kept.contains(old.get(3).id()));
    young.forEach(result -> assertTrue(kept.contains(result.id())));
    assertEquals(9, kept.size());
  }

  private void awaitStamp(String id) {
    String stamp =
        "SELECT COUNT(*) FROM stored_result WHERE id = :id AND last_used_at > created_at";
    while (database.sql(stamp).param("id", id).query(Integer.class).single() == 0) {
      LockSupport.parkNanos(1_000_000);
    }
  }

  @Test
  void whatARunningJobNeedsStays() {
    StoredResult needed = result("needed", 20_000);
    table.saveIfAbsent(needed, Duration.ZERO);
    for (int i = 0; i < 10; i++) {
      table.saveIfAbsent(result("dear " + i, 9_000), Duration.ofHours(1));
    }
    sweep(Set.of(needed.id()));
    assertTrue(kept().contains(needed.id()));
  }
}
