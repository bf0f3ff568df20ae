package lodeswing.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProgressRateTest {

  private final ProgressRate rate = new ProgressRate();

  @Test
  void evenWorkTakesTheRestOfItsTime() {
    for (int i = 1; i <= 300; i++) {
      rate.told(i * 0.1, i * 0.001);
    }

    assertEquals(70, rate.remaining(30, 0.3).orElseThrow(), 1e-9);
  }

  @Test
  void slowBeginningIsForgotten() {
    // Three seconds at a hundredth a second, then a tenth a second: done after 12.7 s.
    double elapsed = 0;
    double done = 0;
    for (int i = 0; i < 80; i++) {
      elapsed += 0.1;
      done += elapsed <= 3 ? 0.001 : 0.01;
      rate.told(elapsed, done);
    }

    assertEquals((1 - done) / 0.1, rate.remaining(elapsed, done).orElseThrow(), 0.5);
    double average = elapsed * (1 - done) / done;
    assertEquals(7.1, average, 0.3, "what the average would have told");
  }

  @Test
  void nothingIsToldTooEarlyNorOfWorkThatStands() {
    rate.told(0.3, 0.01);
    assertEquals(Optional.empty(), rate.remaining(0.3, 0.01));

    for (int i = 1; i <= 100; i++) {
      rate.told(0.3 + i, 0.4);
    }
    assertEquals(Optional.empty(), rate.remaining(101, 0.4));
  }
}
