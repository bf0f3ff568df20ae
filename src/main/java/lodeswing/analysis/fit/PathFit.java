package lodeswing.analysis.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.function.DoubleConsumer;
import lodeswing.analysis.fit.FitParameter.Role;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.recording.Beginning;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.core.regression.CurveModel;
import lodeswing.core.regression.FreeParameter;
import lodeswing.core.regression.NonlinearRegression;
import lodeswing.core.regression.Regression;
import lodeswing.core.regression.Slopes;

/**
 * Fits a rig and a frame to a recording by least squares over a stretch that grows.
 *
 * <p>A first stretch of less than a swing finds the release and the frame, from several guesses
 * where none is given; from one swing on the rig's figures are free, and up to three swings the
 * guesses that do worse are dropped. From there on the stretch grows by steps, each begun where the
 * last one ended: so the path that is sought stays near the recorded one, also where it is chaotic.
 * The stretch ends where the fitted path's own error at its far end, from the covariance of what is
 * sought, is an eighth of the magnets' spacing and no smaller step helps, or where the residuals
 * grow beyond the noise.
 *
 * <p>Source of the idea of a growing stretch: H. G. Bock, in Numerical Treatment of Inverse
 * Problems (1983) 95 (cited from memory), against whose multiple shooting it trades reach for a
 * path without seams.
 */
public final class PathFit {

  private static final double FIRST_SWINGS = 0.75;

  /** Stretches at which the guesses that do worse than others are dropped. */
  private static final double[] SWINGS = {1.25, 1.6, 2, 2.5, 3};

  /** Guesses within this many times the best one's scatter are kept. */
  private static final double STILL_GOOD = 1.3;

  private static final int MOST_KEPT = 4;

  /** Points of the path that is handed on for pictures. */
  private static final int KNOTS = 1_500;

  private static final double SAME_TURN = 0.01;

  /** Times the scatter. */
  private static final double SAME_PLACE = 1;

  private static final int FEWEST = 8;

  /** Turns that are tried where none is given [rad]. */
  private static final double[] TURNS = {
    0,
    Math.PI / 4,
    -Math.PI / 4,
    Math.PI / 2,
    -Math.PI / 2,
    3 * Math.PI / 4,
    -3 * Math.PI / 4,
    Math.PI
  };

  private static final double GROWTH = 1.35;
  private static final double LEAST_GROWTH = 1.02;
  private static final double GROWTH_OF_GROWTH = 1.1;
  private static final int LEAST_STEP = 4;

  /** Part of the spacing that the path's own error may have at the stretch's end. */
  private static final double SURE_PART = 0.125;

  /** Part of the spacing that it may have for a step to reach there. */
  private static final double STEP_PART = 0.03;

  /** Part of the spacing over which a path is taken to move straight. */
  private static final double STRAIGHT_PART = 2e-3;

  /** Near the cube root of a path's error. */
  private static final double SLOPE_STEP = 3e-4;

  /** How far off a figure is thought to be, in its scales, while guesses are compared. */
  private static final double KNOWN_TO = 2;

  /** For guesses, most of which are dropped. */
  private static final NonlinearRegression GLANCE = new NonlinearRegression(1e-3, 12);

  private static final NonlinearRegression ROUGH = new NonlinearRegression(1e-5, 40);
  private static final NonlinearRegression FINE = new NonlinearRegression(1e-9, 60);

  private final FitSpec spec;
  private final RecordedPath path;
  private final DoubleConsumer progress;

  /**
   * A fit.
   *
   * @param progress told the share of the recording that is fitted, from 0 to 1
   */
  public PathFit(FitSpec spec, DoubleConsumer progress) {
    this.spec = spec;
    this.path = new RecordedPath(spec);
    this.progress = progress;
  }

  /** Places that a recording must have for these quantities to be sought. */
  public static int fewest(int free) {
    return Math.max(FEWEST, (free + 1) / 2 + 4);
  }

  /** One state of the search. */
  private static final class Stage {

    private final double[] all;
    private final boolean mirrored;
    private final Regression regression;
    private final int used;

    Stage(double[] all, boolean mirrored, Regression regression, int used) {
      this.all = all;
      this.mirrored = mirrored;
      this.regression = regression;
      this.used = used;
    }

    double scatter() {
      return regression.residualRms()
          * Math.sqrt(
              (double) regression.residualCount() / Math.max(1, regression.degreesOfFreedom()));
    }
  }

  /**
   * Runs the fit.
   *
   * @throws IllegalArgumentException where the recording has fewer than {@link #fewest} places
   */
  public FitResult run() {
    int total = spec.recording().count();
    if (total < fewest(spec.freeCount())) {
      throw new IllegalArgumentException("too few places for " + spec.freeCount() + " quantities");
    }
    Stage stage = second(first());
    double growth = GROWTH;
    if (disagrees(stage)) {
      stage = fit(stage, true, stage.used, FINE);
    }
    if (disagrees(stage)) {
      return result(stage, FitResult.End.DISAGREES);
    }
    FitResult.End end = FitResult.End.WHOLE;
    while (stage.used < total) {
      progress.accept((double) stage.used / total);
      if (path.computed() > spec.mostPaths()) {
        end = FitResult.End.WORK;
        break;
      }
      int next = next(stage, growth);
      boolean shortest = next <= stage.used + LEAST_STEP || growth <= LEAST_GROWTH;
      if (errorAt(stage, next - 1) > SURE_PART * spec.spacing()) {
        end = FitResult.End.HORIZON;
        break;
      }
      Stage grown = fit(stage, true, next, ROUGH);
      if (disagrees(grown) && !shortest) {
        growth = 1 + (growth - 1) / 2;
        continue;
      }
      if (disagrees(grown)) {
        grown = fit(grown, true, next, FINE);
      }
      if (disagrees(grown)) {
        end = FitResult.End.DISAGREES;
        break;
      }
      stage = grown;
      growth = Math.min(GROWTH, 1 + (growth - 1) * GROWTH_OF_GROWTH);
    }
    return result(fit(stage, true, stage.used, FINE), end);
  }

  /** Where the next stretch ends: the path is known there well enough to be followed. */
  private int next(Stage stage, double growth) {
    int total = spec.recording().count();
    int least = Math.min(total, stage.used + LEAST_STEP);
    int next = Math.min(total, Math.max(least, (int) (stage.used * growth)));
    while (next > least && errorAt(stage, next - 1) > STEP_PART * spec.spacing()) {
      next = Math.max(least, stage.used + (next - stage.used) / 2);
    }
    return next;
  }

  private boolean disagrees(Stage stage) {
    return !spec.recording().explains(stage.scatter(), stage.regression.degreesOfFreedom());
  }

  private FitResult result(Stage stage, FitResult.End end) {
    List<Double> values = new ArrayList<>();
    for (double value : stage.all) {
      values.add(value);
    }
    return new FitResult(
        stage.regression,
        values,
        path.frame(stage.all, stage.mirrored),
        stage.used,
        end,
        path.plan(stage.all, stage.used),
        path.knots(stage.all, spec.recording().since(stage.used - 1), KNOTS));
  }

  /** All guesses, fitted over less than a swing, the rig as it is thought to be. */
  private List<Stage> first() {
    int count = samples(FIRST_SWINGS);
    List<Stage> stages = new ArrayList<>();
    for (Guess guess : guesses()) {
      Stage begun = start(guess, count);
      stages.add(fit(begun, false, count, GLANCE));
    }
    return stages;
  }

  /** The best of all that came of the guesses, the rig's figures free. */
  private Stage second(List<Stage> first) {
    List<Stage> stages = glanced(first);
    for (double swings : SWINGS) {
      List<Stage> grown = new ArrayList<>();
      for (Stage stage : distinct(stages)) {
        grown.add(fit(stage, true, samples(swings), ROUGH, true));
      }
      grown.sort(Comparator.comparingDouble(Stage::scatter));
      double most = STILL_GOOD * grown.get(0).scatter();
      stages = grown.stream().filter(stage -> stage.scatter() <= most).limit(MOST_KEPT).toList();
    }
    return stages.stream().min(Comparator.comparingDouble(PathFit::turned)).orElseThrow();
  }

  /** The better half of the guesses, or so, over one swing. */
  private List<Stage> glanced(List<Stage> first) {
    List<Stage> grown = new ArrayList<>();
    for (Stage stage : distinct(first)) {
      grown.add(fit(stage, true, samples(1), GLANCE, true));
    }
    grown.sort(Comparator.comparingDouble(Stage::scatter));
    return grown.subList(0, Math.min(grown.size(), 2 * MOST_KEPT));
  }

  /** Those that ended at one frame stand for one. */
  private static List<Stage> distinct(List<Stage> stages) {
    List<Stage> kept = new ArrayList<>();
    for (Stage stage : stages) {
      if (kept.stream()
          .noneMatch(other -> other.mirrored == stage.mirrored && near(other, stage))) {
        kept.add(stage);
      }
    }
    return kept;
  }

  private static boolean near(Stage one, Stage other) {
    double turn = one.all[Role.TURN.place()] - other.all[Role.TURN.place()];
    double x = one.all[Role.ORIGIN_X.place()] - other.all[Role.ORIGIN_X.place()];
    double y = one.all[Role.ORIGIN_Y.place()] - other.all[Role.ORIGIN_Y.place()];
    return Math.abs(Math.IEEEremainder(turn, 2 * Math.PI)) < SAME_TURN
        && Math.hypot(x, y) < SAME_PLACE * one.scatter();
  }

  private static double turned(Stage stage) {
    return Math.abs(stage.all[Role.TURN.place()]) + (stage.mirrored ? 2 * Math.PI : 0);
  }

  private int samples(double swings) {
    int least = fewest(spec.freeCount());
    int within = spec.recording().within(swings * spec.period() + held());
    return Math.min(spec.recording().count(), Math.max(least, within));
  }

  /** How long the bob is held at first, as far as known. */
  private double held() {
    return spec.parameters().get(Role.RELEASE_TIME.place()).value().start();
  }

  private Stage start(Guess guess, int count) {
    double[] all = begin(guess);
    return new Stage(all, guess.mirrored, unfitted(all, guess.mirrored, count), count);
  }

  private Regression unfitted(double[] all, boolean mirrored, int count) {
    return Regression.without(path.recorded(all, mirrored, count), observed(count));
  }

  /** Where a search begins. */
  private record Guess(double originX, double originY, double turn, boolean mirrored) {}

  private List<Guess> guesses() {
    FitParameter turn = spec.parameters().get(Role.TURN.place());
    double[] turns = turn.free() && !turn.given() ? TURNS : new double[] {turn.value().start()};
    List<Boolean> mirrorings =
        switch (spec.mirroring()) {
          case NONE -> List.of(false);
          case MIRRORED -> List.of(true);
          case UNKNOWN -> List.of(false, true);
        };
    List<Guess> guesses = new ArrayList<>();
    for (boolean mirrored : mirrorings) {
      for (double angle : turns) {
        guesses.addAll(origins(angle, mirrored));
      }
    }
    return guesses;
  }

  /**
   * The origin that is given, or else those that bring the recording's middle to the plate's and,
   * where the swing is smaller than the magnets' spacing, to the places that it may swing about.
   */
  private List<Guess> origins(double turn, boolean mirrored) {
    FitParameter x = spec.parameters().get(Role.ORIGIN_X.place());
    FitParameter y = spec.parameters().get(Role.ORIGIN_Y.place());
    double givenX = x.value().start();
    double givenY = y.value().start();
    if (!(x.free() && y.free()) || x.given() || y.given()) {
      return List.of(new Guess(givenX, givenY, turn, mirrored));
    }
    double scale = spec.parameters().get(Role.SCALE.place()).value().start();
    RecordingFrame frame = new RecordingFrame(0, 0, turn, scale, mirrored);
    double[] middle = new double[2];
    frame.toPlan(
        Beginning.middle(spec.recording(), true),
        Beginning.middle(spec.recording(), false),
        middle);
    List<Guess> guesses = new ArrayList<>();
    guesses.add(new Guess(givenX, givenY, turn, mirrored));
    guesses.add(new Guess(-middle[0], -middle[1], turn, mirrored));
    if (spec.recording().size() < spec.spacing()) {
      for (Vec3 about : spec.anchors()) {
        guesses.add(new Guess(about.x() - middle[0], about.y() - middle[1], turn, mirrored));
      }
    }
    return guesses;
  }

  /** All quantities at the beginning of a search. */
  private double[] begin(Guess guess) {
    double[] all = spec.parameters().stream().mapToDouble(p -> p.value().start()).toArray();
    all[Role.ORIGIN_X.place()] = guess.originX;
    all[Role.ORIGIN_Y.place()] = guess.originY;
    all[Role.TURN.place()] = guess.turn;
    RecordingFrame frame = path.frame(all, guess.mirrored);
    double[] seen = Beginning.of(spec.recording(), held(), spec.period());
    double[] place = new double[2];
    double[] velocity = new double[2];
    frame.toPlan(seen[0], seen[1], place);
    frame.velocityToPlan(seen[2], seen[3], velocity);
    double[] begun = {place[0], place[1], velocity[0], velocity[1]};
    for (int k = 0; k < begun.length; k++) {
      FitParameter parameter = spec.parameters().get(k);
      if (parameter.free() && !parameter.given()) {
        all[k] = begun[k];
      }
    }
    return all;
  }

  /** The fit over a stretch, from where another one ended. */
  private Stage fit(Stage from, boolean figures, int count, NonlinearRegression method) {
    return fit(from, figures, count, method, false);
  }

  /** The same with the figures drawn towards what they are thought to be. */
  private Stage fit(
      Stage from, boolean figures, int count, NonlinearRegression method, boolean drawn) {
    List<Integer> places = new ArrayList<>();
    List<FreeParameter> free = new ArrayList<>();
    for (int k = 0; k < spec.parameters().size(); k++) {
      FitParameter parameter = spec.parameters().get(k);
      if (parameter.free() && (figures || parameter.role() != Role.FIGURE)) {
        places.add(k);
        free.add(parameter.value().from(from.all[k]));
      }
    }
    Curve curve = new Curve(from, places, count, drawn);
    double[] observed = curve.observed();
    if (free.isEmpty()) {
      // Nothing of the release or the frame is sought; the rig's figures wait for a longer stretch.
      return new Stage(from.all, from.mirrored, unfitted(from.all, from.mirrored, count), count);
    }
    Regression regression = method.fit(curve, free, observed);
    return new Stage(put(from.all, places, regression.values()), from.mirrored, regression, count);
  }

  private static double[] put(double[] all, List<Integer> places, double[] values) {
    double[] changed = all.clone();
    for (int k = 0; k < values.length; k++) {
      changed[places.get(k)] = values[k];
    }
    return changed;
  }

  private double[] observed(int count) {
    double[] observed = new double[2 * count];
    for (int i = 0; i < count; i++) {
      observed[2 * i] = spec.recording().x(i);
      observed[2 * i + 1] = spec.recording().y(i);
    }
    return observed;
  }

  /** The recorded places over a stretch, by the quantities that are sought. */
  private final class Curve implements CurveModel {

    private final Stage from;
    private final List<Integer> places;
    private final int count;
    private final List<Integer> drawn;

    Curve(Stage from, List<Integer> places, int count, boolean drawn) {
      this.from = from;
      this.places = places;
      this.count = count;
      this.drawn =
          drawn ? places.stream().filter(k -> k >= Role.FIGURE.place()).toList() : List.of();
    }

    @Override
    public double[] values(double[] parameters) {
      double[] all = put(from.all, places, parameters);
      double[] values = Arrays.copyOf(path.recorded(all, from.mirrored, count), length());
      for (int i = 0; i < drawn.size(); i++) {
        FreeParameter figure = spec.parameters().get(drawn.get(i)).value();
        double off = (all[drawn.get(i)] - figure.start()) / (KNOWN_TO * figure.scale());
        values[2 * count + i] = from.scatter() * off;
      }
      return values;
    }

    private int length() {
      return 2 * count + drawn.size();
    }

    /** What it is to meet: the recorded places, and no figure off what it is thought to be. */
    double[] observed() {
      return Arrays.copyOf(PathFit.this.observed(count), length());
    }

    @Override
    public double straightOver() {
      return STRAIGHT_PART * spec.spacing();
    }

    @Override
    public double slopeStep() {
      return SLOPE_STEP;
    }
  }

  /** Standard error of the path itself at a later place [m of the recording]. */
  private double errorAt(Stage stage, int place) {
    List<Integer> places = new ArrayList<>();
    for (int k = 0; k < stage.all.length; k++) {
      if (spec.parameters().get(k).free()) {
        places.add(k);
      }
    }
    Curve curve = new Curve(stage, places, place + 1, false);
    double[] at = places.stream().mapToDouble(k -> stage.all[k]).toArray();
    double[][] slopes = new Slopes(curve, stage.regression.parameters()).at(at, curve.values(at));
    return Math.hypot(
        stage.regression.standardErrorOf(slopes[2 * place]),
        stage.regression.standardErrorOf(slopes[2 * place + 1]));
  }
}
