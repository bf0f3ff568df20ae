package lodeswing.web.safety;

/** A single value of the notes, for a cell. */
enum SafetyValue {
  SEVERITY("severity"),
  FLUX_INDEX("fluxIndexKilogaussSquareMm2"),
  SMALL_PARTS("smallParts"),
  REACH("distanceToHalfMilliteslaMm"),
  REACH_OF_ALL("distanceToHalfMilliteslaOfAllMm"),
  PINCH("gripN");

  private final String word;

  SafetyValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
