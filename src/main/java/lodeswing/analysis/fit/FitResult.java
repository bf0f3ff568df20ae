package lodeswing.analysis.fit;

import java.util.Arrays;
import java.util.List;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.core.regression.Regression;

/** What a fit found. */
public final class FitResult {

  private final Regression regression;
  private final List<Double> values;
  private final RecordingFrame frame;
  private final int used;
  private final End end;
  private final double[] plan;
  private final double[][] knots;

  FitResult(
      Regression regression,
      List<Double> values,
      RecordingFrame frame,
      int used,
      End end,
      double[] plan,
      double[][] knots) {
    this.regression = regression;
    this.values = List.copyOf(values);
    this.frame = frame;
    this.used = used;
    this.end = end;
    this.plan = plan;
    this.knots = knots;
  }

  /** Why the stretch that was fitted ends where it does. */
  public enum End {
    /** The whole recording was followed. */
    WHOLE("whole"),
    /** Beyond, the fitted path is too uncertain for a place to say which path it is of. */
    HORIZON("horizon"),
    /** Beyond, no rig of the family follows the recording. */
    DISAGREES("disagrees"),
    /** As much was computed as may be. */
    WORK("work");

    private final String word;

    End(String word) {
      this.word = word;
    }

    /** The word for programs. */
    public String word() {
      return word;
    }
  }

  /** The fit of the free quantities, residuals in the recording's frame, x and y side by side. */
  public Regression regression() {
    return regression;
  }

  /** Values of all quantities, free or not. */
  public List<Double> values() {
    return values;
  }

  /** How the recording lies on the plate. */
  public RecordingFrame frame() {
    return frame;
  }

  /** How many of the first places were fitted. */
  public int used() {
    return used;
  }

  /** Why not more. */
  public End end() {
    return end;
  }

  /** A fitted plan place [m]. */
  public double planX(int i) {
    return plan[2 * i];
  }

  /** A fitted plan place [m]. */
  public double planY(int i) {
    return plan[2 * i + 1];
  }

  /** The fitted path from the release on: rows t after the first place, x, y, vx, vy; a copy. */
  public double[][] knots() {
    double[][] copy = new double[knots.length][];
    Arrays.setAll(copy, k -> knots[k].clone());
    return copy;
  }

  /**
   * Correlation of residuals with their neighbours, over both coordinates: near 0 where the path
   * misses nothing, near 1 where it runs beside what was recorded.
   */
  public double neighbourCorrelation() {
    double[] residuals = regression.residuals();
    double products = 0;
    double squares = 0;
    for (int i = 0; i < residuals.length; i++) {
      squares += residuals[i] * residuals[i];
      if (i >= 2) {
        products += residuals[i] * residuals[i - 2];
      }
    }
    return squares > 0 ? products / squares : 0;
  }
}
