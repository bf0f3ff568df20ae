package lodeswing.analysis.worksheet;

import java.util.Map;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.outcome.Ends;

/**
 * A place and the ends of tries from there.
 *
 * @param x plan position [m]
 * @param y plan position [m]
 * @param ends of the tries
 */
public record TriedPlace(double x, double y, EndCounts ends) {

  /** Share of the end that most tries have; 0 where nothing was tried. */
  double surest() {
    int most = ends.byEnd().values().stream().mapToInt(Integer::intValue).max().orElse(0);
    return most / (double) Math.max(1, ends.total());
  }

  /** The end that most tries have. */
  int commonest() {
    return ends.byEnd().entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(Ends.UNSETTLED);
  }

  /** Whether a bob can be let go there. */
  boolean allowed() {
    return ends.of(Ends.CANNOT_START) == 0;
  }
}
