package lodeswing.web.twins;

/** The single values of twins that a cell of a spreadsheet can ask for. */
enum TwinsValue {
  SENTENCE("sentence"),
  GROWTH_RATE("growthRatePerS"),
  GROWTH_RATE_LOW("growthRateLowPerS"),
  GROWTH_RATE_HIGH("growthRateHighPerS"),
  EXPONENT("exponentPerS"),
  SECOND_EXPONENT("secondExponentPerS"),
  PARTED_AT("partedAtS"),
  SHOWN_UNTIL("shownUntilS"),
  ALIKE("alike"),
  OUTCOME("outcome"),
  SECOND_OUTCOME("secondOutcome"),
  SURE("sure"),
  TWINS_ID("twinsId");

  private final String word;

  TwinsValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
