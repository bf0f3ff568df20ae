package lodeswing.analysis.trace;

import java.util.OptionalDouble;
import lodeswing.core.integrate.ErrorGrowth;
import lodeswing.core.integrate.LocalRate;
import lodeswing.core.integrate.Step;
import lodeswing.core.landscape.Landscape;

/** Until when a path is right, and until when a hand's release foretells it. */
final class Horizons {

  /** Turn of a small swing in one piece of a step [rad]. */
  private static final double PIECE_TURN = 0.4;

  private static final int MOST_PIECES = 50;

  private final LocalRate rate;
  private final ErrorGrowth growth;
  private final double logTrusted;
  private final double logParted;
  private final double[] begin = new double[4];
  private final double[] half = new double[4];
  private final double[] end = new double[4];
  private double logErrorBefore = Double.NEGATIVE_INFINITY;
  private double logStretchingBefore;
  private double trustedUntil = Double.NaN;
  private double foretoldUntil = Double.NaN;

  Horizons(Landscape landscape, TraceSpec spec, double[] start) {
    this(landscape, spec, start, landscape.tableErrors().acceleration());
  }

  /** Horizons with an error of acceleration other than the table's own: for checks. */
  Horizons(Landscape landscape, TraceSpec spec, double[] start, double accelerationError) {
    rate = new LocalRate(landscape.motion());
    growth = new ErrorGrowth(landscape.motion(), accelerationError);
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
    step.startState(begin);
    int pieces = pieces(until - start);
    double length = (until - start) / pieces;
    for (int i = 0; i < pieces; i++) {
      double from = start + i * length;
      step.at(from + 0.5 * length, half);
      step.at(Math.min(from + length, until), end);
      growth.advance(begin, half, end, length, i == pieces - 1 ? step.localError() : 0);
      System.arraycopy(end, 0, begin, 0, begin.length);
    }
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

  /**
   * Pieces of a step in which the small swings about the path turn by no more than a part of a
   * radian.
   */
  private int pieces(double length) {
    double turn = length * rate.at(begin);
    return (int) Math.min(MOST_PIECES, Math.ceil(turn / PIECE_TURN) + 1);
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
