package lodeswing.benchmark;

import java.util.concurrent.TimeUnit;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinder;
import lodeswing.core.outcome.OutcomeFinders;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OperationsPerInvocation;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.OptionsBuilder;

/**
 * Time a release of the textbook scene, one thread, sealing on in all, at matched labels.
 *
 * <p>Each contender runs at the loosest tolerance of a ladder of half decades at which its labels
 * that differ from those at 1e-12 are at most 5 of 65,536. Lanes are counted and timed on all 256
 * by 256 releases over [-2, 2]^2; the others counted on every second one each way, where at most
 * one may differ, and timed on every fourth. {@code multiplyAdd} is a plain loop a b + c, which the
 * compiler turns into vectors, to compare machines by.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 2)
@Measurement(iterations = 5, time = 2)
@Fork(1)
public class LaneBenchmark {

  private static final int SIDE = 256;
  private static final int BATCH = 4096;
  private static final double[] LADDER = {
    1e-4, 3e-5, 1e-5, 3e-6, 1e-6, 3e-7, 1e-7, 3e-8, 1e-8, 3e-9, 1e-9, 3e-10, 1e-10, 3e-11, 1e-11
  };

  /** Who runs. */
  @Param({"ours", "CM DP853", "CM DP54", "HP DP853", "HP DP54"})
  public String contender = "ours";

  private final TextbookScene scene = new TextbookScene();
  private Contender runner = Contender.of("ours", scene.motion);
  private double tolerance = 1e-6;
  private final double[] batch = grid(64);

  private static OutcomeFinder lanes(TextbookScene scene, Tolerance tolerance) {
    return new OutcomeFinders(LaneProvider.choose())
        .of(scene.landscape, tolerance, TextbookScene.DURATION);
  }

  /** Ends at 1e-12. */
  private static Ends truth(TextbookScene scene, double[] releases) {
    int count = releases.length / 4;
    Ends truth = new Ends(count);
    lanes(scene, new Tolerance(1e-13, 1e-12)).find(releases, 0, count, truth);
    return truth;
  }

  private static double[] grid(int side) {
    double[] releases = new double[4 * side * side];
    for (int i = 0; i < side; i++) {
      for (int j = 0; j < side; j++) {
        releases[4 * (i * side + j)] = -2 + (i + 0.5) * 4 / side;
        releases[4 * (i * side + j) + 1] = -2 + (j + 0.5) * 4 / side;
      }
    }
    return releases;
  }

  /** Finds the loosest tolerance with right labels. */
  @Setup
  public void match() {
    double[] releases = grid(SIDE / 2);
    Ends truth = truth(scene, releases);
    runner = Contender.of(contender, scene.motion);
    for (double candidate : LADDER) {
      int wrong = wrong(candidate, releases, truth, 1);
      if (wrong <= 1) {
        tolerance = candidate;
        say(contender, candidate, wrong, truth);
        return;
      }
    }
    throw new IllegalStateException(contender + " finds no tolerance");
  }

  private static void say(String contender, double tolerance, int wrong, Ends truth) {
    System.out.printf(
        "%n%s: tolerance %.0e, %d of %d labels differ%n",
        contender, tolerance, wrong, truth.size());
  }

  private int wrong(double candidate, double[] releases, Ends truth, int allowed) {
    int wrong = 0;
    for (int i = 0; i < truth.size() && wrong <= allowed; i++) {
      double[] start = {releases[4 * i], releases[4 * i + 1], 0, 0};
      wrong += label(start, candidate) == truth.end(i) ? 0 : 1;
    }
    return wrong;
  }

  private int label(double[] start, double at) {
    return scene.label(runner.run(start, TextbookScene.DURATION, at, scene.sealed));
  }

  /** Time a release. */
  @Benchmark
  @OperationsPerInvocation(BATCH)
  public int release() {
    int sum = 0;
    for (int i = 0; i < BATCH; i++) {
      sum += label(new double[] {batch[4 * i], batch[4 * i + 1], 0, 0}, tolerance);
    }
    return sum;
  }

  /** All releases of the grid on lanes. */
  @State(Scope.Thread)
  public static class Lanes {

    private final TextbookScene scene = new TextbookScene();
    private final double[] releases = grid(SIDE);
    private final Ends ends = new Ends(SIDE * SIDE);
    private OutcomeFinder finder = lanes(scene, Tolerance.of(1e-6));

    /** Finds the loosest tolerance with right labels. */
    @Setup
    public void match() {
      Ends truth = truth(scene, releases);
      for (double candidate : LADDER) {
        finder = lanes(scene, Tolerance.of(candidate));
        finder.find(releases, 0, SIDE * SIDE, ends);
        int wrong = 0;
        for (int i = 0; i < truth.size(); i++) {
          wrong += ends.end(i) == truth.end(i) ? 0 : 1;
        }
        if (wrong <= 5) {
          say("lanes", candidate, wrong, truth);
          return;
        }
      }
      throw new IllegalStateException("lanes find no tolerance");
    }

    /** Time a release. */
    @Benchmark
    @OperationsPerInvocation(SIDE * SIDE)
    @Warmup(iterations = 3, time = 2)
    @Measurement(iterations = 5, time = 2)
    @Fork(1)
    @BenchmarkMode(Mode.AverageTime)
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public int release() {
      finder.find(releases, 0, SIDE * SIDE, ends);
      return ends.end(0);
    }
  }

  /** A plain loop of multiply-adds, to compare machines by. */
  @State(Scope.Thread)
  public static class Loop {

    private static final int SIZE = 1024;
    private final double[] a = new double[SIZE];
    private final double[] b = new double[SIZE];
    private final double[] c = new double[SIZE];

    /** Time of an a b + c. */
    @Benchmark
    @OperationsPerInvocation(SIZE)
    @Warmup(iterations = 3, time = 1)
    @Measurement(iterations = 5, time = 1)
    @Fork(1)
    @BenchmarkMode(Mode.AverageTime)
    @OutputTimeUnit(TimeUnit.NANOSECONDS)
    public double multiplyAdd() {
      for (int i = 0; i < SIZE; i++) {
        c[i] = Math.fma(a[i], b[i], c[i]);
      }
      return c[0];
    }
  }

  /** Runs this benchmark. */
  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(LaneBenchmark.class.getSimpleName()).build()).run();
  }
}
