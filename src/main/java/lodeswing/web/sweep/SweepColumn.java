package lodeswing.web.sweep;

/**
 * A column of a sweep's table.
 *
 * @param name in the document
 * @param csvName in a CSV table, with its unit
 * @param words what it is, for readers
 * @param unit the symbol of its unit; empty for words and plain numbers
 * @param part of the measure: the figure itself or an end of its interval
 */
record SweepColumn(String name, String csvName, String words, String unit, Part part) {

  /** Parts of what a table has beside each other. */
  enum Part {
    QUANTITY,
    FIGURE,
    LOW,
    HIGH,
    WORD,
    PROBLEM
  }

  /** Whether a picture has a panel of it. */
  boolean shown() {
    return part == Part.FIGURE || part == Part.WORD;
  }
}
