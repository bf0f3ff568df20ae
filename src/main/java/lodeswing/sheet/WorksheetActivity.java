package lodeswing.sheet;

import java.util.Arrays;
import java.util.List;

/** Something that pupils do at the rig. From which age is common practice, not a rule. */
public enum WorksheetActivity {
  /** Say where a release ends, then try. */
  PREDICT("predict", 7, true),
  /** Let go at one place again and again. */
  TWICE("twice", 7, true),
  /** Count ends of releases from anywhere. */
  FAIR("fair", 9, true),
  /** Find where the field is weak. */
  WEAK_SPOTS("weak-spots", 11, true),
  /** Measure the swing without magnets. */
  FREE_SWING("free-swing", 11, false),
  /** Measure how the swing dies away. */
  DAMPING("damping", 13, false);

  private final String word;
  private final int from;
  private final boolean amongMagnets;

  WorksheetActivity(String word, int from, boolean amongMagnets) {
    this.word = word;
    this.from = from;
    this.amongMagnets = amongMagnets;
  }

  /** The word in addresses and keys of texts. */
  public String word() {
    return word;
  }

  /** Whether there must be magnets on the plate. */
  public boolean amongMagnets() {
    return amongMagnets;
  }

  /** Those for an age. */
  public static List<WorksheetActivity> from(int age, boolean magnets) {
    return Arrays.stream(values())
        .filter(one -> age >= one.from && (magnets || !one.amongMagnets))
        .toList();
  }
}
