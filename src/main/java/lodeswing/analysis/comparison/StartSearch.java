package lodeswing.analysis.comparison;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lodeswing.analysis.comparison.PathSearch.Found;
import lodeswing.analysis.comparison.PathSearch.Point;
import lodeswing.core.motion.Motion;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.core.regression.Regression;
import lodeswing.core.rig.Release;

/**
 * How a recorded path begins.
 *
 * <p>Where the release is not told, place and velocity at the first place that moves plainly are
 * those of the rig's own path that comes nearest to the recorded places over half a small swing
 * from there on, by least squares; their covariance is the regression's. A bob that is held at
 * first so needs no time of its release. Where the release is told, at most its time is sought,
 * over the same stretch.
 */
final class StartSearch {

  /** Small swings over which a start is sought. */
  static final double SWINGS = 0.5;

  /** Small swings by which it is judged whether an axis is reversed. */
  private static final double JUDGED = 1;

  /** A reversed axis must do so many times better. */
  private static final double BETTER = 1.5;

  static final List<Quantity> STATE = List.of(Quantity.X, Quantity.Y, Quantity.VX, Quantity.VY);

  /** Part of the small swing's radian over which a velocity's change is measured. */
  private static final double SPAN = 1e-4;

  private final ComparisonSpec spec;
  private final Motion motion;
  private final PathSearch search;

  StartSearch(ComparisonSpec spec, Motion motion, PathSearch search) {
    this.spec = spec;
    this.motion = motion;
    this.search = search;
  }

  /** The start. */
  Start run() {
    Found found = best();
    Recording recording = spec.recording();
    double scale = spec.frame().scale();
    int first = first(found.point());
    Start.Stretch stretch = new Start.Stretch(first, count(first, SWINGS));
    RecordingFrame frame = search.frame(found.point());
    double rate = motion.naturalRate();
    if (spec.release().isEmpty()) {
      return new Start(
          found.point(),
          frame,
          stretch,
          found.scatter() * scale,
          covariance(found.regression(), rate),
          0,
          rate);
    }
    KnownRelease told = spec.release().get();
    double timeError =
        told.time().isPresent()
            ? recording.usualInterval() / Math.sqrt(12)
            : found.regression().standardError(0) * byNoise(found);
    return new Start(
        found.point(),
        frame,
        stretch,
        found.scatter() * scale,
        covariance(told, timeError),
        timeError,
        rate);
  }

  /** What a standard error is where the told place, which has an error of its own, adds none. */
  private double byNoise(Found found) {
    return Math.min(1, spec.recording().noise() / found.scatter());
  }

  /** The better of both directions of the y axis, where either may be; else the stated one. */
  private Found best() {
    if (!spec.eitherMirror()) {
      return found(search.stated());
    }
    List<Found> both = new ArrayList<>();
    both.add(found(search.framed(false)));
    both.add(found(search.framed(true)));
    return both.stream()
        .min(Comparator.comparingDouble(one -> judged(one) * (one.point().mirrored() ? BETTER : 1)))
        .orElseThrow();
  }

  private double judged(Found found) {
    int first = first(found.point());
    return search.fit(found.point(), List.of(), first, count(first, JUDGED)).scatter();
  }

  /** The first place that is compared. */
  private int first(Point point) {
    if (spec.release().isEmpty()) {
      return spec.recording().firstMoving();
    }
    int first = 0;
    while (first < spec.recording().count() - 1
        && spec.recording().since(first) < point.value(Quantity.TIME)) {
      first++;
    }
    return first;
  }

  private int count(int first, double swings) {
    return search.count(first, swings);
  }

  private Found found(Point from) {
    if (spec.release().isEmpty()) {
      return search.begun(from, first(from), SWINGS);
    }
    KnownRelease told = spec.release().get();
    Release release = told.release();
    Point put =
        from.with(Quantity.X, release.x())
            .with(Quantity.Y, release.y())
            .with(Quantity.VX, release.vx())
            .with(Quantity.VY, release.vy())
            .with(Quantity.TIME, told.time().orElse(spec.recording().heldUntil()));
    int last = first(put) + count(first(put), SWINGS);
    List<Quantity> free = told.time().isPresent() ? List.of() : List.of(Quantity.TIME);
    return search.fit(put, free, 0, last);
  }

  /** Covariance of a found state, speeds over the natural rate. */
  static double[] covariance(Regression regression, double rate) {
    double[] covariance = new double[16];
    for (int k = 0; k < 4; k++) {
      for (int l = 0; l < 4; l++) {
        double both = regression.standardError(k) * regression.standardError(l);
        double weight = (k < 2 ? 1 : rate) * (l < 2 ? 1 : rate);
        covariance[4 * k + l] = regression.correlation(k, l) * both / weight;
      }
    }
    return covariance;
  }

  /** A place that may be off, and a time that may: then the whole state is that of another time. */
  private double[] covariance(KnownRelease told, double timeError) {
    double[] covariance = new double[16];
    covariance[0] = told.accuracy() * told.accuracy();
    covariance[5] = covariance[0];
    Optional<double[]> start = motion.toState(told.release());
    if (start.isEmpty()) {
      return covariance;
    }
    double[] rise = rise(start.get());
    for (int k = 0; k < 4; k++) {
      for (int l = 0; l < 4; l++) {
        covariance[4 * k + l] += rise[k] * rise[l] * timeError * timeError;
      }
    }
    return covariance;
  }

  /** Change of the plan state in time, speeds over the natural rate. */
  private double[] rise(double[] state) {
    double rate = motion.naturalRate();
    double step = SPAN / rate;
    double[] acceleration = new double[3];
    motion.acceleration(state[0], state[1], state[2], state[3], acceleration);
    double[] now = new double[4];
    double[] then = new double[4];
    motion.toPlan(state, now);
    motion.toPlan(
        new double[] {
          state[0] + step * state[2],
          state[1] + step * state[3],
          state[2] + step * acceleration[0],
          state[3] + step * acceleration[1]
        },
        then);
    double[] rise = new double[4];
    for (int k = 0; k < 4; k++) {
      rise[k] = (then[k] - now[k]) / step / (k < 2 ? 1 : rate);
    }
    return rise;
  }
}
