package lodeswing.sheet;

/**
 * What a part of a page is, for those who do not see it. Source of the names: ISO 32000-1:2008,
 * 14.8.4, standard structure types.
 */
public enum Tag {
  HEADING("H1"),
  SUBHEADING("H2"),
  PARAGRAPH("P"),
  LIST("L"),
  LIST_ITEM("LI"),
  LIST_BODY("LBody"),
  TABLE("Table"),
  ROW("TR"),
  /** Head of a column. */
  COLUMN_HEAD("TH"),
  /** Head of a row. */
  ROW_HEAD("TH"),
  CELL("TD"),
  /** A drawing, with a text that stands for it. */
  FIGURE("Figure"),
  /** Nothing to read: rules, repeated heads, numbers of pages. */
  ORNAMENT("Artifact");

  private final String type;

  Tag(String type) {
    this.type = type;
  }

  /** Its standard structure type. */
  public String type() {
    return type;
  }
}
