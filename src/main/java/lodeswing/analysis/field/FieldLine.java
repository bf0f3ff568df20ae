package lodeswing.analysis.field;

/** A line along the field in a plane, from where it begins to where it ends; owns its arrays. */
public final class FieldLine {

  private final double[] u;
  private final double[] v;
  private final double[] strength;
  private final boolean closed;

  FieldLine(double[] u, double[] v, double[] strength, boolean closed) {
    this.u = u;
    this.v = v;
    this.strength = strength;
    this.closed = closed;
  }

  /** A line from its columns, which it copies. */
  public static FieldLine of(double[] u, double[] v, double[] strength, boolean closed) {
    return new FieldLine(u.clone(), v.clone(), strength.clone(), closed);
  }

  /** How many places it has. */
  public int count() {
    return u.length;
  }

  /** First coordinate of a place [m]. */
  public double u(int i) {
    return u[i];
  }

  /** Second coordinate of a place [m]. */
  public double v(int i) {
    return v[i];
  }

  /** Strength of the field's part in the plane there [T]. */
  public double strength(int i) {
    return strength[i];
  }

  /** Whether it comes back to where it began. */
  public boolean closed() {
    return closed;
  }

  /** Its length [m]. */
  public double length() {
    double sum = 0;
    for (int i = 1; i < u.length; i++) {
      sum += Math.hypot(u[i] - u[i - 1], v[i] - v[i - 1]);
    }
    return sum;
  }
}
