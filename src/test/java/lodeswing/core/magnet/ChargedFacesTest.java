package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.function.DoubleUnaryOperator;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Potential and field against plain quadrature of Coulomb's law over the charged faces (Jackson,
 * Classical Electrodynamics, 3rd ed. (1999), eqs 5.98 to 5.100), which shares no formula with them.
 */
class ChargedFacesTest {

  private static final double R = 0.0125;
  private static final double HALF = 0.0025;
  private static final double BR = 0.385;
  private static final Disc DISC = new Disc(R, 2 * HALF, BR);

  private static double integral(DoubleUnaryOperator f, double from, double to) {
    return new IterativeLegendreGaussIntegrator(16, 1e-12, 1e-14, 2, 64)
        .integrate(2_000_000, f::applyAsDouble, from, to);
  }

  /** Sum over both faces of the charge times kernel(distance vector). */
  private static double overFaces(double x, double z, int component) {
    double total = 0;
    for (int side = -1; side <= 1; side += 2) {
      double dz = z - side * HALF;
      total +=
          side
              * integral(
                  r -> r * 2 * integral(a -> coulomb(x, dz, r, a, component), 0, Math.PI), 0, R);
    }
    return BR / (4 * Math.PI) * total;
  }

  private static double coulomb(double x, double dz, double r, double angle, int component) {
    double dx = x - r * Math.cos(angle);
    double dy = r * Math.sin(angle);
    double d2 = dx * dx + dy * dy + dz * dz;
    double d = Math.sqrt(d2);
    return switch (component) {
      case 0 -> dx / (d2 * d);
      case 2 -> dz / (d2 * d);
      default -> 1 / d;
    };
  }

  static Stream<Arguments> points() {
    return Stream.of(
        Arguments.of(0.003, 0.008),
        Arguments.of(0.0125, 0.008),
        Arguments.of(0.0125, 0.0035),
        Arguments.of(0.02, 0.0),
        Arguments.of(0.02, 0.0025),
        Arguments.of(0.03, -0.01),
        Arguments.of(0.0312, 0.005),
        Arguments.of(0.0328, 0.005),
        Arguments.of(0.1, 0.05));
  }

  @ParameterizedTest
  @MethodSource("points")
  void discAgreesWithQuadratureOfItsFaces(double x, double z) {
    double[] b = new double[3];
    DISC.field(x, 0, z, b);
    double scale = Math.hypot(b[0], b[2]);
    assertEquals(overFaces(x, z, 0), b[0], 1e-9 * scale);
    assertEquals(overFaces(x, z, 2), b[2], 1e-9 * scale);
    double potential = MagneticConstant.MU_0 * DISC.potential(x, 0, z);
    assertEquals(overFaces(x, z, 1), potential, 1e-9 * scale * Math.hypot(x, z));
  }

  /** E. Durand, Electrostatique I (1964): a charged disc's rim is at 2/pi of its centre, 4R. */
  @Test
  void potentialAtTheRimIsFiniteAndExact() {
    double thin = 1e-3;
    Disc rod = new Disc(thin, 2000 * thin, 1);
    double atRim = MagneticConstant.MU_0 * rod.potential(thin, 0, 1000 * thin);
    double otherEnd = thin * thin * Math.PI / (2000 * thin);
    assertEquals((4 * thin - otherEnd) / (4 * Math.PI), atRim, 1e-9 * thin);
  }

  @Test
  void nearAndFarFormsMeet() {
    double[] in = new double[3];
    double[] out = new double[3];
    double meet = 2.5 * Math.hypot(R, HALF);
    for (double angle = 0.05; angle < 1.6; angle += 0.1) {
      double x = meet * Math.cos(angle);
      double z = meet * Math.sin(angle);
      DISC.field(x * (1 - 1e-14), 0, z * (1 - 1e-14), in);
      DISC.field(x * (1 + 1e-14), 0, z * (1 + 1e-14), out);
      double scale = Math.hypot(out[0], out[2]);
      assertEquals(out[0], in[0], 1e-12 * scale);
      assertEquals(out[2], in[2], 1e-12 * scale);
      double inside = DISC.potential(x * (1 - 1e-14), 0, z * (1 - 1e-14));
      double outside = DISC.potential(x * (1 + 1e-14), 0, z * (1 + 1e-14));
      assertEquals(outside, inside, 1e-12 * scale * meet / MagneticConstant.MU_0);
    }
  }

  /** Leading correction to the dipole is of relative order (size/distance)^2, Jackson eq. 4.1. */
  @Test
  void blockFarAwayIsADipole() {
    Block block = new Block(0.02, 0.012, 0.006, 1.2);
    Dipole dipole = new Dipole(block.moment());
    double[] b = new double[3];
    double[] d = new double[3];
    for (double distance : new double[] {0.2, 0.6, 20, 2000}) {
      block.field(0.6 * distance, 0.48 * distance, 0.64 * distance, b);
      dipole.field(0.6 * distance, 0.48 * distance, 0.64 * distance, d);
      double scale = Math.hypot(d[0], d[2]);
      double off = Math.hypot(b[0] - d[0], Math.hypot(b[1] - d[1], b[2] - d[2]));
      double size = 0.0121 / distance;
      assertTrue(off < (3 * size * size + 1e-13) * scale, "off by " + off / scale);
    }
  }

  @Test
  void blockNearAndFarFormsMeet() {
    Block block = new Block(0.02, 0.012, 0.006, 1.2);
    double meet = 12 * Math.sqrt(0.01 * 0.01 + 0.006 * 0.006 + 0.003 * 0.003);
    double[] in = new double[3];
    double[] out = new double[3];
    for (double angle = 0.1; angle < 1.5; angle += 0.2) {
      double x = meet * Math.cos(angle) * 0.8;
      double y = meet * Math.cos(angle) * 0.6;
      double z = meet * Math.sin(angle);
      double in1 = 1 - 1e-13;
      double out1 = 1 + 1e-13;
      block.field(x * in1, y * in1, z * in1, in);
      block.field(x * out1, y * out1, z * out1, out);
      double scale = Math.hypot(out[0], Math.hypot(out[1], out[2]));
      for (int i = 0; i < 3; i++) {
        assertEquals(out[i], in[i], 3e-11 * scale);
      }
      assertEquals(
          block.potential(x * out1, y * out1, z * out1),
          block.potential(x * in1, y * in1, z * in1),
          3e-11 * scale * meet / MagneticConstant.MU_0);
    }
  }

  @Test
  void blockStaysFiniteOnItsEdgesAndTheirProlongations() {
    Block block = new Block(0.02, 0.012, 0.006, 1.2);
    double[] b = new double[3];
    double[] near = new double[3];
    block.field(0.01, 0.03, 0.003, b);
    block.field(0.01 + 1e-9, 0.03, 0.003 + 1e-9, near);
    for (int i = 0; i < 3; i++) {
      assertEquals(near[i], b[i], 1e-6);
    }
    block.field(0.01, 0.006, 0.003, b);
    assertTrue(Double.isFinite(b[0]) && Double.isFinite(b[1]) && Double.isFinite(b[2]));
    assertTrue(Double.isFinite(block.potential(0.01, 0.006, 0.003)));
  }
}
