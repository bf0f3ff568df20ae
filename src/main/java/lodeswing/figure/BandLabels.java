package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * Writes values on the borders of bands: on each border that is long enough one, where it runs
 * straightest of the places that are free, and a second one on the far side of a long border.
 */
final class BandLabels {

  private static final double SIZE = 10.5;
  private static final double LEAST_LENGTH = 70;
  private static final double LONG = 700;
  private static final double REACH = 14;
  private static final int TRIES = 48;

  /** A thing that no label belongs to. */
  private static final Footprint NOTHING = new Footprint.Round(-1e6, -1e6, 0);

  private final Sheet sheet;
  private final LabelPlacing labels;

  BandLabels(Sheet sheet, LabelPlacing labels) {
    this.sheet = sheet;
    this.labels = labels;
  }

  List<Shape> of(FieldPicture.Ground.Bands steps) {
    List<Shape> shapes = new ArrayList<>();
    for (FieldPicture.Band band : steps.bands()) {
      if (!band.words().isEmpty()) {
        for (Points border : band.borders()) {
          double length = length(border);
          int wanted = length > LONG ? 2 : length > LEAST_LENGTH ? 1 : 0;
          for (int i = 0; i < wanted; i++) {
            label(border, (double) i / wanted, 1.0 / wanted, band.words(), shapes);
          }
        }
      }
    }
    return List.of(new Shape.Group("values", "", shapes));
  }

  private double length(Points border) {
    double sum = 0;
    for (int i = 1; i < border.count(); i++) {
      sum += Math.hypot(border.x(i) - border.x(i - 1), border.y(i) - border.y(i - 1));
    }
    return sum * sheet.scale();
  }

  private void label(Points border, double from, double share, String words, List<Shape> shapes) {
    double width = TextWidth.of(words, SIZE) + 4;
    int best = -1;
    double bestBend = Double.POSITIVE_INFINITY;
    for (int k = 0; k < TRIES; k++) {
      int i = (int) ((from + share * k / TRIES) * border.count());
      LabelPlacing.Box box =
          LabelPlacing.Box.about(
              sheet.pixelX(border.x(i)), sheet.pixelY(border.y(i)), width, SIZE + 2);
      if (labels.free(box, NOTHING)) {
        double bend = bend(border, i);
        if (bend < bestBend) {
          bestBend = bend;
          best = i;
        }
      }
    }
    if (best < 0) {
      return;
    }
    double x = sheet.pixelX(border.x(best));
    double y = sheet.pixelY(border.y(best));
    labels.keepClear(LabelPlacing.Box.about(x, y, width + 10, SIZE + 8));
    shapes.add(
        new Shape.Text(
            words,
            sheet.modelX(x),
            sheet.modelY(y + 0.36 * SIZE),
            SIZE,
            Anchor.MIDDLE,
            Tint.Role.INK,
            true));
  }

  /** How far a border leaves the straight line between places some pixels before and behind. */
  private double bend(Points border, int i) {
    int n = border.count();
    int a = i;
    int b = i;
    while (a > 0 && distance(border, a, i) < REACH) {
      a--;
    }
    while (b < n - 1 && distance(border, b, i) < REACH) {
      b++;
    }
    return 2 * REACH - distance(border, a, b);
  }

  private double distance(Points border, int a, int b) {
    return Math.hypot(border.x(a) - border.x(b), border.y(a) - border.y(b)) * sheet.scale();
  }
}
