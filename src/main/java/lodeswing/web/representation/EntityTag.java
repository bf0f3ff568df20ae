package lodeswing.web.representation;

import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.ArrayList;
import java.util.Base64;
import java.util.Enumeration;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The entity tag of a body, strong as a rule: 132 bits of its SHA-256 (RFC 9110, section 8.8.3).
 *
 * @param value with its quotes
 */
record EntityTag(String value) {

  private static final String STAR = "*";
  private static final String TAG = "(W/)?(\"[\\x21\\x23-\\x7e\\x80-\\xff]*+\")";
  private static final String SPACE = "[ \\t]*+";

  /** An element of a list, perhaps empty, and what ends it (RFC 9110, section 5.6.1). */
  private static final Pattern ELEMENT =
      Pattern.compile("\\G" + SPACE + "(?:" + TAG + ")?" + SPACE + "(,|$)");

  private static final int CHARACTERS = 22;

  static EntityTag of(byte[] body) {
    try {
      byte[] hash = MessageDigest.getInstance("SHA-256").digest(body);
      String text = Base64.getUrlEncoder().withoutPadding().encodeToString(hash);
      return new EntityTag('"' + text.substring(0, CHARACTERS) + '"');
    } catch (NoSuchAlgorithmException e) {
      throw new IllegalStateException("every Java runtime has SHA-256", e);
    }
  }

  /** The tag of the same body sent gzipped: another representation has another strong tag. */
  EntityTag gzipped() {
    return new EntityTag(value.substring(0, value.length() - 1) + "-gzip\"");
  }

  /** The tag of the same body with something more in it; as strong or weak as this one. */
  EntityTag with(String more) {
    EntityTag longer = of((opaque() + more).getBytes(StandardCharsets.UTF_8));
    return isStrong() ? longer : longer.weak();
  }

  /** The same tag as a weak one, for a body that means the same. */
  EntityTag weak() {
    return new EntityTag("W/" + value);
  }

  /** Whether If-None-Match names this tag; the comparison is weak (RFC 9110, section 13.1.2). */
  boolean isNamedBy(Enumeration<String> ifNoneMatch) {
    while (ifNoneMatch.hasMoreElements()) {
      String line = ifNoneMatch.nextElement();
      if (line.strip().equals(STAR) || elements(line).contains(opaque())) {
        return true;
      }
    }
    return false;
  }

  /** Whether If-Match names this tag; the comparison is strong (RFC 9110, section 13.1.1). */
  boolean isExactlyNamedBy(Enumeration<String> ifMatch) {
    while (ifMatch.hasMoreElements()) {
      String line = ifMatch.nextElement();
      if (line.strip().equals(STAR) || (isStrong() && strongElements(line).contains(value))) {
        return true;
      }
    }
    return false;
  }

  /** Whether If-Range holds this tag (RFC 9110, section 13.1.5); a date never does. */
  boolean isExactly(String ifRange) {
    return isStrong() && ifRange.strip().equals(value);
  }

  private boolean isStrong() {
    return value.startsWith("\"");
  }

  private String opaque() {
    return value.substring(value.indexOf('"'));
  }

  /** Whether a field is a star or a list of tags. */
  static boolean isListOrStar(String field) {
    return field.strip().equals(STAR) || !elements(field).isEmpty();
  }

  /** The tags of a list without their weakness; none where the field is anything else. */
  private static List<String> elements(String field) {
    return elements(field, weak -> true);
  }

  private static List<String> strongElements(String field) {
    return elements(field, weak -> !weak);
  }

  private static List<String> elements(String field, Predicate<Boolean> wanted) {
    Matcher element = ELEMENT.matcher(field);
    List<String> tags = new ArrayList<>();
    boolean whole = false;
    while (!whole && element.find()) {
      boolean weak = element.group(1) != null;
      Optional.ofNullable(element.group(2)).filter(tag -> wanted.test(weak)).ifPresent(tags::add);
      whole = String.valueOf(element.group(3)).isEmpty();
    }
    return whole ? tags : List.of();
  }
}
