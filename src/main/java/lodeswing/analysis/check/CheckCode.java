package lodeswing.analysis.check;

import java.util.Arrays;
import java.util.Optional;

/** The lines of a check, in the order in which they are told. */
public enum CheckCode {
  CLEARANCE_AT_REST("clearance-at-rest", "mm", 1e3, false),
  CLEARANCE_ON_THE_WAY("clearance-on-the-way", "mm", 1e3, false),
  PULL_AGAINST_WEIGHT("pull-against-weight", "1", 1, true),
  PULL_AGAINST_SLOWING("pull-against-slowing", "1", 1, true),
  WEIGHT_FOR_THE_PLATE("weight-for-the-plate", "1", 1, false),
  STICKING("sticking", "N", 1, false),
  SUSPENSION_SLACK("suspension-slack", "1", 1, false),
  HOOK_LOAD("hook-load", "N", 1, false),
  HOOK_DEPTH("hook-depth", "mm", 1e3, false),
  SWINGS_BEFORE_REST("swings-before-rest", "swings", 1, true),
  LABELS_WITHOUT_WELL("labels-without-well", "labels", 1, true),
  WELLS_WITHOUT_LABEL("wells-without-label", "wells", 1, true),
  TWO_TRIES_DIFFER("two-tries-differ", "1", 1, true),
  MAGNETS_SLIDE("magnets-slide", "1", 1, false),
  MAGNETS_LIFT("magnets-lift", "1", 1, false),
  STAND_TIPS("stand-tips", "mm", 1e3, false),
  STAND_LEANS("stand-leans", "mm", 1e3, false);

  private final String word;
  private final String unit;
  private final double perUnit;
  private final boolean ofPlane;

  CheckCode(String word, String unit, double perUnit, boolean ofPlane) {
    this.word = word;
    this.unit = unit;
    this.perUnit = perUnit;
    this.ofPlane = ofPlane;
  }

  /** The line's code in answers. */
  public String word() {
    return word;
  }

  /** Unit of its figure and limit; 1 for a share. */
  public String unit() {
    return unit;
  }

  /** A figure or limit in its unit. */
  public double shown(double figure) {
    return perUnit * figure;
  }

  /** Whether a textbook layout has this line too. */
  public boolean ofPlane() {
    return ofPlane;
  }

  /** The line of a code. */
  public static Optional<CheckCode> of(String word) {
    return Arrays.stream(values()).filter(code -> code.word.equals(word)).findFirst();
  }
}
