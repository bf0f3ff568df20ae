package lodeswing.core.integrate.simd;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;
import static lodeswing.core.integrate.simd.Shape.DOUBLES;
import static lodeswing.core.integrate.simd.Shape.WIDTH;
import static lodeswing.core.integrate.simd.Shape.all;

import jdk.incubator.vector.DoubleVector;
import jdk.incubator.vector.LongVector;
import jdk.incubator.vector.VectorMask;
import jdk.incubator.vector.VectorOperators;
import lodeswing.core.integrate.lane.LaneBlock;
import lodeswing.core.integrate.lane.Plan;
import lodeswing.core.integrate.lane.RungeKuttaSlots;
import lodeswing.core.integrate.lane.StepRule;
import lodeswing.core.integrate.lane.Watch;

/** Errors, step sizes and acceptance on vectors. */
final class VectorSteps {

  private static final DoubleVector ONE = all(1.0);
  private static final DoubleVector ZERO = all(0.0);
  private static final DoubleVector GREATEST_ERROR = all(StepRule.GREATEST_ERROR);
  private static final DoubleVector SMALLEST_ERROR = all(StepRule.SMALLEST_ERROR);
  private static final DoubleVector LEAST = all(StepRule.LEAST);
  private static final DoubleVector GREATEST = all(StepRule.GREATEST);
  private static final DoubleVector MAGIC = all(StepRule.MAGIC);
  private static final DoubleVector BIAS = all(StepRule.BIAS);
  private static final DoubleVector PER_OCTAVE = all(StepRule.PER_OCTAVE);
  private static final DoubleVector OCTAVE = all(1 / StepRule.PER_OCTAVE);
  private static final DoubleVector HUNDREDTH = all(0.01);
  private static final LongVector MAGIC_BITS = all(StepRule.MAGIC_BITS);

  private final double[] s;

  VectorSteps(double[] slots) {
    s = slots;
  }

  private DoubleVector at(int slot) {
    return DoubleVector.fromArray(DOUBLES, s, slot);
  }

  void measure(StepRule rule) {
    DoubleVector perRate = all(rule.perRateSquared());
    DoubleVector relative = all(rule.relative() * rule.relative());
    DoubleVector absolute = all(rule.absolute() * rule.absolute());
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector scale = relative.fma(norm(perRate, i), absolute);
      norm(perRate, LaneBlock.ERRORS + i).div(scale).intoArray(s, LaneBlock.ERROR + i);
    }
  }

  void measureTwo(StepRule rule) {
    DoubleVector perRate = all(rule.perRateSquared());
    DoubleVector relative = all(rule.relative() * rule.relative());
    DoubleVector absolute = all(rule.absolute() * rule.absolute());
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector scale = relative.fma(norm(perRate, i), absolute);
      DoubleVector first = norm(perRate, LaneBlock.ERRORS + i).div(scale);
      DoubleVector second = norm(perRate, RungeKuttaSlots.SECOND + i).div(scale);
      DoubleVector both = HUNDREDTH.fma(second, first);
      both = ONE.blend(both, both.compare(VectorOperators.GT, SMALLEST_ERROR));
      first.mul(first.div(both)).intoArray(s, LaneBlock.ERROR + i);
    }
  }

  private DoubleVector norm(DoubleVector perRate, int slot) {
    DoubleVector a = at(slot);
    DoubleVector b = at(slot + LANES);
    DoubleVector c = at(slot + 2 * LANES);
    DoubleVector d = at(slot + 3 * LANES);
    return perRate.fma(c.fma(c, d.mul(d)), a.fma(a, b.mul(b)));
  }

  void control(StepRule rule) {
    DoubleVector integral = all(rule.integral() / 2);
    DoubleVector proportional = all(-rule.proportional() / 2);
    DoubleVector plain = all(-rule.plain() / 2);
    DoubleVector safety = all(rule.logSafety());
    for (int i = 0; i < LANES; i += WIDTH) {
      DoubleVector raw = at(LaneBlock.ERROR + i);
      VectorMask<Double> accepted = raw.compare(VectorOperators.LE, ONE);
      DoubleVector error =
          GREATEST_ERROR.blend(raw, raw.compare(VectorOperators.LT, GREATEST_ERROR));
      error = SMALLEST_ERROR.blend(error, error.compare(VectorOperators.GT, SMALLEST_ERROR));
      DoubleVector log = log2(error);
      DoubleVector free =
          plain
              .mul(log)
              .blend(integral.fma(at(LaneBlock.LOG + i), proportional.mul(log)), accepted);
      DoubleVector factor = exp2(free.add(safety));
      factor = LEAST.blend(factor, factor.compare(VectorOperators.GT, LEAST));
      DoubleVector most = at(LaneBlock.MOST + i);
      factor = most.blend(factor, factor.compare(VectorOperators.LT, most));
      DoubleVector tried = at(LaneBlock.TRIED + i);
      tried.mul(factor).intoArray(s, LaneBlock.SIZE + i);
      ONE.blend(GREATEST, accepted).intoArray(s, LaneBlock.MOST + i);
      at(LaneBlock.LOG + i).blend(log, accepted).intoArray(s, LaneBlock.LOG + i);
      DoubleVector time = at(LaneBlock.TIME + i);
      time.blend(time.add(tried), accepted).intoArray(s, LaneBlock.TIME + i);
    }
  }

  private static DoubleVector log2(DoubleVector x) {
    return x.reinterpretAsLongs()
        .lanewise(VectorOperators.LSHR, 20)
        .or(MAGIC_BITS)
        .reinterpretAsDoubles()
        .sub(MAGIC)
        .mul(OCTAVE)
        .sub(BIAS);
  }

  private static DoubleVector exp2(DoubleVector x) {
    return x.add(BIAS)
        .fma(PER_OCTAVE, MAGIC)
        .reinterpretAsLongs()
        .lanewise(VectorOperators.LSHL, 20)
        .reinterpretAsDoubles();
  }

  void advance() {
    for (int i = 0; i < LANES; i += WIDTH) {
      VectorMask<Double> accepted = at(LaneBlock.ERROR + i).compare(VectorOperators.LE, ONE);
      move(i, accepted);
      move(i + LANES, accepted);
      move(i + 2 * LANES, accepted);
      move(i + 3 * LANES, accepted);
      move(i + 4 * LANES, accepted);
      move(i + 5 * LANES, accepted);
      move(i + 6 * LANES, accepted);
    }
  }

  private void move(int slot, VectorMask<Double> accepted) {
    at(slot).blend(at(LaneBlock.NEW + slot), accepted).intoArray(s, slot);
  }

  void attend(Plan plan, Watch watch) {
    plan.add(() -> attend(watch));
    if (watch.reach() < Double.MAX_VALUE) {
      plan.add(() -> attendReach(watch));
    }
  }

  private void attend(Watch watch) {
    DoubleVector sealBelow = all(watch.everyStep() ? Double.POSITIVE_INFINITY : watch.sealBelow());
    DoubleVector until = all(watch.until());
    DoubleVector smallest = all(watch.smallest());
    for (int i = 0; i < LANES; i += WIDTH) {
      VectorMask<Double> accepted = at(LaneBlock.ERROR + i).compare(VectorOperators.LE, ONE);
      DoubleVector calls = ZERO;
      calls = calls.blend(ONE, at(LaneBlock.NEW_ENERGY + i).compare(VectorOperators.LT, sealBelow));
      calls = calls.blend(ONE, at(LaneBlock.TIME + i).compare(VectorOperators.GE, until));
      DoubleVector stuck =
          ZERO.blend(ONE, at(LaneBlock.SIZE + i).compare(VectorOperators.LT, smallest));
      stuck.blend(calls, accepted).intoArray(s, LaneBlock.ATTENTION + i);
    }
  }

  /** Marks lanes beyond the reach as well. */
  private void attendReach(Watch watch) {
    DoubleVector reach = all(watch.reach());
    for (int i = 0; i < LANES; i += WIDTH) {
      VectorMask<Double> accepted = at(LaneBlock.ERROR + i).compare(VectorOperators.LE, ONE);
      VectorMask<Double> far =
          at(LaneBlock.NEW + i)
              .abs()
              .compare(VectorOperators.GT, reach)
              .or(at(LaneBlock.NEW + LANES + i).abs().compare(VectorOperators.GT, reach))
              .and(accepted);
      at(LaneBlock.ATTENTION + i).blend(ONE, far).intoArray(s, LaneBlock.ATTENTION + i);
    }
  }
}
