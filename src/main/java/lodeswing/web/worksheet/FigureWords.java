package lodeswing.web.worksheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.SortedMap;
import java.util.TreeMap;
import lodeswing.analysis.basin.SpecialEnd;
import lodeswing.analysis.worksheet.TriedPlace;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.statistics.Interval;
import lodeswing.core.statistics.IntervalRule;
import lodeswing.core.statistics.Proportion;
import lodeswing.core.suspension.Cord;
import lodeswing.core.swing.SmallSwings;
import lodeswing.sheet.WorksheetFacts;
import lodeswing.web.basin.EndNames;
import lodeswing.web.plate.PlateMap;
import lodeswing.web.restpoint.RestPlace;
import lodeswing.words.Words;

/** The stored figures of a worksheet with the layout's labels, in a reader's words. */
final class FigureWords {

  private static final double MILLI = 1e-3;

  private final WorksheetRequest request;
  private final Words words;

  FigureWords(WorksheetRequest request, Words words) {
    this.request = request;
    this.words = words;
  }

  /** What a sheet is made of. */
  WorksheetFacts facts(StoredFigures figures, List<String> cautions) {
    EndNames names = new EndNames(request.layout(), figures.places());
    List<String> labels = new ArrayList<>();
    for (RestPlace place : figures.places()) {
      names.label(place.index()).filter(label -> !labels.contains(label)).ifPresent(labels::add);
    }
    return new WorksheetFacts(
        request.layout().title().orElse(""),
        new PlateMap(request.layout()).outline(),
        new PlateMap(request.layout()).magnets(),
        labels,
        figures.reach(),
        request.spread(),
        figures.aims().stream().map(place -> aim(place, names)).toList(),
        figures.pair().stream().map(place -> aim(place, names)).toList(),
        chances(figures.anywhere(), names),
        figures.anywhere().total(),
        swing(),
        figures.spots(),
        cautions);
  }

  private WorksheetFacts.Aim aim(TriedPlace place, EndNames names) {
    return new WorksheetFacts.Aim(place.x(), place.y(), chances(place.ends(), names));
  }

  /** Ends of one name count together, as on the bench nobody tells them apart. */
  private List<WorksheetFacts.Chance> chances(EndCounts counts, EndNames names) {
    SortedMap<String, Integer> byName = new TreeMap<>();
    for (Map.Entry<Integer, Integer> one : counts.byEnd().entrySet()) {
      byName.merge(name(one.getKey(), names), one.getValue(), Integer::sum);
    }
    List<WorksheetFacts.Chance> chances = new ArrayList<>();
    for (Map.Entry<String, Integer> one : byName.entrySet()) {
      Proportion proportion = new Proportion(one.getValue(), counts.total());
      Interval interval = IntervalRule.WILSON.of(proportion);
      chances.add(
          new WorksheetFacts.Chance(
              one.getKey(), proportion.share(), interval.low(), interval.high()));
    }
    chances.sort(Comparator.comparingDouble(WorksheetFacts.Chance::share).reversed());
    return chances;
  }

  private String name(int end, EndNames names) {
    if (end < 0) {
      return words.text("end." + names.kind(SpecialEnd.index(end, names.restPoints())));
    }
    return names
        .label(end)
        .orElseGet(
            () -> {
              RestPlace place = names.place(end).orElseThrow();
              return words.text(
                  "end.at",
                  Map.of(
                      "x",
                      words.number(Math.rint(place.x() / MILLI) + 0.0, 4),
                      "y",
                      words.number(Math.rint(place.y() / MILLI) + 0.0, 4)));
            });
  }

  private WorksheetFacts.Swing swing() {
    SmallSwings swings = SmallSwings.of(request.layout().layout());
    OptionalDouble length =
        request.bench().suspension() instanceof Cord cord
            ? OptionalDouble.of(cord.length())
            : OptionalDouble.empty();
    OptionalDouble loss = swings.lossX();
    return new WorksheetFacts.Swing(
        swings.periodX(),
        swings.periodY(),
        length,
        loss.isPresent() ? SmallSwings.halvingTime(loss.getAsDouble()) : loss);
  }
}
