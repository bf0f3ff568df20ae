package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.PathCurve;

/**
 * The picture of a path: plate, magnets, the path that gains strength with time, its marks, scale
 * bar and legend.
 *
 * <p>Older parts are paler and later parts lie on top. The line is thin beyond the time up to which
 * a hand can foretell it, and broken and paler beyond the time up to which the computation is
 * trusted. Curves are thinned to a tenth of a pixel, and further only where a path is so long that
 * the picture would pass {@link TrailDrawer#MOST_PIECES} pieces. The legend stands beside the plot.
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
    boolean centre = plateDrawer.keepCentre();
    List<Shape> paths = new ArrayList<>();
    List<PathLegend.Parts> parts = new ArrayList<>();
    for (int i = 0; i < picture.trails().size(); i++) {
      Trail trail = picture.trails().get(i);
      TrailDrawer drawer = new TrailDrawer(sheet, trail, i);
      paths.add(drawer.draw(labels));
      parts.add(
          new PathLegend.Parts(
              drawer.seenAfter(trail.horizons().foretoldUntil().orElse(trail.ends())),
              drawer.seenAfter(trail.horizons().trustedUntil().orElse(trail.ends()))));
    }
    MarkDrawer marks = new MarkDrawer(sheet, picture, labels);
    Shape.Group markGroup = marks.draw();
    Shape.Group tags = plateDrawer.tags();
    PathLegend.Seen seen =
        new PathLegend.Seen(
            plate.isPresent(),
            centre && !marks.hideCentre(),
            plateDrawer.unlabelled(),
            plateDrawer.numbered(),
            parts);
    List<LegendEntry> legend = PathLegend.of(picture, seen);
    LegendDrawer legendDrawer = new LegendDrawer(sheet, legend);
    Shape.Group legendGroup = legendDrawer.draw();

    double below = Math.max(sheet.plotBottom() + SCALE_BAR_ROOM, legendDrawer.bottom());
    List<Shape> captions = new ArrayList<>();
    double height = captions(picture, sheet, below, captions);
    ViewBox page = sheet.page(height);
    shapes.add(background(page));
    addTitle(title, sheet, shapes);
    shapes.add(plateDrawer.plate(plate, seen.centre()));
    shapes.add(plateDrawer.magnets());
    shapes.addAll(paths);
    shapes.add(markGroup);
    shapes.add(tags);
    shapes.add(ScaleBar.draw(sheet, picture.measure()));
    shapes.add(legendGroup);
    shapes.addAll(captions);
    return new Drawing(page, Sheet.WIDTH, shapes, legend, PathWords.alternative(picture, seen));
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
      addPath(extent, trail.curve());
    }
    return extent;
  }

  /** The knots and three places between two of them. */
  static void addPath(Extent extent, PathCurve curve) {
    double[] at = new double[4];
    for (int i = 0; i < curve.count(); i++) {
      extent.add(curve.x(i), curve.y(i), 0);
      for (int quarter = 1; quarter < 4 && i > 0; quarter++) {
        curve.at(curve.t(i - 1) + (curve.t(i) - curve.t(i - 1)) * quarter / 4, at);
        extent.add(at[0], at[1], 0);
      }
    }
  }

  static void addPlate(Extent extent, Outline plate) {
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
