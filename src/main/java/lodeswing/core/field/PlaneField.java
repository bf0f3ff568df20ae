package lodeswing.core.field;

/** A vector in a plane at each of its places: the field's part in a level or in an upright cut. */
@FunctionalInterface
public interface PlaneField {

  /**
   * The vector at a place.
   *
   * @param out receives both components [T]; NaN where there is none
   */
  void at(double u, double v, double[] out);
}
