package lodeswing.web.safety;

import java.util.ArrayList;
import java.util.List;
import lodeswing.safety.MagnetSafety;

/**
 * The figures of the magnets in words, a row for each kind.
 *
 * @param rows of cells, as many as there are titles
 */
record MagnetTable(List<String> titles, List<List<String>> rows) {

  private static final String NONE = "\u2013";

  MagnetTable(SafetyNotes notes) {
    this(
        List.of(
            notes.words().label("column.magnets"),
            notes.words().label("column.small-part"),
            notes.words().label("column.flux-index"),
            notes.words().label("column.reach"),
            notes.words().label("column.pinch")),
        notes.review().magnets().stream().map(magnet -> row(magnet, notes)).toList());
  }

  private static List<String> row(MagnetSafety magnet, SafetyNotes notes) {
    SafetyWords words = notes.words();
    return List.of(
        words.names(magnet.kind(), notes.layout().labels()),
        magnet.index().map(index -> words.yesOrNo(magnet.smallPart())).orElse(NONE),
        magnet.index().map(index -> words.number(SafetyAnswers.kilogauss(index))).orElse(NONE),
        words.number(magnet.reach() * SafetyAnswers.MM),
        magnet.pinch().stream().mapToObj(words::number).findFirst().orElse(NONE));
  }

  /** A row as one line. */
  String line(List<String> row) {
    List<String> parts = new ArrayList<>();
    for (int i = 1; i < row.size(); i++) {
      parts.add(titles.get(i) + ": " + row.get(i));
    }
    return row.get(0) + " \u2013 " + String.join("; ", parts);
  }
}
