package lodeswing.web.hand;

import java.util.LinkedHashMap;
import java.util.Map;
import lodeswing.web.body.Body;
import lodeswing.web.body.NumberShape;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;

/** A hand in the parameters of an address; zones with corners must be posted. */
public final class HandByAddress {

  /** Where it means to let go. */
  public static final Parameter<Double> X = number("x", HandShapes.PLACE).required();

  /** Where it means to let go. */
  public static final Parameter<Double> Y = number("y", HandShapes.PLACE).required();

  /** The push that it means. */
  public static final Parameter<Double> VX = number("vx", HandShapes.SPEED).orElse(0.0);

  /** The push that it means. */
  public static final Parameter<Double> VY = number("vy", HandShapes.SPEED).orElse(0.0);

  /** How it wanders. */
  public static final Parameter<String> KIND =
      Parameter.oneOf("kind", "gaussian", "disc", "ring").orElse("gaussian");

  /** How far. */
  public static final Parameter<Double> SPREAD = number("spreadMm", HandShapes.SIZE).required();

  /** Inner radius of a ring. */
  public static final Parameter<Double> INNER = number("innerMm", HandShapes.SIZE).orElse(0.0);

  /** How far its push wanders. */
  public static final Parameter<Double> PUSH =
      number("spreadMmPerS", HandShapes.SPEED_SIZE).orElse(0.0);

  private HandByAddress() {}

  private static Parameter<Double> number(String name, NumberShape shape) {
    return Parameter.number(name, shape.least(), shape.most());
  }

  /** The release, as a body has it. */
  public static Body release(QueryParameters query) {
    Map<String, Object> release = new LinkedHashMap<>();
    release.put("x", query.get(X));
    release.put("y", query.get(Y));
    release.put("vx", query.get(VX));
    release.put("vy", query.get(VY));
    return Body.of(release);
  }

  /** The spread, as a body has it. */
  public static Body spread(QueryParameters query) {
    Map<String, Object> spread = new LinkedHashMap<>();
    spread.put("kind", query.get(KIND));
    switch (query.get(KIND)) {
      case "disc" -> spread.put("radius", query.get(SPREAD));
      case "ring" -> {
        spread.put("innerRadius", query.get(INNER));
        spread.put("outerRadius", query.get(SPREAD));
      }
      default -> spread.put("deviation", query.get(SPREAD));
    }
    spread.put("speedDeviation", query.get(PUSH));
    return Body.of(spread);
  }
}
