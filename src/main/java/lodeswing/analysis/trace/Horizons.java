package lodeswing.analysis.trace;

import java.util.OptionalDouble;
import lodeswing.core.integrate.ErrorGrowth;
import lodeswing.core.integrate.GrowthBeside;
import lodeswing.core.integrate.Step;
import lodeswing.core.landscape.Landscape;

/** Until when a path is right, and until when a hand's release foretells it. */
final class Horizons {

  private final GrowthBeside beside;
  private final double logTrusted;
  private final double logParted;
  private double logErrorBefore = Double.NEGATIVE_INFINITY;
  private double logStretchingBefore;
  private double trustedUntil = Double.NaN;
  private double foretoldUntil = Double.NaN;

  Horizons(Landscape landscape, TraceSpec spec, double[] start) {
    this(landscape, spec, start, landscape.tableErrors().acceleration());
  }

  /** Horizons with an error of acceleration other than the table's own: for checks. */
  Horizons(Landscape landscape, TraceSpec spec, double[] start, double accelerationError) {
    beside = new GrowthBeside(landscape.motion(), accelerationError);
    double[] plan = new double[4];
    landscape.motion().toPlan(start, plan);
    double swing =
        Math.max(
            Math.hypot(plan[0], plan[1]),
            Math.hypot(plan[2], plan[3]) / landscape.motion().naturalRate());
    double perCoordinate = landscape.planScale().perCoordinate();
    logTrusted = Math.log(landscape.planScale().trustedDistance(swing) / perCoordinate);
    logParted = Math.log(landscape.planScale().linearDistance(swing) / spec.handSpread());
  }

  /** Looks at a step up to a time. */
  void look(Step step, double until) {
    if (!Double.isNaN(trustedUntil) && !Double.isNaN(foretoldUntil)) {
      return;
    }
    double start = step.startTime();
    beside.advance(step, start, until, step.localError());
    ErrorGrowth growth = beside.growth();
    double logError = Math.log(growth.positionError());
    double logStretching = growth.logStretching();
    if (Double.isNaN(trustedUntil) && logError >= logTrusted) {
      trustedUntil = between(start, until, logErrorBefore, logError, logTrusted);
    }
    if (Double.isNaN(foretoldUntil) && logStretching >= logParted) {
      foretoldUntil = between(start, until, logStretchingBefore, logStretching, logParted);
    }
    logErrorBefore = logError;
    logStretchingBefore = logStretching;
  }

  /** Time at which a figure that grows exponentially in the step passes a level. */
  private static double between(
      double start, double end, double before, double after, double level) {
    if (!(before < level) || before == Double.NEGATIVE_INFINITY) {
      return start;
    }
    return start + (end - start) * (level - before) / (after - before);
  }

  OptionalDouble trustedUntil() {
    return Double.isNaN(trustedUntil) ? OptionalDouble.empty() : OptionalDouble.of(trustedUntil);
  }

  OptionalDouble foretoldUntil() {
    return Double.isNaN(foretoldUntil) ? OptionalDouble.empty() : OptionalDouble.of(foretoldUntil);
  }
}
