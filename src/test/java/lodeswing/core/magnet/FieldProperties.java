package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** Maxwell's equations of a static field without currents, at random points outside and inside. */
class FieldProperties {

  private static final List<Magnet> SHAPES =
      List.of(
          new Disc(0.01, 0.006, 1.2),
          new Ring(0.004, 0.01, 0.006, 0.9),
          new Block(0.02, 0.012, 0.006, 0.4),
          new Sphere(0.007, 1.3),
          new Dipole(0.8));

  /** Central differences of order 6; B. Fornberg, Math. Comp. 51 (1988) 699. */
  private static final double[] WEIGHTS = {3.0 / 4, -3.0 / 20, 1.0 / 60};

  private static final double H = 2e-4;

  private static double[] field(Magnet magnet, double x, double y, double z) {
    double[] b = new double[3];
    magnet.field(x, y, z, b);
    return b;
  }

  private static double[] slope(Magnet magnet, double[] p, int axis) {
    double[] sum = new double[3];
    for (int k = 1; k <= 3; k++) {
      double[] q = p.clone();
      q[axis] = p[axis] + k * H;
      double[] up = field(magnet, q[0], q[1], q[2]);
      q[axis] = p[axis] - k * H;
      double[] down = field(magnet, q[0], q[1], q[2]);
      for (int i = 0; i < 3; i++) {
        sum[i] += WEIGHTS[k - 1] * (up[i] - down[i]) / H;
      }
    }
    return sum;
  }

  private static double[] point(double distance, double azimuth, double cosine) {
    double sine = Math.sqrt(1 - cosine * cosine);
    return new double[] {
      distance * sine * Math.cos(azimuth), distance * sine * Math.sin(azimuth), distance * cosine
    };
  }

  @Property(tries = 400)
  void fieldHasNoSourcesAndNoCurl(
      @ForAll @IntRange(min = 0, max = 4) int shape,
      @ForAll @Scale(6) @DoubleRange(min = 0.0145, max = 0.1) double distance,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 6.28) double azimuth,
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double cosine) {
    Magnet magnet = SHAPES.get(shape);
    double[] p = point(distance, azimuth, cosine);
    double[] dx = slope(magnet, p, 0);
    double[] dy = slope(magnet, p, 1);
    double[] dz = slope(magnet, p, 2);
    double[] b = field(magnet, p[0], p[1], p[2]);
    double scale = Math.sqrt(b[0] * b[0] + b[1] * b[1] + b[2] * b[2]) / distance;
    assertEquals(0, dx[0] + dy[1] + dz[2], 1e-5 * scale);
    assertEquals(0, dy[2] - dz[1], 1e-5 * scale);
    assertEquals(0, dz[0] - dx[2], 1e-5 * scale);
    assertEquals(0, dx[1] - dy[0], 1e-5 * scale);
  }

  @Property(tries = 400)
  void fieldIsThePotentialsSlope(
      @ForAll @IntRange(min = 0, max = 4) int shape,
      @ForAll @Scale(6) @DoubleRange(min = 0.0145, max = 0.1) double distance,
      @ForAll @Scale(6) @DoubleRange(min = 0, max = 6.28) double azimuth,
      @ForAll @Scale(6) @DoubleRange(min = -1, max = 1) double cosine) {
    Magnet magnet = SHAPES.get(shape);
    double[] p = point(distance, azimuth, cosine);
    double[] b = field(magnet, p[0], p[1], p[2]);
    double scale = Math.sqrt(b[0] * b[0] + b[1] * b[1] + b[2] * b[2]);
    for (int axis = 0; axis < 3; axis++) {
      double sum = 0;
      for (int k = 1; k <= 3; k++) {
        double[] q = p.clone();
        q[axis] = p[axis] + k * H;
        double up = magnet.potential(q[0], q[1], q[2]);
        q[axis] = p[axis] - k * H;
        sum += WEIGHTS[k - 1] * (up - magnet.potential(q[0], q[1], q[2])) / H;
      }
      assertEquals(b[axis], -MagneticConstant.MU_0 * sum, 1e-5 * scale);
    }
  }
}
