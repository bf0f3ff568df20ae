package lodeswing.core.chance;

/**
 * Where a hand lets the bob go, about the place that it aims at. Plan units: metres on the bench.
 */
public sealed interface Spread permits NormalSpread, DiscSpread, RingSpread, PolygonSpread {

  /**
   * A place from two numbers that are uniform between 0 and 1.
   *
   * @param u the first number, above 0 and below 1
   * @param v the second one
   * @param place receives x and y from the aimed place
   * @return false where these numbers give no place, and the next two are to be taken
   */
  boolean place(double u, double v, double[] place);

  /** Its size: about the standard deviation along an axis, 0 or above. */
  double size();

  /** A distance from the aimed place that hardly any place exceeds. */
  double reach();
}
