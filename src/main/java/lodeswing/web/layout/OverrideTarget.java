package lodeswing.web.layout;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Pattern;
import lodeswing.web.body.Body;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.JsonPointer;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.RecordShape;
import lodeswing.web.body.Shape;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.JsonNodeFactory;
import tools.jackson.databind.node.ObjectNode;

/**
 * A member of a canonical layout that a query parameter may change.
 *
 * @param path the members and list places that lead to its object
 * @param owner the shape of its object
 * @param member its name
 */
record OverrideTarget(List<Object> path, ObjectShape owner, String member) {
  private static final Pattern NUMBER =
      Pattern.compile("[+-]?\\d{1,40}([.,]\\d{0,40})?([eE][+-]?\\d{1,3})?");
  private static final Map<String, String> SINGULAR = Map.of("magnets", "magnet", "parts", "part");
  private static final List<String> BARE = List.of("pendulum.", "damping.");

  /** What the names begin with that change every magnet. */
  static final String EVERY = "magnet.all.";

  OverrideTarget {
    path = List.copyOf(path);
  }

  /** Every name with what it changes. */
  static Map<String, List<OverrideTarget>> of(Body canonical) {
    var walk = new Walk();
    walk.object(LayoutShapes.FIGURES.shapeOf(canonical), Optional.of(canonical), "", List.of());
    var named = new LinkedHashMap<>(walk.named);
    walk.named.forEach(
        (name, targets) ->
            BARE.stream()
                .filter(name::startsWith)
                .forEach(bare -> named.putIfAbsent(name.substring(bare.length()), targets)));
    return named;
  }

  /** JSON Pointer of the member. */
  String pointer() {
    String pointer = "";
    for (Object step : path) {
      pointer =
          step instanceof Integer index
              ? JsonPointer.element(pointer, index)
              : JsonPointer.member(pointer, step.toString());
    }
    return JsonPointer.member(pointer, member);
  }

  /** What the member may be. */
  Shape shape() {
    return owner.shape(member);
  }

  /** JSON Pointer of its object. */
  String ownerPointer() {
    String pointer = pointer();
    return pointer.substring(0, pointer.lastIndexOf('/'));
  }

  /** Drops what cannot stand beside the member from a tree of the layout. */
  void dropRivals(ObjectNode layout) {
    ObjectNode object = object(layout);
    owner.rivals(member).forEach(object::remove);
  }

  /** Sets the member in a tree of the layout. */
  void set(ObjectNode layout, String text) {
    ObjectNode object = object(layout);
    fillConstants(object);
    object.set(member, value(text.strip()));
  }

  private ObjectNode object(ObjectNode layout) {
    JsonNode node = layout;
    for (Object step : path) {
      node = step instanceof Integer index ? node.get(index) : child((ObjectNode) node, step);
    }
    return (ObjectNode) node;
  }

  private static JsonNode child(ObjectNode node, Object name) {
    JsonNode child = node.get(name.toString());
    return child == null ? node.putObject(name.toString()) : child;
  }

  /** An object that begins to exist needs the words that have no alternative. */
  private void fillConstants(ObjectNode object) {
    owner
        .members()
        .forEach(
            (name, about) -> {
              if (isConstant(about.shape()) && !object.has(name)) {
                object.put(name, ((ChoiceShape) about.shape()).words().get(0));
              }
            });
  }

  /** A number as a query writes it, with a decimal point or comma; nothing where it is none. */
  static Optional<Double> number(String text) {
    return NUMBER.matcher(text).matches()
        ? Optional.of(Double.parseDouble(text.replace(',', '.')))
        : Optional.empty();
  }

  private JsonNode value(String text) {
    Shape shape = owner.shape(member);
    Optional<Double> number = number(text);
    if (shape instanceof NumberShape && number.isPresent()) {
      return JsonNodeFactory.instance.numberNode(number.get());
    }
    if (shape instanceof FlagShape && (text.equals("true") || text.equals("false"))) {
      return JsonNodeFactory.instance.booleanNode(text.equals("true"));
    }
    return JsonNodeFactory.instance.stringNode(text);
  }

  private static boolean isConstant(Shape shape) {
    return shape instanceof ChoiceShape choice && choice.words().size() == 1;
  }

  /** Goes through a layout along its shape. */
  private static final class Walk {
    private final Map<String, List<OverrideTarget>> named = new LinkedHashMap<>();

    private void object(ObjectShape shape, Optional<Body> body, String prefix, List<Object> path) {
      for (String name : shape.names()) {
        Shape member = shape.shape(name);
        if (member instanceof ListShape list && list.element() instanceof RecordShape element) {
          elements(element, body.map(b -> b.objects(name)).orElse(List.of()), prefix, path, name);
        } else if (member instanceof RecordShape kinds) {
          Optional<Body> inner = body.flatMap(b -> b.findObject(name));
          Optional<ObjectShape> known =
              kinds instanceof ObjectShape plain ? Optional.of(plain) : inner.map(kinds::shapeOf);
          known.ifPresent(k -> object(k, inner, prefix + name + ".", then(path, name)));
        } else if (!isConstant(member) && !(member instanceof ListShape)) {
          add(prefix + name, new OverrideTarget(path, shape, name));
        }
      }
    }

    private void elements(
        RecordShape shape, List<Body> bodies, String prefix, List<Object> path, String name) {
      String singular = SINGULAR.getOrDefault(name, name);
      for (int i = 0; i < bodies.size(); i++) {
        Body body = bodies.get(i);
        object(
            shape.shapeOf(body),
            Optional.of(body),
            prefix + singular + "." + (i + 1) + ".",
            then(then(path, name), i));
      }
    }

    private void add(String name, OverrideTarget target) {
      named.computeIfAbsent(name, n -> new ArrayList<>()).add(target);
      if (name.startsWith("magnet.")) {
        String every = EVERY + target.member();
        named.computeIfAbsent(every, n -> new ArrayList<>()).add(target);
      }
    }

    private static List<Object> then(List<Object> path, Object step) {
      var longer = new ArrayList<>(path);
      longer.add(step);
      return longer;
    }
  }
}
