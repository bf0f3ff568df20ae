package lodeswing.web.freeswing;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.StringJoiner;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;
import lodeswing.core.swing.SmallSwings;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * A free swing as it is asked for, in the layout's own units, with every default filled in.
 *
 * @param layout the layout
 * @param release {@code x, y, vx, vy} [mm and mm/s on the bench]
 * @param durationS how long the figure is drawn
 * @param among what is asked of the path among the magnets; empty for nothing
 */
record FreeSwingRequest(
    LayoutDocument layout, List<Double> release, double durationS, Optional<Among> among) {

  /** Small swings along x that a figure shows: four closings of 2 to 3, three of 3 to 4. */
  private static final double SWINGS = 12;

  /** Halvings of the swing's size that a figure shows at most: the last is a 64th of the first. */
  private static final double HALVINGS = 6;

  /** The usual release lies on the diagonal, this share of the bob's arm out along each axis. */
  private static final double OUT = 0.1;

  private static final String FORM = "form=1";

  /**
   * What is asked of the path among the magnets.
   *
   * @param within distance from the free path [mm on the bench]
   * @param drawn whether that path is drawn too
   */
  record Among(double within, boolean drawn) {}

  FreeSwingRequest {
    release = List.copyOf(release);
  }

  /** Where the bob is let go if nobody says, in whole millimetres on the bench. */
  static double usualPlace(LayoutDocument layout) {
    return layout.layout() instanceof BenchLayout bench
        ? Math.max(1, Math.rint(OUT * bench.suspension().body().bobArm() * 1000))
        : 1;
  }

  /** How long the figure is drawn if nobody says, to three digits. */
  static double usualDuration(LayoutDocument layout, Limits limits) {
    SmallSwings swings = SmallSwings.of(layout.layout());
    double seen =
        HALVINGS
            * SmallSwings.halvingTime(swings.lossX().orElse(0)).orElse(Double.POSITIVE_INFINITY);
    return Math.min(
        limits.durationS(),
        BigDecimal.valueOf(Math.min(SWINGS * swings.periodX(), seen))
            .round(new MathContext(3, RoundingMode.HALF_EVEN))
            .doubleValue());
  }

  /** How near the path among the magnets must keep if nobody says: 5 mm, textbook 0.05. */
  static double usualWithin(LayoutDocument layout) {
    return layout.model().equals("bench") ? 5 : 0.05;
  }

  /**
   * Refuses what costs too much, saying what to ask instead.
   *
   * @throws ProblemException {@code too-costly}
   */
  void checkCost(Limits limits) {
    if (durationS > limits.durationS()) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY,
          "The free swing asks for more than a path may cost.",
          List.of(
              new Fault(
                  "?durationS",
                  "is "
                      + Numbers.shortest(durationS)
                      + "; lower it to "
                      + Numbers.shortest(limits.durationS()))));
    }
  }

  /** Names the paths: labels do not change them. */
  ComputationKey key() {
    return new ComputationKey(
        "fsw",
        FreeSwingComputations.KIND
            + "|"
            + FORM
            + "|"
            + layout.physicsKey()
            + "|"
            + String.join(" ", words().subList(1, words().size())));
  }

  /** All of it in words without blanks, the layout's id first. */
  List<String> words() {
    return List.of(
        layout.layoutId(),
        Numbers.shortest(release.get(0)),
        Numbers.shortest(release.get(1)),
        Numbers.shortest(release.get(2)),
        Numbers.shortest(release.get(3)),
        Numbers.shortest(durationS),
        among.map(a -> Numbers.shortest(a.within())).orElse("-"),
        among.map(a -> Boolean.toString(a.drawn())).orElse("-"));
  }

  /** The request that such words tell. */
  static FreeSwingRequest of(LayoutDocument layout, List<String> words) {
    return new FreeSwingRequest(
        layout,
        words.subList(1, 5).stream().map(Double::valueOf).toList(),
        Double.parseDouble(words.get(5)),
        words.get(6).equals("-")
            ? Optional.empty()
            : Optional.of(
                new Among(Double.parseDouble(words.get(6)), words.get(7).equals("true"))));
  }

  /** Where the same is answered again, with all that was asked. */
  String url() {
    Map<String, String> query = releaseQuery();
    among.ifPresent(
        a -> {
          query.put("within", Numbers.shortest(a.within()));
          query.put("secondPath", Boolean.toString(a.drawn()));
        });
    return base() + "/free-swing?" + written(query);
  }

  /** The trace of the same release among the magnets. */
  String traceUrl() {
    return base() + "/trace?" + written(releaseQuery());
  }

  /** The layout's own address. */
  String base() {
    return "/v1/layouts/" + layout.layoutId();
  }

  private Map<String, String> releaseQuery() {
    Map<String, String> query = new LinkedHashMap<>();
    List<String> words = words();
    query.put("x", words.get(1));
    query.put("y", words.get(2));
    query.put("vx", words.get(3));
    query.put("vy", words.get(4));
    query.put("durationS", words.get(5));
    return query;
  }

  private static String written(Map<String, String> query) {
    StringJoiner all = new StringJoiner("&");
    query.forEach((name, value) -> all.add(name + "=" + value));
    return all.toString();
  }

  boolean bench() {
    return layout.model().equals("bench");
  }

  /** Metres in a unit of length of this layout. */
  double unit() {
    return 1 / layout.shownPerUnit();
  }

  /** The release in SI. */
  Release start() {
    return new Release(
        release.get(0) * unit(),
        release.get(1) * unit(),
        release.get(2) * unit(),
        release.get(3) * unit());
  }
}
