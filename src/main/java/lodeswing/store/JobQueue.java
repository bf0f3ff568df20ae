package lodeswing.store;

import static lodeswing.job.Computations.Urgency.QUEUED;

import com.github.kagkarlsson.scheduler.Scheduler;
import com.github.kagkarlsson.scheduler.SchedulerBuilder;
import com.github.kagkarlsson.scheduler.SchedulerClient;
import com.github.kagkarlsson.scheduler.SchedulerName;
import com.github.kagkarlsson.scheduler.task.CompletionHandler;
import com.github.kagkarlsson.scheduler.task.ExecutionComplete;
import com.github.kagkarlsson.scheduler.task.ExecutionOperations;
import com.github.kagkarlsson.scheduler.task.TaskInstance;
import com.github.kagkarlsson.scheduler.task.helper.CustomTask;
import com.github.kagkarlsson.scheduler.task.helper.Tasks;
import java.time.Clock;
import java.time.Duration;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.function.Function;
import javax.sql.DataSource;
import lodeswing.job.Answer;
import lodeswing.job.Computation;
import lodeswing.job.Computations;
import lodeswing.job.JobCancelledException;
import lodeswing.job.TooMuchWorkException;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.dao.DataAccessException;

/**
 * The queue of jobs that all processes at one database draw from.
 *
 * <p>A process that dies has its jobs taken up by another one, or by itself when it is back. Jobs
 * that another living process is at are left to it and looked at again.
 */
public final class JobQueue implements AutoCloseable {

  /** How often a living process says so, and how many times it may miss. */
  public static final Duration HEARTBEAT = Duration.ofSeconds(5);

  /** A process that has missed so many heartbeats is taken for dead. */
  public static final int MISSED_HEARTBEATS = 4;

  private static final String TASK = "computation";
  private static final Duration POLLED_EVERY = Duration.ofMillis(500);
  private static final Duration LOOKED_AT_AGAIN = Duration.ofSeconds(1);
  private static final Duration TRIED_AGAIN = Duration.ofSeconds(10);
  private static final Duration BREATH = Duration.ofSeconds(1);
  private static final Duration GRACE = Duration.ofSeconds(5);
  private static final double LOWER = 0.5;
  private static final double UPPER = 1;
  private static final Logger LOG = LoggerFactory.getLogger(JobQueue.class);

  private final Scheduler scheduler;
  private final Worker worker;
  private volatile boolean closing;

  /**
   * What a process brings to the queue.
   *
   * @param name of this run of this process
   * @param threads how many jobs it takes at once
   * @param claims tell which jobs other processes are at
   * @param table the jobs' rows
   * @param desk where jobs of this process are known
   * @param remake makes a job's work from the words of its row
   * @param computations does the work
   */
  public record Worker(
      String name,
      int threads,
      Claims claims,
      JobTable table,
      JobDesk desk,
      Function<List<String>, Computation> remake,
      Computations computations) {}

  /** A queue, not drawn from before it is started. */
  public JobQueue(DataSource database, Worker worker) {
    this.worker = worker;
    CustomTask<Void> task =
        Tasks.custom(TASK, Void.class)
            .onFailure((complete, operations) -> later(complete, operations, TRIED_AGAIN))
            .onDeadExecutionRevive()
            .execute((instance, context) -> work(instance.getId()));
    SchedulerBuilder builder =
        Scheduler.create(database, task)
            .schedulerName(new SchedulerName.Fixed(worker.name()))
            .threads(worker.threads())
            .pollingInterval(POLLED_EVERY)
            .heartbeatInterval(HEARTBEAT)
            .missedHeartbeatsLimit(MISSED_HEARTBEATS)
            .alwaysPersistTimestampInUTC()
            .shutdownMaxWait(GRACE);
    this.scheduler =
        (worker.claims().shared() ? builder.pollUsingLockAndFetch(LOWER, UPPER) : builder).build();
  }

  /** Puts jobs into the queue, drawn from here or elsewhere. */
  public static Consumer<String> entry(DataSource database, Clock clock) {
    SchedulerClient client = SchedulerClient.Builder.create(database).build();
    return jobId ->
        client.scheduleIfNotExists(new TaskInstance<Void>(TASK, jobId), clock.instant());
  }

  /** Begins to draw jobs. */
  public void start() {
    if (!worker.claims().shared()) {
      worker.table().releaseTasks();
    }
    scheduler.start();
  }

  private CompletionHandler<Void> work(String jobId) {
    Optional<List<String>> words = worker.table().openRecipe(jobId);
    if (words.isEmpty()) {
      return over(jobId);
    }
    try {
      Computation computation = worker.remake().apply(words.get());
      if (!worker.claims().isFree(computation.key().id())) {
        return again(LOOKED_AT_AGAIN);
      }
      worker.desk().adopt(jobId);
      if (!finished(computation)) {
        return inItsPlace();
      }
      worker.desk().conclude(jobId, Optional.empty());
    } catch (TooMuchWorkException e) {
      return again(LOOKED_AT_AGAIN);
    } catch (DataAccessException e) {
      throw e;
    } catch (JobCancelledException e) {
      LOG.debug("Job {} was cancelled", jobId);
    } catch (RuntimeException e) {
      worker.desk().conclude(jobId, Optional.of(e));
    }
    return over(jobId);
  }

  /** Takes a job from the queue, unless it was asked for again meanwhile. */
  private CompletionHandler<Void> over(String jobId) {
    return (complete, operations) -> {
      if (worker.table().openRecipe(jobId).isPresent()) {
        later(complete, operations, LOOKED_AT_AGAIN);
      } else {
        operations.remove();
      }
    };
  }

  /** Waits in short breaths: a longer one would have to be interrupted at the end. */
  private boolean finished(Computation computation) {
    while (!closing) {
      if (worker.computations().answer(computation, BREATH, QUEUED) instanceof Answer.Ready) {
        return true;
      }
    }
    return false;
  }

  /** For whoever draws next, before all jobs that were asked for later. */
  private static CompletionHandler<Void> inItsPlace() {
    return (complete, operations) ->
        operations.reschedule(complete, complete.getExecution().executionTime);
  }

  private static CompletionHandler<Void> again(Duration after) {
    return (complete, operations) -> later(complete, operations, after);
  }

  private static void later(
      ExecutionComplete complete, ExecutionOperations<Void> operations, Duration after) {
    operations.reschedule(complete, complete.getTimeDone().plus(after));
  }

  @Override
  public void close() {
    closing = true;
    scheduler.stop();
  }
}
