package lodeswing.web.safety;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import lodeswing.safety.MagnetKind;
import lodeswing.safety.SafetyFigure;
import lodeswing.safety.SafetyNote;
import lodeswing.safety.Severity;
import lodeswing.words.Words;

/** Every text of the safety notes in one language. */
final class SafetyWords {

  private static final int DIGITS = 3;
  private static final int MOST_NAMES = 6;

  private final Words words;

  SafetyWords(Locale locale) {
    this.words = Words.of("safety", locale);
  }

  /** The language and country that they are written for (BCP 47). */
  String language() {
    return words.locale().toLanguageTag();
  }

  /** What the notes are headed by. */
  String heading(Optional<String> title) {
    return title.map(own -> words.text("heading", Map.of("title", own))).orElse(title());
  }

  String title() {
    return words.text("title");
  }

  String title(SafetyNote note) {
    return words.text(note.code().word() + ".title");
  }

  String severity(Severity severity) {
    return words.text("severity." + severity.word());
  }

  /** The caution in full sentences. */
  String text(SafetyNote note) {
    Map<String, Object> arguments = arguments(note);
    return note.sentences().stream()
        .map(sentence -> words.text(note.code().word() + ".say." + sentence, arguments))
        .collect(Collectors.joining(" "));
  }

  /** The caution in one line. */
  String brief(SafetyNote note) {
    return words.text(note.code().word() + ".brief." + note.brief(), arguments(note));
  }

  /** A line of a sheet: how grave it is and the caution. */
  String line(SafetyNote note) {
    return severity(note.severity()) + ": " + brief(note);
  }

  String rule(SafetyNote note) {
    return words.text(note.code().word() + ".rule");
  }

  String source(SafetyNote note) {
    return words.text(note.code().word() + ".source");
  }

  String notCovered(SafetyNote note) {
    return words.text(note.code().word() + ".not-covered");
  }

  String deferral() {
    return words.text("deferral");
  }

  String briefDeferral() {
    return words.text("deferral.brief");
  }

  /** That some members of the layout would bring more. */
  String needs(List<String> pointers) {
    return words.text(
        "needs", Map.of("members", words.list(pointers.stream().map(SafetyWords::path).toList())));
  }

  private static String path(String pointer) {
    return pointer.substring(1).replace('/', '.');
  }

  /** A heading of a part of the notes or of a column. */
  String label(String key) {
    return words.text(key);
  }

  String yesOrNo(boolean yes) {
    return words.text(yes ? "yes" : "no");
  }

  String number(double value) {
    return words.number(value, DIGITS);
  }

  /** The magnets of a kind by their labels or numbers, the first of many. */
  String names(MagnetKind kind, List<Optional<String>> labels) {
    List<String> names = new ArrayList<>();
    if (kind.bob()) {
      names.add(words.text("name.bob"));
    }
    kind.plate().forEach(index -> names.add(name(index, labels)));
    int more = names.size() - MOST_NAMES;
    if (more > 1) {
      List<String> first = new ArrayList<>(names.subList(0, MOST_NAMES));
      first.add(words.text("name.more", Map.of("count", more)));
      return words.list(first);
    }
    return words.list(names);
  }

  private String name(int index, List<Optional<String>> labels) {
    return labels
        .get(index)
        .orElseGet(() -> words.text("name.magnet", Map.of("number", index + 1)));
  }

  private Map<String, Object> arguments(SafetyNote note) {
    Map<String, Object> arguments = new HashMap<>();
    note.figures()
        .forEach((figure, value) -> arguments.put(figure.word(), argument(figure, value)));
    return arguments;
  }

  private Object argument(SafetyFigure figure, double value) {
    double shown = figure.shown(value);
    return switch (figure) {
      case MAGNETS, SMALL_PARTS -> (int) Math.rint(shown);
      case FLUX_INDEX -> words.quantity(shown, DIGITS, "kG\u00b2\u00b7mm\u00b2");
      case PROBE_READING -> words.quantity(shown, DIGITS, "mT");
      case POLE_AREA -> words.quantity(shown, DIGITS, "mm\u00b2");
      case PINCH_FORCE, STEEL_FORCE, GRIP, WEIGHT, LOAD, TEST_LOAD, SIDEWAYS, LIFT ->
          words.quantity(shown, DIGITS - 1, "N");
      // What is kept away from is kept away rather too far.
      case JUMP_DISTANCE,
          IMPLANT_DISTANCE,
          IMPLANT_DISTANCE_TOGETHER,
          CARD_DISTANCE,
          WATCH_DISTANCE,
          REACH ->
          words.quantity(Math.ceil(shown), DIGITS + 2, "mm");
      case LOWEST, HIGHEST -> words.quantity(Math.rint(shown), DIGITS + 2, "mm");
      case SWINGING_MASS -> words.quantity(shown, DIGITS, "g");
      case SPEED -> words.quantity(shown, DIGITS - 1, "m/s");
      case SWING_ENERGY -> words.quantity(shown, DIGITS - 1, "mJ");
      case FIELD_NEAR, FIELD_FAR -> words.quantity(shown, DIGITS - 1, "\u00b5T");
    };
  }
}
