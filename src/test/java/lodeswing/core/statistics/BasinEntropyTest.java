package lodeswing.core.statistics;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.SplittableRandom;
import lodeswing.core.statistics.BasinEntropy.Fractality;
import org.junit.jupiter.api.Test;

class BasinEntropyTest {

  /**
   * A box of five columns cut by one line after k of them has the entropy of shares k/5, 1 - k/5.
   */
  @Test
  void boxesCutByALineHaveTheEntropyOfTheirShares() {
    int side = 100;
    int[] labels = new int[side * side];
    for (int n = 0; n < labels.length; n++) {
      labels[n] = n % side < 42 ? 0 : 1;
    }
    BasinEntropy entropy = BasinEntropy.of(LabelGrid.of(side, labels));

    double cut = -0.4 * Math.log(0.4) - 0.6 * Math.log(0.6);
    assertEquals(400, entropy.boxes());
    assertEquals(20, entropy.boundaryBoxes());
    assertEquals(cut, entropy.boundary().orElseThrow().value(), 1e-12);
    assertEquals(cut / 20, entropy.overall().value(), 1e-12);
  }

  /**
   * Labels at random among m: ln m less (m - 1) / (2 x 25) for the 25 nodes of a box, to first
   * order (G. A. Miller 1955, from memory); ln m is the paper's upper bound.
   */
  @Test
  void randomLabelsHaveNearlyTheLargestEntropy() {
    SplittableRandom random = new SplittableRandom(5);
    Plane noise = (x, y) -> random.nextInt(3);

    BasinEntropy entropy = BasinEntropy.of(noise.grid(0, 1, 300));

    assertEquals(Math.log(3) - 2.0 / 50, entropy.overall().value(), 0.003);
    assertEquals(Fractality.FRACTAL, entropy.lnTwoCriterion());
  }

  /**
   * The map of Grebogi, McDonald, Ott and Yorke (1983) on 300 x 300 nodes, ends included, boxes of
   * 6: 0.40 to 0.42 and 0.60 to 0.61 in the tests of the library Attractors.jl, by other code.
   */
  @Test
  void entropiesAgreeWithAnotherLibrary() {
    double halfTurn = Math.PI / 299;
    double halfStep = 0.5 / 299;
    LabelGrid grid =
        KnownBasins.TWO_FIXED_POINTS.grid(
            new double[] {-halfTurn, 2 * Math.PI + halfTurn},
            new double[] {-0.5 - halfStep, 0.5 + halfStep},
            300);

    BasinEntropy entropy = BasinEntropy.of(grid, 6);

    assertEquals(0.41, entropy.overall().value(), 0.01);
    assertEquals(0.605, entropy.boundary().orElseThrow().value(), 0.005);
  }

  /** S_b goes as (size of box)^alpha, Daza et al. 2016; alpha = 2 - 1.42 for Newton's method. */
  @Test
  void entropyFallsWithTheBoxByTheUncertaintyExponent() {
    double coarse = BasinEntropy.of(KnownBasins.NEWTON.grid(-1, 1, 256)).overall().value();
    double fine = BasinEntropy.of(KnownBasins.NEWTON.grid(-1, 1, 1024)).overall().value();

    assertEquals(0.58, Math.log(coarse / fine) / Math.log(4), 0.03);
  }

  /** Above ln 2 for Newton's three basins; smooth boundaries never prove themselves fractal. */
  @Test
  void lnTwoCriterionProvesNewtonsBoundaryAloneFractal() {
    assertEquals(
        Fractality.FRACTAL, BasinEntropy.of(KnownBasins.NEWTON.grid(-1, 1, 512)).lnTwoCriterion());
    assertEquals(
        Fractality.UNDECIDED,
        BasinEntropy.of(KnownBasins.SECTORS.grid(-1, 1, 512)).lnTwoCriterion());
    assertEquals(
        Fractality.UNDECIDED,
        BasinEntropy.of(KnownBasins.henon(1.4, -0.3).grid(-2, 2, 300)).lnTwoCriterion());
  }

  @Test
  void oneLabelHasNoEntropyAndNoBoundary() {
    BasinEntropy entropy = BasinEntropy.of(LabelGrid.of(50, new int[2500]));

    assertEquals(0, entropy.overall().value());
    assertTrue(entropy.boundary().isEmpty());
  }
}
