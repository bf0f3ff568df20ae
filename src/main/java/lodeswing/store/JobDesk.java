package lodeswing.store;

import com.github.benmanes.caffeine.cache.Cache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.temporal.ChronoUnit;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.Executors;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.TimeUnit;
import java.util.function.Consumer;
import java.util.stream.Collectors;
import lodeswing.job.Answer;
import lodeswing.job.BackgroundThread;
import lodeswing.job.Computation;
import lodeswing.job.Job;
import lodeswing.job.JobLedger;
import lodeswing.job.JobNeededException;
import lodeswing.job.JobState;
import lodeswing.job.Realm;
import org.jspecify.annotations.Nullable;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;

/**
 * The flights of this process as jobs, and the rows of those that must outlive it.
 *
 * <p>A job gets its row, and its place in the queue of all processes, when somebody is told to come
 * back for its result; from then on what happens to it is written there, and read from there what
 * other processes do with it. One thread does both, twice a second, and renews the claims.
 */
public final class JobDesk implements JobLedger, AutoCloseable {

  private static final Duration ENDED_JOBS_ARE_KNOWN_FOR = Duration.ofHours(1);
  private static final int KNOWN_JOBS = 10_000;
  private static final long ROUND_MS = 500;
  private static final int RENEWED_EVERY = 10;
  private static final int FORGOTTEN_EVERY = 7200;
  private static final Logger LOG = LoggerFactory.getLogger(JobDesk.class);

  private final JobTable rows;
  private final Consumer<String> queue;
  private final Claims claims;
  private final Clock clock;
  private final Cache<String, Flight> flights;

  /** Ended flights as jobs: a flight would hold its result for as long. */
  private final Cache<String, Job> ended;

  /** The jobs that have rows and go on in this process, and when each was first asked for. */
  private final Map<String, Instant> kept = new ConcurrentHashMap<>();

  private final Set<Consumer<Flight>> leavers = ConcurrentHashMap.newKeySet();
  private final ScheduledExecutorService thread =
      Executors.newSingleThreadScheduledExecutor(new BackgroundThread("job-desk"));
  private long rounds;

  /**
   * A desk.
   *
   * @param queue puts a job's id into the queue that all processes draw from
   * @param claims renewed while this process lives
   */
  public JobDesk(JobTable rows, Consumer<String> queue, Claims claims, Clock clock) {
    this.rows = rows;
    this.queue = queue;
    this.claims = claims;
    this.clock = clock;
    this.flights = Caffeine.newBuilder().executor(Runnable::run).build();
    this.ended =
        Caffeine.newBuilder()
            .executor(Runnable::run)
            .maximumSize(KNOWN_JOBS)
            .expireAfterWrite(ENDED_JOBS_ARE_KNOWN_FOR)
            .build();
    var unused =
        thread.scheduleWithFixedDelay(this::round, ROUND_MS, ROUND_MS, TimeUnit.MILLISECONDS);
  }

  /** Has a hearer told of flights that need not be begun any more. */
  void tellLeavers(Consumer<Flight> hearer) {
    leavers.add(hearer);
  }

  void put(Flight flight) {
    flights.put(flight.jobId(), flight);
  }

  /** What the work at hand has come from and leads to: nobody is to drop it meanwhile. */
  Set<String> needed() {
    return flights.asMap().values().stream()
        .flatMap(flight -> flight.needed().stream())
        .collect(Collectors.toUnmodifiableSet());
  }

  /** The job of work that nobody new has asked for. */
  Answer.Pending standing(Computation computation) {
    return new Answer.Pending(
        job(computation, Optional.ofNullable(flights.getIfPresent(computation.jobId()))),
        Optional.empty());
  }

  private Job job(Computation computation, Optional<Flight> flight) {
    return flight
        .map(this::snapshot)
        .or(() -> Optional.ofNullable(ended.getIfPresent(computation.jobId())))
        .orElseGet(() -> Job.asked(computation, clock.instant().truncatedTo(ChronoUnit.MILLIS)));
  }

  /** The job of work that somebody will come back for, which from now on outlives the process. */
  Answer.Pending pending(Computation computation) {
    String jobId = computation.jobId();
    Optional<Flight> flight = Optional.ofNullable(flights.getIfPresent(jobId));
    Job job = job(computation, flight);
    Optional<String> ask = computation.recipe().map(words -> keep(job, words));
    flight.filter(Flight::hasEnded).ifPresent(this::write);
    return new Answer.Pending(job, ask);
  }

  private String keep(Job job, List<String> words) {
    String ask = rows.open(job, words);
    // Not before its row is open again: that of an earlier run may say that it was cancelled.
    kept.put(job.jobId(), job.submittedAt());
    queue.accept(job.jobId());
    return ask;
  }

  /** Takes over a job whose row another process, or an earlier run of this one, has written. */
  void adopt(String jobId) {
    rows.find(jobId).ifPresent(job -> kept.put(jobId, job.submittedAt()));
  }

  /** A flight as a job: one that goes on with what an earlier process began is as old as that. */
  private Job snapshot(Flight flight) {
    Job job = flight.snapshot();
    return job.submitted(kept.getOrDefault(job.jobId(), job.submittedAt()));
  }

  /** Writes down how a job ended whose flight may have ended elsewhere. */
  void conclude(String jobId, Optional<Throwable> failure) {
    rows.find(jobId)
        .filter(job -> !job.state().ended())
        .ifPresent(job -> rows.update(job.ended(failure, clock.instant())));
    kept.remove(jobId);
  }

  /** Hears that a flight has ended. */
  void ended(Flight flight) {
    if (flights.asMap().remove(flight.jobId(), flight) && Realm.in(flight.jobId()).isEmpty()) {
      ended.put(flight.jobId(), snapshot(flight));
    }
    if (kept.containsKey(flight.jobId())) {
      try {
        write(flight);
      } catch (RuntimeException e) {
        LOG.warn("The end of a job is not written yet: {}", e.getMessage());
      }
    }
  }

  private void write(Flight flight) {
    Job job = flight.snapshot();
    if (job.failure().filter(DataAccessException.class::isInstance).isPresent()) {
      // Nothing is wrong with the job: the queue has it begun again.
      kept.remove(job.jobId());
      return;
    }
    rows.update(job);
    if (job.state().ended()) {
      kept.remove(job.jobId());
    }
  }

  @Override
  public Optional<Job> findJob(String jobId) {
    Optional<Job> here = Optional.ofNullable(flights.getIfPresent(jobId)).map(this::snapshot);
    if (Realm.in(jobId).isPresent() && rows.find(jobId).isEmpty()) {
      // Its layout was deleted; what of it still goes on here is nobody's any more.
      return Optional.empty();
    }
    return here.filter(job -> job.startedAt().isPresent() && job.finishedAt().isEmpty())
        .or(() -> rows.find(jobId))
        .or(() -> here)
        .or(() -> Optional.ofNullable(ended.getIfPresent(jobId)));
  }

  @Override
  public OpenJobs open() {
    return rows.open();
  }

  @Override
  public Optional<Job> cancel(String jobId, Optional<String> ask) {
    Optional<Flight> here = Optional.ofNullable(flights.getIfPresent(jobId));
    Optional<Job> job = findJob(jobId);
    // The row may be that of an earlier run, where another waits here for its turn.
    if (here.isEmpty() && job.filter(known -> known.state().ended()).isPresent()) {
      return job;
    }
    int remaining = rows.withdraw(jobId, ask);
    if (remaining > 0) {
      if (ask.isEmpty()) {
        throw new JobNeededException("Several asked for the result of this job");
      }
      return findJob(jobId);
    }
    try {
      here.ifPresent(this::cancel);
      rows.cancel(jobId);
    } catch (JobNeededException e) {
      if (ask.isEmpty()) {
        throw e;
      }
      // This asking is withdrawn; the work goes on for whoever waits.
      return findJob(jobId);
    }
    return overtaken(jobId).or(() -> findJob(jobId));
  }

  /**
   * The job as its row has it ended, once nothing works at it: between a flight's end and the row's
   * the queue may have begun it anew.
   */
  private Optional<Job> overtaken(String jobId) {
    // Taken before the row is read: what is asked for again after that is another flight.
    Optional<Flight> anew = Optional.ofNullable(flights.getIfPresent(jobId));
    Optional<Job> row = rows.find(jobId).filter(job -> job.state() == JobState.CANCELLED);
    try {
      row.flatMap(job -> anew).ifPresent(this::cancel);
    } catch (JobNeededException e) {
      LOG.debug("Job {} goes on for others", jobId);
    }
    return row;
  }

  @Override
  public void forget(Realm realm) {
    String ending = realm.ending();
    rows.forget(ending).forEach(kept::remove);
    ended.asMap().keySet().removeIf(jobId -> jobId.endsWith(ending));
    flights.asMap().values().stream()
        .filter(flight -> flight.jobId().endsWith(ending))
        .forEach(
            flight -> {
              try {
                cancel(flight);
              } catch (JobNeededException e) {
                LOG.debug("Somebody waits for job {}, whose result is not kept", flight.jobId());
              }
            });
  }

  private void cancel(Flight flight) {
    flight.cancel();
    leavers.forEach(hearer -> hearer.accept(flight));
  }

  /** Tells the rows how far jobs are, and hears from them; twice a second. */
  void round() {
    try {
      if (claims.shared() && rounds % RENEWED_EVERY == 0) {
        claims.renew();
      }
      if (rounds++ % FORGOTTEN_EVERY == 0) {
        rows.forgetOld();
      }
      if (!kept.isEmpty()) {
        hear();
        kept.keySet().stream().map(flights::getIfPresent).forEach(this::tell);
      }
    } catch (RuntimeException e) {
      LOG.warn("The rows of jobs are not within reach: {}", e.getMessage());
    }
  }

  /** Ends what was cancelled at another process. */
  private void hear() {
    // Taken before the rows are read: what is asked for again after that is another flight.
    Map<String, Flight> known = flights.getAllPresent(kept.keySet());
    for (String jobId : rows.cancelledOf(new HashSet<>(kept.keySet()))) {
      Optional<Flight> flight = Optional.ofNullable(known.get(jobId));
      try {
        flight.ifPresent(this::cancel);
        kept.remove(jobId);
      } catch (JobNeededException e) {
        LOG.debug("Job {} goes on for others", jobId);
      }
    }
  }

  private void tell(@Nullable Flight flight) {
    if (flight != null && flight.isHere()) {
      write(flight);
    }
  }

  @Override
  public void close() {
    thread.shutdown();
  }
}
