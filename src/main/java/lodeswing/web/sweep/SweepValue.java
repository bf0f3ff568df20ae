package lodeswing.web.sweep;

/** The single values of a sweep that a cell of a spreadsheet can ask for. */
enum SweepValue {
  SENTENCE("sentence"),
  CELL("cell"),
  LEAST("least"),
  LEAST_AT("leastAt"),
  GREATEST("greatest"),
  GREATEST_AT("greatestAt"),
  CHANGES("changes"),
  POINTS("points"),
  PROBLEMS("problems"),
  SWEEP_ID("sweepId");

  private final String word;

  SweepValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
