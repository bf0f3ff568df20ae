package lodeswing.core.integrate;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.motion.PositionForce;
import lodeswing.core.rig.Release;

/**
 * A unit mass in the plane under a potential, with a uniform loss: a motion small enough for tests.
 */
abstract class PlaneMotion implements PositionForce {

  private final double loss;
  private final double rate;

  PlaneMotion(double loss, double rate) {
    this.loss = loss;
    this.rate = rate;
  }

  /** x'' = -w^2 x - loss x'. */
  static PlaneMotion oscillator(double w, double loss) {
    return new PlaneMotion(loss, w) {
      @Override
      public void force(double q0, double q1, double[] out) {
        out[0] = -w * w * q0;
        out[1] = -w * w * q1;
      }

      @Override
      public double potential(double q0, double q1) {
        return 0.5 * w * w * (q0 * q0 + q1 * q1);
      }
    };
  }

  /** Motion about a centre of attraction 1/r^2, without loss. */
  static PlaneMotion kepler() {
    return new PlaneMotion(0, 1) {
      @Override
      public void force(double q0, double q1, double[] out) {
        double r2 = q0 * q0 + q1 * q1;
        double r3 = r2 * Math.sqrt(r2);
        out[0] = -q0 / r3;
        out[1] = -q1 / r3;
      }

      @Override
      public double potential(double q0, double q1) {
        return -1 / Math.sqrt(q0 * q0 + q1 * q1);
      }
    };
  }

  /** q0'' = -w^2 sin q0, a plane pendulum; q1 swings freely along. */
  static PlaneMotion pendulum(double w) {
    return new PlaneMotion(0, w) {
      @Override
      public void force(double q0, double q1, double[] out) {
        out[0] = -w * w * Math.sin(q0);
        out[1] = -w * w * q1;
      }

      @Override
      public double potential(double q0, double q1) {
        return w * w * (1 - Math.cos(q0) + 0.5 * q1 * q1);
      }
    };
  }

  /** The three-attractor plane: w0 = 0.5, height 0.3, strengths 1 on the corners of a triangle. */
  static PlaneMotion threeAttractors(double loss) {
    return new PlaneMotion(loss, 0.5) {
      @Override
      public void force(double q0, double q1, double[] out) {
        double f0 = -0.25 * q0;
        double f1 = -0.25 * q1;
        for (int i = 0; i < 3; i++) {
          double dx = X[i] - q0;
          double dy = Y[i] - q1;
          double r2 = Math.fma(dx, dx, Math.fma(dy, dy, 0.09));
          double s = 1 / (r2 * Math.sqrt(r2));
          f0 = Math.fma(dx, s, f0);
          f1 = Math.fma(dy, s, f1);
        }
        out[0] = f0;
        out[1] = f1;
      }

      @Override
      public double potential(double q0, double q1) {
        double v = 0.125 * (q0 * q0 + q1 * q1);
        for (int i = 0; i < 3; i++) {
          double dx = X[i] - q0;
          double dy = Y[i] - q1;
          v -= 1 / Math.sqrt(dx * dx + dy * dy + 0.09);
        }
        return v;
      }
    };
  }

  private static final double[] X = {0.57735, -0.28868, -0.28868};
  private static final double[] Y = {0, 0.5, -0.5};

  /** The same motion with its loss hidden among other uses of the speed. */
  Motion withoutUniformLoss() {
    PlaneMotion itself = this;
    return new PlaneMotion(loss, rate) {
      @Override
      public void force(double q0, double q1, double[] out) {
        itself.force(q0, q1, out);
      }

      @Override
      public double potential(double q0, double q1) {
        return itself.potential(q0, q1);
      }

      @Override
      public OptionalDouble uniformLoss() {
        return OptionalDouble.empty();
      }
    };
  }

  @Override
  public void acceleration(double q0, double q1, double v0, double v1, double[] out) {
    force(q0, q1, out);
    out[0] -= loss * v0;
    out[1] -= loss * v1;
  }

  @Override
  public void jacobian(double q0, double q1, double v0, double v1, double[] out) {
    throw new UnsupportedOperationException("integrators without variations do not ask for it");
  }

  @Override
  public OptionalDouble uniformLoss() {
    return OptionalDouble.of(loss);
  }

  @Override
  public void potentialDerivatives(double q0, double q1, double[] out) {
    throw new UnsupportedOperationException("integrators do not ask for it");
  }

  @Override
  public double power(double q0, double q1, double v0, double v1) {
    return -loss * (v0 * v0 + v1 * v1);
  }

  @Override
  public double kinetic(double q0, double q1, double v0, double v1) {
    return 0.5 * (v0 * v0 + v1 * v1);
  }

  @Override
  public void inertia(double q0, double q1, double[] out) {
    out[0] = 1;
    out[1] = 1;
  }

  @Override
  public double naturalRate() {
    return rate;
  }

  @Override
  public void toPlan(double[] state, double[] out) {
    System.arraycopy(state, 0, out, 0, 4);
  }

  @Override
  public Optional<double[]> toState(Release release) {
    throw new UnsupportedOperationException("integrators do not ask for it");
  }

  @Override
  public List<Limit> limits() {
    return List.of();
  }

  @Override
  public double reach() {
    return Double.POSITIVE_INFINITY;
  }
}
