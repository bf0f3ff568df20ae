package lodeswing.analysis.comparison;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.analysis.comparison.PathSearch.Found;
import lodeswing.analysis.comparison.PathSearch.Point;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.RecordingFrame;

/**
 * What alone would make a rig follow a recording that it does not follow: another clock, scale or
 * origin, axes that are turned or reversed.
 *
 * <p>Each is sought beside the start over a stretch that grows from three quarters of a swing on,
 * as long as the residuals are no more than the noise. It is told only where it explains the
 * recording beyond the departure and for a swing and a half or more, where its 95 % interval leaves
 * out what was stated, and where no other explains it for more than twice as long beyond the
 * departure. A release that is told is tried first, since another one may be all that is needed.
 */
final class HintSearch {

  private static final double FIRST_SWINGS = 0.75;
  private static final double LEAST_SWINGS = 1.5;
  private static final double GROWTH = 1.2;
  private static final int LEAST_STEP = 4;

  /** Frames that are looked at closer, of those that do best over the first stretch. */
  private static final int KEPT = 3;

  /** A turn that counts as none [rad]. */
  private static final double NO_TURN = Math.toRadians(2);

  private static final double[] TURNS = {0, Math.PI / 2, Math.PI, -Math.PI / 2};

  private final Recording recording;
  private final RecordingFrame frame;
  private final PathSearch search;
  private final Start start;
  private final boolean told;
  private final double departed;
  private final double noise;
  private final double period;

  /**
   * A search.
   *
   * @param spec what is compared
   * @param search seeks quantities
   * @param start the start that was taken
   * @param departed when the two parted, after the first recorded place [s]
   * @param noise of a recorded coordinate [m of the recording]
   * @param period of a small swing [s]
   */
  // One more than usual: what, by which means, from where, from when, and two scales.
  HintSearch(
      ComparisonSpec spec,
      PathSearch search,
      Start start,
      double departed,
      double noise,
      double period) {
    this.recording = spec.recording();
    this.frame = spec.frame();
    this.search = search;
    this.start = start;
    this.told = spec.release().isPresent();
    this.departed = departed;
    this.noise = noise;
    this.period = period;
  }

  /** All hints that explain the recording about as far as the best one. */
  List<Hint> run() {
    Point stated =
        search.begun(search.framed(start.point().mirrored()), first(), StartSearch.SWINGS).point();
    if (told) {
      Optional<Hint> another = hint(stated, Hint.Kind.RELEASE);
      if (another.isPresent()) {
        return List.of(another.get());
      }
    }
    List<Hint> hints = new ArrayList<>();
    for (Hint.Kind kind : List.of(Hint.Kind.PERIOD, Hint.Kind.SCALE, Hint.Kind.ORIGIN)) {
      hint(stated, kind).ifPresent(hints::add);
    }
    axes().ifPresent(hints::add);
    double best = hints.stream().mapToDouble(Hint::until).max().orElse(0);
    double enough = (best + recording.t(0) + departed) / 2;
    return hints.stream().filter(hint -> hint.until() >= enough).toList();
  }

  private int first() {
    return start.stretch().first();
  }

  /** Places of a stretch, a few more than a start needs. */
  private int count(double swings) {
    int most = recording.count() - first();
    return Math.min(most, Math.max(PathSearch.FEWEST + 2, search.count(first(), swings)));
  }

  /** Other directions of the axes: those that do best over the first stretch, grown. */
  private Optional<Hint> axes() {
    record Glance(Point point, double scatter) {}
    List<Glance> glances = new ArrayList<>();
    for (boolean mirrored : new boolean[] {false, true}) {
      for (double turn : TURNS) {
        Point framed = search.framed(mirrored).with(Quantity.TURN, frame.turn() + turn);
        Found begun = search.begun(framed, first(), StartSearch.SWINGS);
        Found found = search.fit(begun.point(), PathSearch.STATE, first(), count(FIRST_SWINGS));
        glances.add(new Glance(found.point(), found.scatter()));
      }
    }
    return glances.stream()
        .sorted((one, other) -> Double.compare(one.scatter(), other.scatter()))
        .limit(KEPT)
        .flatMap(glance -> hint(glance.point(), Hint.Kind.AXES).stream())
        .max((one, other) -> Double.compare(one.until(), other.until()));
  }

  private static List<Quantity> sought(Hint.Kind kind) {
    return switch (kind) {
      case PERIOD -> List.of(Quantity.CLOCK);
      case SCALE -> List.of(Quantity.SCALE);
      case ORIGIN -> List.of(Quantity.ORIGIN_X, Quantity.ORIGIN_Y);
      case AXES -> List.of(Quantity.TURN);
      case RELEASE -> List.of();
    };
  }

  private Optional<Hint> hint(Point from, Hint.Kind kind) {
    List<Quantity> free = new ArrayList<>(PathSearch.STATE);
    free.addAll(sought(kind));
    int count = count(FIRST_SWINGS);
    Found found = search.fit(from, free, first(), count);
    if (!explains(found)) {
      return Optional.empty();
    }
    int most = recording.count() - first();
    while (count < most) {
      int next = Math.min(most, Math.max(count + LEAST_STEP, (int) (count * GROWTH)));
      Found grown = search.fit(found.point(), free, first(), next);
      if (!explains(grown)) {
        break;
      }
      found = grown;
      count = next;
    }
    return told(found, kind, count);
  }

  private boolean explains(Found found) {
    return recording.explains(found.scatter(), found.regression().degreesOfFreedom(), noise);
  }

  private Optional<Hint> told(Found found, Hint.Kind kind, int count) {
    double until = recording.since(first() + count - 1);
    boolean reversed = found.point().mirrored() != start.point().mirrored();
    List<Hint.Change> changes = new ArrayList<>();
    boolean sure = false;
    for (Quantity quantity : sought(kind)) {
      int place = PathSearch.STATE.size() + changes.size();
      Hint.Change change = change(found, quantity, place);
      changes.add(change);
      sure |= found.regression().determined(place) && Math.abs(change.value()) > change.halfWidth();
    }
    boolean beyond = until > departed && until - recording.since(first()) >= LEAST_SWINGS * period;
    boolean another =
        switch (kind) {
          case RELEASE -> true;
          case AXES -> reversed || (sure && Math.abs(changes.get(0).value()) > NO_TURN);
          case PERIOD, SCALE, ORIGIN -> sure;
        };
    return beyond && another
        ? Optional.of(new Hint(kind, changes, reversed, recording.t(0) + until))
        : Optional.empty();
  }

  private Hint.Change change(Found found, Quantity quantity, int place) {
    double value = found.point().value(quantity);
    double half = found.regression().halfWidth(place);
    return switch (quantity) {
      case SCALE -> new Hint.Change(value / frame.scale() - 1, half / frame.scale());
      case TURN -> new Hint.Change(Math.IEEEremainder(value - frame.turn(), 2 * Math.PI), half);
      case ORIGIN_X -> new Hint.Change(value - frame.originX(), half);
      case ORIGIN_Y -> new Hint.Change(value - frame.originY(), half);
      case CLOCK -> new Hint.Change(value - 1, half);
      case X, Y, VX, VY, TIME -> new Hint.Change(value, half);
    };
  }
}
