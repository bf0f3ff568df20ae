package lodeswing.web.body;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/** True or false. */
public record FlagShape() implements Shape {

  @Override
  public Optional<Object> read(JsonNode node, String pointer, FaultList faults) {
    if (node.isBoolean()) {
      return Optional.of(node.booleanValue());
    }
    faults.add(pointer, "must be " + accepted() + ", not " + Quoted.kind(node));
    return Optional.empty();
  }

  @Override
  public String accepted() {
    return "true or false";
  }

  @Override
  public Map<String, Object> schema(SchemaComponents components) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("type", "boolean");
    return schema;
  }
}
