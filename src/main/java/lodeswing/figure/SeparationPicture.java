package lodeswing.figure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/** All that a picture of a separation over time shows. */
public final class SeparationPicture {

  private final String title;
  private final List<String> captions;
  private final Measure measure;
  private final double[][] curve;
  private final Level level;
  private final OptionalDouble partedAt;
  private final Optional<Line> line;
  private final Span span;

  /**
   * @param title a short name of the picture
   * @param captions lines below it, the result first
   * @param measure the units of its figures
   * @param curve times, distances in plan, and distances with velocities, of one length of two or
   *     more [model units]
   * @param level the distance at which the two count as parted
   * @param partedAt when they did
   * @param line the growth that was fitted
   * @param span how long it goes on
   */
  public SeparationPicture(
      String title,
      List<String> captions,
      Measure measure,
      double[][] curve,
      Level level,
      OptionalDouble partedAt,
      Optional<Line> line,
      Span span) {
    this.title = PlainText.of(title);
    this.captions = captions.stream().map(PlainText::of).toList();
    this.measure = measure;
    this.curve = curve;
    this.level = level;
    this.partedAt = partedAt;
    this.line = line;
    this.span = span;
  }

  /**
   * A distance with a name.
   *
   * @param distance [model units], above 0
   * @param name what it is
   */
  public record Level(double distance, String name) {

    /** Clears the name of anything that is not text. */
    public Level {
      name = PlainText.of(name);
    }
  }

  /**
   * An exponential from the release on.
   *
   * @param until its end
   * @param atStart its distance at the release, above 0
   * @param rate growth of its logarithm
   */
  public record Line(double until, double atStart, double rate) {}

  /**
   * How long the picture goes on.
   *
   * @param asked the end of its axis
   * @param known up to when the separation is known
   * @param end what ends that, to follow "not known after 3 s:"
   */
  public record Span(double asked, double known, String end) {

    /** Clears the words of anything that is not text. */
    public Span {
      end = PlainText.of(end);
    }
  }

  String title() {
    return title;
  }

  List<String> captions() {
    return captions;
  }

  Measure measure() {
    return measure;
  }

  double[] times() {
    return curve[0];
  }

  double[] distances() {
    return curve[1];
  }

  double[] phaseDistances() {
    return curve[2];
  }

  Level level() {
    return level;
  }

  OptionalDouble partedAt() {
    return partedAt;
  }

  Optional<Line> line() {
    return line;
  }

  Span span() {
    return span;
  }
}
