package lodeswing.core.motion;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/**
 * A costly smooth function of two angles as a few large patches of high degree: what tables of many
 * small cells are made from at little cost.
 *
 * <p>A polynomial of degree n - 1 through n by n Chebyshev points converges like rho^-n, where rho
 * grows with the distance of the function's nearest singularity in units of the patch; a patch
 * twice as wide as the gap thus needs some thirty points a side, where small cells of degree 7 need
 * a hundred in the same width (L. N. Trefethen, Approximation Theory and Approximation Practice,
 * 2013, theorem 8.2, its number from memory). Each patch takes the least of a ladder of degrees at
 * which value and slopes hold on check points of their own; one that does not hold at the highest
 * is cut into four. Where nothing holds, as where the bob would reach into a magnet, the value is
 * NaN. Immutable.
 */
final class PatchedFunction implements CellTable.Source {

  static final int COARSE = 16;
  static final int DEEPEST = 3;
  static final int[] LADDER = {8, 16, 24, 32};

  /** A patch that misses its tolerance by more than this goes to pieces without a higher degree. */
  static final double HOPELESS = 1e6;

  /** Check points lie off the interpolation points of every rung. */
  static final double[] CHECK = {-0.97, -0.53, 0.11, 0.64, 0.99};

  private final double halfWidth;
  private final Patch[] roots;

  private PatchedFunction(double halfWidth, Patch[] roots) {
    this.halfWidth = halfWidth;
    this.roots = roots;
  }

  /**
   * Makes the patches on all cores.
   *
   * @param source the costly function, safe for several threads
   * @param halfWidth half the side of the square [rad]
   * @param valueTolerance greatest error of the value on the check points
   * @param slopeTolerance greatest error of a slope there; infinite where slopes do not matter
   * @param budget what evaluations are counted in
   * @throws WorkExceededException where the budget runs out
   */
  static PatchedFunction of(
      CellTable.Source source,
      double halfWidth,
      double valueTolerance,
      double slopeTolerance,
      WorkBudget budget) {
    double half = halfWidth / COARSE;
    Patch[] roots = new Patch[COARSE * COARSE];
    IntStream.range(0, roots.length)
        .parallel()
        .forEach(
            k -> {
              double u = -halfWidth + (2 * (k / COARSE) + 1) * half;
              double v = -halfWidth + (2 * (k % COARSE) + 1) * half;
              roots[k] = new Patch(u, v, half, budget);
              roots[k].fit(source, valueTolerance, slopeTolerance, 0);
            });
    return new PatchedFunction(halfWidth, roots);
  }

  @Override
  public double value(double u, double v) {
    Patch patch = find(u, v);
    return patch.fitted() ? patch.value(u, v) : Double.NaN;
  }

  @Override
  public void slopes(double u, double v, double[] out) {
    Patch patch = find(u, v);
    if (patch.fitted()) {
      patch.slopes(u, v, out);
    } else {
      Arrays.fill(out, 0, 3, Double.NaN);
    }
  }

  /** About how much memory it holds. */
  long bytes() {
    return Arrays.stream(roots).mapToLong(Patch::bytes).sum();
  }

  private Patch find(double u, double v) {
    int i = cell(u);
    int j = cell(v);
    return roots[i * COARSE + j].at(u, v);
  }

  private int cell(double q) {
    int index = (int) Math.floor((q + halfWidth) / (2 * halfWidth) * COARSE);
    return Math.max(0, Math.min(COARSE - 1, index));
  }

  /** One patch, or four in its place. */
  private static final class Patch {
    private final double u0;
    private final double v0;
    private final double half;
    private final WorkBudget budget;
    private final List<Patch> quarters = new ArrayList<>();
    private int n;
    private double[] c = {};
    private double[] cu = {};
    private double[] cv = {};

    Patch(double u0, double v0, double half, WorkBudget budget) {
      this.u0 = u0;
      this.v0 = v0;
      this.half = half;
      this.budget = budget;
    }

    boolean fitted() {
      return n > 0;
    }

    long bytes() {
      long own = (long) Double.BYTES * (c.length + cu.length + cv.length);
      return own + quarters.stream().mapToLong(Patch::bytes).sum();
    }

    Patch at(double u, double v) {
      return quarters.isEmpty() ? this : quarters.get((u < u0 ? 0 : 2) + (v < v0 ? 0 : 1)).at(u, v);
    }

    void fit(CellTable.Source source, double valueTolerance, double slopeTolerance, int depth) {
      double[] exact = exact(source, slopeTolerance);
      for (int degree : LADDER) {
        interpolate(source, degree);
        double error = error(exact, valueTolerance, slopeTolerance);
        if (error <= 1) {
          return;
        }
        // The negated comparison also catches NaN.
        if (!(error <= HOPELESS)) {
          break;
        }
      }
      n = 0;
      c = new double[0];
      cu = c;
      cv = c;
      if (depth < DEEPEST) {
        for (int q = 0; q < 4; q++) {
          double quarter = 0.5 * half;
          Patch patch =
              new Patch(
                  u0 + (q < 2 ? -quarter : quarter),
                  v0 + (q % 2 == 0 ? -quarter : quarter),
                  quarter,
                  budget);
          patch.fit(source, valueTolerance, slopeTolerance, depth + 1);
          quarters.add(patch);
        }
      }
    }

    /** Value and slopes of the function on the check points. */
    private double[] exact(CellTable.Source source, double slopeTolerance) {
      budget.spendOver(u0, v0, half, CHECK.length * CHECK.length * WorkBudget.SLOPES);
      double[] exact = new double[3 * CHECK.length * CHECK.length];
      double[] three = new double[3];
      int k = 0;
      for (double a : CHECK) {
        for (double b : CHECK) {
          double u = u0 + half * a;
          double v = v0 + half * b;
          if (slopeTolerance < Double.POSITIVE_INFINITY) {
            source.slopes(u, v, three);
          } else {
            three[0] = source.value(u, v);
          }
          System.arraycopy(three, 0, exact, k, 3);
          k += 3;
        }
      }
      return exact;
    }

    /** Greatest error on the check points, in tolerances. */
    private double error(double[] exact, double valueTolerance, double slopeTolerance) {
      double[] found = new double[3];
      double worst = 0;
      int k = 0;
      for (double a : CHECK) {
        for (double b : CHECK) {
          slopes(u0 + half * a, v0 + half * b, found);
          worst = Math.max(worst, Math.abs(found[0] - exact[k]) / valueTolerance);
          if (slopeTolerance < Double.POSITIVE_INFINITY) {
            worst = Math.max(worst, Math.abs(found[1] - exact[k + 1]) / slopeTolerance);
            worst = Math.max(worst, Math.abs(found[2] - exact[k + 2]) / slopeTolerance);
          }
          k += 3;
        }
      }
      return worst;
    }

    private void interpolate(CellTable.Source source, int degree) {
      n = degree;
      budget.spendOver(u0, v0, half, degree * degree);
      double[] cosines = new double[n * n];
      for (int p = 0; p < n; p++) {
        for (int k = 0; k < n; k++) {
          double scale = p == 0 ? 1.0 / n : 2.0 / n;
          cosines[p * n + k] = scale * StrictMath.cos(Math.PI * p * (2 * k + 1) / (2.0 * n));
        }
      }
      double[] values = new double[n * n];
      for (int k = 0; k < n; k++) {
        double u = u0 + half * StrictMath.cos(Math.PI * (2 * k + 1) / (2.0 * n));
        for (int l = 0; l < n; l++) {
          double v = v0 + half * StrictMath.cos(Math.PI * (2 * l + 1) / (2.0 * n));
          values[k * n + l] = source.value(u, v);
        }
      }
      c = transformed(cosines, values);
      cu = new double[n * n];
      cv = new double[n * n];
      for (int j = 0; j < n; j++) {
        differentiate(c, j, n, cu);
        differentiate(c, j * n, 1, cv);
      }
    }

    /** Coefficients: cosines * values * cosines transposed. */
    private double[] transformed(double[] cosines, double[] values) {
      double[] half1 = new double[n * n];
      double[] out = new double[n * n];
      for (int p = 0; p < n; p++) {
        for (int k = 0; k < n; k++) {
          double factor = cosines[p * n + k];
          for (int l = 0; l < n; l++) {
            half1[p * n + l] += factor * values[k * n + l];
          }
        }
      }
      for (int p = 0; p < n; p++) {
        for (int q = 0; q < n; q++) {
          double sum = 0;
          for (int l = 0; l < n; l++) {
            sum += cosines[q * n + l] * half1[p * n + l];
          }
          out[p * n + q] = sum;
        }
      }
      return out;
    }

    /** Coefficients of the slope: d_(k-1) = d_(k+1) + 2 k c_k, the first halved. */
    private void differentiate(double[] from, int start, int stride, double[] to) {
      double after = 0;
      double next = 0;
      for (int k = n - 1; k >= 1; k--) {
        double value = after + 2 * k * from[start + k * stride];
        to[start + (k - 1) * stride] = (k == 1 ? 0.5 * value : value) / half;
        after = next;
        next = value;
      }
    }

    double value(double u, double v) {
      return sum(c, (u - u0) / half, (v - v0) / half);
    }

    void slopes(double u, double v, double[] out) {
      double a = (u - u0) / half;
      double b = (v - v0) / half;
      out[0] = sum(c, a, b);
      out[1] = sum(cu, a, b);
      out[2] = sum(cv, a, b);
    }

    /** Clenshaw's sum in both variables. */
    private double sum(double[] coefficients, double a, double b) {
      double later = 0;
      double last = 0;
      for (int p = n - 1; p >= 1; p--) {
        double now = row(coefficients, p, b) + 2 * a * later - last;
        last = later;
        later = now;
      }
      return row(coefficients, 0, b) + a * later - last;
    }

    private double row(double[] coefficients, int p, double b) {
      double later = 0;
      double last = 0;
      for (int q = n - 1; q >= 1; q--) {
        double now = coefficients[p * n + q] + 2 * b * later - last;
        last = later;
        later = now;
      }
      return coefficients[p * n] + b * later - last;
    }
  }
}
