package lodeswing.web.body;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A list of values of one shape.
 *
 * @param element what each element may be
 * @param fewest least number of elements
 * @param most largest number of elements
 */
public record ListShape(Shape element, int fewest, int most) implements Shape {

  @Override
  public Optional<Object> read(JsonNode node, String pointer, FaultList faults) {
    if (!node.isArray()) {
      faults.add(pointer, "must be " + accepted() + ", not " + Quoted.kind(node));
      return Optional.empty();
    }
    if (node.size() < fewest || node.size() > most) {
      faults.add(pointer, "must be " + accepted() + ", not " + node.size());
    }
    var values = new ArrayList<Object>();
    int read = Math.min(node.size(), most);
    for (int i = 0; i < read; i++) {
      element.read(node.get(i), JsonPointer.element(pointer, i), faults).ifPresent(values::add);
    }
    return Optional.of(List.copyOf(values));
  }

  @Override
  public String accepted() {
    return "a list of " + fewest + " to " + most + " elements";
  }

  @Override
  public Map<String, Object> schema(SchemaComponents components) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("type", "array");
    schema.put("minItems", fewest);
    schema.put("maxItems", most);
    schema.put("items", element.schema(components));
    return schema;
  }
}
