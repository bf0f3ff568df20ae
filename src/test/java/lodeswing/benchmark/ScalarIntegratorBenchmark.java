package lodeswing.benchmark;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
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
 * Time for 1,024 releases of the textbook scene, each until sealed, at equal measured error.
 *
 * <p>Each contender runs at the loosest tolerance with which its error at t = 10 is at most the one
 * wanted. Its labels that differ from those of a run at 1e-12 are printed beside.
 */
@State(Scope.Benchmark)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.MILLISECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class ScalarIntegratorBenchmark {

  /** Who runs. */
  @Param({
    "ours",
    "CM DP853",
    "CM DP54",
    "CM HH54",
    "CM GBS",
    "CM AB6",
    "CM AB7",
    "CM AM7",
    "HP DP853",
    "HP DP54",
    "HP HH54",
    "HP GBS",
    "HP AB6",
    "HP AB7",
    "HP AM7"
  })
  public String contender = "ours";

  /** Error at t = 10. */
  @Param({"1e-5", "1e-7"})
  public double error = 1e-5;

  private final TextbookScene scene = new TextbookScene();
  private Contender runner = Contender.of("ours", scene.motion);
  private double tolerance = 1e-6;

  /** Finds the tolerance and counts wrong labels. */
  @Setup
  public void match() {
    runner = Contender.of(contender, scene.motion);
    AccuracyMatch match = new AccuracyMatch(scene.motion, TextbookScene.sample(48, 2), 10);
    tolerance = match.tolerance(runner, error);
    if (Double.isNaN(tolerance)) {
      throw new IllegalStateException(contender + " does not reach " + error);
    }
    Contender reference = Contender.of("ours general", scene.motion);
    int wrong = 0;
    runner.evaluations = 0;
    for (double[] release : scene.releases) {
      int label = scene.label(runner.run(release, TextbookScene.DURATION, tolerance, scene.sealed));
      int truth = scene.label(reference.run(release, TextbookScene.DURATION, 1e-12, scene.sealed));
      wrong += label == truth ? 0 : 1;
    }
    System.out.printf(
        "%n%s: tolerance %.2e, %d evaluations a release, %d of %d labels differ%n",
        contender,
        tolerance,
        runner.evaluations / scene.releases.length,
        wrong,
        scene.releases.length);
  }

  /** All releases. */
  @Benchmark
  public int releases() {
    int sum = 0;
    for (double[] release : scene.releases) {
      sum += scene.label(runner.run(release, TextbookScene.DURATION, tolerance, scene.sealed));
    }
    return sum;
  }

  /** Runs this benchmark. */
  public static void main(String[] args) throws RunnerException {
    new Runner(
            new OptionsBuilder().include(ScalarIntegratorBenchmark.class.getSimpleName()).build())
        .run();
  }
}
