package lodeswing.web.body;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A finite number within limits.
 *
 * @param least smallest value
 * @param leastOpen whether the smallest value itself is out
 * @param most largest value, itself allowed
 * @param whole whether only whole numbers are allowed
 * @param unit the unit's name in words, empty for a bare number
 */
public record NumberShape(double least, boolean leastOpen, double most, boolean whole, String unit)
    implements Shape {

  /** A number from {@code least} to {@code most}, both allowed. */
  public static NumberShape between(double least, double most) {
    return new NumberShape(least, false, most, false, "");
  }

  /** A number above {@code least}, up to {@code most}. */
  public static NumberShape above(double least, double most) {
    return new NumberShape(least, true, most, false, "");
  }

  /** A whole number from {@code least} to {@code most}, both allowed. */
  public static NumberShape count(int least, int most) {
    return new NumberShape(least, false, most, true, "");
  }

  /** The same limits with a unit. */
  public NumberShape in(String unitName) {
    return new NumberShape(least, leastOpen, most, whole, unitName);
  }

  @Override
  public Optional<Object> read(JsonNode node, String pointer, FaultList faults) {
    if (node.isNumber()) {
      double value = node.doubleValue();
      if (Double.isNaN(value) || Double.isInfinite(value)) {
        faults.add(pointer, "must be " + accepted() + ", not a value beyond all finite numbers");
        return Optional.empty();
      }
      boolean low = leastOpen ? value <= least : value < least;
      if (!low && value <= most && (!whole || value == Math.rint(value))) {
        return Optional.of(value == 0 ? 0.0 : value);
      }
    }
    faults.add(pointer, "must be " + accepted() + ", not " + Quoted.kind(node));
    return Optional.empty();
  }

  @Override
  public String accepted() {
    String low = (leastOpen ? "above " : "from ") + Numbers.shortest(least);
    return (whole ? "a whole number " : "a number ")
        + low
        + (leastOpen ? " up to " : " to ")
        + Numbers.shortest(most)
        + (unit.isEmpty() ? "" : " (" + unit + ")");
  }

  @Override
  public Map<String, Object> schema(SchemaComponents components) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("type", whole ? "integer" : "number");
    schema.put(leastOpen ? "exclusiveMinimum" : "minimum", least);
    schema.put("maximum", most);
    if (!unit.isEmpty()) {
      schema.put("x-unit", unit);
    }
    return schema;
  }
}
