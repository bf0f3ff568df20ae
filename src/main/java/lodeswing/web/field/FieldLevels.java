package lodeswing.web.field;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import lodeswing.figure.RoundStep;

/** The levels of a map's contours: 1, 2 and 5 times powers of ten, or even steps where few fit. */
final class FieldLevels {

  private static final int ENOUGH = 4;
  private static final int MOST = 12;
  private static final double LOW = 0.004;
  private static final double HIGH = 0.9995;

  private FieldLevels() {}

  /**
   * Levels in millitesla, rising.
   *
   * @param strengths of the map [T]
   */
  static List<Double> of(double[] strengths) {
    double[] sorted = Arrays.stream(strengths).filter(Double::isFinite).sorted().toArray();
    if (sorted.length == 0 || !(sorted[sorted.length - 1] > 0)) {
      return List.of();
    }
    double low = 1e3 * sorted[(int) (LOW * (sorted.length - 1))];
    double high = 1e3 * sorted[(int) (HIGH * (sorted.length - 1))];
    List<Double> levels = new ArrayList<>();
    for (double level = high * 1e-9; ; ) {
      level = RoundStep.atLeast(Math.max(level, Math.max(low, high * 1e-9)));
      if (level > high) {
        break;
      }
      levels.add(clean(level));
      level *= 1.001;
    }
    if (levels.size() > MOST) {
      return List.copyOf(levels.subList(levels.size() - MOST, levels.size()));
    }
    if (levels.size() >= ENOUGH || !(high > low * (1 + 1e-9))) {
      return List.copyOf(levels);
    }
    List<Double> even = new ArrayList<>();
    double step = RoundStep.atLeast((high - low) / (2 * ENOUGH));
    for (double k = Math.ceil(low / step); k * step <= high; k++) {
      if (k > 0) {
        even.add(clean(k * step));
      }
    }
    return List.copyOf(even);
  }

  /** Without the last digits that stepping left. */
  private static double clean(double level) {
    return Double.parseDouble(String.format(java.util.Locale.ROOT, "%.6g", level));
  }
}
