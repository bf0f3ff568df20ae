package lodeswing.web.bundle;

import java.util.Arrays;
import java.util.Optional;

/** What of a bundle can be left out, one resource each. */
enum BundleGroup {
  PLACING_SHEET("placing-sheet"),
  OUTCOME_SHEET("outcome-sheet"),
  WORKSHEET("worksheet"),
  CHECK("check"),
  REST_POINTS("rest-points"),
  PATH("path"),
  ODDS("odds"),
  FREE_SWING("free-swing"),
  FIELD_MAP("field-map"),
  WEAK_SPOTS("weak-spots"),
  BASIN_MAP("basin-map");

  private final String word;

  BundleGroup(String word) {
    this.word = word;
  }

  /** Its word in the query. */
  String word() {
    return word;
  }

  /** The one of a word. */
  static Optional<BundleGroup> of(String word) {
    return Arrays.stream(values()).filter(group -> group.word.equals(word)).findFirst();
  }
}
