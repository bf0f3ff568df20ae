package lodeswing.web.recording;

import java.util.List;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TableShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutShapes;

/** What a recording may be. */
public final class RecordingShapes {

  /** Above any operator's limit, which is checked apart. */
  private static final int MOST = 1_000_000;

  private static final int MOST_CHARACTERS = 2_000_000;
  private static final int LONGEST_ID = 60;

  /** A recorded number. */
  static final NumberShape NUMBER = NumberShape.between(-1e9, 1e9);

  private static final ListShape COLUMN = new ListShape(NUMBER, 1, MOST);

  private static final NumberShape FACTOR = NumberShape.between(1e-6, 1e6);

  /** A place of a frame. */
  public static final NumberShape PLACE = NumberShape.between(-100_000, 100_000);

  /** Units of length that a recording may have. */
  public static final ChoiceShape LENGTH_UNIT = ChoiceShape.of("mm", "cm", "m", "px");

  /** Units of time that a recording may have. */
  public static final ChoiceShape TIME_UNIT = ChoiceShape.of("s", "ms", "frames");

  /** Whether a recording's axes are reversed. */
  public static final ChoiceShape MIRRORED = ChoiceShape.of("no", "yes", "unknown");

  /** The recording. */
  public static final ObjectShape RECORDING =
      ObjectShape.named(
              "Recording",
              "Places of the bob over time: columns t, x and y of one length, or the same as a table"
                  + " in csv. A table may have semicolons and decimal commas, further columns, and"
                  + " rows that lack a number, which are passed over and counted.")
          .optional("t", COLUMN, "Times, each later than the one before.")
          .optional("x", COLUMN, "Places.")
          .optional("y", COLUMN, "Places.")
          .optional(
              "csv",
              new TableShape(MOST_CHARACTERS),
              "The table; its first row names t, x and y, with a unit behind an underscore or"
                  + " without.")
          .build();

  /** The frame in which it was taken. */
  public static final ObjectShape FRAME =
      ObjectShape.named("RecordingFrame", "Units and axes of a recording.")
          .optional(
              "lengthUnit",
              LENGTH_UNIT,
              "Unit of x and y; if left out what the table's header says, or the layout's own.")
          .optional("mmPerPixel", FACTOR, "Millimetres of a pixel, where the unit is px.")
          .optional(
              "timeUnit",
              TIME_UNIT,
              "Unit of t; if left out what the table's header says, or seconds.")
          .optional("framesPerS", FACTOR, "Frames in a second, where the unit is frames.")
          .withDefault(
              "originX",
              PLACE,
              0.0,
              "Where the recording's origin lies on the plate, in the layout's unit of length.")
          .withDefault("originY", PLACE, 0.0, "Where the recording's origin lies on the plate.")
          .withDefault(
              "turnDeg",
              NumberShape.between(-360, 360),
              0.0,
              "From the plate's x axis to the recording's, anticlockwise.")
          .withDefault(
              "mirrored",
              MIRRORED,
              "no",
              "yes: the recording's y axis points the other way, as in many pictures.")
          .build();

  /** The same as it is kept: seconds and the layout's unit of length. */
  public static final ObjectShape STORED =
      ObjectShape.named("StoredRecording", "A recording as it is kept.")
          .required("t", COLUMN, "Times [s].")
          .required("x", COLUMN, "Places.")
          .required("y", COLUMN, "Places.")
          .required("gaps", NumberShape.count(0, MOST), "Rows that were passed over.")
          .build();

  /** The frame as it is kept. */
  public static final ObjectShape STORED_FRAME =
      ObjectShape.named("StoredRecordingFrame", "Axes of a recording as they are kept.")
          .required("originX", PLACE, "Origin.")
          .required("originY", PLACE, "Origin.")
          .required("turnDeg", NumberShape.between(-360, 360), "Turn.")
          .required("mirrored", MIRRORED, "Whether the y axis is reversed.")
          .build();

  private static final Shape FIGURE = NumberShape.between(-1e300, 1e300);

  /** How a recording was read, in answers. */
  public static final ObjectShape READING =
      ObjectShape.named("RecordingReading", "How the recording was read.")
          .open()
          .required("places", FIGURE, "Places that it has.")
          .required("gaps", FIGURE, "Rows that lacked a number and were passed over.")
          .required("durationS", FIGURE, "From the first place to the last.")
          .required("usualIntervalS", FIGURE, "Median time between two places.")
          .required("longestIntervalS", FIGURE, "Longest time between two places.")
          .required("mirrored", new FlagShape(), "Whether its y axis points the other way.")
          .required("noise", FIGURE, "Noise of a coordinate, from third differences.")
          .build();

  private RecordingShapes() {}

  /** What every request about a recording has: the layout, what was recorded, its axes. */
  public static ObjectShape.Builder request(ObjectShape.Builder builder) {
    return builder
        .optional("layoutId", new TextShape(LONGEST_ID), "A stored layout.")
        .optional("layout", LayoutShapes.REQUEST, "A layout, sent whole.")
        .exactlyOneOf(List.of("layoutId"), List.of("layout"))
        .required("recording", RECORDING, "What was recorded.")
        .optional("frame", FRAME, "Its units and axes.");
  }

  /** The same as it is kept. */
  public static ObjectShape.Builder stored(ObjectShape.Builder builder) {
    return builder
        .required("layoutId", new TextShape(LONGEST_ID), "The layout.")
        .required("recording", STORED, "The recording.")
        .required("frame", STORED_FRAME, "Its axes.");
  }
}
