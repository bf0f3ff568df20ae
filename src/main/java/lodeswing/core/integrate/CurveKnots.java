package lodeswing.core.integrate;

import java.util.Arrays;
import lodeswing.core.geometry.HermiteCubic;
import lodeswing.core.geometry.PathCurve;
import lodeswing.core.motion.Motion;

/**
 * Takes the knots of a path's curve as the steps go by: the ends of the steps, and as many places
 * between them as the curve needs to keep to the path. It depends on no interval that anyone asked
 * for.
 */
public final class CurveKnots {

  /** Distance of curve and path, as a share of the swing: below what any picture shows. */
  private static final double SHARE = 2e-5;

  /** Halvings of a step at most. */
  private static final int MOST_HALVINGS = 6;

  /** Knots at most, about: none follow each other more closely than this part of the duration. */
  private static final int MOST = 100_000;

  private final Motion motion;
  private final double duration;
  private final double closest;
  private final double[] state = new double[4];
  private final double[] plan = new double[4];
  private final double[] cubic = new double[2];
  private double swing;
  private double[][] columns = new double[5][256];
  private int taken;

  /**
   * The knots of one path.
   *
   * @param motion what moves
   * @param duration how long the path is taken, from 0
   * @param start its state at time 0
   */
  public CurveKnots(Motion motion, double duration, double[] start) {
    this.motion = motion;
    this.duration = duration;
    this.closest = duration / MOST;
    motion.toPlan(start, plan);
    swing = swing(plan);
    put(0, plan);
  }

  /** Takes what a step up to a time adds. */
  public void take(Step step, double until) {
    double to = Math.min(until, duration);
    if (!(to > last())) {
      return;
    }
    double[] end = planAt(step, to);
    swing = Math.max(swing, swing(end));
    if (to - last() >= closest || to == duration || to < step.endTime()) {
      if (last() < step.startTime()) {
        put(step.startTime(), planAt(step, step.startTime()));
      }
      refine(step, to, end, MOST_HALVINGS);
    }
  }

  /** Ends the curve with a bob that no longer moves. */
  public void stay(double[] where) {
    if (last() < duration) {
      double[] still = new double[4];
      motion.toPlan(new double[] {where[0], where[1], 0, 0}, still);
      put(duration, still);
    }
  }

  /** The curve through the knots taken so far. */
  public PathCurve curve() {
    double[][] cut = new double[columns.length][];
    Arrays.setAll(cut, c -> Arrays.copyOf(columns[c], taken));
    return new PathCurve(cut[0], cut[1], cut[2], cut[3], cut[4]);
  }

  private double last() {
    return columns[0][taken - 1];
  }

  private double swing(double[] at) {
    return Math.max(Math.hypot(at[0], at[1]), Math.hypot(at[2], at[3]) / motion.naturalRate());
  }

  /** Puts the knots from the last one to a time, the halves first where one piece does not do. */
  private void refine(Step step, double to, double[] end, int halvings) {
    double from = last();
    if (halvings > 0 && to - from > 2 * closest && !keeps(step, from, to, end)) {
      double half = 0.5 * (from + to);
      refine(step, half, planAt(step, half), halvings - 1);
      refine(step, to, end, halvings - 1);
    } else {
      put(to, end);
    }
  }

  private boolean keeps(Step step, double from, double to, double[] end) {
    int a = taken - 1;
    double h = to - from;
    for (int quarter = 1; quarter < 4; quarter++) {
      double time = from + h * quarter / 4;
      step.at(time, state);
      motion.toPlan(state, plan);
      for (int c = 0; c < 2; c++) {
        cubic[c] =
            HermiteCubic.value(
                columns[1 + c][a], h * columns[3 + c][a], end[c], h * end[2 + c], quarter / 4.0);
      }
      if (!(Math.hypot(cubic[0] - plan[0], cubic[1] - plan[1]) <= SHARE * swing)) {
        return false;
      }
    }
    return true;
  }

  private double[] planAt(Step step, double time) {
    double[] at = new double[4];
    step.at(time, state);
    motion.toPlan(state, at);
    return at;
  }

  private void put(double time, double[] at) {
    if (taken == columns[0].length) {
      for (int c = 0; c < columns.length; c++) {
        columns[c] = Arrays.copyOf(columns[c], 2 * taken);
      }
    }
    columns[0][taken] = time;
    for (int c = 0; c < 4; c++) {
      columns[1 + c][taken] = at[c];
    }
    taken++;
  }
}
