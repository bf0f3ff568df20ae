package lodeswing.analysis.basin;

import java.util.Locale;
import lodeswing.core.statistics.ScalingLaw;
import lodeswing.core.statistics.WadaTest;

/** The sentences of a summary, for a pupil. */
final class SummaryWording {

  /** From here up an exponent is that of a smooth border, within what a reader can tell. */
  private static final double NEARLY_SMOOTH = 0.95;

  private SummaryWording() {}

  static String dimension(ScalingLaw law) {
    return text(
        "Seen from %.0f to %.0f pixels, the border between the outcomes has about %.2f dimensions;"
            + " a smooth line has 1, a full area has 2.",
        law.smallestScale(), law.largestScale(), law.exponent().value());
  }

  static String exponent(ScalingLaw law) {
    double alpha = law.exponent().value();
    if (alpha >= NEARLY_SMOOTH) {
      return "Place the bob ten times as exactly, and about ten times fewer releases stay in doubt: "
          + "the border is as good as smooth.";
    }
    return text(
        "Place the bob ten times as exactly, and only about %.1f times fewer releases stay in doubt;"
            + " with a smooth border it would be ten times.",
        Math.pow(10, alpha));
  }

  static String entropy(double entropy, int boxSide) {
    return text(
        "Anywhere on the map, a square of %d by %d pixels is on average as unsure as a draw among"
            + " %.2f equally likely ends; 1 would be certainty.",
        boxSide, boxSide, Math.exp(entropy));
  }

  static String boundaryEntropy(double entropy, boolean fractal) {
    String conclusion =
        fractal
            ? "more than 2 shows that the border is not a simple line."
            : "only clearly more than 2 would show that the border is not a simple line.";
    return text(
            "On the border, such a square is as unsure as a draw among %.2f equally likely ends; ",
            Math.exp(entropy))
        + conclusion;
  }

  static String wada(WadaTest.Verdict verdict) {
    return switch (verdict) {
      case WADA ->
          "As far as this map can show, wherever two outcomes meet, all the others are there too.";
      case PARTLY_WADA ->
          "Along part of the border all outcomes meet, along other parts only some of them.";
      case NOT_WADA -> "Along most of the border only some of the outcomes meet.";
      case TOO_FEW_LABELS ->
          "There are fewer than three outcomes on this map, so there is nothing to test.";
      case UNRESOLVED ->
          "There is too little border on this map to tell whether all outcomes meet.";
    };
  }

  static String wadaShare(double share) {
    return text(
        "On %.0f of 100 places of the border, every outcome lies within %d pixels.",
        100 * share, WadaTest.RADIUS);
  }

  private static String text(String pattern, Object... figures) {
    return String.format(Locale.ROOT, pattern, figures);
  }
}
