package lodeswing.core.chance;

import java.io.DataInputStream;
import java.io.DataOutputStream;
import java.io.IOException;
import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How many releases ended how.
 *
 * @param byEnd counts above 0 by the end: a rest point's index, or a negative code of {@link
 *     lodeswing.core.outcome.Ends}, or another negative one of the caller's
 */
public record EndCounts(SortedMap<Integer, Integer> byEnd) {

  /** With more ends than these their unions are not gone through. */
  private static final int LISTED_ENDS = 12;

  /** None yet. */
  public static final EndCounts NONE = new EndCounts(new TreeMap<>());

  public EndCounts {
    byEnd = Collections.unmodifiableSortedMap(new TreeMap<>(byEnd));
  }

  /** How many ended so. */
  public int of(int end) {
    return byEnd.getOrDefault(end, 0);
  }

  /** How many there are. */
  public int total() {
    return byEnd.values().stream().mapToInt(Integer::intValue).sum();
  }

  /**
   * The count of that union of ends which comes nearest to half of all: its chance is the one known
   * least. Half of all where there are more than {@value #LISTED_ENDS} ends.
   */
  int nearestToHalf() {
    int all = total();
    if (byEnd.size() > LISTED_ENDS) {
      return all / 2;
    }
    int[] counts = byEnd.values().stream().mapToInt(Integer::intValue).toArray();
    int nearest = 0;
    for (int union = 1; union < 1 << counts.length; union++) {
      int sum = 0;
      for (int k = 0; k < counts.length; k++) {
        sum += (union >> k & 1) * counts[k];
      }
      nearest = Math.abs(2L * sum - all) < Math.abs(2L * nearest - all) ? sum : nearest;
    }
    return nearest;
  }

  /** Both together. */
  public EndCounts and(Map<Integer, Integer> more) {
    var all = new TreeMap<>(byEnd);
    more.forEach((end, count) -> all.merge(end, count, Integer::sum));
    return new EndCounts(all);
  }

  /** Writes the counts; {@link #read} reads them. */
  public void write(DataOutputStream out) throws IOException {
    out.writeInt(byEnd.size());
    for (Map.Entry<Integer, Integer> entry : byEnd.entrySet()) {
      out.writeInt(entry.getKey());
      out.writeInt(entry.getValue());
    }
  }

  /** Counts that {@link #write} wrote. */
  public static EndCounts read(DataInputStream in) throws IOException {
    var counts = new TreeMap<Integer, Integer>();
    for (int k = in.readInt(); k > 0; k--) {
      counts.put(in.readInt(), in.readInt());
    }
    return new EndCounts(counts);
  }
}
