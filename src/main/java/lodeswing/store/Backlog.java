package lodeswing.store;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import io.micrometer.core.instrument.Gauge;
import io.micrometer.core.instrument.MeterRegistry;
import io.micrometer.core.instrument.TimeGauge;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import lodeswing.job.Computation;
import lodeswing.job.Job;
import lodeswing.job.JobLedger;
import lodeswing.job.JobState;

/**
 * What was asked for and has not ended, measured when somebody looks: how many computations wait
 * for a thread of this process, by kind; how many jobs there are of all processes; and since when
 * the oldest has been asked for.
 */
public final class Backlog {

  private static final int KNOWN = 10_000;

  private final JobLedger ledger;
  private final Clock clock;
  private final MeterRegistry meters;
  private final Set<String> kinds = ConcurrentHashMap.newKeySet();
  private final Cache<String, Asked> asked =
      Caffeine.newBuilder().executor(Runnable::run).maximumSize(KNOWN).build();

  /**
   * An empty backlog.
   *
   * @param ledger tells how far jobs have come
   * @param clock tells how old they are
   * @param meters shows the measures
   */
  public Backlog(JobLedger ledger, Clock clock, MeterRegistry meters) {
    this.ledger = ledger;
    this.clock = clock;
    this.meters = meters;
    TimeGauge.builder("lodeswing.jobs.oldest.age", this::oldestAge, TimeUnit.SECONDS)
        .description("Age of the oldest job that has not ended; 0 where there is none")
        .register(meters);
    Gauge.builder("lodeswing.jobs.open", () -> ledger.open().count())
        .description("Jobs of all processes that outlive a process and have not ended")
        .register(meters);
  }

  /** Notes that a computation is asked for. */
  void enter(Computation computation) {
    String kind = computation.kind();
    asked.put(computation.jobId(), new Asked(kind, computation.releases()));
    if (kinds.add(kind)) {
      Gauge.builder("lodeswing.queue.waiting", () -> waiting(kind))
          .description("Computations that wait for a free core")
          .tag("kind", kind)
          .register(meters);
      Gauge.builder("lodeswing.queue.releases", () -> waitingReleases(kind))
          .description("Releases that the computations that wait will cost")
          .tag("kind", kind)
          .register(meters);
    }
  }

  /** Notes that a computation has its answer. */
  void leave(Computation computation) {
    asked.invalidate(computation.jobId());
  }

  private long waiting(String kind) {
    return jobs(kind).filter(job -> job.state() == JobState.WAITING).count();
  }

  private long waitingReleases(String kind) {
    return jobs(kind)
        .filter(job -> job.state() == JobState.WAITING)
        .map(job -> Optional.ofNullable(asked.getIfPresent(job.jobId())))
        .mapToLong(known -> known.map(Asked::releases).orElse(0L))
        .sum();
  }

  private double oldestAge() {
    Instant now = clock.instant();
    return Stream.concat(
            kinds.stream().flatMap(this::jobs).map(Job::submittedAt),
            ledger.open().oldest().stream())
        .map(asked -> Duration.between(asked, now).toMillis() / 1e3)
        .max(Double::compare)
        .orElse(0.0);
  }

  /** The jobs of a kind that have not ended; those that have are forgotten. */
  private Stream<Job> jobs(String kind) {
    return asked.asMap().entrySet().stream()
        .filter(entry -> entry.getValue().kind().equals(kind))
        .flatMap(entry -> unended(entry.getKey()).stream());
  }

  private Optional<Job> unended(String jobId) {
    Optional<Job> job = ledger.findJob(jobId);
    if (job.filter(known -> known.state().ended()).isPresent()) {
      asked.invalidate(jobId);
      return Optional.empty();
    }
    return job;
  }

  private record Asked(String kind, long releases) {}
}
