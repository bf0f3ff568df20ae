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

  private final WorksheetFacts facts;
  private final double side;
  private final double half;
  private final double scale;

  /**
   * A sketch of all within reach.
   *
   * @param side of the square on paper [m]
   */
  PlateSketch(WorksheetFacts facts, double side) {
    this.facts = facts;
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
      magnet(magnet, x0, y0, shapes);
    }
    shapes.addAll(Ink.cross(x0, y0, MARK, Ink.line(Tint.Role.INK, 2 * FINE)));
    return shapes;
  }

  private void magnet(PlateMagnet magnet, double x0, double y0, List<Shape> shapes) {
    double x = x0 + magnet.x() * scale;
    double y = y0 + magnet.y() * scale;
    Style style = Style.of(Tint.Role.PAPER, Ink.line(Tint.Role.INK, FRAME));
    double reach = Math.max(MARK, magnet.outline().reach() * scale);
    Shape outline =
        magnet.outline() instanceof Outline.Oblong block
            ? new Shape.Rectangle(
                x, y, block.width() * scale, block.height() * scale, block.turn(), style)
            : new Shape.Circle(x, y, reach, style);
    shapes.add(outline);
    shapes.add(named(Integer.toString(magnet.number()), x, y - NUMBER * Ink.POINT / 3));
  }

  /** Marks of places, named A, B and so on, over a sketch at the same place of the page. */
  List<Shape> marks(List<WorksheetFacts.Aim> aims, double left, double bottom) {
    List<Shape> shapes = new ArrayList<>();
    for (int k = 0; k < aims.size(); k++) {
      double x = left + side / 2 + aims.get(k).x() * scale;
      double y = bottom + side / 2 + aims.get(k).y() * scale;
      shapes.addAll(Ink.cross(x, y, MARK, Ink.line(Tint.Role.INK, FRAME)));
      shapes.add(named(PlacingSheet.letters(k), x + 1.6 * MARK, y + MARK / 2));
    }
    return shapes;
  }

  private static Shape named(String name, double x, double y) {
    return Ink.text(name, x, y, NUMBER, Anchor.MIDDLE, Tint.Role.INK);
  }
}
