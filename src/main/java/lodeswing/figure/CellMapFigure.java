package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.function.IntUnaryOperator;

/**
 * Panels side by side, each a square of cells in steps of one colour scale, with the magnets over
 * it and the scale below.
 */
public final class CellMapFigure {

  private static final double WIDTH = 900;
  private static final double MARGIN = 20;
  private static final double GAP = 28;
  private static final double TITLE = 17;
  private static final double HEADING = 14;
  private static final double SIZE = 12.5;
  private static final double SMALL = 11.5;
  private static final double NEXT = 16;
  private static final double BAR = 13;
  private static final int MOST_LINES = 6;

  /** What a cell without a value bears in place of a step. */
  public static final int NONE = -1;

  private CellMapFigure() {}

  /**
   * One panel.
   *
   * @param title what it shows
   * @param side cells along a side
   * @param steps the step of a cell, counted row by row from the upper left, or {@link #NONE}
   * @param scale what the steps mean
   */
  public record Panel(String title, int side, IntUnaryOperator steps, Scale scale) {}

  /**
   * A colour scale in steps.
   *
   * @param ramp which colours, from 0 up
   * @param steps how many steps it has
   * @param ticks words at the borders between steps
   * @param note what its figures are
   */
  public record Scale(int ramp, int steps, List<Tick> ticks, String note) {

    /** Copies the list. */
    public Scale {
      ticks = List.copyOf(ticks);
    }
  }

  /**
   * A word on a scale.
   *
   * @param at steps from the scale's lower end
   * @param text the word
   */
  public record Tick(double at, String text) {}

  /**
   * What the panels have in common.
   *
   * @param title of the picture
   * @param halfWidth half the side of each square [model units]
   * @param circle radius of a circle about the middle, 0 for none [model units]
   * @param magnets the magnets
   * @param measure units of the scale bar
   * @param captions sentences below
   */
  public record Ground(
      String title,
      double halfWidth,
      double circle,
      List<PlateMagnet> magnets,
      Measure measure,
      List<String> captions) {

    /** Copies the lists. */
    public Ground {
      magnets = List.copyOf(magnets);
      captions = List.copyOf(captions);
    }
  }

  /** Draws the panels from left to right. */
  public static Drawing draw(Ground ground, List<Panel> panels, AlternativeText alternative) {
    double side = (WIDTH - 2 * MARGIN - (panels.size() - 1) * GAP) / panels.size();
    List<Shape> shapes = new ArrayList<>();
    double y = MARGIN;
    for (String line : TextLines.wrapped(ground.title(), TITLE, WIDTH - 2 * MARGIN, 2)) {
      shapes.add(text(line, MARGIN, y + TITLE, TITLE, Anchor.START, Tint.Role.INK));
      y += TITLE + 5;
    }
    double top = y + HEADING + 16;
    for (int k = 0; k < panels.size(); k++) {
      double left = MARGIN + k * (side + GAP);
      shapes.addAll(new Drawn(ground, panels.get(k), left, top, side).shapes());
    }
    y = top + side + 82;
    for (String caption : ground.captions()) {
      for (String line : TextLines.wrapped(caption, SIZE, WIDTH - 2 * MARGIN, MOST_LINES)) {
        shapes.add(text(line, MARGIN, y, SIZE, Anchor.START, Tint.Role.SOFT_INK));
        y += NEXT;
      }
      y += 3;
    }
    double height = y - NEXT + MARGIN;
    shapes.add(0, box(0, 0, WIDTH, height, Style.filled(Tint.Role.PAPER)));
    return new Drawing(
        new ViewBox(0, -height, WIDTH, height), WIDTH, shapes, List.of(), alternative);
  }

  private static Shape box(double left, double top, double width, double height, Style style) {
    return new Shape.Rectangle(left + width / 2, -top - height / 2, width, height, 0, style);
  }

  private static Shape text(
      String text, double x, double y, double size, Anchor anchor, Tint tint) {
    return new Shape.Text(text, x, -y, size, anchor, tint, false);
  }

  /** One panel in its place on the page [px]. */
  private record Drawn(Ground ground, Panel panel, double left, double top, double side) {

    List<Shape> shapes() {
      List<Shape> shapes = new ArrayList<>();
      int lines = 0;
      for (String line : TextLines.wrapped(panel.title(), HEADING, side, 1)) {
        shapes.add(text(line, left, top - 9 + lines * NEXT, HEADING, Anchor.START, Tint.Role.INK));
        lines++;
      }
      shapes.add(new Shape.Group("cells", panel.title(), cells()));
      shapes.addAll(overlay());
      shapes.addAll(scale());
      return shapes;
    }

    /** Runs of like cells; each reaches under its neighbours, so that no seam is seen. */
    private List<Shape> cells() {
      List<Shape> shapes = new ArrayList<>();
      double cell = side / panel.side();
      Style ground = Style.filled(Tint.Role.PLATE);
      shapes.add(box(left, top, side, side, ground));
      for (int row = 0; row < panel.side(); row++) {
        int from = 0;
        while (from < panel.side()) {
          int step = panel.steps().applyAsInt(row * panel.side() + from);
          int to = from + 1;
          while (to < panel.side() && panel.steps().applyAsInt(row * panel.side() + to) == step) {
            to++;
          }
          if (step != NONE) {
            double right = Math.min(side, to * cell + 0.6);
            double bottom = Math.min(side, (row + 1) * cell + 0.6);
            shapes.add(
                box(
                    left + from * cell,
                    top + row * cell,
                    right - from * cell,
                    bottom - row * cell,
                    Style.filled(tint(step))));
          }
          from = to;
        }
      }
      return shapes;
    }

    private Tint tint(int step) {
      int steps = panel.scale().steps();
      return new Tint.Level(panel.scale().ramp(), steps > 1 ? (double) step / (steps - 1) : 0);
    }

    private List<Shape> overlay() {
      List<Shape> shapes = new ArrayList<>();
      double scale = side / (2 * ground.halfWidth());
      double x0 = left + side / 2;
      double y0 = top + side / 2;
      if (ground.circle() > 0) {
        double radius = ground.circle() * scale;
        shapes.add(circle(x0, y0, radius, Tint.Role.PAPER, 2.6));
        shapes.add(circle(x0, y0, radius, Tint.Role.INK, 0.9));
      }
      for (PlateMagnet magnet : ground.magnets()) {
        double x = x0 + magnet.x() * scale;
        double y = y0 - magnet.y() * scale;
        boolean seen = Math.abs(magnet.x()) < ground.halfWidth();
        if (seen && Math.abs(magnet.y()) < ground.halfWidth()) {
          double radius = Math.max(5, magnet.outline().reach() * scale);
          shapes.add(
              new Shape.Group(
                  "magnet", PathWords.magnet(magnet), magnet(magnet, x, y, radius, scale)));
        }
      }
      shapes.add(box(left, top, side, side, Style.outlined(Stroke.solid(Tint.Role.PLATE_EDGE, 1))));
      shapes.addAll(scaleBar(scale));
      return shapes;
    }

    private List<Shape> magnet(
        PlateMagnet magnet, double x, double y, double radius, double scale) {
      List<Shape> shapes = new ArrayList<>();
      for (Stroke stroke :
          List.of(Stroke.solid(Tint.Role.PAPER, 3), Stroke.solid(Tint.Role.INK, 1.2))) {
        Style style = Style.outlined(stroke);
        if (magnet.outline() instanceof Outline.Oblong block) {
          shapes.add(
              new Shape.Rectangle(
                  x, -y, block.width() * scale, block.height() * scale, block.turn(), style));
        } else {
          shapes.add(new Shape.Circle(x, -y, radius, style));
        }
      }
      shapes.add(
          new Shape.Text(
              magnet.face().letter(), x, -y - 4.5, 12, Anchor.MIDDLE, Tint.Role.INK, true));
      return shapes;
    }

    private List<Shape> scaleBar(double scale) {
      Measure measure = ground.measure();
      double shown = ScaleBar.roundLength(0.3 * side / scale * measure.shownPerUnit());
      double length = shown / measure.shownPerUnit() * scale;
      double x = left + 10;
      double y = top + side - 10;
      return List.of(
          line(x, y, x + length, y, Tint.Role.PAPER, 3.6),
          line(x, y, x + length, y, Tint.Role.INK, 1.6),
          new Shape.Text(
              new PathWords(measure).length(shown / measure.shownPerUnit()),
              x,
              -y + 5,
              SMALL,
              Anchor.START,
              Tint.Role.INK,
              true));
    }

    private List<Shape> scale() {
      List<Shape> shapes = new ArrayList<>();
      Scale scale = panel.scale();
      double y = top + side + 12;
      double width = side / scale.steps();
      for (int step = 0; step < scale.steps(); step++) {
        double right = Math.min(side, (step + 1) * width + 0.6);
        shapes.add(
            box(left + step * width, y, right - step * width, BAR, Style.filled(tint(step))));
      }
      shapes.add(box(left, y, side, BAR, Style.outlined(Stroke.solid(Tint.Role.PLATE_EDGE, 0.8))));
      for (Tick tick : scale.ticks()) {
        double x = left + tick.at() * width;
        Anchor anchor =
            tick.at() <= 0 ? Anchor.START : tick.at() >= scale.steps() ? Anchor.END : Anchor.MIDDLE;
        shapes.add(line(x, y + BAR, x, y + BAR + 4, Tint.Role.INK, 0.8));
        shapes.add(text(tick.text(), x, y + BAR + 16, SMALL, anchor, Tint.Role.INK));
      }
      shapes.add(text(scale.note(), left, y + BAR + 32, SMALL, Anchor.START, Tint.Role.SOFT_INK));
      return shapes;
    }

    private static Shape circle(double x, double y, double radius, Tint tint, double width) {
      return new Shape.Circle(x, -y, radius, Style.outlined(Stroke.solid(tint, width)));
    }

    private static Shape line(
        double fromX, double fromY, double toX, double toY, Tint tint, double width) {
      return new Shape.Polyline(
          new Points(new double[] {fromX, toX}, new double[] {-fromY, -toY}),
          Stroke.solid(tint, width),
          0);
    }
  }
}
