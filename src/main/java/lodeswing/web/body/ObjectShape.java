package lodeswing.web.body;

import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;

/** An object with named members; any other member is refused. */
public final class ObjectShape implements RecordShape {
  private final String name;
  private final String description;
  private final Map<String, Member> members;
  private final List<List<List<String>>> choices;
  private final boolean open;

  private ObjectShape(Builder builder) {
    name = builder.name;
    description = builder.description;
    members = new LinkedHashMap<>(builder.members);
    choices = List.copyOf(builder.choices);
    open = builder.open;
  }

  /**
   * Begins an object's shape.
   *
   * @param name the name of its schema
   * @param description what it is, in plain words
   */
  public static Builder named(String name, String description) {
    return new Builder(name, description);
  }

  @Override
  public String name() {
    return name;
  }

  /** The members by name, in order. */
  public Map<String, Member> members() {
    return Collections.unmodifiableMap(members);
  }

  /** The names of the members, in order. */
  public List<String> names() {
    return List.copyOf(members.keySet());
  }

  /** What a member may be. */
  public Shape shape(String member) {
    Member known = members.get(member);
    if (known == null) {
      throw new IllegalArgumentException(name + " has no member " + member);
    }
    return known.shape();
  }

  /** The members that cannot stand beside the named one. */
  public Set<String> rivals(String member) {
    var rivals = new TreeSet<String>();
    for (List<List<String>> choice : choices) {
      if (choice.stream().anyMatch(side -> side.contains(member))) {
        choice.stream().filter(side -> !side.contains(member)).forEach(rivals::addAll);
      }
    }
    return rivals;
  }

  @Override
  public ObjectShape shapeOf(Body body) {
    return this;
  }

  @Override
  public Optional<Object> read(JsonNode node, String pointer, FaultList faults) {
    if (!node.isObject()) {
      faults.add(pointer, "must be " + accepted() + ", not " + Quoted.kind(node));
      return Optional.empty();
    }
    var values = new LinkedHashMap<String, Object>();
    for (Member member : members.values()) {
      JsonNode sent = node.get(member.name());
      String at = JsonPointer.member(pointer, member.name());
      if (sent != null) {
        member.shape().read(sent, at, faults).ifPresent(v -> values.put(member.name(), v));
      } else if (member.fallback().isPresent()) {
        values.put(member.name(), member.fallback().get());
      } else if (member.required()) {
        faults.add(at, "is missing; must be " + member.shape().accepted());
      }
    }
    for (String sent : node.propertyNames()) {
      if (!members.containsKey(sent)) {
        faults.add(JsonPointer.member(pointer, sent), unknown(sent));
      }
    }
    for (List<List<String>> choice : choices) {
      checkChoice(choice, node, pointer, faults);
    }
    return Optional.of(new Body(pointer, values));
  }

  private String unknown(String sent) {
    return "is not known here; "
        + NearestName.find(sent, members.keySet())
            .map(near -> "did you mean \"" + near + "\"?")
            .orElse("known are " + String.join(", ", members.keySet()));
  }

  private static void checkChoice(
      List<List<String>> choice, JsonNode node, String pointer, FaultList faults) {
    long used = choice.stream().filter(side -> side.stream().anyMatch(node::has)).count();
    if (used == 1) {
      return;
    }
    String sides =
        String.join(" or ", choice.stream().map(side -> String.join("/", side)).toList());
    faults.add(
        pointer, used == 0 ? "needs " + sides : "has more than one of " + sides + "; keep one");
  }

  @Override
  public String accepted() {
    return "an object with " + String.join(", ", required());
  }

  private List<String> required() {
    var required = new ArrayList<String>();
    for (Member member : members.values()) {
      if (member.required()) {
        required.add(member.name());
      }
    }
    return required.isEmpty() ? List.of("members") : required;
  }

  @Override
  public Map<String, Object> schema(SchemaComponents components) {
    return components.reference(name, () -> full(components));
  }

  private Map<String, Object> full(SchemaComponents components) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("type", "object");
    schema.put("description", description);
    List<String> required =
        members.values().stream().filter(Member::required).map(Member::name).toList();
    if (!required.isEmpty()) {
      schema.put("required", required);
    }
    if (!open) {
      schema.put("additionalProperties", false);
    }
    var properties = new LinkedHashMap<String, Object>();
    for (Member member : members.values()) {
      properties.put(member.name(), member.schema(components));
    }
    schema.put("properties", properties);
    if (!choices.isEmpty()) {
      schema.put("allOf", choices.stream().map(ObjectShape::choiceSchema).toList());
    }
    return schema;
  }

  private static Map<String, Object> choiceSchema(List<List<String>> choice) {
    var sides = new ArrayList<Object>();
    for (List<String> side : choice) {
      var needs = side.stream().map(n -> Map.<String, Object>of("required", List.of(n))).toList();
      sides.add(needs.size() == 1 ? needs.get(0) : Map.of("anyOf", needs));
    }
    return Map.of("oneOf", sides);
  }

  /**
   * One member of an object.
   *
   * @param name its name
   * @param shape what it may be
   * @param required whether it must be there
   * @param fallback the value where it is left out
   * @param description what it means
   */
  public record Member(
      String name, Shape shape, boolean required, Optional<Object> fallback, String description) {

    Map<String, Object> schema(SchemaComponents components) {
      Map<String, Object> schema = shape.schema(components);
      schema.put("description", description);
      fallback
          .filter(value -> !(value instanceof List<?>))
          .ifPresent(value -> schema.put("default", value));
      return schema;
    }
  }

  /** Builds an object's shape, member by member in the order in which they are written. */
  public static final class Builder {
    private final String name;
    private final String description;
    private final Map<String, Member> members = new LinkedHashMap<>();
    private final List<List<List<String>>> choices = new ArrayList<>();

    private boolean open;

    private Builder(String name, String description) {
      this.name = name;
      this.description = description;
    }

    /** Adds a member that must be there. */
    public Builder required(String member, Shape shape, String text) {
      return add(new Member(member, shape, true, Optional.empty(), text));
    }

    /** Adds a member that may be left out. */
    public Builder optional(String member, Shape shape, String text) {
      return add(new Member(member, shape, false, Optional.empty(), text));
    }

    /** Adds a member that has a value where it is left out. */
    public Builder withDefault(String member, Shape shape, Object fallback, String text) {
      return add(new Member(member, shape, false, Optional.of(fallback), text));
    }

    /** Demands members of exactly one of the sides. */
    @SafeVarargs
    @SuppressWarnings("varargs")
    public final Builder exactlyOneOf(List<String>... sides) {
      choices.add(List.of(sides));
      return this;
    }

    private Builder add(Member member) {
      if (members.put(member.name(), member) != null) {
        throw new IllegalStateException("member twice: " + member.name());
      }
      return this;
    }

    /** Lets the schema allow further members: for answers, which may grow. */
    public Builder open() {
      open = true;
      return this;
    }

    /** Adds every member of another shape. */
    public Builder membersOf(ObjectShape other) {
      other.members.values().forEach(this::add);
      choices.addAll(other.choices);
      return this;
    }

    /** The shape. */
    public ObjectShape build() {
      return new ObjectShape(this);
    }
  }
}
