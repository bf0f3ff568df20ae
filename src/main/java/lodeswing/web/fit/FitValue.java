package lodeswing.web.fit;

/** Single values of a fit, for a cell of a spreadsheet. */
enum FitValue {
  SENTENCE("sentence"),
  VALUE("value"),
  LOW("low"),
  HIGH("high"),
  STANDARD_ERROR("standardError"),
  RESIDUAL_RMS("residualRms"),
  USED_UNTIL("usedUntilS"),
  ENDED_BY("endedBy"),
  LAYOUT_ID("layoutId"),
  FIT_ID("fitId");

  private final String word;

  FitValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  /** Whether it is of one of the quantities that were sought. */
  boolean ofQuantity() {
    return this == VALUE || this == LOW || this == HIGH || this == STANDARD_ERROR;
  }
}
