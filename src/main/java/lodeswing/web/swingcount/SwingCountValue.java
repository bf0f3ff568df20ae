package lodeswing.web.swingcount;

/** The single values of a swing count that a cell of a spreadsheet can ask for. */
enum SwingCountValue {
  SENTENCE("sentence"),
  SMALL_PERIOD("smallPeriodS"),
  SMALL_PERIOD_LOW("smallPeriodLowS"),
  SMALL_PERIOD_HIGH("smallPeriodHighS"),
  EXPECTED_PERIOD("expectedPeriodS"),
  OFF("offPercent"),
  AGREES("agrees"),
  LENGTH("lengthMm"),
  LENGTH_LOW("lengthLowMm"),
  LENGTH_HIGH("lengthHighMm"),
  CHANGE("changeMm"),
  SWINGS_TO_HALF("swingsToHalf"),
  QUALITY_FACTOR("qualityFactor"),
  QUALITY_FACTOR_LOW("qualityFactorLow"),
  QUALITY_FACTOR_HIGH("qualityFactorHigh"),
  DAMPING_RATE("dampingRatePerS"),
  LINEAR_LOSS("linearNsPerM"),
  LAYOUT_ID("layoutId");

  private final String word;

  SwingCountValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
