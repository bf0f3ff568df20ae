package lodeswing.core.loss;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.List;
import lodeswing.core.suspension.BarPart;
import lodeswing.core.suspension.BarShape;
import org.junit.jupiter.api.Test;

/** Air drag of a bar against closed integrals. */
class AirDragTest {

  /** Torque of a rod turning on its end: integral of 1/2 rho C_d D s^3 ds = 1/8 rho C_d D L^4. */
  @Test
  void elementsOfARodGiveTheTorqueOfItsIntegral() {
    BarPart rod = BarPart.weighed(new BarShape.Cylinder(0.006, 0.4), 0.1, 0.2);
    double sum = 0;
    for (LossLaw.DragElement element : AirDrag.inRoom(1.1).ofBar(List.of(rod))) {
      sum += element.coefficient() * Math.pow(element.arm(), 3);
    }
    double expected = 1.204 * 1.1 * 0.006 * Math.pow(0.4, 4) / 8;
    assertEquals(expected, sum, 1e-14 * expected);
  }

  @Test
  void ballShowsItsDiscToTheStream() {
    BarPart ball = BarPart.weighed(new BarShape.Ball(0.03), 0.1, 0.4);
    double sum =
        AirDrag.inRoom(0.5).ofBar(List.of(ball)).stream()
            .mapToDouble(LossLaw.DragElement::coefficient)
            .sum();
    double expected = 0.5 * 1.204 * 0.5 * Math.PI * 0.015 * 0.015;
    assertEquals(expected, sum, 1e-14 * expected);
  }

  @Test
  void pointMassHasNoDrag() {
    BarPart point = BarPart.weighed(new BarShape.Point(), 0.1, 0.4);
    assertEquals(List.of(), AirDrag.inRoom(0.5).ofBar(List.of(point)));
  }

  @Test
  void negativeLossesAreRefused() {
    assertThrows(IllegalArgumentException.class, () -> new LossLaw(-1, List.of(), 0));
    assertThrows(IllegalArgumentException.class, () -> new LossLaw(0, List.of(), -1));
    assertThrows(IllegalArgumentException.class, () -> new LossLaw.DragElement(0.4, -1));
  }
}
