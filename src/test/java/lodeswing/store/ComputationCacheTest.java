package lodeswing.store;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.sql.Connection;
import java.sql.SQLException;
import java.time.Clock;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.UUID;
import java.util.concurrent.Callable;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ConcurrentHashMap;
import java.util.concurrent.CountDownLatch;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import java.util.concurrent.atomic.AtomicBoolean;
import java.util.concurrent.atomic.AtomicInteger;
import java.util.concurrent.atomic.AtomicReference;
import java.util.concurrent.locks.LockSupport;
import java.util.function.Consumer;
import java.util.function.Supplier;
import javax.sql.DataSource;
import lodeswing.job.Answer;
import lodeswing.job.Computation;
import lodeswing.job.ComputationKey;
import lodeswing.job.JobNeededException;
import lodeswing.job.JobState;
import lodeswing.job.Realm;
import lodeswing.job.ResultStore;
import lodeswing.job.StoredResult;
import lodeswing.job.TooMuchWorkException;
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.Timeout;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.jdbc.datasource.DelegatingDataSource;

@Timeout(60)
class ComputationCacheTest {

  private static final Duration LONG = Duration.ofSeconds(50);

  private final ConcurrentHashMap<String, StoredResult> kept = new ConcurrentHashMap<>();

  /** Done before the store is looked at. */
  private volatile Consumer<String> beforeFinding = id -> {};

  private final ResultStore store =
      new ResultStore() {
        @Override
        public Optional<StoredResult> find(String id) {
          beforeFinding.accept(id);
          return Optional.ofNullable(kept.get(id));
        }

        @Override
        public Saved saveIfAbsent(StoredResult result, Duration cost) {
          StoredResult earlier = kept.putIfAbsent(result.id(), result);
          return earlier == null ? new Saved(result, true) : new Saved(earlier, false);
        }

        @Override
        public List<StoredResult> ownedBy(String owner) {
          return List.of();
        }

        @Override
        public boolean delete(Realm realm) {
          return false;
        }

        @Override
        public void used(StoredResult result) {}

        @Override
        public void makeRoom(Supplier<Set<String>> needed) {}
      };

  /** Done whenever the rows of jobs are reached for. */
  private volatile Runnable beforeRows = () -> {};

  private final DataSource rowsSource =
      new DelegatingDataSource(
          StoredRows.source(StoredRows.memoryUrl("jobs-" + UUID.randomUUID()))) {
        @Override
        public Connection getConnection() throws SQLException {
          beforeRows.run();
          return super.getConnection();
        }
      };
  private final JobTable rows =
      new JobTable(StoredRows.migrated(rowsSource), Clock.systemUTC(), String::valueOf);
  private final JobDesk desk = new JobDesk(rows, jobId -> {}, Claims.alone(), Clock.systemUTC());

  @AfterEach
  void closeDesk() {
    desk.close();
  }

  private ComputationCache cache(long bytes, int threads, int waiting) {
    return cache(bytes, threads, waiting, Claims.alone());
  }

  private ComputationCache cache(long bytes, int threads, int waiting, Claims claims) {
    return new ComputationCache(
        store,
        Clock.systemUTC(),
        new ComputationCache.Size(bytes, threads, waiting, 1000),
        claims,
        desk);
  }

  private static Computation work(String name, Computation.Work work) {
    return new Computation(new ComputationKey("tst", name), "test", "/" + name, work);
  }

  private static byte[] bytes(String text) {
    return text.getBytes(StandardCharsets.UTF_8);
  }

  @Test
  void manyCallersOfOneKeyComputeItOnce() throws Exception {
    var runs = new AtomicInteger();
    var callers = Executors.newFixedThreadPool(16);
    try (var cache = cache(1_000_000, 2, 10)) {
      Computation one = work("one", progress -> bytes("run " + runs.incrementAndGet()));
      List<Callable<Answer>> calls = new ArrayList<>();
      for (int i = 0; i < 64; i++) {
        calls.add(() -> cache.answer(one, LONG));
      }
      for (Future<Answer> answer : callers.invokeAll(calls)) {
        assertArrayEquals(bytes("run 1"), ((Answer.Ready) answer.get()).result().bytes());
      }
      assertEquals(1, runs.get());
    } finally {
      callers.shutdownNow();
    }
  }

  @Test
  void failureIsThrownAndNotKept() {
    var runs = new AtomicInteger();
    try (var cache = cache(1_000_000, 2, 10)) {
      Computation shaky =
          work(
              "shaky",
              progress -> {
                if (runs.incrementAndGet() == 1) {
                  throw new ArithmeticException("first");
                }
                return bytes("well");
              });
      assertThrows(ArithmeticException.class, () -> cache.answer(shaky, LONG));
      assertEquals(Answer.Source.COMPUTED, ((Answer.Ready) cache.answer(shaky, LONG)).source());
    }
  }

  @Test
  void workOverTheQueueIsRefusedAndCanBeAskedAgain() {
    var gate = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 1, 1)) {
      cache.answer(work("a", progress -> waited(gate)), Duration.ZERO);
      awaitState(work("a", progress -> bytes("")), JobState.RUNNING);
      cache.answer(work("b", progress -> waited(gate)), Duration.ZERO);
      Computation third = work("c", progress -> bytes("c"));
      assertThrows(TooMuchWorkException.class, () -> cache.answer(third, Duration.ZERO));
      gate.countDown();
      cache.answer(work("b", progress -> bytes("")), LONG);
      assertEquals(Answer.Source.COMPUTED, ((Answer.Ready) cache.answer(third, LONG)).source());
    }
  }

  @Test
  void workAskedForAgainIsNotCancelledByTheRowOfItsEarlierRun() {
    var gate = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 1, 10)) {
      Computation asked = work("again", progress -> waited(gate)).remadeFrom("again");
      cache.answer(asked, Duration.ZERO);
      desk.cancel(asked.jobId(), Optional.empty());
      var looking = new AtomicBoolean();
      beforeRows =
          () -> {
            if (looking.compareAndSet(false, true)) {
              desk.round();
              looking.set(false);
            }
          };
      cache.answer(asked, Duration.ZERO);
      beforeRows = () -> {};
      gate.countDown();
      assertInstanceOf(Answer.Ready.class, cache.answer(asked, LONG));
    }
  }

  @Test
  void jobWhoseStoreWasAwayIsNotWrittenAsFailed() {
    var gate = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 1, 10)) {
      Computation unlucky =
          work(
                  "unlucky",
                  progress -> {
                    waited(gate);
                    throw new DataAccessResourceFailureException("away");
                  })
              .remadeFrom("unlucky");
      cache.answer(unlucky, Duration.ZERO);
      gate.countDown();
      assertThrows(DataAccessResourceFailureException.class, () -> cache.answer(unlucky, LONG));
      assertFalse(rows.find(unlucky.jobId()).orElseThrow().state().ended());
      assertEquals(List.of("test", "unlucky"), rows.openRecipe(unlucky.jobId()).orElseThrow());
    }
  }

  @Test
  void jobThatFailsByItsOwnFaultIsWrittenAsFailed() {
    var gate = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 1, 10)) {
      Computation wrong =
          work(
                  "wrong",
                  progress -> {
                    waited(gate);
                    throw new ArithmeticException("wrong");
                  })
              .remadeFrom("wrong");
      cache.answer(wrong, Duration.ZERO);
      gate.countDown();
      assertThrows(ArithmeticException.class, () -> cache.answer(wrong, LONG));
      assertEquals(JobState.FAILED, rows.find(wrong.jobId()).orElseThrow().state());
      assertTrue(rows.openRecipe(wrong.jobId()).isEmpty());
    }
  }

  @Test
  void workThatSomebodyWaitsForDoesNotStandBehindJobs() {
    var gate = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 1, 10)) {
      cache.answer(work("a", progress -> waited(gate)), Duration.ZERO);
      cache.answer(work("b", progress -> waited(gate)), Duration.ZERO);
      cache.answer(work("c", progress -> bytes("c")), Duration.ZERO);

      Answer interactive = cache.answer(work("d", progress -> bytes("d")), LONG);
      assertArrayEquals(bytes("d"), ((Answer.Ready) interactive).result().bytes());
      Answer promoted = cache.answer(work("c", progress -> bytes("c")), LONG);
      assertArrayEquals(bytes("c"), ((Answer.Ready) promoted).result().bytes());
      gate.countDown();
    }
  }

  @Test
  void workIsRefusedByItsCostAndSaysWhenThereIsRoom() {
    var gate = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 1, 10)) {
      cache.answer(work("a", progress -> waited(gate)).costing(10_000), Duration.ZERO);
      awaitState(work("a", progress -> bytes("")), JobState.RUNNING);
      cache.answer(work("b", progress -> waited(gate)).costing(900), Duration.ZERO);
      cache.answer(work("c", progress -> bytes("c")).costing(100), Duration.ZERO);
      var refused =
          assertThrows(
              TooMuchWorkException.class,
              () -> cache.answer(work("d", progress -> bytes("")).costing(1), Duration.ZERO));
      // Half of a thousand releases, by the guess and by what was measured.
      assertTrue(cache.pace().guessed());
      assertEquals(25, refused.askAgainAfter().toMillis());
      cache.pace().measured(500, Duration.ofSeconds(1));
      var later =
          assertThrows(
              TooMuchWorkException.class,
              () -> cache.answer(work("e", progress -> bytes("")).costing(1), Duration.ZERO));
      assertEquals(1000, later.askAgainAfter().toMillis());
      gate.countDown();
    }
  }

  /** Another process holds the claim until it has given the work up, without a result. */
  private static Claims takenElsewhere() {
    var held = new AtomicBoolean(true);
    return new Claims() {
      @Override
      public boolean take(String id) {
        return !held.get();
      }

      @Override
      public void release(String id) {}

      @Override
      public boolean isFree(String id) {
        held.set(false);
        return true;
      }

      @Override
      public void renew() {}

      @Override
      public boolean shared() {
        return true;
      }
    };
  }

  @Test
  void workThatAnotherProcessHasGivenUpIsTakenOverByAThreadThatSaysSo() {
    try (var cache = cache(1_000_000, 1, 10, takenElsewhere())) {
      var on = work("a", progress -> bytes(Thread.currentThread().getName()));
      var answer = assertInstanceOf(Answer.Ready.class, cache.answer(on, LONG));
      assertEquals("taking-over-1", new String(answer.result().bytes(), StandardCharsets.UTF_8));
    }
  }

  @Test
  void workThatNeedsWaitingWorkDoesItItself() {
    try (var cache = cache(1_000_000, 1, 10)) {
      var queued = new CountDownLatch(1);
      Computation inner = work("inner", progress -> bytes("inner"));
      Computation outer =
          work(
              "outer",
              progress -> {
                waited(queued);
                return ((Answer.Ready) cache.answer(inner, LONG)).result().bytes();
              });
      cache.answer(outer, Duration.ZERO);
      cache.answer(inner, Duration.ZERO);
      queued.countDown();
      assertArrayEquals(
          bytes("inner"), ((Answer.Ready) cache.answer(outer, LONG)).result().bytes());
    }
  }

  /** The first caller has the inner work's seat, but has not put it into the queue yet. */
  @Test
  void workThatNeedsWorkOnItsWayIntoTheQueueDoesItItself() throws Exception {
    try (var cache = cache(1_000_000, 1, 10)) {
      var seatTaken = new CountDownLatch(1);
      var found = new CountDownLatch(1);
      var computing = new AtomicReference<Thread>();
      Computation inner = work("inner", progress -> bytes("inner"));
      Computation outer =
          work(
              "outer",
              progress -> {
                computing.set(Thread.currentThread());
                waited(seatTaken);
                return ((Answer.Ready) cache.answer(inner, LONG)).result().bytes();
              });
      beforeFinding =
          id -> {
            if (id.equals(inner.key().id())) {
              seatTaken.countDown();
              waited(found);
            }
          };
      cache.answer(outer, Duration.ZERO);
      var first = new Thread(() -> cache.answer(inner, Duration.ZERO));
      first.start();
      seatTaken.await();
      awaitWaiting(computing, seatTaken);
      found.countDown();

      assertArrayEquals(
          bytes("inner"), ((Answer.Ready) cache.answer(outer, LONG)).result().bytes());
      first.join();
    }
  }

  @Test
  void workWhoseNeedFoundNoRoomInTheQueueDoesItItself() throws Exception {
    try (var cache = cache(1_000_000, 1, 1)) {
      var seatTaken = new CountDownLatch(1);
      var found = new CountDownLatch(1);
      var computing = new AtomicReference<Thread>();
      Computation inner = work("inner", progress -> bytes("inner"));
      Computation outer =
          work(
              "outer",
              progress -> {
                computing.set(Thread.currentThread());
                waited(seatTaken);
                return ((Answer.Ready) cache.answer(inner, LONG)).result().bytes();
              });
      cache.answer(outer, Duration.ZERO);
      awaitState(outer, JobState.RUNNING);
      cache.answer(work("filler", progress -> bytes("")), Duration.ZERO);
      var once = new AtomicBoolean();
      beforeFinding =
          id -> {
            if (id.equals(inner.key().id()) && once.compareAndSet(false, true)) {
              seatTaken.countDown();
              waited(found);
            }
          };
      var refused = new AtomicReference<Throwable>();
      var first = new Thread(() -> cache.answer(inner, Duration.ZERO));
      first.setUncaughtExceptionHandler((thread, thrown) -> refused.set(thrown));
      first.start();
      seatTaken.await();
      awaitWaiting(computing, seatTaken);
      found.countDown();
      first.join();

      assertTrue(refused.get() instanceof TooMuchWorkException);
      assertArrayEquals(
          bytes("inner"), ((Answer.Ready) cache.answer(outer, LONG)).result().bytes());
    }
  }

  /** As tiles and their survey: many callers ask for both, in any order, of one or two threads. */
  @Test
  void worksThatShareANeedNeverWaitForTheQueue() throws Exception {
    var callers = Executors.newFixedThreadPool(8);
    try {
      for (int round = 0; round < 200; round++) {
        try (var cache = cache(1_000_000, 1 + round % 2, 100)) {
          String survey = "survey " + round;
          List<Callable<Answer>> calls = new ArrayList<>();
          for (int tile = 0; tile < 7; tile++) {
            Computation asked =
                work(
                    "tile " + tile + " of " + round,
                    progress ->
                        ((Answer.Ready) cache.answer(work(survey, p -> bytes("all")), LONG))
                            .result()
                            .bytes());
            calls.add(() -> cache.answer(asked, LONG));
          }
          calls.add(round % 8, () -> cache.answer(work(survey, p -> bytes("all")), LONG));
          for (Future<Answer> answer : callers.invokeAll(calls)) {
            assertArrayEquals(bytes("all"), ((Answer.Ready) answer.get()).result().bytes());
          }
        }
      }
    } finally {
      callers.shutdownNow();
    }
  }

  @Test
  void whatMemoryCannotHoldComesFromTheStore() {
    try (var cache = cache(1_000, 2, 10)) {
      Computation large = work("large", progress -> new byte[10_000]);
      cache.answer(large, LONG);
      // The cache evicts on a thread of its own, some moments later.
      Answer.Source source = Answer.Source.MEMORY;
      for (int tries = 0; source == Answer.Source.MEMORY && tries < 2_000; tries++) {
        source = ((Answer.Ready) cache.answer(large, LONG)).source();
        LockSupport.parkNanos(1_000_000);
      }
      assertEquals(Answer.Source.STORE, source);
    }
  }

  private static byte[] waited(CountDownLatch gate) {
    try {
      gate.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
    return bytes("waited");
  }

  /** Waits until a computing thread that has passed a gate waits for something else. */
  private static void awaitWaiting(AtomicReference<Thread> computing, CountDownLatch passed)
      throws InterruptedException {
    passed.await();
    while (computing.get() == null || !waitsInTheCache(computing.get())) {
      Thread.onSpinWait();
    }
  }

  private static boolean waitsInTheCache(Thread thread) {
    boolean waits =
        thread.getState() == Thread.State.WAITING
            || thread.getState() == Thread.State.TIMED_WAITING;
    return waits
        && Arrays.stream(thread.getStackTrace())
            .anyMatch(frame -> frame.getMethodName().equals("join"));
  }

  private void awaitState(Computation work, JobState state) {
    while (desk.findJob(work.jobId()).orElseThrow().state() != state) {
      Thread.onSpinWait();
    }
  }

  /** Reports until it is told to end. */
  private static byte[] endless(Computation.Progress progress, CountDownLatch ended) {
    try {
      while (true) {
        progress.report(0.5);
        LockSupport.parkNanos(100_000);
      }
    } finally {
      ended.countDown();
    }
  }

  private static byte[] after(CountDownLatch open) {
    try {
      open.await();
    } catch (InterruptedException e) {
      throw new IllegalStateException(e);
    }
    return bytes("well");
  }

  @Test
  void workThatARequestWaitsForIsNotCancelled() throws Exception {
    var open = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 1, 10)) {
      Computation work = work("waited for", progress -> after(open));
      var got = new AtomicReference<Answer>();
      var waiting = new Thread(() -> got.set(cache.answer(work, LONG)));
      waiting.start();
      while (waiting.getState() != Thread.State.TIMED_WAITING) {
        Thread.onSpinWait();
      }

      assertThrows(JobNeededException.class, () -> desk.cancel(work.jobId(), Optional.empty()));

      open.countDown();
      waiting.join();
      assertInstanceOf(Answer.Ready.class, got.get());
    }
  }

  @Test
  void requestThatComesWhileWorkIsBeingCancelledGetsItsResult() throws Exception {
    try (var cache = cache(1_000_000, 2, 10)) {
      for (int round = 0; round < 300; round++) {
        var open = new CountDownLatch(1);
        Computation work = work("cancelled " + round, progress -> after(open));
        cache.answer(work, Duration.ZERO);
        var got = new CompletableFuture<Answer>();
        new Thread(() -> got.completeAsync(() -> cache.answer(work, LONG), Runnable::run)).start();
        cancelUntilSomebodyWaits(work.jobId(), got);
        open.countDown();
        assertInstanceOf(Answer.Ready.class, got.get());
      }
    }
  }

  private void cancelUntilSomebodyWaits(String jobId, Future<Answer> got) {
    boolean needed = false;
    while (!needed && !got.isDone()) {
      try {
        desk.cancel(jobId, Optional.empty());
      } catch (JobNeededException e) {
        needed = true;
      }
    }
  }

  @Test
  void cancelledWorkEndsAndLeavesNothing() throws Exception {
    var ended = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 1, 10)) {
      Computation work = work("endless", progress -> endless(progress, ended));
      cache.answer(work, Duration.ZERO);
      awaitState(work, JobState.RUNNING);

      assertEquals(
          JobState.CANCELLED, desk.cancel(work.jobId(), Optional.empty()).orElseThrow().state());

      ended.await();
      assertEquals(
          JobState.CANCELLED, desk.cancel(work.jobId(), Optional.empty()).orElseThrow().state());
      assertEquals(Optional.empty(), cache.find(work.key().id()));
      assertTrue(kept.isEmpty());
      Answer again = cache.answer(work("endless", progress -> bytes("well")), LONG);
      assertEquals(Answer.Source.COMPUTED, ((Answer.Ready) again).source());
    }
  }

  @Test
  void cancelledWorkThatNeverReportsIsNotKeptEither() {
    var gate = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 1, 10)) {
      Computation silent = work("silent", progress -> waited(gate));
      cache.answer(silent, Duration.ZERO);
      awaitState(silent, JobState.RUNNING);
      desk.cancel(silent.jobId(), Optional.empty());
      gate.countDown();
      cache.answer(work("next", progress -> bytes("next")), LONG);

      assertEquals(1, kept.size());
      assertEquals(JobState.CANCELLED, desk.findJob(silent.jobId()).orElseThrow().state());
    }
  }

  @Test
  void cancelledWorkInTheQueueMakesRoom() {
    var gate = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 1, 1)) {
      cache.answer(work("a", progress -> waited(gate)), Duration.ZERO);
      awaitState(work("a", progress -> bytes("")), JobState.RUNNING);
      Computation second = work("b", progress -> waited(gate));
      cache.answer(second, Duration.ZERO);

      assertEquals(
          JobState.CANCELLED, desk.cancel(second.jobId(), Optional.empty()).orElseThrow().state());

      Computation third = work("c", progress -> bytes("c"));
      assertTrue(cache.answer(third, Duration.ZERO) instanceof Answer.Pending);
      gate.countDown();
      assertArrayEquals(bytes("c"), ((Answer.Ready) cache.answer(third, LONG)).result().bytes());
    }
  }

  @Test
  void workThatAnotherWaitsForIsNotCancelledButEndsWithIt() throws Exception {
    var ended = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 2, 10)) {
      Computation inner = work("inner", progress -> endless(progress, ended));
      Computation outer =
          work("outer", progress -> ((Answer.Ready) cache.answer(inner, LONG)).result().bytes());
      cache.answer(outer, Duration.ZERO);
      while (desk.findJob(inner.jobId()).isEmpty()) {
        Thread.onSpinWait();
      }
      awaitState(inner, JobState.RUNNING);

      assertThrows(JobNeededException.class, () -> desk.cancel(inner.jobId(), Optional.empty()));
      assertEquals(JobState.RUNNING, desk.findJob(inner.jobId()).orElseThrow().state());

      assertEquals(
          JobState.CANCELLED, desk.cancel(outer.jobId(), Optional.empty()).orElseThrow().state());
      ended.await();
      awaitState(inner, JobState.CANCELLED);
    }
  }

  @Test
  void workThatARequestAskedForOutlivesTheWorkThatNeededIt() {
    var gate = new CountDownLatch(1);
    try (var cache = cache(1_000_000, 2, 10)) {
      Computation inner =
          work(
              "inner",
              progress -> {
                waited(gate);
                progress.report(0.5);
                return bytes("inner");
              });
      Computation outer =
          work("outer", progress -> ((Answer.Ready) cache.answer(inner, LONG)).result().bytes());
      cache.answer(outer, Duration.ZERO);
      while (desk.findJob(inner.jobId()).isEmpty()) {
        Thread.onSpinWait();
      }
      cache.answer(inner, Duration.ZERO);
      desk.cancel(outer.jobId(), Optional.empty());
      gate.countDown();

      assertArrayEquals(
          bytes("inner"), ((Answer.Ready) cache.answer(inner, LONG)).result().bytes());
    }
  }
}
