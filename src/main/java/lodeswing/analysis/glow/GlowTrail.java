package lodeswing.analysis.glow;

import java.util.function.DoubleUnaryOperator;
import lodeswing.core.geometry.HermiteCubic;
import lodeswing.core.geometry.PathCurve;

/**
 * Lays the light of a path on a paper.
 *
 * <p>The light is a spot of normal (Gaussian) profile straight below the bob. The paper takes it in
 * evenly, however much there is: a stated simplification, real paper fills up. Each cubic of the
 * path is cut into pieces no longer than the spot's standard deviation and integrated over time by
 * Gauss and Legendre's four points; each point is spread over nine pixels by the quadratic B-spline
 * (which keeps its sum, its place and, whatever the place, a variance of a quarter pixel squared;
 * Hockney and Eastwood, Computer Simulation Using Particles, 1988, "triangular shaped cloud"; from
 * memory) and the raster then smoothed by the normal distribution that is left. All weights sum to
 * 1, so no light is lost but what falls beside the paper.
 */
public final class GlowTrail {

  /** Least standard deviation of a spot that is carried truly [pixel]. */
  private static final double LEAST_SPREAD = 0.8;

  private static final double[] NODES = {
    -0.8611363115940526, -0.3399810435848563, 0.3399810435848563, 0.8611363115940526
  };
  private static final double[] WEIGHTS = {
    0.3478548451374538, 0.6521451548625461, 0.6521451548625461, 0.3478548451374538
  };

  /** Pieces in time against what fading still takes. */
  private static final double FADING_STEPS = 4;

  /** Variances in pixels squared: of a pixel's own width, and of the spread over nine pixels. */
  private static final double OF_PIXEL = 1.0 / 12;

  private static final double OF_SPREADING = 0.25;

  private static final int BINS = 4_096;
  private static final double DECADES = 9;

  private final PathCurve curve;
  private final LongExposure exposure;
  private final GlowPaper paper;

  private GlowTrail(PathCurve curve, LongExposure exposure, GlowPaper paper) {
    this.curve = curve;
    this.exposure = exposure;
    this.paper = paper;
  }

  /** Takes a point of the path. */
  private interface Taker {
    /**
     * @param time when
     * @param x place
     * @param y place
     * @param weights of the point: time and length of path that it stands for
     */
    void take(double time, double x, double y, double... weights);
  }

  /**
   * The glow of a path.
   *
   * @param paper should reach six standard deviations of the spot beyond the path: about the edge
   *     of a smaller one the light is too faint
   * @throws IllegalArgumentException where the spot is narrower than about two pixels
   */
  public static GlowField of(PathCurve curve, LongExposure exposure, GlowPaper paper) {
    if (exposure.spread() < LEAST_SPREAD * paper.pixel()) {
      throw new IllegalArgumentException("A spot is two pixels wide or more.");
    }
    return new GlowTrail(curve, exposure, paper).field();
  }

  private GlowField field() {
    double[] values = new double[Math.toIntExact(paper.pixels())];
    double area = paper.pixel() * paper.pixel();
    follow(
        (time, x, y, weights) ->
            lay(
                values,
                x,
                y,
                weights[0] * exposure.decay().remaining(exposure.lookedAt() - time) / area));
    double spread = exposure.spread() / paper.pixel();
    smooth(values, Math.sqrt(spread * spread + OF_PIXEL - OF_SPREADING));
    return new GlowField(paper, values, typical(values));
  }

  private void follow(Taker taker) {
    for (int i = 0; i + 1 < curve.count() && curve.t(i) < exposure.until(); i++) {
      double whole = curve.t(i + 1) - curve.t(i);
      double share = Math.min(1, (exposure.until() - curve.t(i)) / whole);
      double fading = exposure.decay().time() + exposure.lookedAt() - curve.t(i) - share * whole;
      double byPlace = share * longest(i, whole) / exposure.spread();
      double byTime = FADING_STEPS * share * whole / fading;
      int pieces = 1 + (int) Math.max(byPlace, byTime);
      for (int k = 0; k < pieces; k++) {
        for (int node = 0; node < NODES.length; node++) {
          double s = share * (k + 0.5 + 0.5 * NODES[node]) / pieces;
          double weight = share * 0.5 * WEIGHTS[node] / pieces;
          point(i, s, weight, taker);
        }
      }
    }
  }

  private void point(int i, double s, double weight, Taker taker) {
    double h = curve.t(i + 1) - curve.t(i);
    double[] x = {curve.x(i), h * curve.vx(i), curve.x(i + 1), h * curve.vx(i + 1)};
    double[] y = {curve.y(i), h * curve.vy(i), curve.y(i + 1), h * curve.vy(i + 1)};
    double speed =
        Math.hypot(
            HermiteCubic.slope(x[0], x[1], x[2], x[3], s),
            HermiteCubic.slope(y[0], y[1], y[2], y[3], s));
    taker.take(
        curve.t(i) + s * h,
        HermiteCubic.value(x[0], x[1], x[2], x[3], s),
        HermiteCubic.value(y[0], y[1], y[2], y[3], s),
        weight * h,
        weight * speed);
  }

  /** Length of the polygon of a cubic's controls, which its own length does not pass. */
  private double longest(int i, double h) {
    double third = h / 3;
    double x1 = curve.x(i) + third * curve.vx(i);
    double y1 = curve.y(i) + third * curve.vy(i);
    double x2 = curve.x(i + 1) - third * curve.vx(i + 1);
    double y2 = curve.y(i + 1) - third * curve.vy(i + 1);
    return third * Math.hypot(curve.vx(i), curve.vy(i))
        + Math.hypot(x2 - x1, y2 - y1)
        + third * Math.hypot(curve.vx(i + 1), curve.vy(i + 1));
  }

  /** Spreads a weight over the nine pixels about a place. */
  private void lay(double[] values, double x, double y, double weight) {
    double across = x / paper.pixel() - paper.firstColumn() - 0.5;
    double down = paper.firstRow() + paper.rows() - y / paper.pixel() - 0.5;
    int column = (int) Math.rint(across);
    int row = (int) Math.rint(down);
    double dx = across - column;
    double dy = down - row;
    for (int j = -1; j <= 1; j++) {
      for (int i = -1; i <= 1; i++) {
        int c = column + i;
        int r = row + j;
        if (c >= 0 && c < paper.columns() && r >= 0 && r < paper.rows()) {
          values[r * paper.columns() + c] += weight * spline(dx, i) * spline(dy, j);
        }
      }
    }
  }

  /** The quadratic B-spline of a place off a pixel's middle, at that pixel or a neighbour. */
  private static double spline(double off, int neighbour) {
    if (neighbour == 0) {
      return 0.75 - off * off;
    }
    double near = 0.5 + neighbour * off;
    return 0.5 * near * near;
  }

  private void smooth(double[] values, double spread) {
    int reach = (int) Math.ceil(6 * spread);
    double[] kernel = kernel(reach, k -> Math.exp(-0.5 * k * k / (spread * spread)));
    for (int row = 0; row < paper.rows(); row++) {
      smooth(values, row * paper.columns(), 1, paper.columns(), kernel);
    }
    for (int column = 0; column < paper.columns(); column++) {
      smooth(values, column, paper.columns(), paper.rows(), kernel);
    }
  }

  private static double[] kernel(int reach, DoubleUnaryOperator weight) {
    double[] kernel = new double[reach + 1];
    double sum = 0;
    for (int k = 0; k <= reach; k++) {
      kernel[k] = weight.applyAsDouble(k);
      sum += k == 0 ? kernel[k] : 2 * kernel[k];
    }
    for (int k = 0; k <= reach; k++) {
      kernel[k] /= sum;
    }
    return kernel;
  }

  private static void smooth(double[] values, int first, int stride, int count, double... kernel) {
    double[] line = new double[count];
    int reach = kernel.length - 1;
    for (int i = 0; i < count; i++) {
      double value = values[first + i * stride];
      if (value == 0) {
        continue;
      }
      line[i] += value * kernel[0];
      int before = Math.min(reach, i);
      for (int k = 1; k <= before; k++) {
        line[i - k] += value * kernel[k];
      }
      int behind = Math.min(reach, count - 1 - i);
      for (int k = 1; k <= behind; k++) {
        line[i + k] += value * kernel[k];
      }
    }
    for (int i = 0; i < count; i++) {
      values[first + i * stride] = line[i];
    }
  }

  /** Median of the brightness along the path, by length; the greatest one where it has none. */
  private double typical(double[] values) {
    double greatest = 0;
    for (double value : values) {
      greatest = Math.max(greatest, value);
    }
    if (!(greatest > 0)) {
      return 0;
    }
    double top = greatest;
    double[] lengths = new double[BINS];
    follow(
        (time, x, y, weights) -> {
          int column =
              clamped(Math.floor(x / paper.pixel()) - paper.firstColumn(), paper.columns());
          int up = clamped(Math.floor(y / paper.pixel()) - paper.firstRow(), paper.rows());
          double value = values[(paper.rows() - 1 - up) * paper.columns() + column];
          double below = value > 0 ? Math.log10(top / value) : DECADES;
          lengths[clamped(Math.floor(below / DECADES * BINS), BINS)] += weights[1];
        });
    double half = java.util.Arrays.stream(lengths).sum() / 2;
    int bin = 0;
    for (double passed = lengths[0]; passed < half && bin + 1 < BINS; passed += lengths[bin]) {
      bin++;
    }
    return greatest * Math.pow(10, -DECADES * bin / BINS);
  }

  private static int clamped(double index, int count) {
    return (int) Math.max(0, Math.min(count - 1, index));
  }
}
