package lodeswing.figure;

/**
 * Where things lie on the page: pixels from the upper left corner at the nominal width, against
 * model units with y upwards.
 *
 * @param plotLeft left edge of the plot [px]
 * @param plotTop upper edge of the plot [px]
 * @param plotWidth width of the plot [px]
 * @param plotHeight height of the plot [px]
 * @param scale pixels to a model unit
 * @param bounds the part of the model's plane that the plot must hold
 */
record Sheet(
    double plotLeft,
    double plotTop,
    double plotWidth,
    double plotHeight,
    double scale,
    ViewBox bounds) {
  static final double WIDTH = 800;
  static final double MARGIN = 20;
  static final double LEGEND_WIDTH = 206;
  static final double LEGEND_GAP = 24;
  private static final double PLOT_SIDE = WIDTH - 2 * MARGIN - LEGEND_WIDTH - LEGEND_GAP;
  private static final double LEAST_HEIGHT = 240;

  static Sheet fitting(ViewBox bounds, double plotTop) {
    double scale = Math.min(PLOT_SIDE / bounds.width(), PLOT_SIDE / bounds.height());
    double height = Math.max(LEAST_HEIGHT, bounds.height() * scale);
    return new Sheet(MARGIN, plotTop, PLOT_SIDE, height, scale, bounds);
  }

  double pixelX(double x) {
    return plotLeft + plotWidth / 2 + (x - bounds.left() - bounds.width() / 2) * scale;
  }

  double pixelY(double y) {
    return plotTop + plotHeight / 2 - (y - bounds.bottom() - bounds.height() / 2) * scale;
  }

  double modelX(double pixel) {
    return bounds.left() + bounds.width() / 2 + (pixel - plotLeft - plotWidth / 2) / scale;
  }

  double modelY(double pixel) {
    return bounds.bottom() + bounds.height() / 2 - (pixel - plotTop - plotHeight / 2) / scale;
  }

  double legendLeft() {
    return plotLeft + plotWidth + LEGEND_GAP;
  }

  double plotBottom() {
    return plotTop + plotHeight;
  }

  /** The whole page of a height [px] as a view box in model units. */
  ViewBox page(double height) {
    return new ViewBox(modelX(0), modelY(height), WIDTH / scale, height / scale);
  }

  /** A line of text at a place in pixels. */
  Shape.Text text(String text, double x, double y, double size, Tint tint) {
    return new Shape.Text(text, modelX(x), modelY(y), size, Anchor.START, tint, false);
  }
}
