package lodeswing.figure;

import java.util.List;

/** A fine line from a thing to a label that stands off from it. */
final class Leader {
  private static final double WIDTH = 0.8;
  private static final double EDGE = 1.8;

  private Leader() {}

  /** The line and its edge of paper. */
  static List<Shape> lines(Sheet sheet, LabelPlacing.Line line) {
    Points points =
        new Points(
            new double[] {sheet.modelX(line.fromX()), sheet.modelX(line.toX())},
            new double[] {sheet.modelY(line.fromY()), sheet.modelY(line.toY())});
    return List.of(
        new Shape.Polyline(points, Stroke.solid(Tint.Role.PAPER, WIDTH + EDGE), 0),
        new Shape.Polyline(points, Stroke.solid(Tint.Role.INK, WIDTH), 0));
  }
}
