package lodeswing.core.statistics;

import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import java.util.random.RandomGenerator;

/**
 * The uncertainty exponent from places drawn at random in a square, below any grid's resolution.
 *
 * <p>For each of some distances e, evenly spaced in ln e, places are drawn evenly in the square and
 * each is compared with the places at e on either side of it, in a direction drawn at random; the
 * fraction of places whose three labels are not all one goes as e^alpha, and d = 2 - alpha.
 * Distances at which it exceeds 0.7 of what labels drawn at random would give are left out, as in
 * {@link UncertainPairs}. Draws are independent from distance to distance. Fresh labels are asked
 * for: three a place and distance.
 *
 * <p>Sources: C. Grebogi, S. W. McDonald, E. Ott and J. A. Yorke, Phys. Lett. A 99 (1983) 415; S.
 * W. McDonald, C. Grebogi, E. Ott and J. A. Yorke, Physica D 17 (1985) 125.
 *
 * @param x centre of the square
 * @param y centre of the square
 * @param halfWidth half its side
 * @param smallest smallest distance, in the square's unit
 * @param largest largest distance
 * @param distances how many distances, 3 or more
 * @param places how many places for each, {@value #BATCHES} or more
 */
public record UncertaintySampling(
    double x,
    double y,
    double halfWidth,
    double smallest,
    double largest,
    int distances,
    int places) {

  private static final int BATCHES = 16;

  /** Fewer uncertain places than this tell too little of a distance, and it is left out. */
  private static final int FEWEST_HITS = 16;

  public UncertaintySampling {
    boolean sound =
        halfWidth > 0
            && smallest > 0
            && largest > smallest
            && largest < Double.POSITIVE_INFINITY
            && distances >= 3
            && places >= BATCHES;
    if (!sound) {
      throw new IllegalArgumentException("no such sampling");
    }
  }

  /** How many labels one run asks for. */
  public long labels() {
    return 3L * distances * places;
  }

  /**
   * Runs the sampling.
   *
   * @param random source of the draws; the same source in the same state gives the same exponent
   * @return the exponent over the distances that had enough uncertain places; empty below three
   */
  public Optional<ScalingLaw> run(PlaneLabelling plane, RandomGenerator random) {
    double[] scales = new double[distances];
    for (int k = 0; k < distances; k++) {
      scales[k] = smallest * StrictMath.pow(largest / smallest, k / (distances - 1.0));
    }
    FractionCurve curve = new FractionCurve(scales, BATCHES);
    Map<Integer, Integer> counts = new TreeMap<>();
    for (int k = 0; k < distances; k++) {
      tally(curve, k, plane, random, counts);
    }
    double most = UncertainPairs.SATURATION * atRandom(counts);
    int to = distances - 1;
    while (to >= 0 && !(curve.fraction(to) <= most)) {
      to--;
    }
    int from = 0;
    while (from <= to && curve.hits(from) < FEWEST_HITS) {
      from++;
    }
    return curve.fit(from, to).map(law -> law.withExponent(law.exponent().within(0, 2)));
  }

  /** Uncertain fraction of labels that are drawn with the shares counted. */
  private static double atRandom(Map<Integer, Integer> counts) {
    double all = counts.values().stream().mapToInt(Integer::intValue).sum();
    double same = 0;
    for (int count : counts.values()) {
      double share = count / all;
      same += share * share * share;
    }
    return 1 - same;
  }

  private void tally(
      FractionCurve curve,
      int k,
      PlaneLabelling plane,
      RandomGenerator random,
      Map<Integer, Integer> counts) {
    double[] px = new double[3 * places];
    double[] py = new double[3 * places];
    int[] label = new int[3 * places];
    for (int n = 0; n < places; n++) {
      double placeX = x + halfWidth * (2 * random.nextDouble() - 1);
      double placeY = y + halfWidth * (2 * random.nextDouble() - 1);
      double turn = 2 * Math.PI * random.nextDouble();
      double shiftX = curve.scale(k) * StrictMath.cos(turn);
      double shiftY = curve.scale(k) * StrictMath.sin(turn);
      for (int side = -1; side <= 1; side++) {
        px[3 * n + side + 1] = placeX + side * shiftX;
        py[3 * n + side + 1] = placeY + side * shiftY;
      }
    }
    plane.label(px, py, label);
    for (int n = 0; n < places; n++) {
      int before = label[3 * n];
      int here = label[3 * n + 1];
      int after = label[3 * n + 2];
      if (before != LabelGrid.NO_LABEL
          && here != LabelGrid.NO_LABEL
          && after != LabelGrid.NO_LABEL) {
        counts.merge(here, 1, Integer::sum);
        curve.add(k, n % BATCHES, here != before || here != after);
      }
    }
  }
}
