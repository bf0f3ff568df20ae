package lodeswing.core.regression;

/**
 * A parameter that a fit may change.
 *
 * @param name names it in results
 * @param start value to begin with, within the bounds
 * @param scale a change of it that a curve shows plainly, above 0
 * @param least lower bound
 * @param most upper bound, above the lower one
 */
public record FreeParameter(String name, double start, double scale, double least, double most) {

  public FreeParameter {
    if (!(least < most && least <= start && start <= most)) {
      throw new IllegalArgumentException(name + " does not begin within its bounds: " + start);
    }
    if (!(scale > 0 && scale < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException(name + " has no scale: " + scale);
    }
  }

  /** A parameter without bounds. */
  public static FreeParameter unbounded(String name, double start, double scale) {
    return new FreeParameter(name, start, scale, -Double.MAX_VALUE, Double.MAX_VALUE);
  }

  /** The same, beginning elsewhere. */
  public FreeParameter from(double other) {
    return new FreeParameter(name, clamped(other), scale, least, most);
  }

  /** The nearest value within the bounds. */
  double clamped(double value) {
    return Math.min(Math.max(value, least), most);
  }
}
