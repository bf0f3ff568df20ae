package lodeswing.analysis.swingcount;

import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Step;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.motion.ExactMotion;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;

/** What the magnets of a plate do to a first swing. */
public final class MagnetSwing {

  private static final Tolerance TOLERANCE = Tolerance.of(1e-9);

  /** Small swings within which a swing must be over. */
  private static final double MOST = 4;

  private static final int LOOKS = 8;
  private static final int HALVINGS = 50;

  private final Motion motion;
  private final Along along;
  private final double[] state = new double[4];
  private double begun;
  private double last;
  private int turned;
  private double end = Double.NaN;

  private MagnetSwing(Motion motion, Along along) {
    this.motion = motion;
    this.along = along;
  }

  /**
   * Time from a release at rest on an axis until the bob turns round for the second time along it
   * [s]; empty where it does not, or cannot be let go there.
   *
   * @param rig the rig with its magnets
   * @param along the axis
   * @param amplitude plan distance of the release from the middle [m]
   */
  public static OptionalDouble firstSwing(BenchLayout rig, Along along, double amplitude) {
    Motion motion = new ExactMotion().of(rig);
    boolean x = along == Along.X;
    Optional<double[]> start =
        motion.toState(new Release(x ? amplitude : 0, x ? 0 : amplitude, 0, 0));
    if (start.isEmpty()) {
      return OptionalDouble.empty();
    }
    var swing = new MagnetSwing(motion, along);
    try {
      ScalarIntegrator.forMotion(motion)
          .integrate(
              start.get(), MOST * 2 * Math.PI / motion.naturalRate(), TOLERANCE, swing::look);
    } catch (IntegrationFailure e) {
      return OptionalDouble.empty();
    }
    return Double.isNaN(swing.end) ? OptionalDouble.empty() : OptionalDouble.of(swing.end);
  }

  private boolean look(Step step) {
    double length = step.endTime() - step.startTime();
    for (int i = 1; i <= LOOKS && Double.isNaN(end); i++) {
      double at = i == LOOKS ? step.endTime() : step.startTime() + length * i / LOOKS;
      double speed = speed(step, at);
      if (speed * last < 0) {
        turned++;
        if (turned == 2) {
          end = turning(step, begun, at);
        }
      }
      last = speed == 0 ? last : speed;
      begun = at;
    }
    return Double.isNaN(end);
  }

  private double speed(Step step, double at) {
    step.at(at, state);
    double[] plan = new double[4];
    motion.toPlan(state, plan);
    return plan[along == Along.X ? 2 : 3];
  }

  private double turning(Step step, double from, double to) {
    double low = Math.max(from, step.startTime());
    double high = to;
    boolean rising = speed(step, high) > 0;
    for (int n = 0; n < HALVINGS; n++) {
      double half = 0.5 * (low + high);
      if (speed(step, half) > 0 == rising) {
        high = half;
      } else {
        low = half;
      }
    }
    return high;
  }
}
