package lodeswing.benchmark;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;

import java.util.Random;
import java.util.concurrent.TimeUnit;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneKernel;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.integrate.lane.NystromKernel;
import lodeswing.core.integrate.lane.RungeKuttaKernel;
import lodeswing.core.integrate.lane.RungeKuttaPair;
import lodeswing.core.integrate.lane.Watch;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Motion;
import lodeswing.core.motion.TextbookMotion;
import lodeswing.web.layout.SampleLayouts;
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
 * Time of a force evaluation on lanes, all that belongs to a step included: attempts of each
 * model's scheme on a full block, begun anew every sixteen attempts from random places.
 *
 * <p>Bobs start anywhere within the square, so that cells of a table are asked for all over.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class LaneEvaluationBenchmark {

  private static final int BLOCKS = 8;
  private static final int ATTEMPTS = 16;
  private static final Tolerance TOLERANCE = Tolerance.of(1e-6);

  /** What swings. */
  @Param({"textbook", "three-stations", "27 discs", "200 discs"})
  public String scene = "textbook";

  /** Half the square that bobs start in [rad; in the textbook scene tenths of the unit]. */
  @Param({"0.12", "0.2"})
  public double reach = 0.2;

  private final double[][] blocks = new double[BLOCKS][];
  private LaneKernel kernel = textbook();
  private int next;

  private static LaneKernel textbook() {
    TextbookMotion motion = (TextbookMotion) new TextbookScene().motion;
    return new NystromKernel(
        motion, LaneProvider.choose(), TOLERANCE, new Watch(-1e9, 1e9, Double.MAX_VALUE, 0, false));
  }

  private static LaneKernel bench(String scene) {
    SampleLayouts samples = SampleLayouts.load();
    Landscape landscape =
        switch (scene) {
          case "27 discs" -> Landscape.of(PreparingReport.crowd(samples, 27));
          case "200 discs" -> Landscape.of(PreparingReport.crowd(samples, 200));
          default -> Landscape.of(samples.get(scene).document().layout());
        };
    Motion motion = landscape.asFineAs(TOLERANCE).motion();
    return new RungeKuttaKernel(
        motion,
        RungeKuttaPair.ORDER_8,
        LaneProvider.choose(),
        TOLERANCE,
        new Watch(-1e9, 1e9, motion.reach(), 0, false));
  }

  /** Fills blocks of releases. */
  @Setup
  public void fill() {
    boolean plane = scene.equals("textbook");
    if (!plane) {
      kernel = bench(scene);
    }
    double half = plane ? 10 * reach : reach;
    Random random = new Random(1);
    for (int b = 0; b < BLOCKS; b++) {
      for (int lane = 0; lane < LANES; lane++) {
        double q0 = half * (2 * random.nextDouble() - 1);
        double q1 = half * (2 * random.nextDouble() - 1);
        kernel.start(lane, new double[] {q0, q1, 0, 0});
      }
      for (int i = 0; i < ATTEMPTS; i++) {
        kernel.attempt();
      }
      blocks[b] = kernel.slots().clone();
    }
    int evaluations = ATTEMPTS * LANES * kernel.evaluations();
    System.out.printf("%n%s: divide by %d%n", scene, evaluations);
  }

  /** Sixteen attempts of a block. */
  @Benchmark
  public double attempts() {
    System.arraycopy(blocks[next], 0, kernel.slots(), 0, blocks[next].length);
    next = (next + 1) % BLOCKS;
    for (int i = 0; i < ATTEMPTS; i++) {
      kernel.attempt();
    }
    return kernel.slots()[0];
  }

  /** Runs this benchmark. */
  public static void main(String[] args) throws RunnerException {
    new Runner(new OptionsBuilder().include(LaneEvaluationBenchmark.class.getSimpleName()).build())
        .run();
  }
}
