package lodeswing.web.basin;

/** The single values of a summary that a cell of a spreadsheet can ask for. */
enum SummaryValue {
  SENTENCE("sentence"),
  SHARE("share"),
  SHARE_LOW("shareLow"),
  SHARE_HIGH("shareHigh"),
  BOX_DIMENSION("boxDimension"),
  UNCERTAINTY_EXPONENT("uncertaintyExponent"),
  BASIN_ENTROPY("basinEntropy"),
  BOUNDARY_BASIN_ENTROPY("boundaryBasinEntropy"),
  WADA("wada"),
  WADA_SHARE("wadaShare"),
  STEADY_SHARE("steadyShare"),
  RELEASES("releases"),
  BASIN_ID("basinId");

  private final String word;

  SummaryValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  /** Whether it is of one of the ends, which must be named. */
  boolean ofOneEnd() {
    return this == SHARE || this == SHARE_LOW || this == SHARE_HIGH;
  }

  /** Whether it is words, in which a point is no decimal sign. */
  boolean inWords() {
    return this == SENTENCE || this == WADA || this == BASIN_ID;
  }
}
