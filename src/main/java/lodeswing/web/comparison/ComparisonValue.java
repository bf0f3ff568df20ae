package lodeswing.web.comparison;

/** Single values of a comparison, for a cell of a spreadsheet. */
enum ComparisonValue {
  SENTENCE("sentence"),
  VERDICT("verdict"),
  PARTED_AT("partedAtS"),
  DEPARTED_AT("departedAtS"),
  TRUSTED_UNTIL("trustedUntilS"),
  FORETOLD_UNTIL("foretoldUntilS"),
  RMS("rms"),
  GREATEST("greatest"),
  START_RMS("startRms"),
  NOISE("noise"),
  PERIOD_PERCENT("periodPercent"),
  PERIOD_LOW_PERCENT("periodLowPercent"),
  PERIOD_HIGH_PERCENT("periodHighPercent"),
  HINT("hint"),
  ENDS_AGREE("endsAgree"),
  RECORDED_END("recordedEnd"),
  OUTCOME("outcome"),
  COMPARISON_ID("comparisonId");

  private final String word;

  ComparisonValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
