package lodeswing.core.recording;

import java.util.Arrays;
import lodeswing.core.geometry.PathCurve;

/** Places of a bob over time, as they were recorded, in the recording's own frame and in SI. */
public final class Recording {

  /** Sum of the squares of 1, 3, 3, 1: what third differences make of a variance. */
  private static final double THIRD_DIFFERENCES = 20;

  /** Intervals that differ by less than this part count as even. */
  private static final double EVEN = 0.02;

  /** Median of the square of a normal variable of variance 1. */
  private static final double MEDIAN_SQUARE = 0.4549364;

  /** Times the noise that residuals of a path that explains a recording may be. */
  private static final double ABOVE_NOISE = 1.5;

  /** Part of the swing below which residuals are always small enough. */
  private static final double SMALL_PART = 1e-3;

  private static final double HELD_TIMES = 6;
  private static final double HELD_PART = 0.01;

  private final double[] t;
  private final double[] x;
  private final double[] y;
  private final double size;
  private final double noise;

  /**
   * A recording.
   *
   * @param t times, strictly rising [s]
   * @param x places [m]
   * @param y places [m]
   */
  public Recording(double[] t, double[] x, double[] y) {
    if (t.length < 2 || x.length != t.length || y.length != t.length) {
      throw new IllegalArgumentException("columns of two or more values, of one length");
    }
    for (int i = 1; i < t.length; i++) {
      if (!(t[i] > t[i - 1])) {
        throw new IllegalArgumentException("time does not rise at " + i);
      }
    }
    this.t = t.clone();
    this.x = x.clone();
    this.y = y.clone();
    this.size = reach();
    this.noise = scatter();
  }

  /** How many places it has. */
  public int count() {
    return t.length;
  }

  /** Time of a place [s]. */
  public double t(int i) {
    return t[i];
  }

  /** Time of a place after the first one [s]. */
  public double since(int i) {
    return t[i] - t[0];
  }

  /** A place [m]. */
  public double x(int i) {
    return x[i];
  }

  /** A place [m]. */
  public double y(int i) {
    return y[i];
  }

  /**
   * The first place that is farther from the very first one than noise explains: from there on the
   * bob moves. The last place where it never does.
   */
  public int firstMoving() {
    double far = Math.max(HELD_TIMES * noise(), HELD_PART * size());
    int i = 0;
    while (i < t.length - 1 && Math.hypot(x[i] - x[0], y[i] - y[0]) <= far) {
      i++;
    }
    return i;
  }

  /**
   * When the bob begins to leave its first place, after that one [s]: two places before it is
   * farther from there than noise explains.
   */
  public double heldUntil() {
    return since(Math.max(0, firstMoving() - 2));
  }

  /** How many places lie within a time after the first one. */
  public int within(double time) {
    int count = 0;
    while (count < t.length && since(count) <= time) {
      count++;
    }
    return count;
  }

  /** Median time between two places [s]. */
  public double usualInterval() {
    double[] steps = new double[t.length - 1];
    Arrays.setAll(steps, i -> t[i + 1] - t[i]);
    Arrays.sort(steps);
    return steps[steps.length / 2];
  }

  /** Longest time between two places [s]. */
  public double longestInterval() {
    double longest = 0;
    for (int i = 1; i < t.length; i++) {
      longest = Math.max(longest, t[i] - t[i - 1]);
    }
    return longest;
  }

  /** Greatest distance of a place from the middle of all [m]. */
  public double size() {
    return size;
  }

  private double reach() {
    double midX = Arrays.stream(x).average().orElse(0);
    double midY = Arrays.stream(y).average().orElse(0);
    double reach = 0;
    for (int i = 0; i < t.length; i++) {
      reach = Math.max(reach, Math.hypot(x[i] - midX, y[i] - midY));
    }
    return reach;
  }

  /**
   * Noise of a coordinate by the median of third differences, where four places stand at even
   * intervals; what remains of a swing in them makes it too large rather than too small [m]. 0
   * where there are none.
   */
  public double noise() {
    return noise;
  }

  private double scatter() {
    double[] squares = new double[2 * t.length];
    int count = 0;
    for (int i = 3; i < t.length; i++) {
      double step = t[i] - t[i - 1];
      boolean even =
          Math.abs(t[i - 1] - t[i - 2] - step) < EVEN * step
              && Math.abs(t[i - 2] - t[i - 3] - step) < EVEN * step;
      if (even) {
        squares[count++] = square(x, i);
        squares[count++] = square(y, i);
      }
    }
    if (count == 0) {
      return 0;
    }
    Arrays.sort(squares, 0, count);
    return Math.sqrt(squares[count / 2] / MEDIAN_SQUARE);
  }

  /**
   * Whether residuals of a path are no more than the noise of what was recorded makes them.
   *
   * @param scatter of a coordinate about the path [m]
   * @param degreesOfFreedom that it was told from
   */
  public boolean explains(double scatter, int degreesOfFreedom) {
    return explains(scatter, degreesOfFreedom, noise());
  }

  /**
   * The same for a noise that is known otherwise.
   *
   * @param scatter of a coordinate about the path [m]
   * @param degreesOfFreedom that it was told from
   * @param known noise of a coordinate [m]
   */
  public boolean explains(double scatter, int degreesOfFreedom, double known) {
    double allowance = 1 + 2 / Math.sqrt(Math.max(1, degreesOfFreedom));
    return scatter <= Math.max(SMALL_PART * size(), ABOVE_NOISE * allowance * known);
  }

  /** The places on the plate, by the frame in which they were taken. */
  public Recording onPlate(RecordingFrame frame) {
    double[] planX = new double[t.length];
    double[] planY = new double[t.length];
    double[] plan = new double[2];
    for (int i = 0; i < t.length; i++) {
      frame.toPlan(x[i], y[i], plan);
      planX[i] = plan[0];
      planY[i] = plan[1];
    }
    return new Recording(t, planX, planY);
  }

  /**
   * A curve through some of the places, with velocities by their neighbours; its times are those
   * after the first place of all.
   *
   * @param from the first of them
   * @param count how many, two or more
   */
  public PathCurve curve(int from, int count) {
    double[] times = new double[count];
    double[][] columns = new double[4][count];
    for (int i = 0; i < count; i++) {
      int at = from + i;
      times[i] = since(at);
      columns[0][i] = x[at];
      columns[1][i] = y[at];
      int before = Math.max(from, at - 1);
      int after = Math.min(from + count - 1, at + 1);
      columns[2][i] = (x[after] - x[before]) / (t[after] - t[before]);
      columns[3][i] = (y[after] - y[before]) / (t[after] - t[before]);
    }
    return new PathCurve(times, columns);
  }

  private static double square(double[] column, int i) {
    double difference = column[i] - 3 * column[i - 1] + 3 * column[i - 2] - column[i - 3];
    return difference * difference / THIRD_DIFFERENCES;
  }
}
