package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.Vec3;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.special.BesselJ;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pull on an equal and on steel, at contact and beyond, against published formulas. */
class EqualPullTest {

  private static final double MU_0 = MagneticConstant.MU_0;

  /** Integral of J1(q)^2/q exp(-x q) from 0 on; 1/2 for x = 0 (DLMF 10.22.57, mu = 1, nu = 1). */
  private static double bessel(double x) {
    if (x == 0) {
      return 0.5;
    }
    BesselJ one = new BesselJ(1);
    UnivariateFunction integrand =
        q -> {
          double j = one.value(q);
          return j * j / q * Math.exp(-x * q);
        };
    return new IterativeLegendreGaussIntegrator(24, 1e-11, 1e-14, 3, 64)
        .integrate(4_000_000, integrand, 1e-12, 34 / x);
  }

  /**
   * D. Vokoun, M. Beleggia, L. Heller and P. Sittner, J. Magn. Magn. Mater. 321 (2009) 3758, eq.
   * for two equal cylinders at any distance, its sinh^2 written out as three exponentials so that
   * it holds at contact: F = pi Br^2 R^2/mu0 (C(g) - 2 C(g + h) + C(g + 2h)), C the integral above
   * of its argument over R.
   */
  @ParameterizedTest
  @CsvSource({
    "0.0075, 0.005, 0",
    "0.0075, 0.005, 0.002",
    "0.0075, 0.005, 0.02",
    "0.005, 0.02, 0",
    "0.01, 0.001, 0",
    "0.01, 0.001, 0.003"
  })
  void discsPullByTheHankelIntegralFromContactOn(double radius, double height, double gap) {
    double br = 1.3;
    double sum =
        bessel(gap / radius)
            - 2 * bessel((gap + height) / radius)
            + bessel((gap + 2 * height) / radius);
    double expected = Math.PI * br * br * radius * radius / MU_0 * sum;
    double pull = new EqualPull(new Disc(radius, height, br)).at(gap);
    assertEquals(expected, pull, 1e-7 * expected);
  }

  /**
   * The limit that handbooks print, F = B^2 A/(2 mu0) with B = Br within the joint of a long rod
   * and its image (J. M. D. Coey, Magnetism and Magnetic Materials (2010), section 13.1). A rod of
   * 500 radii is 4e-6 below it, since its far pole acts too.
   */
  @Test
  void aLongRodHoldsBySquareOfRemanence() {
    double limit = Math.PI * 1e-6 * 1.2 * 1.2 / (2 * MU_0);
    double pull = new EqualPull(new Disc(0.001, 0.5, 1.2)).onSteel(0);
    assertTrue(pull < limit);
    assertEquals(limit, pull, 1e-5 * limit);
    double square = new EqualPull(new Block(0.002, 0.002, 0.5, 1.2)).onSteel(0);
    assertEquals(4e-6 * 1.2 * 1.2 / (2 * MU_0), square, 1e-5 * limit);
  }

  /** Robertson and others (2011), as in {@link AxialPullTest}: two equal discs. */
  @Test
  void equalDiscsPullAsPublished() {
    assertEquals(265.537, new EqualPull(new Disc(0.02, 0.04, 1.3)).at(0.01), 0.00051);
  }

  /** The pendulum's own energy is another way: Gauss's rule on whole faces. */
  @ParameterizedTest
  @ValueSource(doubles = {0.003, 0.01, 0.05, 0.3})
  void allFormsPullAsTheEnergySays(double gap) {
    for (Magnet magnet :
        List.of(
            new Disc(0.0075, 0.005, 1.2),
            new Ring(0.003, 0.0075, 0.005, 1.2),
            new Block(0.01, 0.005, 0.0015, 1.24),
            new Sphere(0.005, 1.1))) {
      double expected = new AxialPull(magnet, magnet).at(gap);
      assertEquals(expected, new EqualPull(magnet).at(gap), 1e-8 * expected, magnet.toString());
    }
  }

  /** The bob over bare steel, by its image: the same force as on a fixed equal at twice the gap. */
  @Test
  void steelPullsAsTheImageDoes() {
    Disc disc = new Disc(0.0075, 0.005, 1.2);
    MagnetArray bare = new MagnetArray(List.of(), Optional.of(new SteelBacking(0)));
    BobEnergy energy = BobEnergy.exact(disc, Pole.SOUTH, bare);
    double[] pose = {0, 0, 0.0025 + 0.004, 1, 0, 0, 0, -1, 0, 0, 0, -1};
    double[] work = new double[BobEnergy.WORK_LENGTH];
    energy.energyAndLoad(pose, work);
    assertEquals(-work[2], new EqualPull(disc).onSteel(0.004), 1e-8 * -work[2]);
    PlacedMagnet placed = new PlacedMagnet(disc, new Vec3(0, 0, 0.0065), 0, Pole.NORTH);
    double[] b = new double[3];
    new MagnetArray(List.of(placed), Optional.of(new SteelBacking(0))).field(0, 0, 0, b);
    double[] alone = new double[3];
    disc.field(0, 0, -0.0065, alone);
    assertEquals(2 * alone[2], b[2], 1e-12, "the image doubles the field on the steel");
  }

  @Test
  void nothingIsNearerThanContact() {
    EqualPull pull = new EqualPull(new Disc(0.005, 0.005, 1));
    assertThrows(IllegalArgumentException.class, () -> pull.at(-1e-6));
    assertThrows(IllegalArgumentException.class, () -> pull.at(Double.NaN));
  }
}
