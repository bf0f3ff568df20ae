package lodeswing.core.loss;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.loss.LossLaw.DragElement;
import lodeswing.core.suspension.BarPart;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Quadratic air drag of bob and bar: a force 1/2 rho C_d A |v| v against the speed, A the area of
 * the silhouette from the side (G. K. Batchelor, An Introduction to Fluid Dynamics, 1967, section
 * 5.11).
 *
 * @param dragCoefficient C_d, at least 0: about 1.1 for a short cylinder across the stream, 0.5 for
 *     a sphere (common practice)
 * @param airDensity rho [kg/m^3], above 0
 */
public record AirDrag(double dragCoefficient, double airDensity) {

  /** Dry air at 20 degrees Celsius and 101325 Pa [kg/m^3]: p/(287.05 J/(kg K) x 293.15 K). */
  public static final double ROOM_AIR_DENSITY = 1.204;

  /** Gauss points a part: the torque's s^3 law is integrated exactly by two, curved ones better. */
  private static final int POINTS = 4;

  public AirDrag {
    if (!(dragCoefficient >= 0 && airDensity > 0)) {
      throw new IllegalArgumentException("dragCoefficient must be >= 0, airDensity above 0");
    }
  }

  /** Drag in a room. */
  public static AirDrag inRoom(double dragCoefficient) {
    return new AirDrag(dragCoefficient, ROOM_AIR_DENSITY);
  }

  /**
   * A body small against its arm.
   *
   * @param arm distance below the second axis [m]
   * @param area of its silhouette from the side [m^2]
   */
  public DragElement small(double arm, double area) {
    return new DragElement(arm, dragCoefficient * airDensity * area / 2);
  }

  /**
   * The parts of a bar, each cut at the points of Gauss-Legendre quadrature along its length.
   *
   * @param parts the bar's parts; one without length or width has no drag
   */
  public List<DragElement> ofBar(List<BarPart> parts) {
    GaussIntegrator rule = new GaussIntegratorFactory().legendre(POINTS);
    List<DragElement> elements = new ArrayList<>();
    for (BarPart part : parts) {
      double area = part.length() * part.width();
      for (int i = 0; i < POINTS && area > 0; i++) {
        double arm = part.centre() + part.length() / 2 * rule.getPoint(i);
        elements.add(small(arm, area * rule.getWeight(i) / 2));
      }
    }
    return List.copyOf(elements);
  }
}
