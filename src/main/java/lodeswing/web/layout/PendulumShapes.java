package lodeswing.web.layout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.OneOfShape;
import lodeswing.web.body.Shape;

/** The shapes of pendulums: cord, yoke, and bar from parts. */
final class PendulumShapes {
  private static final Shape LENGTH = NumberShape.between(5, 20_000).in("millimetres");
  private static final Shape SIZE = NumberShape.between(0.1, 5000).in("millimetres");
  private static final Shape FROM_TOP = NumberShape.between(-2000, 5000).in("millimetres");
  private static final Shape MASS = NumberShape.between(0.01, 100_000).in("grams");
  private static final String BOB_MASS =
      "Whole mass at its end, magnet included; acts as a point at the bob magnet's centre.";

  /** What the bob hangs on. */
  static final OneOfShape PENDULUM =
      new OneOfShape("Pendulum", "What the bob hangs on.", "kind", kinds(), Map.of());

  private PendulumShapes() {}

  private static Map<String, ObjectShape> kinds() {
    var kinds = new LinkedHashMap<String, ObjectShape>();
    kinds.put(
        "cord",
        ObjectShape.named("Cord", "A light cord from one pivot.")
            .required("kind", ChoiceShape.of("cord"), "The kind of suspension.")
            .required("lengthMm", LENGTH, "From the pivot to the bob magnet's centre.")
            .required("bobMassG", MASS, BOB_MASS)
            .build());
    kinds.put(
        "yoke",
        ObjectShape.named(
                "Yoke", "A Y cord: two upper cords meet in a knot, one leg hangs from it.")
            .required("kind", ChoiceShape.of("yoke"), "The kind of suspension.")
            .required("yokeSpanMm", SIZE, "Distance of the two upper supports, along x.")
            .required("yokeDropMm", SIZE, "Height of the supports over the knot.")
            .required("legMm", LENGTH, "From the knot to the bob magnet's centre.")
            .required("bobMassG", MASS, BOB_MASS)
            .build());
    kinds.put(
        "bar",
        ObjectShape.named("Bar", "A rigid bar hung by a hook in an eye.")
            .required("kind", ChoiceShape.of("bar"), "The kind of suspension.")
            .withDefault(
                "hookOffsetMm",
                NumberShape.between(0, 500).in("millimetres"),
                0.0,
                "Distance between the two crossed axes that hook and eye make.")
            .required(
                "parts",
                new ListShape(part(), 1, LayoutShapes.MOST_BAR_PARTS),
                "The parts along the bar, apart from the bob magnet.")
            .optional(
                "bobFromTopMm",
                FROM_TOP,
                "From the lower axis to the bob magnet's centre; right below the lowest part if"
                    + " left out.")
            .build());
    return kinds;
  }

  private static OneOfShape part() {
    var kinds = new LinkedHashMap<String, ObjectShape>();
    kinds.put(
        "rod",
        part("rod", "A round rod along the bar.")
            .required("diameterMm", SIZE, "Diameter.")
            .required("lengthMm", SIZE, "Length along the bar.")
            .build());
    kinds.put(
        "disc",
        part("disc", "A round plate or weight, its axis along the bar.")
            .required("diameterMm", SIZE, "Diameter.")
            .required("heightMm", SIZE, "Thickness along the bar.")
            .build());
    kinds.put(
        "ring",
        part("ring", "A ring or washer, its axis along the bar.")
            .required("diameterMm", SIZE, "Outer diameter.")
            .required("innerDiameterMm", SIZE, "Diameter of the hole.")
            .required("heightMm", SIZE, "Thickness along the bar.")
            .build());
    kinds.put(
        "nut",
        part("nut", "A hexagonal nut, its axis along the bar.")
            .required("acrossFlatsMm", SIZE, "Width across the flats: the spanner's size.")
            .required("holeDiameterMm", SIZE, "Diameter of the hole.")
            .required("heightMm", SIZE, "Height along the bar.")
            .build());
    kinds.put(
        "point",
        ObjectShape.named("PointPart", "A small mass whose size does not matter.")
            .required("kind", ChoiceShape.of("point"), "The kind of part.")
            .required("massG", MASS, "Mass.")
            .required("fromTopMm", FROM_TOP, "From the lower axis down to it.")
            .build());
    return new OneOfShape("BarPart", "One part of a bar.", "kind", kinds, Map.of());
  }

  private static ObjectShape.Builder part(String kind, String description) {
    String word = Character.toUpperCase(kind.charAt(0)) + kind.substring(1);
    return ObjectShape.named(word + "Part", description)
        .required("kind", ChoiceShape.of(kind), "The kind of part.")
        .required(
            "fromTopMm", FROM_TOP, "From the lower axis down to its upper end; negative above.")
        .optional("massG", MASS, "Mass, where it was weighed.")
        .optional(
            "material", new ChoiceShape(PartMaterials.names()), "Material, instead of a mass.")
        .exactlyOneOf(List.of("massG"), List.of("material"));
  }
}
