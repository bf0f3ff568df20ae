package lodeswing.figure;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.geometry.PathCurve;

/** One path of the bob and what is known of it. */
public final class Trail {
  private final PathCurve curve;
  private final String name;
  private final Horizons horizons;
  private final List<Happening> happenings;
  private final Start start;
  private final Optional<End> end;
  private final boolean slender;

  /**
   * @param curve the path itself
   * @param name what to call it where there are two; empty for a single one
   * @param horizons how far it can be trusted, and when its end was decided
   * @param happenings what befell the bob, in order of time
   * @param start how it was let go
   * @param end where it comes to rest, be it later than the path ends; empty where it does not
   */
  public Trail(
      PathCurve curve,
      String name,
      Horizons horizons,
      List<Happening> happenings,
      Start start,
      Optional<End> end) {
    this(curve, PlainText.of(name), horizons, List.copyOf(happenings), start, end, false);
  }

  // One more than usual: how the path is drawn, beside all that is known of it.
  private Trail(
      PathCurve curve,
      String name,
      Horizons horizons,
      List<Happening> happenings,
      Start start,
      Optional<End> end,
      boolean slender) {
    this.curve = curve;
    this.name = name;
    this.horizons = horizons;
    this.happenings = happenings;
    this.start = start;
    this.end = end;
    this.slender = slender;
  }

  /** The same path as a thin line throughout, to be told from another without colours. */
  public Trail slender() {
    return new Trail(curve, name, horizons, happenings, start, end, true);
  }

  /** Whether the line is thin throughout. */
  boolean isSlender() {
    return slender;
  }

  /** The path itself. */
  public PathCurve curve() {
    return curve;
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

  /** Where it comes to rest. */
  public Optional<End> end() {
    return end;
  }

  /** Time of the first knot. */
  public double begins() {
    return curve.t(0);
  }

  /** Time of the last knot. */
  public double ends() {
    return curve.ends();
  }

  /** Whether the bob comes to rest after the path's end. */
  boolean restsLater() {
    return end.isPresent() && horizons.settledAt().orElse(Double.POSITIVE_INFINITY) > ends();
  }

  /** A time, where it lies before the path's end. */
  OptionalDouble within(OptionalDouble time) {
    return time.isPresent() && time.getAsDouble() < ends() ? time : OptionalDouble.empty();
  }

  /** Place and velocity {x, y, vx, vy} at a time; the nearest end's place outside the path. */
  double[] at(double time) {
    double[] at = new double[4];
    curve.at(time, at);
    return at;
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
   * How the bob was let go, at the first knot.
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
   * Where the bob comes to rest.
   *
   * @param x place [model units]
   * @param y place
   * @param name the label or the name of the rest point
   * @param where the same to follow the word "rest", such as "at Tide" or "in the middle"
   */
  public record End(double x, double y, String name, String where) {

    /** Clears the texts of anything that is not text. */
    public End {
      name = PlainText.of(name);
      where = PlainText.of(where);
    }
  }
}
