package lodeswing.web.fit;

import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutShapes;
import lodeswing.web.recording.RecordingShapes;
import lodeswing.web.trace.TraceShapes;

/** What a request for a fit may be, and what its answer looks like. */
final class FitShapes {

  static final int MOST_UNKNOWN = 24;
  private static final int LONGEST_NAME = 80;

  private static final Shape TEXT = new TextShape(10_000);
  static final NumberShape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final Shape NUMBERS = new ListShape(NUMBER, 0, 10_000_000);
  private static final Shape NAMES = new ListShape(new TextShape(LONGEST_NAME), 0, MOST_UNKNOWN);
  private static final Shape VALUES = new MapShape(NUMBER, MOST_UNKNOWN, LONGEST_NAME);

  private static ObjectShape.Builder asked(ObjectShape.Builder builder) {
    return builder
        .required(
            "unknown",
            NAMES,
            "What is sought: figures of the layout by the names of getLayoutVariant (lengthMm,"
                + " linearNsPerM, gapMm, magnet.all.remanenceT, …), originX, originY, turnDeg and"
                + " scale of the recording, releaseTimeS where the bob is held at first, and x, y,"
                + " vx, vy of a release that is given.")
        .optional(
            "start",
            VALUES,
            "Where to begin, by name; what is left out begins at the layout's own figure, at the"
                + " frame's, and for the frame at a few guesses.")
        .optional(
            "release",
            TraceShapes.RELEASE,
            "How the bob was let go, where that is known; left out, its place and push are sought"
                + " too.");
  }

  /** The body of a request. */
  static final ObjectShape REQUEST =
      asked(
              RecordingShapes.request(
                  ObjectShape.named("FitRequest", "A recording and what is unknown about it.")))
          .build();

  /** A stored request. */
  static final ObjectShape STORED =
      asked(
              RecordingShapes.stored(
                  ObjectShape.named("StoredFit", "A request for a fit as it is kept.")))
          .build();

  /** What was found, as it is stored: numbers in SI, figures of the layout in their own units. */
  static final ObjectShape FOUND =
      ObjectShape.named("FoundFit", "What a fit found.")
          .required("values", NUMBERS, "Every quantity.")
          .required("errors", NUMBERS, "Standard errors of those that were sought; -1 for none.")
          .required("halves", NUMBERS, "Half widths of their intervals; -1 for none.")
          .required("correlations", NUMBERS, "Row by row.")
          .required("mirrored", new FlagShape(), "Whether the y axis is reversed.")
          .required("used", NUMBER, "Places that were fitted.")
          .required("end", TEXT, "Why not more.")
          .required("converged", new FlagShape(), "Whether the last iteration ended by itself.")
          .required("residualRms", NUMBER, "Of a coordinate [m].")
          .required("noise", NUMBER, "Of a coordinate [m].")
          .required("neighbours", NUMBER, "Correlation of neighbouring residuals.")
          .required("fittedX", NUMBERS, "Fitted plan places [m].")
          .required("fittedY", NUMBERS, "Fitted plan places [m].")
          .required("t", NUMBERS, "Path [s].")
          .required("x", NUMBERS, "Path [m].")
          .required("y", NUMBERS, "Path [m].")
          .required("vx", NUMBERS, "Path [m/s].")
          .required("vy", NUMBERS, "Path [m/s].")
          .build();

  private static final ObjectShape PARAMETER =
      ObjectShape.named("FitParameter", "One quantity that was sought.")
          .open()
          .required("name", TEXT, "Its name.")
          .optional("unit", TEXT, "Its unit, where it has one.")
          .required("start", NUMBER, "Where the fit began.")
          .required("value", NUMBER, "What was found.")
          .required("determined", new FlagShape(), "Whether the recording tells it at all.")
          .optional("standardError", NUMBER, "Standard error.")
          .optional("low", NUMBER, "Lower end of the 95 % interval.")
          .optional("high", NUMBER, "Upper end of the 95 % interval.")
          .build();

  private static final ObjectShape CORRELATIONS =
      ObjectShape.named("FitCorrelations", "How the errors of two quantities hang together.")
          .open()
          .required("names", NAMES, "Rows and columns.")
          .required("rows", new ListShape(NUMBERS, 0, MOST_UNKNOWN), "From -1 to 1.")
          .build();

  private static final ObjectShape RESIDUALS =
      ObjectShape.named(
              "FitResiduals", "Recorded places on the plate beside the fitted ones, row by row.")
          .open()
          .required("t", NUMBERS, "Recorded times.")
          .required("x", NUMBERS, "Recorded places in the plate's frame, as it was fitted.")
          .required("y", NUMBERS, "Recorded places.")
          .required("fittedX", NUMBERS, "Fitted places.")
          .required("fittedY", NUMBERS, "Fitted places.")
          .required("distance", NUMBERS, "Between the two.")
          .build();

  /** The document. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("Fit", "What a recording tells of the rig that made it.")
          .open()
          .required("fitId", TEXT, "Its id.")
          .required("layoutId", TEXT, "The layout that was begun with.")
          .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
          .required("sentence", TEXT, "The result in words.")
          .required(
              "parameters", new ListShape(PARAMETER, 0, MOST_UNKNOWN), "What was sought, in order.")
          .required("correlations", CORRELATIONS, "Of those that the recording tells.")
          .required("residualRms", NUMBER, "Root of the mean square of a coordinate's residuals.")
          .required("residualOverNoise", NUMBER, "The same over the noise: near 1 for a good fit.")
          .required(
              "neighbourCorrelation",
              NUMBER,
              "Of residuals with their neighbours: near 0 where the rig explains the recording.")
          .required("usedPlaces", NUMBER, "Places that were fitted, from the first on.")
          .required("usedUntilS", NUMBER, "Time of the last of them after the first.")
          .required("endedBy", TEXT, "Why not more, as a word: whole, horizon, disagrees or work.")
          .required("converged", new FlagShape(), "Whether the last iteration ended by itself.")
          .required("reading", RecordingShapes.READING, "How the recording was read.")
          .required("residuals", RESIDUALS, "Place by place.")
          .required(
              "layout",
              ObjectShape.named("FittedLayout", "The layout with what was found.")
                  .open()
                  .required("layoutId", TEXT, "Its id.")
                  .required("layout", LayoutShapes.CANONICAL, "The layout itself.")
                  .build(),
              "The fitted layout, stored.")
          .required("notes", new ListShape(TEXT, 0, 20), "What to know about the result.")
          .required("engineRevision", NUMBER, "Revision of the engine.")
          .required("links", new MapShape(TEXT, 20, 2_000), "Where to go from here.")
          .build();

  private FitShapes() {}
}
