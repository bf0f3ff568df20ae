package lodeswing.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import lodeswing.core.geometry.HermiteCubic;
import org.junit.jupiter.api.Test;

class EnergyFallTest {

  @Test
  void aStraightFallIsHalfDoneInTheMiddle() {
    assertEquals(0.5, new EnergyFall(3, 1, -2, -2).reaches(2));
  }

  @Test
  void aFallThatStandsStillAtItsLevelIsFound() {
    // (1 - 2t)^3 falls from 1 to -1 and is flat where it crosses zero: a triple root, where doubles
    // tell a place only to the cube root of their precision.
    assertEquals(0.5, new EnergyFall(1, -1, -6, -6).reaches(0), 1e-5);
  }

  @Test
  void anyLevelBetweenTheEndsIsMet() {
    Random random = new Random(3);
    for (int i = 0; i < 20_000; i++) {
      double fall = Math.exp(random.nextGaussian());
      double before = random.nextGaussian();
      double slope = -6 * fall * random.nextDouble();
      double slopeAfter = i % 7 == 0 ? 0 : -6 * fall * random.nextDouble();
      double level = before - fall * random.nextDouble();
      double t = new EnergyFall(before, before - fall, slope, slopeAfter).reaches(level);
      assertTrue(t >= 0 && t <= 1, () -> "outside the step: " + t);
      double there = HermiteCubic.value(before, slope, before - fall, slopeAfter, t);
      assertEquals(level, there, 4e-15 * (Math.abs(before) + 8 * fall));
    }
  }
}
