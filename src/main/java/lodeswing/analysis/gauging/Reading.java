package lodeswing.analysis.gauging;

import lodeswing.core.magnet.EqualPull;
import lodeswing.core.magnet.Magnet;

/**
 * One measurement on a magnet, solved for its remanence.
 *
 * <p>Forces go with the square of the remanence and fields with the remanence itself, so that one
 * evaluation for a remanence of 1 T is all it takes. A reading has inputs that may be off; each is
 * shifted by a multiple of its own uncertainty.
 */
public sealed interface Reading {

  /** Standard acceleration of gravity [m/s^2], 3rd CGPM (1901). */
  double GRAVITY = 9.80665;

  /** How many inputs may be off. */
  int inputs();

  /**
   * The remanence that the reading tells [T].
   *
   * @param unit the magnet with a remanence of 1 T
   * @param shifts of each input, in its own uncertainty, from -1 to 1
   */
  double remanence(Magnet unit, double[] shifts);

  /** Whether what disturbs the reading mostly weakens it, so that it tells the least remanence. */
  default boolean leastOnly() {
    return false;
  }

  /**
   * Pull off thick steel.
   *
   * @param force at which it comes off [N]
   * @param forceShare uncertainty of the force as a part of it
   * @param gap between face and steel [m]; 0 at contact
   * @param nearer how much smaller the gap may be [m]
   * @param wider how much wider it may be [m]
   */
  record OffSteel(double force, double forceShare, double gap, double nearer, double wider)
      implements Reading {

    @Override
    public int inputs() {
      return 2;
    }

    @Override
    public double remanence(Magnet unit, double[] shifts) {
      double there = gap + shifts[1] * (shifts[1] > 0 ? wider : nearer);
      double pull = new EqualPull(unit).onSteel(Math.max(0, there));
      return Math.sqrt(force * (1 + shifts[0] * forceShare) / pull);
    }

    @Override
    public boolean leastOnly() {
      return gap == 0;
    }
  }

  /**
   * Pull between the magnet and its equal, unlike poles facing.
   *
   * @param force the pull, or the weight that it just lifts [N]
   * @param forceShare uncertainty of the force as a part of it
   * @param distance between the facing faces [m]
   * @param distanceOff uncertainty of the distance [m]
   */
  record OffEqual(double force, double forceShare, double distance, double distanceOff)
      implements Reading {

    @Override
    public int inputs() {
      return 2;
    }

    @Override
    public double remanence(Magnet unit, double[] shifts) {
      double apart = Math.max(0, distance + shifts[1] * distanceOff);
      return Math.sqrt(force * (1 + shifts[0] * forceShare) / new EqualPull(unit).at(apart));
    }
  }

  /**
   * Lift of the magnet's equal, whose mass follows from its size and density.
   *
   * @param density of the material [kg/m^3]
   * @param densityShare uncertainty of the density as a part of it
   * @param distance between the facing faces at which it just rises [m]
   * @param distanceOff uncertainty of the distance [m]
   */
  record LiftOfEqual(double density, double densityShare, double distance, double distanceOff)
      implements Reading {

    @Override
    public int inputs() {
      return 2;
    }

    @Override
    public double remanence(Magnet unit, double[] shifts) {
      double weight = density * unit.volume() * GRAVITY;
      return new OffEqual(weight, densityShare, distance, distanceOff).remanence(unit, shifts);
    }
  }

  /**
   * Field on the axis.
   *
   * @param field size of the flux density [T]
   * @param fieldShare uncertainty of the sensor as a part of the reading
   * @param background field of other sources that may be in it [T], in any direction
   * @param distance from the near face to the sensor [m]
   * @param distanceOff uncertainty of the distance [m]
   */
  record OnAxis(
      double field, double fieldShare, double background, double distance, double distanceOff)
      implements Reading {

    @Override
    public int inputs() {
      return 3;
    }

    @Override
    public double remanence(Magnet unit, double[] shifts) {
      double own = field * (1 + shifts[0] * fieldShare) + shifts[1] * background;
      return own / Math.abs(perTesla(unit, shifts[2]));
    }

    /** Whether the field points one way all over the distance's range; a ring's turns round. */
    public boolean oneWay(Magnet unit) {
      double near = perTesla(unit, -1);
      return near * perTesla(unit, 1) > 0 && near * perTesla(unit, 0) > 0;
    }

    private double perTesla(Magnet unit, double shift) {
      double[] b = new double[3];
      unit.field(0, 0, unit.halfHeight() + Math.max(0, distance + shift * distanceOff), b);
      return b[2];
    }
  }
}
