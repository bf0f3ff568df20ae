package lodeswing.web.odds;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lodeswing.core.statistics.GoodnessOfFit;
import lodeswing.web.body.Body;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** What a class counted, held against the odds. */
final class CountedClass {

  static final String SOURCE =
      "K. Pearson, Philos. Mag. 50 (1900) 157; expected counts below 5: W. G. Cochran, Biometrics 10"
          + " (1954) 417";

  private static final double DOUBT = 0.05;
  private static final int MOST_NAMES = 20;

  private final List<Line> lines = new ArrayList<>();
  private final List<String> warnings = new ArrayList<>();
  private final long tries;
  private final Optional<GoodnessOfFit> fit;

  /**
   * One end.
   *
   * @param name what it is called
   * @param counted what the class counted
   * @param expected what the odds would have
   */
  record Line(String name, long counted, double expected) {}

  /**
   * Holds a count against odds.
   *
   * @param written by label or name, also in the words in which a cell got it
   * @param place where the request stands, for the pointers of faults
   * @throws ProblemException {@code invalid-request} where a name is no end of the layout
   */
  CountedClass(OddsTable table, Map<String, Long> written, LayoutPlace place) {
    refuseUnknown(table, written, place);
    Map<String, Long> counts = new LinkedHashMap<>();
    written.forEach((name, counted) -> counts.merge(table.named(name), counted, Long::sum));
    tries = counts.values().stream().mapToLong(Long::longValue).sum();
    for (OddsLine line : table.all()) {
      long counted = counts.getOrDefault(line.name(), 0L);
      if (line.releases() > 0 || counted > 0) {
        lines.add(new Line(line.name(), counted, tries * chance(table, line, counted)));
      }
    }
    counts.forEach(
        (name, counted) -> {
          if (counted > 0 && lines.stream().noneMatch(line -> line.name().equals(name))) {
            lines.add(new Line(name, counted, tries * table.none().high()));
            neverCame(table, name, counted);
          }
        });
    for (Line line : lines) {
      if (line.expected() < GoodnessOfFit.LEAST_EXPECTED) {
        warnings.add(
            String.format(
                Locale.ROOT,
                "%s is expected %.1f times, less than %.0f: the p-value is doubtful; count more"
                    + " tries.",
                line.name(),
                line.expected(),
                GoodnessOfFit.LEAST_EXPECTED));
      }
    }
    fit = compared();
  }

  private static void refuseUnknown(OddsTable table, Map<String, Long> counts, LayoutPlace where) {
    List<String> known = table.known();
    List<Fault> faults = new ArrayList<>();
    int place = 0;
    for (String name : counts.keySet()) {
      String meant = table.named(name);
      boolean line = table.all().stream().anyMatch(one -> one.name().equals(meant));
      if (!line && !known.contains(meant)) {
        faults.add(
            new Fault(
                where == LayoutPlace.ADDRESS ? "?counts" : "/counts/" + place + "/label",
                (where == LayoutPlace.ADDRESS
                        ? "has '" + name + "', which is none of "
                        : "is none of ")
                    + String.join(", ", known.subList(0, Math.min(MOST_NAMES, known.size())))));
      }
      place++;
    }
    if (!faults.isEmpty()) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST, "The count names ends that this layout has not.", faults);
    }
  }

  private double chance(OddsTable table, OddsLine line, long counted) {
    if (line.releases() > 0) {
      return line.chance();
    }
    neverCame(table, line.name(), counted);
    return line.interval().high();
  }

  private void neverCame(OddsTable table, String name, long counted) {
    warnings.add(
        String.format(
            Locale.ROOT,
            "%s never came in %d tries that were computed, the class saw it %s: its chance is taken"
                + " as high as its interval reaches.",
            name,
            table.releases(),
            counted == 1 ? "once" : counted + " times"));
  }

  private Optional<GoodnessOfFit> compared() {
    if (lines.size() < 2) {
      warnings.add("With one end alone there is nothing to compare.");
      return Optional.empty();
    }
    return Optional.of(
        GoodnessOfFit.of(
            lines.stream().mapToDouble(Line::expected).toArray(),
            lines.stream().mapToLong(Line::counted).toArray()));
  }

  List<Line> lines() {
    return lines;
  }

  /** The test; empty where there are not two ends to compare. */
  Optional<GoodnessOfFit> fit() {
    return fit;
  }

  /** The whole in words, with what makes it doubtful. */
  String whole() {
    return Stream.concat(Stream.of(sentence()), warnings.stream()).collect(Collectors.joining(" "));
  }

  private String sentence() {
    if (fit.isEmpty()) {
      return "The count cannot be held against the odds.";
    }
    String size =
        String.format(
            Locale.ROOT,
            "chi-square is %.2f with %d degrees of freedom; chance alone makes it as great in %.1f %%"
                + " of all classes.",
            fit.get().statistic(),
            fit.get().degreesOfFreedom(),
            100 * fit.get().pValue());
    return (fit.get().pValue() < DOUBT
            ? "What the class counted does not fit these odds: "
            : "What the class counted fits these odds: ")
        + size;
  }

  Body body() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("tries", (double) tries);
    fit.ifPresent(
        found -> {
          members.put("chiSquare", found.statistic());
          members.put("degreesOfFreedom", (double) found.degreesOfFreedom());
          members.put("pValue", found.pValue());
        });
    List<Body> written = new ArrayList<>();
    for (Line line : lines) {
      Map<String, Object> one = new LinkedHashMap<>();
      one.put("name", line.name());
      one.put("counted", (double) line.counted());
      one.put("expected", line.expected());
      written.add(Body.of(one));
    }
    members.put("lines", written);
    members.put("warnings", List.copyOf(warnings));
    members.put("sentence", sentence());
    members.put("source", SOURCE);
    return Body.of(members);
  }
}
