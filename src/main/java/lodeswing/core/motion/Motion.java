package lodeswing.core.motion;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.rig.Release;

/**
 * A second-order system in two coordinates, q'' = a(q, q'): what every integrator integrates.
 *
 * <p>On the bench q = (beta, alpha) in radians and time in seconds; in a textbook layout q = (x,
 * y). q0 always goes with x and q1 with y. A state is the array {q0, q1, v0, v1}. The mechanical
 * energy kinetic + potential never rises along a motion. Implementations are immutable, safe for
 * several threads, and allocate nothing in the methods that take an out array.
 */
public interface Motion {

  /**
   * Writes the accelerations.
   *
   * @param out receives a0, a1; length at least 3, what follows a1 is scratch
   */
  void acceleration(double q0, double q1, double v0, double v1, double[] out);

  /**
   * Whether the accelerations have an edge at v = 0: air drag -k |v| v and friction -T v/|v| do,
   * and integrators that take smoothness for granted must look after it.
   */
  default boolean edgeAtRest() {
    return false;
  }

  /**
   * Writes the part of the accelerations that has the edge; zero where there is none.
   *
   * @param out receives its two parts
   */
  default void edgedAcceleration(double q0, double q1, double v0, double v1, double[] out) {
    out[0] = 0;
    out[1] = 0;
  }

  /**
   * Writes the derivatives of the accelerations, for the variational equation.
   *
   * @param out receives da0/dq0, da0/dq1, da0/dv0, da0/dv1, da1/dq0, da1/dq1, da1/dv0, da1/dv1
   */
  void jacobian(double q0, double q1, double v0, double v1, double[] out);

  /**
   * The rate 2k of a loss that is the only dependence on velocity, a = F(q) - 2k v; empty where
   * velocities enter in another way.
   */
  OptionalDouble uniformLoss();

  /** Potential energy [J on the bench]. */
  double potential(double q0, double q1);

  /**
   * Potential energy with first and second derivatives.
   *
   * @param out receives V, V0, V1, V00, V01, V11
   */
  void potentialDerivatives(double q0, double q1, double[] out);

  /** Kinetic energy [J on the bench]. */
  double kinetic(double q0, double q1, double v0, double v1);

  /** Kinetic plus potential energy. */
  default double energy(double q0, double q1, double v0, double v1) {
    return kinetic(q0, q1, v0, v1) + potential(q0, q1);
  }

  /** Rate at which the losses change the mechanical energy, at most 0 [W on the bench]. */
  double power(double q0, double q1, double v0, double v1);

  /**
   * Elements of the diagonal mass matrix at a place: kinetic = (m0 v0^2 + m1 v1^2) / 2.
   *
   * @param out receives m0, m1
   */
  void inertia(double q0, double q1, double[] out);

  /** Small-swing angular rate of q0 without magnets [rad/s on the bench]. */
  double naturalRate();

  /**
   * Writes plan position and velocity of the bob magnet's centre.
   *
   * @param state {q0, q1, v0, v1}
   * @param out receives x, y, vx, vy
   */
  void toPlan(double[] state, double[] out);

  /**
   * The state of a release; where the place lies beyond what the suspension allows, empty.
   *
   * @param release plan position and velocity
   */
  Optional<double[]> toState(Release release);

  /**
   * How far the bob is from being held by friction, as a margin that is above 0 while it slides or
   * may start to; continuous along a motion. Always above 0 where nothing can hold it.
   *
   * @param state {q0, q1, v0, v1}
   */
  default double slideMargin(double[] state) {
    return 1;
  }

  /** Where this motion's equations stop to hold; empty for a textbook layout. */
  List<Limit> limits();

  /**
   * Whether a state lies within all limits.
   *
   * @param state {q0, q1, v0, v1}
   */
  default boolean allows(double[] state) {
    for (Limit limit : limits()) {
      if (!(limit.margin(state) > 0)) {
        return false;
      }
    }
    return true;
  }

  /** Half-width of the square in q that holds every place the motion allows. */
  double reach();
}
