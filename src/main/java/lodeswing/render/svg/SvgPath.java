package lodeswing.render.svg;

/**
 * Path data with steps relative to the rounded place reached, so that rounding never adds up and
 * the text stays short.
 */
final class SvgPath {
  private final StringBuilder out;
  private static final char NONE = ' ';

  private long atX;
  private long atY;
  private char command = NONE;

  SvgPath(StringBuilder out) {
    this.out = out;
  }

  void move(double x, double y) {
    atX = SvgText.hundredths(x);
    atY = SvgText.hundredths(y);
    out.append('M');
    SvgText.hundredths(out, atX);
    pair(atY);
    command = NONE;
  }

  /** A straight step; one that rounds to nothing is left out. */
  void line(double x, double y) {
    long toX = SvgText.hundredths(x);
    long toY = SvgText.hundredths(y);
    if (toX == atX && toY == atY && command == 'l') {
      return;
    }
    step('l', toX, toY);
    reach(toX, toY);
  }

  /** A cubic Bezier step; one that rounds to nothing is left out. */
  void curve(double x1, double y1, double x2, double y2, double x, double y) {
    long[] to = {
      SvgText.hundredths(x1), SvgText.hundredths(y1),
      SvgText.hundredths(x2), SvgText.hundredths(y2),
      SvgText.hundredths(x), SvgText.hundredths(y)
    };
    boolean still = true;
    for (int i = 0; i < to.length; i += 2) {
      still &= to[i] == atX && to[i + 1] == atY;
    }
    if (still && command == 'c') {
      return;
    }
    for (int i = 0; i < to.length; i += 2) {
      step('c', to[i], to[i + 1]);
    }
    reach(to[4], to[5]);
  }

  /** A pair relative to the place reached, with its command where that changes. */
  private void step(char wanted, long toX, long toY) {
    if (command == wanted) {
      pair(toX - atX);
    } else {
      out.append(wanted);
      SvgText.hundredths(out, toX - atX);
      command = wanted;
    }
    pair(toY - atY);
  }

  private void reach(long x, long y) {
    atX = x;
    atY = y;
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
