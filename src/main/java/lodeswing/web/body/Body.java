package lodeswing.web.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A JSON object that a shape has read: known members only, in the shape's order, defaults filled
 * in.
 *
 * <p>Immutable. The {@code number}, {@code text}, {@code object} ... methods throw {@link
 * IllegalStateException} for a member that is not there: ask {@link #has} or the {@code find}
 * methods where it may be missing.
 */
public final class Body {
  private final String pointer;
  private final Map<String, Object> members;

  Body(String pointer, Map<String, Object> members) {
    this.pointer = pointer;
    this.members = Collections.unmodifiableMap(new LinkedHashMap<>(members));
  }

  /**
   * An object made from members: {@code Double}, {@code String}, {@code Boolean}, lists, bodies. An
   * empty {@code Optional} in a list stands for an entry that is not known, written as null.
   */
  public static Body of(Map<String, Object> members) {
    return new Body("", members);
  }

  /** JSON Pointer of this object in the request. */
  public String pointer() {
    return pointer;
  }

  /** JSON Pointer of one of its members. */
  public String pointer(String member) {
    return JsonPointer.member(pointer, member);
  }

  /** The members in order; values as {@link Shape} names them. */
  public Map<String, Object> members() {
    return members;
  }

  /** Whether a member is there. */
  public boolean has(String name) {
    return members.containsKey(name);
  }

  /** A number. */
  public double number(String name) {
    return findNumber(name).orElseThrow(() -> missing(name));
  }

  /** A number that may be missing. */
  public OptionalDouble findNumber(String name) {
    return members.get(name) instanceof Double value
        ? OptionalDouble.of(value)
        : OptionalDouble.empty();
  }

  /** A text. */
  public String text(String name) {
    return findText(name).orElseThrow(() -> missing(name));
  }

  /** A text that may be missing. */
  public Optional<String> findText(String name) {
    return members.get(name) instanceof String value ? Optional.of(value) : Optional.empty();
  }

  /** Whether a flag is there and true. */
  public boolean flag(String name) {
    return Boolean.TRUE.equals(members.get(name));
  }

  /** An object. */
  public Body object(String name) {
    return findObject(name).orElseThrow(() -> missing(name));
  }

  /** An object that may be missing. */
  public Optional<Body> findObject(String name) {
    return members.get(name) instanceof Body value ? Optional.of(value) : Optional.empty();
  }

  /** The objects of a list; none where the member is missing. */
  public List<Body> objects(String name) {
    return elements(name, Body.class);
  }

  /** The texts of a list; none where the member is missing. */
  public List<String> texts(String name) {
    return elements(name, String.class);
  }

  /** The numbers of a list; none where the member is missing. */
  public List<Double> numbers(String name) {
    return elements(name, Double.class);
  }

  private <T> List<T> elements(String name, Class<T> kind) {
    var found = new ArrayList<T>();
    if (members.get(name) instanceof List<?> values) {
      for (Object value : values) {
        found.add(kind.cast(value));
      }
    }
    return List.copyOf(found);
  }

  /** The same object with one member set, at its end where it is new. */
  public Body with(String name, Object value) {
    var changed = new LinkedHashMap<>(members);
    changed.put(name, value);
    return new Body(pointer, changed);
  }

  /** The same object without some members. */
  public Body without(String... names) {
    var changed = new LinkedHashMap<>(members);
    for (String name : names) {
      changed.remove(name);
    }
    return new Body(pointer, changed);
  }

  /** This object as JSON text without spaces, members in order, numbers as {@link Numbers} does. */
  public String toJson() {
    return JsonText.write(this);
  }

  /** This object as a tree that shapes can read again. */
  public ObjectNode toTree() {
    return (ObjectNode) tree(this);
  }

  private static JsonNode tree(Object value) {
    var nodes = JsonNodeFactory.instance;
    if (value instanceof Body body) {
      ObjectNode node = nodes.objectNode();
      body.members.forEach((name, member) -> node.set(name, tree(member)));
      return node;
    }
    if (value instanceof List<?> list) {
      var node = nodes.arrayNode();
      list.forEach(element -> node.add(tree(element)));
      return node;
    }
    if (value instanceof Double number) {
      return nodes.numberNode(number);
    }
    return value instanceof Boolean flag
        ? nodes.booleanNode(flag)
        : nodes.stringNode(value.toString());
  }

  private IllegalStateException missing(String name) {
    return new IllegalStateException("no member " + name + " at " + pointer);
  }
}
