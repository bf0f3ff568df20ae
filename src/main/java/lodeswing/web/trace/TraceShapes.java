package lodeswing.web.trace;

import java.util.List;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutShapes;

/** What a trace's request may be, and what its answer looks like. */
public final class TraceShapes {
  /** A coordinate of a release, in the layout's unit of length. */
  public static final NumberShape PLACE = NumberShape.between(-100_000, 100_000);

  /** A component of its push, units of length a second. */
  public static final NumberShape SPEED = NumberShape.between(-1_000_000, 1_000_000);

  /** How long a path is taken. */
  public static final NumberShape DURATION = NumberShape.above(0, 1e6);

  /** Time between samples. */
  public static final NumberShape INTERVAL = NumberShape.above(0, 1e6);

  /** How exactly a hand places the bob, in the layout's unit of length. */
  public static final NumberShape ACCURACY = NumberShape.above(0, 1_000);

  /** How far a thinned path may differ, in the layout's unit of length. */
  public static final NumberShape THIN = NumberShape.between(0, 1_000);

  /** Word for a path whose places are joined by cubics. */
  static final String CUBICS = "cubics";

  /** What lies between the places of a path. */
  public static final ChoiceShape BETWEEN = ChoiceShape.of("lines", CUBICS);

  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final Shape COLUMN = new ListShape(NUMBER, 0, 10_000_000);

  /** A release. */
  public static final ObjectShape RELEASE =
      ObjectShape.named("Release", "How the bob is let go, in the layout's unit of length.")
          .required("x", PLACE, "Plan position of the bob magnet's centre.")
          .required("y", PLACE, "Plan position of the bob magnet's centre.")
          .withDefault("vx", SPEED, 0.0, "Push along x, units of length a second.")
          .withDefault("vy", SPEED, 0.0, "Push along y, units of length a second.")
          .build();

  /** The body of a request. */
  public static final ObjectShape REQUEST =
      ObjectShape.named("TraceRequest", "One release on one layout.")
          .optional("layoutId", new TextShape(60), "The id of a stored layout.")
          .optional("layout", LayoutShapes.REQUEST, "Or a whole layout.")
          .required("release", RELEASE, "How the bob is let go.")
          .optional("durationS", DURATION, "How long samples are taken; 30, textbook 100.")
          .optional("sampleIntervalS", INTERVAL, "Time between samples; 0.02, textbook 0.05.")
          .optional(
              "placingAccuracy",
              ACCURACY,
              "How exactly a hand places the bob, in the layout's unit of length; 1 mm, textbook"
                  + " 0.001. The path is foretold for it.")
          .optional(
              "thin",
              THIN,
              "Leave samples out as long as straight lines between the kept ones stay within this"
                  + " distance, in the layout's unit of length.")
          .optional(
              "between",
              BETWEEN,
              "What is drawn between the places: straight lines, as if left out, or cubics, each"
                  + " with the places and velocities at its ends (Hermite's interpolation, which"
                  + " a Bezier curve draws). Cubics need a fifth of the places, which are then not"
                  + " evenly apart in time; with thin, places and velocities are rounded as far as"
                  + " the path stays within that distance. Energies are left out.")
          .exactlyOneOf(List.of("layoutId"), List.of("layout"))
          .build();

  /** A stored request. */
  public static final ObjectShape STORED =
      ObjectShape.named("StoredTrace", "A trace's request as it is kept.")
          .required("layoutId", new TextShape(60), "The layout.")
          .required("release", RELEASE, "The release.")
          .required("durationS", DURATION, "Duration.")
          .required("sampleIntervalS", INTERVAL, "Interval.")
          .required("placingAccuracy", ACCURACY, "Accuracy of the hand.")
          .optional("thin", THIN, "Thinning.")
          .optional("between", BETWEEN, "What lies between places.")
          .build();

  /** The samples of a path. */
  public static final ObjectShape SAMPLES =
      ObjectShape.named("Samples", "The path as columns of one length.")
          .open()
          .required("t", COLUMN, "Times.")
          .required("x", COLUMN, "Plan positions.")
          .required("y", COLUMN, "Plan positions.")
          .required("vx", COLUMN, "Plan velocities.")
          .required("vy", COLUMN, "Plan velocities.")
          .optional("energyJ", COLUMN, "Mechanical energies (bench).")
          .optional("energy", COLUMN, "Mechanical energies (textbook).")
          .build();

  /** Something on the way. */
  public static final ObjectShape EVENT =
      ObjectShape.named("TraceEvent", "Something that happened on the way.")
          .open()
          .required("tS", NUMBER, "When.")
          .required("kind", TEXT, "What, as a word for programs.")
          .required("text", TEXT, "What, in words.")
          .build();

  /** The end of a path. */
  public static final ObjectShape OUTCOME =
      ObjectShape.named("Outcome", "Where the bob comes to rest, or what ends its motion before.")
          .open()
          .required("kind", TEXT, "rest-point, or the kind of the event that ends the motion.")
          .optional("restPointId", TEXT, "The rest point's id.")
          .optional("label", TEXT, "The label it stands for, by the rule of RestPoint.")
          .required("name", TEXT, "The label, or the place or the event in words.")
          .optional("x", NUMBER, "The rest point; left out where any place of a ring may be it.")
          .optional("y", NUMBER, "The rest point, likewise.")
          .optional("ringRadius", NUMBER, "That ring's radius about the middle.")
          .build();

  /** Members that the answers of a trace and of an outcome share. */
  private static ObjectShape.Builder common(String name, String text) {
    return ObjectShape.named(name, text)
        .open()
        .required("layoutId", TEXT, "The layout.")
        .required("model", ChoiceShape.of("bench", "textbook"), "The model.")
        .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
        .optional("outcome", OUTCOME, "Where the bob comes to rest; left out if undecided.")
        .required("sure", new FlagShape(), "Sealed, and the same at a tenfold tighter tolerance.")
        .optional(
            "mapOutcome",
            OUTCOME,
            "The end that the map of the layout's usual window shows for this release; only where"
                + " it is another: maps are computed less exactly.")
        .optional("sealedAtS", NUMBER, "From when on no other rest point could be reached.")
        .optional("settledAtS", NUMBER, "When the bob had settled.")
        .optional("trustedUntilS", NUMBER, "Until when the computed path is right.")
        .optional("foretoldUntilS", NUMBER, "Until when the path can be foretold for a hand.")
        .required("notReached", new ListShape(TEXT, 0, 10), "Times that were not reached.")
        .required("notes", new ListShape(TEXT, 0, 50), "What to know, in sentences.")
        .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
        .optional(
            "olderEngine",
            new FlagShape(),
            "true where an older revision than today's computed it; the Link header of relation"
                + " latest-version leads to today's answer.")
        .required("links", new MapShape(TEXT, 50, 40), "Where to go from here.");
  }

  /** The document of a trace. */
  static final ObjectShape DOCUMENT =
      common("Trace", "A path and what is known of it.")
          .required("traceId", TEXT, "Its id.")
          .required("release", RELEASE, "How the bob was let go.")
          .required("samples", SAMPLES, "The path.")
          .required("events", new ListShape(EVENT, 0, 100), "What happened, in order of time.")
          .required("sampleIntervalS", NUMBER, "Time between samples, before thinning.")
          .required("followedUntilS", NUMBER, "How long the bob was followed.")
          .build();

  /** The document of an outcome. */
  static final ObjectShape OUTCOME_DOCUMENT =
      common("OutcomeAnswer", "Where one release ends.")
          .required("x", NUMBER, "The release.")
          .required("y", NUMBER, "The release.")
          .build();

  private TraceShapes() {}
}
