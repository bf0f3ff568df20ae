package lodeswing.web.body;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * An object whose member names are chosen by the sender and whose values have one shape.
 *
 * @param entry what each value may be
 * @param most largest number of members
 * @param longestName most characters of a name; names are letters, digits, hyphen and underscore
 */
public record MapShape(Shape entry, int most, int longestName) implements Shape {

  @Override
  public Optional<Object> read(JsonNode node, String pointer, FaultList faults) {
    if (!node.isObject() || node.size() > most) {
      String sent = node.isObject() ? node.size() + " members" : Quoted.kind(node);
      faults.add(pointer, "must be " + accepted() + ", not " + sent);
      return Optional.empty();
    }
    var values = new LinkedHashMap<String, Object>();
    for (var sent : node.properties()) {
      String at = JsonPointer.member(pointer, sent.getKey());
      if (!sent.getKey().matches(pattern())) {
        faults.add(at, "must be named by 1 to " + longestName + " letters, digits, - or _");
      }
      entry.read(sent.getValue(), at, faults).ifPresent(v -> values.put(sent.getKey(), v));
    }
    return Optional.of(new Body(pointer, values));
  }

  private String pattern() {
    return "[\\p{L}\\p{N}_-]{1," + longestName + "}";
  }

  @Override
  public String accepted() {
    return "an object with at most " + most + " members";
  }

  @Override
  public Map<String, Object> schema(SchemaComponents components) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("type", "object");
    schema.put("maxProperties", most);
    schema.put("additionalProperties", entry.schema(components));
    return schema;
  }
}
