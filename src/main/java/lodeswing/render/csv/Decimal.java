package lodeswing.render.csv;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Doubles as decimal text that does not hang on the Java version, whose own conversion was
 * shortened in Java 19.
 *
 * <p>A decimal of 15 digits at most that gives the double back is the only one, so where the JDK
 * finds one it is taken. Else the exact value is rounded to 16, then 17 digits until it gives the
 * double back; 17 always do (Goldberg, What every computer scientist should know about
 * floating-point arithmetic, ACM Computing Surveys 23 (1991), theorem 15).
 */
final class Decimal {
  private static final int UNIQUE_DIGITS = 15;
  private static final int MOST_DIGITS = 17;
  private static final int LEAST_PLAIN_EXPONENT = -7;
  private static final int GREATEST_PLAIN_EXPONENT = 15;

  private Decimal() {}

  static String shortest(double value) {
    requireFinite(value);
    if (value == Math.rint(value) && Math.abs(value) < 1e15) {
      return Long.toString((long) value);
    }
    BigDecimal shown = new BigDecimal(Double.toString(value)).stripTrailingZeros();
    if (shown.precision() > UNIQUE_DIGITS) {
      BigDecimal exact = new BigDecimal(value);
      for (int digits = UNIQUE_DIGITS; digits <= MOST_DIGITS; digits++) {
        shown = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
        if (shown.doubleValue() == value) {
          break;
        }
      }
    }
    return written(shown.stripTrailingZeros());
  }

  static String rounded(double value, int digits) {
    requireFinite(value);
    if (digits < 1 || digits > MOST_DIGITS) {
      throw new IllegalArgumentException("A number has 1 to " + MOST_DIGITS + " digits.");
    }
    if (value == 0) {
      return "0";
    }
    return written(
        new BigDecimal(value)
            .round(new MathContext(digits, RoundingMode.HALF_EVEN))
            .stripTrailingZeros());
  }

  private static String written(BigDecimal value) {
    int exponent = value.precision() - value.scale() - 1;
    if (exponent >= LEAST_PLAIN_EXPONENT && exponent <= GREATEST_PLAIN_EXPONENT) {
      return value.toPlainString();
    }
    String digits = value.unscaledValue().abs().toString();
    String fraction = digits.length() > 1 ? "." + digits.substring(1) : "";
    return (value.signum() < 0 ? "-" : "") + digits.charAt(0) + fraction + "E" + exponent;
  }

  private static void requireFinite(double value) {
    if (!Double.isFinite(value)) {
      throw new IllegalArgumentException("A number in a table is finite.");
    }
  }
}
