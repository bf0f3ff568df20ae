package lodeswing.figure;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * One path of the bob and what is known of it. Owns its arrays; they are copied in and never handed
 * out.
 */
public final class Trail {
  private final double[] t;
  private final double[] x;
  private final double[] y;
  private final String name;
  private final Horizons horizons;
  private final List<Happening> happenings;
  private final Start start;
  private final Optional<End> end;

  /**
   * @param samples the path itself
   * @param name what to call it where there are two; empty for a single one
   * @param horizons how far it can be trusted, and when its end was decided
   * @param happenings what befell the bob, in order of time
   * @param start how it was let go
   * @param end where it came to rest; empty where it did not within the path
   */
  public Trail(
      Samples samples,
      String name,
      Horizons horizons,
      List<Happening> happenings,
      Start start,
      Optional<End> end) {
    this.t = samples.t.clone();
    this.x = samples.x.clone();
    this.y = samples.y.clone();
    this.name = PlainText.of(name);
    this.horizons = horizons;
    this.happenings = List.copyOf(happenings);
    this.start = start;
    this.end = end;
  }

  /** How many samples the path has. */
  public int count() {
    return t.length;
  }

  /** Time of sample i. */
  public double t(int i) {
    return t[i];
  }

  /** x of sample i. */
  public double x(int i) {
    return x[i];
  }

  /** y of sample i. */
  public double y(int i) {
    return y[i];
  }

  /** What to call it; may be empty. */
  public String name() {
    return name;
  }

  /** How far it can be trusted, and when its end was decided. */
  public Horizons horizons() {
    return horizons;
  }

  /** What befell the bob, in order of time. */
  public List<Happening> happenings() {
    return happenings;
  }

  /** How it was let go. */
  public Start start() {
    return start;
  }

  /** Where it came to rest. */
  public Optional<End> end() {
    return end;
  }

  /** Time of the first sample. */
  public double begins() {
    return t[0];
  }

  /** Time of the last sample. */
  public double ends() {
    return t[t.length - 1];
  }

  /** x at a time, linear between samples; the nearest end's outside the path. */
  public double xAt(double time) {
    return at(time, x);
  }

  /** y at a time, linear between samples; the nearest end's outside the path. */
  public double yAt(double time) {
    return at(time, y);
  }

  /** Samples to keep so that the path stays within a tolerance [model units]. */
  int[] thinned(double tolerance) {
    return PathThinning.indices(t, x, y, tolerance);
  }

  private double at(double time, double[] values) {
    int place = Arrays.binarySearch(t, time);
    if (place >= 0) {
      return values[place];
    }
    int after = -place - 1;
    if (after == 0) {
      return values[0];
    }
    if (after == t.length) {
      return values[t.length - 1];
    }
    double share = (time - t[after - 1]) / (t[after] - t[after - 1]);
    return values[after - 1] + share * (values[after] - values[after - 1]);
  }

  /** A path as three arrays of one length: time and place [model units]. */
  public static final class Samples {
    /** The most samples that a picture takes. */
    public static final int MOST = 200_000;

    private final double[] t;
    private final double[] x;
    private final double[] y;

    /**
     * @param t times, strictly rising; the array is read once and not kept
     * @param x first coordinate
     * @param y second coordinate
     * @throws IllegalArgumentException where the arrays are empty, longer than {@link #MOST},
     *     differ in length, hold a value that is not finite, or the times do not rise
     */
    public Samples(double[] t, double[] x, double[] y) {
      if (t.length == 0 || t.length > MOST) {
        throw new IllegalArgumentException("A path has 1 to " + MOST + " samples.");
      }
      PathThinning.check(t, x, y, 0);
      this.t = t.clone();
      this.x = x.clone();
      this.y = y.clone();
    }
  }

  /**
   * Times that divide a path; each is empty where it was not reached.
   *
   * @param trustedUntil until when the computed path is trusted
   * @param foretoldUntil until when a hand's release can foretell it
   * @param sealedAt when the end was decided
   * @param settledAt when the bob had settled
   */
  public record Horizons(
      OptionalDouble trustedUntil,
      OptionalDouble foretoldUntil,
      OptionalDouble sealedAt,
      OptionalDouble settledAt) {

    /** None of the times was reached. */
    public static Horizons none() {
      OptionalDouble empty = OptionalDouble.empty();
      return new Horizons(empty, empty, empty, empty);
    }
  }

  /**
   * Something that befell the bob.
   *
   * @param time when
   * @param words what, such as "touched magnet 2"
   */
  public record Happening(double time, String words) {

    /** Clears the words of anything that is not text. */
    public Happening {
      words = PlainText.of(words);
    }
  }

  /**
   * How the bob was let go, at the first sample.
   *
   * @param x place [model units]
   * @param y place
   * @param vx velocity [model units per unit of time]; 0 for a release from rest
   * @param vy velocity
   */
  public record Start(double x, double y, double vx, double vy) {

    /** Whether it was let go with a push. */
    public boolean moving() {
      return vx != 0 || vy != 0;
    }
  }

  /**
   * Where the bob came to rest.
   *
   * @param x place [model units]
   * @param y place
   * @param name the label or the name of the rest point
   */
  public record End(double x, double y, String name) {

    /** Clears the name of anything that is not text. */
    public End {
      name = PlainText.of(name);
    }
  }
}
