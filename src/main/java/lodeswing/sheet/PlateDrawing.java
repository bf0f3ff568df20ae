package lodeswing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lodeswing.figure.Anchor;
import lodeswing.figure.Dash;
import lodeswing.figure.Outline;
import lodeswing.figure.PlateMagnet;
import lodeswing.figure.Shape;
import lodeswing.figure.Style;
import lodeswing.figure.Tint;
import lodeswing.figure.ViewBox;
import lodeswing.letters.Typesetter;
import lodeswing.words.Words;

/**
 * The plate in true scale: each magnet's outline with a cross at its centre, number, pole and
 * label, the point under the bob, the place of release. In black and grey it says the same.
 *
 * <p>Things are placed once for the whole plate, so that every page on which they are seen shows
 * them alike.
 */
final class PlateDrawing {

  private static final double OUTLINE = 0.35;
  private static final double FINE = 0.13;
  private static final double AXIS = 0.18;

  /** Least half width of an outline that has room for number and pole. */
  private static final double ROOMY = 4.3 * Ink.MM;

  private static final double LARGEST = 15;
  private static final double SMALLEST = 7.5;
  private static final double LABEL = 10;
  private static final double GRADE = 8;
  private static final double LABEL_WIDTH = 38 * Ink.MM;
  private static final int LABEL_LINES = 3;

  /** Radius of the ring about the point under the bob. */
  private static final double RING = 2.5 * Ink.MM;

  private static final double ARM = 6 * Ink.MM;
  private static final double SPOT = 2 * Ink.MM;
  private static final double DIAMOND = 3.5 * Ink.MM;

  /** About magnets where no plate is stated, for their labels. */
  private static final double MARGIN = 14 * Ink.MM;

  private final PlacingPlan plan;
  private final Words words;

  /** The axes and the plate's edge, under all things. */
  private final List<Shape> ground = new ArrayList<>();

  private final List<Thing> things = new ArrayList<>();
  private final List<Integer> unnamed = new ArrayList<>();

  /**
   * Something to draw where any of its box is seen.
   *
   * @param box what it takes
   * @param whole whether it is drawn only where all of it is seen, or its middle on its own page
   * @param shapes in the plate's own places
   */
  private record Thing(ViewBox box, boolean whole, List<Shape> shapes) {}

  /**
   * The drawing.
   *
   * @param seams lines at which pages meet, that texts keep clear of where they can
   */
  PlateDrawing(PlacingPlan plan, Words words, List<Crowd.Box> seams) {
    this.plan = plan;
    this.words = words;
    var crowd = new Crowd();
    seams.forEach(crowd::line);
    ViewBox all = bounds(plan);
    crowd.line(new Crowd.Box(all.left(), 0, all.width(), 0));
    crowd.line(new Crowd.Box(0, all.bottom(), 0, all.height()));
    plan.magnets().forEach(one -> crowd.keepClear(body(one.magnet())));
    plate();
    Crowd.Body origin = origin(crowd);
    Optional<Crowd.Body> release = plan.release().map(spot -> release(spot, crowd));
    plan.magnets().forEach(one -> outline(one.magnet()));
    plan.magnets().forEach(one -> texts(one, origin, crowd));
    named(origin, words.text("placing.under-bob"), crowd);
    release.ifPresent(body -> named(body, released(body), crowd));
  }

  /** Numbers of the magnets whose label found no room. */
  List<Integer> unnamed() {
    return unnamed;
  }

  /** What the sheet must show. */
  static ViewBox bounds(PlacingPlan plan) {
    double[] box = {-2 * ARM, -2 * ARM, 2 * ARM, 2 * ARM};
    plan.plate()
        .ifPresent(
            plate -> {
              Outline.Oblong square =
                  plate instanceof Outline.Oblong own
                      ? own
                      : new Outline.Oblong(2 * plate.reach(), 2 * plate.reach(), 0);
              grow(box, 0, 0, square.width() / 2 + Ink.MM, square.height() / 2 + Ink.MM);
            });
    double margin = plan.plate().isPresent() ? Ink.MM : MARGIN;
    for (SheetMagnet one : plan.magnets()) {
      double reach = reach(one.magnet()) + margin;
      grow(box, one.magnet().x(), one.magnet().y(), reach, reach);
    }
    plan.release().ifPresent(spot -> grow(box, spot.x(), spot.y(), 2 * ARM, 2 * ARM));
    return new ViewBox(box[0], box[1], box[2] - box[0], box[3] - box[1]);
  }

  private static void grow(double[] box, double x, double y, double across, double up) {
    box[0] = Math.min(box[0], x - across);
    box[1] = Math.min(box[1], y - up);
    box[2] = Math.max(box[2], x + across);
    box[3] = Math.max(box[3], y + up);
  }

  private static double reach(PlateMagnet magnet) {
    return Math.max(SPOT, magnet.outline().reach());
  }

  private static Crowd.Body body(PlateMagnet magnet) {
    if (magnet.outline() instanceof Outline.Oblong block) {
      double cos = Math.abs(Math.cos(block.turn()));
      double sin = Math.abs(Math.sin(block.turn()));
      return new Crowd.Body(
          magnet.x(),
          magnet.y(),
          (block.width() * cos + block.height() * sin) / 2,
          (block.width() * sin + block.height() * cos) / 2,
          false);
    }
    return Crowd.Body.disc(magnet.x(), magnet.y(), reach(magnet));
  }

  private void add(double x, double y, double reach, List<Shape> shapes) {
    things.add(new Thing(new ViewBox(x - reach, y - reach, 2 * reach, 2 * reach), false, shapes));
  }

  private void plate() {
    var axis = Ink.line(Tint.Role.PLATE_EDGE, AXIS).with(Dash.DASHED);
    ViewBox all = bounds(plan);
    ground.add(Ink.segment(all.left(), 0, all.right(), 0, axis));
    ground.add(Ink.segment(0, all.bottom(), 0, all.top(), axis));
    plan.plate().ifPresent(plate -> ground.add(shape(plate, 0, 0, OUTLINE, false)));
  }

  private static Shape shape(Outline outline, double x, double y, double width, boolean dashed) {
    var line = dashed ? Ink.dashed(Tint.Role.INK, width) : Ink.line(Tint.Role.INK, width);
    Style style = Style.outlined(line);
    if (outline instanceof Outline.Annulus ring) {
      return new Shape.Ring(x, y, ring.inner(), ring.outer(), style);
    }
    if (outline instanceof Outline.Oblong block) {
      return new Shape.Rectangle(x, y, block.width(), block.height(), block.turn(), style);
    }
    return new Shape.Circle(x, y, Math.max(SPOT, outline.reach()), style);
  }

  private void outline(PlateMagnet magnet) {
    List<Shape> shapes = new ArrayList<>();
    shapes.add(shape(magnet.outline(), magnet.x(), magnet.y(), OUTLINE, false));
    double room = room(magnet.outline());
    double arm = Math.max(1.2 * Ink.MM, Math.min(3 * Ink.MM, 0.24 * room));
    shapes.addAll(Ink.cross(magnet.x(), magnet.y(), arm, Ink.line(Tint.Role.INK, FINE)));
    if (room >= ROOMY) {
      inside(magnet, room, shapes);
    }
    add(magnet.x(), magnet.y(), reach(magnet), shapes);
  }

  /** Radius of the free circle about the centre. */
  private static double room(Outline outline) {
    if (outline instanceof Outline.Annulus ring) {
      return ring.inner();
    }
    if (outline instanceof Outline.Oblong block) {
      return Math.min(block.width(), block.height()) / 2;
    }
    return Math.max(SPOT, outline.reach());
  }

  /** The number over the centre, the pole below it. */
  private static void inside(PlateMagnet magnet, double room, List<Shape> shapes) {
    double size = Math.max(SMALLEST, Math.min(LARGEST, 0.55 * room / Ink.POINT));
    double half = size * Ink.POINT * Ink.CAPITALS / 2;
    shapes.add(
        Ink.text(
            Integer.toString(magnet.number()),
            magnet.x(),
            magnet.y() + 0.54 * room - half,
            size,
            Anchor.MIDDLE,
            Tint.Role.INK));
    shapes.addAll(pole(magnet.face(), magnet.x(), magnet.y() - 0.54 * room, size));
  }

  /** The letter of a pole: north in light on a dark disc, south in dark in a square. */
  static List<Shape> pole(PlateMagnet.Face face, double x, double y, double size) {
    double em = size * Ink.POINT;
    boolean disc = face.badge().isDisc();
    Style style =
        disc ? Style.filled(Tint.Role.INK) : Style.outlined(Ink.line(Tint.Role.INK, 0.25));
    Shape ground =
        disc
            ? new Shape.Circle(x, y, 0.6 * em, style)
            : new Shape.Rectangle(x, y, 1.06 * em, 1.06 * em, 0, style);
    double letter = 0.82 * size;
    return List.of(
        ground,
        Ink.text(
            face.letter(),
            x,
            y - letter * Ink.POINT * Ink.CAPITALS / 2,
            letter,
            Anchor.MIDDLE,
            disc ? Tint.Role.PAPER : Tint.Role.INK));
  }

  /** A ring with a cross; about a magnet that lies there, where one does. */
  private Crowd.Body origin(Crowd crowd) {
    var line = Ink.line(Tint.Role.INK, AXIS);
    double ring =
        plan.magnets().stream()
            .map(SheetMagnet::magnet)
            .filter(magnet -> Math.hypot(magnet.x(), magnet.y()) < SPOT)
            .mapToDouble(magnet -> reach(magnet) + SPOT / 2)
            .max()
            .orElse(0);
    double radius = Math.max(RING, ring);
    double arm = radius + ARM - RING;
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Shape.Circle(0, 0, radius, Style.outlined(line)));
    if (ring == 0) {
      shapes.addAll(Ink.cross(0, 0, arm, line));
    } else {
      shapes.add(Ink.segment(-arm, 0, -radius, 0, line));
      shapes.add(Ink.segment(radius, 0, arm, 0, line));
      shapes.add(Ink.segment(0, -arm, 0, -radius, line));
      shapes.add(Ink.segment(0, radius, 0, arm, line));
    }
    add(0, 0, arm, shapes);
    Crowd.Body body = Crowd.Body.disc(0, 0, radius);
    crowd.keepClear(body);
    arms(0, 0, arm, crowd);
    return body;
  }

  private static void arms(double x, double y, double arm, Crowd crowd) {
    crowd.line(new Crowd.Box(x - arm, y, 2 * arm, 0));
    crowd.line(new Crowd.Box(x, y - arm, 0, 2 * arm));
  }

  private Crowd.Body release(PlacingPlan.Spot spot, Crowd crowd) {
    var line = Ink.line(Tint.Role.INK, 0.3);
    List<Shape> shapes =
        new ArrayList<>(Ink.cross(spot.x(), spot.y(), ARM, Ink.line(Tint.Role.INK, AXIS)));
    shapes.add(
        new Shape.Rectangle(
            spot.x(), spot.y(), DIAMOND, DIAMOND, Math.PI / 4, Style.outlined(line)));
    add(spot.x(), spot.y(), ARM, shapes);
    Crowd.Body body = Crowd.Body.disc(spot.x(), spot.y(), DIAMOND);
    crowd.keepClear(body);
    arms(spot.x(), spot.y(), ARM, crowd);
    return body;
  }

  private String released(Crowd.Body at) {
    return words.text(
        "placing.release",
        Map.of("x", millimetres(at.x(), words), "y", millimetres(at.y(), words)));
  }

  /** A length as it is read off a ruler, to a hundredth of a millimetre. */
  static String millimetres(double metres, Words words) {
    return words.number(Math.rint(metres / Ink.MM * 100) / 100 + 0.0, 7);
  }

  private void named(Crowd.Body body, String text, Crowd crowd) {
    List<String> lines = Ink.lines(text, LABEL_WIDTH, GRADE, words.locale());
    place(body, lines, GRADE, List.of(), crowd);
  }

  private void texts(SheetMagnet one, Crowd.Body origin, Crowd crowd) {
    PlateMagnet magnet = one.magnet();
    boolean roomy = room(magnet.outline()) >= ROOMY;
    List<String> label = label(magnet.label());
    List<String> small = new ArrayList<>();
    if (!roomy) {
      label = new ArrayList<>(label);
      label.add(0, Integer.toString(magnet.number()) + " " + magnet.face().letter());
    }
    if (!one.grade().isEmpty()) {
      small.add(one.grade());
    }
    // The ring about a magnet under the bob is a part of it.
    boolean ringed = Math.hypot(magnet.x(), magnet.y()) < SPOT;
    Crowd.Body body = ringed ? origin : body(magnet);
    boolean said =
        place(body, label, LABEL, small, crowd) || place(body, label, LABEL, List.of(), crowd);
    if (!said && !label.isEmpty()) {
      unnamed.add(magnet.number());
    }
  }

  private List<String> label(String label) {
    if (label.isEmpty() || !Typesetter.missing(label).isEmpty()) {
      return List.of();
    }
    Locale locale = words.locale();
    List<String> lines = Ink.lines(label, LABEL_WIDTH, LABEL, locale);
    return lines.size() <= LABEL_LINES ? lines : List.of();
  }

  /** Sets lines beside something, where there is room. */
  private boolean place(
      Crowd.Body body, List<String> lines, double size, List<String> small, Crowd crowd) {
    if (lines.isEmpty() && small.isEmpty()) {
      return true;
    }
    double width = 0;
    for (String line : lines) {
      width = Math.max(width, Ink.width(line, size));
    }
    for (String line : small) {
      width = Math.max(width, Ink.width(line, GRADE));
    }
    double height = Ink.height(lines.size(), size) + Ink.height(small.size(), GRADE);
    Optional<Crowd.Box> found = crowd.beside(body, width, height);
    if (found.isEmpty()) {
      return false;
    }
    Crowd.Box box = found.get();
    List<Shape> shapes = new ArrayList<>();
    double middle = box.x() + width / 2;
    centred(lines, middle, box.y() + height, size, Tint.Role.INK, shapes);
    double below = box.y() + Ink.height(small.size(), GRADE);
    centred(small, middle, below, GRADE, Tint.Role.SOFT_INK, shapes);
    things.add(new Thing(new ViewBox(box.x(), box.y(), width, height), true, shapes));
    return true;
  }

  private static void centred(
      List<String> lines, double middle, double top, double size, Tint tint, List<Shape> shapes) {
    double baseline = top - size * Ink.POINT * (Ink.LEADING + Ink.CAPITALS) / 2;
    for (String line : lines) {
      shapes.add(Ink.text(line, middle, baseline, size, Anchor.MIDDLE, tint));
      baseline -= size * Ink.POINT * Ink.LEADING;
    }
  }

  /** Whether a mark of a size at a place would lie over a magnet. */
  boolean covers(double x, double y, double reach) {
    var box = new Crowd.Box(x - reach, y - reach, 2 * reach, 2 * reach);
    return plan.magnets().stream().anyMatch(one -> box.meets(body(one.magnet())));
  }

  /**
   * What a window shows, in the plate's own places.
   *
   * @param window the part
   * @param own the part of it that no other window has
   */
  List<Shape> within(ViewBox window, ViewBox own) {
    List<Shape> seen = new ArrayList<>(ground);
    for (Thing thing : things) {
      ViewBox box = thing.box();
      boolean meets = meet(box, window);
      boolean holds =
          window.contains(box.left(), box.bottom()) && window.contains(box.right(), box.top());
      boolean middle = own.contains(box.left() + box.width() / 2, box.bottom() + box.height() / 2);
      if (meets && (!thing.whole() || holds || middle)) {
        seen.addAll(thing.shapes());
      }
    }
    return seen;
  }

  /** Whether a part of the plane shows more than an axis. */
  boolean shows(ViewBox part) {
    return plan.plate().filter(plate -> hasEdge(plate, part)).isPresent()
        || things.stream().anyMatch(thing -> meet(thing.box(), part));
  }

  /** Whether the edge of a plate runs through a part. */
  private static boolean hasEdge(Outline plate, ViewBox part) {
    double across = Math.max(Math.abs(part.left()), Math.abs(part.right()));
    double up = Math.max(Math.abs(part.bottom()), Math.abs(part.top()));
    double x = Math.max(0, Math.max(part.left(), -part.right()));
    double y = Math.max(0, Math.max(part.bottom(), -part.top()));
    if (plate instanceof Outline.Oblong square) {
      double right = square.width() / 2;
      double top = square.height() / 2;
      double line = OUTLINE * Ink.MM;
      boolean outside = x > right + line || y > top + line;
      boolean inside = across < right - line && up < top - line;
      return !outside && !inside;
    }
    return Math.hypot(x, y) < plate.reach() + OUTLINE * Ink.MM
        && Math.hypot(across, up) > plate.reach() - OUTLINE * Ink.MM;
  }

  private static boolean meet(ViewBox one, ViewBox other) {
    return one.left() < other.right()
        && one.right() > other.left()
        && one.bottom() < other.top()
        && one.top() > other.bottom();
  }
}
