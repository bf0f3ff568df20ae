package lodeswing.web.openapi;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.node.MissingNode;

/**
 * Whether one contract grew out of another, so that every client of the earlier is served by the
 * later: what was taken is still taken, and what was answered is still answered.
 *
 * <p>New operations, parameters, members, forms and words of an answer are growth. A member that an
 * answer no longer has, or no longer always has, a type that it never had, an operation's other
 * name, and a request that is no longer taken, are breaks.
 */
final class ContractGrowth {

  /** Which way a document travels: what is sent must stay accepted, what is read must stay read. */
  private enum Way {
    SENT,
    READ
  }

  private static final Set<String> METHODS =
      Set.of("get", "post", "delete", "put", "patch", "head");

  private final JsonNode earlier;
  private final JsonNode later;
  private final List<String> breaks = new ArrayList<>();
  private final Set<String> compared = new TreeSet<>();

  private ContractGrowth(JsonNode earlier, JsonNode later) {
    this.earlier = earlier;
    this.later = later;
  }

  /** What breaks clients of the earlier contract, each with its place; empty where nothing does. */
  static List<String> breaks(JsonNode earlier, JsonNode later) {
    var growth = new ContractGrowth(earlier, later);
    for (String path : earlier.path("paths").propertyNames()) {
      for (String method : earlier.path("paths").path(path).propertyNames()) {
        if (METHODS.contains(method)) {
          growth.operation(
              method + " " + path,
              earlier.path("paths").path(path).path(method),
              later.path("paths").path(path).path(method));
        }
      }
    }
    return List.copyOf(growth.breaks);
  }

  private void operation(String place, JsonNode was, JsonNode is) {
    if (is.isMissingNode()) {
      breaks.add(place + " is gone");
      return;
    }
    if (!was.path("operationId").equals(is.path("operationId"))) {
      breaks.add(place + " has another operationId");
    }
    Map<String, JsonNode> now = parameters(later, is);
    Map<String, JsonNode> before = parameters(earlier, was);
    before.forEach(
        (name, parameter) -> {
          JsonNode same = now.getOrDefault(name, MissingNode.getInstance());
          if (same.isMissingNode()) {
            breaks.add(place + " no longer takes " + name);
          } else {
            becameRequired(place + " " + name, parameter, same);
            schema(place + " " + name, Way.SENT, parameter.path("schema"), same.path("schema"));
          }
        });
    now.forEach(
        (name, parameter) -> {
          if (!before.containsKey(name) && parameter.path("required").booleanValue(false)) {
            breaks.add(place + " needs " + name);
          }
        });
    body(place, was.path("requestBody"), is.path("requestBody"));
    for (String status : was.path("responses").propertyNames()) {
      if (status.startsWith("2")) {
        answer(
            place + " " + status,
            was.path("responses").path(status),
            is.path("responses").path(status));
      }
    }
  }

  private void body(String place, JsonNode was, JsonNode is) {
    if (was.isMissingNode() && is.path("required").booleanValue(false)) {
      breaks.add(place + " needs a body");
    } else if (!was.isMissingNode()) {
      becameRequired(place + " body", was, is);
      content(place + " body", Way.SENT, was.path("content"), is.path("content"));
    }
  }

  private void answer(String place, JsonNode was, JsonNode is) {
    if (is.isMissingNode()) {
      breaks.add(place + " is no longer answered");
    } else {
      content(place, Way.READ, was.path("content"), is.path("content"));
    }
  }

  private void content(String place, Way way, JsonNode was, JsonNode is) {
    for (String form : was.propertyNames()) {
      if (!is.has(form)) {
        breaks.add(place + " has lost the form " + form);
      } else {
        schema(
            place + " " + form, way, was.path(form).path("schema"), is.path(form).path("schema"));
      }
    }
  }

  private void becameRequired(String place, JsonNode was, JsonNode is) {
    if (is.path("required").booleanValue(false) && !was.path("required").booleanValue(false)) {
      breaks.add(place + " became required");
    }
  }

  private void schema(String place, Way way, JsonNode wasWritten, JsonNode isWritten) {
    String reference = wasWritten.path("$ref").stringValue("");
    if (!reference.isEmpty()
        && !compared.add(way + reference + isWritten.path("$ref").stringValue(place))) {
      return;
    }
    JsonNode was = resolved(earlier, wasWritten);
    JsonNode is = resolved(later, isWritten);
    String named =
        reference.isEmpty() ? place : reference.substring(reference.lastIndexOf('/') + 1);
    types(named, way, was, is);
    if (way == Way.SENT) {
      narrowed(named, was, is);
    }
    members(named, way, was, is);
    if (was.has("items")) {
      schema(named + "[]", way, was.path("items"), is.path("items"));
    }
    for (String kind : List.of("oneOf", "anyOf", "allOf")) {
      variants(named, way, was.path(kind), is.path(kind));
    }
  }

  private void types(String place, Way way, JsonNode was, JsonNode is) {
    Set<String> before = types(was);
    Set<String> now = types(is);
    // Any type at all is what a schema without one stands for.
    boolean kept =
        way == Way.SENT
            ? now.isEmpty() || (!before.isEmpty() && now.containsAll(before))
            : before.isEmpty() || (!now.isEmpty() && before.containsAll(now));
    if (!kept) {
      breaks.add(place + " was " + before + " and is " + now);
    }
  }

  /** An integer is a number too. */
  private static Set<String> types(JsonNode schema) {
    Set<String> types = new TreeSet<>();
    JsonNode type = schema.path("type");
    if (type.isArray()) {
      type.forEach(one -> types.add(one.stringValue()));
    } else if (type.isString()) {
      types.add(type.stringValue());
    }
    if (types.contains("number")) {
      types.add("integer");
    }
    return types;
  }

  private void narrowed(String place, JsonNode was, JsonNode is) {
    for (String least : List.of("minimum", "exclusiveMinimum", "minLength", "minItems")) {
      if (is.has(least)
          && is.path(least).doubleValue() > was.path(least).doubleValue(Double.NEGATIVE_INFINITY)) {
        breaks.add(place + " has a greater " + least);
      }
    }
    for (String most : List.of("maximum", "exclusiveMaximum", "maxLength", "maxItems")) {
      if (is.has(most)
          && is.path(most).doubleValue() < was.path(most).doubleValue(Double.POSITIVE_INFINITY)) {
        breaks.add(place + " has a smaller " + most);
      }
    }
    if (is.has("enum")) {
      Set<String> now = texts(is.path("enum"));
      Set<String> before = texts(was.path("enum"));
      if (before.isEmpty() || !now.containsAll(before)) {
        breaks.add(place + " no longer takes every word of " + before);
      }
    }
    if (is.has("pattern") && !is.path("pattern").equals(was.path("pattern"))) {
      breaks.add(place + " has another pattern");
    }
  }

  private void members(String place, Way way, JsonNode was, JsonNode is) {
    Set<String> requiredBefore = texts(was.path("required"));
    Set<String> requiredNow = texts(is.path("required"));
    for (String name : was.path("properties").propertyNames()) {
      JsonNode member = is.path("properties").path(name);
      if (member.isMissingNode()) {
        breaks.add(place + " has lost " + name);
      } else {
        schema(place + "." + name, way, was.path("properties").path(name), member);
      }
    }
    Set<String> changed = new TreeSet<>(way == Way.SENT ? requiredNow : requiredBefore);
    changed.removeAll(way == Way.SENT ? requiredBefore : requiredNow);
    changed.forEach(
        name ->
            breaks.add(place + (way == Way.SENT ? " needs " : " does not always have ") + name));
  }

  /** Variants keep their order; new ones come after. */
  private void variants(String place, Way way, JsonNode was, JsonNode is) {
    for (int index = 0; index < was.size(); index++) {
      if (index < is.size()) {
        schema(place + "/" + index, way, was.get(index), is.get(index));
      } else if (way == Way.SENT) {
        breaks.add(place + " has lost a variant");
      }
    }
  }

  private static Set<String> texts(JsonNode list) {
    Set<String> texts = new TreeSet<>();
    list.forEach(one -> texts.add(one.asString()));
    return texts;
  }

  private static Map<String, JsonNode> parameters(JsonNode contract, JsonNode operation) {
    var parameters = new LinkedHashMap<String, JsonNode>();
    for (JsonNode written : operation.path("parameters")) {
      JsonNode parameter = resolved(contract, written);
      parameters.put(
          parameter.path("in").asString() + " " + parameter.path("name").asString(), parameter);
    }
    return parameters;
  }

  private static JsonNode resolved(JsonNode contract, JsonNode written) {
    String reference = written.path("$ref").stringValue("");
    return reference.isEmpty() ? written : contract.at(reference.substring(1));
  }
}
