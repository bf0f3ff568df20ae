package lodeswing.web.representation;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/**
 * The known name nearest to a wrong one, by the fewest single letters inserted, left out or
 * replaced (Levenshtein distance), letter case aside.
 */
public final class NearestName {

  private static final int LONGEST = 64;

  private NearestName() {}

  /** The nearest of some names; nothing where there are none. */
  public static Optional<String> of(String wrong, Collection<String> known) {
    String sought = wrong.substring(0, Math.min(LONGEST, wrong.length()));
    return known.stream()
        .min(
            Comparator.<String>comparingInt(name -> distance(sought, name))
                .thenComparing(Comparator.naturalOrder()));
  }

  private static int distance(String left, String right) {
    String a = left.toLowerCase(Locale.ROOT);
    String b = right.toLowerCase(Locale.ROOT);
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int replaced = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(replaced, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
