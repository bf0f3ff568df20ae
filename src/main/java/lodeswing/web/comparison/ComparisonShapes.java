package lodeswing.web.comparison;

import java.util.Arrays;
import java.util.function.Function;
import lodeswing.analysis.comparison.Hint;
import lodeswing.analysis.comparison.Verdict;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.recording.RecordingShapes;
import lodeswing.web.trace.TraceShapes;

/** What a request for a comparison may be, and what its answer looks like. */
final class ComparisonShapes {

  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final Shape COLUMN = new ListShape(NUMBER, 0, 10_000_000);
  private static final Shape FLAGS = new ListShape(new FlagShape(), 0, 10_000_000);

  /** When a release was, after the first recorded place. */
  static final NumberShape RELEASE_TIME = NumberShape.between(-3_600, 1e6);

  private static final NumberShape WITHIN = NumberShape.between(0, 1_000);

  private static ObjectShape.Builder asked(ObjectShape.Builder builder) {
    return builder
        .optional(
            "release",
            TraceShapes.RELEASE,
            "How the bob was let go, in the plate's own frame, where that is known. Left out, place"
                + " and velocity at the first place that moves plainly are taken from half a small"
                + " swing of the recording.")
        .optional(
            "placingAccuracy",
            TraceShapes.ACCURACY,
            "How exactly the told release was held, in the layout's unit of length; 1 mm, textbook"
                + " 0.001.")
        .optional(
            "releaseTimeS",
            RELEASE_TIME,
            "When the told release was, after the first recorded place; left out, that is sought in"
                + " the same half swing.")
        .withDefault(
            "agreesWithin",
            WITHIN,
            0.0,
            "Distance, in the layout's unit of length, that always counts as agreement: for what a"
                + " camera's lens or slant does to places.");
  }

  /** The body of a request. */
  static final ObjectShape REQUEST =
      asked(
              RecordingShapes.request(
                  ObjectShape.named(
                      "ComparisonRequest", "A recording and the layout that foretells.")))
          .build();

  /** A stored request. */
  static final ObjectShape STORED =
      asked(
              RecordingShapes.stored(
                  ObjectShape.named(
                      "StoredComparison", "A request for a comparison as it is kept.")))
          .build();

  private static final ObjectShape START =
      ObjectShape.named("ComparisonStart", "From where the path is foretold, on the plate.")
          .open()
          .required("taken", ChoiceShape.of("told", "from-recording"), "Where it comes from.")
          .required("tS", NUMBER, "When, by the recording's own time.")
          .required("x", NUMBER, "Place.")
          .required("y", NUMBER, "Place.")
          .required("vx", NUMBER, "Velocity.")
          .required("vy", NUMBER, "Velocity.")
          .required(
              "errors", new MapShape(NUMBER, 5, 10), "Standard deviations of x, y, vx, vy, tS.")
          .required("places", NUMBER, "Recorded places that it was held against.")
          .required("untilS", NUMBER, "Time of the last of them.")
          .required("scatter", NUMBER, "Scatter of a coordinate about the path over them.")
          .build();

  private static final ObjectShape TRACK =
      ObjectShape.named("ComparisonTrack", "Recorded and foretold places on the plate, row by row.")
          .open()
          .required("t", COLUMN, "Recorded times.")
          .required("x", COLUMN, "Recorded places in the plate's frame.")
          .required("y", COLUMN, "Recorded places.")
          .required("predictedX", COLUMN, "Foretold places.")
          .required("predictedY", COLUMN, "Foretold places.")
          .required("distance", COLUMN, "Between the two.")
          .required(
              "explained",
              COLUMN,
              "Four standard deviations of noise and of what start and parts leave open, along the"
                  + " longest axis: what a distance may be without saying anything.")
          .required("trusted", FLAGS, "Whether the computed path is right there.")
          .required("foretold", FLAGS, "Whether it can be foretold there.")
          .build();

  private static final ObjectShape END =
      ObjectShape.named("RecordedEnd", "Where the recorded bob is at rest in the end.")
          .open()
          .required("x", NUMBER, "Place on the plate.")
          .required("y", NUMBER, "Place on the plate.")
          .optional("restPointId", TEXT, "The rest point that it belongs to; none if left out.")
          .optional("label", TEXT, "The label that this stands for.")
          .optional("name", TEXT, "Its name.")
          .optional("distance", NUMBER, "From the nearest rest point.")
          .build();

  private static final ObjectShape ENDS =
      ObjectShape.named("ComparisonEnds", "How both paths end.")
          .open()
          .optional("recorded", END, "Left out where the recording does not end at rest.")
          .required("predicted", TraceShapes.OUTCOME, "The outcome of the foretold path.")
          .required("sure", new FlagShape(), "Whether that is sure.")
          .optional("agree", new FlagShape(), "Left out where one of them is not known.")
          .build();

  private static final ObjectShape CHANGE =
      ObjectShape.named("ComparisonChange", "A change with its 95 % interval.")
          .open()
          .required("name", TEXT, "periodPercent, scalePercent, turnDeg, originX or originY.")
          .required("value", NUMBER, "The change of what is stated.")
          .required("low", NUMBER, "Lower end.")
          .required("high", NUMBER, "Upper end.")
          .build();

  private static final ObjectShape HINT =
      ObjectShape.named("ComparisonHint", "What alone would make the rig follow the recording.")
          .open()
          .required("kind", words(Hint.Kind.values(), Hint.Kind::word), "What that is.")
          .required("changes", new ListShape(CHANGE, 0, 2), "By how much.")
          .required("reversed", new FlagShape(), "Whether the y axis would have to be reversed.")
          .required("untilS", NUMBER, "Up to when it explains the recording.")
          .required("text", TEXT, "The same in words.")
          .build();

  private static <E> ChoiceShape words(E[] values, Function<E, String> word) {
    return ChoiceShape.of(Arrays.stream(values).map(word).toArray(String[]::new));
  }

  /** The document. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named(
              "Comparison",
              "A recording held against the path that the layout foretells. Times are the"
                  + " recording's own.")
          .open()
          .required("comparisonId", TEXT, "Its id.")
          .required("layoutId", TEXT, "The layout that foretold.")
          .required("model", ChoiceShape.of("bench", "textbook"), "The model.")
          .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
          .required("sentence", TEXT, "The result in words.")
          .required("verdict", words(Verdict.values(), Verdict::word), "As a word for programs.")
          .required("start", START, "From where the path is foretold.")
          .required("comparedFromS", NUMBER, "Time of the first place that was compared.")
          .required("comparedUntilS", NUMBER, "Time of the last one.")
          .required("swings", NUMBER, "Small swings between them.")
          .required(
              "noise",
              NUMBER,
              "Scatter of a coordinate about the start's path, which differences are held against.")
          .required("startRms", NUMBER, "Root of the mean square distance over the start's places.")
          .required("rms", NUMBER, "The same up to rmsUntilS.")
          .required("greatest", NUMBER, "The greatest distance up to there.")
          .required("rmsUntilS", NUMBER, "The nearer horizon, or the end.")
          .optional("departedAtS", NUMBER, "From when on no start of this rig explains it.")
          .optional("partedAtS", NUMBER, "When the two were first parted.")
          .required("partedDistance", NUMBER, "Distance from which on they count as parted.")
          .optional("trustedUntilS", NUMBER, "Until when the computed path is right.")
          .optional("foretoldUntilS", NUMBER, "Until when the start lets it be foretold.")
          .required("notReached", new ListShape(TEXT, 0, 10), "Times that were not reached.")
          .required("ends", ENDS, "How both paths end.")
          .required("hints", new ListShape(HINT, 0, 10), "What alone would explain the difference.")
          .required("reading", RecordingShapes.READING, "How the recording was read.")
          .required("track", TRACK, "Place by place.")
          .required("notes", new ListShape(TEXT, 0, 20), "What to know about the result.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .optional(
              "olderEngine",
              new FlagShape(),
              "true where an older revision than today's computed it; the Link header of relation"
                  + " latest-version leads to today's answer.")
          .required("links", new MapShape(TEXT, 20, 2_000), "Where to go from here.")
          .build();

  private ComparisonShapes() {}
}
