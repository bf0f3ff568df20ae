package lodeswing.figure;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

class PathThinningProperties {

  @Property(tries = 400)
  void everySampleLeftOutLiesWithinTheToleranceOfItsInterpolatedPlace(
      @ForAll long seed,
      @ForAll @IntRange(min = 1, max = 600) int count,
      @ForAll @DoubleRange(min = 0, max = 0.5) double tolerance,
      @ForAll @DoubleRange(min = 0, max = 0.2) double roughness) {
    double[][] path = path(seed, count, roughness);
    int[] kept = PathThinning.indices(path[0], path[1], path[2], tolerance);
    assertEquals(0, kept[0]);
    assertEquals(count - 1, kept[kept.length - 1]);
    for (int k = 1; k < kept.length; k++) {
      assertTrue(kept[k] > kept[k - 1]);
      for (int i = kept[k - 1] + 1; i < kept[k]; i++) {
        // Rounding of the interpolation itself, for places of size 1.
        assertTrue(miss(path, kept[k - 1], kept[k], i) <= tolerance + 1e-14);
      }
    }
  }

  @Example
  void evenMotionNeedsItsTwoEndsOnly() {
    double[] t = new double[1001];
    double[] x = new double[1001];
    double[] y = new double[1001];
    for (int i = 0; i < t.length; i++) {
      t[i] = 0.01 * i;
      x[i] = 3 * t[i];
      y[i] = -t[i];
    }
    assertArrayEquals(new int[] {0, 1000}, PathThinning.indices(t, x, y, 1e-9));
  }

  @Example
  void aStraightLineRunThroughUnevenlyKeepsItsTiming() {
    double[] t = new double[101];
    double[] x = new double[101];
    for (int i = 0; i < t.length; i++) {
      t[i] = 0.01 * i;
      x[i] = t[i] * t[i];
    }
    // The line alone would need two samples; its timing needs more. Chord error of t^2: (dt)^2/4.
    int[] kept = PathThinning.indices(t, x, new double[101], 1e-3);
    assertTrue(kept.length > 10 && kept.length < 40, () -> kept.length + " samples kept");
  }

  @Example
  void circlesNeedAboutTheFewestSamplesThatTheToleranceAllows() {
    int count = 50_001;
    double[] t = new double[count];
    double[] x = new double[count];
    double[] y = new double[count];
    for (int i = 0; i < count; i++) {
      t[i] = 2 * Math.PI * i / (count - 1);
      x[i] = Math.cos(t[i]);
      y[i] = Math.sin(t[i]);
    }
    for (double tolerance : new double[] {1e-2, 1e-4, 1e-6}) {
      // A chord of angle a misses the circle by 1 - cos(a / 2) = a^2 / 8.
      double fewest = 2 * Math.PI / Math.sqrt(8 * tolerance);
      int kept = PathThinning.indices(t, x, y, tolerance).length;
      assertTrue(kept > 0.9 * fewest && kept < 2 * fewest, () -> kept + " against " + fewest);
    }
  }

  @Example
  void refusesWhatIsNotAPath() {
    double[] one = {0};
    assertThrows(
        IllegalArgumentException.class,
        () -> PathThinning.indices(new double[] {0, 0}, new double[2], new double[2], 1));
    assertThrows(
        IllegalArgumentException.class,
        () -> PathThinning.indices(one, new double[] {Double.NaN}, one, 1));
    assertThrows(
        IllegalArgumentException.class, () -> PathThinning.indices(one, one, new double[2], 1));
    assertThrows(IllegalArgumentException.class, () -> PathThinning.indices(one, one, one, -1));
    assertEquals(0, PathThinning.indices(new double[0], new double[0], new double[0], 1).length);
  }

  private static double miss(double[][] path, int a, int b, int i) {
    double share = (path[0][i] - path[0][a]) / (path[0][b] - path[0][a]);
    double dx = path[1][a] + share * (path[1][b] - path[1][a]) - path[1][i];
    double dy = path[2][a] + share * (path[2][b] - path[2][a]) - path[2][i];
    return Math.hypot(dx, dy);
  }

  private static double[][] path(long seed, int count, double roughness) {
    Random random = new Random(seed);
    double[][] path = new double[3][count];
    double time = 0;
    for (int i = 0; i < count; i++) {
      path[0][i] = time;
      path[1][i] = Math.exp(-0.05 * time) * Math.cos(3 * time) + roughness * random.nextGaussian();
      path[2][i] = Math.exp(-0.05 * time) * Math.sin(2 * time) + roughness * random.nextGaussian();
      time += roughness > 0.1 ? 1e-3 + random.nextDouble() * 0.1 : 0.01;
    }
    return path;
  }
}
