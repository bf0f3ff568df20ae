package lodeswing.web.freeswing;

/** The single values of a free swing that a cell of a spreadsheet can ask for. */
enum FreeSwingValue {
  SENTENCE("sentence"),
  PERIOD_X("periodXS"),
  PERIOD_Y("periodYS"),
  RATIO("ratio"),
  FIGURE("figure"),
  CLOSES_AFTER("closesAfterS"),
  FORMS_AFTER("formsAfterS"),
  HALVES_X("halvesXS"),
  HALVES_Y("halvesYS"),
  HALVED_AT("halvedAtS"),
  PRECESSION("precessionDegPerS"),
  WIDEST("widest"),
  PARTED_AT("partedAtS");

  private final String word;

  FreeSwingValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }
}
