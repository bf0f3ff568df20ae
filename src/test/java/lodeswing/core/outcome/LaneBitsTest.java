package lodeswing.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.Future;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The bits of an end hang on its release alone: not on vectors, neighbours, order or threads. */
class LaneBitsTest {

  private static final Tolerance TOLERANCE = Tolerance.of(1e-6);
  private static final double LONGEST = 60;

  @Test
  void testsRunOnVectors() {
    LaneProvider provider = LaneProvider.choose();
    assertTrue(provider.onVectors(), provider.reason());
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 4, 13, 25, 207})
  void vectorsAndScalarsAgreeToTheBitInThePlane(int count) {
    compare(OutcomeLayouts.plane(3), count, 2.0);
    compare(OutcomeLayouts.plane(1), count, 2.0);
    compare(OutcomeLayouts.plane(8), count, 2.0);
  }

  @ParameterizedTest
  @ValueSource(ints = {1, 13, 70})
  void vectorsAndScalarsAgreeToTheBitOnTheBench(int count) {
    compare(OutcomeLayouts.bench(), count, 0.1);
    compare(OutcomeLayouts.benchWithDragAndFriction(), count, 0.1);
  }

  @ParameterizedTest
  @EnumSource(LaneScheme.class)
  void vectorsAndScalarsAgreeToTheBitWithEveryScheme(LaneScheme scheme) {
    Landscape landscape = OutcomeLayouts.plane(4);
    int count = 40;
    double[] releases = releases(count, 2);
    Ends vectors = new Ends(count);
    Ends scalars = new Ends(count);
    new LaneOutcomeFinder(landscape, LaneProvider.choose(), scheme, TOLERANCE, LONGEST, true)
        .find(releases, 0, count, vectors);
    new LaneOutcomeFinder(
            landscape, LaneProvider.scalar("a test"), scheme, TOLERANCE, LONGEST, true)
        .find(releases, 0, count, scalars);
    assertSame(scalars, vectors);
  }

  private static void compare(Landscape landscape, int count, double reach) {
    double[] releases = releases(count, reach);
    Ends vectors = new Ends(count);
    Ends scalars = new Ends(count);
    finder(landscape, LaneProvider.choose()).find(releases, 0, count, vectors);
    finder(landscape, LaneProvider.scalar("a test")).find(releases, 0, count, scalars);
    assertSame(scalars, vectors);
  }

  @Test
  void orderAndNeighboursDoNotMatter() {
    Landscape landscape = OutcomeLayouts.plane(3);
    int count = 300;
    double[] releases = releases(count, 2);
    Ends together = new Ends(count);
    finder(landscape, LaneProvider.choose()).find(releases, 0, count, together);
    List<Integer> order = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      order.add(i);
    }
    Collections.shuffle(order, new Random(5));
    double[] shuffled = new double[4 * count];
    for (int i = 0; i < count; i++) {
      System.arraycopy(releases, 4 * order.get(i), shuffled, 4 * i, 4);
    }
    Ends apart = new Ends(count);
    finder(landscape, LaneProvider.choose()).find(shuffled, 0, count, apart);
    Ends back = new Ends(count);
    for (int i = 0; i < count; i++) {
      back.set(order.get(i), apart.end(i), apart.sealedAt(i));
    }
    assertSame(together, back);
  }

  @ParameterizedTest
  @ValueSource(ints = {2, 5})
  void threadsDoNotMatter(int threads) throws Exception {
    Landscape landscape = OutcomeLayouts.plane(3);
    int count = 207 * threads;
    double[] releases = releases(count, 2);
    OutcomeFinder finder = finder(landscape, LaneProvider.choose());
    Ends alone = new Ends(count);
    finder.find(releases, 0, count, alone);
    Ends shared = new Ends(count);
    ExecutorService pool = Executors.newFixedThreadPool(threads);
    try {
      List<Future<?>> parts = new ArrayList<>();
      for (int t = 0; t < threads; t++) {
        int from = 207 * t;
        parts.add(pool.submit(() -> finder.find(releases, from, from + 207, shared)));
      }
      for (Future<?> part : parts) {
        part.get();
      }
    } finally {
      pool.shutdownNow();
    }
    assertSame(alone, shared);
  }

  private static OutcomeFinder finder(Landscape landscape, LaneProvider provider) {
    return new LaneOutcomeFinder(landscape, provider, TOLERANCE, LONGEST);
  }

  private static double[] releases(int count, double reach) {
    Random random = new Random(42);
    double[] releases = new double[4 * count];
    for (int i = 0; i < count; i++) {
      releases[4 * i] = reach * (2 * random.nextDouble() - 1);
      releases[4 * i + 1] = reach * (2 * random.nextDouble() - 1);
      releases[4 * i + 2] = 0.1 * reach * random.nextDouble();
    }
    return releases;
  }

  private static void assertSame(Ends wanted, Ends found) {
    for (int i = 0; i < wanted.size(); i++) {
      assertEquals(wanted.end(i), found.end(i), "end of release " + i);
      assertEquals(
          Double.doubleToLongBits(wanted.sealedAt(i)),
          Double.doubleToLongBits(found.sealedAt(i)),
          "sealing time of release " + i);
      assertEquals(
          Double.doubleToLongBits(wanted.settledAt(i)),
          Double.doubleToLongBits(found.settledAt(i)),
          "settling time of release " + i);
    }
  }
}
