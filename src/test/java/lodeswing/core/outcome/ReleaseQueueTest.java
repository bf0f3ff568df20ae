package lodeswing.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.concurrent.atomic.AtomicLong;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class ReleaseQueueTest {

  @Test
  void whatIsToldOfTakenReleasesAddsUpToAllOfThem() {
    var queue = new ReleaseQueue(1_000, 51_000, done -> {});
    var told = new AtomicLong();
    IntStream.range(0, 8)
        .parallel()
        .forEach(
            thread -> {
              for (int taken = 0; queue.take() != ReleaseQueue.EMPTY; taken++) {
                if (taken % 7 == 0) {
                  told.addAndGet(queue.newlyTaken());
                }
              }
              told.addAndGet(queue.newlyTaken());
            });
    assertEquals(50_000, told.get());
    assertEquals(0, queue.newlyTaken());
  }

  @Test
  void whatWasNeverHandedOutIsNotTold() {
    var queue =
        new ReleaseQueue(
            0,
            1_000,
            done -> {
              if (done > 0) {
                throw new IllegalStateException("not wanted any more");
              }
            });
    for (int i = 0; i < 256; i++) {
      queue.take();
    }
    assertEquals(256, queue.newlyTaken());
    assertThrows(IllegalStateException.class, queue::take);
    assertEquals(ReleaseQueue.EMPTY, queue.take());
  }
}
