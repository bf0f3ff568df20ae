package lodeswing.core.recording;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;

/**
 * A bob on a cord in Cartesian coordinates, with the cord's pull as the force of the constraint,
 * and point dipoles: written apart from the service's motion, integrated by Commons Math.
 *
 * <p>With r from the pivot, |r| = L: m r'' = m g + F - c r' - lambda r, where lambda follows from
 * r.r'' = -r'.r'. F is minus the gradient of -m(r).B, with the bob's moment along the cord, by
 * differences. Source: H. Goldstein, Classical Mechanics, 2nd ed. (1980), section 2.4
 * (multipliers); J. D. Jackson, Classical Electrodynamics, 3rd ed. (1999), eq. (5.56) (a dipole's
 * field).
 */
public final class CartesianBob implements FirstOrderDifferentialEquations {

  private static final double MU0_OVER_4PI = 1e-7;
  private static final double GRAVITY = 9.80665;
  private static final double DIFFERENCE = 1e-6;

  private final double length;
  private final double mass;
  private final double loss;
  private final double height;
  private final double moment;
  private final double[][] plate;

  /**
   * A rig.
   *
   * @param length of the cord [m]
   * @param mass of the bob [kg]
   * @param loss force over speed [N s/m]
   * @param height of the bob at rest over the plate [m]
   * @param moment of the bob, above 0 along the cord from the pivot [A m^2]
   * @param plate x, y, z and upward moment of each magnet [m, A m^2]
   */
  public CartesianBob(
      double length, double mass, double loss, double height, double moment, double[][] plate) {
    this.length = length;
    this.mass = mass;
    this.loss = loss;
    this.height = height;
    this.moment = moment;
    this.plate = plate;
  }

  @Override
  public int getDimension() {
    return 6;
  }

  @Override
  public void computeDerivatives(double time, double[] state, double[] slopes) {
    double[] force = new double[3];
    for (int k = 0; k < 3; k++) {
      double[] above = {state[0], state[1], state[2]};
      double[] below = above.clone();
      above[k] += DIFFERENCE;
      below[k] -= DIFFERENCE;
      force[k] = -(energy(above) - energy(below)) / (2 * DIFFERENCE) - loss * state[3 + k];
    }
    force[2] -= mass * GRAVITY;
    double along = 0;
    double speed = 0;
    for (int k = 0; k < 3; k++) {
      along += state[k] * force[k];
      speed += state[3 + k] * state[3 + k];
    }
    double multiplier = (along / mass + speed) / (length * length);
    for (int k = 0; k < 3; k++) {
      slopes[k] = state[3 + k];
      slopes[3 + k] = force[k] / mass - multiplier * state[k];
    }
  }

  /** Energy of the bob's dipole in the field of the plate's, with the pivot as origin. */
  private double energy(double[] r) {
    double size = Math.sqrt(r[0] * r[0] + r[1] * r[1] + r[2] * r[2]);
    double energy = 0;
    for (double[] magnet : plate) {
      double dx = r[0] - magnet[0];
      double dy = r[1] - magnet[1];
      double dz = r[2] + height + length - magnet[2];
      double d = Math.sqrt(dx * dx + dy * dy + dz * dz);
      double radial = 3 * dz / Math.pow(d, 5);
      double bx = MU0_OVER_4PI * magnet[3] * radial * dx;
      double by = MU0_OVER_4PI * magnet[3] * radial * dy;
      double bz = MU0_OVER_4PI * magnet[3] * (radial * dz - 1 / Math.pow(d, 3));
      energy -= moment * (bx * r[0] + by * r[1] + bz * r[2]) / size;
    }
    return energy;
  }

  /**
   * Records a release from rest.
   *
   * @param x plan place [m]
   * @param y plan place [m]
   * @param times when places are taken, from 0 [s]
   * @param frame in which it is recorded
   * @param noise standard deviation of each recorded coordinate [m]
   * @param random draws the noise
   */
  public Recording record(
      double x, double y, double[] times, RecordingFrame frame, double noise, Random random) {
    double[] state = {x, y, -Math.sqrt(length * length - x * x - y * y), 0, 0, 0};
    var integrator = new DormandPrince853Integrator(1e-9, 0.05, 1e-11, 1e-11);
    List<double[]> places = new ArrayList<>();
    double now = 0;
    for (double time : times) {
      if (time > now) {
        integrator.integrate(this, now, state, time, state);
        now = time;
      }
      double[] seen = new double[2];
      frame.toRecording(state[0], state[1], seen, 0);
      places.add(
          new double[] {
            seen[0] + noise * random.nextGaussian(), seen[1] + noise * random.nextGaussian()
          });
    }
    return new Recording(
        times,
        places.stream().mapToDouble(place -> place[0]).toArray(),
        places.stream().mapToDouble(place -> place[1]).toArray());
  }
}
