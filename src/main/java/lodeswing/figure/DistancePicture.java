package lodeswing.figure;

import java.util.List;
import java.util.OptionalDouble;

/** All that a picture of the distance between a recorded and a foretold path shows. */
public final class DistancePicture {

  private final String title;
  private final List<String> captions;
  private final Measure measure;
  private final Curve curve;
  private final double parted;
  private final Moments moments;

  /**
   * @param title a short name of the picture
   * @param captions lines below it, the result first
   * @param measure the units of its figures
   * @param curve what is drawn
   * @param parted distance at which the two count as parted [model units], above 0
   * @param moments what happened when
   */
  public DistancePicture(
      String title,
      List<String> captions,
      Measure measure,
      Curve curve,
      double parted,
      Moments moments) {
    this.title = PlainText.of(title);
    this.captions = captions.stream().map(PlainText::of).toList();
    this.measure = measure;
    this.curve = curve;
    this.parted = parted;
    this.moments = moments;
  }

  /** Columns of one length; owns its arrays, which are not to be written to. */
  public static final class Curve {

    private final double[] times;
    private final double[] distances;
    private final double[] explained;

    /**
     * Takes over columns.
     *
     * @param times rising, one or more
     * @param distances between the two places [model units]
     * @param explained distances that noise and what is not known of the start explain [model
     *     units], above 0
     */
    public Curve(double[] times, double[] distances, double[] explained) {
      if (times.length == 0
          || distances.length != times.length
          || explained.length != times.length) {
        throw new IllegalArgumentException("columns of one length");
      }
      this.times = times;
      this.distances = distances;
      this.explained = explained;
    }

    double[] times() {
      return times;
    }

    double[] distances() {
      return distances;
    }

    double[] explained() {
      return explained;
    }

    double begins() {
      return times[0];
    }

    double ends() {
      return times[times.length - 1];
    }
  }

  /**
   * What happened when; empty where it did not, or not within the picture.
   *
   * @param departedAt when they were first farther apart than is explained
   * @param partedAt when they parted
   * @param foretoldUntil until when the path can be foretold
   * @param trustedUntil until when the computed path is right
   */
  public record Moments(
      OptionalDouble departedAt,
      OptionalDouble partedAt,
      OptionalDouble foretoldUntil,
      OptionalDouble trustedUntil) {}

  String title() {
    return title;
  }

  List<String> captions() {
    return captions;
  }

  Measure measure() {
    return measure;
  }

  Curve curve() {
    return curve;
  }

  double parted() {
    return parted;
  }

  Moments moments() {
    return moments;
  }
}
