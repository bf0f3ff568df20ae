package lodeswing.core.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import org.apache.commons.math3.stat.regression.SimpleRegression;
import org.junit.jupiter.api.Test;

/** The slope against Commons Math, and its interval against series whose slope is known. */
class TrendLineTest {

  /** Slope by Commons Math; without lags the variance is White's, here taken from its formula. */
  @Test
  void slopeIsThatOfLeastSquares() {
    double[] values = {1, 2.5, 2, 4.5, 3, 7};
    SimpleRegression reference = new SimpleRegression();
    for (int i = 0; i < values.length; i++) {
      reference.addData(0.5 * i, values[i]);
    }
    Estimate slope = TrendLine.slope(values, 0.5, 0, 4);
    assertEquals(reference.getSlope(), slope.value(), 1e-12);
    double variance = 0;
    double mean = 1.25;
    for (int i = 0; i < values.length; i++) {
      double rest = values[i] - reference.predict(0.5 * i);
      variance += Math.pow((0.5 * i - mean) * rest, 2);
    }
    assertEquals(Math.sqrt(variance) / reference.getXSumSquares(), slope.standardError(), 1e-12);
  }

  @Test
  void aStraightLineHasNoError() {
    double[] values = new double[50];
    for (int i = 0; i < values.length; i++) {
      values[i] = 3 - 0.25 * i;
    }
    Estimate slope = TrendLine.slope(values, 2, 10, 3);
    assertEquals(-0.125, slope.value(), 1e-14);
    assertEquals(0, slope.standardError(), 1e-14);
  }

  /**
   * Noise that remembers 16 samples, fitted as a pair's logarithm is, with 64 lags (one swing) over
   * ten of them: the 95 % interval holds the slope in about 85 of 100 series, as Newey and West's
   * error is known to be small in short series; with no lags it would in about 25.
   */
  @Test
  void intervalHoldsTheSlopeOfDependentNoise() {
    int held = 0;
    int naive = 0;
    int runs = 1_000;
    SplittableRandom random = new SplittableRandom(11);
    for (int run = 0; run < runs; run++) {
      double[] values = noisy(random, 640, 16, 0.01);
      held += TrendLine.slope(values, 1, 64, 9).interval().contains(0.01) ? 1 : 0;
      naive += TrendLine.slope(values, 1, 0, 638).interval().contains(0.01) ? 1 : 0;
    }
    assertTrue(held > 0.8 * runs && held < 0.95 * runs, "held " + held);
    assertTrue(naive < 0.4 * runs, "naive " + naive);
  }

  private static double[] noisy(SplittableRandom random, int count, int memory, double slope) {
    double keep = Math.exp(-1.0 / memory);
    double noise = 0;
    double[] values = new double[count];
    for (int i = -10 * memory; i < count; i++) {
      noise = keep * noise + random.nextDouble(-1, 1);
      if (i >= 0) {
        values[i] = slope * i + noise;
      }
    }
    return values;
  }

  @Test
  void tooFewValuesAreRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> TrendLine.slope(new double[] {1, 2}, 1, 0, 1));
    assertThrows(
        IllegalArgumentException.class, () -> TrendLine.slope(new double[] {1, 2, 4}, 1, 3, 1));
  }
}
