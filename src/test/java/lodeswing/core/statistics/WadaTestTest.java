package lodeswing.core.statistics;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lodeswing.core.statistics.WadaTest.Verdict;
import org.junit.jupiter.api.Test;

class WadaTestTest {

  /**
   * Every point of a Julia set is on the boundary of every attractor's basin (Julia, Fatou 1918).
   */
  @Test
  void newtonsThreeBasinsAreWadaAtEveryResolution() {
    for (int side : new int[] {128, 200, 256, 512}) {
      WadaTest test = WadaTest.of(KnownBasins.NEWTON.grid(-1, 1, side));

      assertEquals(Verdict.WADA, test.verdict());
      assertTrue(test.farthest() <= 4);
      assertEquals(1, test.share().orElseThrow().value(), 0.001);
    }
  }

  /** Every point of the Cantor set has gaps of all levels, so of all three labels, near it. */
  @Test
  void cantorStripsOfThreeLabelsAreWada() {
    for (int side : new int[] {256, 512}) {
      assertEquals(
          Verdict.WADA, WadaTest.of(KnownBasins.CANTOR_STRIPS_OF_THREE.grid(0, 1, side)).verdict());
    }
  }

  /**
   * x'' + 0.2 x' + sin x = 1.66 cos t has three basins and is Wada: J. Kennedy and J. A. Yorke,
   * Physica D 51 (1991) 213; A. Wagemakers, A. Daza and M. A. F. Sanjuan, Discrete Contin. Dyn.
   * Syst. B, doi 10.3934/dcdsb.2020330, figure 2.
   */
  @Test
  void forcedPendulumWithThreeBasinsIsWada() {
    DrivenPendulum pendulum = new DrivenPendulum(0.2, 1.66);
    LabelGrid grid = pendulum.grid(new double[] {-Math.PI, Math.PI}, new double[] {-2, 4}, 112);

    WadaTest test = WadaTest.of(grid);

    assertEquals(3, pendulum.orbits());
    assertEquals(Verdict.WADA, test.verdict());
    assertEquals(BasinEntropy.Fractality.FRACTAL, BasinEntropy.of(grid).lnTwoCriterion());
  }

  /** With 1.71 cos t there are four basins, partly Wada: the same review, figure 2. */
  @Test
  void forcedPendulumWithFourBasinsIsPartlyWada() {
    DrivenPendulum pendulum = new DrivenPendulum(0.2, 1.71);
    LabelGrid grid = pendulum.grid(new double[] {-3.2, 0}, new double[] {-1, 1}, 112);

    assertEquals(4, pendulum.orbits());
    assertEquals(Verdict.PARTLY_WADA, WadaTest.of(grid).verdict());
  }

  @Test
  void sectorsThatMeetInOnePointAreNotWada() {
    for (int side : new int[] {128, 256, 512}) {
      WadaTest test = WadaTest.of(KnownBasins.SECTORS.grid(-1, 1, side));

      assertEquals(Verdict.NOT_WADA, test.verdict());
      assertTrue(test.share().orElseThrow().value() < 0.2);
    }
  }

  @Test
  void smoothPieceBesideAWadaPieceIsFound() {
    Plane mixed =
        (x, y) -> {
          if (x < 0) {
            return KnownBasins.NEWTON.at(x, y);
          }
          return y > 0 ? 0 : 2;
        };

    assertEquals(Verdict.PARTLY_WADA, WadaTest.of(mixed.grid(-1, 1, 256)).verdict());
  }

  @Test
  void twoLabelsAreTooFewAndRareOnesAreSetAside() {
    Plane speck = (x, y) -> Math.hypot(x + 0.5, y) < 0.02 ? 9 : KnownBasins.CIRCLE.at(x, y);

    WadaTest test = WadaTest.of(speck.grid(-1, 1, 256));

    assertEquals(Verdict.TOO_FEW_LABELS, test.verdict());
    assertArrayEquals(new int[] {0, 1}, test.labels());
    assertTrue(test.share().isEmpty());
  }
}
