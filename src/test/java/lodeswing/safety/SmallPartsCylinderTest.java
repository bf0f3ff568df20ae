package lodeswing.safety;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.Ring;
import lodeswing.core.magnet.Sphere;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * The gauge of 16 CFR 1501.4: 31.75 mm wide, 25.4 mm deep on one side and 57.15 mm on the other.
 */
class SmallPartsCylinderTest {

  private static final double MM = 1e-3;

  /**
   * Rods and discs. Upright a round of width d finds 57.15 - d of depth; rods that only fit tilted
   * were found by other code (a downhill search over all orientations, the best place by convex
   * minimisation): 10 mm wide up to 49.2 mm, 2 mm up to 62.1, 20 mm up to 37.1.
   */
  @ParameterizedTest
  @CsvSource({
    "31.7, 25.4, true",
    "31.7, 26, false",
    "32, 2, false",
    "20, 37, true",
    "20, 38, false",
    "10, 47, true",
    "10, 49, true",
    "10, 49.6, false",
    "2, 62, true",
    "2, 63, false",
    "2, 66, false",
    "25, 5, true",
    "40, 5, false"
  })
  void roundsFitAsTheyDoByHand(double diameter, double height, boolean fits) {
    assertEquals(
        fits, SmallPartsCylinder.holds(new Disc(diameter / 2 * MM, height * MM, 1)), "disc");
    assertEquals(
        fits,
        SmallPartsCylinder.holds(new Ring(diameter / 8 * MM, diameter / 2 * MM, height * MM, 1)),
        "ring");
  }

  /** Blocks by the same other code, however their sides are named. */
  @ParameterizedTest
  @CsvSource({
    "50, 10, 5, true",
    "60, 10, 5, false",
    "22.4, 22.4, 34, false",
    "30, 15, 30, false",
    "45, 28, 5, false",
    "40, 20, 10, true",
    "10, 10, 10, true",
    "33, 33, 1, false",
    "80, 2, 2, false"
  })
  void blocksFitAsTheyDoByHand(double length, double width, double height, boolean fits) {
    double[][] named = {{length, width, height}, {height, length, width}, {width, height, length}};
    for (double[] sides : named) {
      Magnet block = new Block(sides[0] * MM, sides[1] * MM, sides[2] * MM, 1);
      assertEquals(fits, SmallPartsCylinder.holds(block));
    }
  }

  @Test
  void spheresFitUpToItsWidthAndDipolesHaveNoSize() {
    assertEquals(true, SmallPartsCylinder.holds(new Sphere(15.8 * MM, 1)));
    assertFalse(SmallPartsCylinder.holds(new Sphere(16 * MM, 1)));
    assertFalse(SmallPartsCylinder.holds(new Dipole(1)));
  }
}
