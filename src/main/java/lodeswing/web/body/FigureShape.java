package lodeswing.web.body;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A figure of which only its owner knows whether it is a number or a word.
 *
 * @param number what a number may be
 * @param text what a text may be
 */
public record FigureShape(NumberShape number, TextShape text) implements Shape {

  @Override
  public Optional<Object> read(JsonNode node, String pointer, FaultList faults) {
    if (node.isNumber()) {
      return number.read(node, pointer, faults);
    }
    if (node.isString()) {
      return text.read(node, pointer, faults);
    }
    faults.add(pointer, "must be " + accepted() + ", not " + Quoted.kind(node));
    return Optional.empty();
  }

  @Override
  public String accepted() {
    return number.accepted() + " or " + text.accepted();
  }

  @Override
  public Map<String, Object> schema(SchemaComponents components) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("anyOf", List.of(number.schema(components), text.schema(components)));
    return schema;
  }
}
