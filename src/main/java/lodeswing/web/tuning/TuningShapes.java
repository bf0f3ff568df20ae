package lodeswing.web.tuning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.OneOfShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.hand.HandShapes;
import lodeswing.web.layout.LayoutShapes;

/** What a request for a tuning may be, and what its answer looks like. */
final class TuningShapes {

  static final String USUAL_INTERVAL = "wilson";
  static final int MOST_ANSWERS = 6;
  static final int FEWEST_CANDIDATES = 8;
  static final int MOST_CANDIDATES = 1_000;

  private static final NumberShape SEED = NumberShape.count(0, Integer.MAX_VALUE);
  private static final ChoiceShape INTERVAL = ChoiceShape.of("wilson", "clopper-pearson");
  private static final NumberShape WIDTH = NumberShape.between(1e-6, 1);
  private static final NumberShape TOLERANCE = NumberShape.between(0.001, 0.5);
  private static final NumberShape CHANCE = NumberShape.between(0, 1);
  private static final NumberShape WITHIN = NumberShape.between(0, 1_000);
  private static final NumberShape STEP = NumberShape.between(0.001, 100);

  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final Shape NAMES =
      new ListShape(new TextShape(LayoutShapes.LABEL_CHARACTERS), 1, LayoutShapes.MOST_MAGNETS);
  private static final String NAMES_TEXT =
      "Which magnets, by label or by number from 1; all if left out.";

  private static final ObjectShape WANTED_CHANCE =
      ObjectShape.named("WantedChance", "How often a label is wanted.")
          .required("label", new TextShape(LayoutShapes.LABEL_CHARACTERS), "The label.")
          .required("chance", CHANCE, "Its chance.")
          .build();

  private static Map<String, ObjectShape> wishes() {
    Map<String, ObjectShape> wishes = new LinkedHashMap<>();
    wishes.put(
        "fair",
        ObjectShape.named("FairWish", "Every label as often as any other.")
            .required("kind", ChoiceShape.of("fair"), "What is wanted.")
            .build());
    wishes.put(
        "chances",
        ObjectShape.named("ChancesWish", "A chance for each label.")
            .required("kind", ChoiceShape.of("chances"), "What is wanted.")
            .required(
                "chances",
                new ListShape(WANTED_CHANCE, 1, LayoutShapes.MOST_MAGNETS),
                "The chances; they sum to 1, a label left out is wanted never.")
            .build());
    return wishes;
  }

  private static final OneOfShape WANTED =
      new OneOfShape("WantedOdds", "The odds that are wanted.", "kind", wishes(), Map.of());

  private static final Body FAIR = Body.of(Map.of("kind", "fair"));

  private static final ObjectShape PLACES =
      ObjectShape.named("MovePlaces", "How far magnets may be moved.")
          .optional("magnets", NAMES, NAMES_TEXT)
          .required("within", WITHIN, "Distance from where it stands, in the layout's unit.")
          .optional(
              "step",
              STEP,
              "The grid that a hand can place on, counted from the plate's centre: 1 mm, in a"
                  + " textbook layout 0.01, if left out.")
          .build();

  private static final ObjectShape GAP =
      ObjectShape.named("MoveGap", "Between which gaps the bob may hang.")
          .required("leastMm", NumberShape.between(0, 5000).in("millimetres"), "Narrowest gap.")
          .required("mostMm", NumberShape.between(0, 5000).in("millimetres"), "Widest gap.")
          .optional("step", STEP, "Step in millimetres: 1 if left out.")
          .build();

  private static final NumberShape SIZE = NumberShape.between(0.2, 500).in("millimetres");

  private static final ObjectShape STOCK =
      ObjectShape.named("StockChange", "Figures of a magnet from the box, in place of its own.")
          .optional("grade", new TextShape(40), "Trade code of its material.")
          .optional("remanenceT", NumberShape.above(0, 1.6).in("tesla"), "Or its remanence.")
          .optional("diameterMm", SIZE, "Diameter.")
          .optional("innerDiameterMm", SIZE, "Diameter of a ring's hole.")
          .optional("lengthMm", SIZE, "Length of a block.")
          .optional("widthMm", SIZE, "Width of a block.")
          .optional("heightMm", SIZE, "Height.")
          .optional("momentAm2", NumberShape.above(0, 1000), "Moment of a dipole.")
          .optional("strength", NumberShape.between(-1000, 1000), "Of a textbook attractor.")
          .build();

  private static final ObjectShape STRENGTH =
      ObjectShape.named("MoveStrength", "Magnets that may take another's place.")
          .optional("magnets", NAMES, NAMES_TEXT)
          .required("stock", new ListShape(STOCK, 1, 20), "What is in the box; each of them often.")
          .build();

  private static final ObjectShape AIM =
      ObjectShape.named("MoveRelease", "How far the release may be moved.")
          .required("within", WITHIN, "Distance from where it is, in the layout's unit.")
          .optional("step", STEP, "As of places.")
          .build();

  private static final ObjectShape MOVE =
      ObjectShape.named("TuningMoves", "What may be changed; one of them at least.")
          .optional("places", PLACES, "The magnets' places.")
          .optional("gap", GAP, "The gap, of a bench layout.")
          .optional("strength", STRENGTH, "The magnets themselves.")
          .optional("release", AIM, "Where the hand lets go.")
          .build();

  private static ObjectShape.Builder figures(ObjectShape.Builder builder) {
    return builder
        .withDefault("wanted", WANTED, FAIR, "The odds that are wanted; fair if left out.")
        .withDefault(
            "tolerance",
            TOLERANCE,
            0.02,
            "By how much the chance of a label may be off: 0.02 is two percentage points.")
        .required("move", MOVE, "What may be changed.")
        .withDefault(
            "answers", NumberShape.count(1, MOST_ANSWERS), 2.0, "How many layouts to answer.")
        .withDefault(
            "candidates",
            NumberShape.count(FEWEST_CANDIDATES, MOST_CANDIDATES),
            48.0,
            "How many layouts are tried at most.")
        .withDefault(
            "width", WIDTH, 0.02, "How long the 95 % interval of each chance may be at most.")
        .withDefault("interval", INTERVAL, USUAL_INTERVAL, "Whose intervals.")
        .withDefault("seed", SEED, 1.0, "Seed of the tries and of the search.")
        .optional(
            "confirmSeed", SEED, "Seed of the tries that confirm; one more than seed if left out.");
  }

  /** The body of a request. */
  static final ObjectShape REQUEST =
      figures(
              ObjectShape.named("TuningRequest", "A labelled layout, a hand, and what may move.")
                  .optional("layoutId", new TextShape(60), "The id of a stored layout.")
                  .optional("layout", LayoutShapes.REQUEST, "Or a whole layout.")
                  .optional(
                      "release",
                      HandShapes.RELEASE,
                      "What the hand aims at; a polygon may do without.")
                  .required("spread", HandShapes.SPREAD, "How far it wanders."))
          .exactlyOneOf(List.of("layoutId"), List.of("layout"))
          .build();

  /** A request in its canonical form, as it is kept. */
  static final ObjectShape STORED =
      figures(
              ObjectShape.named("StoredTuning", "A request as it is kept.")
                  .required("layoutId", new TextShape(60), "The layout.")
                  .required("release", HandShapes.RELEASE, "What the hand aims at.")
                  .required("spread", HandShapes.SPREAD, "How far it wanders."))
          .build();

  private static final ObjectShape LABEL_CHANCE =
      ObjectShape.named("LabelChance", "How likely a label, or another end, is.")
          .open()
          .optional("label", TEXT, "The label; left out where the end has none.")
          .required("name", TEXT, "The label, or the end in words.")
          .optional("wanted", CHANCE, "Its wanted chance.")
          .required("chance", CHANCE, "Its share of all tries.")
          .required("low", CHANCE, "Lower end of the 95 % interval.")
          .required("high", CHANCE, "Upper end.")
          .required("releases", NUMBER, "How many tries ended so.")
          .build();

  private static final ObjectShape COUNT =
      ObjectShape.named("LabelOdds", "The odds of the labels.")
          .open()
          .required("seed", SEED, "Seed of the tries.")
          .required("releases", NUMBER, "How many there were.")
          .required("outcomes", new ListShape(LABEL_CHANCE, 0, 1_000), "Labels first.")
          .required("distance", NUMBER, "Greatest distance of a label from its wanted chance.")
          .required(
              "distanceLow", NUMBER, "The least that this can be within the labels' intervals.")
          .required("distanceHigh", NUMBER, "The greatest.")
          .build();

  private static final ObjectShape MOVED =
      ObjectShape.named("MagnetMove", "A magnet that is moved.")
          .open()
          .required("magnet", NUMBER, "Its number, from 1.")
          .optional("label", TEXT, "Its label.")
          .required("dx", NUMBER, "How far along x, in the layout's unit.")
          .required("dy", NUMBER, "How far along y.")
          .required("x", NUMBER, "Where it stands then.")
          .required("y", NUMBER, "Where it stands then.")
          .build();

  private static final ObjectShape EXCHANGE =
      ObjectShape.named("MagnetExchange", "A magnet that is replaced.")
          .open()
          .required("magnet", NUMBER, "Its number, from 1.")
          .optional("label", TEXT, "Its label.")
          .required("by", TEXT, "By what, in words.")
          .build();

  private static final ObjectShape RELEASE_MOVE =
      ObjectShape.named("ReleaseMove", "The release that is moved.")
          .open()
          .required("dx", NUMBER, "How far along x.")
          .required("dy", NUMBER, "How far along y.")
          .required("x", NUMBER, "Where it is then.")
          .required("y", NUMBER, "Where it is then.")
          .build();

  private static final ObjectShape ANSWER =
      ObjectShape.named("TunedLayout", "A layout with other odds.")
          .open()
          .required("layoutId", TEXT, "Its id: it is stored like any other.")
          .required("moves", new ListShape(MOVED, 0, LayoutShapes.MOST_MAGNETS), "What moves.")
          .optional("gapChangeMm", NUMBER, "By how much the gap grows.")
          .required(
              "exchanges",
              new ListShape(EXCHANGE, 0, LayoutShapes.MOST_MAGNETS),
              "What is replaced.")
          .optional("releaseMove", RELEASE_MOVE, "How the release moves.")
          .required("movesSentence", TEXT, "The moves in plain words.")
          .required("after", COUNT, "Its odds by the seed of the search.")
          .required(
              "confirmed", COUNT, "Its odds by another seed, which had no part in the choice.")
          .required("met", new FlagShape(), "Whether the confirmed odds are within the tolerance.")
          .required(
              "certain",
              new FlagShape(),
              "Whether the confirmed intervals lie within the tolerance as a whole.")
          .required("atBounds", new ListShape(TEXT, 0, 1_000), "What ran into its bound.")
          .required("warnings", new ListShape(TEXT, 0, 1_000), "What to mind.")
          .required("links", new MapShape(TEXT, 50, 40), "Where to go from here.")
          .build();

  /** The document. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("Tuning", "Which moves bring the odds nearest to wanted ones.")
          .open()
          .required("tuningId", TEXT, "Its id.")
          .required("layoutId", TEXT, "The layout as it is.")
          .required("model", TEXT, "bench or textbook.")
          .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
          .required("release", HandShapes.RELEASE, "What the hand aims at.")
          .required("spread", HandShapes.SPREAD, "How far it wanders.")
          .required("wanted", new ListShape(WANTED_CHANCE, 1, 200), "The chances wanted.")
          .required("tolerance", TOLERANCE, "By how much a chance may be off.")
          .required("move", MOVE, "What may be changed.")
          .required("answers", NUMBER, "How many layouts were asked for.")
          .required("candidates", NUMBER, "How many might be tried.")
          .required("width", WIDTH, "How long the intervals may be.")
          .required("interval", INTERVAL, "Whose intervals.")
          .required("seed", SEED, "Seed of the tries and of the search.")
          .required("confirmSeed", SEED, "Seed of the tries that confirm.")
          .required("sentence", TEXT, "The whole in words.")
          .required("met", new FlagShape(), "Whether the nearest layout's confirmed odds meet it.")
          .required("before", COUNT, "The odds of the layout as it is.")
          .required("layouts", new ListShape(ANSWER, 1, MOST_ANSWERS), "The nearest layout first.")
          .required("tried", NUMBER, "How many layouts were tried.")
          .required("refused", NUMBER, "How many could not be built or started.")
          .required("notes", new ListShape(TEXT, 0, 50), "What to know, in sentences.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .optional(
              "olderEngine",
              new FlagShape(),
              "true where an older revision than today's computed it; the Link header of relation"
                  + " latest-version leads to today's answer.")
          .required("links", new MapShape(TEXT, 50, 40), "Where to go from here.")
          .build();

  private TuningShapes() {}
}
