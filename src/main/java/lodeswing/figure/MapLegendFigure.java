package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;

/** The legend of a map: for each end its colour from light to dark, its pattern, mark and name. */
public final class MapLegendFigure {

  private static final double WIDTH = 360;
  private static final double MARGIN = 14;
  private static final double LINE = 26;

  /** From one line of a long name to the next. */
  private static final double NEXT = 16;

  /** More lines than the longest name takes, so that none is cut. */
  private static final int MOST_LINES = 40;

  private static final double SIZE = 13;
  private static final double SMALL = 11;
  private static final int BOX = 24;
  private static final int HIGH = 16;
  private static final double NAME_LEFT = MARGIN + 3 * BOX + 34;
  private static final double MARK = 13;

  private MapLegendFigure() {}

  /**
   * One end.
   *
   * @param name what it is called
   * @param shades its colour, light to dark; one for an end without shades
   * @param inks the ink of the pattern on each shade
   * @param pattern its pattern in the map
   * @param mark its mark in the overlay; none for ends that are no place
   */
  public record Line(
      String name,
      List<Tint> shades,
      List<Tint> inks,
      Pattern pattern,
      java.util.Optional<Mark> mark) {

    /** Copies the lists and clears the name of anything that is not text. */
    public Line {
      name = PlainText.of(name);
      shades = List.copyOf(shades);
      inks = List.copyOf(inks);
    }
  }

  /**
   * Draws the legend.
   *
   * @param lines the ends in order
   * @param scale the words about light and dark, a sentence or two
   * @param alternative the legend in words
   */
  public static Drawing draw(List<Line> lines, String scale, AlternativeText alternative) {
    List<String> notes = TextLines.wrapped(scale, SMALL, WIDTH - 2 * MARGIN, MOST_LINES);
    List<Shape> rows = new ArrayList<>();
    double y = MARGIN;
    for (Line line : lines) {
      List<Shape> parts = new ArrayList<>();
      swatch(line, y, parts);
      double baseline = y + 12.5;
      for (String words :
          TextLines.wrapped(line.name(), SIZE, WIDTH - NAME_LEFT - MARGIN, MOST_LINES)) {
        parts.add(text(words, NAME_LEFT, baseline, SIZE, Tint.Role.INK));
        baseline += NEXT;
      }
      rows.add(new Shape.Group("end", line.name(), parts));
      y = Math.max(y + LINE, baseline - NEXT - 12.5 + LINE);
    }
    double height = y + MARGIN + notes.size() * 15 + 4;
    List<Shape> shapes = new ArrayList<>();
    shapes.add(
        new Shape.Rectangle(
            WIDTH / 2, -height / 2, WIDTH, height, 0, Style.filled(Tint.Role.PAPER)));
    shapes.addAll(rows);
    for (String note : notes) {
      shapes.add(text(note, MARGIN, y + 11, SMALL, Tint.Role.SOFT_INK));
      y += 15;
    }
    return new Drawing(
        new ViewBox(0, -height, WIDTH, height), WIDTH, shapes, List.of(), alternative);
  }

  private static void swatch(Line line, double y, List<Shape> parts) {
    int boxes = line.shades().size();
    int width = 3 * BOX / boxes;
    for (int i = 0; i < boxes; i++) {
      double left = MARGIN + i * width;
      parts.add(
          new Shape.Rectangle(
              left + width / 2.0,
              -y - HIGH / 2.0,
              width,
              HIGH,
              0,
              Style.filled(line.shades().get(i))));
      parts.add(new Shape.Inked(line.pattern(), left, -y, width, HIGH, line.inks().get(i)));
    }
    line.mark()
        .ifPresent(
            mark ->
                parts.add(
                    new Shape.Symbol(
                        mark,
                        MARGIN + 3 * BOX + 17,
                        -y - HIGH / 2.0,
                        MARK,
                        0,
                        Style.of(line.shades().get(boxes / 2), Stroke.solid(Tint.Role.INK, 1.2)))));
  }

  private static Shape text(String text, double x, double y, double size, Tint tint) {
    return new Shape.Text(text, x, -y, size, Anchor.START, tint, false);
  }
}
