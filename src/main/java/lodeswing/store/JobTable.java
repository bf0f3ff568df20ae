package lodeswing.store;

import java.security.SecureRandom;
import java.sql.ResultSet;
import java.sql.SQLException;
import java.sql.Types;
import java.time.Clock;
import java.time.Duration;
import java.time.Instant;
import java.time.OffsetDateTime;
import java.time.ZoneOffset;
import java.util.HashSet;
import java.util.HexFormat;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;
import lodeswing.job.Job;
import lodeswing.job.JobCancelledException;
import lodeswing.job.JobLedger;
import lodeswing.job.JobState;
import lodeswing.job.NoSuchAskingException;
import lodeswing.job.RecordedFailure;
import org.jspecify.annotations.Nullable;
import org.springframework.dao.DuplicateKeyException;
import org.springframework.jdbc.core.simple.JdbcClient;

/**
 * The jobs that somebody was told to come back for, kept beyond the process: a row each, and a row
 * for each asking.
 */
public final class JobTable {

  private static final Duration KEPT_FOR = Duration.ofDays(1);
  private static final int ASK_BYTES = 10;
  private static final String NOT_ENDED = " AND state IN ('waiting', 'running')";

  private static final String INSERT =
      "INSERT INTO job (job_id, kind, result_url, recipe, state, progress, submitted_at,"
          + " started_at, finished_at, remaining_s, problem) VALUES (:id, :kind, :url, :recipe,"
          + " :state, :progress, :submitted, :started, :finished, :remaining, :problem)";
  private static final String REOPEN =
      "UPDATE job SET recipe = :recipe, state = :state, progress = :progress, submitted_at ="
          + " :submitted, started_at = :started, finished_at = :finished, remaining_s ="
          + " :remaining, problem = :problem"
          + " WHERE job_id = :id AND state NOT IN ('waiting', 'running')";
  private static final String UPDATE =
      "UPDATE job SET state = :state, progress = :progress, started_at = :started,"
          + " finished_at = :finished, remaining_s = :remaining, problem = :problem"
          + " WHERE job_id = :id"
          + NOT_ENDED;

  private static final List<String> FORGETTING =
      List.of(
          "DELETE FROM scheduled_tasks WHERE task_instance IN (:ids)",
          "DELETE FROM job_ask WHERE job_id IN (:ids)",
          "DELETE FROM job WHERE job_id IN (:ids)");

  private final JdbcClient database;
  private final Clock clock;
  private final Function<Throwable, String> document;
  private final SecureRandom random = new SecureRandom();

  /**
   * The table.
   *
   * @param document writes a failure down, as JSON
   */
  public JobTable(JdbcClient database, Clock clock, Function<Throwable, String> document) {
    this.database = database;
    this.clock = clock;
    this.document = document;
  }

  /**
   * Writes a job down, anew where an earlier run of it has ended, and notes one more who asked.
   *
   * @param recipe how to make it again
   * @return names the asking
   */
  public String open(Job job, List<String> recipe) {
    String words = String.join(" ", recipe);
    try {
      opening(INSERT, job, words).param("kind", job.kind()).param("url", job.resultUrl()).update();
    } catch (DuplicateKeyException e) {
      if (opening(REOPEN, job, words).update() > 0) {
        database.sql("DELETE FROM job_ask WHERE job_id = :id").param("id", job.jobId()).update();
      }
    }
    byte[] drawn = new byte[ASK_BYTES];
    random.nextBytes(drawn);
    String ask = "ask-" + HexFormat.of().formatHex(drawn);
    database
        .sql("INSERT INTO job_ask (ask, job_id) VALUES (:ask, :id)")
        .param("ask", ask)
        .param("id", job.jobId())
        .update();
    return ask;
  }

  private JdbcClient.StatementSpec opening(String statement, Job job, String words) {
    return standing(statement, job)
        .param("recipe", words)
        .param("submitted", at(job.submittedAt()));
  }

  /** Writes how a job stands, unless it has ended already. */
  public void update(Job job) {
    standing(UPDATE, job).update();
  }

  private JdbcClient.StatementSpec standing(String statement, Job job) {
    return database
        .sql(statement)
        .param("id", job.jobId())
        .param("state", job.state().word())
        .param("progress", job.progress())
        .param("started", at(job.startedAt()), Types.TIMESTAMP_WITH_TIMEZONE)
        .param("finished", at(job.finishedAt()), Types.TIMESTAMP_WITH_TIMEZONE)
        .param("remaining", job.remainingS().orElse(null), Types.DOUBLE)
        .param("problem", job.failure().map(document).orElse(null), Types.VARCHAR);
  }

  /** The job as it was written last. */
  public Optional<Job> find(String jobId) {
    return database
        .sql("SELECT * FROM job WHERE job_id = :id")
        .param("id", jobId)
        .query((row, number) -> job(row))
        .optional();
  }

  /** The words of a job's recipe; nothing where it has ended or is not known. */
  Optional<List<String>> openRecipe(String jobId) {
    return database
        .sql("SELECT recipe FROM job WHERE job_id = :id" + NOT_ENDED)
        .param("id", jobId)
        .query(String.class)
        .optional()
        .map(words -> List.of(words.split(" ")));
  }

  /** The jobs that have not ended, wherever they wait or go on. */
  JobLedger.OpenJobs open() {
    return database
        .sql("SELECT COUNT(*) AS jobs, MIN(submitted_at) AS oldest FROM job WHERE TRUE" + NOT_ENDED)
        .query((row, number) -> new JobLedger.OpenJobs(row.getLong("jobs"), instant(row, "oldest")))
        .single();
  }

  /** Lets every task of the queue be begun again: whoever was at it has ended. */
  void releaseTasks() {
    database
        .sql("UPDATE scheduled_tasks SET picked = FALSE, picked_by = NULL, last_heartbeat = NULL")
        .update();
  }

  /** Those of some jobs that were cancelled. */
  public Set<String> cancelledOf(Set<String> jobIds) {
    return jobIds.isEmpty()
        ? Set.of()
        : new HashSet<>(
            database
                .sql("SELECT job_id FROM job WHERE state = 'cancelled' AND job_id IN (:ids)")
                .param("ids", jobIds)
                .query(String.class)
                .list());
  }

  /**
   * Withdraws an asking.
   *
   * @param ask the asking; nothing means the only one
   * @return how many remain; those there are where it is not said which of several
   * @throws NoSuchAskingException where the job has none of that name
   */
  public int withdraw(String jobId, Optional<String> ask) {
    if (ask.filter(named -> !withdrawn(jobId, named)).isPresent()) {
      throw new NoSuchAskingException();
    }
    int remaining =
        database
            .sql("SELECT COUNT(*) FROM job_ask WHERE job_id = :id")
            .param("id", jobId)
            .query(Integer.class)
            .single();
    return ask.isEmpty() && remaining == 1 ? 0 : remaining;
  }

  private boolean withdrawn(String jobId, String ask) {
    return database
            .sql("DELETE FROM job_ask WHERE job_id = :id AND ask = :ask")
            .param("id", jobId)
            .param("ask", ask)
            .update()
        > 0;
  }

  /** Writes a job down as cancelled, unless it has ended already. */
  public void cancel(String jobId) {
    database
        .sql(
            "UPDATE job SET state = 'cancelled', finished_at = :now WHERE job_id = :id" + NOT_ENDED)
        .param("id", jobId)
        .param("now", at(clock.instant()))
        .update();
  }

  /** Forgets what ended long ago. */
  public void forgetOld() {
    OffsetDateTime before = at(clock.instant().minus(KEPT_FOR));
    database
        .sql(
            "DELETE FROM job_ask WHERE job_id IN (SELECT job_id FROM job WHERE finished_at <"
                + " :before)")
        .param("before", before)
        .update();
    database.sql("DELETE FROM job WHERE finished_at < :before").param("before", before).update();
  }

  /** The jobs whose ids end like this, and are in no table afterwards. */
  List<String> forget(String ending) {
    List<String> jobIds =
        database
            .sql("SELECT job_id FROM job WHERE job_id LIKE :ids")
            .param("ids", "%" + ending)
            .query(String.class)
            .list();
    if (!jobIds.isEmpty()) {
      for (String statement : FORGETTING) {
        database.sql(statement).param("ids", jobIds).update();
      }
    }
    return jobIds;
  }

  private static Job job(ResultSet row) throws SQLException {
    JobState state = JobState.valueOf(row.getString("state").toUpperCase(Locale.ROOT));
    Optional<Throwable> failure =
        state == JobState.CANCELLED
            ? Optional.of(new JobCancelledException())
            : Optional.ofNullable(row.getString("problem")).map(RecordedFailure::new);
    return new Job(
        row.getString("job_id"),
        row.getString("kind"),
        state,
        row.getDouble("progress"),
        row.getObject("submitted_at", OffsetDateTime.class).toInstant(),
        instant(row, "started_at"),
        instant(row, "finished_at"),
        Optional.ofNullable(row.getObject("remaining_s", Double.class)),
        Optional.empty(),
        row.getString("result_url"),
        failure);
  }

  private static Optional<Instant> instant(ResultSet row, String column) throws SQLException {
    return Optional.ofNullable(row.getObject(column, OffsetDateTime.class))
        .map(OffsetDateTime::toInstant);
  }

  private static OffsetDateTime at(Instant instant) {
    return OffsetDateTime.ofInstant(instant, ZoneOffset.UTC);
  }

  private static @Nullable OffsetDateTime at(Optional<Instant> instant) {
    return instant.map(JobTable::at).orElse(null);
  }
}
