package lodeswing.store;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.Optional;
import java.util.function.Supplier;

/** Marks the threads that compute, and knows what they compute, the innermost first. */
final class ComputingThread extends Thread {

  private final Deque<Flight> flights = new ArrayDeque<>();

  ComputingThread(Runnable task, String name) {
    super(task, name);
    setDaemon(true);
  }

  /** Does the work of a flight on the current thread. */
  static byte[] compute(Flight flight, Supplier<byte[]> work) {
    if (!(Thread.currentThread() instanceof ComputingThread thread)) {
      return work.get();
    }
    thread.flights.push(flight);
    try {
      return work.get();
    } finally {
      thread.flights.pop();
    }
  }

  /** The flight whose work the current thread does. */
  static Optional<Flight> flight() {
    return Thread.currentThread() instanceof ComputingThread thread
        ? Optional.ofNullable(thread.flights.peek())
        : Optional.empty();
  }
}
