package lodeswing.analysis.comparison;

import lodeswing.core.recording.RecordingFrame;
import lodeswing.core.rig.Release;

/** From where a recorded path is foretold, and how well that is known. */
public final class Start {

  private final PathSearch.Point point;
  private final RecordingFrame frame;
  private final Stretch stretch;
  private final double scatter;
  private final double[] covariance;
  private final double timeError;
  private final double rate;

  // One more than usual: what was found, over which stretch, and what it is worth.
  Start(
      PathSearch.Point point,
      RecordingFrame frame,
      Stretch stretch,
      double scatter,
      double[] covariance,
      double timeError,
      double rate) {
    this.point = point;
    this.frame = frame;
    this.stretch = stretch;
    this.scatter = scatter;
    this.covariance = covariance;
    this.timeError = timeError;
    this.rate = rate;
  }

  /**
   * Recorded places in a row.
   *
   * @param first the first one
   * @param count how many there are
   */
  public record Stretch(int first, int count) {}

  /** Plan place and velocity at the start. */
  public Release release() {
    return point.release();
  }

  /** When that is, after the first recorded place [s]. */
  public double time() {
    return point.value(Quantity.TIME);
  }

  /** How the recording lies on the plate. */
  public RecordingFrame frame() {
    return frame;
  }

  /** The places that it was held against. */
  public Stretch stretch() {
    return stretch;
  }

  /** Scatter of a recorded coordinate about the path over that stretch [m]. */
  public double scatter() {
    return scatter;
  }

  /** Standard deviation of {x, y} [m] or {vx, vy} [m/s], by its place from 0 to 3. */
  public double error(int component) {
    double weighted = Math.sqrt(covariance[component * 5]);
    return component < 2 ? weighted : weighted * rate;
  }

  /** Standard deviation of the time [s]; 0 where the start is wherever the bob was at that time. */
  public double timeError() {
    return timeError;
  }

  /** Covariance of {x, y, vx, vy}, speeds over the natural rate: 16 numbers, a copy [m^2]. */
  double[] covariance() {
    return covariance.clone();
  }

  PathSearch.Point point() {
    return point;
  }
}
