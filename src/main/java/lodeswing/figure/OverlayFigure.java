package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;

/**
 * What lies over a map of the plate: the magnets' outlines, their poles and labels, and the rest
 * points. It has no ground of its own and fits the map edge to edge.
 */
public final class OverlayFigure {

  /** Width at which letters have their size [px]. */
  private static final double WIDTH = 512;

  private static final double REST = 13;

  private OverlayFigure() {}

  /**
   * A rest point in the picture.
   *
   * @param x place [model units]
   * @param y place
   * @param mark its mark
   * @param tint its colour in the map
   */
  public record RestMark(double x, double y, Mark mark, Tint tint) {}

  /**
   * Draws the overlay.
   *
   * @param window the part of the plate that the map shows
   * @param magnets the magnets
   * @param restPoints where the bob can rest
   * @param alternative what the map shows, in words
   */
  public static Drawing draw(
      ViewBox window,
      List<PlateMagnet> magnets,
      List<RestMark> restPoints,
      AlternativeText alternative) {
    double scale = WIDTH / window.width();
    Sheet sheet = new Sheet(0, 0, WIDTH, window.height() * scale, scale, window);
    List<PlateMagnet> shown = magnets.stream().filter(m -> window.contains(m.x(), m.y())).toList();
    LabelPlacing labels = new LabelPlacing(sheet);
    PlateDrawer plate = new PlateDrawer(sheet, shown, labels);
    List<Shape> marks = new ArrayList<>();
    for (RestMark rest : restPoints) {
      if (window.contains(rest.x(), rest.y())) {
        Style halo = Style.filled(Tint.Role.PAPER);
        Style style = Style.of(rest.tint(), Stroke.solid(Tint.Role.INK, 1.4));
        marks.add(new Shape.Symbol(rest.mark(), rest.x(), rest.y(), REST + 5, 0, halo));
        marks.add(new Shape.Symbol(rest.mark(), rest.x(), rest.y(), REST, 0, style));
        labels.keepClear(
            LabelPlacing.Box.about(sheet.pixelX(rest.x()), sheet.pixelY(rest.y()), REST, REST));
      }
    }
    List<Shape> shapes = new ArrayList<>();
    shapes.add(plate.outlines());
    shapes.add(new Shape.Group("rest-points", "", marks));
    shapes.add(plate.tags());
    StringBuilder words = new StringBuilder(alternative.description());
    PathWords.append(
        new PathLegend.Seen(false, false, plate.unlabelled(), plate.numbered(), List.of()), words);
    return new Drawing(
        window,
        WIDTH,
        shapes,
        List.of(),
        new AlternativeText(alternative.language(), alternative.title(), words.toString()));
  }
}
