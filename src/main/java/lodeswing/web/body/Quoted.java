package lodeswing.web.body;

import tools.jackson.databind.JsonNode;

/** Repeats what was sent, shortened and without anything that could disturb a line of text. */
final class Quoted {
  private static final int SHOWN = 40;

  private Quoted() {}

  /** A text in quotation marks. */
  static String text(String text) {
    var out = new StringBuilder("\"");
    int end = Math.min(text.length(), SHOWN);
    if (end < text.length() && Character.isHighSurrogate(text.charAt(end - 1))) {
      end--;
    }
    text.substring(0, end)
        .codePoints()
        .forEach(
            c -> {
              boolean plain = !Character.isISOControl(c) && Character.isDefined(c);
              boolean pair = c >= Character.MIN_SURROGATE && c <= Character.MAX_SURROGATE;
              out.appendCodePoint(plain && !pair ? c : '?');
            });
    return out.append(end < text.length() ? "…\"" : "\"").toString();
  }

  /** What a JSON value is, for a sentence that ends in "not ...". */
  static String kind(JsonNode node) {
    if (node.isNull()) {
      return "null (leave the member out instead)";
    }
    if (node.isNumber()) {
      return "the number " + Numbers.shortest(node.doubleValue());
    }
    if (node.isString()) {
      return "the text " + text(node.stringValue());
    }
    if (node.isBoolean()) {
      return node.booleanValue() ? "true" : "false";
    }
    return node.isArray() ? "a list" : "an object";
  }
}
