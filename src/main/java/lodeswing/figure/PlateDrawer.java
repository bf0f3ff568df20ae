package lodeswing.figure;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Draws the plate, its magnets and the tags that say each magnet's pole and label. */
final class PlateDrawer {
  static final double BADGE = 15;

  /** Size of the cross at the centre. */
  static final double CENTRE = 13;

  private static final double HEIGHT = BADGE + 1;
  private static final double LETTER = 10.5;
  private static final double LABEL_SIZE = 12.5;
  private static final int LONGEST_LABEL = 24;
  private static final int SHORT_LABEL = 9;
  private static final double SPOT = 13;

  private final Sheet sheet;
  private final List<PlateMagnet> magnets;
  private final LabelPlacing labels;
  private final List<Footprint> footprints;
  private int unlabelled;
  private int numbered;

  PlateDrawer(Sheet sheet, List<PlateMagnet> magnets, LabelPlacing labels) {
    this.sheet = sheet;
    this.magnets = magnets;
    this.labels = labels;
    this.footprints =
        magnets.stream().map(magnet -> Footprint.of(sheet, magnet, SPOT / 2)).toList();
    footprints.forEach(labels::magnet);
  }

  /** The plate's surface with its outline, or the ground of the plot where none is known. */
  Shape.Group plate(Optional<Outline> outline, boolean centreSeen) {
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
    if (centreSeen) {
      shapes.add(new Shape.Symbol(Mark.PLUS, 0, 0, CENTRE, 0, centreStyle()));
    }
    return new Shape.Group("plate", centreSeen ? PathWords.CENTRE : "", shapes);
  }

  /** Whether no magnet hides the cross at the centre; keeps it clear of labels then. */
  boolean keepCentre() {
    double x = sheet.pixelX(0);
    double y = sheet.pixelY(0);
    for (int i = 0; i < magnets.size(); i++) {
      boolean inHole =
          magnets.get(i).outline() instanceof Outline.Annulus ring
              && Math.hypot(magnets.get(i).x(), magnets.get(i).y())
                  < ring.inner() - CENTRE / 2 / sheet.scale();
      double[] near = footprints.get(i).nearest(x, y);
      if (!inHole && Math.hypot(near[0] - x, near[1] - y) < CENTRE / 4) {
        return false;
      }
    }
    labels.keepClear(LabelPlacing.Box.about(x, y, CENTRE, CENTRE));
    return true;
  }

  static Style centreStyle() {
    return Style.filled(Tint.Role.PLATE_EDGE);
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

  /**
   * Pole and label of each magnet, where there is room: the label, cut short, or its number. Where
   * there is none, the pole alone, on the magnet.
   */
  Shape.Group tags() {
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < magnets.size(); i++) {
      tag(magnets.get(i), footprints.get(i), shapes);
    }
    return new Shape.Group("labels", "", shapes);
  }

  /** The pole of each magnet on its middle, by letter and by shape, whatever lies there. */
  Shape.Group poles() {
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < magnets.size(); i++) {
      Footprint at = footprints.get(i);
      labels.keepClear(LabelPlacing.Box.about(at.x(), at.y(), BADGE + 1, BADGE + 1));
      badge(magnets.get(i).face(), at.x(), at.y(), shapes);
    }
    return new Shape.Group("poles", "", shapes);
  }

  /** The label of each magnet that has one, where there is room. */
  Shape.Group names() {
    List<Shape> shapes = new ArrayList<>();
    for (int i = 0; i < magnets.size(); i++) {
      PlateMagnet magnet = magnets.get(i);
      if (!magnet.label().isEmpty() && footprints.get(i).reach() > 0) {
        name(magnet, footprints.get(i), shapes);
      }
    }
    return new Shape.Group("labels", "", shapes);
  }

  private void name(PlateMagnet magnet, Footprint footprint, List<Shape> shapes) {
    String words = PlainText.shortened(magnet.label(), LONGEST_LABEL);
    Optional<LabelPlacing.Place> place =
        labels.besideMagnet(footprint, TextWidth.of(words, LABEL_SIZE), HEIGHT);
    if (place.isEmpty()) {
      unlabelled++;
      return;
    }
    labels.take(place.get());
    place.get().leader().ifPresent(line -> shapes.addAll(Leader.lines(sheet, line)));
    LabelPlacing.Box box = place.get().box();
    shapes.add(
        new Shape.Text(
            words,
            sheet.modelX(box.x()),
            sheet.modelY(box.middleY() + 0.36 * LABEL_SIZE),
            LABEL_SIZE,
            Anchor.START,
            Tint.Role.INK,
            true));
  }

  /** How many magnets bear neither label nor number; known once the tags are drawn. */
  int unlabelled() {
    return unlabelled;
  }

  /** How many magnets bear their number in place of a label. */
  int numbered() {
    return numbered;
  }

  private void tag(PlateMagnet magnet, Footprint footprint, List<Shape> shapes) {
    for (String words : attempts(magnet)) {
      double width = BADGE + 4 + TextWidth.of(words, LABEL_SIZE);
      Optional<LabelPlacing.Place> place = labels.besideMagnet(footprint, width, HEIGHT);
      if (place.isPresent()) {
        labels.take(place.get());
        place.get().leader().ifPresent(line -> shapes.addAll(Leader.lines(sheet, line)));
        tag(magnet.face(), words, place.get().box(), shapes);
        numbered += !magnet.label().isEmpty() && words.equals(number(magnet)) ? 1 : 0;
        return;
      }
    }
    unlabelled++;
    LabelPlacing.Box within =
        LabelPlacing.Box.about(footprint.x(), footprint.y(), BADGE + 1, BADGE + 1);
    if (labels.free(within, footprint)) {
      labels.keepClear(within);
      badge(magnet.face(), footprint.x(), footprint.y(), shapes);
    }
  }

  private void tag(PlateMagnet.Face face, String words, LabelPlacing.Box box, List<Shape> shapes) {
    badge(face, box.x() + BADGE / 2, box.middleY(), shapes);
    shapes.add(
        new Shape.Text(
            words,
            sheet.modelX(box.x() + BADGE + 4),
            sheet.modelY(box.middleY() + 0.36 * LABEL_SIZE),
            LABEL_SIZE,
            Anchor.START,
            Tint.Role.INK,
            true));
  }

  private List<String> attempts(PlateMagnet magnet) {
    List<String> attempts = new ArrayList<>();
    if (!magnet.label().isEmpty()) {
      attempts.add(PlainText.shortened(magnet.label(), LONGEST_LABEL));
      String brief = PlainText.shortened(magnet.label(), SHORT_LABEL);
      boolean shared =
          magnets.stream()
              .anyMatch(
                  other ->
                      !other.label().equals(magnet.label())
                          && PlainText.shortened(other.label(), SHORT_LABEL).equals(brief));
      if (!shared) {
        attempts.add(brief);
      }
    }
    attempts.add(number(magnet));
    return attempts;
  }

  private static String number(PlateMagnet magnet) {
    return String.valueOf(magnet.number());
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
