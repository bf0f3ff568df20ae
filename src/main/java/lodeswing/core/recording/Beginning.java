package lodeswing.core.recording;

import org.apache.commons.math3.fitting.PolynomialCurveFitter;
import org.apache.commons.math3.fitting.WeightedObservedPoints;

/** What the first places of a recording tell of the release. */
public final class Beginning {

  /** Part of a swing over which a path is close to a parabola. */
  private static final double PART = 0.12;

  private static final int FEWEST = 5;

  private Beginning() {}

  /**
   * Recorded place and velocity {x, y, vx, vy} at the release, by parabolas through the places
   * after it.
   *
   * @param held how long the bob is held at first [s]
   * @param period of a small swing [s]
   */
  public static double[] of(Recording recording, double held, double period) {
    int first = Math.max(0, Math.min(recording.within(held) - 1, recording.count() - FEWEST));
    int last = Math.max(recording.within(held + PART * period), first + FEWEST);
    last = Math.min(last, recording.count());
    double[] x = parabola(recording, first, last, held, true);
    double[] y = parabola(recording, first, last, held, false);
    return new double[] {x[0], y[0], x[1], y[1]};
  }

  /** Middle of a coordinate's range. */
  public static double middle(Recording recording, boolean alongX) {
    double least = Double.POSITIVE_INFINITY;
    double most = Double.NEGATIVE_INFINITY;
    for (int i = 0; i < recording.count(); i++) {
      double value = alongX ? recording.x(i) : recording.y(i);
      least = Math.min(least, value);
      most = Math.max(most, value);
    }
    return (least + most) / 2;
  }

  /** Value and slope at the release of the parabola of least squares. */
  private static double[] parabola(
      Recording recording, int first, int last, double held, boolean alongX) {
    var points = new WeightedObservedPoints();
    for (int i = first; i < last; i++) {
      points.add(recording.since(i) - held, alongX ? recording.x(i) : recording.y(i));
    }
    return PolynomialCurveFitter.create(2).fit(points.toList());
  }
}
