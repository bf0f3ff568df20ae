package lodeswing.web.occupancy;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import lodeswing.analysis.occupancy.OccupancySpec;
import lodeswing.core.statistics.Estimate;
import lodeswing.web.body.Numbers;
import lodeswing.web.occupancy.StoredOccupancy.Figure;

/** An occupancy in sentences. */
final class OccupancyWords {

  private static final double MILLI = 1e3;

  private final OccupancyRequest request;
  private final StoredOccupancy stored;

  OccupancyWords(OccupancyRequest request, StoredOccupancy stored) {
    this.request = request;
    this.stored = stored;
  }

  String title() {
    return request.layout().heading("where the bob spends its time");
  }

  /** The result in a few sentences. */
  String sentence() {
    Optional<Estimate> correlation = stored.figure(Figure.CORRELATION);
    if (correlation.isEmpty()) {
      return "There is no field to hold the bob's time against, or no release could begin.";
    }
    Estimate change = stored.figure(Figure.CHANGE).orElseThrow();
    // Without commas and semicolons, which a cell would lose.
    return finding(change)
        + String.format(
            Locale.ROOT,
            ": %s (%s) on a scale from \u22121 (always in weaker field) to 1 (always in stronger"
                + " field). Rank correlation of time and strength over the plate: %s (%s). ",
            two(change.value()),
            between(change),
            two(correlation.get().value()),
            between(correlation.get()))
        + met();
  }

  private static String finding(Estimate change) {
    if (change.interval().high() < 0) {
      return "With the magnets the bob is oftener where their field is weak than without them";
    }
    return change.interval().low() > 0
        ? "With the magnets the bob is oftener where their field is strong than without them"
        : "These releases cannot tell whether the magnets draw the bob to strong or to weak field";
  }

  private String met() {
    Estimate over = stored.figure(Figure.OVER_MAGNETS).orElseThrow();
    Estimate freeOver = stored.figure(Figure.FREE_OVER_MAGNETS).orElseThrow();
    return String.format(
        Locale.ROOT,
        "Mean field on the bob's way: %s with the magnets' pull and %s without it. Time over a"
            + " magnet: %s with it and %s without.",
        strength(stored.figure(Figure.MEAN_FIELD).orElseThrow().value()),
        strength(stored.figure(Figure.FREE_MEAN_FIELD).orElseThrow().value()),
        percent(over.value()),
        percent(freeOver.value()));
  }

  /** What to know, in sentences. */
  List<String> notes() {
    List<String> notes = new ArrayList<>();
    String unit = request.bench() ? " mm" : "";
    notes.add(
        String.format(
            Locale.ROOT,
            "%d releases at rest from anywhere within %s%s of the middle, each followed %s%s; places"
                + " are points of shifted Sobol' sequences in %d lots (seed %d). Intervals are at 95"
                + " %%, from leaving out each lot in turn (jackknife).",
            request.releases(),
            Numbers.shortest(request.radius()),
            unit,
            Numbers.shortest(request.durationS()),
            request.bench() ? " s" : "",
            OccupancySpec.LOTS,
            request.seed()));
    notes.add(
        request.bench()
            ? "The field's strength is the flux density of the plate's magnets where the bob"
                + " magnet's centre passes; over a magnet means within its circle in plan."
            : "The field's strength is that of the point poles whose pull in the plane the model"
                + " takes for its force; over a magnet means within one height of it.");
    notes.add(
        "No single path of such a rig can be foretold for so long; shares of the time of many"
            + " paths can.");
    if (stored.notReleased() > 0) {
      notes.add(stored.notReleased() + " of the releases could not begin and are left out.");
    }
    if (stored.endedEarly() > 0) {
      notes.add(
          stored.endedEarly()
              + " of the paths ended early, in a touch or with a slack suspension; their time"
              + " counts up to there.");
    }
    if (stored.elsewhere() > 5e-4) {
      notes.add(percent(stored.elsewhere()) + " of the time was spent beyond the map's edge.");
    }
    return notes;
  }

  /** A strength with its unit. */
  String strength(double value) {
    return request.bench()
        ? String.format(Locale.ROOT, "%.3g mT", value * MILLI)
        : String.format(Locale.ROOT, "%.3g", value);
  }

  private static String percent(double share) {
    return String.format(Locale.ROOT, "%.1f %%", 100 * share);
  }

  private static String between(Estimate estimate) {
    return two(estimate.interval().low()) + " to " + two(estimate.interval().high());
  }

  private static String two(double value) {
    String digits = String.format(Locale.ROOT, "%.2f", Math.abs(value));
    return (value < 0 && !digits.equals("0.00") ? "\u2212" : "") + digits;
  }
}
