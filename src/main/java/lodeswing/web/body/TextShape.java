package lodeswing.web.body;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import tools.jackson.databind.JsonNode;

/**
 * A text on one line that shows something: no control characters, no unpaired surrogates, not
 * blanks alone.
 *
 * @param longest most characters (code points); at least one is needed
 */
public record TextShape(int longest) implements Shape {

  @Override
  public Optional<Object> read(JsonNode node, String pointer, FaultList faults) {
    if (!node.isString()) {
      faults.add(pointer, "must be " + accepted() + ", not " + Quoted.kind(node));
      return Optional.empty();
    }
    String text = node.stringValue();
    int length = text.codePointCount(0, text.length());
    if (length < 1 || length > longest) {
      faults.add(pointer, "must be " + accepted() + ", not " + length + " characters");
      return Optional.empty();
    }
    if (text.codePoints().noneMatch(TextShape::visible)) {
      faults.add(pointer, "must be " + accepted() + ", not blank");
      return Optional.empty();
    }
    if (text.codePoints().anyMatch(TextShape::unprintable)) {
      faults.add(pointer, "must be " + accepted() + ", without control characters");
      return Optional.empty();
    }
    return Optional.of(text);
  }

  private static boolean visible(int c) {
    return !Character.isWhitespace(c)
        && !Character.isSpaceChar(c)
        && Character.getType(c) != Character.FORMAT;
  }

  private static boolean unprintable(int c) {
    int type = Character.getType(c);
    return type == Character.CONTROL
        || type == Character.SURROGATE
        || type == Character.LINE_SEPARATOR
        || type == Character.PARAGRAPH_SEPARATOR
        || type == Character.UNASSIGNED;
  }

  @Override
  public String accepted() {
    return "a text of 1 to " + longest + " characters";
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
