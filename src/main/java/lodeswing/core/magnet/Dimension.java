package lodeswing.core.magnet;

/** The one check that every length and strength of a magnet passes. */
final class Dimension {

  private Dimension() {}

  /**
   * The value, when it is positive and finite.
   *
   * @throws IllegalArgumentException otherwise, naming the dimension
   */
  static double requirePositive(String name, double value) {
    if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " must be positive and finite, was " + value);
    }
    return value;
  }
}
