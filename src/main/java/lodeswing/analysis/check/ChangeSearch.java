package lodeswing.analysis.check;

import java.util.Optional;
import java.util.function.DoublePredicate;
import java.util.function.DoubleUnaryOperator;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.exception.TooManyEvaluationsException;

/**
 * The smallest change of one figure that passes: steps that double until it does, Brent's root
 * between the last two (R. P. Brent, Algorithms for Minimization without Derivatives, 1973, chapter
 * 4), and from there the next value that a hand can set, tried again in full.
 */
final class ChangeSearch {

  private static final int MOST_STRIDES = 14;
  private static final int MOST_EVALUATIONS = 16;
  private static final double STEP_SHARE = 0.02;
  private static final int TRIED_AGAIN = 4;

  private final Setting setting;
  private final int direction;
  private final DoubleUnaryOperator margin;

  /**
   * A search.
   *
   * @param setting the figure
   * @param direction up (1) or down (-1), in the figure's own sense
   * @param margin room to where good begins at a value, NaN where nobody could build it
   */
  ChangeSearch(Setting setting, int direction, DoubleUnaryOperator margin) {
    this.setting = setting;
    this.direction = direction;
    this.margin = margin;
  }

  /**
   * Runs it.
   *
   * @param marginNow room of the rig as it is, below 0
   * @param passes tries a value in full
   */
  Optional<Double> run(double marginNow, DoublePredicate passes) {
    if (setting.from().isEmpty() || Double.isNaN(marginNow)) {
      return Optional.empty();
    }
    double failing = setting.from().getAsDouble();
    double failed = marginNow;
    double stride = setting.step();
    boolean blocked = false;
    for (int n = 0; n < MOST_STRIDES; n++) {
      double next = towards(failing, stride);
      if (Math.abs(next - failing) < setting.step() / 2) {
        return Optional.empty();
      }
      double found = margin.applyAsDouble(next);
      if (Double.isNaN(found)) {
        blocked = true;
        stride /= 2;
        if (stride < setting.step()) {
          return Optional.empty();
        }
      } else if (found >= 0) {
        return settable(root(failing, failed, next, found), passes);
      } else {
        failing = next;
        failed = found;
        stride *= blocked ? 1 : 2;
      }
    }
    return Optional.empty();
  }

  /** A stride on; where the bound is nearer, half the way to it. */
  private double towards(double from, double stride) {
    double bound = direction > 0 ? setting.most() : setting.least();
    boolean beyond = direction * (bound - from) < stride;
    return Setting.tidy(beyond ? (from + bound) / 2 : from + direction * stride);
  }

  private double within(double value) {
    return Setting.tidy(Math.max(setting.least(), Math.min(setting.most(), value)));
  }

  private double root(double failing, double failed, double passing, double passed) {
    if (passed == 0 || !(failed < 0)) {
      return passing;
    }
    double low = Math.min(failing, passing);
    double high = Math.max(failing, passing);
    var solver = new BrentSolver(1e-12, STEP_SHARE * setting.step());
    try {
      return solver.solve(
          MOST_EVALUATIONS,
          value -> {
            double found = margin.applyAsDouble(value);
            return Double.isNaN(found) ? -1 : found;
          },
          low,
          high);
    } catch (TooManyEvaluationsException e) {
      return passing;
    }
  }

  private Optional<Double> settable(double root, DoublePredicate passes) {
    // A step back first, since a root is known to a part of a step only.
    double value = setting.rounded(root - direction * 0.1 * setting.step(), direction);
    for (int n = 0; n < TRIED_AGAIN; n++) {
      if (value == within(value) && passes.test(value)) {
        return Optional.of(value);
      }
      value = Setting.tidy(value + direction * setting.step());
    }
    return Optional.empty();
  }
}
