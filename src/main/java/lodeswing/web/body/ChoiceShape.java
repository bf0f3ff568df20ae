package lodeswing.web.body;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * One of several words.
 *
 * @param words the words, in the order they are shown
 */
public record ChoiceShape(List<String> words) implements Shape {

  public ChoiceShape {
    words = List.copyOf(words);
  }

  /** One of the given words. */
  public static ChoiceShape of(String... words) {
    return new ChoiceShape(List.of(words));
  }

  @Override
  public Optional<Object> read(JsonNode node, String pointer, FaultList faults) {
    if (node.isString() && words.contains(node.stringValue())) {
      return Optional.of(node.stringValue());
    }
    String meant =
        node.isString()
            ? NearestName.find(node.stringValue(), words)
                .filter(w -> words.size() > 1)
                .map(w -> "; did you mean \"" + w + "\"?")
                .orElse("")
            : "";
    faults.add(pointer, "must be " + accepted() + ", not " + Quoted.kind(node) + meant);
    return Optional.empty();
  }

  @Override
  public String accepted() {
    if (words.size() == 1) {
      return "\"" + words.get(0) + "\"";
    }
    return "one of \"" + String.join("\", \"", words) + "\"";
  }

  @Override
  public Map<String, Object> schema(SchemaComponents components) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("type", "string");
    schema.put("enum", words);
    return schema;
  }
}
