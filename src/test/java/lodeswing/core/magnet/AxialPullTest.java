package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;

import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.integration.IterativeLegendreGaussIntegrator;
import org.apache.commons.math3.special.BesselJ;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Force between two coaxial discs against published formulas and figures. */
class AxialPullTest {

  /**
   * Figures published with W. Robertson, B. Cazzolato and A. Zander, A simplified force equation
   * for coaxial cylindrical magnets and thin coils, IEEE Trans. Magn. 47 (2011) 2045, by its
   * authors (remanence 1.3 T, 50 mm between centres, to 1 mN; they take mu0 as 4 pi 1e-7, 1e-10 off
   * ours).
   */
  @ParameterizedTest
  @CsvSource({
    "0.020, 0.040, 0.020, 0.040, 265.537",
    "0.020, 0.040, 0.015, 0.030, 111.490",
    "0.020, 0.020, 0.020, 0.010, 18.953"
  })
  void coaxialDiscsPullAsPublished(double r1, double h1, double r2, double h2, double newton) {
    AxialPull pull = new AxialPull(new Disc(r1, h1, 1.3), new Disc(r2, h2, 1.3));
    assertEquals(newton, pull.at(0.05 - (h1 + h2) / 2), 0.00051);
  }

  /**
   * D. Vokoun, M. Beleggia, L. Heller and P. Sittner, J. Magn. Magn. Mater. 321 (2009) 3758, for
   * two equal cylinders: F = 4 pi mu0 M^2 R^2 integral of J1(q)^2/q sinh(q tau)^2 exp(-q zeta) dq
   * with tau = thickness/(2R), zeta = distance of the centres/R (rederived here from Hankel
   * transforms of the charged faces; the paper's constant is mu0 M^2/2 times 8 pi R^2).
   */
  @ParameterizedTest
  @ValueSource(doubles = {0.002, 0.005, 0.02})
  void equalDiscsPullByTheHankelIntegral(double gap) {
    double r = 0.0075;
    double h = 0.005;
    double br = 1.195;
    double tau = h / (2 * r);
    double zeta = (h + gap) / r;
    BesselJ bessel = new BesselJ(1);
    UnivariateFunction integrand =
        q -> {
          double j = bessel.value(q);
          double sinh2 = (1 - Math.exp(-2 * q * tau)) / 2;
          return j * j / q * sinh2 * sinh2 * Math.exp(2 * q * tau - q * zeta);
        };
    double end = 32 / (zeta - 2 * tau);
    double integral =
        new IterativeLegendreGaussIntegrator(24, 1e-9, 1e-13, 3, 64)
            .integrate(4_000_000, integrand, 1e-12, end);
    double expected = 4 * Math.PI * br * br / MagneticConstant.MU_0 * r * r * integral;
    AxialPull pull = new AxialPull(new Disc(r, h, br), new Disc(r, h, br));
    assertEquals(expected, pull.at(gap), 1e-7 * expected);
  }

  /** Jackson (1999), section 5.7: two dipoles in line, F = 3 mu0 m1 m2/(2 pi r^4). */
  @Test
  void dipolesInLinePullByTheInverseFourthPower() {
    AxialPull pull = new AxialPull(new Dipole(0.7), new Dipole(0.4));
    double expected = 3 * MagneticConstant.MU_0 * 0.7 * 0.4 / (2 * Math.PI * Math.pow(0.03, 4));
    assertEquals(expected, pull.at(0.03), 1e-9 * expected);
  }
}
