package lodeswing.core.statistics;

import java.util.Optional;

/**
 * Box counts of the boundary between labels, and its dimension.
 *
 * <p>A box of s spacings has s + 1 nodes on a side, those on its edges among them, and counts if
 * its nodes bear more than one label. F(s) is the fraction of boxes that count when the box's
 * centre takes every place of one inner square, the same for all s, in which even the largest box
 * stays on the grid (a mean over all tilings, without their edge effects). N(s) = F(s) / s^2 boxes
 * per unit of area then cover the boundary, so N ~ s^-d and d = 2 - (slope of ln F over ln s). A
 * straight line has F in proportion to s exactly.
 *
 * <p>Layers thinner than a spacing are missed, which matters for small boxes; the fit therefore
 * begins at 4 spacings (at 2 or 3 where fewer than four scales would be left), and the change of
 * the slope on leaving out every other node joins its standard error. It ends where three quarters
 * of all boxes count, since a box count saturates there, or at a sixteenth of the grid.
 *
 * <p>A dimension belongs to its scales: boundaries of pendulums that lose energy without being
 * driven grow simpler the closer one looks (X. Chen, T. Nishikawa and A. E. Motter, Phys. Rev. X 7
 * (2017) 021040). Sources of the count: T. Vicsek, Fractal Growth Phenomena, 2nd ed. 1992, chapter
 * 4; S. W. McDonald, C. Grebogi, E. Ott and J. A. Yorke, Physica D 17 (1985) 125.
 */
public final class BoxCount {

  private static final int MIXED = -2;
  private static final int PREFERRED_FIRST = 4;
  private static final int LEAST_FIRST = 2;
  private static final int WANTED_SCALES = 4;
  private static final double SATURATION = 0.75;

  private final FractionCurve curve;
  private final Optional<BoxCount> thinned;

  private BoxCount(FractionCurve curve, Optional<BoxCount> thinned) {
    this.curve = curve;
    this.thinned = thinned;
  }

  /** The counts at 1, 2, 3, 4, 6, 8, 12, ... spacings up to a sixteenth of the side. */
  public static BoxCount of(LabelGrid grid) {
    FractionCurve thin = curve(grid.thinned(2));
    return new BoxCount(curve(grid), Optional.of(new BoxCount(thin, Optional.empty())));
  }

  private static FractionCurve curve(LabelGrid grid) {
    double[] scales = GridScales.upToSixteenthOf(grid.side());
    FractionCurve curve = new FractionCurve(scales, GridBlocks.COUNT);
    int[] boxes = grid.indices();
    int side = grid.side();
    widen(boxes, side, 1, 1);
    int[] thrice = boxes.clone();
    widen(thrice, side, 3, 2);
    int width = 1;
    int thriceWidth = 3;
    for (int k = 0; k < scales.length; k++) {
      int scale = (int) scales[k];
      if (scale % 3 == 0) {
        for (; thriceWidth < scale; thriceWidth *= 2) {
          widen(thrice, side, 2 * thriceWidth, thriceWidth);
        }
        tally(curve, k, thrice, side);
      } else {
        for (; width < scale; width *= 2) {
          widen(boxes, side, 2 * width, width);
        }
        tally(curve, k, boxes, side);
      }
    }
    return curve;
  }

  /**
   * Joins each box with those a shift on, along both axes; boxes that would leave the grid stay.
   */
  private static void widen(int[] boxes, int side, int width, int shift) {
    for (int row = 0; row < side - width; row++) {
      for (int column = 0; column < side - width; column++) {
        int n = row * side + column;
        boxes[n] =
            join(
                join(boxes[n], boxes[n + shift]),
                join(boxes[n + shift * side], boxes[n + shift * side + shift]));
      }
    }
  }

  private static int join(int a, int b) {
    if (a == b || b == LabelGrid.NONE) {
      return a;
    }
    return a == LabelGrid.NONE ? b : MIXED;
  }

  private static void tally(FractionCurve curve, int k, int[] boxes, int side) {
    int margin = ((int) curve.scale(curve.size() - 1) + 1) / 2;
    int half = (int) curve.scale(k) / 2;
    int inner = side - 2 * margin;
    GridBlocks blocks = new GridBlocks(inner);
    for (int row = 0; row < inner; row++) {
      for (int column = 0; column < inner; column++) {
        int box = boxes[(row + margin - half) * side + column + margin - half];
        if (box != LabelGrid.NONE) {
          curve.add(k, blocks.of(row, column), box == MIXED);
        }
      }
    }
  }

  /** How many scales were counted. */
  public int scales() {
    return curve.size();
  }

  /** A scale [spacings]. */
  public double scale(int k) {
    return curve.scale(k);
  }

  /** Fraction of boxes of a scale that hold more than one label. */
  public double fraction(int k) {
    return curve.fraction(k);
  }

  /**
   * The box-counting dimension over the range of scales stated above, 2 less the slope.
   *
   * @return empty where there is no boundary, or three scales do not fit between the spacing and
   *     saturation
   */
  public Optional<ScalingLaw> dimension() {
    int to = -1;
    while (to + 1 < scales() && fraction(to + 1) <= SATURATION) {
      to++;
    }
    int from = 0;
    while (from < scales() && scale(from) < PREFERRED_FIRST) {
      from++;
    }
    while (from > 0 && scale(from - 1) >= LEAST_FIRST && to - from + 1 < WANTED_SCALES) {
      from--;
    }
    return dimension(from, to);
  }

  private Optional<ScalingLaw> dimension(int from, int to) {
    Optional<ScalingLaw> law = curve.fit(from, to);
    if (law.isEmpty()) {
      return law;
    }
    Optional<Double> coarse = thinned.flatMap(coarser -> coarser.slope(scale(from), scale(to)));
    double slope = law.get().exponent().value();
    Estimate exponent =
        coarse.isPresent()
            ? law.get().exponent().widened(slope - coarse.get())
            : law.get().exponent();
    return Optional.of(law.get().withExponent(exponent.subtractedFrom(2).within(0, 2)));
  }

  /** The slope over the scales between two, given in spacings of the grid that was thinned. */
  private Optional<Double> slope(double first, double last) {
    int from = 0;
    while (from < scales() && 2 * scale(from) < first) {
      from++;
    }
    int to = from - 1;
    while (to + 1 < scales() && 2 * scale(to + 1) <= last) {
      to++;
    }
    return curve.fit(from, to).map(law -> law.exponent().value());
  }
}
