package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lodeswing.core.geometry.Vec3;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * A bob over bare steel: its own image alone, against the sum over pairs of small dipoles.
 *
 * <p>The image of a moment (mx, my, mz) over a plane of infinite permeability is (-mx, -my, mz) at
 * the mirrored place, and the energy is half that of two real bodies (J. D. Jackson, Classical
 * Electrodynamics, 3rd ed. (1999), problem 5.17 and section 2.1; their numbers from memory). Two
 * dipoles have the energy mu0/(4 pi r^3) (m1.m2 - 3 (m1.n)(m2.n)).
 */
class ImageTorqueTest {

  private static final double STEEL = -0.001;
  private static final Disc DISC = new Disc(0.0075, 0.005, 1.195);
  private static final Ring RING = new Ring(0.003, 0.008, 0.004, 1.1);
  private static final Block BLOCK = new Block(0.018, 0.01, 0.005, 1.2);

  private final double[] work = new double[BobEnergy.WORK_LENGTH];

  private static BobEnergy overSteel(Magnet bob, Pole poleDown) {
    return BobEnergy.of(
        bob, poleDown, new MagnetArray(List.of(), Optional.of(new SteelBacking(STEEL))));
  }

  static Stream<Arguments> bobs() {
    return Stream.of(DISC, RING, BLOCK)
        .flatMap(bob -> Stream.of(Arguments.of(bob, 1), Arguments.of(bob, -1)));
  }

  @ParameterizedTest
  @MethodSource("bobs")
  void energyAndTorqueAreThoseOfPairsOfDipoles(Magnet bob, int hand) {
    double[] pose = pose(0.02, 0.5, -0.3, hand);
    List<double[]> grains = grains(bob);
    BobEnergy energy = overSteel(bob, Pole.NORTH);
    double value = energy.energyAndLoad(pose, work);
    double[] load = work.clone();
    double pairs = pairs(grains, pose);
    assertEquals(pairs, value, 1e-7 * Math.abs(pairs));
    assertEquals(slope(grains, pose, 2, false), -load[2], 1e-6 * Math.abs(load[2]));
    double scale = Math.hypot(load[3], load[4]);
    assertTrue(scale > 0.01 * Math.abs(value));
    for (int axis = 0; axis < 3; axis++) {
      assertEquals(slope(grains, pose, axis, true), -load[3 + axis], 1e-6 * scale);
    }
    assertEquals(0, load[0], 1e-9 * Math.abs(load[2]));
    assertEquals(0, load[1], 1e-9 * Math.abs(load[2]));
  }

  /** The image of an upright bob is a magnet like it as deep below the steel, unlike pole up. */
  @Test
  void energyIsHalfOfThatWithARealMagnetInTheImagesPlace() {
    double height = 0.017;
    double[] pose = pose(height, 0, 0, 1);
    PlacedMagnet image =
        new PlacedMagnet(DISC, new Vec3(0.01, -0.004, 2 * STEEL - height), 0, Pole.SOUTH);
    BobEnergy real =
        BobEnergy.of(DISC, Pole.NORTH, new MagnetArray(List.of(image), Optional.empty()));
    double whole = real.energyAndLoad(pose, work);
    double pull = work[2];
    double half = overSteel(DISC, Pole.NORTH).energyAndLoad(pose, work);
    assertTrue(whole < 0);
    assertEquals(0.5 * whole, half, 1e-9 * Math.abs(half));
    assertEquals(pull, work[2], 1e-8 * Math.abs(pull));
  }

  @Test
  void steelPullsEitherPoleAlike() {
    double[] pose = pose(0.02, 0.4, 0.2, 1);
    double north = overSteel(BLOCK, Pole.NORTH).energyAndLoad(pose, work);
    double[] load = work.clone();
    assertEquals(north, overSteel(BLOCK, Pole.SOUTH).energyAndLoad(pose, work), 1e-12 * -north);
    for (int i = 0; i < 6; i++) {
      assertEquals(load[i], work[i], 1e-9 * Math.abs(load[2]));
    }
  }

  /** A bob turned about both axes; hand -1 mirrors its y axis, which no magnet here shows. */
  private static double[] pose(double z, double alpha, double beta, int hand) {
    double sa = Math.sin(alpha);
    double ca = Math.cos(alpha);
    double sb = Math.sin(beta);
    double cb = Math.cos(beta);
    return new double[] {
      0.01, -0.004, z, cb, -sb * sa, sb * ca, 0, hand * ca, hand * sa, sb, cb * sa, -cb * ca,
    };
  }

  /** Grains {u, v, s, moment} along the bob's own axes. */
  private static List<double[]> grains(Magnet bob) {
    List<double[]> grains = new ArrayList<>();
    double[][] along = rule(6, -bob.halfHeight(), bob.halfHeight());
    if (bob instanceof Block block) {
      double[][] length = rule(10, -block.length() / 2, block.length() / 2);
      double[][] width = rule(8, -block.width() / 2, block.width() / 2);
      for (double[] u : length) {
        for (double[] v : width) {
          for (double[] s : along) {
            grains.add(grain(u[0], v[0], s[0], u[1] * v[1] * s[1] * block.remanence()));
          }
        }
      }
      return grains;
    }
    double inner = bob instanceof Ring ring ? ring.innerRadius() : 0;
    double remanence = bob instanceof Ring ring ? ring.remanence() : ((Disc) bob).remanence();
    for (double[] square : rule(6, inner * inner, bob.planRadius() * bob.planRadius())) {
      for (int k = 0; k < 18; k++) {
        double angle = 2 * Math.PI * k / 18;
        for (double[] s : along) {
          double r = Math.sqrt(square[0]);
          double volume = square[1] * s[1] * Math.PI / 18;
          grains.add(grain(r * Math.cos(angle), r * Math.sin(angle), s[0], volume * remanence));
        }
      }
    }
    return grains;
  }

  private static double[] grain(double u, double v, double s, double volumeTimesRemanence) {
    return new double[] {u, v, s, volumeTimesRemanence / MagneticConstant.MU_0};
  }

  private static double[][] rule(int points, double from, double to) {
    GaussIntegrator gauss = new GaussIntegratorFactory().legendre(points, from, to);
    double[][] rule = new double[points][];
    for (int i = 0; i < points; i++) {
      rule[i] = new double[] {gauss.getPoint(i), gauss.getWeight(i)};
    }
    return rule;
  }

  /** Half the energy of all pairs of a grain and an image of a grain. */
  private static double pairs(List<double[]> grains, double[] p) {
    int n = grains.size();
    double[][] at = new double[n][3];
    for (int i = 0; i < n; i++) {
      double[] g = grains.get(i);
      for (int k = 0; k < 3; k++) {
        at[i][k] = p[k] + g[0] * p[3 + k] + g[1] * p[6 + k] + g[2] * p[9 + k];
      }
    }
    double moments = -p[9] * p[9] - p[10] * p[10] + p[11] * p[11];
    double sum = 0;
    for (int i = 0; i < n; i++) {
      for (int j = 0; j < n; j++) {
        double x = at[i][0] - at[j][0];
        double y = at[i][1] - at[j][1];
        double z = at[i][2] + at[j][2] - 2 * STEEL;
        double r2 = x * x + y * y + z * z;
        double own = p[9] * x + p[10] * y + p[11] * z;
        double image = -p[9] * x - p[10] * y + p[11] * z;
        double both = grains.get(i)[3] * grains.get(j)[3];
        sum += both * (moments - 3 * own * image / r2) / (r2 * Math.sqrt(r2));
      }
    }
    return 0.5 * MagneticConstant.MU_0 / (4 * Math.PI) * sum;
  }

  /** Slope of the pairs' energy by a shift along an axis or a turn about it, to sixth order. */
  private static double slope(List<double[]> grains, double[] pose, int axis, boolean turn) {
    double[] weights = {3.0 / 4, -3.0 / 20, 1.0 / 60};
    double h = turn ? 1e-2 : 1e-4;
    double sum = 0;
    for (int k = 1; k <= 3; k++) {
      for (int sign = -1; sign <= 1; sign += 2) {
        double[] moved = turn ? turned(pose, axis, sign * k * h) : pose.clone();
        moved[axis] += turn ? 0 : sign * k * h;
        sum += sign * weights[k - 1] * pairs(grains, moved) / h;
      }
    }
    return sum;
  }

  private static double[] turned(double[] pose, int axis, double angle) {
    double[] out = pose.clone();
    int i = (axis + 1) % 3;
    int j = (axis + 2) % 3;
    for (int v = 3; v < 12; v += 3) {
      out[v + i] = Math.cos(angle) * pose[v + i] - Math.sin(angle) * pose[v + j];
      out[v + j] = Math.sin(angle) * pose[v + i] + Math.cos(angle) * pose[v + j];
    }
    return out;
  }
}
