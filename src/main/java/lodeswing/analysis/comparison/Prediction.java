package lodeswing.analysis.comparison;

import lodeswing.core.integrate.GrowthBeside;
import lodeswing.core.integrate.Step;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Motion;
import lodeswing.core.recording.Recording;
import lodeswing.core.rig.Release;

/**
 * Sees the steps of the foretold path: where the bob would be at the recorded times, how far it may
 * be from there since its start is not exactly known, and how far for the computation's own error.
 *
 * <p>One path, one thread.
 */
public final class Prediction {

  /** Part of a state over which the way from plan to coordinates is measured. */
  private static final double SPAN = 1e-6;

  private static final int N = 4;

  private final Motion motion;
  private final Recording recording;
  private final Start start;
  private final double perCoordinate;
  private final GrowthBeside beside;
  private final double[] release;
  private final double[] x;
  private final double[] y;
  private final double[][] covariance;
  private final double[] computed;
  private final double[] state = new double[N];
  private final double[] plan = new double[N];
  private final double[] coordinates = new double[3];
  private final double[][] slopes = new double[2][2];
  private double reached;
  private int taken;

  /**
   * A path that has not begun.
   *
   * @param landscape where it goes
   * @param recording whose times count
   * @param start from where
   * @param state the start's state
   */
  public Prediction(Landscape landscape, Recording recording, Start start, double[] state) {
    this.motion = landscape.motion();
    this.recording = recording;
    this.start = start;
    this.perCoordinate = landscape.planScale().perCoordinate();
    this.beside = new GrowthBeside(motion, landscape.tableErrors().acceleration());
    int count = recording.count() - start.stretch().first();
    this.x = new double[count];
    this.y = new double[count];
    this.covariance = new double[3][count];
    this.computed = new double[count];
    this.release = inCoordinates(start.covariance(), start.release());
    System.arraycopy(state, 0, this.state, 0, N);
    while (taken < count && !(time(taken) > 0)) {
      put();
    }
  }

  /** Time of a place after the start. */
  private double time(int i) {
    return recording.since(start.stretch().first() + i) - start.time();
  }

  /**
   * Looks at a step.
   *
   * @param step the next one
   * @param until up to when the model holds in it
   */
  public void look(Step step, double until) {
    while (taken < x.length && time(taken) <= until) {
      double at = Math.max(time(taken), reached);
      flow(step, at, 0);
      step.at(Math.max(at, step.startTime()), state);
      put();
    }
    if (taken < x.length) {
      flow(step, until, step.localError());
    }
  }

  private void flow(Step step, double to, double localError) {
    if (to > reached) {
      beside.advance(step, reached, to, localError);
      reached = to;
    }
  }

  private void put() {
    motion.toPlan(state, plan);
    x[taken] = plan[0];
    y[taken] = plan[1];
    beside.growth().positionCovariance(release, coordinates);
    toPlan();
    computed[taken] = perCoordinate * beside.growth().positionError();
    taken++;
  }

  /** The covariance in plan, by the slopes of the way there. */
  private void toPlan() {
    double[] above = new double[N];
    double[] below = new double[N];
    for (int k = 0; k < 2; k++) {
      double[] moved = state.clone();
      moved[k] += SPAN;
      motion.toPlan(moved, above);
      moved[k] -= 2 * SPAN;
      motion.toPlan(moved, below);
      slopes[0][k] = (above[0] - below[0]) / (2 * SPAN);
      slopes[1][k] = (above[1] - below[1]) / (2 * SPAN);
    }
    covariance[0][taken] = both(0, 0);
    covariance[1][taken] = both(0, 1);
    covariance[2][taken] = both(1, 1);
  }

  private double both(int i, int j) {
    double[] one = slopes[i];
    double[] other = slopes[j];
    return one[0] * coordinates[0] * other[0]
        + (one[0] * other[1] + one[1] * other[0]) * coordinates[1]
        + one[1] * coordinates[2] * other[1];
  }

  /** Fills the rest with a bob that friction holds where it is. */
  public void stay() {
    while (taken < x.length) {
      put();
    }
  }

  /** The start's covariance in the motion's coordinates. */
  private double[] inCoordinates(double[] covariance, Release from) {
    double rate = motion.naturalRate();
    double size = Math.max(Math.hypot(from.x(), from.y()), SPAN * perCoordinate);
    double[] slopes = new double[N * N];
    for (int k = 0; k < N; k++) {
      double step = SPAN * Math.max(size, perCoordinate);
      double[] above = moved(from, k, step * (k < 2 ? 1 : rate));
      double[] below = moved(from, k, -step * (k < 2 ? 1 : rate));
      for (int i = 0; i < N; i++) {
        slopes[i * N + k] = (above[i] - below[i]) / (2 * step) / (i < 2 ? 1 : rate);
      }
    }
    double[] half = product(slopes, covariance, false);
    return product(half, slopes, true);
  }

  private double[] moved(Release from, int component, double by) {
    double[] at = {from.x(), from.y(), from.vx(), from.vy()};
    at[component] += by;
    return motion
        .toState(new Release(at[0], at[1], at[2], at[3]))
        .orElseGet(
            () ->
                motion
                    .toState(from)
                    .orElseThrow(() -> new IllegalStateException("a start has a state")));
  }

  private static double[] product(double[] a, double[] b, boolean turned) {
    double[] out = new double[N * N];
    for (int i = 0; i < N; i++) {
      for (int j = 0; j < N; j++) {
        for (int k = 0; k < N; k++) {
          out[i * N + j] += a[i * N + k] * (turned ? b[j * N + k] : b[k * N + j]);
        }
      }
    }
    return out;
  }

  /** How many of the recorded places, from the start's first one on, the path has reached. */
  int count() {
    return taken;
  }

  double x(int i) {
    return x[i];
  }

  double y(int i) {
    return y[i];
  }

  /** Standard deviation of the place, along its longest axis, from the start's error [m]. */
  double deviation(int i) {
    double half = (covariance[0][i] - covariance[2][i]) / 2;
    double mean = (covariance[0][i] + covariance[2][i]) / 2;
    return Math.sqrt(mean + Math.hypot(half, covariance[1][i]));
  }

  /**
   * Size of a distance from the foretold place in standard deviations: Mahalanobis' distance.
   *
   * @param dx distance along x [m]
   * @param dy distance along y [m]
   * @param more variance of each coordinate beside that of the start's error [m^2]
   */
  double deviations(int i, double dx, double dy, double more) {
    double a = covariance[0][i] + more;
    double b = covariance[1][i];
    double d = covariance[2][i] + more;
    return Math.sqrt((d * dx * dx - 2 * b * dx * dy + a * dy * dy) / (a * d - b * b));
  }

  /** Error of the place from computing [m]. */
  double computedError(int i) {
    return computed[i];
  }
}
