package lodeswing.web.body;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import tools.jackson.databind.JsonNode;

/**
 * A cell of an answer's table, or null where there is nothing to tell.
 *
 * @param types what it may be, as JSON Schema calls it
 */
public record CellShape(List<String> types) implements Shape {

  /** A number, a text or a flag. */
  public CellShape() {
    this(List.of("number", "string", "boolean"));
  }

  public CellShape {
    types = List.copyOf(types);
  }

  /** A number. */
  public static CellShape number() {
    return new CellShape(List.of("number"));
  }

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
    schema.put("type", Stream.concat(types.stream(), Stream.of("null")).toList());
    return schema;
  }
}
