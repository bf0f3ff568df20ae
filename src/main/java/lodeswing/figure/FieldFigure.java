package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/**
 * The picture of a plate's field, from above or in an upright cut: strength in steps with the
 * values on their borders, lines, or filings; the magnets with their poles by letter and shape;
 * weak spots; scale bar and legend.
 */
public final class FieldFigure {

  private static final double TITLE_SIZE = 19;
  private static final double CAPTION_SIZE = 12;
  private static final double CAPTION_LINE = 17;
  private static final double CAPTION_ROOM = 0.94;
  private static final int CAPTION_LINES = 6;
  private static final double SCALE_BAR_ROOM = 36;
  private static final double NUMBER_SIZE = 11.5;
  private static final int MOST_NUMBERS = 40;
  private static final double[] LINE_WIDTHS = {0.8, 1.3, 2};
  private static final double[] FILING_WIDTHS = {0.75, 1.05, 1.4};
  private static final double ARROW = 8.5;
  private static final double SHORTEST_WITH_ARROW = 45;
  private static final double POLE = 12.5;

  private final FieldPicture picture;
  private final Sheet sheet;
  private final LabelPlacing labels;
  private final List<String> title;

  private FieldFigure(FieldPicture picture) {
    this.picture = picture;
    this.title = TextLines.wrapped(picture.title(), TITLE_SIZE, Sheet.WIDTH - 2 * Sheet.MARGIN, 2);
    this.sheet =
        Sheet.fitting(picture.window(), Sheet.MARGIN + title.size() * (TITLE_SIZE + 6) + 6);
    this.labels = new LabelPlacing(sheet);
  }

  /** Draws the picture; the same value gives the same drawing. */
  public static Drawing draw(FieldPicture picture) {
    return new FieldFigure(picture).drawing();
  }

  private Drawing drawing() {
    List<Shape> plot = new ArrayList<>();
    plot.add(paper(Tint.Role.PLATE));
    boolean bands = picture.ground() instanceof FieldPicture.Ground.Bands;
    PlateDrawer plate = new PlateDrawer(sheet, seen(), labels);
    if (!bands) {
      plot.add(plate.magnets());
      plot.addAll(bodies());
    }
    plot.addAll(ground());
    if (bands) {
      plot.add(plate.outlines());
    }
    plot.add(edge());
    List<Shape> marks = marks();
    plot.add(plate.poles());
    plot.addAll(poles());
    plot.add(new Shape.Group("weak-spots", "", marks));
    plot.add(plate.names());
    plot.addAll(numbers());
    if (picture.ground() instanceof FieldPicture.Ground.Bands steps) {
      plot.addAll(new BandLabels(sheet, labels).of(steps));
    }
    List<LegendEntry> legend = legend(plate.unlabelled());
    LegendDrawer legendDrawer = new LegendDrawer(sheet, legend);
    Shape.Group legendGroup = legendDrawer.draw();
    double below = Math.max(sheet.plotBottom() + SCALE_BAR_ROOM, legendDrawer.bottom());
    List<Shape> captions = new ArrayList<>();
    ViewBox page = sheet.page(captions(below, captions));
    List<Shape> shapes = new ArrayList<>();
    shapes.add(
        new Shape.Rectangle(
            page.left() + page.width() / 2,
            page.bottom() + page.height() / 2,
            page.width(),
            page.height(),
            0,
            Style.filled(Tint.Role.PAPER)));
    double y = Sheet.MARGIN + TITLE_SIZE - 2;
    for (String line : title) {
      shapes.add(sheet.text(line, Sheet.MARGIN, y, TITLE_SIZE, Tint.Role.INK));
      y += TITLE_SIZE + 6;
    }
    shapes.addAll(plot);
    shapes.add(ScaleBar.draw(sheet, Measure.BENCH));
    shapes.add(legendGroup);
    shapes.addAll(captions);
    return new Drawing(page, Sheet.WIDTH, shapes, legend, picture.alternative());
  }

  /** The magnets whose middle lies in the window: others would stand on the legend. */
  private List<PlateMagnet> seen() {
    return picture.magnets().stream()
        .filter(magnet -> picture.window().contains(magnet.x(), magnet.y()))
        .toList();
  }

  private Shape paper(Tint tint) {
    ViewBox window = picture.window();
    return new Shape.Rectangle(
        window.left() + window.width() / 2,
        window.bottom() + window.height() / 2,
        window.width(),
        window.height(),
        0,
        Style.filled(tint));
  }

  private Shape edge() {
    ViewBox window = picture.window();
    return new Shape.Rectangle(
        window.left() + window.width() / 2,
        window.bottom() + window.height() / 2,
        window.width(),
        window.height(),
        0,
        Style.outlined(Stroke.solid(Tint.Role.PLATE_EDGE, 1)));
  }

  private List<Shape> ground() {
    if (picture.ground() instanceof FieldPicture.Ground.Bands steps) {
      return bands(steps);
    }
    if (picture.ground() instanceof FieldPicture.Ground.Lines lines) {
      return lines(lines);
    }
    List<List<Points>> strokes = ((FieldPicture.Ground.Filings) picture.ground()).strokes();
    List<Shape> shapes = new ArrayList<>();
    for (int width = 0; width < strokes.size(); width++) {
      Stroke stroke = new Stroke(Tint.Role.INK, FILING_WIDTHS[width], Dash.SOLID, 0.82);
      shapes.add(new Shape.Strokes(strokes.get(width), stroke));
    }
    return List.of(new Shape.Group("filings", "filings on paper", shapes));
  }

  private static List<Shape> bands(FieldPicture.Ground.Bands steps) {
    List<Shape> shapes = new ArrayList<>();
    int count = steps.bands().size();
    for (int i = 0; i < count; i++) {
      FieldPicture.Band band = steps.bands().get(i);
      Style fill = Style.filled(tint(i, count));
      Style style =
          band.words().isEmpty()
              ? fill
              : Style.of(tint(i, count), new Stroke(Tint.Role.INK, 0.7, Dash.SOLID, 0.75));
      shapes.add(
          new Shape.Group(
              "band",
              band.words().isEmpty() ? "" : "at least " + band.words(),
              List.of(new Shape.Region(band.borders(), style))));
    }
    return shapes;
  }

  /** Pale enough throughout for ink to be read on it. */
  static Tint tint(int step, int count) {
    return new Tint.Level(0, count > 1 ? 0.62 * step / (count - 1) : 0);
  }

  private List<Shape> lines(FieldPicture.Ground.Lines ground) {
    List<Shape> shapes = new ArrayList<>();
    List<Shape> arrows = new ArrayList<>();
    Tint tint = Tint.Role.SOFT_INK;
    for (FieldPicture.Line line : ground.lines()) {
      Points points = line.points();
      int from = 0;
      double length = 0;
      for (int i = 1; i < points.count(); i++) {
        length += Math.hypot(points.x(i) - points.x(i - 1), points.y(i) - points.y(i - 1));
        boolean last = i == points.count() - 1;
        if (last || !line.weights().get(i).equals(line.weights().get(from))) {
          double width = LINE_WIDTHS[line.weights().get(from)];
          shapes.add(new Shape.Polyline(part(points, from, i), Stroke.solid(tint, width), 0));
          from = i;
        }
      }
      if (length * sheet.scale() >= SHORTEST_WITH_ARROW) {
        arrows.add(arrow(points));
      }
    }
    return List.of(
        new Shape.Group("field-lines", "lines along the field", shapes),
        new Shape.Group("arrows", "", arrows));
  }

  private static Points part(Points points, int from, int to) {
    double[] x = new double[to - from + 1];
    double[] y = new double[to - from + 1];
    for (int i = from; i <= to; i++) {
      x[i - from] = points.x(i);
      y[i - from] = points.y(i);
    }
    return new Points(x, y);
  }

  private static Shape arrow(Points points) {
    int middle = points.count() / 2;
    double turn =
        Math.atan2(
            points.y(middle) - points.y(middle - 1), points.x(middle) - points.x(middle - 1));
    return new Shape.Symbol(
        Mark.PENNANT, points.x(middle), points.y(middle), ARROW, turn, Style.filled(Tint.Role.INK));
  }

  /** Magnets in an upright cut, each half in its pole's colour. */
  private List<Shape> bodies() {
    List<Shape> shapes = new ArrayList<>();
    for (FieldPicture.Body body : picture.bodies()) {
      double middle = (body.bottom() + body.top()) / 2;
      List<Shape> halves = new ArrayList<>();
      for (boolean upper : new boolean[] {false, true}) {
        boolean north = upper == body.northUp();
        PlateMagnet.Face face = north ? PlateMagnet.Face.NORTH : PlateMagnet.Face.SOUTH;
        double low = upper ? middle : body.bottom();
        double high = upper ? body.top() : middle;
        halves.add(
            new Shape.Rectangle(
                (body.from() + body.to()) / 2,
                (low + high) / 2,
                body.to() - body.from(),
                Math.max(high - low, 1 / sheet.scale()),
                0,
                Style.of(face.pale(), Stroke.solid(face.strong(), 1.2))));
      }
      String up = body.northUp() ? "north pole up" : "south pole up";
      String title = body.label().isEmpty() ? "Magnet, " + up : body.label() + ", " + up;
      shapes.add(new Shape.Group("magnet", title, halves));
    }
    return shapes;
  }

  /** The poles of the magnets in a cut, on their faces, by letter and by shape. */
  private List<Shape> poles() {
    List<Shape> shapes = new ArrayList<>();
    for (FieldPicture.Body body : picture.bodies()) {
      double x = sheet.pixelX((body.from() + body.to()) / 2);
      double gap = Math.max(0, POLE - (body.top() - body.bottom()) * sheet.scale() / 2) / 2;
      double quarter = (body.top() - body.bottom()) / 4;
      badge(body.northUp(), x, sheet.pixelY(body.top() - quarter) - gap, shapes);
      badge(!body.northUp(), x, sheet.pixelY(body.bottom() + quarter) + gap, shapes);
    }
    for (FieldPicture.Body body : picture.bodies()) {
      name(body, shapes);
    }
    return shapes;
  }

  private void name(FieldPicture.Body body, List<Shape> shapes) {
    double width = TextWidth.of(body.label(), NUMBER_SIZE);
    Footprint.Turned footprint =
        new Footprint.Turned(
            sheet.pixelX((body.from() + body.to()) / 2),
            sheet.pixelY((body.bottom() + body.top()) / 2),
            (body.to() - body.from()) / 2 * sheet.scale(),
            (body.top() - body.bottom()) / 2 * sheet.scale(),
            1,
            0);
    if (!body.label().isEmpty()) {
      labels
          .besideMagnet(footprint, width, NUMBER_SIZE + 2)
          .ifPresent(place -> label(place, body.label(), shapes));
    }
  }

  private void badge(boolean north, double x, double y, List<Shape> shapes) {
    PlateMagnet.Face face = north ? PlateMagnet.Face.NORTH : PlateMagnet.Face.SOUTH;
    labels.keepClear(LabelPlacing.Box.about(x, y, POLE, POLE));
    shapes.add(
        new Shape.Symbol(
            face.badge(),
            sheet.modelX(x),
            sheet.modelY(y),
            face.badge().isDisc() ? POLE : POLE * 1.1,
            0,
            Style.of(face.strong(), Stroke.solid(Tint.Role.PAPER, 1))));
    shapes.add(
        new Shape.Text(
            face.letter(),
            sheet.modelX(x),
            sheet.modelY(y + 0.36 * 9),
            9,
            Anchor.MIDDLE,
            Tint.Role.PAPER,
            false));
  }

  private List<Shape> marks() {
    List<Shape> shapes = new ArrayList<>();
    for (FieldPicture.Spot spot : picture.spots()) {
      FieldPicture.Sign sign = spot.sign();
      double x = sheet.pixelX(spot.x());
      double y = sheet.pixelY(spot.y());
      if (sign == FieldPicture.Sign.POLE) {
        // Light below dark, to be seen on any ground.
        shapes.add(
            new Shape.Symbol(
                sign.mark(),
                spot.x(),
                spot.y(),
                sign.size(),
                0,
                Style.outlined(Stroke.solid(Tint.Role.PAPER, 4))));
      }
      shapes.add(new Shape.Symbol(sign.mark(), spot.x(), spot.y(), sign.size(), 0, sign.style()));
      labels.keepClear(LabelPlacing.Box.about(x, y, sign.size(), sign.size()));
    }
    return shapes;
  }

  private List<Shape> numbers() {
    List<Shape> shapes = new ArrayList<>();
    // A spot over a magnet goes by that magnet's name.
    List<FieldPicture.Spot> numbered =
        picture.spots().stream().filter(s -> s.sign() != FieldPicture.Sign.POLE).toList();
    if (numbered.size() > MOST_NUMBERS) {
      return shapes;
    }
    for (FieldPicture.Spot spot : numbered) {
      String words = Integer.toString(spot.number());
      Footprint mark =
          new Footprint.Round(
              sheet.pixelX(spot.x()), sheet.pixelY(spot.y()), spot.sign().size() / 2);
      Optional<LabelPlacing.Place> place =
          labels.besideMark(mark, TextWidth.of(words, NUMBER_SIZE), NUMBER_SIZE);
      place.ifPresent(found -> label(found, words, shapes));
    }
    return List.of(new Shape.Group("numbers", "", shapes));
  }

  private void label(LabelPlacing.Place place, String words, List<Shape> shapes) {
    labels.take(place);
    place.leader().ifPresent(line -> shapes.addAll(Leader.lines(sheet, line)));
    LabelPlacing.Box box = place.box();
    shapes.add(
        new Shape.Text(
            words,
            sheet.modelX(box.x()),
            sheet.modelY(box.middleY() + 0.36 * NUMBER_SIZE),
            NUMBER_SIZE,
            Anchor.START,
            Tint.Role.INK,
            true));
  }

  private List<LegendEntry> legend(int unlabelled) {
    List<LegendEntry> entries = new ArrayList<>();
    if (picture.bodies().isEmpty()) {
      entries.addAll(PathLegend.faces(picture.magnets()));
    } else {
      for (PlateMagnet.Face face : List.of(PlateMagnet.Face.NORTH, PlateMagnet.Face.SOUTH)) {
        entries.add(
            new LegendEntry(
                new LegendEntry.Swatch.Sign(
                    face.badge(), POLE, Style.filled(face.strong()), face.letter()),
                face == PlateMagnet.Face.NORTH ? "north pole" : "south pole"));
      }
    }
    for (FieldPicture.Sign sign : FieldPicture.Sign.values()) {
      if (picture.spots().stream().anyMatch(spot -> spot.sign() == sign)) {
        entries.add(
            new LegendEntry(
                new LegendEntry.Swatch.Sign(sign.mark(), sign.size(), sign.style(), ""),
                sign.words()));
      }
    }
    if (picture.ground() instanceof FieldPicture.Ground.Bands steps) {
      for (int i = steps.bands().size() - 1; i > 0; i--) {
        Style style =
            Style.of(tint(i, steps.bands().size()), Stroke.solid(Tint.Role.PLATE_EDGE, 0.8));
        entries.add(
            new LegendEntry(
                new LegendEntry.Swatch.Sign(Mark.SQUARE, 15, style, ""),
                "from " + steps.bands().get(i).words()));
      }
    }
    if (picture.ground() instanceof FieldPicture.Ground.Lines) {
      List<Stroke> widths = new ArrayList<>();
      for (double width : LINE_WIDTHS) {
        widths.add(Stroke.solid(Tint.Role.SOFT_INK, width));
      }
      entries.add(
          new LegendEntry(
              new LegendEntry.Swatch.Line(widths),
              "along the field, arrows from north to south; heavier where it is stronger"));
    }
    entries.addAll(picture.legend());
    if (unlabelled > 0) {
      entries.add(
          new LegendEntry(
              new LegendEntry.Swatch.Line(List.of()), PathWords.unlabelled(unlabelled)));
    }
    return List.copyOf(entries);
  }

  private double captions(double below, List<Shape> captions) {
    double y = below;
    for (String caption : picture.captions()) {
      for (String line :
          TextLines.wrapped(
              caption,
              CAPTION_SIZE,
              CAPTION_ROOM * (Sheet.WIDTH - 2 * Sheet.MARGIN),
              CAPTION_LINES)) {
        y += CAPTION_LINE;
        captions.add(sheet.text(line, Sheet.MARGIN, y, CAPTION_SIZE, Tint.Role.SOFT_INK));
      }
      y += 3;
    }
    return Math.ceil(y + Sheet.MARGIN);
  }
}
