package lodeswing.web.occupancy;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.List;
import lodeswing.analysis.occupancy.OccupancySpec;
import lodeswing.core.swing.SmallSwings;
import lodeswing.job.ComputationKey;
import lodeswing.web.basin.UsualWindow;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * What is asked about a layout's occupancy, in the layout's own units, with every default filled
 * in.
 *
 * @param layout the layout
 * @param radius of the disc that releases come from [mm on the bench]
 * @param durationS how long each is followed
 * @param releases how many
 * @param seed of their places
 */
record OccupancyRequest(
    LayoutDocument layout, double radius, double durationS, int releases, long seed) {

  /** Releases if nobody says. */
  static final int USUAL_RELEASES = 1_024;

  /** Swings that are followed at least if nobody says. */
  private static final double LEAST_SWINGS = 3;

  private static final String FORM = "form=1";

  /** The disc's radius if nobody says: half the side of the usual map. */
  static double usualRadius(LayoutDocument layout) {
    return UsualWindow.halfWidth(layout);
  }

  /** How long releases are followed if nobody says: until half a free swing is left. */
  static double usualDuration(LayoutDocument layout, Limits limits) {
    SmallSwings swings = SmallSwings.of(layout.layout());
    double halves = SmallSwings.halvingTime(swings.lossX().orElse(0)).orElse(0);
    double usual = Math.max(halves, LEAST_SWINGS * swings.periodX());
    return Math.min(
        limits.durationS(),
        BigDecimal.valueOf(usual).round(new MathContext(3, RoundingMode.HALF_EVEN)).doubleValue());
  }

  /** Swings of all releases together. */
  double swings() {
    return releases * durationS / SmallSwings.of(layout.layout()).periodX();
  }

  /**
   * Refuses what costs too much, saying what to ask instead.
   *
   * @throws ProblemException {@code too-costly}
   */
  void checkCost(Limits limits) {
    double swings = swings();
    if (swings > limits.occupancySwings()) {
      double share = limits.occupancySwings() / swings;
      int lots = (int) (releases * share / OccupancySpec.LOTS);
      int fewer = lots * OccupancySpec.LOTS;
      String asked =
          "makes " + Math.round(swings) + " swings of at most " + limits.occupancySwings();
      throw new ProblemException(
          ProblemCode.TOO_COSTLY,
          "The occupancy asks for more swings than it may follow.",
          List.of(
              new Fault(
                  "?durationS",
                  asked + "; lower it to " + Numbers.shortest(threeDigits(durationS * share))),
              new Fault(
                  "?releases",
                  asked
                      + (fewer >= OccupancySpec.LOTS
                          ? "; lower it to " + fewer
                          : "; lowering it alone does not help"))));
    }
  }

  private static double threeDigits(double value) {
    return BigDecimal.valueOf(value).round(new MathContext(3, RoundingMode.DOWN)).doubleValue();
  }

  /** Names the result: labels do not change it. */
  ComputationKey key() {
    return new ComputationKey(
        "occ",
        OccupancyComputations.KIND
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
        Numbers.shortest(radius),
        Numbers.shortest(durationS),
        Integer.toString(releases),
        Long.toString(seed));
  }

  /** The request that such words tell. */
  static OccupancyRequest of(LayoutDocument layout, List<String> words) {
    return new OccupancyRequest(
        layout,
        Double.parseDouble(words.get(1)),
        Double.parseDouble(words.get(2)),
        Integer.parseInt(words.get(3)),
        Long.parseLong(words.get(4)));
  }

  /** Where the same is answered again, with all that was asked. */
  String url() {
    List<String> words = words();
    return base()
        + "/occupancy?radius="
        + words.get(1)
        + "&durationS="
        + words.get(2)
        + "&releases="
        + words.get(3)
        + "&seed="
        + words.get(4);
  }

  /** The layout's own address. */
  String base() {
    return "/v1/layouts/" + layout.layoutId();
  }

  boolean bench() {
    return layout.model().equals("bench");
  }

  /** What is asked, in SI. */
  OccupancySpec spec() {
    return new OccupancySpec(radius / layout.shownPerUnit(), durationS, releases, seed);
  }
}
