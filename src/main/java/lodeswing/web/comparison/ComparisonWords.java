package lodeswing.web.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.comparison.ComparisonResult;
import lodeswing.analysis.comparison.Hint;
import lodeswing.analysis.comparison.RecordedEnd;
import lodeswing.analysis.comparison.Verdict;
import lodeswing.web.body.Numbers;

/** A comparison in words. */
final class ComparisonWords {

  /** Fewer places a small swing make third differences of them say little. */
  private static final double FEW_PLACES = 20;

  /** Fewer swings say little. */
  private static final double FEW_SWINGS = 2;

  private static final double PERCENT = 100;

  private final ComparisonRequest request;
  private final ComparisonAnswers answers;
  private final ComparisonResult found;

  ComparisonWords(ComparisonRequest request, ComparisonAnswers answers) {
    this.request = request;
    this.answers = answers;
    this.found = answers.found();
  }

  /** The result in words. */
  String sentence() {
    StringBuilder text = new StringBuilder(verdict());
    found.hints().forEach(hint -> text.append(' ').append(hint(hint)));
    ends().ifPresent(words -> text.append(' ').append(words));
    return text.toString();
  }

  private String verdict() {
    return switch (found.verdict()) {
      case AGREES -> agrees();
      case CHANCE ->
          "The two part at "
              + time(found.partedAt().orElse(answers.until()))
              + ", no sooner than chance foretells: "
              + horizon()
              + " Up to there they are "
              + nearness()
              + ".";
      case SOONER ->
          "From "
              + time(found.departedAt().orElse(answers.from()))
              + " on the recording is farther from the foretold path than the rig as described"
              + " allows, so something differs. "
              + parted();
      case FROM_START ->
          "The recording differs from the start: over its first half swing it is "
              + length(found.near().startRms())
              + " (rms) off "
              + (request.release().isPresent()
                  ? "the path of the told release"
                  : "any path of this rig")
              + ". Check its unit, scale, origin, turn and the direction of its axes first, then the rig.";
    };
  }

  private String agrees() {
    boolean blurred = found.foretoldUntil().isPresent() || found.trustedUntil().isPresent();
    String rms = nearness() + ", as noise and start let them be";
    return blurred
        ? "The recording agrees with the rig all along: up to "
            + time(found.near().until())
            + ", as long as the path can be foretold, the two are "
            + rms
            + ", and they do not part later either."
        : "The recording agrees with the rig all along: until "
            + time(answers.until())
            + " the two are "
            + rms
            + ".";
  }

  private String nearness() {
    return length(found.near().rms())
        + " apart (rms, "
        + length(found.near().greatest())
        + " at most)";
  }

  private String parted() {
    return found.partedAt().isPresent()
        ? "By "
            + time(found.partedAt().getAsDouble())
            + " they are "
            + length(found.partedDistance())
            + " apart; "
            + horizon()
        : "They are " + nearness() + " up to " + time(found.near().until()) + ".";
  }

  private String horizon() {
    if (found.foretoldUntil().isPresent()) {
      return "from what is known of the start the path can be foretold until "
          + time(found.foretoldUntil().getAsDouble())
          + ".";
    }
    return found.trustedUntil().isPresent()
        ? "the computed path is right until " + time(found.trustedUntil().getAsDouble()) + "."
        : "the path can be foretold all the way.";
  }

  private Optional<String> ends() {
    if (found.end().isEmpty()) {
      return Optional.empty();
    }
    RecordedEnd end = found.end().get();
    String recorded =
        end.belongs() && end.nearest().isPresent()
            ? "The recorded bob rests " + answers.names().where(end.nearest().getAsInt())
            : "The recorded bob rests where this rig has no rest point";
    String off =
        end.nearest().isPresent()
            ? " (" + length(end.distance()) + " from the computed place)"
            : "";
    String foretold =
        answers
            .endsAgree()
            .map(agree -> agree ? ", as foretold." : ", not " + predicted() + " as foretold.")
            .orElse("; where the foretold path ends is undecided.");
    return Optional.of(recorded + off + foretold);
  }

  private String predicted() {
    return answers.foretold().where();
  }

  /** What the changes of a hint are called. */
  static List<String> names(Hint.Kind kind) {
    return switch (kind) {
      case RELEASE -> List.of();
      case PERIOD -> List.of("periodPercent");
      case SCALE -> List.of("scalePercent");
      case ORIGIN -> List.of("originX", "originY");
      case AXES -> List.of("turnDeg");
    };
  }

  /** What one of a hint's own units is in that of its names. */
  double shown(Hint.Kind kind) {
    return switch (kind) {
      case RELEASE -> 1;
      case PERIOD, SCALE -> PERCENT;
      case ORIGIN -> request.layout().shownPerUnit();
      case AXES -> 180 / Math.PI;
    };
  }

  /** A hint in words. */
  String hint(Hint hint) {
    String until = " That alone explains the recording until " + time(hint.until()) + ".";
    return switch (hint.kind()) {
      case RELEASE ->
          "The rig as it is follows the recording from another release than the told one."
              + until
              + " Leave release out to compare from what was recorded.";
      case PERIOD -> period(hint.changes().get(0)) + until;
      case SCALE ->
          "A length of the recording would stand for "
              + percent(hint.changes().get(0))
              + (hint.changes().get(0).value() > 0 ? " more" : " less")
              + " on the plate than stated."
              + until;
      case ORIGIN ->
          "The recording's origin would lie "
              + place(hint.changes().get(0))
              + " farther along x and "
              + place(hint.changes().get(1))
              + " along y than stated."
              + until;
      case AXES -> axes(hint) + until;
    };
  }

  private String period(Hint.Change change) {
    double longer = (1 + change.value()) * (1 + change.value()) - 1;
    return "A swing would take "
        + percent(change)
        + (change.value() > 0 ? " longer" : " less")
        + " than foretold, as with a pendulum "
        + digits(PERCENT * Math.abs(longer), 3)
        + " % "
        + (longer > 0 ? "longer" : "shorter")
        + " where gravity alone drives it.";
  }

  /** The size of a change in percent, with its interval. */
  private static String percent(Hint.Change change) {
    double size = PERCENT * Math.abs(change.value());
    double half = PERCENT * change.halfWidth();
    return digits(size, 3)
        + " % ("
        + digits(size - half, 3)
        + " to "
        + digits(size + half, 3)
        + ")";
  }

  private String place(Hint.Change change) {
    double shown = shown(Hint.Kind.ORIGIN);
    return digits(change.value() * shown, 3)
        + " ± "
        + digits(change.halfWidth() * shown, 2)
        + (request.bench() ? " mm" : "");
  }

  private String axes(Hint hint) {
    double turn = Math.toDegrees(hint.changes().get(0).value());
    double half = Math.toDegrees(hint.changes().get(0).halfWidth());
    String turned = "turned by " + digits(turn, 3) + " ± " + digits(half, 2) + "°";
    if (!hint.reversed()) {
      return "The recording's axes would be " + turned + " beyond what is stated.";
    }
    return Math.abs(turn) <= Math.max(half, 1)
        ? "The recording's y axis would point the other way (mirrored)."
        : "The recording's y axis would point the other way (mirrored), its axes " + turned + ".";
  }

  /** Names of the times that were not reached. */
  List<String> notReached() {
    List<String> names = new ArrayList<>();
    add(names, "departedAtS", found.departedAt());
    add(names, "partedAtS", found.partedAt());
    add(names, "trustedUntilS", found.trustedUntil());
    add(names, "foretoldUntilS", found.foretoldUntil());
    return names;
  }

  private static void add(List<String> names, String name, OptionalDouble time) {
    if (time.isEmpty()) {
      names.add(name);
    }
  }

  /** What to know about the result. */
  List<String> notes() {
    List<String> notes = caveats();
    further(notes);
    return notes;
  }

  /** The same without what to do next. */
  List<String> caveats() {
    List<String> notes = new ArrayList<>();
    notes.add(start());
    if (answers.swings() < FEW_SWINGS) {
      notes.add(
          "Only "
              + digits(answers.swings(), 2)
              + " small swings were compared, which says little: record more.");
    }
    double places = answers.placesPerSwing();
    if (places < FEW_PLACES) {
      notes.add(
          "Only "
              + digits(places, 2)
              + " places were recorded in a small swing, so that a difference from the start can"
              + " hardly be told from noise: record more often.");
    }
    if (answers.found().track().first() + answers.found().track().count()
        < answers.plate().count()) {
      notes.add(
          "The foretold path ends at "
              + time(answers.until())
              + " ("
              + answers.foretold().outcomeWords()
              + "), and with it the comparison.");
    }
    if (request.tolerances().isPresent()) {
      notes.add("What the layout's tolerances leave open of its parts is allowed for.");
    }
    if (request.agreesWithin() > 0) {
      notes.add(
          "Distances up to "
              + digits(request.agreesWithin(), 3)
              + (request.bench() ? " mm" : "")
              + " count as agreement, as was asked.");
    }
    if (answers.stored().start().mirrored()) {
      notes.add("The recording is mirrored: its y axis points the other way than the plate's.");
    }
    return notes;
  }

  private String start() {
    StoredComparison.StoredStart start = answers.stored().start();
    String places = start.places() + " places, half a small swing";
    double error = Math.hypot(start.errors().get(0), start.errors().get(1));
    String known = ", known to " + length(error) + " (standard deviation).";
    return request.release().isPresent()
        ? "The release is the told one"
            + (request.canonical().has("releaseTimeS")
                ? ", at the told time to within a recorded interval"
                : "; its time was sought over " + places)
            + known
        : "The path is foretold from place and velocity as the first "
            + places
            + " from where the bob moves plainly, show them"
            + known;
  }

  private void further(List<String> notes) {
    if (found.verdict() == Verdict.SOONER || found.verdict() == Verdict.FROM_START) {
      notes.add(
          "POST the same recording to /v1/fits with what may differ as unknown (lengthMm, gapMm,"
              + " the loss, magnet.all.remanenceT, originX, originY, turnDeg, scale) to have it"
              + " sought.");
    }
    if (found.hints().size() > 1) {
      notes.add("Each hint would do alone; which one is true the recording does not tell.");
    }
    if (found.verdict() == Verdict.CHANCE && answers.endsAgree().isPresent()) {
      notes.add(
          "Beyond the time up to which a path can be foretold whether the ends agree is chance.");
    }
  }

  private String time(double seconds) {
    String figure = digits(seconds, 3);
    return request.bench() ? figure + " s" : "t = " + figure;
  }

  private String length(double metres) {
    return digits(metres * request.layout().shownPerUnit(), 2) + (request.bench() ? " mm" : "");
  }

  private static String digits(double value, int digits) {
    return Numbers.plain(Numbers.toDigits(value, digits));
  }
}
