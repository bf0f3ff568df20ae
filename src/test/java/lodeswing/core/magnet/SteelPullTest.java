package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.special.BesselJ;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Pull of magnets on thick steel against published formulas and figures. */
class SteelPullTest {

  /**
   * D. Vokoun, M. Beleggia, L. Heller and P. Sittner, J. Magn. Magn. Mater. 321 (2009) 3758, for
   * two equal cylinders: the magnet and its image, twice the gap apart.
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.0001, 0.0005, 0.002, 0.01})
  void discPullsItsImageByTheHankelIntegral(double gap) {
    double r = 0.0075;
    double h = 0.005;
    double br = 1.195;
    double tau = h / (2 * r);
    double zeta = (h + 2 * gap) / r;
    BesselJ bessel = new BesselJ(1);
    UnivariateFunction integrand =
        q -> {
          double j = bessel.value(q);
          double sinh2 = (1 - Math.exp(-2 * q * tau)) / 2;
          return j * j / q * sinh2 * sinh2 * Math.exp(2 * q * tau - q * zeta);
        };
    double integral =
        new IterativeLegendreGaussIntegrator(24, 1e-8, 1e-12, 3, 64)
            .integrate(4_000_000, integrand, 1e-12, 24 / (zeta - 2 * tau));
    double expected = 4 * Math.PI * br * br / MagneticConstant.MU_0 * r * r * integral;
    assertEquals(expected, new SteelPull(new Disc(r, h, br)).at(gap), 1e-4 * expected);
  }

  /**
   * Finite elements on thick steel of permeability 1000, published as sample problems of a program
   * (quickfield.com, Attraction of the cylindrical magnet to the steel plate, of the disc magnet,
   * of the ring magnet), beside makers' tables with 510 N, 2.5 N and 556 N. They take 1.05 for the
   * magnet's own permeability and real steel, which lets a few per cent less through.
   */
  @ParameterizedTest
  @CsvSource({
    "0, 0.0254, 0.01651, 1.26, 0.000127, 542",
    "0, 0.00238125, 0.00079375, 1.28, 0.0000254, 2.56",
    "0.00635, 0.0254, 0.01905, 1.26, 0.000127, 608"
  })
  void discsAndRingsPullSteelAsPublished(
      double inner, double outer, double height, double br, double gap, double newton) {
    Magnet magnet = inner > 0 ? new Ring(inner, outer, height, br) : new Disc(outer, height, br);
    double pull = new SteelPull(magnet).at(gap);
    assertEquals(newton, pull, 0.1 * newton);
    assertTrue(pull > newton, "without its own permeability a magnet pulls a little more");
  }

  /** Maxwell's pull Br^2 A/(2 mu0) of a face in a field Br: that of a long rod at contact. */
  @Test
  void longRodPullsByMaxwellsStress() {
    double r = 0.005;
    double br = 1.2;
    double expected = br * br * Math.PI * r * r / (2 * MagneticConstant.MU_0);
    double pull = new SteelPull(new Disc(r, 0.2, br)).at(1e-5);
    assertTrue(pull < expected, "the field fringes at the edge");
    assertEquals(expected, pull, 0.025 * expected);
  }

  /** Jackson (1999), section 5.7 with an image: F = 3 mu0 m^2/(2 pi (2 d)^4). */
  @Test
  void dipolePullsByTheInverseFourthPower() {
    double expected = 3 * MagneticConstant.MU_0 * 0.49 / (2 * Math.PI * Math.pow(0.04, 4));
    assertEquals(expected, new SteelPull(new Dipole(0.7)).at(0.02), 1e-9 * expected);
  }
}
