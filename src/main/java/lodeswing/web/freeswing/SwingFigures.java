package lodeswing.web.freeswing;

import java.util.OptionalDouble;
import lodeswing.analysis.freeswing.FreeSwing;
import lodeswing.analysis.freeswing.WholeRatio;
import lodeswing.core.rig.Release;
import lodeswing.core.swing.SmallSwings;

/** The figures of a free swing that formulas tell, for one request. */
final class SwingFigures {

  private final FreeSwingRequest request;
  private final SmallSwings swings;
  private final WholeRatio figure;

  SwingFigures(FreeSwingRequest request) {
    this.request = request;
    this.swings = SmallSwings.of(request.layout().layout());
    this.figure = WholeRatio.figureOf(swings.ratio());
  }

  SmallSwings swings() {
    return swings;
  }

  /** The figure that the rig draws. */
  WholeRatio figure() {
    return figure;
  }

  /** Time in which the figure runs through all forms; empty where it keeps its form. */
  OptionalDouble formsAfter(WholeRatio ratio) {
    double time = ratio.formsAfter(swings);
    return Double.isFinite(time) ? OptionalDouble.of(time) : OptionalDouble.empty();
  }

  OptionalDouble halves(boolean alongX) {
    OptionalDouble loss = alongX ? swings.lossX() : swings.lossY();
    return loss.isPresent() ? SmallSwings.halvingTime(loss.getAsDouble()) : loss;
  }

  /** Period with loss; empty where the loss has another law or nothing swings. */
  OptionalDouble withLoss(boolean alongX) {
    OptionalDouble loss = alongX ? swings.lossX() : swings.lossY();
    return loss.isPresent() ? SmallSwings.periodWithLoss(rate(alongX), loss.getAsDouble()) : loss;
  }

  double rate(boolean alongX) {
    return alongX ? swings.rateX() : swings.rateY();
  }

  /**
   * Period of the release's swing along one axis, were it alone; empty where it would turn over.
   */
  OptionalDouble atRelease(boolean alongX) {
    double[] state =
        FreeSwing.of(request.layout().layout())
            .motion()
            .toState(request.start())
            .orElseThrow(() -> new IllegalStateException("a release that was checked has a state"));
    return swings.periodAt(request.layout().layout(), state, alongX);
  }

  /** Turn of the ellipse at first [degrees a unit of time]; empty where the rig is not round. */
  OptionalDouble precession() {
    Release start = request.start();
    OptionalDouble rate = swings.precession(start.x(), start.y(), start.vx(), start.vy());
    return rate.isPresent() ? OptionalDouble.of(Math.toDegrees(rate.getAsDouble()) + 0.0) : rate;
  }

  /** Whether the bob is let go without a push. */
  boolean fromRest() {
    return request.release().get(2) == 0 && request.release().get(3) == 0;
  }
}
