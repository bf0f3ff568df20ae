package lodeswing.web.tuning;

import java.math.BigDecimal;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalInt;
import lodeswing.analysis.tuning.Bench;
import lodeswing.core.chance.HandSpread;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.web.body.Body;
import lodeswing.web.hand.AimedHand;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutWarning;
import lodeswing.web.problem.ProblemException;

/**
 * The layout of a request on a hand's grid: which steps may be made, and the layout that they make.
 *
 * <p>Places, gap and release lie on whole steps from the plate's centre, or stay as they are; what
 * is not moved keeps its figures to the bit.
 */
final class WorkBench implements Bench {

  private static final double ROOM = 1e-9;

  private final TuningRequest request;
  private final List<Place> places = new ArrayList<>();
  private final List<Strength> strengths = new ArrayList<>();
  private Optional<Line> gap = Optional.empty();
  private Optional<Place> aim = Optional.empty();
  private final List<String> oddities;

  /** One figure on a grid. */
  private record Line(double own, double step, int least, int most) {

    static Line about(double own, double within, double step) {
      int far = (int) Math.floor(within / step + ROOM);
      return new Line(own, step, -far, far);
    }

    static Line between(double own, double least, double most, double step) {
      double base = Math.rint(own / step);
      return new Line(
          own,
          step,
          Math.min(0, (int) Math.ceil(least / step - base - ROOM)),
          Math.max(0, (int) Math.floor(most / step - base + ROOM)));
    }

    double at(int steps) {
      return BigDecimal.valueOf(step)
          .multiply(BigDecimal.valueOf(Math.rint(own / step) + steps))
          .doubleValue();
    }
  }

  /** Two figures that are moved together; {@code index} is the magnet's. */
  private record Place(int index, double within, Line x, Line y) {

    double x(int stepsX, int stepsY) {
      return stepsX == 0 && stepsY == 0 ? x.own : x.at(stepsX);
    }

    double y(int stepsX, int stepsY) {
      return stepsX == 0 && stepsY == 0 ? y.own : y.at(stepsY);
    }

    boolean holds(int stepsX, int stepsY) {
      return Math.hypot(x(stepsX, stepsY) - x.own, y(stepsX, stepsY) - y.own) <= within + ROOM;
    }
  }

  /** A magnet's own strength among those of the stock, the weakest first. */
  private record Strength(int index, List<Body> choices, int own) {

    Body at(int steps) {
      return choices.get(own + steps);
    }
  }

  /**
   * The bench of a request.
   *
   * @throws ProblemException where an entry of the stock does not fit a magnet
   */
  WorkBench(TuningRequest request) {
    this.request = request;
    this.oddities = codes(request.layout());
    Body move = request.move();
    List<Body> magnets = request.layout().canonical().objects("magnets");
    move.findObject("places")
        .ifPresent(
            part ->
                request
                    .magnets(part)
                    .forEach(
                        i ->
                            places.add(
                                place(
                                    i,
                                    magnets.get(i).number("x"),
                                    magnets.get(i).number("y"),
                                    part))));
    gap =
        move.findObject("gap")
            .map(
                part ->
                    Line.between(
                        request.layout().canonical().number("gapMm"),
                        part.number("leastMm"),
                        part.number("mostMm"),
                        part.number("step")));
    move.findObject("strength")
        .ifPresent(
            part -> request.magnets(part).forEach(i -> strengths.add(strength(i, part, magnets))));
    aim =
        move.findObject("release")
            .map(
                part -> {
                  Body release = request.canonical().object("release");
                  return place(-1, release.number("x"), release.number("y"), part);
                });
  }

  private static Place place(int index, double x, double y, Body part) {
    double within = part.number("within");
    double step = part.number("step");
    return new Place(index, within, Line.about(x, within, step), Line.about(y, within, step));
  }

  private Strength strength(int index, Body part, List<Body> magnets) {
    Body own = magnets.get(index);
    List<Body> choices = new ArrayList<>(List.of(own));
    for (Body entry : part.objects("stock")) {
      Body changed = stocked(own, entry);
      if (choices.stream().noneMatch(known -> known.toJson().equals(changed.toJson()))) {
        choices.add(changed);
      }
    }
    Map<Body, Double> pulls = new LinkedHashMap<>();
    choices.forEach(choice -> pulls.put(choice, pull(index, choice)));
    choices.sort(Comparator.comparingDouble(choice -> pulls.getOrDefault(choice, 0.0)));
    return new Strength(index, List.copyOf(choices), choices.indexOf(own));
  }

  /** A magnet with an entry of the stock's figures in place of its own. */
  static Body stocked(Body magnet, Body entry) {
    Body changed = magnet;
    if (entry.has("grade")) {
      changed = changed.without("remanenceT");
    } else if (entry.has("remanenceT")) {
      changed = changed.without("grade");
    }
    for (Map.Entry<String, Object> figure : entry.members().entrySet()) {
      changed = changed.with(figure.getKey(), figure.getValue());
    }
    return changed;
  }

  private double pull(int index, Body choice) {
    List<Body> magnets = new ArrayList<>(request.layout().canonical().objects("magnets"));
    magnets.set(index, choice);
    Layout layout = read(request.layout().canonical().with("magnets", magnets)).layout();
    return layout instanceof BenchLayout bench
        ? bench.magnets().get(index).magnet().moment()
        : ((TextbookLayout) layout).magnets().get(index).strength();
  }

  private static LayoutDocument read(Body canonical) {
    return LayoutDocument.ofCanonical(canonical.toJson().getBytes(StandardCharsets.UTF_8));
  }

  private static List<String> codes(LayoutDocument document) {
    return document.told().stream().map(LayoutWarning::code).toList();
  }

  @Override
  public int figures() {
    return 2 * places.size() + (gap.isPresent() ? 1 : 0) + strengths.size() + aims();
  }

  @Override
  public int aims() {
    return aim.isPresent() ? 2 : 0;
  }

  private int gapAt() {
    return 2 * places.size();
  }

  private int strengthsAt() {
    return gapAt() + (gap.isPresent() ? 1 : 0);
  }

  private int aimAt() {
    return strengthsAt() + strengths.size();
  }

  @Override
  public int least(int figure) {
    return bound(figure, true);
  }

  @Override
  public int most(int figure) {
    return bound(figure, false);
  }

  private int bound(int figure, boolean least) {
    if (figure >= aimAt()) {
      Place place = aim.orElseThrow();
      return end(figure == aimAt() ? place.x : place.y, least);
    }
    if (figure >= strengthsAt()) {
      Strength strength = strengths.get(figure - strengthsAt());
      return least ? -strength.own : strength.choices.size() - 1 - strength.own;
    }
    if (figure >= gapAt()) {
      return end(gap.orElseThrow(), least);
    }
    Place place = places.get(figure / 2);
    return end(figure % 2 == 0 ? place.x : place.y, least);
  }

  private static int end(Line line, boolean least) {
    return least ? line.least : line.most;
  }

  @Override
  public int[] within(int[] setting) {
    int[] kept = setting.clone();
    for (int k = 0; k < kept.length; k++) {
      kept[k] = Math.max(least(k), Math.min(most(k), kept[k]));
    }
    for (int k = 0; k < places.size(); k++) {
      keep(places.get(k), kept, 2 * k);
    }
    aim.ifPresent(place -> keep(place, kept, aimAt()));
    return kept;
  }

  /** Draws a place in, along the longer of its two ways, until it lies within its bound. */
  private static void keep(Place place, int[] setting, int at) {
    while (!place.holds(setting[at], setting[at + 1])) {
      int longer = Math.abs(setting[at]) >= Math.abs(setting[at + 1]) ? at : at + 1;
      setting[longer] -= Integer.signum(setting[longer]);
    }
  }

  /** The layout of a setting as a document, whatever is odd about it. */
  LayoutDocument document(int[] setting) {
    Body canonical = request.layout().canonical();
    List<Body> magnets = new ArrayList<>(canonical.objects("magnets"));
    for (int k = 0; k < strengths.size(); k++) {
      int steps = setting[strengthsAt() + k];
      if (steps != 0) {
        magnets.set(strengths.get(k).index, strengths.get(k).at(steps));
      }
    }
    for (int k = 0; k < places.size(); k++) {
      int stepsX = setting[2 * k];
      int stepsY = setting[2 * k + 1];
      if (stepsX != 0 || stepsY != 0) {
        Place place = places.get(k);
        magnets.set(
            place.index,
            magnets
                .get(place.index)
                .with("x", place.x(stepsX, stepsY))
                .with("y", place.y(stepsX, stepsY)));
      }
    }
    Body changed = canonical.with("magnets", magnets);
    if (gap.isPresent() && setting[gapAt()] != 0) {
      changed = changed.with("gapMm", gap.get().at(setting[gapAt()]));
    }
    return changed.toJson().equals(canonical.toJson()) ? request.layout() : read(changed);
  }

  @Override
  public Optional<Layout> layout(int[] setting) {
    return buildable(setting).map(LayoutDocument::layout);
  }

  /** The layout of a setting, where it can be built and has no oddity that was not there before. */
  Optional<LayoutDocument> buildable(int[] setting) {
    try {
      LayoutDocument document = document(setting);
      List<String> more = new ArrayList<>(codes(document));
      oddities.forEach(more::remove);
      return more.isEmpty() ? Optional.of(document) : Optional.empty();
    } catch (ProblemException e) {
      return Optional.empty();
    }
  }

  @Override
  public HandSpread hand(int[] setting) {
    return aimed(setting).inSi();
  }

  /** The hand of a setting. */
  AimedHand aimed(int[] setting) {
    AimedHand own = request.hand();
    if (aim.isEmpty()) {
      return own;
    }
    int at = aimAt();
    Body release =
        own.release()
            .with("x", aim.get().x(setting[at], setting[at + 1]))
            .with("y", aim.get().y(setting[at], setting[at + 1]));
    return new AimedHand(release, own.spread(), own.shownPerUnit());
  }

  /** The magnets whose strength a setting changes. */
  List<Integer> exchanged(int[] setting) {
    List<Integer> exchanged = new ArrayList<>();
    for (int k = 0; k < strengths.size(); k++) {
      if (setting[strengthsAt() + k] != 0) {
        exchanged.add(strengths.get(k).index);
      }
    }
    return exchanged;
  }

  /** What ran into its bound, in words. */
  List<String> atBounds(int[] setting) {
    List<String> words = new ArrayList<>();
    for (int k = 0; k < places.size(); k++) {
      Place place = places.get(k);
      if (atEdge(place, setting[2 * k], setting[2 * k + 1])) {
        words.add("the place of " + request.name(place.index));
      }
    }
    edge(
        setting, gap.isPresent() ? OptionalInt.of(gapAt()) : OptionalInt.empty(), "the gap", words);
    for (int k = 0; k < strengths.size(); k++) {
      edge(
          setting,
          OptionalInt.of(strengthsAt() + k),
          "the strength of " + request.name(strengths.get(k).index),
          words);
    }
    if (aim.isPresent() && atEdge(aim.get(), setting[aimAt()], setting[aimAt() + 1])) {
      words.add("the release");
    }
    return words;
  }

  private void edge(int[] setting, OptionalInt figure, String name, List<String> words) {
    if (figure.isPresent()) {
      int at = figure.getAsInt();
      if (least(at) < most(at) && (setting[at] == least(at) || setting[at] == most(at))) {
        words.add(name);
      }
    }
  }

  /** Whether a step farther out along its own way would leave the bound. */
  private static boolean atEdge(Place place, int stepsX, int stepsY) {
    return !place.holds(stepsX + Integer.signum(stepsX), stepsY + Integer.signum(stepsY));
  }
}
