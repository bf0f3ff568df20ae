package lodeswing.web.sweep;

import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import lodeswing.core.chance.OddsSpec;
import lodeswing.core.statistics.IntervalRule;
import lodeswing.web.body.Body;
import lodeswing.web.body.FaultList;
import lodeswing.web.body.NearestName;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.Numbers;
import lodeswing.web.hand.AimedHand;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.LayoutOverrides;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** What the shapes of a request for a sweep cannot see: whether its parts fit together. */
final class SweepReview {

  private static final int MOST_TOLD = 5;
  private static final int MOST_TRIED = 64;

  private final LayoutDocument layout;
  private final Body sent;
  private final LayoutPlace place;
  private final FaultList faults = new FaultList();

  /**
   * A review.
   *
   * @param layout the layout whose figures vary
   * @param sent the request as {@link SweepShapes#REQUEST} read it
   * @param place where the request stands
   */
  SweepReview(LayoutDocument layout, Body sent, LayoutPlace place) {
    this.layout = layout;
    this.sent = sent;
    this.place = place;
  }

  /**
   * The request.
   *
   * @throws ProblemException {@code invalid-request} with every fault, or {@code too-costly}
   */
  SweepRequest request(Limits limits) {
    ranges();
    faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The request");
    points(limits);
    List<SweptQuantity> vary = sent.objects("vary").stream().map(SweptQuantity::of).toList();
    names(vary);
    measures();
    release(vary);
    hand(limits);
    if (faults.isEmpty()) {
      for (int i = 0; i < vary.size(); i++) {
        values(i, vary.get(i));
      }
    }
    faults.refuseIfAny(ProblemCode.INVALID_REQUEST, "The request");
    return SweepRequest.of(layout, sent);
  }

  /** A pointer into the body, or the parameter that stands for it. */
  private String at(String pointer) {
    if (place != LayoutPlace.ADDRESS) {
      return pointer;
    }
    String last = pointer.replaceAll("/\\d+$", "").replaceAll(".*/", "");
    return "?"
        + switch (last) {
          case "quantity" -> "vary";
          case "measures" -> "measure";
          default -> last;
        };
  }

  private void ranges() {
    List<Body> vary = sent.objects("vary");
    for (int i = 0; i < vary.size(); i++) {
      Body one = vary.get(i);
      String pointer = "/vary/" + i;
      if (one.has("values")) {
        twice(one, pointer);
      } else {
        range(one, pointer);
      }
    }
  }

  private void twice(Body one, String pointer) {
    if (one.has("spacing")) {
      faults.add(at(pointer + "/spacing"), "goes with from, to and steps; leave it out");
    }
    Set<Object> seen = new HashSet<>();
    if (one.members().get("values") instanceof List<?> values) {
      for (int k = 0; k < values.size(); k++) {
        if (!seen.add(values.get(k))) {
          faults.add(
              at(pointer + "/values/" + k),
              SweptQuantity.written(values.get(k)) + " is there already; give each value once");
        }
      }
    }
  }

  private void range(Body one, String pointer) {
    boolean whole = true;
    for (String name : List.of("from", "to", "steps")) {
      if (!one.has(name)) {
        faults.add(
            at(pointer + "/" + name), "is missing; give from, to and steps, or values instead");
        whole = false;
      }
    }
    if (!whole) {
      return;
    }
    double from = one.number("from");
    double to = one.number("to");
    if (from == to) {
      faults.add(
          at(pointer + "/to"),
          "is "
              + Numbers.shortest(to)
              + ", the same as from; give another, or the one value in values");
    }
    if (one.findText("spacing").orElse("even").equals("log") && !(from * to > 0)) {
      faults.add(
          at(pointer + "/spacing"), "log needs from and to above 0, or both below; use even");
    }
  }

  private void points(Limits limits) {
    List<Body> vary = sent.objects("vary");
    long points = 1;
    for (Body one : vary) {
      points *= count(one);
    }
    if (points <= limits.sweepPoints()) {
      return;
    }
    int longest = vary.size() > 1 && count(vary.get(1)) > count(vary.get(0)) ? 1 : 0;
    long others = points / count(vary.get(longest));
    long allowed = Math.max(1, limits.sweepPoints() / others);
    throw tooCostly(
        points + " points are more than the " + limits.sweepPoints() + " that a sweep may have.",
        longest,
        allowed);
  }

  private static long count(Body one) {
    return one.has("values")
        ? ((List<?>) one.members().getOrDefault("values", List.of())).size()
        : (long) one.number("steps");
  }

  private ProblemException tooCostly(String detail, int quantity, long allowed) {
    Body one = sent.objects("vary").get(quantity);
    boolean listed = one.has("values");
    String name = listed ? "values" : "steps";
    return new ProblemException(
        ProblemCode.TOO_COSTLY,
        detail,
        List.of(
            new Fault(
                at("/vary/" + quantity + "/" + name),
                (listed ? "has " : "is ")
                    + count(one)
                    + (listed ? " values" : "")
                    + "; lower it to "
                    + allowed)));
  }

  /**
   * Refuses a sweep that costs too much.
   *
   * @param cost in releases
   * @throws ProblemException {@code too-costly}, saying how many values would not
   */
  void affordable(SweepRequest request, long cost, Limits limits) {
    if (cost <= limits.sweepReleases()) {
      return;
    }
    List<SweptQuantity> vary = request.vary();
    int longest =
        vary.size() > 1 && vary.get(1).values().size() > vary.get(0).values().size() ? 1 : 0;
    double share = (double) limits.sweepReleases() / cost;
    long allowed = (long) (share * vary.get(longest).values().size());
    String detail =
        "The sweep would cost about as much as "
            + cost
            + " releases of a textbook map; "
            + limits.sweepReleases()
            + " are allowed.";
    if (allowed < 1) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY,
          detail,
          List.of(
              new Fault(
                  at(request.side() > 0 ? "/map/side" : "/measures"),
                  "makes each point too costly; lower "
                      + (request.side() > 0 ? "the map's side to 64, or " : "")
                      + "the number of values and measures")));
    }
    throw tooCostly(detail, longest, allowed);
  }

  private void names(List<SweptQuantity> vary) {
    Set<String> known = new TreeSet<>(LayoutOverrides.names(layout));
    known.addAll(SweptQuantity.OF_RELEASE);
    for (int i = 0; i < vary.size(); i++) {
      String name = vary.get(i).name();
      if (!known.contains(name)) {
        faults.add(
            at("/vary/" + i + "/quantity"),
            "is "
                + name
                + ", which this "
                + layout.model()
                + " layout has no figure of; "
                + NearestName.find(name, known)
                    .map(near -> "did you mean " + near + "?")
                    .orElse("figures go by names such as " + example()));
      }
      if (i > 0 && name.equals(vary.get(0).name())) {
        faults.add(at("/vary/1/quantity"), "is " + name + " as the first is; vary another");
      }
    }
  }

  private String example() {
    return layout.model().equals("bench") ? "gapMm or magnet.1.x" : "height or magnet.1.x";
  }

  private void measures() {
    Set<Map<String, Object>> seen = new HashSet<>();
    List<Body> measures = sent.objects("measures");
    for (int i = 0; i < measures.size(); i++) {
      MeasuredFigure figure = MeasuredFigure.of(measures.get(i));
      String pointer = "/measures/" + i;
      String word = figure.measure().word();
      if (!seen.add(figure.body().members())) {
        faults.add(at(pointer), word + " is there already; ask once");
      }
      if (layout.model().equals("textbook") && !figure.measure().inTextbook()) {
        faults.add(
            at(pointer), word + " is no measure of a textbook layout, whose bob has no size");
      }
      label(figure, pointer);
    }
  }

  private void label(MeasuredFigure figure, String pointer) {
    String word = figure.measure().word();
    if (figure.label().isEmpty()) {
      if (figure.measure().labelled() == SweepMeasure.Labelled.ALWAYS) {
        faults.add(at(pointer + "/label"), "is missing: " + word + " is of one label; " + labels());
      }
      return;
    }
    String label = figure.label().get();
    if (figure.measure().labelled() == SweepMeasure.Labelled.NEVER) {
      faults.add(at(pointer + "/label"), "goes with chance, share or barrier, not with " + word);
    } else if (!layout.labels().contains(Optional.of(label))) {
      faults.add(at(pointer + "/label"), "is on no magnet of this layout; " + labels());
    }
  }

  private String labels() {
    List<String> labels =
        layout.labels().stream().flatMap(Optional::stream).distinct().limit(20).toList();
    return labels.isEmpty() ? "it has no labels" : "there are " + String.join(", ", labels);
  }

  private void release(List<SweptQuantity> vary) {
    boolean needed =
        sent.objects("measures").stream()
            .anyMatch(one -> MeasuredFigure.of(one).measure().needsRelease());
    Optional<Body> given = sent.findObject("release");
    for (String name : List.of("x", "y")) {
      boolean there =
          given.map(body -> body.has(name)).orElse(false)
              || vary.stream().anyMatch(one -> one.name().equals(name));
      if (needed && !there) {
        faults.add(
            at("/release/" + name), "is missing: a measure is of a release; give it, or vary it");
      }
    }
    for (int i = 0; i < vary.size(); i++) {
      if (vary.get(i).ofRelease() && !needed) {
        faults.add(
            at("/vary/" + i + "/quantity"),
            "is of the release, but no measure is; measure outcome or sealedAtS, for example");
      }
    }
  }

  private void hand(Limits limits) {
    boolean asked =
        sent.objects("measures").stream()
            .anyMatch(one -> MeasuredFigure.of(one).measure().of() == SweepMeasure.Of.HAND);
    if (!asked) {
      return;
    }
    if (!sent.has("spread")) {
      faults.add(
          place == LayoutPlace.ADDRESS ? "?spreadMm" : "/spread",
          "is missing: a measure is of the odds of a hand; say how far it wanders");
      return;
    }
    new AimedHand(AimedHand.middle(), sent.object("spread"), layout.shownPerUnit())
        .review(true, place, faults);
    double width = sent.findNumber("width").orElse(SweepShapes.USUAL_WIDTH);
    if (OddsSpec.mostReleases(width, IntervalRule.WILSON) > limits.oddsReleases()) {
      faults.add(
          at("/width"),
          "is "
              + Numbers.shortest(width)
              + ", which may take more than "
              + limits.oddsReleases()
              + " releases a point; raise it");
    }
  }

  /**
   * Values that no layout can have; those that only make one that cannot be built are rows. Of many
   * values some are tried, evenly chosen, and what is wrong with others is told in their rows.
   */
  private void values(int i, SweptQuantity quantity) {
    int told = 0;
    int count = quantity.values().size();
    int stride = quantity.ofRelease() ? 1 : 1 + (count - 1) / MOST_TRIED;
    for (int k = 0; k < count && told < MOST_TOLD; k += stride) {
      Object value = quantity.values().get(k);
      Optional<String> wrong =
          quantity.ofRelease() ? wrongRelease(quantity, value) : wrongFigure(quantity, value);
      if (wrong.isPresent()) {
        String member = sent.objects("vary").get(i).has("values") ? "/values/" + k : "/from";
        faults.add(
            at("/vary/" + i + member),
            "gives "
                + quantity.name()
                + " "
                + SweptQuantity.written(value)
                + ", which "
                + wrong.get());
        told++;
      }
    }
  }

  private static Optional<String> wrongRelease(SweptQuantity quantity, Object value) {
    boolean speed = quantity.name().startsWith("v");
    NumberShape shape = speed ? SweepShapes.SPEED : SweepShapes.PLACE;
    return value instanceof Double number && number >= shape.least() && number <= shape.most()
        ? Optional.empty()
        : Optional.of("must be " + shape.accepted());
  }

  private Optional<String> wrongFigure(SweptQuantity quantity, Object value) {
    try {
      LayoutOverrides.apply(
          layout, Map.of(quantity.name(), SweptQuantity.written(value)), List.of());
      return Optional.empty();
    } catch (ProblemException e) {
      return e.code() == ProblemCode.IMPOSSIBLE_LAYOUT || e.faults().isEmpty()
          ? Optional.empty()
          : Optional.of(e.faults().get(0).detail());
    }
  }
}
