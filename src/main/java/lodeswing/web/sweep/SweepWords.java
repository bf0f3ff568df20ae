package lodeswing.web.sweep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lodeswing.figure.AlternativeText;
import lodeswing.web.body.Numbers;

/** A sweep in words: where words change, and how far numbers go. */
final class SweepWords {

  private static final int MOST_RUNS = 8;

  private final SweepTable table;
  private final SweepRequest request;

  SweepWords(SweepTable table) {
    this.table = table;
    this.request = table.request();
  }

  String title() {
    return title(table.shown());
  }

  /** A heading for some columns. */
  String title(List<Integer> columns) {
    List<String> what = columns.stream().map(c -> table.columns().get(c).words()).limit(3).toList();
    List<String> over = request.vary().stream().map(quantity -> quantity.words()).toList();
    return request.layout().heading(String.join(", ", what) + " by " + String.join(" and ", over));
  }

  /** The whole. */
  String sentence() {
    List<String> parts = new ArrayList<>();
    parts.add(overview());
    for (int column : table.shown()) {
      parts.add(said(column));
    }
    if (table.problems() > 0) {
      parts.add(problems());
    }
    return String.join(" ", parts);
  }

  private String overview() {
    List<String> over = new ArrayList<>();
    for (SweptQuantity quantity : request.vary()) {
      Object first = quantity.values().get(0);
      Object last = quantity.values().get(quantity.values().size() - 1);
      String unit = unit(quantity.unit(request.bench()));
      over.add(
          quantity.words()
              + (quantity.values().size() == 1
                  ? " " + SweptQuantity.told(first) + unit
                  : " from "
                      + SweptQuantity.told(first)
                      + " to "
                      + SweptQuantity.told(last)
                      + unit));
    }
    return table.rows().size()
        + (table.rows().size() == 1 ? " point, " : " points, ")
        + String.join(" by ", over)
        + ".";
  }

  private static String unit(String symbol) {
    return symbol.isEmpty() ? "" : symbol.equals("°") ? symbol : " " + symbol;
  }

  /** What a column says. */
  String said(int column) {
    SweepColumn about = table.columns().get(column);
    String name = Character.toUpperCase(about.words().charAt(0)) + about.words().substring(1);
    if (about.part() == SweepColumn.Part.WORD) {
      return request.vary().size() == 1 ? runs(name, column) : counts(name, column);
    }
    Optional<Integer> least = table.extreme(column, false);
    Optional<Integer> greatest = table.extreme(column, true);
    if (least.isEmpty() || greatest.isEmpty()) {
      return name + ": nothing to tell at any point.";
    }
    if (table.number(least.get(), column) == table.number(greatest.get(), column)) {
      return name + ": " + figure(least.get(), column) + " everywhere.";
    }
    return name
        + ": from "
        + figure(least.get(), column)
        + " at "
        + where(least.get())
        + " to "
        + figure(greatest.get(), column)
        + " at "
        + where(greatest.get())
        + ".";
  }

  private String figure(int row, int column) {
    double value = table.number(row, column);
    return Numbers.shortest(Double.parseDouble(String.format(Locale.ROOT, "%.4g", value)))
        + unit(table.columns().get(column).unit());
  }

  /** The values of a row's quantities. */
  String where(int row) {
    List<String> values = new ArrayList<>();
    for (int k = 0; k < request.vary().size(); k++) {
      SweptQuantity quantity = request.vary().get(k);
      values.add(
          quantity.words()
              + " "
              + SweptQuantity.told(table.rows().get(row).get(k))
              + unit(quantity.unit(request.bench())));
    }
    return String.join(", ", values);
  }

  private String runs(String name, int column) {
    List<String> runs = new ArrayList<>();
    int begun = -1;
    int last = -1;
    int all = 0;
    for (int row = 0; row <= table.rows().size(); row++) {
      Optional<String> word = row < table.rows().size() ? table.word(row, column) : Optional.of("");
      if (word.isEmpty()) {
        continue;
      }
      if (begun >= 0 && (row == table.rows().size() || !word.equals(table.word(begun, column)))) {
        all++;
        if (runs.size() < MOST_RUNS) {
          runs.add(run(begun, last, column));
        }
        begun = -1;
      }
      if (begun < 0) {
        begun = row;
      }
      last = row;
    }
    if (all == 0) {
      return name + ": nothing to tell at any point.";
    }
    return name
        + ": "
        + String.join("; ", runs)
        + (all > runs.size() ? "; and " + (all - runs.size()) + " runs more" : "")
        + ".";
  }

  private String run(int from, int to, int column) {
    String unit = unit(request.vary().get(0).unit(request.bench()));
    String first = SweptQuantity.told(table.rows().get(from).get(0));
    String last = SweptQuantity.told(table.rows().get(to).get(0));
    return table.word(from, column).orElse("")
        + (from == to ? " at " + first : " from " + first + " to " + last)
        + unit;
  }

  private String counts(String name, int column) {
    Map<String, Integer> counts = new LinkedHashMap<>();
    for (int row = 0; row < table.rows().size(); row++) {
      table.word(row, column).ifPresent(word -> counts.merge(word, 1, Integer::sum));
    }
    List<Map.Entry<String, Integer>> sorted = new ArrayList<>(counts.entrySet());
    sorted.sort(Map.Entry.<String, Integer>comparingByValue().reversed());
    List<String> said =
        sorted.stream()
            .limit(MOST_RUNS)
            .map(
                one ->
                    one.getKey()
                        + " at "
                        + one.getValue()
                        + (one.getValue() == 1 ? " point" : " points"))
            .toList();
    return said.isEmpty()
        ? name + ": nothing to tell at any point."
        : name
            + ": "
            + String.join(", ", said)
            + (sorted.size() > MOST_RUNS ? ", and " + (sorted.size() - MOST_RUNS) + " more" : "")
            + ".";
  }

  /** How many points have a problem, and which first. */
  String problems() {
    int first = -1;
    for (int row = 0; row < table.rows().size() && first < 0; row++) {
      first = table.problem(row).isPresent() ? row : -1;
    }
    return table.problems()
        + (table.problems() == 1 ? " point has" : " points have")
        + " a problem, the first at "
        + where(first)
        + " ("
        + table.problem(first).orElse("")
        + ").";
  }

  /** What to know, in sentences. */
  List<String> notes(double followed) {
    List<String> notes = new ArrayList<>();
    if (request.asked().followed()) {
      notes.add(
          "Each outcome is that of a single request for it: the release is followed on a trace's"
              + " path, for "
              + Numbers.shortest(followed)
              + (request.bench() ? " s" : " units of time")
              + " at most. Near a border between ends an outcome is chance, which the measure sure"
              + " tells.");
    }
    if (request.tries() > 0) {
      notes.add(
          "Chances are counted as odds are, up to "
              + request.tries()
              + " tries a point, with Wilson's intervals (1927) at 95 % and the same seed at every"
              + " point: neighbours share their luck, so that what differs between them is the"
              + " layout.");
    }
    if (request.side() > 0) {
      notes.add(
          "Shares, entropies and dimensions are of a map of "
              + request.side()
              + " by "
              + request.side()
              + " releases of one window, half width "
              + Numbers.shortest(request.canonical().object("map").number("halfWidth"))
              + (request.bench() ? " mm" : "")
              + "; their intervals are those of a map's summary at 95 %, wide for a map so small.");
    }
    if (table.problems() > 0) {
      notes.add("A point whose layout cannot be built has a row with the reason and no figures.");
    }
    return notes;
  }

  AlternativeText alternative(String picture) {
    return new AlternativeText("en", title(), picture + " " + sentence());
  }
}
