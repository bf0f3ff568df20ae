package lodeswing.core.rest;

/** What lies on one side of a pass. */
public sealed interface Side {

  /**
   * A rest point's well.
   *
   * @param restPoint its index
   */
  record OfRestPoint(int restPoint) implements Side {}

  /**
   * A region where the model does not hold.
   *
   * @param zone its index
   */
  record OfZone(int zone) implements Side {}

  /** A way down that was not followed to its end. */
  record Unknown() implements Side {}

  /** Nothing: no other rest point and no unsafe zone can be reached, whatever the energy. */
  record Nothing() implements Side {}
}
