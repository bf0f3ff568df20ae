package lodeswing.figure;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.OptionalDouble;

/**
 * The words of a picture of a path, in English: figures with units, legend and alternative text.
 */
final class PathWords {
  static final String CENTRE = "centre";
  static final String LATER = ", later than the picture shows";
  static final String SCALE = "Scale bar: ";
  private static final int MOST_NAMES = 8;
  private static final int LONGEST_NAME = 60;
  private static final String NO_BREAK = "\u00a0";

  private final Measure measure;

  PathWords(Measure measure) {
    this.measure = measure;
  }

  /** A time with its unit, to three digits. */
  String time(double seconds) {
    return withUnit(digits(seconds, 3), measure.time());
  }

  /** A length given in model units, with its shown unit, to three digits. */
  String length(double metres) {
    return withUnit(digits(metres * measure.shownPerUnit(), 3), measure.length());
  }

  /** A plain number, to two digits. */
  static String figure(double value) {
    return digits(value, 2);
  }

  /** A place given in model units: tenths of a millimetre, or thousandths of a plain unit. */
  String place(double x, double y) {
    int decimals = measure == Measure.BENCH ? 1 : 3;
    String pair = coordinate(x, decimals) + "," + NO_BREAK + coordinate(y, decimals);
    return withUnit("(" + pair + ")", measure.length());
  }

  /** What becomes of the bob at its rest point. */
  String rest(Trail trail, Trail.End end) {
    String name = PlainText.shortened(end.name(), LONGEST_NAME);
    return (name.isEmpty() ? "at rest" : "at rest: " + name) + settled(trail);
  }

  private String settled(Trail trail) {
    OptionalDouble at = trail.horizons().settledAt();
    return (at.isPresent() ? ", settled at " + time(at.getAsDouble()) : "")
        + (trail.restsLater() ? LATER : "");
  }

  /** How many labels the picture leaves out. */
  static String unlabelled(int count) {
    return (count == 1 ? "1 label is" : count + " labels are") + " left out for want of room";
  }

  /** That magnets bear numbers in place of labels. */
  static String numbered(int count) {
    return (count == 1 ? "1 magnet bears its number" : count + " magnets bear their numbers")
        + " for want of room";
  }

  static String face(PlateMagnet.Face face) {
    return switch (face) {
      case NORTH -> "north pole up";
      case SOUTH -> "south pole up";
      case ATTRACTS -> "attracts";
      case REPELS -> "repels";
    };
  }

  /** One magnet in words. */
  static String magnet(PlateMagnet magnet) {
    String name = PlainText.shortened(magnet.label(), LONGEST_NAME);
    return "Magnet "
        + magnet.number()
        + (name.isEmpty() ? "" : ", " + name)
        + ", "
        + face(magnet.face());
  }

  /** The whole picture in words. */
  static AlternativeText alternative(PathPicture picture, PathLegend.Seen seen) {
    PathWords words = new PathWords(picture.measure());
    StringBuilder text = new StringBuilder();
    for (Trail trail : picture.trails()) {
      words.append(trail, text);
    }
    words.append(picture.magnets(), text);
    append(seen, text);
    String subject =
        picture.trails().isEmpty() ? "Magnets on a plate" : "Path of a bob over magnets";
    String title = picture.title().isEmpty() ? subject : picture.title();
    return new AlternativeText("en", title, text.toString());
  }

  private void append(Trail trail, StringBuilder text) {
    String who = trail.name().isEmpty() ? "The bob" : "The bob of path " + trail.name();
    text.append(who).append(" is released at ").append(place(trail.start().x(), trail.start().y()));
    if (trail.start().moving()) {
      double speed = Math.hypot(trail.start().vx(), trail.start().vy());
      String unit =
          measure == Measure.BENCH ? measure.length() + "/" + measure.time() : measure.length();
      text.append(" with a speed of ")
          .append(withUnit(digits(speed * measure.shownPerUnit(), 3), unit));
    } else {
      text.append(" from rest");
    }
    Trail.Horizons horizons = trail.horizons();
    if (trail.end().isPresent()) {
      String where = trail.end().get().where();
      text.append(" and comes to rest ");
      text.append(where.isEmpty() ? "" : PlainText.shortened(where, LONGEST_NAME) + ", ");
      text.append("at ").append(place(trail.end().get().x(), trail.end().get().y()));
      text.append(settled(trail));
      text.append(". ");
    } else {
      text.append(" and is still moving when the picture ends at ");
      text.append(time(trail.ends())).append(". ");
    }
    horizons
        .sealedAt()
        .ifPresent(at -> text.append("Its end is decided from ").append(time(at)).append(" on. "));
    OptionalDouble trusted = trail.within(horizons.trustedUntil());
    if (trusted.isPresent()) {
      text.append("The computed path is trusted until ");
      text.append(time(trusted.getAsDouble())).append(". ");
    } else {
      text.append("The computed path is trusted to its end. ");
    }
    trail
        .within(horizons.foretoldUntil())
        .ifPresent(
            at -> text.append("A hand can foretell it until ").append(time(at)).append(". "));
    for (Trail.Happening event : trail.happenings().stream().limit(MOST_NAMES).toList()) {
      text.append("At ").append(time(event.time())).append(": ").append(event.words()).append(". ");
    }
  }

  /** What room did not allow. */
  static void append(PathLegend.Seen seen, StringBuilder text) {
    if (seen.unlabelled() > 0) {
      text.append(" In the picture ").append(unlabelled(seen.unlabelled())).append('.');
    }
    if (seen.numbered() > 0) {
      text.append(" In the picture ").append(numbered(seen.numbered())).append('.');
    }
  }

  private void append(List<PlateMagnet> magnets, StringBuilder text) {
    if (magnets.isEmpty()) {
      text.append("There are no magnets on the plate.");
      return;
    }
    List<String> parts = new ArrayList<>();
    for (PlateMagnet magnet : magnets.subList(0, Math.min(MOST_NAMES, magnets.size()))) {
      String name = PlainText.shortened(magnet.label(), LONGEST_NAME);
      parts.add(
          (name.isEmpty() ? "magnet " + magnet.number() : name)
              + " at "
              + place(magnet.x(), magnet.y())
              + " ("
              + face(magnet.face())
              + ")");
    }
    text.append(magnets.size() == 1 ? "One magnet: " : magnets.size() + " magnets: ");
    text.append(String.join("; ", parts));
    if (magnets.size() > parts.size()) {
      text.append("; and ").append(magnets.size() - parts.size()).append(" more");
    }
    text.append('.');
  }

  private String coordinate(double value, int decimals) {
    BigDecimal shown =
        BigDecimal.valueOf(value * measure.shownPerUnit())
            .setScale(decimals, RoundingMode.HALF_EVEN)
            .stripTrailingZeros();
    return signed(shown);
  }

  /** A number to so many digits, whole digits never rounded off, without trailing zeros. */
  private static String digits(double value, int significant) {
    BigDecimal exact = BigDecimal.valueOf(value);
    int whole = exact.precision() - exact.scale();
    return signed(
        exact
            .round(new MathContext(Math.max(significant, whole), RoundingMode.HALF_EVEN))
            .stripTrailingZeros());
  }

  private static String signed(BigDecimal value) {
    return value.signum() == 0 ? "0" : value.toPlainString().replace('-', '−');
  }

  private static String withUnit(String figure, String unit) {
    return unit.isEmpty() ? figure : figure + NO_BREAK + unit;
  }
}
