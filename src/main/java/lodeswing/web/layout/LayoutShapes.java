package lodeswing.web.layout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.OneOfShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;

/** The shapes of whole layouts: as they may be sent, and in their one canonical form. */
public final class LayoutShapes {

  /** Standard acceleration of gravity [m/s^2] (3rd CGPM, 1901). */
  static final double STANDARD_GRAVITY = 9.80665;

  /** Longest title. */
  public static final int TITLE_CHARACTERS = 120;

  /** Longest label of a magnet. */
  public static final int LABEL_CHARACTERS = 60;

  /** Most magnets on one plate, those of patterns included. */
  public static final int MOST_MAGNETS = 200;

  /** The member that says who may read a layout. */
  static final String VISIBILITY = "visibility";

  /** Its word for whoever stored the layout alone. */
  static final String PRIVATE = "private";

  /** Most parts along one bar. */
  public static final int MOST_BAR_PARTS = 50;

  private static final Shape TITLE = new TextShape(TITLE_CHARACTERS);
  private static final Shape MILLIMETRES = NumberShape.between(0, 20_000).in("millimetres");
  private static final Shape SMALL = NumberShape.between(0, 100).in("millimetres");
  private static final Shape PLAIN = NumberShape.between(-1000, 1000);

  /** What the bob hangs on. */
  public static final OneOfShape PENDULUM = PendulumShapes.PENDULUM;

  /** A layout as it may be sent: stock and patterns allowed. */
  public static final OneOfShape REQUEST =
      new OneOfShape(
          "Layout",
          "A rig on the bench, or the plane idealisation that papers use.",
          "model",
          models(
              Reader.CLIENT,
              bench("BenchLayout")
                  .optional("stock", MagnetShapes.STOCK, "Magnets named once.")
                  .withDefault(
                      "magnets",
                      new ListShape(MagnetShapes.SENT, 0, MOST_MAGNETS),
                      List.of(),
                      "The magnets of the plate, at most 200 with those of patterns.")
                  .withDefault(
                      "patterns",
                      new ListShape(MagnetShapes.PATTERN, 0, 50),
                      List.of(),
                      "Many magnets at once; they follow those of magnets.")),
          Map.of());

  /** A layout with stock and patterns expanded, as it is told. */
  public static final OneOfShape CANONICAL = canonical(Reader.CLIENT);

  /** The same as it is stored and hashed: a private one with its seal. */
  static final OneOfShape STORED = canonical(Reader.STORE);

  /** The same without whose it is: the figures that can be changed. */
  static final OneOfShape FIGURES = canonical(Reader.OVERRIDE);

  /** Who reads a shape: what says whose a layout is differs. */
  private enum Reader {
    CLIENT,
    STORE,
    OVERRIDE
  }

  private static OneOfShape canonical(Reader reader) {
    return new OneOfShape(
        "StoredLayout",
        "A layout in canonical form: defaults filled in, stock and patterns expanded.",
        "model",
        models(
            reader,
            bench("StoredBenchLayout")
                .withDefault(
                    "magnets",
                    new ListShape(MagnetShapes.PLACED, 0, MOST_MAGNETS),
                    List.of(),
                    "The magnets of the plate.")),
        Map.of());
  }

  private LayoutShapes() {}

  private static Map<String, ObjectShape> models(Reader reader, ObjectShape.Builder bench) {
    var models = new LinkedHashMap<String, ObjectShape>();
    models.put("bench", belonging(reader, rest(bench)).build());
    models.put("textbook", belonging(reader, textbook()).build());
    return models;
  }

  private static ObjectShape.Builder belonging(Reader reader, ObjectShape.Builder layout) {
    return switch (reader) {
      case CLIENT ->
          layout.optional(
              VISIBILITY,
              ChoiceShape.of("public", PRIVATE),
              "private: for whoever stores it alone, under an id that nobody can guess, to be"
                  + " deleted with all that is computed of it; needs a key or token. Public if"
                  + " left out: the same layout has the same id for everybody.");
      case STORE -> layout.optional(Seal.MEMBER, Seal.SHAPE, "Whose it is, where it is private.");
      case OVERRIDE -> layout;
    };
  }

  private static ObjectShape.Builder bench(String name) {
    return ObjectShape.named(name, "A real rig in true units.")
        .required("model", ChoiceShape.of("bench"), "The model.")
        .optional("title", TITLE, "A title.")
        .required("pendulum", PENDULUM, "What the bob hangs on.")
        .optional("bobMagnet", MagnetShapes.BOB, "The magnet on the bob; none if left out.")
        .required(
            "gapMm",
            NumberShape.between(-1000, 5000).in("millimetres"),
            "From the plate's surface to the bob magnet's lower face at rest.");
  }

  private static ObjectShape.Builder rest(ObjectShape.Builder bench) {
    return bench
        .optional("backing", backing(), "Steel below the magnets; none if left out.")
        .withDefault(
            "localGravityMPerS2",
            NumberShape.between(0.1, 30).in("metres per second squared"),
            STANDARD_GRAVITY,
            "Local acceleration of gravity.")
        .required("damping", damping(), "What takes energy out of the swing.")
        .optional("tolerances", tolerances(), "How well the builder can hold the figures.")
        .optional("stand", stand(), "The stand that holds the pivot.")
        .optional("plate", plate(), "The plate that the magnets lie on or under.")
        .optional("hook", hook(), "The hook of the pivot.")
        .optional("audience", audience(), "Who will use the rig, for the cautions.");
  }

  private static ObjectShape backing() {
    return ObjectShape.named("Backing", "A steel sheet below the magnets.")
        .required("kind", ChoiceShape.of("steel"), "Its material.")
        .required(
            "topMm",
            NumberShape.between(-1000, 1000).in("millimetres"),
            "Height of its upper face over the plate's surface, negative below.")
        .build();
  }

  private static ObjectShape damping() {
    var force = NumberShape.between(0, 1000).in("newton seconds per metre");
    return ObjectShape.named(
            "Damping", "One of: counted swings, a quality factor, or the parts of the loss.")
        .optional(
            "swingsToHalf",
            NumberShape.between(0.2, 1e6).in("swings"),
            "After how many swings without magnets the width of the swing has halved.")
        .optional("qualityFactor", NumberShape.between(0.6, 1e7), "Quality factor without magnets.")
        .optional("linearNsPerM", force, "Force at the bob per speed.")
        .optional(
            "dragCoefficient",
            NumberShape.between(0, 10),
            "Drag coefficient of bob and bar in air; areas come from the parts.")
        .optional(
            "pivotTorqueNm",
            NumberShape.between(0, 10).in("newton metres"),
            "Friction torque at the pivot.")
        .exactlyOneOf(
            List.of("swingsToHalf"),
            List.of("qualityFactor"),
            List.of("linearNsPerM", "dragCoefficient", "pivotTorqueNm"))
        .build();
  }

  /** How exact the parts are. */
  public static ObjectShape tolerances() {
    return ObjectShape.named("Tolerances", "Largest errors that a careful builder makes.")
        .optional("gapMm", SMALL, "Of the gap.")
        .optional("placeMm", SMALL, "Of each magnet's place.")
        .optional("lengthMm", SMALL, "Of the pendulum's length.")
        .optional(
            "remanencePercent",
            NumberShape.between(0, 100).in("per cent"),
            "Of each magnet's remanence.")
        .build();
  }

  private static ObjectShape stand() {
    return ObjectShape.named("Stand", "The stand that holds the pivot.")
        .optional("heightMm", MILLIMETRES, "Height of the pivot over the plate's surface.")
        .optional("baseMm", MILLIMETRES, "Width of its base.")
        .optional(
            "tiltDeg", NumberShape.between(-45, 45).in("degrees"), "How far it leans from upright.")
        .build();
  }

  private static ObjectShape plate() {
    return ObjectShape.named("Plate", "The plate, centred below the pivot.")
        .required("shape", ChoiceShape.of("round", "square"), "Its outline.")
        .required("widthMm", NumberShape.between(10, 10_000).in("millimetres"), "Its width.")
        .optional(
            "frictionCoefficient",
            NumberShape.between(0, 5),
            "Coefficient of friction at rest on the plate, of magnets that lie on it and of a bob"
                + " that touches it.")
        .optional(
            "fixing",
            ChoiceShape.of("loose", "fixed"),
            "How its magnets are held: loose by weight, friction and steel alone, or fixed by glue,"
                + " screws or recesses.")
        .build();
  }

  private static ObjectShape hook() {
    return ObjectShape.named("Hook", "The hook of the pivot.")
        .optional("openingMm", MILLIMETRES, "Width of its opening.")
        .optional("depthMm", MILLIMETRES, "How far the eye lies below its tip.")
        .optional(
            "ratedLoadN",
            NumberShape.above(0, 100_000).in("newtons"),
            "The load that its maker allows.")
        .build();
  }

  private static ObjectShape audience() {
    return ObjectShape.named("Audience", "Who will use the rig.")
        .optional("ageFrom", NumberShape.count(0, 120), "Age of the youngest, in years.")
        .optional("laser", new FlagShape(), "Whether a laser pointer is used with it.")
        .optional("filings", new FlagShape(), "Whether iron filings are used with it.")
        .build();
  }

  private static ObjectShape.Builder textbook() {
    var attractor =
        ObjectShape.named("Attractor", "A point that attracts the bob, or repels it.")
            .required("x", PLAIN, "Place in the plane.")
            .required("y", PLAIN, "Place in the plane.")
            .withDefault("strength", PLAIN, 1.0, "Strength; negative repels.")
            .optional("label", MagnetShapes.LABEL, "What the place stands for.")
            .build();
    return ObjectShape.named(
            "TextbookLayout",
            "The plane idealisation: x'' = -omega0^2 x - drag x' + sum strength_i (X_i - x) /"
                + " (|r - R_i|^2 + height^2)^(3/2), the same for y.")
        .required("model", ChoiceShape.of("textbook"), "The model.")
        .optional("title", TITLE, "A title.")
        .required("omega0", NumberShape.between(0.001, 1000), "Rate of the swing without magnets.")
        .required("drag", NumberShape.between(0, 1000), "Linear loss.")
        .required("height", NumberShape.between(0.001, 1000), "Height of the bob's plane.")
        .withDefault(
            "magnets", new ListShape(attractor, 0, MOST_MAGNETS), List.of(), "The point magnets.");
  }
}
