package lodeswing.core.magnet;

/** The vacuum's permeability, which ties remanence to magnetisation and field to flux density. */
public final class MagneticConstant {

  /**
   * Vacuum magnetic permeability [N/A^2], CODATA 2022: 1.256 637 061 27(20) e-6 (Mohr, Newell,
   * Taylor and Tiesinga, Rev. Mod. Phys. 97 (2025) 025002, table of recommended values).
   */
  public static final double MU_0 = 1.25663706127e-6;

  private MagneticConstant() {}
}
