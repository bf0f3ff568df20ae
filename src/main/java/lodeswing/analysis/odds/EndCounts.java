package lodeswing.analysis.odds;

import java.util.Collections;
import java.util.Map;
import java.util.SortedMap;
import java.util.TreeMap;

/**
 * How many releases ended how.
 *
 * @param byEnd counts above 0 by the end: a rest point's index, or a negative code of {@link
 *     lodeswing.core.outcome.Ends} or {@link PartsTrial#ELSEWHERE}
 */
public record EndCounts(SortedMap<Integer, Integer> byEnd) {

  /** None yet. */
  static final EndCounts NONE = new EndCounts(new TreeMap<>());

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

  /** The count of the likeliest end. */
  int largest() {
    return byEnd.values().stream().mapToInt(Integer::intValue).max().orElse(0);
  }

  /** Both together. */
  EndCounts and(Map<Integer, Integer> more) {
    var all = new TreeMap<>(byEnd);
    more.forEach((end, count) -> all.merge(end, count, Integer::sum));
    return new EndCounts(all);
  }
}
