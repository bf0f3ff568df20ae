package lodeswing.analysis.tuning;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.rest.RestPoint;

/**
 * The chances that are wanted.
 *
 * @param chances of each label, summing to 1
 * @param labels of each magnet the index of its label, -1 where it has none
 * @param tolerance by how much the chance of a label may be off, above 0
 */
public record Wish(List<Double> chances, List<Integer> labels, double tolerance) {

  public Wish {
    chances = List.copyOf(chances);
    labels = List.copyOf(labels);
  }

  /** Counts by label, of counts by rest point; what ended at no label is in none. */
  public int[] counts(EndCounts counts, List<RestPoint> restPoints) {
    int[] byLabel = new int[chances.size()];
    for (Map.Entry<Integer, Integer> entry : counts.byEnd().entrySet()) {
      if (entry.getKey() >= 0) {
        RestPoint point = restPoints.get(entry.getKey());
        int owner = point.surroundings().owner().orElse(-1);
        int label = owner < 0 ? -1 : labels.get(owner);
        if (label >= 0) {
          byLabel[label] += entry.getValue();
        }
      }
    }
    return byLabel;
  }

  /** Each label's chance less the wanted one. */
  public List<Double> off(int[] counts, int all) {
    List<Double> off = new ArrayList<>();
    for (int k = 0; k < chances.size(); k++) {
      off.add((double) counts[k] / all - chances.get(k));
    }
    return off;
  }

  /** The greatest distance of a label's chance from the wanted one. */
  public double distance(int[] counts, int all) {
    return off(counts, all).stream().mapToDouble(Math::abs).max().orElse(0);
  }
}
