package lodeswing.analysis.trace;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import java.util.stream.IntStream;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;

/**
 * The trust horizon on trial: each release once as traces run it and once much more exactly; where
 * the two part by the stated distance is what was possible.
 */
public final class TrustTrial {

  /** A hundredfold tighter than {@link Tolerance#TRACE}. */
  public static final Tolerance REFERENCE = new Tolerance(1e-14, 1e-13);

  private static final double HAND = 1e-6;

  private final Landscape landscape;
  private final Motion judge;
  private final double duration;
  private final double interval;

  /**
   * A trial on a landscape.
   *
   * @param landscape what traces run on
   * @param judge the motion of the more exact run: the landscape's own, or one by the exact energy
   */
  public TrustTrial(Landscape landscape, Motion judge) {
    this.landscape = landscape;
    this.judge = judge;
    boolean bench = landscape.layout() instanceof BenchLayout;
    this.duration = bench ? 40 : 100;
    this.interval = bench ? 0.02 : 0.05;
  }

  /**
   * One release.
   *
   * @param trusted horizon with the table's error
   * @param withoutTable horizon with the integrator's error alone
   * @param parted when the two runs were first apart by the stated distance
   */
  public record Outcome(
      OptionalDouble trusted, OptionalDouble withoutTable, OptionalDouble parted) {

    /** Whether the runs parted while the path was still said to be right. */
    public boolean broken() {
      return parted.isPresent()
          && (trusted.isEmpty() || parted.getAsDouble() < trusted.getAsDouble());
    }

    /** The horizon as a part of what was possible, where both exist. */
    public OptionalDouble share() {
      return trusted.isPresent() && parted.isPresent()
          ? OptionalDouble.of(trusted.getAsDouble() / parted.getAsDouble())
          : OptionalDouble.empty();
    }

    /** Whether a horizon is stated though the runs never parted. */
    public boolean needless() {
      return trusted.isPresent() && parted.isEmpty();
    }
  }

  /** Releases at rest, drawn evenly over a square round the middle. */
  public List<Outcome> releases(int count, long seed) {
    Motion motion = landscape.motion();
    double reach = landscape.layout() instanceof BenchLayout ? 0.13 : 1.5;
    Random random = new Random(seed);
    List<double[]> starts = new ArrayList<>();
    while (starts.size() < count) {
      double x = reach * (2 * random.nextDouble() - 1);
      double y = reach * (2 * random.nextDouble() - 1);
      Optional<double[]> start = motion.toState(new Release(x, y, 0, 0));
      if (start.isPresent() && inside(motion, start.get())) {
        starts.add(start.get());
      }
    }
    return IntStream.range(0, count).parallel().mapToObj(i -> run(starts.get(i))).toList();
  }

  private static boolean inside(Motion motion, double[] state) {
    for (Limit limit : motion.limits()) {
      if (limit.margin(state) <= 0) {
        return false;
      }
    }
    return true;
  }

  private Outcome run(double[] start) {
    TraceSpec spec = new TraceSpec(new Release(0, 0, 0, 0), duration, interval, HAND, duration);
    Horizons full = new Horizons(landscape, spec, start, landscape.tableErrors().acceleration());
    Horizons alone = new Horizons(landscape, spec, start, 0);
    List<double[]> path = path(landscape.motion(), start, Tolerance.TRACE, List.of(full, alone));
    List<double[]> exact = path(judge, start, REFERENCE, List.of());
    double limit =
        landscape.planScale().trustedDistance(Math.hypot(path.get(0)[0], path.get(0)[1]));
    OptionalDouble parted = OptionalDouble.empty();
    for (int i = 0; i < Math.min(path.size(), exact.size()); i++) {
      double x = path.get(i)[0] - exact.get(i)[0];
      double y = path.get(i)[1] - exact.get(i)[1];
      if (Math.hypot(x, y) > limit) {
        parted = OptionalDouble.of(i * interval);
        break;
      }
    }
    return new Outcome(full.trustedUntil(), alone.trustedUntil(), parted);
  }

  /** Plan positions on the grid, as far as the model holds. */
  private List<double[]> path(
      Motion motion, double[] start, Tolerance tolerance, List<Horizons> horizons) {
    List<double[]> path = new ArrayList<>();
    double[] state = new double[4];
    ScalarIntegrator.forMotion(motion)
        .integrate(
            start,
            duration,
            tolerance,
            step -> {
              horizons.forEach(h -> h.look(step, step.endTime()));
              while (path.size() * interval <= step.endTime()) {
                double[] plan = new double[4];
                step.at(Math.max(step.startTime(), path.size() * interval), state);
                motion.toPlan(state, plan);
                path.add(plan);
              }
              step.endState(state);
              return inside(motion, state) && motion.slideMargin(state) > 0;
            });
    return path;
  }

  /** The median share; NaN where no release has one. */
  static double medianShare(List<Outcome> outcomes) {
    double[] shares =
        outcomes.stream().map(Outcome::share).flatMapToDouble(OptionalDouble::stream).toArray();
    Arrays.sort(shares);
    return shares.length == 0 ? Double.NaN : shares[shares.length / 2];
  }

  /** One line of a report. */
  public static String line(String name, List<Outcome> outcomes) {
    double[] shares =
        outcomes.stream().map(Outcome::share).flatMapToDouble(OptionalDouble::stream).toArray();
    Arrays.sort(shares);
    int n = shares.length;
    double[] alone =
        outcomes.stream()
            .filter(o -> o.withoutTable().isPresent() && o.parted().isPresent())
            .mapToDouble(o -> o.withoutTable().getAsDouble() / o.parted().getAsDouble())
            .sorted()
            .toArray();
    long brokenAlone = Arrays.stream(alone).filter(share -> share > 1).count();
    return String.format(
        Locale.ROOT,
        "%-26s releases %3d broken %2d needless %2d compared %3d share least %.2f median %.2f most"
            + " %.2f | table set aside: over %d median %.2f",
        name,
        outcomes.size(),
        outcomes.stream().filter(Outcome::broken).count(),
        outcomes.stream().filter(Outcome::needless).count(),
        n,
        n > 0 ? shares[0] : Double.NaN,
        n > 0 ? shares[n / 2] : Double.NaN,
        n > 0 ? shares[n - 1] : Double.NaN,
        brokenAlone,
        alone.length > 0 ? alone[alone.length / 2] : Double.NaN);
  }
}
