package lodeswing.analysis.trace;

import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import java.util.SplittableRandom;
import java.util.stream.IntStream;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Until when a hand's release foretells a path, against second releases that hands placed a little
 * off: the nearest of eight directions that parts by half the nearest spacing counts.
 */
class ForetellingTest {

  private static final int RELEASES = 20;
  private static final int DIRECTIONS = 8;

  /**
   * One release.
   *
   * @param foretold the horizon stated
   * @param parted when the first of the second releases had parted
   */
  private record Outcome(OptionalDouble foretold, OptionalDouble parted) {

    boolean broken() {
      return parted.isPresent()
          && (foretold.isEmpty() || parted.getAsDouble() < foretold.getAsDouble());
    }
  }

  @ParameterizedTest
  @CsvSource({"three-stations, 1e-3, 0.11, 15", "paper-triangle, 1e-2, 1.5, 30"})
  void secondReleaseDoesNotPartBeforeTheForetoldTime(
      String name, double hand, double reach, double duration) {
    Landscape landscape = TrialLandscapes.sample(name);
    SplittableRandom random = new SplittableRandom(17);
    List<double[]> places = new ArrayList<>();
    while (places.size() < RELEASES) {
      double[] place = {reach * random.nextDouble(-1, 1), reach * random.nextDouble(-1, 1)};
      double[] start = TrialLandscapes.start(landscape, place[0], place[1], 0, 0);
      if (TrialLandscapes.inside(landscape.motion(), start)) {
        places.add(place);
      }
    }
    List<Outcome> outcomes =
        IntStream.range(0, RELEASES)
            .parallel()
            .mapToObj(i -> run(landscape, places.get(i), hand, duration))
            .toList();
    long broken = outcomes.stream().filter(Outcome::broken).count();
    double[] shares =
        outcomes.stream()
            .filter(o -> o.foretold().isPresent() && o.parted().isPresent())
            .mapToDouble(o -> o.foretold().getAsDouble() / o.parted().getAsDouble())
            .sorted()
            .toArray();
    assertTrue(broken <= 2, () -> broken + " of " + RELEASES + " parted before");
    assertTrue(shares.length >= 10, () -> "only " + shares.length + " parted");
    assertTrue(shares[shares.length / 2] > 0.75, () -> Arrays.toString(shares));
  }

  private static Outcome run(Landscape landscape, double[] place, double hand, double duration) {
    double interval = duration / 2_000;
    TraceSpec own = TrialLandscapes.spec(duration, interval);
    TraceSpec spec = new TraceSpec(own.release(), duration, interval, hand, duration);
    TraceResult path = path(landscape, spec, place[0], place[1]);
    double limit = landscape.planScale().partedDistance(Math.hypot(place[0], place[1]));
    double parted = Double.POSITIVE_INFINITY;
    for (int k = 0; k < DIRECTIONS; k++) {
      double way = 2 * Math.PI * k / DIRECTIONS;
      TraceResult second =
          path(landscape, spec, place[0] + hand * Math.cos(way), place[1] + hand * Math.sin(way));
      parted = Math.min(parted, partedAt(path.samples(), second.samples(), limit));
    }
    return new Outcome(
        path.foretoldUntil(),
        parted < Double.POSITIVE_INFINITY ? OptionalDouble.of(parted) : OptionalDouble.empty());
  }

  private static TraceResult path(Landscape landscape, TraceSpec spec, double x, double y) {
    return new Trace(landscape)
        .run(spec, TrialLandscapes.start(landscape, x, y, 0, 0), Tolerance.TRACE);
  }

  private static double partedAt(Samples a, Samples b, double limit) {
    for (int i = 0; i < Math.min(a.count(), b.count()); i++) {
      if (Math.hypot(a.x()[i] - b.x()[i], a.y()[i] - b.y()[i]) >= limit) {
        return a.t(i);
      }
    }
    return Double.POSITIVE_INFINITY;
  }
}
