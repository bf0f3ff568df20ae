package lodeswing.web.body;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the known name that somebody probably meant. */
public final class NearestName {
  private static final int LONGEST = 80;

  private NearestName() {}

  /**
   * The known name with the fewest changed letters, if that is at most half of them.
   *
   * <p>Distance: V. I. Levenshtein, "Binary codes capable of correcting deletions, insertions, and
   * reversals", Soviet Physics Doklady 10 (1966) 707; upper and lower case count as alike.
   */
  public static Optional<String> find(String name, Collection<String> known) {
    if (name.length() > LONGEST) {
      return Optional.empty();
    }
    String sought = name.toLowerCase(Locale.ROOT);
    return known.stream()
        .min(
            Comparator.<String>comparingInt(k -> distance(sought, k.toLowerCase(Locale.ROOT)))
                .thenComparing(Comparator.naturalOrder()))
        .filter(
            k ->
                distance(sought, k.toLowerCase(Locale.ROOT))
                    <= Math.max(sought.length(), k.length()) / 2);
  }

  private static int distance(String a, String b) {
    int[] row = new int[b.length() + 1];
    for (int j = 0; j <= b.length(); j++) {
      row[j] = j;
    }
    for (int i = 1; i <= a.length(); i++) {
      int diagonal = row[0];
      row[0] = i;
      for (int j = 1; j <= b.length(); j++) {
        int change = diagonal + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        diagonal = row[j];
        row[j] = Math.min(change, 1 + Math.min(row[j], row[j - 1]));
      }
    }
    return row[b.length()];
  }
}
