package lodeswing.core.integrate.lane;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;

import lodeswing.core.integrate.ExponentialSeries;
import lodeswing.core.motion.Motion;
import lodeswing.core.motion.TextbookMotion;

/** Lane arithmetic one lane after the other: what runs without the vector module. */
public final class ScalarLanes implements LaneArithmetic {

  private final double[] s;
  private final double[] out = new double[3];

  /**
   * Arithmetic on a new block.
   *
   * @param slots numbers in the block
   */
  public ScalarLanes(int slots) {
    s = new double[slots];
  }

  @Override
  public double[] slots() {
    return s;
  }

  @Override
  public void sum(Plan plan, Row row) {
    plan.add(() -> sum(row));
  }

  private void sum(Row row) {
    int to = row.to();
    int first = row.slot(0);
    double weight = row.weight(0);
    if (row.base() == Row.NO_BASE) {
      for (int i = 0; i < row.numbers(); i++) {
        s[to + i] = weight * s[first + i];
      }
    } else {
      int base = row.base();
      for (int i = 0; i < row.numbers(); i++) {
        s[to + i] = Math.fma(weight, s[first + i], s[base + i]);
      }
    }
    for (int k = 1; k < row.size(); k++) {
      add(row.weight(k), row.slot(k), to, row.numbers());
    }
  }

  private void add(double weight, int slot, int to, int numbers) {
    for (int i = 0; i < numbers; i++) {
      s[to + i] = Math.fma(weight, s[slot + i], s[to + i]);
    }
  }

  @Override
  public void beginNystrom(Plan plan, double halfDrag, double spring, double greatest) {
    plan.add(() -> beginNystrom(halfDrag, spring, greatest));
  }

  private void beginNystrom(double halfDrag, double spring, double greatest) {
    double rest = halfDrag * halfDrag - spring;
    for (int i = 0; i < LANES; i++) {
      double size = s[LaneBlock.SIZE + i];
      double h = size < greatest ? size : greatest;
      double square = h * h;
      s[LaneBlock.TRIED + i] = h;
      s[NystromSlots.SQUARE + i] = square;
      for (int c = 0; c < 2 * LANES; c += LANES) {
        double q = s[LaneBlock.Q0 + c + i];
        s[NystromSlots.FIRST + c + i] = h * Math.fma(halfDrag, q, s[LaneBlock.V0 + c + i]);
        s[NystromSlots.STAGES + c + i] = square * Math.fma(rest, q, s[LaneBlock.F0 + c + i]);
      }
    }
  }

  @Override
  public void exponentials(Plan plan, double halfDrag) {
    plan.add(() -> exponentials(halfDrag));
  }

  private void exponentials(double halfDrag) {
    double perSize = halfDrag / 20;
    for (int i = 0; i < LANES; i++) {
      double x = perSize * s[LaneBlock.TRIED + i];
      double z = x * x;
      double even = ExponentialSeries.even(z);
      double odd = x * ExponentialSeries.oddPart(z);
      powers(even + odd, NystromSlots.GROW + i);
      powers(even - odd, NystromSlots.DECAY + i);
    }
  }

  /** Powers 1, 2, 6, 10, 14, 18, 20. */
  private void powers(double e, int to) {
    double e2 = e * e;
    double e4 = e2 * e2;
    double p = e4 * e2;
    s[to] = e;
    s[to + LANES] = e2;
    s[to + 2 * LANES] = p;
    p *= e4;
    s[to + 3 * LANES] = p;
    p *= e4;
    s[to + 4 * LANES] = p;
    p *= e4;
    s[to + 5 * LANES] = p;
    s[to + 6 * LANES] = p * e2;
  }

  @Override
  public void attract(Plan plan, TextbookMotion motion, int time, double rest, int to) {
    plan.add(() -> attract(motion, time, rest, to));
  }

  private void attract(TextbookMotion motion, int time, double rest, int to) {
    int decay = NystromSlots.DECAY + time * LANES;
    int grow = NystromSlots.GROW + time * LANES;
    for (int i = 0; i < LANES; i++) {
      double y0 = s[NystromSlots.PLACE + i];
      double y1 = s[NystromSlots.PLACE + LANES + i];
      double d = s[decay + i];
      motion.attraction(d * y0, d * y1, out);
      double g = s[grow + i];
      double square = s[NystromSlots.SQUARE + i];
      s[to + i] = square * Math.fma(g, out[0], rest * y0);
      s[to + LANES + i] = square * Math.fma(g, out[1], rest * y1);
    }
  }

  @Override
  public void arrive(Plan plan, double halfDrag) {
    plan.add(() -> arrive(halfDrag));
  }

  private void arrive(double halfDrag) {
    for (int i = 0; i < LANES; i++) {
      double shrink = s[NystromSlots.DECAY + 6 * LANES + i];
      double perStep = shrink / s[LaneBlock.TRIED + i];
      s[NystromSlots.PER_STEP + i] = perStep;
      for (int c = 0; c < 2 * LANES; c += LANES) {
        double q = shrink * s[NystromSlots.PLACE + c + i];
        s[LaneBlock.NEW + c + i] = q;
        s[LaneBlock.NEW + 2 * LANES + c + i] =
            Math.fma(-halfDrag, q, perStep * s[NystromSlots.SPEED + c + i]);
      }
    }
  }

  @Override
  public void attractAtEnd(Plan plan, TextbookMotion motion) {
    plan.add(() -> attractAtEnd(motion));
  }

  private void attractAtEnd(TextbookMotion motion) {
    double spring = motion.stiffness();
    for (int i = 0; i < LANES; i++) {
      double q0 = s[LaneBlock.NEW + i];
      double q1 = s[LaneBlock.NEW + LANES + i];
      double v0 = s[LaneBlock.NEW + 2 * LANES + i];
      double v1 = s[LaneBlock.NEW + 3 * LANES + i];
      motion.attraction(q0, q1, out);
      s[LaneBlock.NEW_F + i] = out[0];
      s[LaneBlock.NEW_F + LANES + i] = out[1];
      double place = Math.fma(q0, q0, q1 * q1);
      double speed = Math.fma(v0, v0, v1 * v1);
      s[LaneBlock.NEW_ENERGY + i] = Math.fma(0.5, Math.fma(spring, place, speed), -out[2]);
    }
  }

  @Override
  public void lastStage(Plan plan, double rest) {
    plan.add(() -> lastStage(rest));
  }

  private void lastStage(double rest) {
    int to = NystromSlots.stage(8);
    for (int i = 0; i < LANES; i++) {
      double factor = s[NystromSlots.SQUARE + i] * s[NystromSlots.GROW + 6 * LANES + i];
      for (int c = 0; c < 2 * LANES; c += LANES) {
        s[to + c + i] =
            factor * Math.fma(rest, s[LaneBlock.NEW + c + i], s[LaneBlock.NEW_F + c + i]);
      }
    }
  }

  @Override
  public void errors(Plan plan, double halfDrag) {
    plan.add(() -> errors(halfDrag));
  }

  private void errors(double halfDrag) {
    for (int i = 0; i < LANES; i++) {
      double shrink = s[NystromSlots.DECAY + 6 * LANES + i];
      double perStep = s[NystromSlots.PER_STEP + i];
      for (int c = 0; c < 2 * LANES; c += LANES) {
        double e = shrink * s[LaneBlock.ERRORS + c + i];
        s[LaneBlock.ERRORS + c + i] = e;
        int speed = LaneBlock.ERRORS + 2 * LANES + c + i;
        s[speed] = Math.fma(-halfDrag, e, perStep * s[speed]);
      }
    }
  }

  @Override
  public void beginRungeKutta(Plan plan) {
    plan.add(() -> beginRungeKutta());
  }

  private void beginRungeKutta() {
    for (int i = 0; i < LANES; i++) {
      double h = s[LaneBlock.SIZE + i];
      s[LaneBlock.TRIED + i] = h;
      for (int c = 0; c < 2 * LANES; c += LANES) {
        s[RungeKuttaSlots.STAGES + c + i] = h * s[LaneBlock.V0 + c + i];
        s[RungeKuttaSlots.STAGES + 2 * LANES + c + i] = h * s[LaneBlock.F0 + c + i];
      }
    }
  }

  @Override
  public void swing(Plan plan, Motion motion, int to) {
    plan.add(() -> swing(motion, to));
  }

  private void swing(Motion motion, int to) {
    for (int i = 0; i < LANES; i++) {
      int at = RungeKuttaSlots.PLACE + i;
      double v0 = s[at + 2 * LANES];
      double v1 = s[at + 3 * LANES];
      motion.acceleration(s[at], s[at + LANES], v0, v1, out);
      double h = s[LaneBlock.TRIED + i];
      s[to + i] = h * v0;
      s[to + LANES + i] = h * v1;
      s[to + 2 * LANES + i] = h * out[0];
      s[to + 3 * LANES + i] = h * out[1];
    }
  }

  @Override
  public void swingAtEnd(Plan plan, Motion motion) {
    if (motion instanceof TextbookMotion plane) {
      attractAtEnd(plan, plane);
      plan.add(() -> accelerateAtEnd(plane));
    } else {
      plan.add(() -> swingAtEnd(motion));
    }
  }

  /** From the attractors' force at the end to the acceleration there. */
  private void accelerateAtEnd(TextbookMotion motion) {
    for (int i = 0; i < LANES; i++) {
      for (int c = 0; c < 2 * LANES; c += LANES) {
        double force =
            Math.fma(-motion.stiffness(), s[LaneBlock.NEW + c + i], s[LaneBlock.NEW_F + c + i]);
        s[LaneBlock.NEW_F + c + i] =
            Math.fma(-motion.drag(), s[LaneBlock.NEW + 2 * LANES + c + i], force);
      }
    }
  }

  private void swingAtEnd(Motion motion) {
    for (int i = 0; i < LANES; i++) {
      int at = LaneBlock.NEW + i;
      double q0 = s[at];
      double q1 = s[at + LANES];
      double v0 = s[at + 2 * LANES];
      double v1 = s[at + 3 * LANES];
      motion.acceleration(q0, q1, v0, v1, out);
      s[LaneBlock.NEW_F + i] = out[0];
      s[LaneBlock.NEW_F + LANES + i] = out[1];
      s[LaneBlock.NEW_ENERGY + i] = motion.energy(q0, q1, v0, v1);
    }
  }

  @Override
  public void lastStageOfFour(Plan plan, int to) {
    plan.add(() -> lastStageOfFour(to));
  }

  private void lastStageOfFour(int to) {
    for (int i = 0; i < LANES; i++) {
      double h = s[LaneBlock.TRIED + i];
      for (int c = 0; c < 2 * LANES; c += LANES) {
        s[to + c + i] = h * s[LaneBlock.NEW + 2 * LANES + c + i];
        s[to + 2 * LANES + c + i] = h * s[LaneBlock.NEW_F + c + i];
      }
    }
  }

  @Override
  public void measure(Plan plan, StepRule rule) {
    plan.add(() -> measure(rule));
  }

  private void measure(StepRule rule) {
    for (int i = 0; i < LANES; i++) {
      s[LaneBlock.ERROR + i] = norm(rule, LaneBlock.ERRORS + i) / scale(rule, i);
    }
  }

  @Override
  public void measureTwo(Plan plan, StepRule rule) {
    plan.add(() -> measureTwo(rule));
  }

  private void measureTwo(StepRule rule) {
    for (int i = 0; i < LANES; i++) {
      double scale = scale(rule, i);
      double first = norm(rule, LaneBlock.ERRORS + i) / scale;
      double second = norm(rule, RungeKuttaSlots.SECOND + i) / scale;
      double both = Math.fma(0.01, second, first);
      // Both are zero where the bob hangs still.
      s[LaneBlock.ERROR + i] = first * (first / (both > StepRule.SMALLEST_ERROR ? both : 1));
    }
  }

  /** Square of the error that is allowed. */
  private double scale(StepRule rule, int i) {
    double relative = rule.relative() * rule.relative();
    return Math.fma(relative, norm(rule, i), rule.absolute() * rule.absolute());
  }

  /** Square of four numbers' size in phase space. */
  private double norm(StepRule rule, int at) {
    double a = s[at];
    double b = s[at + LANES];
    double c = s[at + 2 * LANES];
    double d = s[at + 3 * LANES];
    return Math.fma(rule.perRateSquared(), Math.fma(c, c, d * d), Math.fma(a, a, b * b));
  }

  @Override
  public void control(Plan plan, StepRule rule) {
    plan.add(() -> control(rule));
  }

  private void control(StepRule rule) {
    double logSafety = rule.logSafety();
    for (int i = 0; i < LANES; i++) {
      double raw = s[LaneBlock.ERROR + i];
      boolean accepted = raw <= 1;
      double error = raw < StepRule.GREATEST_ERROR ? raw : StepRule.GREATEST_ERROR;
      error = error > StepRule.SMALLEST_ERROR ? error : StepRule.SMALLEST_ERROR;
      double log = log2(error);
      double free =
          accepted
              ? Math.fma(rule.integral() / 2, s[LaneBlock.LOG + i], -rule.proportional() / 2 * log)
              : -rule.plain() / 2 * log;
      double factor = exp2(free + logSafety);
      factor = factor > StepRule.LEAST ? factor : StepRule.LEAST;
      double most = s[LaneBlock.MOST + i];
      factor = factor < most ? factor : most;
      double tried = s[LaneBlock.TRIED + i];
      s[LaneBlock.SIZE + i] = tried * factor;
      s[LaneBlock.MOST + i] = accepted ? StepRule.GREATEST : 1;
      if (accepted) {
        s[LaneBlock.LOG + i] = log;
        s[LaneBlock.TIME + i] += tried;
      }
    }
  }

  /** Binary logarithm, linear between powers of two. */
  private static double log2(double x) {
    long shifted = (Double.doubleToRawLongBits(x) >>> 20) | StepRule.MAGIC_BITS;
    return (Double.longBitsToDouble(shifted) - StepRule.MAGIC) * (1 / StepRule.PER_OCTAVE)
        - StepRule.BIAS;
  }

  /** Its inverse. */
  private static double exp2(double x) {
    double shifted = Math.fma(x + StepRule.BIAS, StepRule.PER_OCTAVE, StepRule.MAGIC);
    return Double.longBitsToDouble(Double.doubleToRawLongBits(shifted) << 20);
  }

  @Override
  public void attend(Plan plan, Watch watch) {
    plan.add(() -> attend(watch));
  }

  private void attend(Watch watch) {
    for (int i = 0; i < LANES; i++) {
      boolean call =
          s[LaneBlock.ERROR + i] <= 1 ? calls(watch, i) : s[LaneBlock.SIZE + i] < watch.smallest();
      s[LaneBlock.ATTENTION + i] = call ? 1 : 0;
    }
  }

  private boolean calls(Watch watch, int i) {
    return watch.everyStep()
        || s[LaneBlock.NEW_ENERGY + i] < watch.sealBelow()
        || s[LaneBlock.TIME + i] >= watch.until()
        || Math.abs(s[LaneBlock.NEW + i]) > watch.reach()
        || Math.abs(s[LaneBlock.NEW + LANES + i]) > watch.reach();
  }

  @Override
  public void advance(Plan plan) {
    plan.add(() -> advance());
  }

  private void advance() {
    for (int i = 0; i < LANES; i++) {
      if (s[LaneBlock.ERROR + i] <= 1) {
        for (int c = 0; c < 7 * LANES; c += LANES) {
          s[c + i] = s[LaneBlock.NEW + c + i];
        }
      }
    }
  }
}
