package lodeswing.web.hand;

import java.util.LinkedHashMap;
import java.util.Map;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.OneOfShape;

/** What a request may say of a hand that lets the bob go. */
public final class HandShapes {

  /** A plan position, in the layout's unit of length. */
  public static final NumberShape PLACE = NumberShape.between(-100_000, 100_000);

  /** A push, in units of length a second. */
  public static final NumberShape SPEED = NumberShape.between(-1_000_000, 1_000_000);

  /** How far it wanders. */
  public static final NumberShape SIZE = NumberShape.between(0, 10_000);

  /** How far its push wanders. */
  public static final NumberShape SPEED_SIZE = NumberShape.between(0, 100_000);

  private static final int MOST_CORNERS = 100;

  /** The release that a hand means. */
  public static final ObjectShape RELEASE =
      ObjectShape.named("AimedRelease", "The release that the hand means.")
          .required("x", PLACE, "Plan position of the bob magnet's centre.")
          .required("y", PLACE, "Plan position of the bob magnet's centre.")
          .withDefault("vx", SPEED, 0.0, "Push along x, units of length a second.")
          .withDefault("vy", SPEED, 0.0, "Push along y.")
          .build();

  private static final ObjectShape CORNER =
      ObjectShape.named("ZoneCorner", "A corner, counted from the aimed release.")
          .required("x", PLACE, "Along x.")
          .required("y", PLACE, "Along y.")
          .build();

  private static ObjectShape.Builder kind(String word, String name, String text) {
    return ObjectShape.named(name, text)
        .required("kind", ChoiceShape.of(word), "How the hand wanders.");
  }

  private static ObjectShape pushed(ObjectShape.Builder builder) {
    return builder
        .withDefault(
            "speedDeviation",
            SPEED_SIZE,
            0.0,
            "Standard deviation of the push along either axis, normal; units of length a second.")
        .build();
  }

  private static Map<String, ObjectShape> kinds() {
    Map<String, ObjectShape> kinds = new LinkedHashMap<>();
    kinds.put(
        "gaussian",
        pushed(
            kind("gaussian", "GaussianSpread", "Normal about the aimed place, in x and y alike.")
                .required("deviation", SIZE, "Standard deviation along either axis.")));
    kinds.put(
        "disc",
        pushed(
            kind("disc", "DiscSpread", "Anywhere in a disc about the aimed place.")
                .required("radius", SIZE, "Its radius.")));
    kinds.put(
        "ring",
        pushed(
            kind("ring", "RingSpread", "Anywhere between two circles about the aimed place.")
                .required("innerRadius", SIZE, "Radius of the inner circle.")
                .required("outerRadius", SIZE, "Radius of the outer circle.")));
    kinds.put(
        "polygon",
        pushed(
            kind("polygon", "PolygonSpread", "Anywhere in a polygon.")
                .required(
                    "corners",
                    new ListShape(CORNER, 3, MOST_CORNERS),
                    "Its corners in order along the border, from the aimed release; on the plate"
                        + " where release is left out.")));
    return kinds;
  }

  /** How far it wanders. */
  public static final OneOfShape SPREAD =
      new OneOfShape(
          "Spread",
          "How far the hand wanders, in the layout's unit of length.",
          "kind",
          kinds(),
          Map.of());

  private HandShapes() {}
}
