package lodeswing.store;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.Optional;
import org.junit.jupiter.api.Test;

class ProgressRateTest {

  private static final double FAR_OFF = 1e6;

  private final ProgressRate rate = new ProgressRate();

  @Test
  void evenWorkTakesTheRestOfItsTime() {
    for (int i = 1; i <= 300; i++) {
      rate.told(i * 0.1, i * 0.001);
    }

    assertEquals(70, rate.remaining(30, 0.3, FAR_OFF).orElseThrow(), 1e-9);
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

    assertEquals((1 - done) / 0.1, rate.remaining(elapsed, done, FAR_OFF).orElseThrow(), 0.5);
  }

  @Test
  void costTellsBeforeTheProgressDoes() {
    rate.told(1, 0.001);
    assertEquals(10, rate.remaining(1, 0.001, 10).orElseThrow(), 0.3);

    // An eighth done: halfway, in proportion, between 7 s by the rate and 14 s by the cost.
    var even = new ProgressRate();
    even.told(0.5, 0.0625);
    double told = even.remaining(1, 0.125, 16).orElseThrow();
    assertEquals(Math.sqrt(7 * 14), told, 1e-9);
  }

  @Test
  void nothingIsToldOfWorkThatStands() {
    for (int i = 1; i <= 100; i++) {
      rate.told(i, 0.4);
    }

    assertEquals(Optional.empty(), rate.remaining(101, 0.4, 5));
  }
}
