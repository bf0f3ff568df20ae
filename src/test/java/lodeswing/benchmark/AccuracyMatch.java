package lodeswing.benchmark;

import lodeswing.core.motion.Motion;

/**
 * Finds the tolerance at which a contender has a wanted error: the geometric mean over some
 * releases of the state's error at a fixed time, speeds weighted by the natural rate.
 */
final class AccuracyMatch {

  private final Motion motion;
  private final double[][] releases;
  private final double[][] truth;
  private final double duration;

  AccuracyMatch(Motion motion, double[][] releases, double duration) {
    this.motion = motion;
    this.releases = releases;
    this.duration = duration;
    this.truth = new double[releases.length][];
    Contender reference = Contender.of("CM GBS", motion);
    for (int i = 0; i < releases.length; i++) {
      truth[i] = reference.run(releases[i], duration, 3e-14, Contender.NEVER);
    }
  }

  /** Error and evaluations a release; error is NaN where the contender fails. */
  record Cost(double error, double evaluations) {}

  Cost cost(Contender contender, double tolerance) {
    double sum = 0;
    long before = contender.evaluations;
    for (int i = 0; i < releases.length; i++) {
      try {
        sum +=
            StrictMath.log(
                error(contender.run(releases[i], duration, tolerance, Contender.NEVER), truth[i]));
      } catch (RuntimeException failure) {
        return new Cost(Double.NaN, Double.NaN);
      }
    }
    double evaluations = (contender.evaluations - before) / (double) releases.length;
    return new Cost(StrictMath.exp(sum / releases.length), evaluations);
  }

  private double error(double[] a, double[] b) {
    double w = motion.naturalRate();
    double place = Math.hypot(a[0] - b[0], a[1] - b[1]);
    double speed = Math.hypot(a[2] - b[2], a[3] - b[3]) / w;
    return Math.max(Math.hypot(place, speed), 1e-17);
  }

  /** Loosest tolerance on a grid of a sixteenth of a decade with at most this error. */
  double tolerance(Contender contender, double error) {
    for (int n = 32; n < 14 * 16; n++) {
      double tolerance = StrictMath.pow(10, -n / 16.0);
      if (cost(contender, tolerance).error() <= error) {
        return tolerance;
      }
    }
    return Double.NaN;
  }
}
