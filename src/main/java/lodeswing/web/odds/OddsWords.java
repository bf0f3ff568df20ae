package lodeswing.web.odds;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.IntervalRule;
import lodeswing.core.statistics.VarianceSplit;
import lodeswing.figure.AlternativeText;
import lodeswing.web.body.Numbers;

/** Odds in words. */
final class OddsWords {

  private static final int MOST_NAMES = 8;

  private final OddsRequest request;
  private final StoredOdds stored;
  private final OddsTable table;

  OddsWords(OddsRequest request, StoredOdds stored, OddsTable table) {
    this.request = request;
    this.stored = stored;
    this.table = table;
  }

  static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }

  /** The whole in one sentence or two. */
  String sentence() {
    List<String> parts = new ArrayList<>();
    for (OddsLine line : table.all().subList(0, Math.min(MOST_NAMES, table.all().size()))) {
      parts.add(
          String.format(
              Locale.ROOT,
              "%s %s (%.1f to %.1f %%)",
              line.name(),
              percent(line.chance()),
              100 * line.interval().low(),
              100 * line.interval().high()));
    }
    return request.hand().words()
        + " gets: "
        + String.join(", ", parts)
        + ". Two tries end alike in "
        + percent(table.repeatability().value())
        + " of all pairs.";
  }

  /** What to know, in sentences. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(interval());
    notes.add(
        "Releases are computed with errors of "
            + String.format(Locale.ROOT, "%.1g", stored.stepError())
            + " of the swing a step, far below the hand's spread: single releases may end elsewhere"
            + " than a trace says, their odds stay.");
    partsSentence().ifPresent(notes::add);
    return notes;
  }

  private String interval() {
    return (request.rule() == IntervalRule.WILSON
            ? "Intervals are Wilson's (1927)"
            : "Intervals are those of Clopper and Pearson (1934)")
        + " at 95 % for "
        + table.releases()
        + " tries, as if each were drawn by itself. The tries are points of a Sobol' sequence with a"
        + " random digital shift (seed "
        + Numbers.plain(request.canonical().number("seed"))
        + "), which fill the spread more evenly than that: where borders between ends are smooth, the"
        + " intervals are wider than they need be; where ends are finely mixed, they hold as stated.";
  }

  /** What the parts do, where they vary. */
  Optional<String> partsSentence() {
    return table.split().map(this::parts);
  }

  private String parts(VarianceSplit split) {
    Estimate share = split.between();
    String from =
        switch (source(split)) {
          case "hand" -> "Most of the scatter comes from the hand: ";
          case "parts" -> "Most of the scatter comes from the parts: ";
          default -> "The scatter comes from the hand and from the parts: ";
        };
    return from
        + String.format(
            Locale.ROOT,
            "on one rig two tries end alike in %s, on two rigs built to these tolerances in %s of all"
                + " pairs, so the parts make %.0f %% (%.0f to %.0f %%) of it. ",
            percent(split.within()),
            percent(split.across()),
            100 * share.value(),
            100 * share.interval().low(),
            100 * share.interval().high())
        + (robust()
            ? "The odds are robust: "
            : "The odds are not robust, a rig built like this may have others: ")
        + "from rig to rig chances differ by up to "
        + String.format(Locale.ROOT, "%.1f", 100 * table.greatestDeviation())
        + " points (standard deviation over "
        + stored.rigs().size()
        + " rigs).";
  }

  /** Where most of the scatter comes from: two thirds of it, or both. */
  static String source(VarianceSplit split) {
    double share = split.between().value();
    if (share < 1.0 / 3) {
      return "hand";
    }
    return share > 2.0 / 3 ? "parts" : "both";
  }

  boolean robust() {
    return table.greatestDeviation() <= OddsTable.ROBUST;
  }

  String title() {
    return request.layout().heading("how likely each end is");
  }

  /** The picture in words. */
  AlternativeText alternative() {
    return new AlternativeText(
        "en",
        title(),
        sentence() + " Bars show the chances, lines across their ends the intervals.");
  }
}
