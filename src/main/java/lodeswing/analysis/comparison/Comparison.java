package lodeswing.analysis.comparison;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalInt;
import java.util.function.DoubleConsumer;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.landscape.PlanScale;
import lodeswing.core.recording.Recording;
import lodeswing.core.rest.RestPoint;
import lodeswing.core.rig.BenchLayout;

/**
 * Holds a recording against the path that a rig foretells.
 *
 * <p>1. The start is told, or taken from the first places ({@link StartSearch}); nothing of the rig
 * or the frame is fitted.
 *
 * <p>2. The foretold path carries the covariance of its start's error along ({@link Prediction}).
 * It is foretold until twice the standard deviation of its place reaches the distance up to which
 * paths part as the variational equation says, a sixth of the magnets' spacing.
 *
 * <p>3. The two part where they are farther apart than half the magnets' spacing (half the swing
 * where there is none), and than eight times the noise, three places in a row. They depart where no
 * start of this rig explains the recording any more ({@link Departure}), which is looked for up to
 * the nearer of both horizons, since beyond nothing can be said.
 *
 * <p>4. They differ from the start where the residuals over half a swing, which any start can be
 * fitted to, are more than 3 hundredths of the swing and two and a half times what is allowed for;
 * more than one hundredth is enough where a hint says that the frame is another one, and else
 * counts as a departure. A length that is wrong by 5 % leaves 0.2 to 0.6 hundredths there, a gap
 * that is wrong by 1 mm of 25 1.5, a scale by a tenth 0.7 to 3, a reversed axis among magnets 2 to
 * 20. They also do where they part within that half swing, or where a release that is told lies
 * elsewhere than the recording's first eighth of a swing.
 */
public final class Comparison {

  /** Standard deviations of its place that a foretold path may have. */
  private static final double FORETOLD = 2;

  private static final int IN_A_ROW = 3;

  /** Part of the work that the parts' spread takes, about. */
  private static final double SPREAD_SHARE = 0.4;

  /** Times the noise that parted paths are apart at least. */
  private static final double CLEAR = 8;

  private static final double FROM_START_PART = 0.03;
  private static final double SUSPECT_PART = 0.01;
  private static final double FROM_START_TIMES = 2.5;

  /** Small swings within which a told release shows itself to be another. */
  private static final double AT_FIRST = 0.125;

  /** A bob at rest stays for a swing within so many times the noise. */
  private static final double STILL_TIMES = 6;

  /** Or within such a part of the magnets' spacing. */
  private static final double STILL_PART = 0.025;

  /** A place belongs to a rest point up to such a part of the magnets' spacing. */
  private static final double BELONGS_PART = 0.25;

  private final ComparisonSpec spec;
  private final Landscape landscape;
  private final PlanScale scale;
  private final PathSearch search;
  private final double swing;
  private final double period;

  /**
   * A comparison.
   *
   * @param spec what is compared
   * @param landscape the rig
   */
  public Comparison(ComparisonSpec spec, Landscape landscape) {
    this.spec = spec;
    this.landscape = landscape;
    this.scale = landscape.planScale();
    this.swing = spec.recording().size() * spec.frame().scale();
    this.period = 2 * Math.PI / landscape.motion().naturalRate();
    this.search =
        new PathSearch(landscape.motion(), spec.recording(), spec.frame(), scale.spacing(swing));
  }

  /** Places that a recording must have from the first one on that moves. */
  public static int fewest() {
    return PathSearch.FEWEST;
  }

  /** From where the path is foretold. */
  public Start start() {
    return new StartSearch(spec, landscape.motion(), search).run();
  }

  /**
   * Compares.
   *
   * @param start from where
   * @param path what was seen of the path from there
   * @param trustedUntil until when it is right, after the start; empty where that was not reached
   * @param progress told the part done; may throw to end the work
   */
  public ComparisonResult compare(
      Start start, Prediction path, OptionalDouble trustedUntil, DoubleConsumer progress) {
    return new Run(start, path, trustedUntil).result(progress);
  }

  /** One comparison under way. */
  private final class Run {

    private final Start start;
    private final Prediction path;
    private final OptionalDouble trusted;
    private final Recording plate;
    private final double noise;
    private final double least;
    private final Track track;
    private final double[] parts;

    Run(Start start, Prediction path, OptionalDouble trustedUntil) {
      this.start = start;
      this.path = path;
      this.trusted =
          trustedUntil.isPresent()
              ? OptionalDouble.of(start.time() + trustedUntil.getAsDouble())
              : trustedUntil;
      this.plate = spec.recording().onPlate(start.frame());
      this.noise = scatter();
      this.least = Math.min(noise, plate.noise());
      int count = path.count();
      double[] x = new double[count];
      double[] y = new double[count];
      double[] distance = new double[count];
      double[] deviation = new double[count];
      for (int i = 0; i < count; i++) {
        x[i] = path.x(i);
        y[i] = path.y(i);
        distance[i] = Math.hypot(offX(i), offY(i));
        deviation[i] = path.deviation(i);
      }
      this.track = new Track(start.stretch().first(), x, y, distance, deviation);
      this.parts = new double[count];
    }

    /**
     * Scatter about the path of a start that is fitted over the start's places: the noise where the
     * rig is as described, more where it is not. Third differences tell it without a path, but too
     * large where few places fall on a swing.
     */
    private double scatter() {
      if (spec.release().isEmpty()) {
        return start.scatter();
      }
      Start.Stretch stretch = start.stretch();
      return spec.frame().scale()
          * search
              .begun(search.framed(start.frame().mirrored()), stretch.first(), StartSearch.SWINGS)
              .scatter();
    }

    private double offX(int i) {
      return plate.x(start.stretch().first() + i) - path.x(i);
    }

    private double offY(int i) {
      return plate.y(start.stretch().first() + i) - path.y(i);
    }

    /** After the first recorded place. */
    private double time(int i) {
      return plate.since(start.stretch().first() + i);
    }

    ComparisonResult result(DoubleConsumer progress) {
      spread(progress);
      OptionalInt blurred = blurred();
      int known = known(blurred);
      boolean suspect = scattered(SUSPECT_PART);
      OptionalInt departed = departed(known);
      if (suspect && departed.isEmpty()) {
        departed = OptionalInt.of(0);
      }
      OptionalInt parted = parted();
      Verdict verdict = verdict(departed, parted);
      progress.accept(SPREAD_SHARE);
      List<Hint> hints = hints(verdict, departed);
      boolean framed = hints.stream().anyMatch(hint -> hint.kind().ofFrame());
      return new ComparisonResult(
          suspect && framed ? Verdict.FROM_START : verdict,
          track,
          noise,
          partedDistance(),
          at(parted),
          at(departed),
          trusted.isPresent() ? OptionalDouble.of(plate.t(0) + trusted.getAsDouble()) : trusted,
          at(blurred),
          nearness(known),
          end(),
          hints);
    }

    private OptionalDouble at(OptionalInt place) {
      return place.isPresent()
          ? OptionalDouble.of(plate.t(start.stretch().first() + place.getAsInt()))
          : OptionalDouble.empty();
    }

    /** How many places lie up to a time. */
    private int within(double until) {
      int count = 0;
      while (count < track.count() && time(count) <= until) {
        count++;
      }
      return count;
    }

    /** How many places lie before both horizons. */
    private int known(OptionalInt blurred) {
      return Math.min(
          within(trusted.orElse(Double.POSITIVE_INFINITY)), blurred.orElse(Integer.MAX_VALUE));
    }

    /** Adds what is not known of the parts, as far as the start's error leaves room. */
    private void spread(DoubleConsumer progress) {
      if (spec.tolerances().isEmpty() || !(landscape.layout() instanceof BenchLayout rig)) {
        return;
      }
      int known =
          Math.min(
              within(trusted.orElse(Double.POSITIVE_INFINITY)),
              blurred().orElse(Integer.MAX_VALUE));
      double[] rigs =
          PartsSpread.of(
              rig,
              landscape.motion(),
              spec.tolerances().get(),
              spec.recording(),
              start,
              known,
              part -> progress.accept(SPREAD_SHARE * part));
      for (int i = 0; i < known; i++) {
        parts[i] = rigs[i];
        track.deviation()[i] = Math.hypot(path.deviation(i), rigs[i]);
      }
    }

    /** The first place that is not foretold any more. */
    private OptionalInt blurred() {
      for (int i = 0; i < track.count(); i++) {
        if (FORETOLD * track.deviation()[i] >= scale.linearDistance(swing)) {
          return OptionalInt.of(i);
        }
      }
      return OptionalInt.empty();
    }

    private OptionalInt departed(int known) {
      Departure departure = new Departure(spec, search, start, noise, period);
      boolean[] doubted = new boolean[known];
      for (int i = 0; i < known; i++) {
        doubted[i] =
            track.distance()[i] > spec.agreesWithin()
                && departure.doubted(
                    path, i, new double[] {offX(i), offY(i)}, parts[i], scale.spacing(swing));
      }
      return departure.find(doubted);
    }

    private double partedDistance() {
      return Math.max(Math.max(scale.partedDistance(swing), CLEAR * least), spec.agreesWithin());
    }

    private OptionalInt parted() {
      int row = 0;
      for (int i = 0; i < track.count(); i++) {
        row = track.distance()[i] > partedDistance() ? row + 1 : 0;
        if (row == IN_A_ROW) {
          return OptionalInt.of(i + 1 - IN_A_ROW);
        }
      }
      return OptionalInt.empty();
    }

    private Verdict verdict(OptionalInt departed, OptionalInt parted) {
      if (scattered(FROM_START_PART) || apartAtFirst(departed, parted)) {
        return Verdict.FROM_START;
      }
      if (departed.isPresent()) {
        return Verdict.SOONER;
      }
      return parted.isPresent() ? Verdict.CHANCE : Verdict.AGREES;
    }

    /** Whether they are apart before a wrong rig could tell by its motion. */
    private boolean apartAtFirst(OptionalInt departed, OptionalInt parted) {
      boolean parts = parted.isPresent() && parted.getAsInt() < start.stretch().count();
      boolean misplaced =
          spec.release().isPresent()
              && departed.isPresent()
              && time(departed.getAsInt()) - time(0) <= AT_FIRST * period;
      return parts || misplaced;
    }

    /** Whether the residuals over the start's places are beyond a part of the swing, and noise. */
    private boolean scattered(double part) {
      double squares = 0;
      int count = Math.min(start.stretch().count(), track.count());
      for (int i = 0; i < count && spec.release().isPresent(); i++) {
        squares += path.deviation(i) * path.deviation(i) / count;
      }
      double alone = spec.release().isPresent() ? least : plate.noise();
      double allowed = Math.hypot(alone, Math.sqrt(squares));
      return start.scatter()
          > Math.max(Math.max(part * swing, FROM_START_TIMES * allowed), spec.agreesWithin());
    }

    private ComparisonResult.Nearness nearness(int known) {
      int count = Math.max(1, known);
      double greatest = 0;
      for (int i = 0; i < Math.min(count, track.count()); i++) {
        greatest = Math.max(greatest, track.distance()[i]);
      }
      int last = Math.max(0, Math.min(count, track.count()) - 1);
      return new ComparisonResult.Nearness(
          rms(start.stretch().count()),
          rms(count),
          greatest,
          plate.t(start.stretch().first() + last));
    }

    private double rms(int most) {
      int count = Math.min(most, track.count());
      double squares = 0;
      for (int i = 0; i < count; i++) {
        squares += track.distance()[i] * track.distance()[i];
      }
      return count > 0 ? Math.sqrt(squares / count) : 0;
    }

    private List<Hint> hints(Verdict verdict, OptionalInt departed) {
      if (verdict != Verdict.SOONER && verdict != Verdict.FROM_START) {
        return List.of();
      }
      double since = departed.isPresent() ? time(departed.getAsInt()) : time(0);
      return new HintSearch(spec, search, start, since, least / spec.frame().scale(), period).run();
    }

    /** Where the bob stays over the last small swing. */
    private Optional<RecordedEnd> end() {
      int last = plate.count() - 1;
      int from = last;
      while (from > 0 && plate.since(last) - plate.since(from) < period) {
        from--;
      }
      if (plate.since(last) - plate.since(from) < period) {
        return Optional.empty();
      }
      double x = 0;
      double y = 0;
      int count = last + 1 - from;
      for (int i = from; i <= last; i++) {
        x += plate.x(i) / count;
        y += plate.y(i) / count;
      }
      double still = Math.max(STILL_TIMES * least, STILL_PART * scale.spacing(swing));
      for (int i = from; i <= last; i++) {
        if (Math.hypot(plate.x(i) - x, plate.y(i) - y) > still) {
          return Optional.empty();
        }
      }
      return Optional.of(nearest(x, y));
    }

    private RecordedEnd nearest(double x, double y) {
      OptionalInt nearest = OptionalInt.empty();
      double least = Double.POSITIVE_INFINITY;
      for (RestPoint point : landscape.restPoints().list()) {
        double distance =
            point.continuum()
                ? Math.abs(Math.hypot(x, y) - Math.hypot(point.x(), point.y()))
                : Math.hypot(x - point.x(), y - point.y());
        if (distance < least) {
          least = distance;
          nearest = OptionalInt.of(point.index());
        }
      }
      return nearest.isPresent()
          ? new RecordedEnd(x, y, nearest, least, least <= BELONGS_PART * scale.spacing(swing))
          : new RecordedEnd(x, y, nearest, 0, false);
    }
  }
}
