package lodeswing.store;

import com.github.benmanes.caffeine.cache.AsyncCache;
import com.github.benmanes.caffeine.cache.Caffeine;
import java.time.Clock;
import java.time.Duration;
import java.util.Optional;
import java.util.concurrent.CompletableFuture;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.TimeUnit;
import java.util.concurrent.TimeoutException;
import lodeswing.job.Answer;
import lodeswing.job.Computation;
import lodeswing.job.Computations;
import lodeswing.job.JobCancelledException;
import lodeswing.job.Pace;
import lodeswing.job.Realm;
import lodeswing.job.ResultStore;
import lodeswing.job.StoredResult;
import lodeswing.job.TooMuchWorkException;

/**
 * Memory in front of the store, with single flight and a bounded number of computing threads.
 *
 * <p>The cache holds futures, so that a second caller of a key finds the first one's. A failed
 * future is never joined. Work that asks for other work from a computing thread computes it on that
 * thread, also where another caller has put it into the queue: a computing thread waits only for
 * work that another thread has begun, so that full threads never wait for the queue.
 *
 * <p>Each flight knows the flights whose work needs it: none of them loses a result that it waits
 * for by a cancelling, and work that only cancelled flights need ends with them.
 */
public final class ComputationCache implements Computations, AutoCloseable {

  private static final int BYTES_PER_ENTRY = 256;

  private final ResultStore store;
  private final Clock clock;
  private final ComputingThreads threads;
  private final AsyncCache<String, StoredResult> memory;
  private final JobDesk desk;
  private final Airport airport;

  /**
   * A cache in front of a store.
   *
   * @param store outlives the process
   * @param clock tells when jobs begin and end
   * @param size how much is held, computed and waiting at once
   * @param claims tell whether another process computes a result
   * @param desk where the work is known as jobs
   */
  public ComputationCache(ResultStore store, Clock clock, Size size, Claims claims, JobDesk desk) {
    this.store = store;
    this.clock = clock;
    this.threads = new ComputingThreads(size);
    this.memory =
        Caffeine.newBuilder()
            .executor(Runnable::run)
            .maximumWeight(size.bytes())
            .<String, StoredResult>weigher((id, result) -> weight(result))
            .buildAsync();
    this.desk = desk;
    this.airport = new Airport(store, claims, desk, threads);
    desk.tellLeavers(threads::remove);
  }

  /**
   * How much is held and computed at once.
   *
   * @param bytes weight of the results held in memory [byte]
   * @param threads computing threads
   * @param waiting computations that may wait for a thread
   * @param waitingReleases what may wait for a thread, in releases
   */
  public record Size(long bytes, int threads, int waiting, long waitingReleases) {}

  @Override
  public Answer answer(Computation computation, Duration wait, Urgency urgency) {
    String id = computation.key().id();
    var flight = new Flight(computation, airport, clock);
    Optional<Flight> asker = ComputingThread.flight();
    asker.ifPresent(asking -> asking.needs(id));
    var passenger = new Passenger(asker, urgency);
    flight.board(passenger);
    Optional<CompletableFuture<StoredResult>> taken = takenSeat(id, flight, passenger);
    if (taken.isPresent()) {
      return join(taken.get(), wait, computation, passenger);
    }
    try {
      Optional<StoredResult> stored = store.find(id);
      if (stored.isPresent()) {
        flight.land(stored.get());
        return new Answer.Ready(stored.get(), Answer.Source.STORE);
      }
      if (!computation.key().current()) {
        throw new IllegalStateException("only today's engine computes");
      }
      desk.put(flight);
      begin(flight, urgency);
    } catch (RuntimeException | Error e) {
      flight.crash(e);
      throw e;
    }
    Answer answer = await(flight.landing(), Answer.Source.COMPUTED, wait, computation, passenger);
    // Another process may have computed it meanwhile.
    return answer instanceof Answer.Ready ready && !flight.isHere()
        ? new Answer.Ready(ready.result(), Answer.Source.JOINED)
        : answer;
  }

  /** The seat of an earlier caller; empty where the flight took it itself. */
  private Optional<CompletableFuture<StoredResult>> takenSeat(
      String id, Flight flight, Passenger passenger) {
    while (true) {
      CompletableFuture<StoredResult> seat = memory.asMap().putIfAbsent(id, flight.landing());
      if (seat == null && Realm.in(id).isPresent()) {
        var unused = flight.landing().whenComplete((result, failure) -> leave(id, flight));
      }
      if (seat == null || (!seat.isCompletedExceptionally() && boards(seat, passenger))) {
        return Optional.ofNullable(seat);
      }
      // The cache drops a failed future by itself, but only some moments after its callers know.
      memory.asMap().remove(id, seat);
    }
  }

  /** What is private is held nowhere but in the store, so that deleting it there deletes it. */
  private void leave(String id, Flight flight) {
    memory.asMap().remove(id, flight.landing());
  }

  private static boolean boards(CompletableFuture<StoredResult> seat, Passenger passenger) {
    // One that ended in this moment may have failed.
    return flight(seat)
        .map(flight -> flight.board(passenger))
        .orElseGet(() -> !seat.isCompletedExceptionally());
  }

  private static Optional<Flight> flight(CompletableFuture<StoredResult> seat) {
    return seat instanceof Landing landing ? landing.flight() : Optional.empty();
  }

  /** How fast this process computes, for what it says to those whose work it refuses. */
  public Pace pace() {
    return threads.pace();
  }

  @Override
  public Optional<Answer.Ready> find(String id) {
    CompletableFuture<StoredResult> held = memory.getIfPresent(id);
    if (held != null && held.isDone() && !held.isCompletedExceptionally()) {
      store.used(held.join());
      return Optional.of(new Answer.Ready(held.join(), Answer.Source.MEMORY));
    }
    Optional<StoredResult> stored = store.find(id);
    if (Realm.in(id).isEmpty()) {
      stored.ifPresent(
          result -> memory.asMap().putIfAbsent(id, CompletableFuture.completedFuture(result)));
    }
    return stored.map(result -> new Answer.Ready(result, Answer.Source.STORE));
  }

  /**
   * Drops what waits and gives begun work a moment to end.
   *
   * <p>Never interrupts: an interrupt during a write closes the embedded database's file.
   */
  @Override
  public void close() {
    airport.close();
    threads.close();
  }

  private void begin(Flight flight, Urgency urgency) {
    if (Thread.currentThread() instanceof ComputingThread) {
      flight.offer();
      flight.run();
      return;
    }
    threads.submit(flight, urgency == Urgency.WAITED_FOR);
    flight.offer();
  }

  private Answer join(
      CompletableFuture<StoredResult> seat,
      Duration wait,
      Computation computation,
      Passenger passenger) {
    boolean computing = Thread.currentThread() instanceof ComputingThread;
    Answer.Source source = seat.isDone() ? Answer.Source.MEMORY : Answer.Source.JOINED;
    if (computing) {
      flight(seat).ifPresent(ComputationCache::claim);
    } else if (passenger.urgency() == Urgency.WAITED_FOR) {
      flight(seat).ifPresent(threads::promote);
    }
    try {
      return await(seat, source, wait, computation, passenger);
    } catch (TooMuchWorkException e) {
      if (computing) {
        // The queue had no room for the first caller; this thread needs none.
        return answer(computation, wait, passenger.urgency());
      }
      throw e;
    } catch (JobCancelledException e) {
      if (computing && !ComputingThread.flight().map(Flight::unwanted).orElse(true)) {
        // It was cancelled in the moment before this thread came to need it.
        return answer(computation, wait, passenger.urgency());
      }
      throw e;
    }
  }

  /** Computes a flight on this thread unless another one has begun it. */
  private static void claim(Flight flight) {
    try {
      flight.awaitOffer();
    } catch (InterruptedException e) {
      throw interrupted(e);
    }
    flight.run();
  }

  private static IllegalStateException interrupted(InterruptedException e) {
    Thread.currentThread().interrupt();
    return new IllegalStateException("Interrupted while waiting for a computation", e);
  }

  private Answer await(
      CompletableFuture<StoredResult> seat,
      Answer.Source source,
      Duration wait,
      Computation computation,
      Passenger passenger) {
    try {
      StoredResult result = seat.get(wait.toMillis(), TimeUnit.MILLISECONDS);
      if (source == Answer.Source.MEMORY) {
        store.used(result);
      }
      return new Answer.Ready(result, source);
    } catch (TimeoutException e) {
      // The queue asks for others, who have been noted when they were told to come back.
      return passenger.urgency() == Urgency.QUEUED
          ? desk.standing(computation)
          : desk.pending(computation);
    } catch (ExecutionException e) {
      if (e.getCause() instanceof RuntimeException failure) {
        throw failure;
      }
      throw new IllegalStateException("A computation failed", e.getCause());
    } catch (InterruptedException e) {
      throw interrupted(e);
    } finally {
      if (passenger.sits()) {
        flight(seat).ifPresent(Flight::standUp);
      }
    }
  }

  private static int weight(StoredResult result) {
    long bytes = result.bytes().length + 2L * result.canonicalRequest().length() + BYTES_PER_ENTRY;
    return (int) Math.min(Integer.MAX_VALUE, bytes);
  }
}
