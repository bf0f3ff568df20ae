package lodeswing.analysis.tuning;

import java.util.List;
import java.util.Map;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.rest.RestPoint;

/**
 * The chances that are wanted.
 *
 * @param chances of each label, summing to 1; not to be changed
 * @param labels of each magnet the index of its label, -1 where it has none; not to be changed
 * @param tolerance by how much the chance of a label may be off, above 0
 */
public record Wish(double[] chances, int[] labels, double tolerance) {

  /** Counts by label, of counts by rest point; what ended at no label is in none. */
  public int[] counts(EndCounts counts, List<RestPoint> restPoints) {
    int[] byLabel = new int[chances.length];
    for (Map.Entry<Integer, Integer> entry : counts.byEnd().entrySet()) {
      if (entry.getKey() >= 0) {
        RestPoint point = restPoints.get(entry.getKey());
        int label = point.surroundings().owner().stream().map(m -> labels[m]).findAny().orElse(-1);
        if (label >= 0) {
          byLabel[label] += entry.getValue();
        }
      }
    }
    return byLabel;
  }

  /** The greatest distance of a label's chance from the wanted one. */
  public double distance(int[] counts, int all) {
    double greatest = 0;
    for (int k = 0; k < chances.length; k++) {
      greatest = Math.max(greatest, Math.abs((double) counts[k] / all - chances[k]));
    }
    return greatest;
  }

  /** The sum of the squares of these distances, which is smoother. */
  double squares(int[] counts, int all) {
    double sum = 0;
    for (int k = 0; k < chances.length; k++) {
      double off = (double) counts[k] / all - chances[k];
      sum += off * off;
    }
    return sum;
  }
}
