package lodeswing.web.representation;

import java.math.BigInteger;
import java.util.Arrays;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * One range of bytes (RFC 9110, section 14.1.2); several at once are answered with the whole.
 *
 * @param first index of the first byte
 * @param end index after the last byte; not after {@code first} where the range lies outside
 */
record ByteRange(int first, int end) {

  private static final long FARTHEST = Long.MAX_VALUE - 1;

  private static final Pattern SINGLE = Pattern.compile("(?i)bytes=\\s*(\\d*)-(\\d*)\\s*");

  /** The range within a length; nothing where the field is to be ignored. */
  static Optional<ByteRange> parse(String field, int length) {
    Matcher single = SINGLE.matcher(field);
    if (!single.matches()) {
      return Optional.empty();
    }
    String from = single.group(1);
    String to = single.group(2);
    if (from.isEmpty() && to.isEmpty()) {
      return Optional.empty();
    }
    if (from.isEmpty()) {
      long suffix = Math.min(number(to), length);
      return Optional.of(new ByteRange((int) (length - suffix), length));
    }
    long first = number(from);
    long last = to.isEmpty() ? FARTHEST : number(to);
    if (last < first) {
      return Optional.empty();
    }
    return Optional.of(
        new ByteRange((int) Math.min(first, length), (int) Math.min(last + 1, length)));
  }

  /** A number of any length; one beyond all content stands for all such. */
  private static long number(String digits) {
    return new BigInteger(digits).min(BigInteger.valueOf(FARTHEST)).longValue();
  }

  boolean isEmpty() {
    return end <= first;
  }

  byte[] of(byte[] whole) {
    return Arrays.copyOfRange(whole, first, end);
  }

  String contentRange(int length) {
    return "bytes " + first + "-" + (end - 1) + "/" + length;
  }
}
