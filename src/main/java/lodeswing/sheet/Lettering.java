package lodeswing.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lodeswing.figure.Anchor;
import lodeswing.figure.Shape;
import lodeswing.figure.Tint;
import lodeswing.letters.Typesetter;

/**
 * A label, with a smaller line below it, set as large as a place allows: broken into one to five
 * lines, moved about in the place, grown until it touches an edge.
 */
final class Lettering {

  /** Greatest size of letters [pt]. */
  static final double LARGEST = 72;

  private static final int MOST_LINES = 5;

  /** Size of the smaller line, of the label's. */
  private static final double SMALLER = 0.62;

  private static final int HALVINGS = 12;

  /** A place: which boxes lie within it. */
  interface Room {

    /** Whether a box about a middle lies within the place [m]. */
    boolean holds(double x, double y, double width, double height);

    /** Where the box's middle may lie [m]. */
    List<double[]> middles();
  }

  /**
   * How a label was set.
   *
   * @param lines of the label
   * @param size of its letters [pt]
   * @param x middle of the box
   * @param y middle of the box
   */
  record Found(List<String> lines, double size, double x, double y) {}

  /** Label and small line at one point to the em. */
  private record Broken(List<String> lines, double width, double height) {}

  private final List<Broken> ways = new ArrayList<>();
  private final Map<String, Double> widths = new HashMap<>();
  private final String small;

  Lettering(String label, String small, Locale locale) {
    this.small = small;
    double whole = width(label);
    for (int count = 1; count <= MOST_LINES; count++) {
      List<String> lines = narrowest(label, whole, count, locale);
      if (ways.stream().noneMatch(way -> way.lines().equals(lines))) {
        double width = lines.stream().mapToDouble(this::width).max().orElse(0) * Ink.POINT;
        ways.add(
            new Broken(
                lines,
                Math.max(width, SMALLER * Ink.width(small, 1)),
                Ink.height(lines.size(), 1) + (small.isEmpty() ? 0 : Ink.height(1, SMALLER))));
      }
    }
  }

  /** Width of a line in ems; the same lines are tried again and again. */
  private double width(String line) {
    return widths.computeIfAbsent(line, text -> Typesetter.line(text).width());
  }

  /** The lines of the least width that are no more than so many, words kept whole. */
  private List<String> narrowest(String label, double whole, int count, Locale locale) {
    double low = whole / count / 2;
    double high = whole * 1.001;
    List<String> best = List.of(label);
    for (int i = 0; i < HALVINGS; i++) {
      double middle = (low + high) / 2;
      List<String> lines = Typesetter.lines(label, middle, locale, this::width);
      if (lines.size() <= count && wordsAreWhole(label, lines)) {
        best = lines;
        high = middle;
      } else {
        low = middle;
      }
    }
    return best;
  }

  private static boolean wordsAreWhole(String label, List<String> lines) {
    // Where a line ends without a blank after it in the label, a word was cut, or the script has no
    // blanks.
    int at = 0;
    for (String line : lines) {
      int start = label.indexOf(line, at);
      int end = start + line.length();
      if (end < label.length()
          && label.charAt(end) != ' '
          && Character.isLetter(label.charAt(end))
          && !Character.isIdeographic(label.codePointAt(end))
          && Character.isLetter(label.codePointBefore(end))) {
        return false;
      }
      at = end;
    }
    return true;
  }

  /** The largest setting within a place that is larger than a least size [pt]. */
  Optional<Found> largest(Room room, double least) {
    Optional<Found> best = Optional.empty();
    for (Broken way : ways) {
      for (double[] middle : room.middles()) {
        double beaten = best.map(Found::size).orElse(least);
        double size = grown(room, way, middle, beaten);
        if (size > beaten) {
          best = Optional.of(new Found(way.lines(), size, middle[0], middle[1]));
        }
      }
    }
    return best;
  }

  /** The largest size at one middle; no more than {@code beaten} where it cannot beat that. */
  private static double grown(Room room, Broken way, double[] middle, double beaten) {
    double low = beaten * 1.005;
    if (low >= LARGEST || !holds(room, way, middle, low)) {
      return beaten;
    }
    double high = LARGEST;
    if (holds(room, way, middle, high)) {
      return high;
    }
    for (int i = 0; i < HALVINGS; i++) {
      double tried = (low + high) / 2;
      if (holds(room, way, middle, tried)) {
        low = tried;
      } else {
        high = tried;
      }
    }
    return low;
  }

  private static boolean holds(Room room, Broken way, double[] middle, double size) {
    return room.holds(middle[0], middle[1], way.width() * size, way.height() * size);
  }

  /** The letters. */
  List<Shape> shapes(Found found) {
    double height =
        Ink.height(found.lines().size(), found.size())
            + (small.isEmpty() ? 0 : Ink.height(1, SMALLER * found.size()));
    List<Shape> shapes = new ArrayList<>();
    double top = found.y() + height / 2;
    for (String line : found.lines()) {
      shapes.add(centred(line, found.x(), top, found.size(), Tint.Role.INK));
      top -= Ink.height(1, found.size());
    }
    if (!small.isEmpty()) {
      shapes.add(centred(small, found.x(), top, SMALLER * found.size(), Tint.Role.INK));
    }
    return shapes;
  }

  private static Shape centred(String line, double x, double top, double size, Tint tint) {
    double baseline = top - size * Ink.POINT * (Ink.LEADING + Ink.CAPITALS) / 2;
    return Ink.text(line, x, baseline, size, Anchor.MIDDLE, tint);
  }

  /** A box about a middle, in which a label stands in the middle too. */
  record Card(double x, double y, double width, double height) implements Room {

    @Override
    public boolean holds(double px, double py, double w, double h) {
      return w <= width && h <= height;
    }

    @Override
    public List<double[]> middles() {
      return List.of(new double[] {x, y});
    }
  }

  /**
   * A piece of a disc about a middle, less round things.
   *
   * @param x middle of the disc
   * @param y middle of the disc
   * @param radius of the disc
   * @param from angle at which it begins, anticlockwise [rad]
   * @param angle how far it reaches [rad]
   * @param holes to be kept free
   */
  record Wedge(double x, double y, double radius, double from, double angle, List<Crowd.Body> holes)
      implements Room {

    /** Between letters and the sides. */
    private static final double MARGIN = 1.5 * Ink.MM;

    private static final int STEPS = 18;
    private static final int TURNS = 7;

    Wedge {
      holes = List.copyOf(holes);
    }

    @Override
    public boolean holds(double px, double py, double width, double height) {
      double w = width + 2 * MARGIN;
      double h = height + 2 * MARGIN;
      for (int corner = 0; corner < 4; corner++) {
        double cx = px + ((corner & 1) == 0 ? -w : w) / 2 - x;
        double cy = py + ((corner & 2) == 0 ? -h : h) / 2 - y;
        if (Math.hypot(cx, cy) > radius || beyond(cx, cy)) {
          return false;
        }
      }
      var box = new Crowd.Box(px - w / 2, py - h / 2, w, h);
      return holes.stream().noneMatch(box::meets);
    }

    /** Whether a corner lies beyond the sides; a whole disc has none. */
    private boolean beyond(double cx, double cy) {
      if (angle >= 2 * Math.PI - 1e-9) {
        return false;
      }
      double turn = Math.atan2(cy, cx) - from;
      turn -= 2 * Math.PI * Math.floor(turn / (2 * Math.PI));
      return turn > angle;
    }

    @Override
    public List<double[]> middles() {
      List<double[]> middles = new ArrayList<>();
      for (int turn = 0; turn < TURNS; turn++) {
        double way = from + angle * (turn + 1) / (TURNS + 1);
        for (int step = 1; step < STEPS; step++) {
          double out = radius * step / STEPS;
          middles.add(new double[] {x + out * Math.cos(way), y + out * Math.sin(way)});
        }
      }
      // Those on the way through the middle first, so that they win where sizes are alike.
      double axis = from + angle / 2;
      middles.sort(
          Comparator.comparingDouble(
              at -> Math.abs((at[1] - y) * Math.cos(axis) - (at[0] - x) * Math.sin(axis))));
      return middles;
    }
  }
}
