package lodeswing.web.sweep;

import java.util.Arrays;
import java.util.List;
import lodeswing.web.body.CellShape;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FigureShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.hand.HandShapes;
import lodeswing.web.layout.LayoutShapes;

/** What a request for a sweep may be, and what its answer looks like. */
final class SweepShapes {

  static final NumberShape FIGURE = NumberShape.between(-1e9, 1e9);
  static final NumberShape PLACE = NumberShape.between(-100_000, 100_000);
  static final NumberShape SPEED = NumberShape.between(-1_000_000, 1_000_000);
  static final int MOST_VALUES = 10_000;
  static final NumberShape STEPS = NumberShape.count(2, MOST_VALUES);
  static final TextShape WORD = new TextShape(200);
  static final ChoiceShape SPACING = ChoiceShape.of("even", "log");
  static final NumberShape HALF_WIDTH = NumberShape.above(0, 100_000);
  static final NumberShape SIDE = NumberShape.count(64, 256);
  static final double USUAL_SIDE = 64;
  static final NumberShape WIDTH = NumberShape.between(1e-6, 1);
  static final NumberShape SEED = NumberShape.count(0, Integer.MAX_VALUE);
  static final double USUAL_WIDTH = 0.05;
  static final double USUAL_SEED = 1;
  static final ChoiceShape MEASURE =
      ChoiceShape.of(
          Arrays.stream(SweepMeasure.values()).map(SweepMeasure::word).toArray(String[]::new));
  private static final int MOST_MEASURES = 12;

  private static final Shape TEXT = new TextShape(10_000);
  private static final NumberShape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final Shape CELL = new CellShape();

  private static final ObjectShape QUANTITY =
      ObjectShape.named(
              "SweptQuantity",
              "A quantity that is varied: evenly from one value to another, or over a list.")
          .required(
              "quantity",
              new TextShape(80),
              "A figure of the layout by the name that getLayoutVariant knows, such as gapMm,"
                  + " magnet.2.x, ring.count or swingsToHalf; or x, y, vx or vy of the release.")
          .optional("from", FIGURE, "First value; it may lie above the last.")
          .optional("to", FIGURE, "Last value.")
          .optional("steps", STEPS, "How many values, both ends among them.")
          .optional(
              "spacing", SPACING, "log: each value the same multiple of the one before; else even.")
          .optional(
              "values",
              new ListShape(new FigureShape(FIGURE, WORD), 1, MOST_VALUES),
              "Or every value, numbers or words, each once.")
          .exactlyOneOf(List.of("from", "to", "steps"), List.of("values"))
          .build();

  private static final ObjectShape STORED_QUANTITY =
      ObjectShape.named("StoredQuantity", "A quantity with its values.")
          .required("quantity", new TextShape(80), "Its name.")
          .required(
              "values",
              new ListShape(new FigureShape(FIGURE, WORD), 1, MOST_VALUES),
              "Every value.")
          .build();

  private static final ObjectShape MEASURED =
      ObjectShape.named("SweepMeasure", "What is measured at each point.")
          .required("measure", MEASURE, "Which measure.")
          .optional("label", WORD, "Of which label: for chance, share and barrier.")
          .build();

  private static final ObjectShape RELEASE =
      ObjectShape.named("SweptRelease", "The release of every point, where it does not vary.")
          .optional("x", PLACE, "Plan position of the bob magnet's centre.")
          .optional("y", PLACE, "Plan position of the bob magnet's centre.")
          .optional("vx", SPEED, "Push along x, units of length a second.")
          .optional("vy", SPEED, "Push along y.")
          .build();

  private static final ObjectShape MAP =
      ObjectShape.named("SweptMap", "The small map that shares, entropies and dimensions are of.")
          .optional("x", PLACE, "Middle of its window; 0 if left out.")
          .optional("y", PLACE, "Middle of its window; 0 if left out.")
          .optional(
              "halfWidth",
              HALF_WIDTH,
              "Half of the window's side, the same at every point; that of the layout's usual map"
                  + " if left out.")
          .optional("side", SIDE, "Pixels along its side; 64 if left out.")
          .build();

  private static ObjectShape.Builder members(ObjectShape.Builder builder) {
    return builder
        .required("measures", new ListShape(MEASURED, 1, MOST_MEASURES), "What is measured.")
        .optional("release", RELEASE, "The release, where a measure needs one.")
        .optional(
            "spread",
            HandShapes.SPREAD,
            "How far a hand wanders about the release, where a measure is of its odds.")
        .optional(
            "width",
            WIDTH,
            "How long the 95 % interval (Wilson) of a chance may be at most; 0.05 if left out.")
        .optional("seed", SEED, "Seed of the tries; 1 if left out.")
        .optional("map", MAP, "The small map, where a measure needs one.");
  }

  /** The body of a request. */
  static final ObjectShape REQUEST =
      members(
              ObjectShape.named("SweepRequest", "One or two quantities varied, and measures.")
                  .optional("layoutId", new TextShape(60), "The id of a stored layout.")
                  .optional("layout", LayoutShapes.REQUEST, "Or a whole layout.")
                  .required("vary", new ListShape(QUANTITY, 1, 2), "What varies."))
          .exactlyOneOf(List.of("layoutId"), List.of("layout"))
          .build();

  /** A request in its canonical form, as it is kept. */
  static final ObjectShape STORED =
      members(
              ObjectShape.named("StoredSweep", "A request as it is kept.")
                  .required("layoutId", new TextShape(60), "The layout.")
                  .required("vary", new ListShape(STORED_QUANTITY, 1, 2), "What varies."))
          .build();

  /** The document. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("Sweep", "A table of measures over one or two varied quantities.")
          .open()
          .required("sweepId", TEXT, "Its id.")
          .required("layoutId", TEXT, "The layout whose figures vary.")
          .required("model", TEXT, "bench or textbook.")
          .required("vary", new ListShape(STORED_QUANTITY, 1, 2), "What varies, with every value.")
          .required("measures", new ListShape(MEASURED, 1, MOST_MEASURES), "What is measured.")
          .optional("release", RELEASE, "The release of every point, where it does not vary.")
          .optional("spread", HandShapes.SPREAD, "How far the hand wanders about the release.")
          .optional("width", WIDTH, "How long the interval of a chance may be.")
          .optional("seed", SEED, "Seed of the tries.")
          .optional("map", MAP, "The small map.")
          .required("columns", new ListShape(TEXT, 1, 50), "Names of the columns.")
          .required(
              "units", new MapShape(TEXT, 50, 300), "Units by column; none for plain numbers.")
          .required(
              "rows",
              new ListShape(new ListShape(CELL, 1, 50), 1, MOST_VALUES),
              "A row a point, the last quantity first through all its values: numbers, texts, flags;"
                  + " null where there is nothing to tell. The column problem says why.")
          .required("points", NUMBER, "How many points there are.")
          .required("problems", NUMBER, "How many of them have a problem.")
          .required("sentence", TEXT, "The whole in words.")
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

  private SweepShapes() {}
}
