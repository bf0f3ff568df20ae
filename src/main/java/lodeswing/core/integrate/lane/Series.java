package lodeswing.core.integrate.lane;

/** Coefficients of the exponential's series. */
public final class Series {

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

  private Series() {}
}
