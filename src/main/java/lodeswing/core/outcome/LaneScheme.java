package lodeswing.core.outcome;

import java.util.function.Function;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneKernel;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.integrate.lane.NystromKernel;
import lodeswing.core.integrate.lane.RungeKuttaKernel;
import lodeswing.core.integrate.lane.RungeKuttaPair;
import lodeswing.core.integrate.lane.Watch;
import lodeswing.core.motion.Motion;
import lodeswing.core.motion.TextbookMotion;

/** What releases on lanes are integrated with. */
public enum LaneScheme {
  /** The Nystrom pair 8(6), for forces of the place alone with linear loss: textbook layouts. */
  NYSTROM_8_6,
  /** The Runge-Kutta pair of order 8, for any motion. */
  ORDER_8,
  /** The Runge-Kutta pair of order 5, for any motion. */
  ORDER_5;

  /** The scheme that takes least time a release at right labels. */
  public static LaneScheme best(Motion motion) {
    return motion instanceof TextbookMotion ? NYSTROM_8_6 : ORDER_8;
  }

  /**
   * A kernel.
   *
   * @throws IllegalArgumentException where the scheme does not suit the motion
   */
  LaneKernel kernel(Motion motion, LaneProvider provider, Tolerance tolerance, Watch watch) {
    Function<RungeKuttaPair, LaneKernel> general =
        pair -> new RungeKuttaKernel(motion, pair, provider, tolerance, watch);
    return switch (this) {
      case ORDER_8 -> general.apply(RungeKuttaPair.ORDER_8);
      case ORDER_5 -> general.apply(RungeKuttaPair.ORDER_5);
      case NYSTROM_8_6 -> {
        if (motion instanceof TextbookMotion plane) {
          yield new NystromKernel(plane, provider, tolerance, watch);
        }
        throw new IllegalArgumentException("the Nystrom pair is for textbook layouts");
      }
    };
  }
}
