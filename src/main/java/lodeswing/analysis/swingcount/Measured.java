package lodeswing.analysis.swingcount;

/**
 * A figure and its standard uncertainty, in one unit.
 *
 * @param value the figure
 * @param error its standard uncertainty, 0 or above
 */
public record Measured(double value, double error) {

  /** Standard deviations in half a 95 % interval. */
  private static final double COVERAGE = 1.959963984540054;

  public Measured {
    if (!(error >= 0)) {
      throw new IllegalArgumentException("an uncertainty is 0 or above, but is " + error);
    }
  }

  /** A figure whose 95 % interval has a half width. */
  public static Measured within(double value, double half) {
    return new Measured(value, half / COVERAGE);
  }

  /** Half the width of its 95 % interval. */
  public double half() {
    return COVERAGE * error;
  }

  /** Lower end of its 95 % interval. */
  public double low() {
    return value - half();
  }

  /** Upper end of its 95 % interval. */
  public double high() {
    return value + half();
  }
}
