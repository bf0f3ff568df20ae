package lodeswing.benchmark;

import java.util.concurrent.TimeUnit;
import lodeswing.core.field.FieldGrid;
import lodeswing.core.field.FieldSources;
import lodeswing.core.field.Frame;
import lodeswing.core.field.LaneField;
import lodeswing.core.field.Surface;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.rig.BenchLayout;
import lodeswing.web.layout.SampleLayouts;
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
 * Time of the field of a magnet at a point: 27 discs (crowded-shelf) at a square of 64 by 64
 * points, one thread, a score for each magnet and point.
 *
 * <p>Near: all points within one magnet's reach of elliptic integrals. Far: beyond that of all.
 * Map: the sample's own window, in which few points are near a magnet.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.AverageTime)
@OutputTimeUnit(TimeUnit.NANOSECONDS)
@Warmup(iterations = 3, time = 1)
@Measurement(iterations = 5, time = 1)
@Fork(1)
public class FieldBenchmark {

  private static final int SIDE = 64;
  private static final int MAGNETS = 27;
  private static final int ALL = SIDE * SIDE * MAGNETS;

  /** Where the points are. */
  @Param({"map", "near", "far"})
  public String place = "map";

  /** What they are computed with. */
  @Param({"lanes", "single numbers", "closed forms"})
  public String means = "lanes";

  private final double[] x = new double[SIDE * SIDE];
  private final double[] y = new double[SIDE * SIDE];
  private final double[] z = new double[SIDE * SIDE];
  private final double[] b = new double[3 * SIDE * SIDE];
  private MagnetArray array = array(false);
  private LaneField field = new LaneField(new FieldSources(array), LaneProvider.choose());

  private static MagnetArray array(boolean stacked) {
    BenchLayout bench = (BenchLayout) SampleLayouts.load().get("crowded-shelf").document().layout();
    // For the near case all stand in one place, so that every magnet is near to every point.
    return new MagnetArray(
        stacked
            ? bench.magnets().stream().map(m -> bench.magnets().get(0)).toList()
            : bench.magnets(),
        bench.backing());
  }

  /** Lays out the points, blocks of eight by eight side by side. */
  @Setup
  public void lay() {
    boolean near = place.equals("near");
    array = array(near);
    LaneProvider provider =
        means.equals("lanes") ? LaneProvider.choose() : LaneProvider.scalar("asked for");
    field = new LaneField(new FieldSources(array), provider);
    double half = near ? 0.006 : place.equals("far") ? 0.05 : 0.19;
    double middleX = place.equals("far") ? 0.3 : near ? array.magnets().get(0).centre().x() : 0;
    double middleY = near ? array.magnets().get(0).centre().y() : 0;
    Frame frame = Frame.square(middleX, middleY, half, SIDE);
    int at = 0;
    for (int tile = 0; tile < SIDE * SIDE / 64; tile++) {
      for (int i = 0; i < 64; i++) {
        x[at] = frame.x(tile % 8 * 8 + i % 8);
        y[at] = frame.y(tile / 8 * 8 + i / 8);
        z[at] = near ? 0.007 : 0.021;
        at++;
      }
    }
  }

  /** The field at all points. */
  @Benchmark
  @OperationsPerInvocation(ALL)
  public double field() {
    if (means.equals("closed forms")) {
      double[] one = new double[3];
      for (int i = 0; i < x.length; i++) {
        array.field(x[i], y[i], z[i], one);
        b[3 * i] = one[0];
      }
    } else {
      field.at(x, y, z, x.length, b);
    }
    return b[0];
  }

  /** Runs this benchmark, after one map of 512 by 512 points in a process that has seen none. */
  public static void main(String[] args) throws RunnerException {
    BenchLayout bench = (BenchLayout) SampleLayouts.load().get("crowded-shelf").document().layout();
    FieldSources sources = new FieldSources(new MagnetArray(bench.magnets(), bench.backing()));
    LaneProvider provider = LaneProvider.choose();
    for (int run = 0; run < 5; run++) {
      long begun = System.nanoTime();
      FieldGrid.of(
          sources, provider, Frame.square(0, 0, 0.19, 512), Surface.level(0.021), done -> {});
      System.out.printf(
          "map of 512 by 512 points, 27 discs, all cores, run %d of this process: %.3f s%n",
          run + 1, (System.nanoTime() - begun) * 1e-9);
    }
    new Runner(new OptionsBuilder().include(FieldBenchmark.class.getSimpleName()).build()).run();
  }
}
