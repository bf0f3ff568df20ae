package lodeswing.core.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.random.SobolSequenceGenerator;
import org.junit.jupiter.api.Test;

class ShiftedSobolTest {

  /**
   * The first ten points in three dimensions that the authors' own program prints for their file
   * new-joe-kuo-6: S. Joe and F. Y. Kuo, "Notes on generating Sobol' sequences" (2008); figures
   * from memory.
   */
  @Test
  void sequenceBelowTheShiftIsThePublishedOne() {
    double[][] published = {
      {0, 0, 0},
      {0.5, 0.5, 0.5},
      {0.75, 0.25, 0.25},
      {0.25, 0.75, 0.75},
      {0.375, 0.375, 0.625},
      {0.875, 0.875, 0.125},
      {0.625, 0.125, 0.875},
      {0.125, 0.625, 0.375},
      {0.1875, 0.3125, 0.9375},
      {0.6875, 0.8125, 0.4375}
    };
    var sequence = new SobolSequenceGenerator(3);
    var shifted = new ShiftedSobol(3, 7);
    double[] shift = shifted.next().clone();
    assertArrayEquals(published[0], sequence.nextVector());
    for (int i = 1; i < published.length; i++) {
      assertArrayEquals(published[i], sequence.nextVector());
      double[] point = shifted.next();
      for (int k = 0; k < 3; k++) {
        assertEquals(digits(published[i][k]), digits(point[k]) ^ digits(shift[k]));
      }
    }
  }

  private static long digits(double coordinate) {
    return (long) Math.scalb(coordinate, 52);
  }

  /**
   * The property that names the sequence: in two dimensions each block of 2^k points from the start
   * has one point in each of the 2^k equal boxes of every shape (I. M. Sobol', 1967), and a digital
   * shift keeps that.
   */
  @Test
  void everyBoxOfAPowerOfTwoHasItsPoint() {
    for (long seed : new long[] {0, 1, 2_026}) {
      for (int across = 0; across <= 8; across++) {
        var points = new ShiftedSobol(2, seed);
        int[] count = new int[256];
        int columns = 1 << across;
        int rows = 256 / columns;
        for (int i = 0; i < 256; i++) {
          double[] point = points.next();
          int column = (int) (point[0] * columns);
          int row = (int) (point[1] * rows);
          count[column * rows + row]++;
        }
        for (int box : count) {
          assertEquals(1, box);
        }
      }
    }
  }

  @Test
  void seedsMakeOthersAndTheSameSeedTheSame() {
    double[] one = new ShiftedSobol(4, 1).next().clone();
    assertArrayEquals(one, new ShiftedSobol(4, 1).next());
    assertNotEquals(one[0], new ShiftedSobol(4, 2).next()[0]);
  }

  /** The mean over seeds of the very first point, one half, within five standard errors. */
  @Test
  void everyPointIsUniformOverTheSeeds() {
    double sum = 0;
    int seeds = 10_000;
    for (int seed = 0; seed < seeds; seed++) {
      double[] first = new ShiftedSobol(1, seed).next();
      assertTrue(first[0] > 0 && first[0] < 1);
      sum += first[0];
    }
    assertEquals(0.5, sum / seeds, 5 / Math.sqrt(12.0 * seeds));
  }
}
