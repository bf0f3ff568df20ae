package lodeswing.render.svg;

/**
 * Path data with steps relative to the rounded place reached, so that rounding never adds up and
 * the text stays short.
 */
final class SvgPath {
  private final StringBuilder out;
  private long atX;
  private long atY;
  private boolean drawing;

  SvgPath(StringBuilder out) {
    this.out = out;
  }

  void move(double x, double y) {
    atX = SvgText.hundredths(x);
    atY = SvgText.hundredths(y);
    out.append('M');
    SvgText.hundredths(out, atX);
    pair(atY);
    drawing = false;
  }

  /** A straight step; one that rounds to nothing is left out. */
  void line(double x, double y) {
    long toX = SvgText.hundredths(x);
    long toY = SvgText.hundredths(y);
    if (toX == atX && toY == atY && drawing) {
      return;
    }
    if (drawing) {
      pair(toX - atX);
    } else {
      out.append('l');
      SvgText.hundredths(out, toX - atX);
    }
    pair(toY - atY);
    atX = toX;
    atY = toY;
    drawing = true;
  }

  /** A circle about a centre as two arcs. */
  void circle(double x, double y, double radius) {
    move(x - radius, y);
    for (int sign = 1; sign >= -1; sign -= 2) {
      out.append('a');
      SvgText.number(out, radius);
      out.append(' ');
      SvgText.number(out, radius);
      out.append(" 0 0 1 ");
      SvgText.number(out, sign * 2 * radius);
      out.append(" 0");
    }
    close();
  }

  void close() {
    out.append('z');
  }

  /** A further number: the sign of a negative one is separator enough. */
  private void pair(long hundredths) {
    if (hundredths >= 0) {
      out.append(' ');
    }
    SvgText.hundredths(out, hundredths);
  }
}
