package lodeswing.figure;

/** The units that a picture's figures are given in. */
public enum Measure {
  /** Lengths in metres, shown in millimetres; times in seconds. */
  BENCH(1000, "mm", "s"),
  /** Plain numbers. */
  TEXTBOOK(1, "", "");

  private final double shownPerUnit;
  private final String length;
  private final String time;

  Measure(double shownPerUnit, String length, String time) {
    this.shownPerUnit = shownPerUnit;
    this.length = length;
    this.time = time;
  }

  /** Shown units of length in a model unit. */
  double shownPerUnit() {
    return shownPerUnit;
  }

  /** Symbol of the shown unit of length; empty where lengths are plain numbers. */
  String length() {
    return length;
  }

  /** Symbol of the unit of time; empty where times are plain numbers. */
  String time() {
    return time;
  }
}
