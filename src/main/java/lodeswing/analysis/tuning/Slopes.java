package lodeswing.analysis.tuning;

import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * How the chances of the labels change with the figures, about the best setting: straight lines
 * through what was measured near it, and the smallest step along them that brings all chances to
 * what is wanted.
 *
 * <p>The lines are a ridge regression (A. E. Hoerl and R. W. Kennard, Technometrics 12 (1970) 55)
 * with weights that fall with the distance; the step is that of K. Levenberg, Q. Appl. Math. 2
 * (1944) 164. Chances are smooth where single ends are not, so that few tries tell a slope.
 */
final class Slopes {

  /** Ridge, as a share of the weights' sum. */
  private static final double RIDGE = 1e-3;

  /** Damping, as a share of the slopes' mean square. */
  private static final double DAMPING = 1e-2;

  /** Width of the weights where all samples lie at one place. */
  private static final double LEAST_WIDTH = 1e-2;

  /** Slopes of a mean square below this are rounding: no chance changes with any figure. */
  private static final double FLAT = 1e-10;

  /** Lines are not believed farther than this share of a figure's range. */
  private static final double FARTHEST = 0.25;

  private final int figures;
  private final List<Sample> samples;

  /**
   * A measured setting.
   *
   * @param place each figure as a share of its range
   * @param off each label's distance from what is wanted, with its sign
   * @param tries that it was measured with
   */
  record Sample(List<Double> place, List<Double> off, int tries) {}

  Slopes(List<Sample> samples) {
    this.samples = List.copyOf(samples);
    this.figures = samples.get(0).place().size();
  }

  /** The step from the first sample, each figure as a share of its range. */
  double[] step() {
    Sample best = samples.get(0);
    double[] distances = samples.stream().mapToDouble(s -> apart(s, best)).toArray();
    double[] sorted = distances.clone();
    Arrays.sort(sorted);
    double width = Math.max(LEAST_WIDTH, sorted[Math.min(sorted.length, 2 * figures + 2) - 1]);
    int labels = best.off().size();
    RealMatrix normal = new Array2DRowRealMatrix(figures + 1, figures + 1);
    RealMatrix right = new Array2DRowRealMatrix(figures + 1, labels);
    double all = 0;
    for (int i = 0; i < samples.size(); i++) {
      Sample sample = samples.get(i);
      double near = distances[i] / width;
      double weight = StrictMath.exp(-near * near) * sample.tries();
      all += weight;
      double[] row = new double[figures + 1];
      row[figures] = 1;
      for (int k = 0; k < figures; k++) {
        row[k] = sample.place().get(k) - best.place().get(k);
      }
      for (int a = 0; a <= figures; a++) {
        for (int b = 0; b <= figures; b++) {
          normal.addToEntry(a, b, weight * row[a] * row[b]);
        }
        for (int l = 0; l < labels; l++) {
          right.addToEntry(a, l, weight * row[a] * sample.off().get(l));
        }
      }
    }
    for (int a = 0; a <= figures; a++) {
      normal.addToEntry(a, a, a < figures ? RIDGE * all * width * width : 1e-9 * all);
    }
    RealMatrix lines = new LUDecomposition(normal).getSolver().solve(right);
    return along(lines, labels);
  }

  private double[] along(RealMatrix lines, int labels) {
    RealMatrix slopes = lines.getSubMatrix(0, figures - 1, 0, labels - 1).transpose();
    RealMatrix products = slopes.multiply(slopes.transpose());
    double mean = products.getTrace() / labels;
    if (!(mean > FLAT)) {
      return new double[figures];
    }
    RealMatrix damped =
        products
            .scalarMultiply(1 / mean)
            .add(MatrixUtils.createRealIdentityMatrix(labels).scalarMultiply(DAMPING));
    RealMatrix off =
        lines.getSubMatrix(figures, figures, 0, labels - 1).transpose().scalarMultiply(1 / mean);
    double[] step =
        slopes
            .transpose()
            .multiply(new LUDecomposition(damped).getSolver().solve(off))
            .scalarMultiply(-1)
            .getColumn(0);
    double longest = Arrays.stream(step).map(Math::abs).max().orElse(0);
    double share = longest > FARTHEST ? FARTHEST / longest : 1;
    return Arrays.stream(step).map(part -> part * share).toArray();
  }

  private static double apart(Sample one, Sample other) {
    double sum = 0;
    for (int k = 0; k < one.place().size(); k++) {
      double d = one.place().get(k) - other.place().get(k);
      sum += d * d;
    }
    return Math.sqrt(sum);
  }
}
