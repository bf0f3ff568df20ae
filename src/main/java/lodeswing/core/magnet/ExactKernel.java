package lodeswing.core.magnet;

import static lodeswing.core.magnet.Work.POSE;

/** A source by its closed forms: the reference that the tabulated kernel is compared with. */
record ExactKernel(Magnet magnet) implements SourceKernel {

  @Override
  public double edgeDistance(double x, double y, double z) {
    return SourceEdge.distance(magnet, x, y, z);
  }

  @Override
  public void field(double x, double y, double z, double[] work) {
    magnet.field(x, y, z, work);
  }

  @Override
  public double faceIntegral(FaceRule rule, double half, double[] work) {
    double total = 0;
    for (int side = -1; side <= 1; side += 2) {
      double sum = 0;
      for (int i = 0; i < rule.size(); i++) {
        double u = rule.u()[i];
        double v = rule.v()[i];
        double s = side * half * rule.lift()[i];
        double x = work[POSE] + u * work[POSE + 3] + v * work[POSE + 6] + s * work[POSE + 9];
        double y = work[POSE + 1] + u * work[POSE + 4] + v * work[POSE + 7] + s * work[POSE + 10];
        double z = work[POSE + 2] + u * work[POSE + 5] + v * work[POSE + 8] + s * work[POSE + 11];
        sum += rule.weight()[i] * magnet.potential(x, y, z);
      }
      total += side * sum;
    }
    return total;
  }

  @Override
  public double faceIntegralAndLoad(FaceRule rule, double half, double[] work) {
    FaceLoad.clear(work);
    double total = 0;
    for (int side = -1; side <= 1; side += 2) {
      for (int i = 0; i < rule.size(); i++) {
        double u = rule.u()[i];
        double v = rule.v()[i];
        double s = side * half * rule.lift()[i];
        double dx = u * work[POSE + 3] + v * work[POSE + 6] + s * work[POSE + 9];
        double dy = u * work[POSE + 4] + v * work[POSE + 7] + s * work[POSE + 10];
        double dz = u * work[POSE + 5] + v * work[POSE + 8] + s * work[POSE + 11];
        double x = work[POSE] + dx;
        double y = work[POSE + 1] + dy;
        double z = work[POSE + 2] + dz;
        double weight = side * rule.weight()[i];
        total += weight * magnet.potential(x, y, z);
        magnet.field(x, y, z, work);
        FaceLoad.add(dx, dy, dz, weight, work);
      }
    }
    return total;
  }
}
