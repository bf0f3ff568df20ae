package lodeswing.web.occupancy;

/** The single values that a cell of a spreadsheet can ask for. */
enum OccupancyValue {
  SENTENCE("sentence"),
  CORRELATION("correlation"),
  LOW("low"),
  HIGH("high"),
  CHANGE("change"),
  CHANGE_LOW("changeLow"),
  CHANGE_HIGH("changeHigh"),
  MEAN_FIELD("meanField"),
  FREE_MEAN_FIELD("freeMeanField"),
  OVER_MAGNETS("overMagnets"),
  FREE_OVER_MAGNETS("freeOverMagnets");

  private final String word;

  OccupancyValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
