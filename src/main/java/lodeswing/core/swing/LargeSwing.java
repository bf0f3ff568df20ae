package lodeswing.core.swing;

import java.util.OptionalDouble;

/**
 * Period of a physical pendulum's swing about one axis, of any size and without loss.
 *
 * <p>T = 4/omega K(k) with k = sin(theta/2), theta the greatest angle, and K(k) = pi / (2 agm(1, (1
 * - k^2)^(1/2))): NIST Digital Library of Mathematical Functions, 22.19.1 and 19.8.5.
 */
public final class LargeSwing {

  /** The means agree to the last digit after six rounds where k^2 is below 0.99. */
  private static final int ROUNDS = 8;

  private LargeSwing() {}

  /**
   * The period of the swing that passes an angle at a speed; empty where it would turn over.
   *
   * <p>By energy k^2 = sin^2(angle/2) + (speed/(2 omega))^2.
   *
   * @param rate omega, of the small swing [rad/s]
   * @param angle [rad]
   * @param speed angular speed there [rad/s]
   */
  public static OptionalDouble period(double rate, double angle, double speed) {
    double sine = Math.sin(angle / 2);
    double push = speed / (2 * rate);
    double square = sine * sine + push * push;
    return square < 1
        ? OptionalDouble.of(2 * Math.PI / rate / mean(1, Math.sqrt(1 - square)))
        : OptionalDouble.empty();
  }

  /** The arithmetic-geometric mean. */
  private static double mean(double one, double other) {
    double x = one;
    double y = other;
    for (int i = 0; i < ROUNDS; i++) {
      double half = (x + y) / 2;
      y = Math.sqrt(x * y);
      x = half;
    }
    return x;
  }
}
