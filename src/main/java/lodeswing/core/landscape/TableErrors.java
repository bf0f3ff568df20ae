package lodeswing.core.landscape;

/**
 * What a table adds to the exact motion, at most.
 *
 * @param energy error of the potential [J]
 * @param acceleration error of an angular acceleration [rad/s^2]
 * @param cells how many cells the table has, 0 for none
 */
public record TableErrors(double energy, double acceleration, int cells) {

  /** No table: the exact force is used. */
  public static final TableErrors NONE = new TableErrors(0, 0, 0);
}
