package lodeswing.web.odds;

import java.util.List;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.hand.HandShapes;
import lodeswing.web.layout.LayoutShapes;

/** What a request for odds may be, and what its answer looks like. */
final class OddsShapes {

  static final NumberShape WIDTH = NumberShape.between(1e-6, 1);
  static final NumberShape SEED = NumberShape.count(0, Integer.MAX_VALUE);
  static final int MOST_RIGS = 1_000;
  static final NumberShape RIGS = NumberShape.count(4, MOST_RIGS);
  static final ChoiceShape INTERVAL = ChoiceShape.of("wilson", "clopper-pearson");

  static final double USUAL_WIDTH = 0.02;
  static final double USUAL_SEED = 1;
  static final double USUAL_RIGS = 16;
  static final String USUAL_INTERVAL = "wilson";

  static final int MOST_COUNTS = 300;
  static final NumberShape COUNTED_TIMES = NumberShape.count(0, 1_000_000);

  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);

  private static final ObjectShape COUNT =
      ObjectShape.named("ClassCount", "How often a class saw an end.")
          .required("label", new TextShape(200), "The end's label, or its name in the answer.")
          .required("count", COUNTED_TIMES, "How often.")
          .build();

  private static ObjectShape.Builder figures(ObjectShape.Builder builder) {
    return builder
        .withDefault(
            "width",
            WIDTH,
            USUAL_WIDTH,
            "How long the 95 % interval of each chance may be at most: 0.02 is 1 % to either side."
                + " Releases are added until all are.")
        .withDefault("interval", INTERVAL, USUAL_INTERVAL, "Whose intervals.")
        .withDefault("seed", SEED, USUAL_SEED, "Seed of the tries and of the parts.")
        .optional(
            "tolerances",
            LayoutShapes.tolerances(),
            "How far the parts may be off; asks for odds on rigs that are built anew.")
        .withDefault("rigs", RIGS, USUAL_RIGS, "How many rigs are built anew, where asked for.")
        .optional(
            "counts",
            new ListShape(COUNT, 1, MOST_COUNTS),
            "What a class counted, to be held against the odds.");
  }

  /** The body of a request. */
  static final ObjectShape REQUEST =
      figures(
              ObjectShape.named("OddsRequest", "A release and how far the hand wanders.")
                  .optional("layoutId", new TextShape(60), "The id of a stored layout.")
                  .optional("layout", LayoutShapes.REQUEST, "Or a whole layout.")
                  .optional(
                      "release",
                      HandShapes.RELEASE,
                      "What the hand aims at; a polygon may do without.")
                  .required("spread", HandShapes.SPREAD, "How far it wanders.")
                  .optional(
                      "parts",
                      new FlagShape(),
                      "true: vary the parts too, by the layout's own tolerances."))
          .exactlyOneOf(List.of("layoutId"), List.of("layout"))
          .build();

  /** A request in its canonical form, as it is kept. */
  static final ObjectShape STORED =
      figures(
              ObjectShape.named("StoredOdds", "A request as it is kept.")
                  .required("layoutId", new TextShape(60), "The layout.")
                  .required("release", HandShapes.RELEASE, "What the hand aims at.")
                  .required("spread", HandShapes.SPREAD, "How far it wanders."))
          .build();

  private static final ObjectShape PARTS_CHANCE =
      ObjectShape.named("PartsChance", "The chance of an end over rigs that are built anew.")
          .open()
          .required("mean", NUMBER, "Mean over the rigs.")
          .required("deviation", NUMBER, "Standard deviation from rig to rig, counting apart.")
          .required("lowest", NUMBER, "On the rig where it is lowest.")
          .required("highest", NUMBER, "On the rig where it is highest.")
          .build();

  private static final ObjectShape OUTCOME =
      ObjectShape.named("OutcomeChance", "How likely an end is.")
          .open()
          .optional("index", NUMBER, "Its number in the legend of a map of the layout.")
          .required("kind", TEXT, "rest-point, or what ends the motion before.")
          .required("restPointIds", new ListShape(TEXT, 0, 1_000), "The rest points.")
          .optional("label", TEXT, "The label it stands for.")
          .required("name", TEXT, "The label, or the place or the event in words.")
          .required("chance", NUMBER, "Its share of all tries.")
          .required("low", NUMBER, "Lower end of the 95 % interval.")
          .required("high", NUMBER, "Upper end.")
          .required("releases", NUMBER, "How many tries ended so.")
          .optional("parts", PARTS_CHANCE, "Where the parts vary too.")
          .build();

  private static final ObjectShape PAIR =
      ObjectShape.named("TellingApart", "How many tries tell two ends apart.")
          .open()
          .required("names", new ListShape(TEXT, 2, 2), "The likelier one first.")
          .optional(
              "tries",
              NUMBER,
              "With so many, four classes of five find the likelier one at 5 %; left out where even"
                  + " these odds cannot tell which that is.")
          .required("sentence", TEXT, "The same in words.")
          .build();

  private static final ObjectShape COUNTED_LINE =
      ObjectShape.named("CountedLine", "One end in the count.")
          .open()
          .required("name", TEXT, "The end.")
          .required("counted", NUMBER, "What the class counted.")
          .required("expected", NUMBER, "What the odds would have.")
          .build();

  private static final ObjectShape COUNTED =
      ObjectShape.named("CountedAgainstOdds", "A class's count held against the odds.")
          .open()
          .required("tries", NUMBER, "How many tries the class counted.")
          .optional("chiSquare", NUMBER, "The statistic; left out with fewer than two ends.")
          .optional("degreesOfFreedom", NUMBER, "Ends less one.")
          .optional("pValue", NUMBER, "How often chance alone makes as great a statistic.")
          .required("lines", new ListShape(COUNTED_LINE, 0, 1_000), "End by end.")
          .required("warnings", new ListShape(TEXT, 0, 1_000), "What makes it doubtful.")
          .required("sentence", TEXT, "The whole in words.")
          .required("source", TEXT, "The publication of the test.")
          .build();

  private static final ObjectShape INTERVAL_FIGURE =
      ObjectShape.named("FigureWithInterval", "A figure and its 95 % interval.")
          .open()
          .required("value", NUMBER, "The figure.")
          .required("low", NUMBER, "Lower end.")
          .required("high", NUMBER, "Upper end.")
          .build();

  private static final ObjectShape PARTS =
      ObjectShape.named("PartsInOdds", "What parts that are not exact do to the odds.")
          .open()
          .required("tolerances", LayoutShapes.tolerances(), "How far they may be off.")
          .required("rigs", NUMBER, "How many rigs were built anew.")
          .required("releasesPerRig", NUMBER, "Tries on each.")
          .required("agreeSameRig", NUMBER, "Chance that two tries on one rig agree.")
          .required("agreeOtherRig", NUMBER, "Chance that tries on two rigs, built alike, agree.")
          .required(
              "shareOfParts",
              INTERVAL_FIGURE,
              "Which part of the scatter comes from the parts; the rest comes from the hand.")
          .required(
              "source", ChoiceShape.of("hand", "parts", "both"), "Where the scatter comes from.")
          .required(
              "robust",
              new FlagShape(),
              "Whether no chance differs from rig to rig by more than 5 points (one standard"
                  + " deviation); our own convention.")
          .required("sentence", TEXT, "The whole in words.")
          .build();

  /** The document. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("Odds", "How likely each end is.")
          .open()
          .required("oddsId", TEXT, "Its id.")
          .required("layoutId", TEXT, "The layout.")
          .required("model", TEXT, "bench or textbook.")
          .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
          .required("release", HandShapes.RELEASE, "What the hand aims at.")
          .required("spread", HandShapes.SPREAD, "How far it wanders.")
          .required("width", WIDTH, "How long intervals may be.")
          .required("interval", INTERVAL, "Whose intervals.")
          .required("seed", SEED, "Seed of the tries.")
          .required("sentence", TEXT, "The whole in one sentence.")
          .required("outcomes", new ListShape(OUTCOME, 0, 1_000), "The likeliest first.")
          .required("releases", NUMBER, "How many tries were followed.")
          .required("repeatability", NUMBER, "Chance that two tries end alike.")
          .required("repeatabilityLow", NUMBER, "Lower end of its 95 % interval.")
          .required("repeatabilityHigh", NUMBER, "Upper end.")
          .required("tellApart", new ListShape(PAIR, 0, 1_000), "Tries that a class needs.")
          .optional("counted", COUNTED, "The class's count, where one was sent.")
          .optional("parts", PARTS, "Where the parts vary too.")
          .required("stepError", NUMBER, "Error of a step, as a part of the swing.")
          .required("followedS", NUMBER, "How long each release is followed at most.")
          .required("notes", new ListShape(TEXT, 0, 50), "What to know, in sentences.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .optional(
              "olderEngine",
              new FlagShape(),
              "true where an older revision than today's computed it; the Link header of relation"
                  + " latest-version leads to today's answer.")
          .required("links", new MapShape(TEXT, 50, 40), "Where to go from here.")
          .build();

  private OddsShapes() {}
}
