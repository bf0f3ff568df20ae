package lodeswing.analysis.comparison;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import lodeswing.analysis.trace.Trace;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.analysis.trace.TraceSpec;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.recording.DipoleBench;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.RecordingFrame;

/** When chaotic recordings by other code part from what is foretold, and what is said of them. */
public final class ComparisonTrial {

  private static final int USUAL = 100;
  private static final double SECONDS = 10;
  private static final double LEAST = 0.05;
  private static final double MORE = 0.06;

  private ComparisonTrial() {}

  /**
   * A count.
   *
   * @param releases recordings of the rig as it is described
   * @param departed how many were said to part too soon
   * @param parted how many parted at all
   * @param before how many of these before the nearer horizon
   * @param near how many of these between that and three times as late
   * @param found recordings of a rig of another length that were said to part too soon
   * @param ratios time of parting over that horizon, sorted
   */
  record Count(
      int releases,
      int departed,
      int parted,
      int before,
      int near,
      int found,
      List<Double> ratios) {}

  /** Compares recordings of a ring of magnets, released at rest between 50 and 110 mm. */
  static Count of(int releases, double rate, double noise, long seed) {
    return of(releases, rate, noise, seed, 1);
  }

  private static Count of(int releases, double rate, double noise, long seed, double longer) {
    Landscape ring = Landscape.of(DipoleBench.ring().layout());
    Random random = new Random(seed);
    int departed = 0;
    int before = 0;
    int near = 0;
    int found = 0;
    List<Double> ratios = new ArrayList<>();
    for (int i = 0; i < releases; i++) {
      double turn = 2 * Math.PI * random.nextDouble();
      double out = LEAST + MORE * random.nextDouble();
      double x = out * Math.cos(turn);
      double y = out * Math.sin(turn);
      double[] times = DipoleBench.times(SECONDS, rate);
      ComparisonResult result =
          compared(
              ring,
              DipoleBench.ring().bob().record(x, y, times, RecordingFrame.PLATE, noise, random));
      departed += parts(result.verdict()) ? 1 : 0;
      if (result.partedAt().isPresent()) {
        double never = Double.POSITIVE_INFINITY;
        double horizon =
            Math.min(result.foretoldUntil().orElse(never), result.trustedUntil().orElse(never));
        double ratio = result.partedAt().getAsDouble() / horizon;
        ratios.add(ratio);
        before += ratio < 1 ? 1 : 0;
        near += ratio >= 1 && ratio <= 3 ? 1 : 0;
      }
      if (longer != 1) {
        Recording other =
            DipoleBench.ring()
                .longer(longer)
                .bob()
                .record(x, y, times, RecordingFrame.PLATE, noise, random);
        found += parts(compared(ring, other).verdict()) ? 1 : 0;
      }
    }
    Collections.sort(ratios);
    return new Count(releases, departed, ratios.size(), before, near, found, ratios);
  }

  private static boolean parts(Verdict verdict) {
    return verdict == Verdict.SOONER || verdict == Verdict.FROM_START;
  }

  private static ComparisonResult compared(Landscape landscape, Recording recording) {
    var spec =
        new ComparisonSpec(
            recording, RecordingFrame.PLATE, false, Optional.empty(), 0, Optional.empty());
    Comparison comparison = new Comparison(spec, landscape);
    Start start = comparison.start();
    double[] state = landscape.motion().toState(start.release()).orElseThrow();
    Prediction path = new Prediction(landscape, recording, start, state);
    double lasts = recording.since(recording.count() - 1) - start.time();
    TraceResult foretold =
        new Trace(landscape)
            .run(
                new TraceSpec(start.release(), lasts, lasts / 2, 1e-3, lasts),
                state,
                share -> {},
                path::look);
    OptionalDouble trusted = foretold.trustedUntil();
    return comparison.compare(start, path, trusted, share -> {});
  }

  /**
   * Tells the counts for two rates and three noises; ends with 1 where more than one in ten are
   * judged wrong.
   *
   * @param arguments how many recordings of each, or none for the usual number
   */
  public static void main(String[] arguments) {
    int releases = arguments.length > 0 ? Integer.parseInt(arguments[0]) : USUAL;
    boolean good = true;
    for (double rate : new double[] {30, 60}) {
      for (double noise : new double[] {5e-5, 2e-4, 5e-4}) {
        Count count = of(releases, rate, noise, 1, 1.02);
        List<Double> ratios = count.ratios();
        System.out.printf(
            "%.0f places a second, noise %.2f mm: %d of %d wrongly said to part too soon; %d part,"
                + " %d before the horizon, %d within three times it; parting over horizon %.2f %.2f"
                + " %.2f (tenth, half, nine tenths); a cord 2 %% longer found in %d%n",
            rate,
            1e3 * noise,
            count.departed(),
            count.releases(),
            count.parted(),
            count.before(),
            count.near(),
            ratios.get(ratios.size() / 10),
            ratios.get(ratios.size() / 2),
            ratios.get(ratios.size() * 9 / 10),
            count.found());
        good &= 10 * count.departed() <= releases && 10 * count.before() <= count.parted();
      }
    }
    System.exit(good ? 0 : 1);
  }
}
