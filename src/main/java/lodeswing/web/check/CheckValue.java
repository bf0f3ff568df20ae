package lodeswing.web.check;

/**
 * The single values that a cell of a spreadsheet can ask for, of the whole check or of one line.
 */
enum CheckValue {
  SENTENCE("sentence"),
  VERDICT("verdict"),
  FIGURE("figure"),
  LIMIT("limit"),
  UNIT("unit"),
  CHANGE("change"),
  POINTER("pointer"),
  FROM("from"),
  TO("to"),
  MASS("massG");

  private final String word;

  CheckValue(String word) {
    this.word = word;
  }

  String word() {
    return word;
  }

  /** Whether it is of one line and not of the whole. */
  boolean ofLine() {
    return this != SENTENCE && this != VERDICT && this != MASS;
  }
}
