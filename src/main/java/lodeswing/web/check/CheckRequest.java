package lodeswing.web.check;

import java.util.List;
import lodeswing.analysis.check.CheckSpec;
import lodeswing.job.ComputationKey;
import lodeswing.web.basin.UsualWindow;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;

/**
 * What is asked of a rig, in the layout's own units, with every default filled in.
 *
 * @param layout the layout
 * @param radius of the disc that the bob is released from [mm on the bench]
 * @param spread standard deviation of the hand along either axis [mm on the bench]
 * @param seed of the tries
 */
record CheckRequest(LayoutDocument layout, double radius, double spread, long seed) {

  private static final String FORM = "form=1";
  private static final double HAND_MM = 3;
  private static final double HAND = 0.02;

  /** The disc's radius if nobody says: half the side of the usual map. */
  static double usualRadius(LayoutDocument layout) {
    return UsualWindow.halfWidth(layout);
  }

  /** The hand if nobody says. */
  static double usualSpread(LayoutDocument layout) {
    return layout.model().equals("bench") ? HAND_MM : HAND;
  }

  /** Names the result: whether there is a label matters, and what it says does not. */
  ComputationKey key(double followed) {
    List<Body> magnets =
        layout.canonical().objects("magnets").stream()
            .map(magnet -> magnet.has("label") ? magnet.with("label", "-") : magnet)
            .toList();
    String rig = layout.canonical().without("title").with("magnets", magnets).toJson();
    return new ComputationKey(
        "chk",
        CheckComputations.KIND
            + "|"
            + FORM
            + "|"
            + layout.realmKey()
            + ComputationKey.digest(rig)
            + "|"
            + String.join(" ", words().subList(1, words().size()))
            + "|"
            + Numbers.shortest(followed));
  }

  /** All of it in words without blanks, the layout's id first. */
  List<String> words() {
    return List.of(
        layout.layoutId(), Numbers.shortest(radius), Numbers.shortest(spread), Long.toString(seed));
  }

  /** The request that such words tell. */
  static CheckRequest of(LayoutDocument layout, List<String> words) {
    return new CheckRequest(
        layout,
        Double.parseDouble(words.get(1)),
        Double.parseDouble(words.get(2)),
        Long.parseLong(words.get(3)));
  }

  /** Where the same is answered again, with all that was asked. */
  String url() {
    return base() + "/check?" + query();
  }

  String query() {
    List<String> words = words();
    return "radius=" + words.get(1) + "&spreadMm=" + words.get(2) + "&seed=" + words.get(3);
  }

  /** The layout's own address. */
  String base() {
    return "/v1/layouts/" + layout.layoutId();
  }

  /** What is asked, in SI. */
  CheckSpec spec(Limits limits) {
    double per = layout.shownPerUnit();
    return new CheckSpec(
        radius / per, spread / per, seed, limits.followedS(), limits.preparingWork());
  }
}
