package lodeswing.core.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/**
 * Order conditions of Nystrom methods, one for each tree of y'' = f(y): sum b_i Phi_i = its value
 * for the exact solution (Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I,
 * 1993, section II.14).
 *
 * <p>A tree is a product of factors c (a derivative of f applied to y') and of sum_j a_ij Phi_j (to
 * a lower tree). On the exact solution a tree is alpha tau^n, and as a factor alpha
 * tau^(n+2)/((n+1) (n+2)).
 */
class NystromOrderConditionsTest {

  private static final double[] C = {0, 0.05, 0.1, 0.3, 0.5, 0.7, 0.9, 1, 1};

  private static final class Tree {
    final int degree;
    final double exact;
    final double[] weights;

    Tree(int degree, double exact, double[] weights) {
      this.degree = degree;
      this.exact = exact;
      this.weights = weights;
    }
  }

  private static double[] row(ToDoubleFunction<double[]> sum) {
    double[] row = new double[9];
    for (int j = 0; j < 9; j++) {
      double[] unit = new double[9];
      unit[j] = 1;
      row[j] = sum.applyAsDouble(unit);
    }
    return row;
  }

  private static final double[][] A = {
    new double[9],
    row(g -> NystromCoefficients.A21 * g[0]),
    row(NystromCoefficients::row3),
    row(NystromCoefficients::row4),
    row(NystromCoefficients::row5),
    row(NystromCoefficients::row6),
    row(NystromCoefficients::row7),
    row(NystromCoefficients::row8),
    row(NystromCoefficients::row9)
  };

  private static double dot(double[] a, double[] b) {
    double sum = 0;
    for (int i = 0; i < a.length; i++) {
      sum += a[i] * b[i];
    }
    return sum;
  }

  /** All trees up to a degree in tau. */
  private static List<Tree> trees(int most) {
    List<Tree> all = new ArrayList<>();
    for (int degree = 0; degree <= most; degree++) {
      List<Tree> factors = new ArrayList<>();
      factors.add(new Tree(1, 1, C));
      for (Tree t : all) {
        double[] w = new double[9];
        for (int i = 0; i < 9; i++) {
          w[i] = dot(A[i], t.weights);
        }
        int n = t.degree;
        factors.add(new Tree(n + 2, t.exact / ((n + 1.0) * (n + 2)), w));
      }
      double[] ones = new double[9];
      java.util.Arrays.fill(ones, 1);
      products(factors, 0, new Tree(0, 1, ones), degree, all);
    }
    return all;
  }

  private static void products(List<Tree> factors, int from, Tree t, int degree, List<Tree> all) {
    if (t.degree == degree) {
      all.add(t);
      return;
    }
    for (int f = from; f < factors.size(); f++) {
      Tree factor = factors.get(f);
      if (t.degree + factor.degree <= degree) {
        double[] w = new double[9];
        for (int i = 0; i < 9; i++) {
          w[i] = t.weights[i] * factor.weights[i];
        }
        Tree product = new Tree(t.degree + factor.degree, t.exact * factor.exact, w);
        products(factors, f, product, degree, all);
      }
    }
  }

  private static double worst(double[] place, double[] speed, int order) {
    double worst = 0;
    for (Tree t : trees(order - 1)) {
      int n = t.degree;
      worst = Math.max(worst, Math.abs(dot(speed, t.weights) - t.exact / (n + 1)));
      if (n + 2 <= order) {
        double exact = t.exact / ((n + 1.0) * (n + 2));
        worst = Math.max(worst, Math.abs(dot(place, t.weights) - exact));
      }
    }
    return worst;
  }

  private static double[] minus(double[] a, double[] b) {
    double[] d = new double[9];
    for (int i = 0; i < 9; i++) {
      d[i] = a[i] - b[i];
    }
    return d;
  }

  @Test
  void stagesStandWhereTheirTimesSay() {
    for (int i = 0; i < 9; i++) {
      assertEquals(C[i] * C[i] / 2, sum(A[i]), 1e-14);
    }
  }

  private static double sum(double[] a) {
    double sum = 0;
    for (double x : a) {
      sum += x;
    }
    return sum;
  }

  @Test
  void solutionHasOrderEightAndNotNine() {
    double[] speed = row(NystromCoefficients::speedRow);
    assertTrue(worst(A[8], speed, 8) < 1e-14);
    assertTrue(worst(A[8], speed, 9) > 1e-9);
  }

  @Test
  void comparisonSolutionHasOrderSixAndNotSeven() {
    double[] place = minus(A[8], row(NystromCoefficients::placeError));
    double[] speed =
        minus(row(NystromCoefficients::speedRow), row(NystromCoefficients::speedError));
    assertTrue(worst(place, speed, 6) < 1e-14);
    assertTrue(worst(place, speed, 7) > 1e-7);
  }
}
