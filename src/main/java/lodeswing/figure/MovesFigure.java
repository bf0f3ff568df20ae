package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * The picture of magnets that are moved: where they stood in broken outline, where they stand then
 * as a plate shows them, and an arrow with its length from one to the other.
 */
public final class MovesFigure {

  private static final double TITLE_SIZE = 19;
  private static final double CAPTION_SIZE = 12;
  private static final double CAPTION_LINE = 17;
  private static final double CAPTION_ROOM = 0.94;
  private static final double SCALE_BAR_ROOM = 36;
  private static final double SPOT = 13;
  private static final double LENGTH_SIZE = 12;
  private static final double HEAD = 13;
  private static final int MOST_LINES = 6;
  private static final double PLATE_SHOWN_UP_TO = 1.8;

  private MovesFigure() {}

  /**
   * Draws the picture; the same values give the same drawing.
   *
   * @param title a short name of the picture
   * @param captions lines below it
   * @param measure the units of its figures
   * @param plate outline of the plate; none where it is not known
   * @param before the magnets as they stood
   * @param after the same magnets as they stand then
   * @param alternative the result in words
   */
  public static Drawing draw(
      String title,
      List<String> captions,
      Measure measure,
      Optional<Outline> plate,
      List<PlateMagnet> before,
      List<PlateMagnet> after,
      AlternativeText alternative) {
    Extent extent = new Extent();
    extent.add(0, 0, 0);
    for (List<PlateMagnet> magnets : List.of(before, after)) {
      magnets.forEach(m -> extent.add(m.x(), m.y(), m.outline().reach()));
    }
    Optional<Outline> shown =
        plate.filter(p -> p.reach() <= PLATE_SHOWN_UP_TO * extent.fromOrigin());
    shown.ifPresent(outline -> PathFigure.addPlate(extent, outline));
    List<String> heading =
        TextLines.wrapped(PlainText.of(title), TITLE_SIZE, Sheet.WIDTH - 2 * Sheet.MARGIN, 2);
    double plotTop = Sheet.MARGIN + heading.size() * (TITLE_SIZE + 6) + 6;
    Sheet sheet = Sheet.fitting(extent.framed(0.08), plotTop);
    LabelPlacing labels = new LabelPlacing(sheet);
    PlateDrawer drawer = new PlateDrawer(sheet, after, labels);
    boolean centre = drawer.keepCentre();
    List<Shape> old = new ArrayList<>();
    List<Shape> arrows = new ArrayList<>();
    for (int i = 0; i < before.size(); i++) {
      PlateMagnet from = before.get(i);
      PlateMagnet to = after.get(i);
      double way = Math.hypot(to.x() - from.x(), to.y() - from.y());
      if (way > 0) {
        old.add(outline(from));
        arrow(sheet, labels, measure, from, to, arrows);
      }
    }
    Shape.Group tags = drawer.tags();
    List<LegendEntry> legend = legend(after, centre);
    LegendDrawer legendDrawer = new LegendDrawer(sheet, legend);
    Shape.Group legendGroup = legendDrawer.draw();
    List<Shape> below = new ArrayList<>();
    double y = Math.max(sheet.plotBottom() + SCALE_BAR_ROOM, legendDrawer.bottom());
    for (String caption : captions) {
      for (String line :
          TextLines.wrapped(
              PlainText.of(caption),
              CAPTION_SIZE,
              CAPTION_ROOM * (Sheet.WIDTH - 2 * Sheet.MARGIN),
              MOST_LINES)) {
        y += CAPTION_LINE;
        below.add(sheet.text(line, Sheet.MARGIN, y, CAPTION_SIZE, Tint.Role.SOFT_INK));
      }
    }
    ViewBox page = sheet.page(Math.ceil(y + Sheet.MARGIN));
    List<Shape> shapes = new ArrayList<>();
    shapes.add(
        new Shape.Rectangle(
            page.left() + page.width() / 2,
            page.bottom() + page.height() / 2,
            page.width(),
            page.height(),
            0,
            Style.filled(Tint.Role.PAPER)));
    double top = Sheet.MARGIN + TITLE_SIZE - 2;
    for (String line : heading) {
      shapes.add(sheet.text(line, Sheet.MARGIN, top, TITLE_SIZE, Tint.Role.INK));
      top += TITLE_SIZE + 6;
    }
    shapes.add(drawer.plate(shown, centre));
    shapes.add(drawer.magnets());
    shapes.add(new Shape.Group("before", "Where the magnets stood", old));
    shapes.add(new Shape.Group("moves", "How they are moved", arrows));
    shapes.add(tags);
    shapes.add(ScaleBar.draw(sheet, measure));
    shapes.add(legendGroup);
    shapes.addAll(below);
    return new Drawing(page, Sheet.WIDTH, shapes, legend, alternative);
  }

  private static Stroke oldStroke() {
    return Stroke.solid(Tint.Role.SOFT_INK, 1.4).with(Dash.DASHED);
  }

  /** A broken outline, as a run of points, since closed shapes have whole ones. */
  private static Shape outline(PlateMagnet magnet) {
    Outline outline = magnet.outline();
    if (outline instanceof Outline.Spot) {
      return new Shape.Symbol(
          Mark.DISC, magnet.x(), magnet.y(), SPOT, 0, Style.outlined(oldStroke()));
    }
    if (outline instanceof Outline.Oblong block) {
      return new Shape.Rectangle(
          magnet.x(),
          magnet.y(),
          block.width(),
          block.height(),
          block.turn(),
          Style.outlined(oldStroke()));
    }
    return new Shape.Circle(magnet.x(), magnet.y(), outline.reach(), Style.outlined(oldStroke()));
  }

  private static void arrow(
      Sheet sheet,
      LabelPlacing labels,
      Measure measure,
      PlateMagnet from,
      PlateMagnet to,
      List<Shape> shapes) {
    double dx = to.x() - from.x();
    double dy = to.y() - from.y();
    double way = Math.hypot(dx, dy);
    double angle = Math.atan2(dy, dx);
    double head = Math.min(HEAD / sheet.scale(), way);
    double tipX = to.x() - head / 2 * dx / way;
    double tipY = to.y() - head / 2 * dy / way;
    Points shaft = new Points(new double[] {from.x(), tipX}, new double[] {from.y(), tipY});
    shapes.add(new Shape.Polyline(shaft, Stroke.solid(Tint.Role.PAPER, 4.4), 0));
    shapes.add(new Shape.Polyline(shaft, Stroke.solid(Tint.Role.INK, 2), 0));
    shapes.add(
        new Shape.Symbol(
            Mark.TRIANGLE,
            tipX,
            tipY,
            head * sheet.scale(),
            angle - Math.PI / 2,
            Style.of(Tint.Role.INK, Stroke.solid(Tint.Role.PAPER, 1))));
    labels.ink(
        sheet.pixelX(from.x()), sheet.pixelY(from.y()), sheet.pixelX(to.x()), sheet.pixelY(to.y()));
    String words = length(way, measure);
    Footprint footprint = Footprint.of(sheet, to, SPOT / 2);
    labels
        .besideMark(footprint, TextWidth.of(words, LENGTH_SIZE) + 4, LENGTH_SIZE + 4)
        .ifPresent(
            place -> {
              labels.take(place);
              place.leader().ifPresent(line -> shapes.addAll(Leader.lines(sheet, line)));
              shapes.add(
                  new Shape.Text(
                      words,
                      sheet.modelX(place.box().x() + 2),
                      sheet.modelY(place.box().middleY() + 0.36 * LENGTH_SIZE),
                      LENGTH_SIZE,
                      Anchor.START,
                      Tint.Role.INK,
                      true));
            });
  }

  private static String length(double way, Measure measure) {
    double shown = way * measure.shownPerUnit();
    return measure == Measure.BENCH
        ? String.format(Locale.ROOT, "%.1f mm", shown)
        : String.format(Locale.ROOT, "%.3g", shown);
  }

  private static List<LegendEntry> legend(List<PlateMagnet> magnets, boolean centre) {
    List<LegendEntry> entries = new ArrayList<>();
    entries.add(
        new LegendEntry(
            new LegendEntry.Swatch.Sign(Mark.DISC, SPOT, Style.outlined(oldStroke()), ""),
            "where a magnet stood"));
    entries.add(
        new LegendEntry(
            new LegendEntry.Swatch.Line(List.of(Stroke.solid(Tint.Role.INK, 2))),
            "its move, with the length"));
    for (PlateMagnet.Face face : PlateMagnet.Face.values()) {
      if (magnets.stream().anyMatch(magnet -> magnet.face() == face)) {
        double size = face.badge().isDisc() ? PlateDrawer.BADGE : PlateDrawer.BADGE * 1.1;
        entries.add(
            new LegendEntry(
                new LegendEntry.Swatch.Sign(
                    face.badge(), size, Style.filled(face.strong()), face.letter()),
                PathWords.face(face)));
      }
    }
    if (centre) {
      entries.add(
          new LegendEntry(
              new LegendEntry.Swatch.Sign(
                  Mark.PLUS, PlateDrawer.CENTRE, PlateDrawer.centreStyle(), ""),
              PathWords.CENTRE));
    }
    return List.copyOf(entries);
  }
}
