package lodeswing.web.odds;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import lodeswing.analysis.odds.PartsTrial;
import lodeswing.core.chance.OddsSpec;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.statistics.IntervalRule;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Body;
import lodeswing.web.hand.AimedHand;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.layout.ToleranceFigures;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.Posted;
import lodeswing.web.posted.PostedKind;

/**
 * Odds as they are asked for, in the layout's own units, with every default filled in.
 *
 * @param layout the layout
 * @param canonical release, spread, width, interval and seed; tolerances and rigs where parts vary;
 *     counts where a class counted
 * @param revision of the engine that answers
 */
record OddsRequest(LayoutDocument layout, Body canonical, int revision)
    implements Posted<OddsRequest> {

  static final PostedKind KIND =
      new PostedKind(
          "odd",
          "odds",
          "/v1/odds/",
          OddsShapes.STORED,
          "No odds of this id are stored; post them again at /v1/odds.");

  /** From a body that {@link OddsShapes#REQUEST} or {@link OddsShapes#STORED} has read. */
  static OddsRequest of(LayoutDocument layout, Body sent) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("release", sent.findObject("release").orElseGet(AimedHand::middle));
    members.put("spread", sent.object("spread"));
    members.put("width", sent.number("width"));
    members.put("interval", sent.text("interval"));
    members.put("seed", sent.number("seed"));
    tolerances(layout, sent)
        .ifPresent(
            tolerances -> {
              members.put("tolerances", tolerances);
              members.put("rigs", sent.number("rigs"));
            });
    if (sent.has("counts")) {
      members.put("counts", sent.objects("counts"));
    }
    return new OddsRequest(layout, Body.of(members), ComputationKey.ENGINE_REVISION);
  }

  private static Optional<Body> tolerances(LayoutDocument layout, Body sent) {
    return sent.findObject("tolerances")
        .or(
            () ->
                sent.flag("parts")
                    ? layout.canonical().findObject("tolerances")
                    : Optional.empty());
  }

  @Override
  public PostedKind kind() {
    return KIND;
  }

  @Override
  public OddsRequest of(int other) {
    return new OddsRequest(layout, canonical, other);
  }

  /** Names the counted ends alone: neither labels nor what a class counted change them. */
  ComputationKey key(double followed) {
    return new ComputationKey(
        "cnt",
        KIND.word()
            + "|"
            + followed
            + "|"
            + layout.physicsKey()
            + "|"
            + canonical.without("counts").toJson(),
        revision);
  }

  boolean bench() {
    return layout.model().equals("bench");
  }

  /** What the analysis is asked. */
  OddsSpec spec(Limits limits) {
    return new OddsSpec(
        hand().inSi(), width(), rule(), (long) canonical.number("seed"), limits.followedS());
  }

  /** The hand, as it was asked about. */
  AimedHand hand() {
    return new AimedHand(
        canonical.object("release"), canonical.object("spread"), layout.shownPerUnit());
  }

  double width() {
    return canonical.number("width");
  }

  IntervalRule rule() {
    return canonical.text("interval").equals(OddsShapes.USUAL_INTERVAL)
        ? IntervalRule.WILSON
        : IntervalRule.CLOPPER_PEARSON;
  }

  /** How many rigs are built anew; 0 where the parts are taken as exact. */
  int rigs() {
    return canonical.has("tolerances") ? (int) canonical.number("rigs") : 0;
  }

  /** The varied rigs, where the parts vary. */
  Optional<PartsTrial> trial() {
    return canonical.has("tolerances") && layout.layout() instanceof BenchLayout rig
        ? Optional.of(
            new PartsTrial(
                rig,
                ToleranceFigures.inSi(canonical.object("tolerances")),
                rigs(),
                PartsTrial.RELEASES))
        : Optional.empty();
  }

  /** What a class counted, by label or name; empty where it did not. */
  Map<String, Long> counts() {
    Map<String, Long> counts = new LinkedHashMap<>();
    for (Body line : canonical.objects("counts")) {
      counts.put(line.text("label"), (long) line.number("count"));
    }
    return counts;
  }

  /** Labels that are counted more than once, by their place in the list. */
  List<Integer> countedTwice() {
    List<Integer> twice = new ArrayList<>();
    Set<String> seen = new HashSet<>();
    List<Body> lines = canonical.objects("counts");
    for (int i = 0; i < lines.size(); i++) {
      if (!seen.add(lines.get(i).text("label"))) {
        twice.add(i);
      }
    }
    return twice;
  }
}
