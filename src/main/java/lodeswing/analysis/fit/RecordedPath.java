package lodeswing.analysis.fit;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.analysis.fit.FitParameter.Role;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.motion.Motion;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.core.recording.TimedPlaces;
import lodeswing.core.rig.Release;

/**
 * The places at which a bob would have been recorded, for every value of what is sought.
 *
 * <p>Keeps the last few paths and rigs, since slopes ask for the same ones again and again. For one
 * thread.
 */
final class RecordedPath {

  private static final int KEPT = 4;

  private final FitSpec spec;
  private int counted;
  private final Map<List<Double>, Optional<Motion>> rigs = latest();
  private final Map<List<Double>, double[]> paths = latest();

  RecordedPath(FitSpec spec) {
    this.spec = spec;
  }

  private static <V> Map<List<Double>, V> latest() {
    return new LinkedHashMap<>(2 * KEPT, 0.75f, true) {
      @Override
      protected boolean removeEldestEntry(Map.Entry<List<Double>, V> eldest) {
        return size() > KEPT;
      }
    };
  }

  /** How many paths were computed. */
  int computed() {
    return counted;
  }

  /** The frame of the values of all quantities. */
  RecordingFrame frame(double[] all, boolean mirrored) {
    return new RecordingFrame(
        all[Role.ORIGIN_X.place()],
        all[Role.ORIGIN_Y.place()],
        all[Role.TURN.place()],
        all[Role.SCALE.place()],
        mirrored);
  }

  /**
   * Recorded places x, y side by side.
   *
   * @param all values of all quantities
   * @param count of the first places
   */
  double[] recorded(double[] all, boolean mirrored, int count) {
    double[] plan = plan(all, count);
    RecordingFrame frame = frame(all, mirrored);
    double[] recorded = new double[2 * count];
    for (int i = 0; i < count; i++) {
      frame.toRecording(plan[2 * i], plan[2 * i + 1], recorded, 2 * i);
    }
    return recorded;
  }

  /** Plan places x, y side by side. */
  double[] plan(double[] all, int count) {
    List<Double> key = new ArrayList<>();
    key.add((double) count);
    for (int k = 0; k < all.length; k++) {
      boolean framed = k >= Role.ORIGIN_X.place() && k <= Role.SCALE.place();
      if (!framed) {
        key.add(all[k]);
      }
    }
    double[] kept = paths.get(key);
    if (kept == null) {
      kept = computed(all, count);
      paths.put(key, kept);
    }
    return kept;
  }

  /** The rig of the values of all quantities. */
  Optional<Motion> motion(double[] all) {
    List<Double> figures = new ArrayList<>();
    for (int k = Role.FIGURE.place(); k < all.length; k++) {
      figures.add(all[k]);
    }
    Optional<Motion> kept = rigs.get(figures);
    if (kept == null) {
      kept = spec.family().motion(figures);
      rigs.put(figures, kept);
    }
    return kept;
  }

  /**
   * The path itself from the release on: rows t after the first recorded place, x, y, vx, vy.
   *
   * @param until when it ends, after the first recorded place [s]
   * @param most columns at most
   */
  double[][] knots(double[] all, double until, int most) {
    Release release =
        new Release(
            all[Role.X.place()], all[Role.Y.place()], all[Role.VX.place()], all[Role.VY.place()]);
    double begin = all[Role.RELEASE_TIME.place()];
    double duration = Math.max(0, until - begin);
    double[][] knots = new double[5][most];
    Optional<Motion> motion = motion(all);
    Optional<double[]> start = motion.flatMap(rig -> rig.toState(release));
    int[] taken = {0};
    if (motion.isPresent() && start.isPresent() && duration > 0) {
      double[] state = new double[4];
      double[] plan = new double[4];
      try {
        ScalarIntegrator.forMotion(motion.get())
            .integrate(
                start.get(),
                duration,
                TimedPlaces.TOLERANCE,
                step -> {
                  while (taken[0] < most && duration * taken[0] / (most - 1) <= step.endTime()) {
                    double at = duration * taken[0] / (most - 1);
                    step.at(Math.max(at, step.startTime()), state);
                    motion.get().toPlan(state, plan);
                    knots[0][taken[0]] = begin + at;
                    for (int k = 0; k < plan.length; k++) {
                      knots[k + 1][taken[0]] = plan[k];
                    }
                    taken[0]++;
                  }
                  return true;
                });
      } catch (IntegrationFailure e) {
        // What there is until then is the path.
        taken[0] = Math.min(taken[0], most);
      }
    }
    for (int k = 0; k < knots.length; k++) {
      knots[k] = Arrays.copyOf(knots[k], taken[0]);
    }
    return knots;
  }

  private double[] computed(double[] all, int count) {
    counted++;
    Release release =
        new Release(
            all[Role.X.place()], all[Role.Y.place()], all[Role.VX.place()], all[Role.VY.place()]);
    return TimedPlaces.of(
        motion(all), release, all[Role.RELEASE_TIME.place()], spec.recording()::since, count);
  }
}
