package lodeswing.figure;

/** Pattern of a line, drawn with flat ends where it has gaps. */
public enum Dash {
  SOLID(0, 0),
  DASHED(5, 3.6),
  DOTTED(1.4, 2.6);

  private final double on;
  private final double off;

  Dash(double on, double off) {
    this.on = on;
    this.off = off;
  }

  /** Length of a drawn part [px at the nominal width]; 0 for a solid line. */
  public double on() {
    return on;
  }

  /** Length of a gap [px at the nominal width]; 0 for a solid line. */
  public double off() {
    return off;
  }
}
