package lodeswing.core.statistics;

/** Labels of any places of a plane, many at once. */
@FunctionalInterface
public interface PlaneLabelling {

  /**
   * Labels places.
   *
   * @param x first coordinates, in the window's unit
   * @param y second coordinates, as many
   * @param label receives as many labels; {@link LabelGrid#NO_LABEL} where a place has none
   */
  void label(double[] x, double[] y, int[] label);
}
