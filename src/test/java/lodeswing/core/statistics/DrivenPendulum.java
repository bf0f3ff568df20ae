package lodeswing.core.statistics;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;

/**
 * The forced damped pendulum x'' + damping x' + sin x = force cos t, seen once a period at phase 0;
 * a place (x, x') bears the number of the periodic orbit that it is drawn to, x counted modulo 2
 * pi.
 */
final class DrivenPendulum implements Plane {

  private static final int STEPS = 64;
  private static final int LONGEST_PERIOD = 6;
  private static final double CLOSE = 0.02;

  private final double damping;
  private final double force;
  private final List<double[][]> orbits = new ArrayList<>();

  DrivenPendulum(double damping, double force) {
    this.damping = damping;
    this.force = force;
    SplittableRandom random = new SplittableRandom(1);
    double[] s = new double[2];
    for (int n = 0; n < 300; n++) {
      s[0] = 2 * Math.PI * (random.nextDouble() - 0.5);
      s[1] = 8 * (random.nextDouble() - 0.5);
      for (int period = 0; period < 150; period++) {
        advance(s);
      }
      if (orbitNear(s) < 0) {
        remember(s);
      }
    }
  }

  private void remember(double[] s) {
    double[][] orbit = new double[LONGEST_PERIOD][];
    double[] start = s.clone();
    for (int period = 1; period <= LONGEST_PERIOD; period++) {
      orbit[period - 1] = s.clone();
      advance(s);
      if (distance(s, start) < 1e-6) {
        orbits.add(Arrays.copyOf(orbit, period));
        return;
      }
    }
  }

  int orbits() {
    return orbits.size();
  }

  @Override
  public int at(double x, double v) {
    double[] s = {x, v};
    for (int period = 0; period < 200; period++) {
      advance(s);
      int orbit = orbitNear(s);
      if (orbit >= 0) {
        return orbit;
      }
    }
    return LabelGrid.NO_LABEL;
  }

  /**
   * The uncertainty exponent foretold by the chaotic set on the boundary: rate at which its
   * neighbourhood is left over the rate at which it stretches, both per period. G.-H. Hsu, E. Ott
   * and C. Grebogi, Phys. Lett. A 127 (1988) 199; H. Kantz and P. Grassberger, Physica D 17 (1985)
   * 75 (formula from memory; it holds for the information dimension, which is near the box
   * dimension).
   *
   * @param starts how many places of the plane are followed
   */
  double exponentOfChaoticSet(int starts) {
    int first = 4;
    int last = 12;
    int margin = 4;
    SplittableRandom random = new SplittableRandom(11);
    int[] left = new int[last + 1];
    double stretch = 0;
    int stretches = 0;
    for (int n = 0; n < starts; n++) {
      double[] s = {Math.PI * (2 * random.nextDouble() - 1), 6 * random.nextDouble() - 2};
      double[] near = {s[0] + 1e-8, s[1]};
      double[] logs = new double[last];
      int period = 0;
      while (period < last && orbitNear(s) < 0) {
        advance(s);
        advance(near);
        double distance = Math.hypot(near[0] - s[0], near[1] - s[1]);
        logs[period++] = Math.log(distance / 1e-8);
        near[0] = s[0] + (near[0] - s[0]) * 1e-8 / distance;
        near[1] = s[1] + (near[1] - s[1]) * 1e-8 / distance;
        left[period]++;
      }
      if (period == last) {
        for (int k = margin; k < last - margin; k++) {
          stretch += logs[k];
          stretches++;
        }
      }
    }
    double escape = Math.log((double) left[first] / left[last]) / (last - first);
    return escape / (stretch / stretches);
  }

  private int orbitNear(double[] s) {
    for (int k = 0; k < orbits.size(); k++) {
      for (double[] point : orbits.get(k)) {
        if (distance(s, point) < CLOSE) {
          return k;
        }
      }
    }
    return -1;
  }

  private static double distance(double[] a, double[] b) {
    return Math.hypot(Math.IEEEremainder(a[0] - b[0], 2 * Math.PI), a[1] - b[1]);
  }

  /** One period by the classical Runge-Kutta scheme. */
  private void advance(double[] s) {
    double h = 2 * Math.PI / STEPS;
    double x = s[0];
    double v = s[1];
    for (int n = 0; n < STEPS; n++) {
      double push0 = force * COS[2 * n];
      double push1 = force * COS[2 * n + 1];
      double push2 = force * COS[2 * n + 2];
      double a1 = push0 - damping * v - Math.sin(x);
      double v2 = v + h / 2 * a1;
      double a2 = push1 - damping * v2 - Math.sin(x + h / 2 * v);
      double v3 = v + h / 2 * a2;
      double a3 = push1 - damping * v3 - Math.sin(x + h / 2 * v2);
      double v4 = v + h * a3;
      double a4 = push2 - damping * v4 - Math.sin(x + h * v3);
      x += h / 6 * (v + 2 * v2 + 2 * v3 + v4);
      v += h / 6 * (a1 + 2 * a2 + 2 * a3 + a4);
    }
    s[0] = x;
    s[1] = v;
  }

  private static final double[] COS = cosines();

  private static double[] cosines() {
    double[] cosines = new double[2 * STEPS + 1];
    for (int n = 0; n < cosines.length; n++) {
      cosines[n] = Math.cos(Math.PI * n / STEPS);
    }
    return cosines;
  }
}
