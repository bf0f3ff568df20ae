package lodeswing.web.odds;

/** The single values of odds that a cell of a spreadsheet can ask for. */
enum OddsValue {
  SENTENCE("sentence"),
  OUTCOME("outcome"),
  CHANCE("chance"),
  LOW("low"),
  HIGH("high"),
  REPEATABILITY("repeatability"),
  RELEASES("releases"),
  TRIES("tries"),
  SHARE_OF_PARTS("shareOfParts"),
  SOURCE("source"),
  ROBUST("robust"),
  ODDS_ID("oddsId"),
  EXPECTED("expected"),
  CHI_SQUARE("chiSquare"),
  DEGREES_OF_FREEDOM("degreesOfFreedom"),
  P_VALUE("pValue"),
  COUNTED_SENTENCE("countedSentence");

  private final String word;

  OddsValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  /** Whether it is words, in which a point is no decimal sign. */
  boolean inWords() {
    return this == SENTENCE
        || this == OUTCOME
        || this == SOURCE
        || this == ROBUST
        || this == ODDS_ID
        || this == COUNTED_SENTENCE;
  }
}
