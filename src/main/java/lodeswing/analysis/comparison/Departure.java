package lodeswing.analysis.comparison;

import java.util.OptionalInt;
import lodeswing.analysis.comparison.PathSearch.Found;
import lodeswing.core.recording.Recording;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealVector;
import org.apache.commons.math3.linear.SingularValueDecomposition;

/**
 * From when on no start of the rig explains a recording.
 *
 * <p>1. A place is doubted where it lies more than four standard deviations from the foretold one
 * (Mahalanobis' distance, by noise, start, parts and computation together), three places in a row.
 * Beside the deviation s that grows as the variational equation says, what grows with its square is
 * allowed for by 2 s^2 over the magnets' spacing.
 *
 * <p>2. A doubt counts where the rig's path does not follow the recording up to there from any
 * other start either: where, the start sought anew over all places up to an eighth of a swing
 * beyond, the residuals of the last quarter of a swing are more than 1.6 times the noise; or where,
 * the release being told, that start is more than five standard deviations from it. Else the next
 * doubt is looked at.
 *
 * <p>Source of the distance: P. C. Mahalanobis, Proc. Nat. Inst. Sci. India 2 (1936) 49 (cited from
 * memory). The figures were chosen by trial ({@code ComparisonTrial}): of 600 recordings of a
 * chaotic rig that is as described 6 were doubted for good.
 */
final class Departure {

  private static final int IN_A_ROW = 3;
  private static final double SECOND_ORDER = 2;
  private static final double LOOK_BEYOND = 0.125;
  private static final double LAST_PART = 0.25;
  private static final double ABOVE_NOISE = 1.6;
  private static final double ANOTHER_START = 5;

  private final Recording recording;
  private final boolean told;
  private final PathSearch search;
  private final Start start;
  private final double noise;
  private final double period;

  /**
   * A search.
   *
   * @param spec what is compared
   * @param search seeks starts
   * @param start the one that was taken
   * @param noise of a coordinate [m]
   * @param period of a small swing [s]
   */
  Departure(ComparisonSpec spec, PathSearch search, Start start, double noise, double period) {
    this.recording = spec.recording();
    this.told = spec.release().isPresent();
    this.search = search;
    this.start = start;
    this.noise = noise;
    this.period = period;
  }

  /**
   * Whether one distance is doubted.
   *
   * @param path the foretold path
   * @param i the place
   * @param off distance along x and y [m]
   * @param parts deviation from what is not known of the parts [m]
   * @param spacing of the magnets [m]
   */
  boolean doubted(Prediction path, int i, double[] off, double parts, double spacing) {
    double bent = SECOND_ORDER * path.deviation(i) * path.deviation(i) / spacing;
    double computed = path.computedError(i);
    double more = noise * noise + parts * parts + computed * computed + bent * bent;
    return path.deviations(i, off[0], off[1], more) > ComparisonResult.BEYOND;
  }

  /**
   * The first place, counted from the start's, from which on the recording is not explained.
   *
   * @param doubted which places are, up to the horizon
   */
  OptionalInt find(boolean[] doubted) {
    double passed = Double.NEGATIVE_INFINITY;
    int row = 0;
    for (int i = 0; i < doubted.length; i++) {
      row = doubted[i] ? row + 1 : 0;
      int begun = i + 1 - IN_A_ROW;
      if (row >= IN_A_ROW && time(begun) > passed) {
        if (unexplained(i, doubted.length)) {
          return OptionalInt.of(begun);
        }
        passed = time(i) + LOOK_BEYOND * period;
      }
    }
    return OptionalInt.empty();
  }

  private double time(int i) {
    return recording.since(start.stretch().first() + i);
  }

  private boolean unexplained(int at, int most) {
    int count = at + 1;
    while (count < most && time(count) < time(at) + LOOK_BEYOND * period) {
      count++;
    }
    Found found = search.fit(start.point(), PathSearch.STATE, start.stretch().first(), count);
    double[] residuals = found.regression().residuals();
    int from = count - 1;
    while (from > 0 && time(count - 1) - time(from) < LAST_PART * period) {
      from--;
    }
    double squares = 0;
    for (int k = 2 * from; k < residuals.length; k++) {
      squares += residuals[k] * residuals[k];
    }
    double rms = Math.sqrt(squares / (2 * (count - from)));
    return rms * start.frame().scale() > ABOVE_NOISE * noise || (told && another(found));
  }

  /** Whether a start is another than the one that is told. */
  private boolean another(Found found) {
    double rate = 2 * Math.PI / period;
    double[] off = new double[PathSearch.STATE.size()];
    for (int k = 0; k < off.length; k++) {
      Quantity component = PathSearch.STATE.get(k);
      double moved = found.point().value(component) - start.point().value(component);
      off[k] = moved / (k < 2 ? 1 : rate);
    }
    double[] error = StartSearch.covariance(found.regression(), rate);
    double[] known = start.covariance();
    double[][] both = new double[off.length][off.length];
    for (int k = 0; k < known.length; k++) {
      both[k / off.length][k % off.length] = known[k] + error[k];
    }
    var covariance = new Array2DRowRealMatrix(both, false);
    RealVector distance = new ArrayRealVector(off, false);
    RealVector solved = new SingularValueDecomposition(covariance).getSolver().solve(distance);
    return Math.sqrt(distance.dotProduct(solved)) > ANOTHER_START;
  }
}
