package lodeswing.store;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.time.Duration;
import org.junit.jupiter.api.Test;

class LearnedPaceTest {

  private static final Duration SECOND = Duration.ofSeconds(1);

  private final LearnedPace pace = new LearnedPace();

  @Test
  void beginsWithAGuessThatSaysSo() {
    assertTrue(pace.guessed());
    assertEquals(LearnedPace.GUESS, pace.releasesPerSecond());
  }

  @Test
  void measurementTakesThePlaceOfTheGuess() {
    pace.measured(50_000, Duration.ofMillis(500));
    assertFalse(pace.guessed());
    assertEquals(100_000, pace.releasesPerSecond(), 1e-6);
  }

  @Test
  void measurementCountsBesideWhatTheQueueHasComputed() {
    pace.learn(30_000, SECOND, 1);
    pace.measured(300_000, SECOND);
    assertTrue(pace.releasesPerSecond() > 30_000);
    assertTrue(pace.releasesPerSecond() < 300_000);
  }

  @Test
  void threadsThatShareTheCoresCountTogether() {
    pace.measured(100_000, SECOND);
    pace.learn(25_000, SECOND, 4);
    assertEquals(100_000, pace.releasesPerSecond(), 1e-6);
  }

  @Test
  void shortWorkMovesItLessThanLong() {
    var other = new LearnedPace();
    pace.measured(100_000, SECOND);
    other.measured(100_000, SECOND);
    pace.learn(1, Duration.ofMillis(10), 1);
    other.learn(100, SECOND, 1);
    assertTrue(pace.releasesPerSecond() > 95_000);
    assertTrue(other.releasesPerSecond() < 60_000);
  }

  @Test
  void oldWorkIsForgotten() {
    pace.measured(100_000, SECOND);
    for (int i = 0; i < 300; i++) {
      pace.learn(7_000, SECOND, 1);
    }
    assertEquals(7_000, pace.releasesPerSecond(), 70);
  }

  @Test
  void whatHadNoCostOrNoTimeTellsNothing() {
    pace.learn(0, SECOND, 1);
    pace.measured(100, Duration.ZERO);
    assertTrue(pace.guessed());
    assertEquals(LearnedPace.GUESS, pace.releasesPerSecond());
  }
}
