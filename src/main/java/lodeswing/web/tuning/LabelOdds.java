package lodeswing.web.tuning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.statistics.Interval;
import lodeswing.core.statistics.Proportion;
import lodeswing.web.basin.EndNames;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.restpoint.RestPlace;

/** Counted ends by label, the wanted labels in their order and then what else came. */
final class LabelOdds {

  private final long seed;
  private final int releases;
  private final List<Line> lines;

  /**
   * One label or other end.
   *
   * @param label its label
   * @param name its label, or the end in words
   * @param wanted its wanted chance
   * @param releases tries that ended so
   * @param chance their share
   * @param interval its 95 % interval
   */
  record Line(
      Optional<String> label,
      String name,
      Optional<Double> wanted,
      int releases,
      double chance,
      Interval interval) {

    /** Distance from the wanted chance. */
    double distance() {
      return wanted.map(of -> Math.abs(chance - of)).orElse(0.0);
    }

    /** The least distance within the interval. */
    double least() {
      return wanted
          .map(of -> Math.max(0, Math.max(interval.low() - of, of - interval.high())))
          .orElse(0.0);
    }

    /** The greatest. */
    double greatest() {
      return wanted.map(of -> Math.max(interval.high() - of, of - interval.low())).orElse(0.0);
    }
  }

  LabelOdds(
      TuningRequest request,
      LayoutDocument document,
      List<RestPlace> places,
      EndCounts counts,
      long seed) {
    this.seed = seed;
    this.releases = counts.total();
    var names = new EndNames(document, places);
    Map<String, Integer> others = new LinkedHashMap<>();
    Map<String, Integer> byLabel = new LinkedHashMap<>();
    request.labels().forEach(label -> byLabel.put(label, 0));
    counts
        .byEnd()
        .forEach(
            (end, count) -> {
              Optional<String> label = end < 0 ? Optional.empty() : names.label(end);
              label.ifPresentOrElse(
                  of -> byLabel.merge(of, count, Integer::sum),
                  () -> others.merge(names.nameOfEnd(end), count, Integer::sum));
            });
    List<Line> all = new ArrayList<>();
    List<Double> wanted = request.wanted();
    byLabel.forEach(
        (label, count) ->
            all.add(
                line(
                    request,
                    Optional.of(label),
                    label,
                    Optional.of(wanted.get(all.size())),
                    count)));
    others.forEach(
        (name, count) -> all.add(line(request, Optional.empty(), name, Optional.empty(), count)));
    this.lines = List.copyOf(all);
  }

  private Line line(
      TuningRequest request,
      Optional<String> label,
      String name,
      Optional<Double> wanted,
      int count) {
    var proportion = new Proportion(count, releases);
    return new Line(label, name, wanted, count, proportion.share(), request.rule().of(proportion));
  }

  List<Line> lines() {
    return lines;
  }

  /** The lines of the labels alone. */
  List<Line> labelled() {
    return lines.stream().filter(line -> line.label().isPresent()).toList();
  }

  /** The greatest distance of a label from its wanted chance. */
  double distance() {
    return lines.stream().mapToDouble(Line::distance).max().orElse(0);
  }

  /** The least that this can be within the intervals. */
  double distanceLow() {
    return lines.stream().mapToDouble(Line::least).max().orElse(0);
  }

  /** The greatest. */
  double distanceHigh() {
    return lines.stream().mapToDouble(Line::greatest).max().orElse(0);
  }

  Body body() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("seed", (double) seed);
    members.put("releases", (double) releases);
    List<Body> outcomes = new ArrayList<>();
    for (Line line : lines) {
      Map<String, Object> one = new LinkedHashMap<>();
      line.label().ifPresent(label -> one.put("label", label));
      one.put("name", line.name());
      line.wanted().ifPresent(wanted -> one.put("wanted", wanted));
      one.put("chance", line.chance());
      one.put("low", line.interval().low());
      one.put("high", line.interval().high());
      one.put("releases", (double) line.releases());
      outcomes.add(Body.of(one));
    }
    members.put("outcomes", outcomes);
    members.put("distance", distance());
    members.put("distanceLow", distanceLow());
    members.put("distanceHigh", distanceHigh());
    return Body.of(members);
  }
}
