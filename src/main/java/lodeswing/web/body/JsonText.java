package lodeswing.web.body;

import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Writes values in the one canonical JSON form: no spaces, members in order, shortest numbers. */
final class JsonText {
  private JsonText() {}

  static String write(Object value) {
    var out = new StringBuilder();
    append(out, value);
    return out.toString();
  }

  private static void append(StringBuilder out, Object value) {
    if (value instanceof Body body) {
      String gap = "";
      out.append('{');
      for (var member : body.members().entrySet()) {
        out.append(gap);
        quote(out, member.getKey());
        out.append(':');
        append(out, member.getValue());
        gap = ",";
      }
      out.append('}');
    } else if (value instanceof List<?> list) {
      String gap = "";
      out.append('[');
      for (Object element : list) {
        out.append(gap);
        append(out, element);
        gap = ",";
      }
      out.append(']');
    } else if (value instanceof Double number) {
      out.append(Numbers.shortest(number));
    } else if (value instanceof Optional<?> entry) {
      entry.ifPresentOrElse(known -> append(out, known), () -> out.append("null"));
    } else if (value instanceof Boolean flag) {
      out.append(flag ? "true" : "false");
    } else {
      quote(out, value.toString());
    }
  }

  private static void quote(StringBuilder out, String text) {
    out.append('"');
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '"' || c == '\\') {
        out.append('\\').append(c);
      } else if (c < ' ') {
        out.append(String.format(Locale.ROOT, "\\u%04x", (int) c));
      } else {
        out.append(c);
      }
    }
    out.append('"');
  }
}
