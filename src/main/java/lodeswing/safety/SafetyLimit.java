package lodeswing.safety;

/**
 * Every limit of the cautions, with the figure that is held against it. Where each comes from is
 * said here and in the texts; "from memory" is what no source at hand confirmed.
 */
public enum SafetyLimit {
  /**
   * Flux index from which a magnet that is a small part counts as hazardous: 50 kG^2 mm^2 (16 CFR
   * 1262.2 and 1262.3; the same as 0.5 T^2 mm^2 in Canada's Toys Regulations SOR/2011-17, section
   * 43; that EN 71-1 and ISO 8124-1 have it for toys is from memory).
   */
  FLUX_INDEX(SafetyFigure.FLUX_INDEX, 50e-8),

  /**
   * Force at which fingers are held to be hurt: 140 N, what ISO/TS 15066:2016, table A.2, lets a
   * machine press a grown-up's hand with (from memory; children bear less).
   */
  CRUSHING(SafetyFigure.GRIP, 140),

  /** Pull that two fingers cannot part [N]. Common practice; the check of a rig has the same. */
  FINGERS(SafetyFigure.GRIP, 30),

  /**
   * Flux density below which implants are in general not disturbed: 0.5 mT (ICNIRP, Guidelines on
   * limits of exposure to static magnetic fields, Health Physics 96 (2009) 504; the action level of
   * Directive 2013/35/EU, annex II, table B4, is the same, from memory).
   */
  IMPLANTS(SafetyFigure.IMPLANT_DISTANCE, 0.5e-3),

  /** Coercivity of the softer magnetic stripes: 300 Oe, as 30 mT in air. Common practice. */
  CARDS(SafetyFigure.CARD_DISTANCE, 30e-3),

  /** What a magnetic resistant watch bears: 4,800 A/m (ISO 764:2020, 3.1), as a field in air. */
  WATCHES(SafetyFigure.WATCH_DISTANCE, 4800 * 4e-7 * Math.PI),

  /** Energy of a hard projectile that toys may shoot: 0.08 J (EN 71-1, 4.17; from memory). */
  PROJECTILE(SafetyFigure.SWING_ENERGY, 0.08),

  /**
   * Field of a package 2.1 m away from which it is magnetised material for air freight: 0.2
   * microtesla (IATA Dangerous Goods Regulations, packing instruction 953, as carriers quote it).
   */
  AIR_FREIGHT_NEAR(SafetyFigure.FIELD_NEAR, 0.2e-6),

  /** Field 4.6 m away above which no aircraft takes it: 0.525 microtesla (49 CFR 173.21 (d)). */
  AIR_FREIGHT_FAR(SafetyFigure.FIELD_FAR, 0.525e-6);

  private final SafetyFigure figure;
  private final double value;

  SafetyLimit(SafetyFigure figure, double value) {
    this.figure = figure;
    this.value = value;
  }

  /** What is held against it, or computed from it. */
  public SafetyFigure figure() {
    return figure;
  }

  /** The limit in SI: of the figure, or the flux density [T] from which a distance is computed. */
  public double value() {
    return value;
  }

  /** Whether it is a flux density that a distance is computed from. */
  public boolean ofField() {
    return this == IMPLANTS || this == CARDS || this == WATCHES;
  }

  /** Whether a value reaches it. */
  boolean reachedBy(double own) {
    return own >= value;
  }
}
