package lodeswing.web.tuning;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.IntStream;
import lodeswing.analysis.tuning.TuningSpec;
import lodeswing.analysis.tuning.Wish;
import lodeswing.core.statistics.IntervalRule;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Body;
import lodeswing.web.hand.AimedHand;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.Posted;
import lodeswing.web.posted.PostedKind;

/**
 * A tuning as it is asked for, in the layout's own units, with every default filled in.
 *
 * @param layout the layout
 * @param canonical what is asked, as {@link TuningShapes#STORED} has it
 * @param revision of the engine that answers
 */
record TuningRequest(LayoutDocument layout, Body canonical, int revision)
    implements Posted<TuningRequest> {

  static final PostedKind KIND =
      new PostedKind(
          "tun",
          "tuning",
          "/v1/tunings/",
          TuningShapes.STORED,
          "No tuning of this id is stored; post it again at /v1/tunings.");
  private static final double BENCH_STEP = 1;
  private static final double PLANE_STEP = 0.01;
  private static final long SEEDS = 1L + Integer.MAX_VALUE;

  /** From a body that {@link TuningShapes#REQUEST} or {@link TuningShapes#STORED} has read. */
  static TuningRequest of(LayoutDocument layout, Body sent) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("release", sent.findObject("release").orElseGet(AimedHand::middle));
    members.put("spread", sent.object("spread"));
    members.put("wanted", sent.object("wanted"));
    members.put("tolerance", sent.number("tolerance"));
    members.put("move", stepped(layout, sent.object("move")));
    for (String name : List.of("answers", "candidates", "width")) {
      members.put(name, sent.number(name));
    }
    members.put("interval", sent.text("interval"));
    members.put("seed", sent.number("seed"));
    members.put(
        "confirmSeed", sent.findNumber("confirmSeed").orElse((sent.number("seed") + 1) % SEEDS));
    return new TuningRequest(layout, Body.of(members), ComputationKey.ENGINE_REVISION);
  }

  private static Body stepped(LayoutDocument layout, Body move) {
    Map<String, Object> members = new LinkedHashMap<>();
    double step = layout.model().equals("bench") ? BENCH_STEP : PLANE_STEP;
    move.members()
        .forEach(
            (name, value) -> {
              boolean lacks = !name.equals("strength") && value instanceof Body b && !b.has("step");
              members.put(name, lacks ? ((Body) value).with("step", step) : value);
            });
    return Body.of(members);
  }

  @Override
  public PostedKind kind() {
    return KIND;
  }

  @Override
  public TuningRequest of(int other) {
    return new TuningRequest(layout, canonical, other);
  }

  /** Names what was found; labels decide what is wanted and so belong to it. */
  ComputationKey key(double followed) {
    return new ComputationKey(
        "mov", KIND.word() + "|" + followed + "|" + stored().toJson(), revision);
  }

  boolean bench() {
    return layout.model().equals("bench");
  }

  /** The unit of length as it follows a figure. */
  String unit() {
    return bench() ? " mm" : "";
  }

  AimedHand hand() {
    return new AimedHand(
        canonical.object("release"), canonical.object("spread"), layout.shownPerUnit());
  }

  Body move() {
    return canonical.object("move");
  }

  /** The labels of the layout, each once, in the magnets' order. */
  List<String> labels() {
    return layout.labels().stream().flatMap(Optional::stream).distinct().toList();
  }

  /** The wanted chance of each label, in their order. */
  List<Double> wanted() {
    Body wanted = canonical.object("wanted");
    List<String> labels = labels();
    if (wanted.text("kind").equals("fair")) {
      return labels.stream().map(label -> 1.0 / labels.size()).toList();
    }
    Map<String, Double> chances = new LinkedHashMap<>();
    wanted
        .objects("chances")
        .forEach(line -> chances.put(line.text("label"), line.number("chance")));
    return labels.stream().map(label -> chances.getOrDefault(label, 0.0)).toList();
  }

  double tolerance() {
    return canonical.number("tolerance");
  }

  double width() {
    return canonical.number("width");
  }

  IntervalRule rule() {
    return canonical.text("interval").equals(TuningShapes.USUAL_INTERVAL)
        ? IntervalRule.WILSON
        : IntervalRule.CLOPPER_PEARSON;
  }

  int candidates() {
    return (int) canonical.number("candidates");
  }

  int answers() {
    return (int) canonical.number("answers");
  }

  /** The magnets that a part of {@code move} names, by index; all where it names none. */
  List<Integer> magnets(Body part) {
    int count = layout.labels().size();
    List<String> names = part.texts("magnets");
    return IntStream.range(0, count)
        .filter(i -> names.isEmpty() || names.stream().anyMatch(name -> named(i, name)))
        .boxed()
        .toList();
  }

  /** Whether a name means a magnet: its label, or its number from 1. */
  boolean named(int magnet, String name) {
    return layout.labels().get(magnet).filter(name::equals).isPresent()
        || name.equals(Integer.toString(magnet + 1));
  }

  /** A magnet's label, or its number in words. */
  String name(int magnet) {
    return layout.labels().get(magnet).orElse("magnet " + (magnet + 1));
  }

  /** What the analysis is asked. */
  TuningSpec spec(Limits limits) {
    List<String> labels = labels();
    List<Integer> ofMagnets = new ArrayList<>();
    layout.labels().forEach(label -> ofMagnets.add(label.map(labels::indexOf).orElse(-1)));
    Wish wish = new Wish(wanted(), ofMagnets, tolerance());
    return new TuningSpec(
        wish,
        candidates(),
        answers(),
        width(),
        rule(),
        (long) canonical.number("seed"),
        (long) canonical.number("confirmSeed"),
        limits.followedS());
  }
}
