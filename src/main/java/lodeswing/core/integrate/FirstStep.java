package lodeswing.core.integrate;

/**
 * Size of the first step, from the accelerations at the start and at a point shortly after.
 *
 * <p>Hairer, Norsett and Wanner, Solving Ordinary Differential Equations I (1993), section II.4,
 * "Starting Step Size", with norms in phase space. One evaluation.
 */
final class FirstStep {

  private FirstStep() {}

  static double size(Stepper stepper) {
    double[] s = stepper.startState;
    double[] a = stepper.startAcceleration;
    double scale = stepper.scaleNow();
    double place = Math.sqrt(stepper.phaseSquared(s[0], s[1], s[2], s[3]));
    double slope = Math.sqrt(stepper.phaseSquared(s[2], s[3], a[0], a[1]));
    if (!Double.isFinite(place + slope)) {
      return Double.NaN;
    }
    double guess = slope > 1e-5 * scale && place > 1e-5 * scale ? 0.01 * place / slope : 1e-6;
    stepper.accelerate(
        s[0] + guess * s[2], s[1] + guess * s[3], s[2] + guess * a[0], s[3] + guess * a[1]);
    double[] b = stepper.out;
    double curve =
        Math.sqrt(stepper.phaseSquared(guess * a[0], guess * a[1], b[0] - a[0], b[1] - a[1]))
            / guess;
    double most = Math.max(slope, curve) / scale;
    double size =
        most <= 1e-15
            ? Math.max(1e-6, guess * 1e-3)
            : StrictMath.pow(0.01 / most, 1 / stepper.order());
    return Math.min(100 * guess, size);
  }
}
