package lodeswing.sheet;

import java.util.ArrayList;
import java.util.List;
import lodeswing.figure.Anchor;
import lodeswing.figure.Outline;
import lodeswing.figure.PlateMagnet;
import lodeswing.figure.Shape;
import lodeswing.figure.Style;
import lodeswing.figure.Tint;

/** The plate on a grid of centimetres, made smaller, to draw into: magnets, and marked places. */
final class PlateSketch {

  private static final double GRID = 10 * Ink.MM;
  private static final double FRAME = 0.3;
  private static final double FINE = 0.1;
  private static final double NUMBER = 8;
  private static final double MARK = 1.6 * Ink.MM;

  /** Two names, or a name and a mark, nearer to each other than this would run together. */
  private static final double APART = 3.2 * Ink.MM;

  /** Where a name may stand, as parts of how far it stands off; the best first. */
  private static final double[][] WAYS = {{1, 0.7}, {-1, 0.7}, {1, -0.7}, {-1, -0.7}};

  private record Name(String text, double x, double y) {}

  private final WorksheetFacts facts;
  private final List<WorksheetFacts.Aim> aims;
  private final double side;
  private final double half;
  private final double scale;

  /**
   * A sketch of all within reach.
   *
   * @param aims marked places, named A, B and so on
   * @param side of the square on paper [m]
   */
  PlateSketch(WorksheetFacts facts, List<WorksheetFacts.Aim> aims, double side) {
    this.facts = facts;
    this.aims = List.copyOf(aims);
    this.side = side;
    double farthest = facts.reach();
    for (PlateMagnet magnet : facts.magnets()) {
      farthest = Math.max(farthest, Math.hypot(magnet.x(), magnet.y()) + magnet.outline().reach());
    }
    this.half = Math.ceil(farthest / GRID) * GRID;
    this.scale = side / (2 * half);
  }

  /** How many times smaller than true it is. */
  double reduction() {
    return 1 / scale;
  }

  /** The sketch with its lower left corner at a place of the page. */
  List<Shape> shapes(double left, double bottom) {
    List<Shape> shapes = new ArrayList<>();
    double x0 = left + side / 2;
    double y0 = bottom + side / 2;
    int lines = (int) Math.round(half / GRID);
    for (int k = -lines; k <= lines; k++) {
      double at = k * GRID * scale;
      var line = Ink.line(Tint.Role.PLATE_EDGE, k == 0 ? 2 * FINE : FINE);
      shapes.add(Ink.segment(x0 + at, bottom, x0 + at, bottom + side, line));
      shapes.add(Ink.segment(left, y0 + at, left + side, y0 + at, line));
    }
    shapes.add(
        new Shape.Rectangle(x0, y0, side, side, 0, Style.outlined(Ink.line(Tint.Role.INK, FRAME))));
    for (PlateMagnet magnet : facts.magnets()) {
      shapes.add(outline(magnet, x0, y0));
    }
    shapes.addAll(Ink.cross(x0, y0, MARK, Ink.line(Tint.Role.INK, 2 * FINE)));
    for (WorksheetFacts.Aim aim : aims) {
      double x = x0 + aim.x() * scale;
      double y = y0 + aim.y() * scale;
      shapes.addAll(Ink.cross(x, y, MARK, Ink.line(Tint.Role.INK, FRAME)));
    }
    for (Name name : names()) {
      double baseline = y0 + name.y() - NUMBER * Ink.POINT * Ink.CAPITALS / 2;
      shapes.add(
          new Shape.Text(
              name.text(),
              x0 + name.x(),
              baseline,
              NUMBER * Page.POINT,
              Anchor.MIDDLE,
              Tint.Role.INK,
              true));
    }
    return shapes;
  }

  private Shape outline(PlateMagnet magnet, double x0, double y0) {
    double x = x0 + magnet.x() * scale;
    double y = y0 + magnet.y() * scale;
    Style style = Style.of(Tint.Role.PAPER, Ink.line(Tint.Role.INK, FRAME));
    if (magnet.outline() instanceof Outline.Oblong block) {
      return new Shape.Rectangle(
          x, y, block.width() * scale, block.height() * scale, block.turn(), style);
    }
    return new Shape.Circle(x, y, reach(magnet), style);
  }

  private double reach(PlateMagnet magnet) {
    return Math.max(MARK, magnet.outline().reach() * scale);
  }

  /** Names of marks and magnets, each clear of the marks and of the names before it. */
  private List<Name> names() {
    List<Name> names = new ArrayList<>();
    for (int k = 0; k < aims.size(); k++) {
      double off = 1.6 * MARK;
      names.add(
          clear(
              PlacingSheet.letters(k),
              aims.get(k).x() * scale,
              aims.get(k).y() * scale,
              off,
              names));
    }
    for (PlateMagnet magnet : facts.magnets()) {
      String number = Integer.toString(magnet.number());
      double x = magnet.x() * scale;
      double y = magnet.y() * scale;
      Name middle = new Name(number, x, y);
      boolean roomy = magnet.outline().reach() * scale >= MARK;
      // Within the magnet where it is wide enough, or else beside it.
      double off = reach(magnet) > 2 * APART ? reach(magnet) / 2 : reach(magnet) + MARK;
      names.add(roomy && isClear(middle, names) ? middle : clear(number, x, y, off, names));
    }
    return names;
  }

  private Name clear(String text, double x, double y, double off, List<Name> names) {
    for (double[] way : WAYS) {
      Name name = new Name(text, x + way[0] * off, y + way[1] * off);
      if (isClear(name, names)) {
        return name;
      }
    }
    return new Name(text, x + off, y + 0.7 * off);
  }

  private boolean isClear(Name name, List<Name> names) {
    return Math.max(Math.abs(name.x()), Math.abs(name.y())) < side / 2 - MARK
        && names.stream()
            .noneMatch(other -> Math.hypot(name.x() - other.x(), name.y() - other.y()) < APART)
        && aims.stream()
            .noneMatch(
                aim ->
                    Math.hypot(name.x() - aim.x() * scale, name.y() - aim.y() * scale)
                        < 1.5 * MARK);
  }
}
