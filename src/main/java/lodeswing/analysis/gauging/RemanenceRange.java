package lodeswing.analysis.gauging;

/**
 * A remanence and the range that the readings' uncertainties leave it.
 *
 * @param value the remanence [T]
 * @param low lower end [T]
 * @param high upper end [T]
 */
public record RemanenceRange(double value, double low, double high) {

  /** A range by the logarithms of how far it reaches down and up. */
  static RemanenceRange about(double value, double down, double up) {
    return new RemanenceRange(value, value * Math.exp(-down), value * Math.exp(up));
  }
}
