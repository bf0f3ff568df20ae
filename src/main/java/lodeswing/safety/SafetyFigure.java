package lodeswing.safety;

/** A figure of a caution; its name tells the unit in which it is shown. */
public enum SafetyFigure {
  MAGNETS("magnets", 1),
  SMALL_PARTS("smallParts", 1),
  FLUX_INDEX("fluxIndexKilogaussSquareMm2", 1e8),
  PROBE_READING("probeReadingMillitesla", 1e3),
  POLE_AREA("poleAreaMm2", 1e6),
  PINCH_FORCE("pinchForceN", 1),
  STEEL_FORCE("pullOnSteelN", 1),
  GRIP("gripN", 1),
  JUMP_DISTANCE("jumpDistanceMm", 1e3),
  IMPLANT_DISTANCE("distanceToHalfMilliteslaMm", 1e3),
  IMPLANT_DISTANCE_TOGETHER("distanceToHalfMilliteslaOfAllMm", 1e3),
  CARD_DISTANCE("distanceForCardsMm", 1e3),
  WATCH_DISTANCE("distanceForWatchesMm", 1e3),
  SWINGING_MASS("massG", 1e3),
  SPEED("speedMPerS", 1),
  SWING_ENERGY("energyMillijoule", 1e3),
  REACH("reachMm", 1e3),
  LOWEST("lowestMm", 1e3),
  HIGHEST("highestMm", 1e3),
  WEIGHT("weightN", 1),
  LOAD("loadN", 1),
  TEST_LOAD("testLoadN", 1),
  SIDEWAYS("sidewaysN", 1),
  LIFT("liftN", 1),
  FIELD_NEAR("fieldAt2100MmMicrotesla", 1e6),
  FIELD_FAR("fieldAt4600MmMicrotesla", 1e6);

  private final String word;
  private final double shownPerUnit;

  SafetyFigure(String word, double shownPerUnit) {
    this.word = word;
    this.shownPerUnit = shownPerUnit;
  }

  /** Its name in answers and in texts. */
  public String word() {
    return word;
  }

  /** The value in the unit that the name tells, of one in SI. */
  public double shown(double value) {
    return value * shownPerUnit;
  }
}
