package lodeswing.core.statistics;

import java.util.Optional;
import org.apache.commons.math3.util.FastMath;

/**
 * The fraction of hits at some scales, kept apart for blocks of the sample, and its power law.
 *
 * <p>The exponent is the slope of ln(fraction) over ln(scale) by weighted least squares. Fractions
 * of neighbouring scales rest on the same places, so the residuals alone would understate its
 * error: the standard error joins, as squares, the residuals' own and the jackknife over blocks (B.
 * Efron and C. Stein, Ann. Stat. 9 (1981) 586); their degrees of freedom are joined after F. E.
 * Satterthwaite, Biometrics Bull. 2 (1946) 110.
 */
final class FractionCurve {

  /**
   * Allowed departure of ln(fraction) from a power law, which keeps scales with many hits from
   * outweighing the others: self-similar sets wave by some per cent about their law.
   */
  private static final double WAVE = 0.05;

  private static final int NO_BLOCK = -1;

  private final double[] scale;
  private final long[][] hits;
  private final long[][] trials;

  FractionCurve(double[] scale, int blocks) {
    this.scale = scale;
    hits = new long[scale.length][blocks];
    trials = new long[scale.length][blocks];
  }

  void add(int k, int block, boolean hit) {
    trials[k][block]++;
    if (hit) {
      hits[k][block]++;
    }
  }

  int size() {
    return scale.length;
  }

  double scale(int k) {
    return scale[k];
  }

  /** Fraction of hits at a scale; NaN without a trial. */
  double fraction(int k) {
    return (double) sum(hits[k], NO_BLOCK) / sum(trials[k], NO_BLOCK);
  }

  long hits(int k) {
    return sum(hits[k], NO_BLOCK);
  }

  /**
   * The power law over the scales from one to another, both included.
   *
   * @return empty where fewer than three scales are left or a scale without hits would be used
   */
  Optional<ScalingLaw> fit(int from, int to) {
    int count = to - from + 1;
    if (count < 3) {
      return Optional.empty();
    }
    for (int k = from; k <= to; k++) {
      if (sum(hits[k], NO_BLOCK) == 0) {
        return Optional.empty();
      }
    }
    Line whole = line(from, to, NO_BLOCK);
    int blocks = hits[from].length;
    double[] slopes = new double[blocks];
    int used = 0;
    for (int b = 0; b < blocks; b++) {
      double slope = line(from, to, b).slope;
      if (Double.isFinite(slope)) {
        slopes[used++] = slope;
      }
    }
    if (used < 2) {
      return Optional.empty();
    }
    double jackknife = Jackknife.variance(slopes, used);
    return Optional.of(
        new ScalingLaw(
            joined(whole, jackknife, used - 1, count - 2), scale[from], scale[to], count));
  }

  private static Estimate joined(Line line, double jackknife, int blockFreedom, int lineFreedom) {
    double variance = jackknife + line.slopeVariance;
    double freedom =
        variance == 0
            ? blockFreedom
            : variance
                * variance
                / (jackknife * jackknife / blockFreedom
                    + line.slopeVariance * line.slopeVariance / lineFreedom);
    return Estimate.ofStudent(line.slope, Math.sqrt(variance), freedom);
  }

  private record Line(double slope, double slopeVariance) {}

  /** The line without one block; with all for NO_BLOCK. */
  private Line line(int from, int to, int left) {
    double sum = 0;
    double sumX = 0;
    double sumY = 0;
    int count = to - from + 1;
    double[] x = new double[count];
    double[] y = new double[count];
    double[] weight = new double[count];
    for (int i = 0; i < count; i++) {
      double hit = sum(hits[from + i], left);
      double share = hit / sum(trials[from + i], left);
      x[i] = FastMath.log(scale[from + i]);
      y[i] = FastMath.log(share);
      weight[i] = 1 / ((1 - share) / hit + WAVE * WAVE);
      sum += weight[i];
      sumX += weight[i] * x[i];
      sumY += weight[i] * y[i];
    }
    double spread = 0;
    double slope = 0;
    for (int i = 0; i < count; i++) {
      double dx = x[i] - sumX / sum;
      spread += weight[i] * dx * dx;
      slope += weight[i] * dx * (y[i] - sumY / sum);
    }
    slope /= spread;
    double residual = 0;
    for (int i = 0; i < count; i++) {
      double r = y[i] - sumY / sum - slope * (x[i] - sumX / sum);
      residual += weight[i] * r * r;
    }
    return new Line(slope, residual / (count - 2) / spread);
  }

  private static long sum(long[] perBlock, int left) {
    long sum = 0;
    for (int b = 0; b < perBlock.length; b++) {
      sum += b == left ? 0 : perBlock[b];
    }
    return sum;
  }
}
