package lodeswing.core.loss;

import java.util.List;

/**
 * What takes energy out of the swing; every part only ever lowers the energy.
 *
 * @param linear force per speed at the bob magnet's centre [N s/m], at least 0
 * @param drag quadratic air drag of bob and bar, empty for none
 * @param pivotTorque size of the friction torque at the pivot [N m], at least 0
 */
public record LossLaw(double linear, List<DragElement> drag, double pivotTorque) {

  public LossLaw {
    drag = List.copyOf(drag);
  }

  /**
   * A point of the bar that feels -k |v| v.
   *
   * @param arm distance below the second axis [m]
   * @param coefficient k = 1/2 rho C_d A [kg/m]
   */
  public record DragElement(double arm, double coefficient) {}
}
