package lodeswing.web.odds;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.TreeSet;
import java.util.stream.Stream;
import lodeswing.analysis.basin.SpecialEnd;
import lodeswing.analysis.odds.PartsTrial;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.statistics.Agreement;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.Interval;
import lodeswing.core.statistics.Proportion;
import lodeswing.core.statistics.VarianceSplit;
import lodeswing.render.csv.CellText;
import lodeswing.web.basin.EndNames;
import lodeswing.web.restpoint.RestPlace;

/** Counted ends put together by their labels, the likeliest first. */
final class OddsTable {

  /** Up to this standard deviation from rig to rig an answer counts as robust: our convention. */
  static final double ROBUST = 0.05;

  private static final String OTHER_PLACE = "other-rest-point";
  private static final String OTHER_PLACE_NAME = "a rest point that the exact rig does not have";

  private final OddsRequest request;
  private final StoredOdds stored;
  private final EndNames names;
  private final List<OddsLine> lines;

  OddsTable(OddsRequest request, StoredOdds stored) {
    this.request = request;
    this.stored = stored;
    this.names = new EndNames(request.layout(), stored.places());
    this.lines = lines();
  }

  private List<OddsLine> lines() {
    var ends = new TreeSet<Integer>(Comparator.comparingInt(this::index));
    ends.addAll(stored.hand().byEnd().keySet());
    stored.rigs().forEach(rig -> ends.addAll(rig.byEnd().keySet()));
    Map<String, List<Integer>> byName = new LinkedHashMap<>();
    for (int end : ends) {
      String key = label(end).orElseGet(() -> nameOf(end));
      byName.computeIfAbsent(key, name -> new ArrayList<>()).add(end);
    }
    List<OddsLine> found = new ArrayList<>();
    byName.forEach((name, members) -> found.add(line(name, members)));
    found.sort(Comparator.comparingInt((OddsLine line) -> -line.releases()));
    return List.copyOf(found);
  }

  private OddsLine line(String name, List<Integer> ends) {
    int first = ends.get(0);
    int releases = count(stored.hand(), ends);
    var proportion = new Proportion(releases, releases());
    return new OddsLine(
        index(first),
        first == PartsTrial.ELSEWHERE ? OTHER_PLACE : names.kind(index(first)),
        ends.stream()
            .map(end -> end < 0 ? Optional.<RestPlace>empty() : names.place(end))
            .flatMap(Optional::stream)
            .map(RestPlace::id)
            .toList(),
        label(first),
        name,
        releases,
        proportion.share(),
        request.rule().of(proportion),
        stored.rigs().stream().map(rig -> count(rig, ends)).toList());
  }

  private static int count(EndCounts counts, List<Integer> ends) {
    return ends.stream().mapToInt(counts::of).sum();
  }

  private int index(int end) {
    return end == PartsTrial.ELSEWHERE
        ? names.restPoints() + SpecialEnd.values().length
        : SpecialEnd.index(end, names.restPoints());
  }

  private Optional<String> label(int end) {
    return end < 0 ? Optional.empty() : names.label(end);
  }

  private String nameOf(int end) {
    return end == PartsTrial.ELSEWHERE ? OTHER_PLACE_NAME : names.nameOfEnd(end);
  }

  /** Every label and name that an end of this layout can have. */
  List<String> known() {
    List<String> known = new ArrayList<>();
    for (int index = 0; index < names.restPoints() + SpecialEnd.values().length; index++) {
      known.add(names.label(index).orElse(names.name(index)));
    }
    return known.stream().distinct().toList();
  }

  /** Whether a name is meant, as it is or in the words in which a cell got it. */
  static boolean meant(String name, String written) {
    return name.equals(written)
        || CellText.line(name).equals(written)
        || CellText.guarded(name).equals(written);
  }

  /** The label or name that is meant, as it is; what is written where it means none. */
  String named(String written) {
    return Stream.concat(lines.stream().map(OddsLine::name), known().stream())
        .filter(name -> meant(name, written))
        .findFirst()
        .orElse(written);
  }

  /** The lines, the likeliest first. */
  List<OddsLine> all() {
    return lines;
  }

  /** How many rest points the layout has. */
  int restPoints() {
    return names.restPoints();
  }

  /** How many tries there are. */
  int releases() {
    return stored.hand().total();
  }

  /** Chance that two tries end alike. */
  Estimate repeatability() {
    return Agreement.of(lines.stream().mapToInt(OddsLine::releases).toArray());
  }

  /** The interval of an end that no try had. */
  Interval none() {
    return request.rule().of(new Proportion(0, releases()));
  }

  /** Where the scatter comes from, where the parts vary. */
  Optional<VarianceSplit> split() {
    int rigs = stored.rigs().size();
    if (rigs == 0) {
      return Optional.empty();
    }
    int[][] counts = new int[rigs][lines.size()];
    for (int k = 0; k < lines.size(); k++) {
      for (int g = 0; g < rigs; g++) {
        counts[g][k] = lines.get(k).byRig().get(g);
      }
    }
    return Optional.of(VarianceSplit.of(counts));
  }

  /** The greatest standard deviation of a chance from rig to rig. */
  double greatestDeviation() {
    return lines.stream().mapToDouble(OddsLine::deviation).max().orElse(0);
  }
}
