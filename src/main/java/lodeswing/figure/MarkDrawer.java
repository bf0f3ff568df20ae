package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/** Draws the marks along a path: release, horizons, sealing point, events and rest point. */
final class MarkDrawer {
  static final double RELEASE = 10;
  static final double SEALED = 14;
  static final double REST = 17;
  static final double EVENT = 11;
  static final int MOST_EVENTS = 40;
  private static final double SIZE = 11.5;
  private static final double ARROW = 34;
  private static final double BAR = 13;

  private final Sheet sheet;
  private final PathPicture picture;
  private final LabelPlacing labels;
  private final PathWords words;
  private final List<Shape> marks = new ArrayList<>();
  private final List<Shape> leaders = new ArrayList<>();
  private final List<Shape> texts = new ArrayList<>();

  MarkDrawer(Sheet sheet, PathPicture picture, LabelPlacing labels) {
    this.sheet = sheet;
    this.picture = picture;
    this.labels = labels;
    this.words = new PathWords(picture.measure());
  }

  /** All marks first, so that every label knows of every mark, then their labels. */
  Shape.Group draw() {
    List<Runnable> later = new ArrayList<>();
    for (Trail trail : picture.trails()) {
      trail.happenings().stream().limit(MOST_EVENTS).forEach(event -> event(trail, event));
      horizon(trail, trail.horizons().foretoldUntil(), "foretold to ", later);
      horizon(trail, trail.horizons().trustedUntil(), "trusted to ", later);
      release(trail, later);
      trail.end().ifPresent(end -> rest(trail, end, later));
      sealed(trail, later);
    }
    later.forEach(Runnable::run);
    List<Shape> all = new ArrayList<>(leaders);
    all.addAll(marks);
    all.addAll(texts);
    return new Shape.Group("marks", "", all);
  }

  /** Whether a mark hides the cross at the centre; known once the marks are drawn. */
  boolean hideCentre() {
    for (Shape shape : marks) {
      if (shape instanceof Shape.Symbol symbol
          && Math.hypot(symbol.x(), symbol.y()) * sheet.scale()
              < (symbol.size() + PlateDrawer.CENTRE / 2) / 2) {
        return true;
      }
    }
    return false;
  }

  static Style releaseStyle() {
    return Style.of(Tint.Role.PAPER, Stroke.solid(Tint.Role.INK, 2));
  }

  static Style restStyle() {
    return Style.of(Tint.Role.INK, Stroke.solid(Tint.Role.PAPER, 1.2));
  }

  static Style sealedStyle() {
    return Style.of(Tint.Role.SEALED, Stroke.solid(Tint.Role.PAPER, 1.4));
  }

  static Style eventStyle() {
    return Style.of(Tint.Role.EVENT, Stroke.solid(Tint.Role.PAPER, 1));
  }

  private void release(Trail trail, List<Runnable> later) {
    Trail.Start start = trail.start();
    if (start.moving()) {
      double speed = Math.hypot(start.vx(), start.vy());
      double dx = start.vx() / speed * ARROW / sheet.scale();
      double dy = start.vy() / speed * ARROW / sheet.scale();
      double turn = Math.atan2(start.vy(), start.vx());
      labels.keepClear(
          LabelPlacing.Box.about(
              sheet.pixelX(start.x() + dx * 0.7), sheet.pixelY(start.y() + dy * 0.7), BAR, BAR));
      line(start.x(), start.y(), start.x() + dx * 0.8, start.y() + dy * 0.8, 1.8);
      marks.add(
          new Shape.Symbol(
              Mark.PENNANT, start.x() + dx, start.y() + dy, 13, turn, Style.filled(Tint.Role.INK)));
    }
    symbol(Mark.DISC, start.x(), start.y(), RELEASE, releaseStyle());
    later.add(() -> label(start.x(), start.y(), RELEASE, named(trail, "release")));
  }

  private void rest(Trail trail, Trail.End end, List<Runnable> later) {
    symbol(Mark.STAR, end.x(), end.y(), REST, restStyle());
    OptionalDouble settled = trail.horizons().settledAt();
    String rest = settled.isPresent() ? "settled " + words.time(settled.getAsDouble()) : "rest";
    String text = trail.restsLater() ? rest + ", later" : rest;
    later.add(() -> label(end.x(), end.y(), REST, named(trail, text)));
  }

  private void sealed(Trail trail, List<Runnable> later) {
    OptionalDouble at = trail.horizons().sealedAt();
    if (at.isPresent() && at.getAsDouble() <= trail.ends()) {
      double[] place = trail.at(at.getAsDouble());
      double x = place[0];
      double y = place[1];
      symbol(Mark.DIAMOND, x, y, SEALED, sealedStyle());
      String text = "sealed " + words.time(at.getAsDouble());
      later.add(() -> label(x, y, SEALED, named(trail, text)));
    }
  }

  private void event(Trail trail, Trail.Happening event) {
    double[] at = trail.at(event.time());
    symbol(Mark.CROSS, at[0], at[1], EVENT, eventStyle());
  }

  /** A bar across the path where a horizon lies. */
  private void horizon(Trail trail, OptionalDouble at, String words0, List<Runnable> later) {
    if (at.isEmpty() || !(at.getAsDouble() > trail.begins() && at.getAsDouble() < trail.ends())) {
      return;
    }
    double time = at.getAsDouble();
    double[] place = trail.at(time);
    double x = place[0];
    double y = place[1];
    double speed = Math.hypot(place[2], place[3]);
    double nx = speed > 0 ? -place[3] / speed : 0;
    double ny = speed > 0 ? place[2] / speed : 1;
    double half = BAR / 2 / sheet.scale();
    line(x - nx * half, y - ny * half, x + nx * half, y + ny * half, 2.2);
    labels.keepClear(LabelPlacing.Box.about(sheet.pixelX(x), sheet.pixelY(y), BAR, BAR));
    later.add(() -> label(x, y, BAR - 2, named(trail, words0 + words.time(time))));
  }

  private void line(double fromX, double fromY, double toX, double toY, double width) {
    Points points = new Points(new double[] {fromX, toX}, new double[] {fromY, toY});
    marks.add(new Shape.Polyline(points, Stroke.solid(Tint.Role.PAPER, width + 2), 0));
    marks.add(new Shape.Polyline(points, Stroke.solid(Tint.Role.INK, width), 0));
  }

  private void symbol(Mark mark, double x, double y, double size, Style style) {
    marks.add(new Shape.Symbol(mark, x, y, size, 0, style));
    labels.keepClear(LabelPlacing.Box.about(sheet.pixelX(x), sheet.pixelY(y), size, size));
  }

  private String named(Trail trail, String text) {
    return picture.trails().size() > 1 && !trail.name().isEmpty()
        ? PlainText.shortened(trail.name(), 12) + ": " + text
        : text;
  }

  private void label(double x, double y, double size, String text) {
    Footprint mark = new Footprint.Round(sheet.pixelX(x), sheet.pixelY(y), size / 2);
    // Where there is no room the legend alone says it.
    labels
        .besideMark(mark, TextWidth.of(text, SIZE), SIZE + 2)
        .ifPresent(place -> label(place, text));
  }

  private void label(LabelPlacing.Place place, String text) {
    labels.take(place);
    place.leader().ifPresent(line -> leaders.addAll(Leader.lines(sheet, line)));
    LabelPlacing.Box box = place.box();
    texts.add(
        new Shape.Text(
            text,
            sheet.modelX(box.x()),
            sheet.modelY(box.middleY() + 0.36 * SIZE),
            SIZE,
            Anchor.START,
            Tint.Role.INK,
            true));
  }
}
