package lodeswing.figure;

import java.util.List;

/**
 * A picture without a format: shapes in model units with y upwards, the legend in words, and the
 * text that stands for the picture.
 *
 * @param viewBox what is shown
 * @param nominalWidth the width at which line widths and text sizes hold [px]
 * @param shapes what is drawn, first drawn first; the legend is among them
 * @param legend the legend's lines, for readers that set their own
 * @param alternative what the picture says in words
 */
public record Drawing(
    ViewBox viewBox,
    double nominalWidth,
    List<Shape> shapes,
    List<LegendEntry> legend,
    AlternativeText alternative) {

  /** Copies the lists. */
  public Drawing {
    shapes = List.copyOf(shapes);
    legend = List.copyOf(legend);
  }

  /** Pixels to a model unit at the nominal width. */
  public double scale() {
    return nominalWidth / viewBox.width();
  }

  /** Height at the nominal width [px]. */
  public double nominalHeight() {
    return viewBox.height() * scale();
  }

  /** Distance from the left edge [px at the nominal width]. */
  public double pixelX(double x) {
    return (x - viewBox.left()) * scale();
  }

  /** Distance from the upper edge [px at the nominal width]. */
  public double pixelY(double y) {
    return (viewBox.top() - y) * scale();
  }
}
