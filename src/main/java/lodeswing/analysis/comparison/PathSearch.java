package lodeswing.analysis.comparison;

import java.util.ArrayList;
import java.util.Collection;
import java.util.List;
import java.util.Optional;
import lodeswing.core.motion.Motion;
import lodeswing.core.recording.Beginning;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.core.recording.TimedPlaces;
import lodeswing.core.regression.CurveModel;
import lodeswing.core.regression.FreeParameter;
import lodeswing.core.regression.NonlinearRegression;
import lodeswing.core.regression.Regression;
import lodeswing.core.rig.Release;

/**
 * Seeks a few quantities behind a stretch of a recording by least squares, the rig being as it is.
 */
final class PathSearch {

  /** A change that a path shows plainly, as a part of the swing. */
  private static final double PART = 0.1;

  private static final double TIME_PART = 0.02;
  private static final double FACTOR = 0.05;
  private static final double WIDEST = 1.5;
  private static final double STRAIGHT_PART = 2e-3;

  /** Near the cube root of a path's error. */
  private static final double SLOPE_STEP = 3e-4;

  /** Places that are needed at least. */
  static final int FEWEST = 6;

  /** What a start is told by. */
  static final List<Quantity> STATE = List.of(Quantity.X, Quantity.Y, Quantity.VX, Quantity.VY);

  /** Parts of a stretch over which a start is sought one after the other. */
  private static final double[] STAGES = {0.2, 0.4, 0.7, 1};

  private static final NonlinearRegression METHOD = new NonlinearRegression(1e-9, 60);

  private final Motion motion;
  private final Recording recording;
  private final RecordingFrame frame;
  private final double spacing;

  /**
   * A search.
   *
   * @param motion of the rig
   * @param recording what was recorded
   * @param frame as it is stated
   * @param spacing distance over which a path bends [m]
   */
  PathSearch(Motion motion, Recording recording, RecordingFrame frame, double spacing) {
    this.motion = motion;
    this.recording = recording;
    this.frame = frame;
    this.spacing = spacing;
  }

  /** Values of all quantities and whether the y axis is reversed. */
  static final class Point {

    private final double[] values;
    private final boolean mirrored;

    Point(double[] values, boolean mirrored) {
      this.values = values.clone();
      this.mirrored = mirrored;
    }

    double value(Quantity quantity) {
      return values[quantity.place()];
    }

    boolean mirrored() {
      return mirrored;
    }

    Point with(Quantity quantity, double value) {
      Point changed = new Point(values, mirrored);
      changed.values[quantity.place()] = value;
      return changed;
    }

    Release release() {
      return new Release(
          value(Quantity.X), value(Quantity.Y), value(Quantity.VX), value(Quantity.VY));
    }
  }

  /**
   * What was found over a stretch.
   *
   * @param point the values
   * @param regression the fit of the free ones
   */
  record Found(Point point, Regression regression) {

    /** Root of the residuals' squares over the degrees of freedom, of a coordinate [m]. */
    double scatter() {
      return regression.residualRms()
          * Math.sqrt(
              (double) regression.residualCount() / Math.max(1, regression.degreesOfFreedom()));
    }
  }

  /** The point of the stated frame, with the release and its time at 0. */
  Point stated() {
    return framed(frame.mirrored());
  }

  /** The same with the y axis reversed or not. */
  Point framed(boolean mirrored) {
    double[] values = new double[Quantity.values().length];
    values[Quantity.CLOCK.place()] = 1;
    values[Quantity.TURN.place()] = frame.turn();
    values[Quantity.SCALE.place()] = frame.scale();
    values[Quantity.ORIGIN_X.place()] = frame.originX();
    values[Quantity.ORIGIN_Y.place()] = frame.originY();
    return new Point(values, mirrored);
  }

  /** How the recording lies on the plate by a point's values. */
  RecordingFrame frame(Point point) {
    return new RecordingFrame(
        point.value(Quantity.ORIGIN_X),
        point.value(Quantity.ORIGIN_Y),
        point.value(Quantity.TURN),
        point.value(Quantity.SCALE),
        point.mirrored());
  }

  /** How many places lie within so many small swings of one, it included; as many as are needed. */
  int count(int first, double swings) {
    double period = 2 * Math.PI / motion.naturalRate();
    int last = Math.max(recording.within(recording.since(first) + swings * period), first + FEWEST);
    return Math.min(last, recording.count()) - first;
  }

  /**
   * The state at a place: from what parabolas through the places after it show, over a stretch that
   * grows in a few stages, since a bob near a magnet swings several times as fast as one without.
   *
   * @param framed how the recording lies on the plate
   * @param first the place
   * @param swings small swings that the stretch has in the end
   */
  Found begun(Point framed, int first, double swings) {
    double begin = recording.since(first);
    double[] seen = Beginning.of(recording, begin, 2 * Math.PI / motion.naturalRate());
    double[] place = new double[2];
    double[] velocity = new double[2];
    RecordingFrame lies = frame(framed);
    lies.toPlan(seen[0], seen[1], place);
    lies.velocityToPlan(seen[2], seen[3], velocity);
    Point point =
        framed
            .with(Quantity.X, place[0])
            .with(Quantity.Y, place[1])
            .with(Quantity.VX, velocity[0])
            .with(Quantity.VY, velocity[1])
            .with(Quantity.TIME, begin);
    Found found = fit(point, STATE, first, count(first, STAGES[0] * swings));
    for (int stage = 1; stage < STAGES.length; stage++) {
      found = fit(found.point(), STATE, first, count(first, STAGES[stage] * swings));
    }
    return found;
  }

  /**
   * Seeks some quantities.
   *
   * @param from where to begin
   * @param free what is sought; where it is nothing, the residuals alone are told
   * @param first the first place of the stretch
   * @param count how many places it has
   */
  Found fit(Point from, Collection<Quantity> free, int first, int count) {
    List<Quantity> sought = List.copyOf(free);
    double[] observed = new double[2 * count];
    for (int i = 0; i < count; i++) {
      observed[2 * i] = recording.x(first + i);
      observed[2 * i + 1] = recording.y(first + i);
    }
    if (sought.isEmpty()) {
      return new Found(from, Regression.without(recorded(from, first, count), observed));
    }
    List<FreeParameter> parameters = new ArrayList<>();
    sought.forEach(quantity -> parameters.add(parameter(quantity, from.value(quantity))));
    CurveModel curve =
        new CurveModel() {
          @Override
          public double[] values(double[] at) {
            return recorded(put(from, sought, at), first, count);
          }

          @Override
          public double straightOver() {
            return STRAIGHT_PART * spacing;
          }

          @Override
          public double slopeStep() {
            return SLOPE_STEP;
          }
        };
    Regression found = METHOD.fit(curve, parameters, observed);
    return new Found(put(from, sought, found.values()), found);
  }

  private static Point put(Point from, List<Quantity> sought, double[] values) {
    Point point = from;
    for (int k = 0; k < values.length; k++) {
      point = point.with(sought.get(k), values[k]);
    }
    return point;
  }

  private FreeParameter parameter(Quantity quantity, double start) {
    String name = quantity.name();
    double swing = recording.size() * frame.scale();
    double rate = motion.naturalRate();
    return switch (quantity) {
      case X, Y, ORIGIN_X, ORIGIN_Y -> FreeParameter.unbounded(name, start, PART * swing);
      case VX, VY -> FreeParameter.unbounded(name, start, PART * swing * rate);
      case TIME ->
          new FreeParameter(
              name,
              start,
              TIME_PART / rate,
              Math.min(start, -2 * Math.PI / rate),
              Math.max(start, recording.since(recording.count() - 1)));
      case CLOCK, SCALE -> new FreeParameter(name, start, FACTOR, start / WIDEST, start * WIDEST);
      case TURN -> FreeParameter.unbounded(name, start, PART);
    };
  }

  /** Places as they would have been recorded, x and y side by side. */
  private double[] recorded(Point point, int first, int count) {
    double begin = point.value(Quantity.TIME);
    double clock = point.value(Quantity.CLOCK);
    double[] plan =
        TimedPlaces.of(
            Optional.of(motion),
            point.release(),
            begin,
            i -> begin + (recording.since(first + i) - begin) / clock,
            count);
    RecordingFrame seen = frame(point);
    double[] recorded = new double[2 * count];
    for (int i = 0; i < count; i++) {
      seen.toRecording(plan[2 * i], plan[2 * i + 1], recorded, 2 * i);
    }
    return recorded;
  }
}
