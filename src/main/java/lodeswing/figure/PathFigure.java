package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The picture of a path: plate, magnets, the path that gains strength with time, its marks, scale
 * bar and legend.
 *
 * <p>Older parts are paler and later parts lie on top. The line is thin beyond the time up to which
 * a hand can foretell it, and broken and paler beyond the time up to which the computation is
 * trusted. Lines are thinned to a tenth of a pixel, and further only where a path is so long that
 * the picture would pass {@link TrailDrawer#MOST_POINTS} points. The legend stands beside the plot.
 */
public final class PathFigure {
  private static final double TITLE_SIZE = 19;
  private static final double CAPTION_SIZE = 12;
  private static final double CAPTION_LINE = 17;

  /** Share of the width that captions take: small pictures round letters to wider ones. */
  private static final double CAPTION_ROOM = 0.94;

  private static final double SCALE_BAR_ROOM = 36;

  /** How much larger than what happens on it a plate may be and still be shown whole. */
  private static final double PLATE_SHOWN_UP_TO = 1.8;

  private PathFigure() {}

  /** Draws the picture; the same value gives the same drawing. */
  public static Drawing draw(PathPicture picture) {
    Extent extent = extentOf(picture);
    Optional<Outline> plate =
        picture.plate().filter(p -> p.reach() <= PLATE_SHOWN_UP_TO * extent.fromOrigin());
    plate.ifPresent(outline -> addPlate(extent, outline));
    List<String> title =
        TextLines.wrapped(picture.title(), TITLE_SIZE, Sheet.WIDTH - 2 * Sheet.MARGIN, 2);
    double plotTop = Sheet.MARGIN + title.size() * (TITLE_SIZE + 6) + 6;
    Sheet sheet = Sheet.fitting(extent.framed(0.05), plotTop);

    LabelPlacing labels = new LabelPlacing(sheet);
    List<Shape> shapes = new ArrayList<>();
    PlateDrawer plateDrawer = new PlateDrawer(sheet, picture.magnets(), labels);
    List<Shape> paths = new ArrayList<>();
    for (int i = 0; i < picture.trails().size(); i++) {
      paths.add(new TrailDrawer(sheet, picture.trails().get(i), i).draw(labels));
    }
    MarkDrawer marks = new MarkDrawer(sheet, picture, labels);
    Shape.Group markGroup = marks.draw();
    Shape.Group tags = plateDrawer.tags();
    List<LegendEntry> legend = PathLegend.of(picture, plate.isPresent());
    LegendDrawer legendDrawer = new LegendDrawer(sheet, legend);
    Shape.Group legendGroup = legendDrawer.draw();

    double below = Math.max(sheet.plotBottom() + SCALE_BAR_ROOM, legendDrawer.bottom());
    List<Shape> captions = new ArrayList<>();
    double height = captions(picture, sheet, below, captions);
    ViewBox page = sheet.page(height);
    shapes.add(background(page));
    addTitle(title, sheet, shapes);
    shapes.add(plateDrawer.plate(plate));
    shapes.add(plateDrawer.magnets());
    shapes.addAll(paths);
    shapes.add(markGroup);
    shapes.add(tags);
    shapes.add(ScaleBar.draw(sheet, picture.measure()));
    shapes.add(legendGroup);
    shapes.addAll(captions);
    return new Drawing(page, Sheet.WIDTH, shapes, legend, PathWords.alternative(picture));
  }

  private static Extent extentOf(PathPicture picture) {
    Extent extent = new Extent();
    extent.add(0, 0, 0);
    for (PlateMagnet magnet : picture.magnets()) {
      extent.add(magnet.x(), magnet.y(), magnet.outline().reach());
    }
    for (Trail trail : picture.trails()) {
      extent.add(trail.start().x(), trail.start().y(), 0);
      trail.end().ifPresent(end -> extent.add(end.x(), end.y(), 0));
      for (int i = 0; i < trail.count(); i++) {
        extent.add(trail.x(i), trail.y(i), 0);
      }
    }
    return extent;
  }

  private static void addPlate(Extent extent, Outline plate) {
    if (plate instanceof Outline.Oblong oblong) {
      double cos = Math.abs(Math.cos(oblong.turn())) / 2;
      double sin = Math.abs(Math.sin(oblong.turn())) / 2;
      double halfWidth = oblong.width() * cos + oblong.height() * sin;
      double halfHeight = oblong.width() * sin + oblong.height() * cos;
      extent.add(halfWidth, halfHeight, 0);
      extent.add(-halfWidth, -halfHeight, 0);
    } else {
      extent.add(0, 0, plate.reach());
    }
  }

  private static Shape background(ViewBox page) {
    return new Shape.Rectangle(
        page.left() + page.width() / 2,
        page.bottom() + page.height() / 2,
        page.width(),
        page.height(),
        0,
        Style.filled(Tint.Role.PAPER));
  }

  private static void addTitle(List<String> title, Sheet sheet, List<Shape> shapes) {
    double y = Sheet.MARGIN + TITLE_SIZE - 2;
    for (String line : title) {
      shapes.add(sheet.text(line, Sheet.MARGIN, y, TITLE_SIZE, Tint.Role.INK));
      y += TITLE_SIZE + 6;
    }
  }

  private static double captions(
      PathPicture picture, Sheet sheet, double below, List<Shape> captions) {
    double y = below;
    for (String caption : picture.captions()) {
      for (String line :
          TextLines.wrapped(
              caption, CAPTION_SIZE, CAPTION_ROOM * (Sheet.WIDTH - 2 * Sheet.MARGIN), 4)) {
        y += CAPTION_LINE;
        captions.add(sheet.text(line, Sheet.MARGIN, y, CAPTION_SIZE, Tint.Role.SOFT_INK));
      }
    }
    return Math.ceil(y + Sheet.MARGIN);
  }
}
