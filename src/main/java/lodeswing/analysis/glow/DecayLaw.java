package lodeswing.analysis.glow;

/**
 * How the glow of a place fades once the light has left it: Becquerel's law,
 *
 * <pre>I(t) = I(0) / (1 + t/tau)^p</pre>
 *
 * <p>Source of the law: Lattanzi, Casasanta, Garra, On the application of Mittag-Leffler functions
 * to hyperbolic-type decay of luminescence (2021, arXiv 2103.05979), equation 1.1, after E.
 * Becquerel (1861).
 *
 * @param time tau, when the fast fading of the start is over [s]
 * @param exponent p, the slope of the late fading on logarithmic scales
 */
public record DecayLaw(double time, double exponent) {

  /**
   * The usual green paper, strontium aluminate with europium and dysprosium: Chernov, Piters,
   * Melendrez, Yen, Cruz-Zaragoza, Barboza-Flores, Radiation Measurements 42 (2007) 668 to 671,
   * found Becquerel's law with an exponent close to 1 and times of about 10 to 50 s. Within that,
   * 30 s and 1.1 are our choice: the ratio between 10 and 60 minutes, 6.9, then suits ISO
   * 15370:2021, 4.2.1, which asks such strips for 15 mcd/m2 after 10 minutes and 2 mcd/m2 after 60.
   */
  public static final DecayLaw STRONTIUM_ALUMINATE = new DecayLaw(30, 1.1);

  /**
   * @throws IllegalArgumentException where a figure is not positive and finite
   */
  public DecayLaw {
    if (!(time > 0 && exponent > 0) || Double.isInfinite(time) || Double.isInfinite(exponent)) {
      throw new IllegalArgumentException("A decay has a positive time and exponent.");
    }
  }

  /**
   * The share of the glow that is left.
   *
   * @param since time since the light left [s], 0 or more
   */
  public double remaining(double since) {
    return Math.pow(1 + since / time, -exponent);
  }
}
