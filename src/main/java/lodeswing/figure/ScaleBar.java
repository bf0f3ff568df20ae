package lodeswing.figure;

import java.util.List;

/** A bar of round length below the plot: 1, 2 or 5 times a power of ten. */
final class ScaleBar {
  private static final double LONGEST = 150;
  private static final double SIZE = 12;
  private static final double TICK = 4;

  private ScaleBar() {}

  /** The greatest length of the form 1, 2 or 5 times a power of ten that is no longer. */
  static double roundLength(double most) {
    double power = Math.pow(10, Math.floor(Math.log10(most)));
    double lead = most / power;
    // A hair of slack keeps 5 from falling to 2 by rounding.
    double round = lead >= 5 * (1 - 1e-12) ? 5 : lead >= 2 * (1 - 1e-12) ? 2 : 1;
    return round * power;
  }

  static Shape.Group draw(Sheet sheet, Measure measure) {
    double shown = roundLength(LONGEST / sheet.scale() * measure.shownPerUnit());
    double length = shown / measure.shownPerUnit() * sheet.scale();
    String text = new PathWords(measure).length(shown / measure.shownPerUnit());
    double x = sheet.plotLeft();
    double y = sheet.plotBottom() + 20;
    double[] xs = {x, x, x, x + length, x + length, x + length};
    double[] ys = {y - TICK, y + TICK, y, y, y - TICK, y + TICK};
    for (int i = 0; i < xs.length; i++) {
      xs[i] = sheet.modelX(xs[i]);
      ys[i] = sheet.modelY(ys[i]);
    }
    Shape bar = new Shape.Polyline(new Points(xs, ys), Stroke.solid(Tint.Role.INK, 1.4), 0);
    Shape label = sheet.text(text, x + length + 8, y + 0.36 * SIZE, SIZE, Tint.Role.INK);
    return new Shape.Group("scale", PathWords.SCALE + text, List.of(bar, label));
  }
}
