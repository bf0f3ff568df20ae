package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;

/** Sets a legend beside the plot, one entry below the other. */
final class LegendDrawer {
  private static final double SIZE = 12;
  private static final double LINE = 15.5;
  private static final double GAP = 7;
  private static final double SWATCH = 30;
  private static final double TEXT_LEFT = SWATCH + 9;
  private static final int MOST_LINES = 5;

  private final Sheet sheet;
  private final List<LegendEntry> entries;
  private double bottom;

  LegendDrawer(Sheet sheet, List<LegendEntry> entries) {
    this.sheet = sheet;
    this.entries = entries;
    this.bottom = sheet.plotTop();
  }

  /** Lower edge of what was drawn [px]. */
  double bottom() {
    return bottom;
  }

  Shape.Group draw() {
    List<Shape> shapes = new ArrayList<>();
    double y = sheet.plotTop() + SIZE;
    for (LegendEntry entry : entries) {
      swatch(entry.swatch(), y - 0.36 * SIZE, shapes);
      for (String line :
          TextLines.wrapped(entry.text(), SIZE, Sheet.LEGEND_WIDTH - TEXT_LEFT, MOST_LINES)) {
        shapes.add(sheet.text(line, sheet.legendLeft() + TEXT_LEFT, y, SIZE, Tint.Role.INK));
        y += LINE;
      }
      y += GAP;
    }
    bottom = y - LINE;
    return new Shape.Group("legend", "", shapes);
  }

  private void swatch(LegendEntry.Swatch swatch, double y, List<Shape> shapes) {
    if (swatch instanceof LegendEntry.Swatch.Line line) {
      double step = SWATCH / line.parts().size();
      for (int i = 0; i < line.parts().size(); i++) {
        double from = sheet.legendLeft() + i * step;
        double[] xs = {sheet.modelX(from), sheet.modelX(from + step)};
        double[] ys = {sheet.modelY(y), sheet.modelY(y)};
        shapes.add(new Shape.Polyline(new Points(xs, ys), line.parts().get(i), 0));
      }
    } else if (swatch instanceof LegendEntry.Swatch.Sign sign) {
      double x = sheet.modelX(sheet.legendLeft() + SWATCH / 2);
      shapes.add(new Shape.Symbol(sign.mark(), x, sheet.modelY(y), sign.size(), 0, sign.style()));
      if (!sign.letter().isEmpty()) {
        double size = sign.size() * 0.68;
        shapes.add(
            new Shape.Text(
                sign.letter(),
                x,
                sheet.modelY(y + 0.36 * size),
                size,
                Anchor.MIDDLE,
                Tint.Role.PAPER,
                false));
      }
    }
  }
}
