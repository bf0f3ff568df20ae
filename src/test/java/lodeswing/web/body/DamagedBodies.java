package lodeswing.web.body;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Random;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Bodies with one to four injuries each, drawn from a seed. */
public final class DamagedBodies {
  private static final Pattern NUMBER = Pattern.compile("(?<=[:\\[,])-?\\d+(\\.\\d+)?");
  private static final Pattern MEMBER = Pattern.compile("\"[A-Za-z0-9]+\":[^,\\[\\]{}]+,");
  private static final Pattern VALUE = Pattern.compile("(?<=:)(\"[^\"]*\"|-?\\d+(\\.\\d+)?)");
  private static final List<String> EXTREMES =
      List.of(
          "1e308",
          "-1e308",
          "1e999",
          "5e-324",
          "-0",
          "0",
          "1e-300",
          "9".repeat(90),
          "NaN",
          "-Infinity",
          "9007199254740993",
          "1".repeat(2000),
          "0.1e-9999",
          "360",
          "1e9");
  private static final List<String> OTHER_TYPES =
      List.of(
          "null",
          "true",
          "[]",
          "{}",
          "[[1]]",
          "\"\"",
          "{\"kind\":\"cord\"}",
          "\"\\u0000\"",
          "\"\\ud800\"",
          "17");

  private final List<String> whole;
  private final Random random;

  /**
   * Damaged bodies.
   *
   * @param whole the bodies before they are damaged
   * @param seed gives the same injuries again
   */
  public DamagedBodies(List<String> whole, long seed) {
    this.whole = List.copyOf(whole);
    this.random = new Random(seed);
  }

  /** One damaged body. */
  public byte[] next() {
    String body = whole.get(random.nextInt(whole.size()));
    int injuries = 1 + random.nextInt(4);
    for (int i = 0; i < injuries; i++) {
      body = injured(body);
    }
    byte[] bytes = body.getBytes(StandardCharsets.UTF_8);
    if (bytes.length > 0 && random.nextInt(4) == 0) {
      for (int i = 0; i < 1 + random.nextInt(3); i++) {
        bytes[random.nextInt(bytes.length)] ^= (byte) (1 << random.nextInt(8));
      }
    }
    return bytes;
  }

  private String injured(String body) {
    return switch (random.nextInt(9)) {
      case 0 -> replaced(body, NUMBER, EXTREMES.get(random.nextInt(EXTREMES.size())));
      case 1 -> replaced(body, VALUE, OTHER_TYPES.get(random.nextInt(OTHER_TYPES.size())));
      case 2 -> replaced(body, MEMBER, "");
      case 3 -> replaced(body, MEMBER, "$0$0");
      case 4 -> replaced(body, VALUE, "[".repeat(40) + "]".repeat(40));
      case 5 -> replaced(body, VALUE, "\"" + "x".repeat(1 + random.nextInt(30_000)) + "\"");
      case 6 -> replaced(body, NUMBER, String.valueOf(random.nextInt(2001) - 1000));
      case 7 -> body.substring(0, random.nextInt(body.length() + 1));
      default -> body.replaceFirst("\"(\\w)(\\w+)\":", "\"$2$1\":");
    };
  }

  private String replaced(String body, Pattern pattern, String replacement) {
    long count = pattern.matcher(body).results().count();
    if (count == 0) {
      return body;
    }
    long chosen = random.nextLong(count);
    var out = new StringBuilder();
    Matcher matcher = pattern.matcher(body);
    for (long i = 0; matcher.find(); i++) {
      matcher.appendReplacement(
          out, i == chosen ? replacement : Matcher.quoteReplacement(matcher.group()));
    }
    return matcher.appendTail(out).toString();
  }
}
