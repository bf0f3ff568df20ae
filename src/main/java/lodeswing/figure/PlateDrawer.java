package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws the plate, its magnets and the tags that say each magnet's pole and label. */
final class PlateDrawer {
  static final double BADGE = 15;
  private static final double LETTER = 10.5;
  private static final double LABEL_SIZE = 12.5;
  private static final int LONGEST_LABEL = 24;
  private static final int SHORT_LABEL = 9;
  private static final double SPOT = 13;

  private final Sheet sheet;
  private final List<PlateMagnet> magnets;
  private final LabelPlacing labels;

  PlateDrawer(Sheet sheet, List<PlateMagnet> magnets, LabelPlacing labels) {
    this.sheet = sheet;
    this.magnets = magnets;
    this.labels = labels;
    for (PlateMagnet magnet : magnets) {
      double side = 1.8 * reach(magnet);
      labels.ratherClear(
          LabelPlacing.Box.about(sheet.pixelX(magnet.x()), sheet.pixelY(magnet.y()), side, side));
    }
  }

  /** The plate's surface with its outline, or the ground of the plot where none is known. */
  Shape.Group plate(Optional<Outline> outline) {
    Style style = Style.of(Tint.Role.PLATE, Stroke.solid(Tint.Role.PLATE_EDGE, 1));
    List<Shape> shapes = new ArrayList<>();
    if (outline.isPresent()) {
      shapes.add(outlined(outline.get(), 0, 0, style));
    } else {
      shapes.add(
          new Shape.Rectangle(
              sheet.modelX(sheet.plotLeft() + sheet.plotWidth() / 2),
              sheet.modelY(sheet.plotTop() + sheet.plotHeight() / 2),
              sheet.plotWidth() / sheet.scale(),
              sheet.plotHeight() / sheet.scale(),
              0,
              Style.filled(Tint.Role.PLATE)));
    }
    shapes.add(centre());
    return new Shape.Group("plate", PathWords.CENTRE, shapes);
  }

  private Shape centre() {
    return new Shape.Symbol(Mark.PLUS, 0, 0, 13, 0, Style.filled(Tint.Role.PLATE_EDGE));
  }

  /** The magnets' outlines. */
  Shape.Group magnets() {
    List<Shape> shapes = new ArrayList<>();
    for (PlateMagnet magnet : magnets) {
      PlateMagnet.Face face = magnet.face();
      Style style = Style.of(face.pale(), Stroke.solid(face.strong(), 1.4));
      Shape body =
          magnet.outline() instanceof Outline.Spot
              ? new Shape.Symbol(Mark.DISC, magnet.x(), magnet.y(), SPOT, 0, style)
              : outlined(magnet.outline(), magnet.x(), magnet.y(), style);
      shapes.add(new Shape.Group("magnet", PathWords.magnet(magnet), List.of(body)));
    }
    return new Shape.Group("magnets", "", shapes);
  }

  /** The magnets' outlines alone, light and dark, to be seen on any ground. */
  Shape.Group outlines() {
    List<Shape> shapes = new ArrayList<>();
    for (PlateMagnet magnet : magnets) {
      List<Shape> body = new ArrayList<>();
      for (Stroke stroke :
          List.of(Stroke.solid(Tint.Role.PAPER, 3.4), Stroke.solid(Tint.Role.INK, 1.4))) {
        Style style = Style.outlined(stroke);
        body.add(
            magnet.outline() instanceof Outline.Spot
                ? new Shape.Symbol(Mark.DISC, magnet.x(), magnet.y(), SPOT, 0, style)
                : outlined(magnet.outline(), magnet.x(), magnet.y(), style));
      }
      shapes.add(new Shape.Group("magnet", PathWords.magnet(magnet), body));
    }
    return new Shape.Group("magnets", "", shapes);
  }

  /** Pole and label of each magnet, where there is room: the label, cut short, or its number. */
  Shape.Group tags() {
    List<Shape> shapes = new ArrayList<>();
    for (PlateMagnet magnet : magnets) {
      tag(magnet, shapes);
    }
    return new Shape.Group("labels", "", shapes);
  }

  private void tag(PlateMagnet magnet, List<Shape> shapes) {
    double x = sheet.pixelX(magnet.x());
    double y = sheet.pixelY(magnet.y());
    double reach = reach(magnet);
    LabelPlacing.Place place =
        new LabelPlacing.Place(LabelPlacing.Box.about(x, y, BADGE, BADGE), false, false);
    String words = "";
    for (String attempt : attempts(magnet)) {
      double width = BADGE + (attempt.isEmpty() ? 0 : 4 + TextWidth.of(attempt, LABEL_SIZE));
      place = labels.find(x, y, reach, width, BADGE + 1);
      words = attempt;
      if (place.clear()) {
        break;
      }
    }
    LabelPlacing.Box box = place.clear() ? place.box() : LabelPlacing.Box.about(x, y, BADGE, BADGE);
    labels.keepClear(box);
    if (place.clear() && place.far()) {
      shapes.addAll(Leader.lines(sheet, magnet.x(), magnet.y(), reach, box));
    }
    double middle = box.y() + box.height() / 2;
    badge(magnet.face(), box.x() + BADGE / 2, middle, shapes);
    if (!words.isEmpty() && place.clear()) {
      shapes.add(
          new Shape.Text(
              words,
              sheet.modelX(box.x() + BADGE + 4),
              sheet.modelY(middle + 0.36 * LABEL_SIZE),
              LABEL_SIZE,
              Anchor.START,
              Tint.Role.INK,
              true));
    }
  }

  private static List<String> attempts(PlateMagnet magnet) {
    String number = String.valueOf(magnet.number());
    if (magnet.label().isEmpty()) {
      return List.of(number);
    }
    return List.of(
        PlainText.shortened(magnet.label(), LONGEST_LABEL),
        PlainText.shortened(magnet.label(), SHORT_LABEL),
        number);
  }

  private void badge(PlateMagnet.Face face, double x, double y, List<Shape> shapes) {
    Stroke edge = Stroke.solid(Tint.Role.PAPER, 1.2);
    double size = face.badge().isDisc() ? BADGE : BADGE * 1.1;
    shapes.add(
        new Shape.Symbol(
            face.badge(),
            sheet.modelX(x),
            sheet.modelY(y),
            size,
            0,
            Style.of(face.strong(), edge)));
    shapes.add(
        new Shape.Text(
            face.letter(),
            sheet.modelX(x),
            sheet.modelY(y + 0.36 * LETTER),
            LETTER,
            Anchor.MIDDLE,
            Tint.Role.PAPER,
            false));
  }

  private double reach(PlateMagnet magnet) {
    return Math.max(SPOT / 2, magnet.outline().reach() * sheet.scale());
  }

  private static Shape outlined(Outline outline, double x, double y, Style style) {
    if (outline instanceof Outline.Annulus ring) {
      return new Shape.Ring(x, y, ring.inner(), ring.outer(), style);
    }
    if (outline instanceof Outline.Oblong block) {
      return new Shape.Rectangle(x, y, block.width(), block.height(), block.turn(), style);
    }
    return new Shape.Circle(x, y, outline.reach(), style);
  }
}
