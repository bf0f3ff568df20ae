package lodeswing.web.representation;

import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Reads Accept-Encoding (RFC 9110, section 12.5.3). */
final class AcceptedCoding {

  private static final Pattern ENTRY =
      Pattern.compile(
          "\\s*([A-Za-z0-9*_-]{1,40})\\s*(?:;\\s*[qQ]=(0(?:\\.\\d{0,3})?|1(?:\\.0{0,3})?))?\\s*");

  private AcceptedCoding() {}

  /** Whether gzip is welcome: named, or covered by a star, with a quality above 0. */
  static boolean gzip(List<String> fields) {
    double named = -1;
    double star = -1;
    for (String field : fields) {
      for (String entry : field.split(",")) {
        Matcher matcher = ENTRY.matcher(entry);
        if (!matcher.matches()) {
          continue;
        }
        double quality = matcher.group(2) == null ? 1 : Double.parseDouble(matcher.group(2));
        // An older name of the same coding (RFC 9110, section 8.4.1.3).
        String coding = matcher.group(1).toLowerCase(Locale.ROOT).replaceFirst("^x-", "");
        if (coding.equals("gzip")) {
          named = quality;
        } else if (matcher.group(1).equals("*")) {
          star = quality;
        }
      }
    }
    return named >= 0 ? named > 0 : star > 0;
  }
}
