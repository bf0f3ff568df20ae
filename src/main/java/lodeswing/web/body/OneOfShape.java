package lodeswing.web.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * One of several objects, told apart by a member that names the kind.
 *
 * @param name the name of its schema
 * @param description what it is, in plain words
 * @param discriminator the member that names the kind
 * @param kinds the objects by the discriminator's value; each has the discriminator as a member
 * @param byMember objects told by the presence of a member instead, by that member's name
 */
public record OneOfShape(
    String name,
    String description,
    String discriminator,
    Map<String, ObjectShape> kinds,
    Map<String, ObjectShape> byMember)
    implements RecordShape {

  public OneOfShape {
    kinds = Collections.unmodifiableMap(new LinkedHashMap<>(kinds));
    byMember = Collections.unmodifiableMap(new LinkedHashMap<>(byMember));
  }

  @Override
  public Optional<Object> read(JsonNode node, String pointer, FaultList faults) {
    if (!node.isObject()) {
      faults.add(pointer, "must be " + accepted() + ", not " + Quoted.kind(node));
      return Optional.empty();
    }
    for (var marked : byMember.entrySet()) {
      if (node.has(marked.getKey())) {
        return marked.getValue().read(node, pointer, faults);
      }
    }
    var words = new ChoiceShape(new ArrayList<>(kinds.keySet()));
    String at = JsonPointer.member(pointer, discriminator);
    JsonNode kind = node.get(discriminator);
    if (kind == null) {
      String instead =
          byMember.isEmpty() ? "" : " (or give " + String.join(" or ", byMember.keySet()) + ")";
      faults.add(at, "is missing; must be " + words.accepted() + instead);
      return Optional.empty();
    }
    return words
        .read(kind, at, faults)
        .flatMap(word -> Optional.ofNullable(kinds.get(word)))
        .flatMap(shape -> shape.read(node, pointer, faults));
  }

  @Override
  public ObjectShape shapeOf(Body body) {
    ObjectShape shape = kinds.get(body.findText(discriminator).orElse(""));
    if (shape == null) {
      throw new IllegalStateException("no " + discriminator + " at " + body.pointer());
    }
    return shape;
  }

  @Override
  public String accepted() {
    return "an object whose " + discriminator + " is one of " + String.join(", ", kinds.keySet());
  }

  @Override
  public Map<String, Object> schema(SchemaComponents components) {
    return components.reference(name, () -> full(components));
  }

  private Map<String, Object> full(SchemaComponents components) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("description", description);
    var choices = new ArrayList<Object>();
    var mapping = new LinkedHashMap<String, Object>();
    kinds.forEach(
        (word, shape) -> {
          Map<String, Object> reference = shape.schema(components);
          choices.add(reference);
          mapping.put(word, String.valueOf(reference.get("$ref")));
        });
    byMember.values().forEach(shape -> choices.add(shape.schema(components)));
    schema.put("oneOf", List.copyOf(choices));
    if (byMember.isEmpty()) {
      schema.put("discriminator", Map.of("propertyName", discriminator, "mapping", mapping));
    }
    return schema;
  }
}
