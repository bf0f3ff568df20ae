package lodeswing.web.sweep;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.analysis.sweep.ReleaseFigures;
import lodeswing.core.chance.HandSpread;
import lodeswing.core.chance.OddsSpec;
import lodeswing.core.rig.Release;
import lodeswing.core.statistics.IntervalRule;
import lodeswing.core.window.BasinWindow;
import lodeswing.job.ComputationKey;
import lodeswing.web.basin.UsualWindow;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.hand.AimedHand;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.Posted;
import lodeswing.web.posted.PostedKind;

/**
 * A sweep as it is asked for, in the layout's own units, with every value and default written out.
 *
 * @param layout the layout whose figures vary
 * @param canonical vary and measures; release, hand and map where a measure needs them
 * @param revision of the engine that answers
 */
record SweepRequest(LayoutDocument layout, Body canonical, int revision)
    implements Posted<SweepRequest> {

  static final PostedKind KIND =
      new PostedKind(
          "swp",
          "sweep",
          "/v1/sweeps/",
          SweepShapes.STORED,
          "No sweep of this id is stored; post it again at /v1/sweeps.");
  private static final String MAP = "map";

  /** From a body that {@link SweepShapes} and {@link SweepReview#shapes} find no fault with. */
  static SweepRequest of(LayoutDocument layout, Body sent) {
    Map<String, Object> members = new LinkedHashMap<>();
    List<SweptQuantity> vary = sent.objects("vary").stream().map(SweptQuantity::of).toList();
    members.put("vary", vary.stream().map(SweptQuantity::body).toList());
    List<MeasuredFigure> measures =
        sent.objects("measures").stream().map(MeasuredFigure::of).toList();
    members.put("measures", measures.stream().map(MeasuredFigure::body).toList());
    if (measures.stream().anyMatch(one -> one.measure().needsRelease())) {
      members.put("release", release(sent));
    }
    if (measures.stream().anyMatch(one -> one.measure().of() == SweepMeasure.Of.HAND)) {
      members.put("spread", sent.object("spread"));
      members.put("width", sent.findNumber("width").orElse(SweepShapes.USUAL_WIDTH));
      members.put("seed", sent.findNumber("seed").orElse(SweepShapes.USUAL_SEED));
    }
    if (measures.stream().anyMatch(one -> one.measure().of() == SweepMeasure.Of.MAP)) {
      members.put(MAP, map(layout, sent));
    }
    return new SweepRequest(layout, Body.of(members), ComputationKey.ENGINE_REVISION);
  }

  private static Body release(Body sent) {
    Optional<Body> given = sent.findObject("release");
    Map<String, Object> release = new LinkedHashMap<>();
    for (String name : List.of("x", "y", "vx", "vy")) {
      release.put(name, given.map(body -> body.findNumber(name).orElse(0)).orElse(0.0));
    }
    return Body.of(release);
  }

  private static Body map(LayoutDocument layout, Body sent) {
    Body given = sent.findObject(MAP).orElseGet(() -> Body.of(Map.of()));
    Map<String, Object> map = new LinkedHashMap<>();
    map.put("x", given.findNumber("x").orElse(0));
    map.put("y", given.findNumber("y").orElse(0));
    map.put(
        "halfWidth", given.findNumber("halfWidth").orElseGet(() -> UsualWindow.halfWidth(layout)));
    map.put("side", given.findNumber("side").orElse(SweepShapes.USUAL_SIDE));
    return Body.of(map);
  }

  @Override
  public PostedKind kind() {
    return KIND;
  }

  @Override
  public SweepRequest of(int other) {
    return new SweepRequest(layout, canonical, other);
  }

  /** Names the table; its pieces have names of their own, without labels. */
  ComputationKey key(Limits limits) {
    String followed = limits.durationS() + "|" + limits.followedS();
    return new ComputationKey(
        "swt", KIND.word() + "|" + followed + "|" + stored().toJson(), revision);
  }

  boolean bench() {
    return layout.model().equals("bench");
  }

  List<SweptQuantity> vary() {
    return canonical.objects("vary").stream().map(SweptQuantity::of).toList();
  }

  List<MeasuredFigure> measures() {
    return canonical.objects("measures").stream().map(MeasuredFigure::of).toList();
  }

  int points() {
    return vary().stream().mapToInt(one -> one.values().size()).reduce(1, Math::multiplyExact);
  }

  /** How many layouts there are, if each can be built. */
  int layouts() {
    return vary().stream()
        .filter(one -> !one.ofRelease())
        .mapToInt(one -> one.values().size())
        .reduce(1, Math::multiplyExact);
  }

  /** How many pieces there are, if each layout can be built and no two move alike. */
  int pieces() {
    int releases = releases() ? points() / layouts() : 1;
    return layouts() * ((releases + SweepGrid.MOST_IN_PIECE - 1) / SweepGrid.MOST_IN_PIECE);
  }

  private boolean asks(SweepMeasure measure) {
    return measures().stream().anyMatch(one -> one.measure() == measure);
  }

  /** Whether each point has a release. */
  boolean releases() {
    return canonical.has("release");
  }

  /** What is asked of each release. */
  ReleaseFigures.Asked asked() {
    boolean settled = asks(SweepMeasure.SETTLED);
    boolean sure = asks(SweepMeasure.SURE);
    return new ReleaseFigures.Asked(
        settled || sure || asks(SweepMeasure.OUTCOME) || asks(SweepMeasure.SEALED), settled, sure);
  }

  /** The release of every point, as far as it does not vary. */
  Body release() {
    return canonical.object("release");
  }

  /** What is asked of the odds of a hand about a release, where odds are asked for. */
  Optional<OddsSpec> odds(Release aim, Limits limits) {
    if (!canonical.has("spread")) {
      return Optional.empty();
    }
    HandSpread hand = hand().inSi();
    return Optional.of(
        new OddsSpec(
            new HandSpread(aim, hand.place(), hand.speedDeviation()),
            canonical.number("width"),
            IntervalRule.WILSON,
            (long) canonical.number("seed"),
            limits.followedS()));
  }

  /** The hand, aimed as far as its release does not vary. */
  AimedHand hand() {
    return new AimedHand(release(), canonical.object("spread"), layout.shownPerUnit());
  }

  /** How many tries the odds of one point take at most; 0 where none are asked for. */
  int tries() {
    return canonical.has("spread")
        ? OddsSpec.mostReleases(canonical.number("width"), IntervalRule.WILSON)
        : 0;
  }

  /** What the odds of a release depend on, beside it and the layout. */
  String handKey() {
    return canonical.has("spread")
        ? canonical.object("spread").toJson()
            + Numbers.shortest(canonical.number("width"))
            + "|"
            + Numbers.shortest(canonical.number("seed"))
        : "";
  }

  /** The window of the small map, in SI, where there is one. */
  Optional<BasinWindow> window() {
    double unit = 1 / layout.shownPerUnit();
    return canonical
        .findObject(MAP)
        .map(
            map ->
                new BasinWindow(
                    map.number("x") * unit,
                    map.number("y") * unit,
                    map.number("halfWidth") * unit));
  }

  /** Pixels along the side of the map; 0 where there is none. */
  int side() {
    return canonical.findObject(MAP).map(map -> (int) map.number("side")).orElse(0);
  }
}
