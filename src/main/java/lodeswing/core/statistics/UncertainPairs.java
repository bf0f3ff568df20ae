package lodeswing.core.statistics;

import java.util.Optional;

/**
 * The fraction f(e) of places of a grid that are uncertain at distance e, and its exponent.
 *
 * <p>A place is e-uncertain if the place itself and those at distance e on either side, along an
 * axis of the grid, do not all bear one label; f is the mean of both axes, over one set of places,
 * the same for all e, whose partners stay on the grid even at the largest. f ~ e^alpha, and the
 * boundary has the dimension d = 2 - alpha. Each node is a point, so f has no error of resolution
 * down to one spacing. The fit runs from there to where f reaches 0.7 of what labels drawn at
 * random with the same shares would give (1 - sum p^3), or to a sixteenth of the grid.
 *
 * <p>Sources: C. Grebogi, S. W. McDonald, E. Ott and J. A. Yorke, Phys. Lett. A 99 (1983) 415; S.
 * W. McDonald, C. Grebogi, E. Ott and J. A. Yorke, Physica D 17 (1985) 125.
 */
public final class UncertainPairs {

  /** Above this part of what labels drawn at random would give, a fraction tells nothing. */
  static final double SATURATION = 0.7;

  private final FractionCurve curve;
  private final double atRandom;

  private UncertainPairs(FractionCurve curve, double atRandom) {
    this.curve = curve;
    this.atRandom = atRandom;
  }

  /** The fractions at 1, 2, 3, 4, 6, 8, 12, ... spacings up to a sixteenth of the side. */
  public static UncertainPairs of(LabelGrid grid) {
    FractionCurve curve =
        new FractionCurve(GridScales.upToSixteenthOf(grid.side()), GridBlocks.COUNT);
    GridBlocks blocks = new GridBlocks(grid.side());
    for (int k = 0; k < curve.size(); k++) {
      tally(grid, curve, blocks, k);
    }
    return new UncertainPairs(curve, atRandom(grid));
  }

  private static void tally(LabelGrid grid, FractionCurve curve, GridBlocks blocks, int k) {
    int side = grid.side();
    int reach = (int) curve.scale(k);
    int margin = (int) curve.scale(curve.size() - 1);
    for (int row = 0; row < side; row++) {
      for (int column = 0; column < side; column++) {
        int node = row * side + column;
        int block = blocks.of(row, column);
        if (column >= margin && column < side - margin) {
          judge(grid, curve, k, block, node, reach);
        }
        if (row >= margin && row < side - margin) {
          judge(grid, curve, k, block, node, reach * side);
        }
      }
    }
  }

  private static void judge(
      LabelGrid grid, FractionCurve curve, int k, int block, int node, int step) {
    int here = grid.index(node);
    int before = grid.index(node - step);
    int after = grid.index(node + step);
    if (here != LabelGrid.NONE && before != LabelGrid.NONE && after != LabelGrid.NONE) {
      curve.add(k, block, here != before || here != after);
    }
  }

  private static double atRandom(LabelGrid grid) {
    double same = 0;
    for (int label : grid.labels()) {
      double share = (double) grid.count(label) / grid.labelled();
      same += share * share * share;
    }
    return 1 - same;
  }

  /** How many distances were tried. */
  public int scales() {
    return curve.size();
  }

  /** A distance [spacings]. */
  public double scale(int k) {
    return curve.scale(k);
  }

  /** Fraction of places that are uncertain at a distance. */
  public double fraction(int k) {
    return curve.fraction(k);
  }

  /**
   * The uncertainty exponent over the range of distances stated above.
   *
   * @return empty where there is no boundary, or it fills the grid so that three distances do not
   *     fit below saturation
   */
  public Optional<ScalingLaw> exponent() {
    int to = -1;
    while (to + 1 < scales() && fraction(to + 1) <= SATURATION * atRandom) {
      to++;
    }
    return exponent(0, to);
  }

  /** The exponent over chosen distances, both included. */
  Optional<ScalingLaw> exponent(int from, int to) {
    return curve.fit(from, to).map(law -> law.withExponent(law.exponent().within(0, 2)));
  }
}
