package lodeswing.web.representation;

import java.nio.ByteBuffer;
import java.nio.CharBuffer;
import java.nio.charset.CharacterCodingException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.jspecify.annotations.Nullable;

/** A query string taken apart: names and their values in the order they came, UTF-8 only. */
final class RawQuery {

  private RawQuery() {}

  static Map<String, List<String>> parse(@Nullable String query) {
    var values = new LinkedHashMap<String, List<String>>();
    if (query == null) {
      return values;
    }
    for (String pair : query.split("&")) {
      if (pair.isEmpty()) {
        continue;
      }
      int equals = pair.indexOf('=');
      String name = decode(equals < 0 ? pair : pair.substring(0, equals));
      String value = equals < 0 ? "" : decode(pair.substring(equals + 1));
      values.computeIfAbsent(name, unused -> new ArrayList<>(1)).add(value);
    }
    return values;
  }

  private static String decode(String text) {
    ByteBuffer bytes = ByteBuffer.allocate(text.length() * 3);
    for (int i = 0; i < text.length(); i++) {
      char c = text.charAt(i);
      if (c == '%') {
        int high = i + 2 < text.length() ? Character.digit(text.charAt(i + 1), 16) : -1;
        int low = i + 2 < text.length() ? Character.digit(text.charAt(i + 2), 16) : -1;
        if (high < 0 || low < 0) {
          throw malformed(text);
        }
        bytes.put((byte) (high << 4 | low));
        i += 2;
      } else {
        bytes.put(c == '+' ? new byte[] {' '} : String.valueOf(c).getBytes(StandardCharsets.UTF_8));
      }
    }
    try {
      CharBuffer decoded = StandardCharsets.UTF_8.newDecoder().decode(bytes.flip());
      return decoded.toString();
    } catch (CharacterCodingException e) {
      throw malformed(text);
    }
  }

  private static ProblemException malformed(String text) {
    return new ProblemException(
        ProblemCode.MALFORMED_REQUEST,
        "The query cannot be decoded: percent-encode it as UTF-8.",
        List.of(new Fault("?", "cannot be decoded: " + text)));
  }
}
