package lodeswing.web.body;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A cell of an answer's table: a number, a text, a flag, or null where there is nothing to tell.
 */
public record CellShape() implements Shape {

  /** Never sent: tables are answers. */
  @Override
  public Optional<Object> read(JsonNode node, String pointer, FaultList faults) {
    faults.add(pointer, "must not be sent");
    return Optional.empty();
  }

  @Override
  public String accepted() {
    return "nothing";
  }

  @Override
  public Map<String, Object> schema(SchemaComponents components) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("type", List.of("number", "string", "boolean", "null"));
    return schema;
  }
}
