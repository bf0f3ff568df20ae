package lodeswing.analysis.field;

/** What a weak spot is. */
public enum SpotKind {
  /** In the plane the field comes in from two sides and leaves to two others. */
  SADDLE("saddle", -1),
  /** In the plane the field leaves to all sides, as over a north pole. */
  SOURCE("source", 1),
  /** In the plane the field comes in from all sides, as over a south pole. */
  SINK("sink", 1),
  /** In the plane the field winds out of or into it; only on a curved surface. */
  SPIRAL("spiral", 1),
  /** In the plane the field goes round it; only on a curved surface. */
  CENTRE("centre", 1),
  /** One place of a line of zeros, such as the ring round the hole of a ring magnet. */
  LINE("line", 0),
  /** The strength has a least value there that is not 0. */
  MINIMUM("minimum", 0);

  private final String word;
  private final int index;

  SpotKind(String word, int index) {
    this.word = word;
    this.index = index;
  }

  /** Its word. */
  public String word() {
    return word;
  }

  /** How often the field turns about it, anticlockwise; 0 where it is no isolated zero. */
  public int index() {
    return index;
  }
}
