package lodeswing.web.representation;

import java.security.MessageDigest;
import java.security.NoSuchAlgorithmException;
import java.util.Base64;
import java.util.Enumeration;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/**
 * The strong entity tag of a body: 132 bits of its SHA-256 (RFC 9110, section 8.8.3).
 *
 * @param value with its quotes
 */
record EntityTag(String value) {

  private static final Pattern LISTED =
      Pattern.compile("(W/)?(\"[\\x21\\x23-\\x7e\\x80-\\xff]*\")");
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

  /** Whether If-None-Match names this tag; the comparison is weak (RFC 9110, section 13.1.2). */
  boolean isNamedBy(Enumeration<String> ifNoneMatch) {
    while (ifNoneMatch.hasMoreElements()) {
      String line = ifNoneMatch.nextElement();
      if (line.strip().equals("*")) {
        return true;
      }
      Matcher listed = LISTED.matcher(line);
      while (listed.find()) {
        if (listed.group(2).equals(value)) {
          return true;
        }
      }
    }
    return false;
  }
}
