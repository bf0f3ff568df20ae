package lodeswing.web.sweep;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import java.util.function.DoubleUnaryOperator;
import java.util.stream.IntStream;
import lodeswing.analysis.sweep.MapFigures;
import lodeswing.analysis.sweep.ReleaseFigures;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.outcome.Ends;
import lodeswing.core.statistics.Agreement;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.Interval;
import lodeswing.core.statistics.IntervalRule;
import lodeswing.core.statistics.Proportion;
import lodeswing.web.basin.EndNames;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.restpoint.RestPlace;

/** The cells of one point, from its piece and the labels of its layout. */
final class PointCells {

  private static final int FIGURES = 9;
  private static final int STATISTICS = 6;
  private static final double MM = 1000;
  private static final Object NOTHING = Optional.empty();

  private final LayoutDocument layout;
  private final StoredPiece piece;
  private final Optional<ReleaseFigures> release;
  private final Optional<EndCounts> hand;
  private final Optional<MapFigures> map;
  private final EndNames names;
  private final List<String> problems = new ArrayList<>();

  PointCells(
      LayoutDocument layout,
      StoredPiece piece,
      Optional<ReleaseFigures> release,
      Optional<EndCounts> hand,
      Optional<MapFigures> map) {
    this.layout = layout;
    this.piece = piece;
    this.release = release;
    this.hand = hand;
    this.map = map;
    this.names = new EndNames(layout, piece.places());
  }

  /** The cells of the measures, and then of the problem. */
  List<Object> of(List<MeasuredFigure> measures) {
    List<Object> cells = new ArrayList<>();
    measures.forEach(figure -> cells.addAll(cells(figure)));
    cells.add(problems.isEmpty() ? NOTHING : String.join("; ", problems));
    return cells;
  }

  private List<Object> cells(MeasuredFigure figure) {
    return switch (figure.measure()) {
      case OUTCOME -> List.of(begins() ? names.nameOfEnd(released().end()) : NOTHING);
      case SURE -> List.of(begins() ? (Object) released().sure() : NOTHING);
      case SEALED -> List.of(begins() ? number(released().sealedAt()) : NOTHING);
      case SETTLED -> List.of(begins() ? number(released().settledAt()) : NOTHING);
      case PERIODS_AT_RELEASE ->
          List.of(number(released().periodX()), number(released().periodY()));
      case CHANCE -> chance(figure.label().orElseThrow());
      case REPEATABILITY -> estimate(hand.filter(found -> tried()).map(this::repeatability));
      case SHARE -> share(figure.label().orElseThrow());
      case BASIN_ENTROPY -> estimate(map.flatMap(MapFigures::basinEntropy));
      case BOUNDARY_BASIN_ENTROPY -> estimate(map.flatMap(MapFigures::boundaryBasinEntropy));
      case BOX_DIMENSION -> estimate(map.flatMap(MapFigures::boxDimension));
      case UNCERTAINTY_EXPONENT -> estimate(map.flatMap(MapFigures::uncertaintyExponent));
      case PERIODS ->
          List.of(number(piece.layout().shortPeriod()), number(piece.layout().longPeriod()));
      case REST_POINTS -> List.of((double) piece.places().size());
      case BARRIER -> List.of(barrier(figure.label()));
      case CONTACT -> List.of(piece.layout().contact().word());
      case CLEARANCE -> List.of(number(times(piece.layout().clearance(), mm -> mm * MM)));
    };
  }

  private ReleaseFigures released() {
    return release.orElseThrow(() -> new IllegalStateException("no release was followed"));
  }

  /** Whether the bob can be let go there; else says so. */
  private boolean begins() {
    boolean begins = released().end() != Ends.CANNOT_START;
    if (!begins) {
      problem("impossible-release: " + names.nameOfEnd(Ends.CANNOT_START));
    }
    return begins;
  }

  /** Whether any try of the hand can begin; else says so. */
  private boolean tried() {
    boolean tried = hand.isPresent() && hand.get().of(Ends.CANNOT_START) < hand.get().total();
    if (!tried) {
      problem("impossible-release: " + names.nameOfEnd(Ends.CANNOT_START));
    }
    return tried;
  }

  private void problem(String said) {
    if (!problems.contains(said)) {
      problems.add(said);
    }
  }

  /** Whether the layout has a label; else says so. */
  private boolean has(String label) {
    boolean found = layout.labels().contains(Optional.of(label));
    if (!found) {
      problem("no magnet has the label " + label + " here");
    }
    return found;
  }

  private boolean carries(int index, String label) {
    return names.label(index).equals(Optional.of(label));
  }

  private List<Object> share(String label) {
    if (!has(label) || map.isEmpty()) {
      return List.of(NOTHING, NOTHING, NOTHING);
    }
    return proportion(map.get().counts(), label, IntervalRule.CLOPPER_PEARSON);
  }

  private List<Object> chance(String label) {
    return has(label) && tried()
        ? proportion(hand.get().byEnd(), label, IntervalRule.WILSON)
        : List.of(NOTHING, NOTHING, NOTHING);
  }

  /** Tries agree where they end at the same label, or at the same place without one. */
  private Estimate repeatability(EndCounts counts) {
    Map<String, Integer> byName = new TreeMap<>();
    counts
        .byEnd()
        .forEach(
            (end, count) ->
                byName.merge(
                    (end < 0 ? Optional.<String>empty() : names.label(end))
                        .orElseGet(() -> names.nameOfEnd(end)),
                    count,
                    Integer::sum));
    return Agreement.of(byName.values().stream().mapToInt(Integer::intValue).toArray());
  }

  private List<Object> proportion(Map<Integer, Integer> counts, String label, IntervalRule rule) {
    int all = counts.values().stream().mapToInt(Integer::intValue).sum();
    int own =
        counts.entrySet().stream()
            .filter(entry -> entry.getKey() >= 0 && carries(entry.getKey(), label))
            .mapToInt(Map.Entry::getValue)
            .sum();
    return proportion(new Proportion(own, all), rule);
  }

  private static List<Object> proportion(Proportion proportion, IntervalRule rule) {
    Interval interval = rule.of(proportion);
    return List.of(
        rounded(proportion.share(), STATISTICS),
        rounded(interval.low(), STATISTICS),
        rounded(interval.high(), STATISTICS));
  }

  /** The lowest barrier of a label's wells, or of all wells that carry one. */
  private Object barrier(Optional<String> label) {
    if (label.isPresent() && !has(label.get())) {
      return NOTHING;
    }
    boolean any = layout.labels().stream().anyMatch(Optional::isPresent);
    return number(
        IntStream.range(0, piece.places().size())
            .filter(
                i ->
                    label.isPresent()
                        ? carries(i, label.get())
                        : !any || names.label(i).isPresent())
            .mapToObj(piece.places()::get)
            .mapToDouble(RestPlace::barrier)
            .min());
  }

  private static List<Object> estimate(Optional<Estimate> estimate) {
    return estimate.isEmpty()
        ? List.of(NOTHING, NOTHING, NOTHING)
        : List.of(
            rounded(estimate.get().value(), STATISTICS),
            rounded(estimate.get().interval().low(), STATISTICS),
            rounded(estimate.get().interval().high(), STATISTICS));
  }

  private static OptionalDouble times(OptionalDouble figure, DoubleUnaryOperator change) {
    return figure.isPresent()
        ? OptionalDouble.of(change.applyAsDouble(figure.getAsDouble()))
        : figure;
  }

  private static Object number(OptionalDouble figure) {
    return figure.isPresent() ? number(figure.getAsDouble()) : NOTHING;
  }

  private static Object number(double figure) {
    return Double.isFinite(figure) ? rounded(figure, FIGURES) : NOTHING;
  }

  private static Object rounded(double figure, int digits) {
    return Double.parseDouble(String.format(Locale.ROOT, "%." + (digits - 1) + "e", figure)) + 0.0;
  }
}
