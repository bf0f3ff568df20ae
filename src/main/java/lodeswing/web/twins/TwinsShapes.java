package lodeswing.web.twins;

import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.trace.TraceShapes;

/** What a request for twins may be, and what the answer looks like. */
final class TwinsShapes {

  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final Shape COLUMN = new ListShape(NUMBER, 0, 10_000_000);

  private static final ObjectShape SHIFT =
      ObjectShape.named(
              "TwinsShift",
              "From the first release to the second, in the layout's unit of length; not all 0.")
          .withDefault("x", TraceShapes.PLACE, 0.0, "Of the place, along x.")
          .withDefault("y", TraceShapes.PLACE, 0.0, "Of the place, along y.")
          .withDefault("vx", TraceShapes.SPEED, 0.0, "Of the push, units of length a second.")
          .withDefault("vy", TraceShapes.SPEED, 0.0, "Of the push, units of length a second.")
          .build();

  /** The body of a request. */
  static final ObjectShape REQUEST =
      ObjectShape.named("TwinsRequest", "Two releases on one layout, a shift apart.")
          .membersOf(TraceShapes.REQUEST)
          .required("shift", SHIFT, "From the first release to the second.")
          .build();

  /** A stored request. */
  static final ObjectShape STORED =
      ObjectShape.named("StoredTwins", "A request for twins as it is kept.")
          .membersOf(TraceShapes.STORED)
          .required("shift", SHIFT, "The shift.")
          .build();

  private static final ObjectShape SEPARATION =
      ObjectShape.named(
              "TwinsSeparation", "How far apart the two are, only as long as both are trusted.")
          .open()
          .required("t", COLUMN, "Times.")
          .required("distance", COLUMN, "Distance of both bobs in plan at the same time.")
          .required(
              "phaseDistance",
              COLUMN,
              "The same with their velocities: root of the squares of distance and of the velocities'"
                  + " difference over the rate of small swings.")
          .build();

  private static final ObjectShape GROWTH =
      ObjectShape.named("TwinsGrowthRate", "How phaseDistance grows from the release on.")
          .open()
          .required("perS", NUMBER, "Growth of its natural logarithm a unit of time.")
          .required("lowPerS", NUMBER, "Lower end of the interval.")
          .required("highPerS", NUMBER, "Upper end of the interval.")
          .required("standardErrorPerS", NUMBER, "Standard error.")
          .required("confidence", NUMBER, "Confidence of the interval.")
          .required("fromS", NUMBER, "Begin of the window that was fitted.")
          .required("untilS", NUMBER, "Its end.")
          .required("endedBy", TEXT, "What ends it, as a word for programs.")
          .required("method", TEXT, "How it was fitted.")
          .required("source", TEXT, "Source of the standard error.")
          .build();

  private static final ObjectShape EXPONENT =
      ObjectShape.named(
              "TwinsExponent", "Finite-time Lyapunov exponents over the window of growthRate.")
          .open()
          .required("perS", NUMBER, "Beside the first path.")
          .required("secondPerS", NUMBER, "Beside the second path.")
          .required("fromS", NUMBER, "Begin of the window.")
          .required("untilS", NUMBER, "Its end.")
          .required("method", TEXT, "How it was computed.")
          .required("source", TEXT, "Source of the method.")
          .build();

  private static final ObjectShape PATH =
      ObjectShape.named("TwinsPath", "One of the two paths, with a trace's members.")
          .open()
          .required("release", TraceShapes.RELEASE, "How the bob was let go.")
          .required("outcome", TraceShapes.OUTCOME, "Where it comes to rest.")
          .required("sure", new FlagShape(), "Sealed, and the same at a tenfold tighter tolerance.")
          .optional("sealedAtS", NUMBER, "From when on no other rest point could be reached.")
          .optional("settledAtS", NUMBER, "When the bob had settled.")
          .optional("trustedUntilS", NUMBER, "Until when the computed path is right.")
          .optional("foretoldUntilS", NUMBER, "Until when a hand can foretell it.")
          .required("followedUntilS", NUMBER, "How long the bob was followed.")
          .required("events", new ListShape(TraceShapes.EVENT, 0, 100), "What happened.")
          .required("samples", TraceShapes.SAMPLES, "The path.")
          .build();

  /** The document of twins. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("Twins", "Two paths and what they are to each other.")
          .open()
          .required("twinsId", TEXT, "Their id.")
          .required("layoutId", TEXT, "The layout.")
          .required("model", ChoiceShape.of("bench", "textbook"), "The model.")
          .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
          .required("sentence", TEXT, "The result in words.")
          .required("release", TraceShapes.RELEASE, "How the first bob was let go.")
          .required("shift", SHIFT, "From there to the second release.")
          .required(
              "outcomes",
              new ListShape(TraceShapes.OUTCOME, 2, 2),
              "Where the first and the second come to rest, or that it is undecided.")
          .optional(
              "alike", new FlagShape(), "Whether both end alike; left out where one is undecided.")
          .required("sure", new FlagShape(), "Whether both outcomes are sure.")
          .optional("growthRatePerS", NUMBER, "The same as growthRate.perS.")
          .optional("growthRate", GROWTH, "Left out where there was no time to tell.")
          .optional("finiteTimeExponent", EXPONENT, "Likewise.")
          .optional("partedAtS", NUMBER, "When they were first a magnets' spacing apart in plan.")
          .required(
              "partedDistance", NUMBER, "That spacing: the nearest two magnets', or the swing.")
          .required("shownUntilS", NUMBER, "Up to when the separation is known.")
          .required("shownEnd", TEXT, "What ends that: trust, model, resolution or duration.")
          .required("separation", SEPARATION, "Separation over time.")
          .required("paths", new ListShape(PATH, 2, 2), "Both paths.")
          .required("sampleIntervalS", NUMBER, "Time between samples, before thinning.")
          .required("notReached", new ListShape(TEXT, 0, 10), "Figures that there are none of.")
          .required("notes", new ListShape(TEXT, 0, 50), "What to know, in sentences.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .optional(
              "olderEngine",
              new FlagShape(),
              "true where an older revision than today's computed it; the Link header of relation"
                  + " latest-version leads to today's answer.")
          .required("links", new MapShape(TEXT, 50, 40), "Where to go from here.")
          .build();

  private TwinsShapes() {}
}
