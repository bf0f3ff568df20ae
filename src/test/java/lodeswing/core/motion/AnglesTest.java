package lodeswing.core.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.math.MathContext;
import java.util.function.DoubleUnaryOperator;
import org.junit.jupiter.api.Test;

/**
 * Against StrictMath (fdlibm, error below 1 ulp), and against the power series (NIST Digital
 * Library of Mathematical Functions, 4.19.1 and 4.19.2) summed to 40 digits.
 */
class AnglesTest {

  private static final MathContext DIGITS = new MathContext(40);

  @Test
  void sineAndCosineAreWithinTwoUlpOfStrictMathUpToOnePointSix() {
    for (int i = 0; i <= 400_000; i++) {
      double x = -1.6 + 3.2 * i / 400_000;
      double sine = Angles.sine(x);
      double expected = StrictMath.sin(x);
      assertEquals(expected, sine, 2 * Math.ulp(expected));
      expected = StrictMath.cos(x);
      assertEquals(expected, Angles.cosine(x, sine), 2 * Math.ulp(expected));
    }
  }

  @Test
  void trueErrorStaysBelowTwoUlpEvenNearTheCosinesZero() {
    double sine = worstUlps(1.6, Angles::sine, 1);
    double cosine = worstUlps(1.6, x -> Angles.cosine(x, Angles.sine(x)), 0);
    assertTrue(sine < 1.8 && cosine < 1.8, () -> sine + " " + cosine);
  }

  @Test
  void sineIsWithinOneUlpInTheRangeOfAnglesThatIsUsed() {
    double sine = worstUlps(BenchMotion.MAX_ANGLE, Angles::sine, 1);
    assertTrue(sine < 1, () -> "worst " + sine);
  }

  @Test
  void atZeroBothAreExactAndSineIsOddCosineEven() {
    assertEquals(0.0, Angles.sine(0.0));
    assertEquals(1.0, Angles.cosine(0.0, 0.0));
    for (double x = 0.01; x < 1.6; x += 0.0317) {
      double sine = Angles.sine(x);
      assertEquals(-sine, Angles.sine(-x));
      assertEquals(Angles.cosine(x, sine), Angles.cosine(-x, -sine));
    }
  }

  @Test
  void smallAnglesKeepTheirDigits() {
    for (double x = 1e-300; x < 1e-3; x *= 7) {
      assertEquals(StrictMath.sin(x), Angles.sine(x), Math.ulp(x));
    }
  }

  private static double worstUlps(double range, DoubleUnaryOperator ours, int firstPower) {
    double worst = 0;
    for (int i = 1; i <= 1500; i++) {
      double x = range * i / 1500;
      BigDecimal exact = series(new BigDecimal(x), firstPower);
      double value = ours.applyAsDouble(x);
      double error = new BigDecimal(value).subtract(exact, DIGITS).abs().doubleValue();
      worst = Math.max(worst, error / Math.ulp(exact.doubleValue()));
    }
    return worst;
  }

  private static BigDecimal series(BigDecimal x, int firstPower) {
    BigDecimal term = firstPower == 1 ? x : BigDecimal.ONE;
    BigDecimal minusSquare = x.multiply(x, DIGITS).negate();
    BigDecimal sum = term;
    for (int n = firstPower + 2; n < 42; n += 2) {
      term = term.multiply(minusSquare, DIGITS).divide(BigDecimal.valueOf(n * (n - 1L)), DIGITS);
      sum = sum.add(term, DIGITS);
    }
    return sum;
  }
}
