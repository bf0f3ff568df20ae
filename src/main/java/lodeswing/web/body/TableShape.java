package lodeswing.web.body;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A table as a text of many lines, such as CSV; what stands in it is read by {@link ColumnTable}.
 *
 * @param longest most characters (UTF-16 units)
 */
public record TableShape(int longest) implements Shape {

  @Override
  public Optional<Object> read(JsonNode node, String pointer, FaultList faults) {
    if (!node.isString()) {
      faults.add(pointer, "must be " + accepted() + ", not " + Quoted.kind(node));
      return Optional.empty();
    }
    String text = node.stringValue();
    if (text.isBlank() || text.length() > longest) {
      faults.add(pointer, "must be " + accepted() + ", not " + text.length() + " characters");
      return Optional.empty();
    }
    return Optional.of(text);
  }

  @Override
  public String accepted() {
    return "a table of lines, of 1 to " + longest + " characters";
  }

  @Override
  public Map<String, Object> schema(SchemaComponents components) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("type", "string");
    schema.put("minLength", 1);
    schema.put("maxLength", longest);
    return schema;
  }
}
