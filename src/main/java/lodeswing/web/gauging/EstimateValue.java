package lodeswing.web.gauging;

/** The single values of an estimate that a cell of a spreadsheet can ask for. */
enum EstimateValue {
  SENTENCE("sentence"),
  REMANENCE("remanenceT"),
  REMANENCE_LOW("remanenceLowT"),
  REMANENCE_HIGH("remanenceHighT"),
  MOMENT("momentAm2"),
  GRADE("grade"),
  POLE("pole");

  private final String word;

  EstimateValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
