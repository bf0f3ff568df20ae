package lodeswing.core.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class GoodnessOfFitTest {

  /** NIST/SEMATECH e-Handbook of Statistical Methods, 1.3.6.7.4, upper critical values. */
  @ParameterizedTest
  @CsvSource({
    "1, 3.841, 0.05",
    "2, 5.991, 0.05",
    "2, 9.210, 0.01",
    "3, 7.815, 0.05",
    "5, 15.086, 0.01",
    "10, 18.307, 0.05",
    "10, 29.588, 0.001"
  })
  void criticalValuesAreThoseOfTheTable(int degrees, double statistic, double chance) {
    assertEquals(chance, GoodnessOfFit.of(statistic, degrees).pValue(), 2e-4 * chance + 2e-5);
  }

  /**
   * G. Mendel's peas (1866): 315, 108, 101 and 32 against 9 : 3 : 3 : 1 have chi-square 0.470 and a
   * p-value of 0.925, in many textbooks (from memory).
   */
  @Test
  void mendelsPeasFitTheirOdds() {
    double[] expected = {556 * 9 / 16.0, 556 * 3 / 16.0, 556 * 3 / 16.0, 556 / 16.0};
    GoodnessOfFit fit = GoodnessOfFit.of(expected, new long[] {315, 108, 101, 32});

    assertEquals(0.470, fit.statistic(), 5e-4);
    assertEquals(3, fit.degreesOfFreedom());
    assertEquals(0.925, fit.pValue(), 5e-4);
  }

  @Test
  void whatCannotBeComparedIsRefused() {
    assertThrows(
        IllegalArgumentException.class, () -> GoodnessOfFit.of(new double[] {1}, new long[] {1}));
    assertThrows(
        IllegalArgumentException.class,
        () -> GoodnessOfFit.of(new double[] {0, 1}, new long[] {1, 1}));
  }
}
