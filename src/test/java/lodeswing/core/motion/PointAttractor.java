package lodeswing.core.motion;

import lodeswing.core.suspension.TwoAxisBody;

/**
 * A smooth stand-in for a magnet: U = -k / (|r - R|^2 + e^2)^(1/2) of the bob's centre r, with its
 * force in space, and over the two angles by the chain rule.
 */
record PointAttractor(
    TwoAxisBody body,
    double axisHeight,
    double strength,
    double softening,
    double x,
    double y,
    double z)
    implements AngleEnergy {

  /** Writes the force [N] at a place measured from the upper axis. */
  void force(double px, double py, double pz, double[] out) {
    double dx = px - x;
    double dy = py - y;
    double dz = pz + axisHeight - z;
    double d2 = dx * dx + dy * dy + dz * dz + softening * softening;
    double w = -strength / (d2 * Math.sqrt(d2));
    out[0] = w * dx;
    out[1] = w * dy;
    out[2] = w * dz;
  }

  @Override
  public void gradient(double beta, double alpha, double[] out) {
    double[] all = new double[6];
    curvature(beta, alpha, all);
    System.arraycopy(all, 0, out, 0, 3);
  }

  @Override
  public void curvature(double beta, double alpha, double[] out) {
    double s = body.bobArm();
    double sb = Math.sin(beta);
    double cb = Math.cos(beta);
    double sa = Math.sin(alpha);
    double ca = Math.cos(alpha);
    double r = body.axisOffset() + s * cb;
    double[] p = {s * sb - x, r * sa - y, -r * ca + axisHeight - z};
    double[] pb = {s * cb, -s * sb * sa, s * sb * ca};
    double[] pa = {0, r * ca, r * sa};
    double[] pbb = {-s * sb, -s * cb * sa, s * cb * ca};
    double[] pba = {0, -s * sb * ca, -s * sb * sa};
    double[] paa = {0, -r * sa, r * ca};
    double d2 = dot(p, p) + softening * softening;
    double u = strength / Math.sqrt(d2);
    double w = u / d2;
    double t = -3 * w / d2;
    out[0] = -u;
    out[1] = w * dot(p, pb);
    out[2] = w * dot(p, pa);
    out[3] = w * (dot(pb, pb) + dot(p, pbb)) + t * dot(p, pb) * dot(p, pb);
    out[4] = w * (dot(pb, pa) + dot(p, pba)) + t * dot(p, pb) * dot(p, pa);
    out[5] = w * (dot(pa, pa) + dot(p, paa)) + t * dot(p, pa) * dot(p, pa);
  }

  /** Force along a direction in space at given angles. */
  double forceAlong(double beta, double alpha, double[] direction) {
    double s = body.bobArm();
    double r = body.axisOffset() + s * Math.cos(beta);
    double[] f = new double[3];
    force(s * Math.sin(beta), r * Math.sin(alpha), -r * Math.cos(alpha), f);
    return dot(f, direction);
  }

  private static double dot(double[] a, double[] b) {
    return a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
  }
}
