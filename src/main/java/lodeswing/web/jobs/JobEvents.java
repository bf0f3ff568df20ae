package lodeswing.web.jobs;

import java.io.IOException;
import java.time.Clock;
import java.time.Duration;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.RejectedExecutionException;
import java.util.concurrent.ScheduledExecutorService;
import java.util.concurrent.ScheduledFuture;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import lodeswing.job.BackgroundThread;
import lodeswing.job.Job;
import lodeswing.job.JobLedger;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.springframework.context.event.ContextClosedEvent;
import org.springframework.context.event.EventListener;
import org.springframework.http.MediaType;
import org.springframework.stereotype.Component;
import org.springframework.web.servlet.mvc.method.annotation.SseEmitter;
import tools.jackson.databind.json.JsonMapper;

/**
 * Streams of what happens to jobs, as server-sent events.
 *
 * <p>An event's id is the state and the thousandths done, so that any process can go on from the
 * last one that a client has seen: it sends the job as it stands if that is something else.
 */
@Component
final class JobEvents {

  private static final long EVERY_MS = 250;
  private static final long QUIET_LOOKS = 40;
  private static final long RECONNECT_MS = 2000;
  private static final Duration LONGEST = Duration.ofMinutes(10);
  private static final Duration BUSY_FOR = Duration.ofSeconds(10);

  private final JobLedger ledger;
  private final Limits limits;
  private final Clock clock;
  private final JsonMapper json;
  private final AtomicInteger open = new AtomicInteger();
  private final Set<SseEmitter> streams = ConcurrentHashMap.newKeySet();
  private final ScheduledExecutorService thread =
      Executors.newSingleThreadScheduledExecutor(new BackgroundThread("job-events"));

  /** A thread for each stream that is being written to: a client that reads nothing holds one. */
  private final ExecutorService senders =
      Executors.newCachedThreadPool(new BackgroundThread("job-event-sender"));

  JobEvents(JobLedger ledger, Limits limits, Clock clock, JsonMapper json) {
    this.ledger = ledger;
    this.limits = limits;
    this.clock = clock;
    this.json = json;
  }

  /**
   * The stream of a job until it has ended.
   *
   * @param seen id of the last event that the client has seen
   * @throws ProblemException {@code service-busy} where too many streams are open
   */
  SseEmitter stream(String jobId, Optional<String> seen) {
    if (open.incrementAndGet() > limits.eventStreams()) {
      open.decrementAndGet();
      throw ProblemException.passing(
          ProblemCode.SERVICE_BUSY,
          "There are " + limits.eventStreams() + " streams of events open already.",
          BUSY_FOR);
    }
    var emitter = new SseEmitter(LONGEST.toMillis());
    var stream = new Stream(jobId, emitter, seen.orElse(""));
    ScheduledFuture<?> looking =
        thread.scheduleWithFixedDelay(stream::due, 0, EVERY_MS, TimeUnit.MILLISECONDS);
    streams.add(emitter);
    emitter.onCompletion(
        () -> {
          streams.remove(emitter);
          looking.cancel(false);
          open.decrementAndGet();
        });
    emitter.onTimeout(emitter::complete);
    return emitter;
  }

  /** Whether a client that has seen an event has nothing more to hear of a job. */
  static boolean allSeen(Job job, Optional<String> seen) {
    return job.state().ended() && seen.filter(idOf(job)::equals).isPresent();
  }

  private static String idOf(Job job) {
    return String.format(
        Locale.ROOT, "%s-%04d", job.state().word(), Math.round(job.progress() * 1000));
  }

  /** Before begun requests are waited for: a stream would not end by itself. */
  @EventListener(ContextClosedEvent.class)
  void close() {
    thread.shutdown();
    senders.shutdown();
    streams.forEach(SseEmitter::complete);
  }

  /** One client's stream. */
  private final class Stream {

    private final String jobId;
    private final SseEmitter emitter;
    private final AtomicBoolean sending = new AtomicBoolean();
    private volatile String sent;
    private final AtomicInteger looked = new AtomicInteger();

    Stream(String jobId, SseEmitter emitter, String sent) {
      this.jobId = jobId;
      this.emitter = emitter;
      this.sent = sent;
    }

    /** Has it looked after, unless the client has not read the last event yet. */
    void due() {
      if (sending.compareAndSet(false, true)) {
        try {
          senders.execute(this::look);
        } catch (RejectedExecutionException e) {
          // The service ends, and all streams with it.
          emitter.complete();
        }
      }
    }

    private void look() {
      try {
        Optional<Job> job = ledger.findJob(jobId);
        if (job.isPresent()) {
          tell(job.get());
        }
        if (job.isEmpty() || job.get().state().ended()) {
          emitter.complete();
        }
      } catch (IOException | IllegalStateException e) {
        // The client has gone.
        emitter.completeWithError(e);
      } catch (RuntimeException e) {
        // The rows are not within reach; the client comes back and is told what it missed.
        emitter.complete();
      } finally {
        sending.set(false);
      }
    }

    private void tell(Job job) throws IOException {
      String id = idOf(job);
      int looks = looked.incrementAndGet();
      if (!id.equals(sent)) {
        emitter.send(
            SseEmitter.event()
                .id(id)
                .name(job.state().word())
                .reconnectTime(RECONNECT_MS)
                .data(
                    json.writeValueAsString(JobDocument.of(job, Optional.empty(), clock)),
                    MediaType.TEXT_PLAIN));
        sent = id;
      } else if (looks % QUIET_LOOKS == 0) {
        emitter.send(SseEmitter.event().comment("still " + job.state().word()));
      }
    }
  }
}
