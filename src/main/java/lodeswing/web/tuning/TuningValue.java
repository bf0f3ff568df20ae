package lodeswing.web.tuning;

/** The single values of a tuning that a cell of a spreadsheet can ask for. */
enum TuningValue {
  SENTENCE("sentence"),
  MOVES("moves"),
  MET("met"),
  DISTANCE("distance"),
  BEFORE("before"),
  CHANCE("chance"),
  LOW("low"),
  HIGH("high"),
  LAYOUT_ID("layoutId"),
  TUNING_ID("tuningId");

  private final String word;

  TuningValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  /** Whether it is words, in which a point is no decimal sign. */
  boolean inWords() {
    return switch (this) {
      case DISTANCE, BEFORE, CHANCE, LOW, HIGH -> false;
      default -> true;
    };
  }
}
