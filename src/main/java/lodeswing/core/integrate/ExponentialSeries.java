package lodeswing.core.integrate;

/** The exponential's series as far as steps need it, even and odd part apart. */
public final class ExponentialSeries {

  /** Largest k h of a step, its arguments k h/20 being at most 0.1: good to the last bit there. */
  public static final double MOST_LOSS_A_STEP = 2;

  /** 1/3!. */
  public static final double C3 = 1.0 / 6;

  /** 1/4!. */
  public static final double C4 = 1.0 / 24;

  /** 1/5!. */
  public static final double C5 = 1.0 / 120;

  /** 1/6!. */
  public static final double C6 = 1.0 / 720;

  /** 1/7!. */
  public static final double C7 = 1.0 / 5040;

  /** 1/8!. */
  public static final double C8 = 1.0 / 40320;

  /** 1/9!. */
  public static final double C9 = 1.0 / 362880;

  private ExponentialSeries() {}

  /** (e^x + e^-x)/2 from the square of x, for x up to 0.1. */
  public static double even(double square) {
    double z = square;
    return Math.fma(z, Math.fma(z, Math.fma(z, Math.fma(z, C8, C6), C4), 0.5), 1.0);
  }

  /** (e^x - e^-x)/(2x) from the square of x, for x up to 0.1. */
  public static double oddPart(double square) {
    double z = square;
    return Math.fma(z, Math.fma(z, Math.fma(z, Math.fma(z, C9, C7), C5), C3), 1.0);
  }
}
