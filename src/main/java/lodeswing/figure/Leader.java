package lodeswing.figure;

import java.util.List;

/** A fine line from a thing to a label that stands off from it. */
final class Leader {
  private static final double WIDTH = 0.8;
  private static final double EDGE = 1.8;

  private Leader() {}

  /**
   * The line and its edge of paper.
   *
   * @param x centre of the thing [model units]
   * @param y centre of the thing
   * @param reach how far from the centre the line begins [px]
   * @param box the label
   */
  static List<Shape> lines(Sheet sheet, double x, double y, double reach, LabelPlacing.Box box) {
    double px = sheet.pixelX(x);
    double py = sheet.pixelY(y);
    double toX = Math.max(box.x(), Math.min(px, box.x() + box.width()));
    double toY = Math.max(box.y() + 2, Math.min(py, box.y() + box.height() - 2));
    double length = Math.max(1e-9, Math.hypot(toX - px, toY - py));
    double share = Math.min(1, reach / length);
    Points points =
        new Points(
            new double[] {sheet.modelX(px + share * (toX - px)), sheet.modelX(toX)},
            new double[] {sheet.modelY(py + share * (toY - py)), sheet.modelY(toY)});
    return List.of(
        new Shape.Polyline(points, Stroke.solid(Tint.Role.PAPER, WIDTH + EDGE), 0),
        new Shape.Polyline(points, Stroke.solid(Tint.Role.INK, WIDTH), 0));
  }
}
