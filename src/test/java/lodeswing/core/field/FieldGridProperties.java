package lodeswing.core.field;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.Scale;

/** Maxwell's equations of a static field in free space, on the lanes' own field of many discs. */
class FieldGridProperties {

  private static final LaneProvider LANES = LaneProvider.choose();

  /** Central differences of order 6; B. Fornberg, Math. Comp. 51 (1988) 699. */
  private static final double[] WEIGHTS = {3.0 / 4, -3.0 / 20, 1.0 / 60};

  private static final double H = 2e-4;

  private static MagnetArray crowd(long seed, int count) {
    Random random = new Random(seed);
    List<PlacedMagnet> magnets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      magnets.add(
          new PlacedMagnet(
              new Disc(0.002 + 0.008 * random.nextDouble(), 0.003, 1.1),
              new Vec3(0.2 * random.nextDouble() - 0.1, 0.2 * random.nextDouble() - 0.1, 0.0015),
              0,
              random.nextBoolean() ? Pole.NORTH : Pole.SOUTH));
    }
    return new MagnetArray(magnets, Optional.empty());
  }

  @Property(tries = 150)
  void fieldHasNoSourcesAndNoCurl(
      @ForAll @IntRange(min = 1, max = 27) int count,
      @ForAll @Scale(5) @DoubleRange(min = -0.12, max = 0.12) double x,
      @ForAll @Scale(5) @DoubleRange(min = -0.12, max = 0.12) double y,
      @ForAll @Scale(5) @DoubleRange(min = 0.012, max = 0.06) double z) {
    double[] xs = new double[18];
    double[] ys = new double[18];
    double[] zs = new double[18];
    for (int i = 0; i < 18; i++) {
      int axis = i / 6;
      double shift = (i % 6 < 3 ? 1 : -1) * (i % 3 + 1) * H;
      xs[i] = x + (axis == 0 ? shift : 0);
      ys[i] = y + (axis == 1 ? shift : 0);
      zs[i] = z + (axis == 2 ? shift : 0);
    }
    double[] b = new double[54];
    new LaneField(new FieldSources(crowd(count, count)), LANES).at(xs, ys, zs, 18, b);
    double[][] slope = new double[3][3];
    double size = 0;
    for (int i = 0; i < 18; i++) {
      for (int k = 0; k < 3; k++) {
        slope[i / 6][k] += (i % 6 < 3 ? 1 : -1) * WEIGHTS[i % 3] * b[3 * i + k] / H;
        size = Math.max(size, Math.abs(b[3 * i + k]));
      }
    }
    double scale = size / z;
    assertEquals(0, slope[0][0] + slope[1][1] + slope[2][2], 1e-7 * scale);
    assertEquals(0, slope[1][2] - slope[2][1], 1e-7 * scale);
    assertEquals(0, slope[2][0] - slope[0][2], 1e-7 * scale);
    assertEquals(0, slope[0][1] - slope[1][0], 1e-7 * scale);
  }
}
