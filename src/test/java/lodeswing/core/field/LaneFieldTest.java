package lodeswing.core.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.magnet.Ring;
import lodeswing.core.magnet.Sphere;
import lodeswing.core.magnet.SteelBacking;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The field on lanes: against the scalar closed forms, against the formulas that handbooks print
 * for the axis, and equal to the bit on vectors and without.
 */
class LaneFieldTest {

  private static final LaneProvider SCALAR = LaneProvider.scalar("a test");
  private static final LaneProvider BEST = LaneProvider.choose();

  private static PlacedMagnet at(Magnet magnet, double x, double y, Pole pole) {
    return new PlacedMagnet(magnet, new Vec3(x, y, magnet.halfHeight() + 0.004), 0.4, pole);
  }

  private static MagnetArray mixed() {
    return new MagnetArray(
        List.of(
            at(new Disc(0.0125, 0.005, 0.385), 0.04, 0, Pole.SOUTH),
            at(new Disc(0.003, 0.02, 1.2), -0.02, 0.03, Pole.NORTH),
            at(new Ring(0.004, 0.01, 0.006, 0.9), -0.03, -0.03, Pole.NORTH),
            at(new Sphere(0.007, 1.3), 0.01, 0.05, Pole.SOUTH),
            at(new Block(0.02, 0.012, 0.006, 0.4), 0.05, -0.05, Pole.NORTH),
            at(new Dipole(0.5), -0.06, 0.01, Pole.SOUTH)),
        Optional.of(new SteelBacking(0)));
  }

  private static double[] field(
      MagnetArray array, LaneProvider provider, double[] x, double[] y, double[] z) {
    double[] b = new double[3 * x.length];
    new LaneField(new FieldSources(array), provider).at(x, y, z, x.length, b);
    return b;
  }

  private static double[][] places(Random random, int count, double half, double spread) {
    double x0 = (2 * random.nextDouble() - 1) * half;
    double y0 = (2 * random.nextDouble() - 1) * half;
    double z0 = 0.002 + random.nextDouble() * 0.05;
    double[][] places = new double[3][count];
    for (int i = 0; i < count; i++) {
      places[0][i] = x0 + spread * (random.nextDouble() - 0.5);
      places[1][i] = y0 + spread * (random.nextDouble() - 0.5);
      places[2][i] = z0 + spread * random.nextDouble();
    }
    return places;
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.002, 0.02, 0.2})
  void lanesAgreeWithTheScalarClosedForms(double spread) {
    MagnetArray array = mixed();
    Random random = new Random(7);
    double[] expected = new double[3];
    double[] single = new double[3];
    FieldSources alone = new FieldSources(array);
    for (int block = 0; block < 200; block++) {
      double[][] p = places(random, 64, 0.1, spread);
      double[] b = field(array, SCALAR, p[0], p[1], p[2]);
      for (int i = 0; i < 64; i++) {
        array.field(p[0][i], p[1][i], p[2][i], expected);
        double size =
            Math.sqrt(
                expected[0] * expected[0] + expected[1] * expected[1] + expected[2] * expected[2]);
        alone.field(p[0][i], p[1][i], p[2][i], single);
        for (int k = 0; k < 3; k++) {
          assertEquals(expected[k], b[3 * i + k], 1e-12 * size + 1e-14, "block " + block);
          assertEquals(expected[k], single[k], 1e-12 * size + 1e-14, "block " + block);
        }
      }
    }
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4, 13, 25, 63, 64, 65, 207})
  void vectorsGiveTheSameBits(int count) {
    MagnetArray array = mixed();
    Random random = new Random(count);
    for (int block = 0; block < 60; block++) {
      double[][] p = places(random, count, 0.1, block % 3 == 0 ? 0.2 : 0.006);
      double[] one = field(array, SCALAR, p[0], p[1], p[2]);
      double[] many = field(array, BEST, p[0], p[1], p[2]);
      for (int i = 0; i < one.length; i++) {
        assertEquals(Double.doubleToRawLongBits(one[i]), Double.doubleToRawLongBits(many[i]));
      }
    }
  }

  /** J. M. D. Coey, Magnetism and Magnetic Materials (2010), section 2.2, as a solenoid's axis. */
  @Test
  void discsAxisFollowsTheSolenoidNearAndFar() {
    double br = 1.195;
    Disc disc = new Disc(0.0125, 0.005, br);
    MagnetArray array =
        new MagnetArray(
            List.of(new PlacedMagnet(disc, new Vec3(0, 0, 0), 0, Pole.NORTH)), Optional.empty());
    double[] z = {0, 0.001, 0.0024, 0.004, 0.01, 0.03, 0.0318, 0.0319, 0.06, 0.2, 1};
    double[] zero = new double[z.length];
    double[] b = field(array, SCALAR, zero, zero, z);
    for (int i = 0; i < z.length; i++) {
      double[] alone = field(array, SCALAR, new double[1], new double[1], new double[] {z[i]});
      double far = z[i] + 0.0025;
      double near = z[i] - 0.0025;
      double expected = br / 2 * (far / Math.hypot(0.0125, far) - near / Math.hypot(0.0125, near));
      assertEquals(expected, b[3 * i + 2], 1e-12 * expected + 3e-16);
      assertEquals(expected, alone[2], 1e-12 * expected + 3e-16);
      assertEquals(0, b[3 * i]);
    }
  }

  /** A disc is the sum of the dipoles that fill it; Gauss's product rule over its volume. */
  @Test
  void discIsTheSumOfItsDipoles() {
    double radius = 0.006;
    double half = 0.002;
    double br = 1.2;
    MagnetArray array =
        new MagnetArray(
            List.of(
                new PlacedMagnet(new Disc(radius, 2 * half, br), new Vec3(0, 0, 0), 0, Pole.NORTH)),
            Optional.empty());
    double[][] places = {{0.009, 0.004, 0.006}, {0.012, -0.008, -0.007}, {0.03, 0.01, 0.02}};
    for (double[] p : places) {
      double[] sum = new double[3];
      int rings = 60;
      int turns = 90;
      int layers = 40;
      double volume = Math.PI * radius * radius * 2 * half / (rings * turns * layers);
      for (int i = 0; i < rings; i++) {
        // Rings of one area each, by the radius that halves it.
        double rho = radius * Math.sqrt((i + 0.5) / rings);
        for (int j = 0; j < turns; j++) {
          double angle = 2 * Math.PI * (j + 0.5) / turns;
          for (int k = 0; k < layers; k++) {
            double dx = p[0] - rho * Math.cos(angle);
            double dy = p[1] - rho * Math.sin(angle);
            double dz = p[2] - half * ((2 * k + 1.0) / layers - 1);
            double r2 = dx * dx + dy * dy + dz * dz;
            double w = br * volume / (4 * Math.PI) / (r2 * Math.sqrt(r2));
            sum[0] += 3 * dz * dx / r2 * w;
            sum[1] += 3 * dz * dy / r2 * w;
            sum[2] += (3 * dz * dz / r2 - 1) * w;
          }
        }
      }
      double[] b =
          field(array, SCALAR, new double[] {p[0]}, new double[] {p[1]}, new double[] {p[2]});
      double size = Math.sqrt(b[0] * b[0] + b[1] * b[1] + b[2] * b[2]);
      for (int k = 0; k < 3; k++) {
        assertEquals(sum[k], b[k], 1e-3 * size);
      }
    }
  }

  @Test
  void rimWallAxisAndCentreAreFinite() {
    Disc disc = new Disc(0.0125, 0.005, 1.2);
    MagnetArray array =
        new MagnetArray(
            List.of(new PlacedMagnet(disc, new Vec3(0, 0, 0), 0, Pole.SOUTH)), Optional.empty());
    double[] x = {0, 0.0125, 0.0125, 0, 0.0125 + 1e-15, 0.0125};
    double[] z = {0, 0.0025, 0, 0.0025, 0.0025, 0.0025 + 1e-18};
    double[] b = field(array, BEST, x, new double[6], z);
    double[] expected = new double[3];
    for (int i = 0; i < x.length; i++) {
      disc.field(x[i], 0, z[i], expected);
      for (int k = 0; k < 3; k++) {
        assertTrue(Double.isFinite(b[3 * i + k]));
        assertEquals(-expected[k], b[3 * i + k], 1e-10 * Math.max(1, Math.abs(expected[k])));
      }
    }
  }
}
