package lodeswing.analysis.swingcount;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.statistics.Propagation;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.swing.LargeSwing;
import lodeswing.core.swing.SmallSwings;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * What counted swings tell of a rig without its magnets.
 *
 * <p>1. A swing along one axis is that of a physical pendulum: its period at the amplitude theta is
 * that of a small one over the arithmetic-geometric mean of 1 and cos(theta/2) ({@link
 * LargeSwing}). Amplitudes fall by the same part from swing to swing, by what was counted or else
 * by the rig's own loss, and the time of n swings is the sum of theirs.
 *
 * <p>2. With n swings to half the logarithmic decrement is ln 2/n, the quality factor pi n/ln 2,
 * and the small swing without loss shorter by 1/(1 + (ln 2/(2 pi n))^2)^(1/2) (L. D. Landau, E. M.
 * Lifshitz, Mechanics, 3rd ed. (1976), section 25).
 *
 * <p>3. The length is that of the suspension, lengthened as a whole, whose small swing takes as
 * long. Uncertainties are those of {@link Propagation}.
 */
public final class SwingCount {

  private static final int TIME = 0;
  private static final int AMPLITUDE = 1;
  private static final int HALF = 2;
  private static final int LENGTH = 3;
  private static final int GRAVITY = 4;
  private static final int INPUTS = 5;

  /** Length of a first step outwards in the search for a length, as a part of the arm. */
  private static final double STEP = 0.01;

  private static final double GROWTH = 1.3;
  private static final double LONGEST = 20;
  private static final double SHORTEST = -0.98;
  private static final double ACCURACY = 1e-12;

  private final BenchLayout rig;
  private final Readings readings;

  /**
   * A count.
   *
   * @param rig the rig as it is thought to be; magnets on its plate are set aside
   * @param readings what was counted
   */
  public SwingCount(BenchLayout rig, Readings readings) {
    this.rig = rig;
    this.readings = readings;
  }

  /** All that the readings tell. */
  public CountedFigures figures() {
    double[] at = new double[INPUTS];
    double[] errors = new double[INPUTS];
    put(at, errors, TIME, readings.timing().map(Readings.Timing::time));
    put(at, errors, AMPLITUDE, readings.amplitude());
    put(at, errors, HALF, readings.half());
    put(at, errors, LENGTH, Optional.of(readings.length()));
    put(at, errors, GRAVITY, Optional.of(readings.gravity()));
    double[] values = results(at);
    double[] spreads = Propagation.errors(this::results, at, errors);
    Map<Figure, Measured> figures = new EnumMap<>(Figure.class);
    for (Figure figure : Figure.values()) {
      double value = values[figure.place()];
      double spread = spreads[figure.place()];
      if (Double.isFinite(value)) {
        figures.put(
            figure, new Measured(value, Double.isFinite(spread) ? spread : Math.abs(value)));
      }
    }
    return new CountedFigures(figures);
  }

  private static void put(double[] at, double[] errors, int input, Optional<Measured> reading) {
    at[input] = reading.map(Measured::value).orElse(Double.NaN);
    errors[input] = reading.map(Measured::error).orElse(0.0);
  }

  /** Every figure from the inputs; NaN for those that there are none of. */
  double[] results(double[] inputs) {
    double[] results = new double[Figure.values().length];
    double gravity = inputs[GRAVITY];
    Suspension hung = rig.suspension().lengthened(inputs[LENGTH]);
    double expected = 2 * Math.PI / readings.along().rate(hung.body(), gravity);
    double small = smallPeriod(inputs);
    double lengthening = lengthening(small, gravity);
    double half = inputs[HALF];
    double decrement = Math.log(2) / half;
    double rate = decrement / (Double.isNaN(small) ? expected : small);
    set(results, Figure.PERIOD, inputs[TIME] / swings());
    set(results, Figure.SMALL_PERIOD, small);
    set(results, Figure.EXPECTED_PERIOD, expected);
    set(results, Figure.PERIOD_RATIO, small / expected);
    set(results, Figure.LENGTHENING, lengthening);
    set(results, Figure.ARM, readings.along().arm(rig.suspension().body()) + lengthening);
    set(results, Figure.SWINGS_TO_HALF, half);
    set(results, Figure.QUALITY_FACTOR, Math.PI / decrement);
    set(results, Figure.DAMPING_RATE, rate);
    set(results, Figure.LINEAR_LOSS, 2 * rate / readings.along().leverage(hung.body()));
    return results;
  }

  private static void set(double[] results, Figure figure, double value) {
    results[figure.place()] = value;
  }

  private int swings() {
    return readings.timing().map(Readings.Timing::swings).orElse(1);
  }

  /** Part by which the logarithm of the amplitude falls in a swing. */
  private double decrement(double half) {
    if (!Double.isNaN(half)) {
      return Math.log(2) / half;
    }
    SmallSwings own = SmallSwings.of(rig);
    boolean x = readings.along() == Along.X;
    double gamma = (x ? own.lossX() : own.lossY()).orElse(0);
    return gamma / 2 * (x ? own.periodX() : own.periodY());
  }

  /** A small swing without loss, from the time of the counted ones. */
  private double smallPeriod(double[] inputs) {
    double amplitude = Double.isNaN(inputs[AMPLITUDE]) ? 0 : inputs[AMPLITUDE];
    double decrement = decrement(inputs[HALF]);
    double longer = 0;
    for (int k = 0; k < swings(); k++) {
      double angle = amplitude * Math.exp(-decrement * (k + 0.5));
      longer += LargeSwing.period(2 * Math.PI, angle, 0).orElse(Double.NaN);
    }
    double loss = Math.hypot(1, decrement / (2 * Math.PI));
    return inputs[TIME] / longer / loss;
  }

  /** How much longer the suspension is whose small swing takes so long; NaN where none does. */
  private double lengthening(double period, double gravity) {
    if (!(period > 0)) {
      return Double.NaN;
    }
    UnivariateFunction off = longer -> period(longer, gravity) / period - 1;
    double arm = rig.suspension().body().bobArm();
    double[] ends = new double[2];
    double[] values = {off.value(0), off.value(0)};
    for (double out = STEP * arm; out < LONGEST * arm; out *= GROWTH) {
      for (int side = 0; side < 2; side++) {
        double to = side == 0 ? out : Math.max(-out, SHORTEST * arm);
        double value = off.value(to);
        if (values[side] * value <= 0) {
          return new BrentSolver(ACCURACY, ACCURACY * arm)
              .solve(1000, off, Math.min(ends[side], to), Math.max(ends[side], to));
        }
        if (!Double.isNaN(value)) {
          ends[side] = to;
          values[side] = value;
        }
      }
    }
    return Double.NaN;
  }

  private double period(double longer, double gravity) {
    try {
      Suspension hung = rig.suspension().lengthened(longer);
      return 2 * Math.PI / readings.along().rate(hung.body(), gravity);
    } catch (IllegalArgumentException e) {
      return Double.NaN;
    }
  }
}
