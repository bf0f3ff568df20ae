package lodeswing.analysis.glow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

class DecayLawTest {

  private static final DecayLaw USUAL = DecayLaw.STRONTIUM_ALUMINATE;

  /**
   * Becquerel's first form, exponent 2: a quarter after one time constant, a ninth after two
   * (Lattanzi, Casasanta, Garra 2021, arXiv 2103.05979, the equation before 1.1).
   */
  @Test
  void theLawIsBecquerels() {
    DecayLaw law = new DecayLaw(7, 2);
    assertEquals(1, law.remaining(0), 0);
    assertEquals(1.0 / 4, law.remaining(7), 1e-15);
    assertEquals(1.0 / 9, law.remaining(14), 1e-15);
  }

  /**
   * The rate of a reaction of order b empties traps by dI/dt proportional to -I^(1 + 1/p): general
   * order kinetics (Tsai, Lin, Huang, Huang, Scientific World Journal 2014, 102524, equation 1),
   * followed here by Runge and Kutta's steps without the closed form.
   */
  @Test
  void theLawSolvesTheKineticsOfGeneralOrder() {
    double p = USUAL.exponent();
    double left = 1;
    double step = 0.05;
    for (int i = 0; i < 72_000; i++) {
      double k1 = rate(left, p);
      double k2 = rate(left + step / 2 * k1, p);
      double k3 = rate(left + step / 2 * k2, p);
      double k4 = rate(left + step * k3, p);
      left += step / 6 * (k1 + 2 * k2 + 2 * k3 + k4);
    }
    assertEquals(left, USUAL.remaining(3_600), 1e-9);
  }

  private static double rate(double left, double p) {
    return -p / USUAL.time() * Math.pow(left, 1 + 1 / p);
  }

  /**
   * Published for SrAl2O4:Eu,Dy: Becquerel's law, exponent close to 1, times of about 10 to 50 s
   * (Chernov and others, Radiation Measurements 42 (2007) 668, abstract).
   */
  @Test
  void theUsualPaperLiesWithinWhatWasMeasured() {
    assertTrue(USUAL.time() >= 10 && USUAL.time() <= 50);
    assertEquals(1, USUAL.exponent(), 0.15);
  }

  /**
   * A strip with the 15 mcd/m2 after 10 minutes that ISO 15370:2021, 4.2.1, asks for still has the
   * 2 mcd/m2 that it asks for after 60; and no strip fades less than as 1/t does.
   */
  @Test
  void theUsualPaperFadesBetweenTenAndSixtyMinutesAsStripsOnShipsMay() {
    double after60 = 15 * USUAL.remaining(3_600) / USUAL.remaining(600);
    assertTrue(after60 >= 2 && after60 < 15 * 600.0 / 3_600, () -> "mcd/m2 " + after60);
  }

  @Test
  void whatIsNoDecayIsRefused() {
    for (double wrong : new double[] {0, -1, Double.NaN, Double.POSITIVE_INFINITY}) {
      assertThrows(IllegalArgumentException.class, () -> new DecayLaw(wrong, 1));
      assertThrows(IllegalArgumentException.class, () -> new DecayLaw(1, wrong));
    }
  }
}
