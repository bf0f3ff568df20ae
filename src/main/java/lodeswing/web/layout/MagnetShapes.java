package lodeswing.web.layout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.OneOfShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;

/** The shapes of magnets: on the bob, on the plate, in stock and in patterns. */
final class MagnetShapes {
  static final Shape POLE = ChoiceShape.of("north", "south");
  static final TextShape LABEL = new TextShape(LayoutShapes.LABEL_CHARACTERS);
  static final Shape PLACE = NumberShape.between(-5000, 5000).in("millimetres");

  private static final Shape SIZE = NumberShape.between(0.2, 500).in("millimetres");
  private static final Shape BOTTOM = NumberShape.between(-1000, 1000).in("millimetres");
  private static final Shape TURN = NumberShape.between(-360, 360).in("degrees");
  private static final Shape MASS = NumberShape.above(0, 50_000).in("grams");
  private static final TextShape NAME = new TextShape(40);

  private static final List<String> SHAPES = List.of("disc", "ring", "block", "sphere", "dipole");

  static final String BOTTOM_TEXT =
      "Height of its lower face over the plate's surface, negative below; of a sphere its lowest"
          + " point, of a dipole its centre.";

  private static final String PLATE_MASS =
      "Its mass, weighed; where it is left out it comes from size and grade. Only the check uses it.";

  /** The magnet on the bob. */
  static final OneOfShape BOB =
      oneOf("BobMagnet", "The magnet on the bob, its axis in line with the cord or bar.", Use.BOB);

  /** A magnet of the plate with everything said. */
  static final OneOfShape PLACED =
      oneOf("PlateMagnet", "A magnet on the plate, its axis upright.", Use.PLATE);

  /** A magnet as it is named in stock. */
  static final OneOfShape STOCK_ENTRY =
      oneOf("StockMagnet", "A magnet named once and placed many times.", Use.STOCK);

  /** Magnets named once. */
  static final MapShape STOCK = new MapShape(STOCK_ENTRY, 50, 40);

  /** A magnet of the plate as it may be sent: in full, or from stock. */
  static final OneOfShape SENT =
      new OneOfShape(
          "PlateMagnetOrStock",
          "A magnet on the plate: described in full, or taken from stock by name.",
          "shape",
          PLACED.kinds(),
          Map.of("of", fromStock()));

  /** Many magnets at once. */
  static final OneOfShape PATTERN =
      new OneOfShape(
          "MagnetPattern", "Many equal magnets in a regular order.", "kind", patterns(), Map.of());

  private MagnetShapes() {}

  private enum Use {
    BOB("Bob"),
    PLATE("Plate"),
    STOCK("Stock");

    private final String prefix;

    Use(String prefix) {
      this.prefix = prefix;
    }
  }

  private static OneOfShape oneOf(String name, String description, Use use) {
    var kinds = new LinkedHashMap<String, ObjectShape>();
    for (String shape : SHAPES) {
      kinds.put(shape, kind(shape, use));
    }
    return new OneOfShape(name, description, "shape", kinds, Map.of());
  }

  private static ObjectShape kind(String shape, Use use) {
    String word = Character.toUpperCase(shape.charAt(0)) + shape.substring(1);
    var builder = ObjectShape.named(use.prefix + word, "A " + shape + " magnet.");
    if (use == Use.PLATE) {
      place(builder);
    }
    builder.required("shape", ChoiceShape.of(shape), "The kind of magnet.");
    size(builder, shape);
    if (shape.equals("dipole")) {
      builder.required(
          "momentAm2",
          NumberShape.above(0, 1000).in("ampere square metres"),
          "Magnetic moment of a point dipole, upright.");
    } else {
      builder
          .optional("grade", NAME, "Trade code of its material, such as N35 or Y30.")
          .optional(
              "remanenceT",
              NumberShape.above(0, 1.6).in("tesla"),
              "Remanence of its material, instead of a grade.")
          .exactlyOneOf(List.of("grade"), List.of("remanenceT"));
    }
    switch (use) {
      case BOB -> bobRest(builder);
      case PLATE -> plateRest(builder, shape);
      case STOCK -> stockRest(builder, shape);
    }
    return builder.build();
  }

  private static void size(ObjectShape.Builder builder, String shape) {
    switch (shape) {
      case "disc" ->
          builder
              .required("diameterMm", SIZE, "Diameter.")
              .required("heightMm", SIZE, "Height, along the direction of magnetisation.");
      case "ring" ->
          builder
              .required("diameterMm", SIZE, "Outer diameter.")
              .required("innerDiameterMm", SIZE, "Diameter of the hole.")
              .required("heightMm", SIZE, "Height, along the direction of magnetisation.");
      case "block" ->
          builder
              .required("lengthMm", SIZE, "Length, along x before it is turned.")
              .required("widthMm", SIZE, "Width, along y before it is turned.")
              .required("heightMm", SIZE, "Height, along the direction of magnetisation.");
      case "sphere" -> builder.required("diameterMm", SIZE, "Diameter.");
      default -> {
        // A dipole has no size.
      }
    }
  }

  private static void bobRest(ObjectShape.Builder builder) {
    builder
        .required("poleDown", POLE, "The pole that faces the plate.")
        .optional(
            "massG",
            MASS,
            "Its own mass, weighed; where it is left out on a bar it comes from size and grade.");
  }

  private static void plateRest(ObjectShape.Builder builder, String shape) {
    builder.required("poleUp", POLE, "The pole that faces up.");
    builder.withDefault("bottomMm", BOTTOM, 0.0, BOTTOM_TEXT);
    if (shape.equals("block")) {
      builder.withDefault("turnDeg", TURN, 0.0, "Turn of its length from +x, anticlockwise.");
    }
    builder.optional("label", LABEL, "What the place under the bob stands for.");
    builder.optional("massG", MASS, PLATE_MASS);
  }

  private static void stockRest(ObjectShape.Builder builder, String shape) {
    builder
        .optional("poleUp", POLE, "The pole that faces up, where the placing does not say.")
        .optional("bottomMm", BOTTOM, BOTTOM_TEXT)
        .optional("massG", MASS, PLATE_MASS);
    if (shape.equals("block")) {
      builder.optional("turnDeg", TURN, "Turn of its length from +x, anticlockwise.");
    }
  }

  private static void place(ObjectShape.Builder builder) {
    builder
        .required("x", PLACE, "Place of its axis in the plate.")
        .required("y", PLACE, "Place of its axis in the plate.");
  }

  private static ObjectShape fromStock() {
    var builder = ObjectShape.named("MagnetFromStock", "A magnet from stock, placed.");
    place(builder);
    builder
        .required("of", NAME, "The name in stock.")
        .optional("poleUp", POLE, "The pole that faces up; goes before the stock's.")
        .optional("bottomMm", BOTTOM, BOTTOM_TEXT + " Goes before the stock's.")
        .optional("turnDeg", TURN, "Turn from +x, anticlockwise; for a block.")
        .optional("label", LABEL, "What the place under the bob stands for.");
    return builder.build();
  }

  private static Map<String, ObjectShape> patterns() {
    Shape spacing = NumberShape.between(1, 1000).in("millimetres");
    var kinds = new LinkedHashMap<String, ObjectShape>();
    kinds.put(
        "ring",
        pattern("ring", "Magnets evenly on a circle, anticlockwise.")
            .required("count", NumberShape.count(1, LayoutShapes.MOST_MAGNETS), "How many.")
            .required("radiusMm", NumberShape.between(1, 2000).in("millimetres"), "Radius.")
            .withDefault("startDeg", TURN, 0.0, "Angle of the first magnet from +x.")
            .withDefault("x", PLACE, 0.0, "Centre of the circle.")
            .withDefault("y", PLACE, 0.0, "Centre of the circle.")
            .build());
    kinds.put(
        "grid",
        pattern("grid", "Magnets in rows and columns, row by row from the lower left.")
            .required(
                "columns", NumberShape.count(1, LayoutShapes.MOST_MAGNETS), "How many along x.")
            .required("rows", NumberShape.count(1, LayoutShapes.MOST_MAGNETS), "How many along y.")
            .required("spacingMm", spacing, "Distance of neighbours in a row.")
            .optional("rowSpacingMm", spacing, "Distance of rows; as in a row if left out.")
            .withDefault("turnDeg", TURN, 0.0, "Turn of the whole grid, anticlockwise.")
            .withDefault("x", PLACE, 0.0, "Centre of the grid.")
            .withDefault("y", PLACE, 0.0, "Centre of the grid.")
            .build());
    kinds.put(
        "hex",
        pattern("hex", "Magnets in closest order: a centre and rings of six, twelve, ... round it.")
            .required("rings", NumberShape.count(0, 7), "How many rings round the centre.")
            .required("spacingMm", spacing, "Distance of neighbours.")
            .withDefault("turnDeg", TURN, 0.0, "Turn of the whole pattern, anticlockwise.")
            .withDefault("x", PLACE, 0.0, "Centre.")
            .withDefault("y", PLACE, 0.0, "Centre.")
            .build());
    kinds.put(
        "line",
        pattern("line", "Magnets evenly from one place to another, both included.")
            .required("count", NumberShape.count(2, LayoutShapes.MOST_MAGNETS), "How many.")
            .required("x", PLACE, "Place of the first.")
            .required("y", PLACE, "Place of the first.")
            .required("toX", PLACE, "Place of the last.")
            .required("toY", PLACE, "Place of the last.")
            .build());
    return kinds;
  }

  private static ObjectShape.Builder pattern(String kind, String description) {
    String word = Character.toUpperCase(kind.charAt(0)) + kind.substring(1);
    return ObjectShape.named(word + "Pattern", description)
        .required("kind", ChoiceShape.of(kind), "The order of the magnets.")
        .optional("of", NAME, "The magnet's name in stock.")
        .optional("magnet", STOCK_ENTRY, "The magnet, where it is not in stock.")
        .exactlyOneOf(List.of("of"), List.of("magnet"))
        .optional(
            "poles",
            new ListShape(POLE, 1, LayoutShapes.MOST_MAGNETS),
            "Poles that face up, one after the other, begun again at its end.")
        .optional("bottomMm", BOTTOM, BOTTOM_TEXT + " Goes before the stock's.")
        .optional(
            "labels",
            new ListShape(LABEL, 1, LayoutShapes.MOST_MAGNETS),
            "Labels one after the other; magnets past its end have none.");
  }
}
