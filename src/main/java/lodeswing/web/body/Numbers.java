package lodeswing.web.body;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.Locale;

/**
 * The one way a number is written: the shortest decimal that reads back as the same double, laid
 * out as ECMAScript does.
 *
 * <p>Independent of the Java version ({@code Double.toString} gave longer digits before Java 19).
 * Source of the layout: RFC 8785 (JSON Canonicalization Scheme, 2020), section 3.2.2.3.
 */
public final class Numbers {
  private static final int MOST_DIGITS = 17;

  private Numbers() {}

  /** A figure as answers show it: nine decimals; the sum turns -0 into 0. */
  public static double rounded(double value) {
    return Math.rint(value * 1e9) / 1e9 + 0.0;
  }

  /** A value to significant digits, without a sign before 0. */
  public static double toDigits(double value, int digits) {
    return Double.parseDouble(String.format(Locale.ROOT, "%." + (digits - 1) + "e", value)) + 0.0;
  }

  /** Writes a number; NaN and infinities as words, since JSON has no form for them. */
  public static String shortest(double value) {
    if (Double.isNaN(value)) {
      return "NaN";
    }
    if (Double.isInfinite(value)) {
      return value > 0 ? "Infinity" : "-Infinity";
    }
    if (value == 0) {
      return "0";
    }
    var exact = new BigDecimal(Math.abs(value));
    BigDecimal rounded = exact;
    for (int digits = 1; digits <= MOST_DIGITS; digits++) {
      rounded = exact.round(new MathContext(digits, RoundingMode.HALF_EVEN));
      if (rounded.doubleValue() == Math.abs(value)) {
        break;
      }
    }
    BigDecimal plain = rounded.stripTrailingZeros();
    String digits = plain.unscaledValue().toString();
    return (value < 0 ? "-" : "") + layOut(digits, digits.length() - plain.scale());
  }

  /** A number to six significant digits, as sentences and cells have it. */
  public static String plain(double value) {
    return shortest(Double.parseDouble(String.format(Locale.ROOT, "%.6g", value)));
  }

  /** Lays out 0.d1d2d3... x 10^point. */
  private static String layOut(String digits, int point) {
    int count = digits.length();
    if (count <= point && point <= 21) {
      return digits + "0".repeat(point - count);
    }
    if (0 < point && point <= 21) {
      return digits.substring(0, point) + "." + digits.substring(point);
    }
    if (-6 < point && point <= 0) {
      return "0." + "0".repeat(-point) + digits;
    }
    int exponent = point - 1;
    String sign = exponent < 0 ? "e-" : "e+";
    String fraction = count == 1 ? "" : "." + digits.substring(1);
    return digits.charAt(0) + fraction + sign + Math.abs(exponent);
  }
}
