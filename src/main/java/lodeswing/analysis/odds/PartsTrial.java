package lodeswing.analysis.odds;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import java.util.TreeMap;
import java.util.function.DoubleConsumer;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.chance.Odds;
import lodeswing.core.chance.OddsSpec;
import lodeswing.core.chance.PartTolerances;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rest.RestPoint;
import lodeswing.core.rig.BenchLayout;

/**
 * The same hand on many rigs, each built anew with parts that are not exact.
 *
 * <p>Each rig is made ready by its own table: on the sample layouts that costs as much as some
 * hundred thousand releases, while the exact field costs a hundred times a table's evaluation and a
 * release takes thousands of them. A rig's rest points are those of the exact rig that they lie
 * nearest to, or {@link #ELSEWHERE} where they are nearer to none than half the way to the next.
 *
 * @param rig the exact rig
 * @param tolerances of its parts
 * @param rigs how many are built, 2 or more
 * @param releases tries on each
 */
public record PartsTrial(BenchLayout rig, PartTolerances tolerances, int rigs, int releases) {

  /** Tries on each rig. */
  public static final int RELEASES = 1_024;

  /** The end of a release at a rest point that the exact rig does not have. */
  public static final int ELSEWHERE = -100;

  /**
   * Runs it.
   *
   * @param exact the exact rig made ready
   * @param spec what is asked; its width and rule do not matter here
   * @param finders find the ends of releases
   * @param mostWork work that making one rig ready may take
   * @param progress told the fraction done by several threads; may throw to end the work
   * @return the counts of each rig, by the exact rig's ends
   */
  public List<EndCounts> run(
      Landscape exact,
      OddsSpec spec,
      OutcomeFinders finders,
      double mostWork,
      DoubleConsumer progress) {
    var random = new SplittableRandom(spec.seed());
    List<EndCounts> counts = new ArrayList<>();
    for (int k = 0; k < rigs; k++) {
      double begun = (double) k / rigs;
      progress.accept(begun);
      // Split and drawn for every rig alike, so that more rigs begin with the same ones.
      SplittableRandom own = random.split();
      long seed = own.nextLong();
      Landscape landscape =
          Landscape.of(tolerances.varied(rig, own), mostWork, spent -> progress.accept(begun));
      EndCounts found =
          new Odds(landscape, spec.hand(), finders, spec.longest())
              .count(releases, seed, part -> progress.accept(begun + part / rigs));
      counts.add(renamed(found, landscape, exact));
    }
    return counts;
  }

  private static EndCounts renamed(EndCounts found, Landscape varied, Landscape exact) {
    List<RestPoint> points = exact.restPoints().list();
    var counts = new TreeMap<Integer, Integer>();
    found
        .byEnd()
        .forEach(
            (end, count) ->
                counts.merge(
                    end < 0 ? end : nearest(varied.restPoints().list().get(end), points),
                    count,
                    Integer::sum));
    return new EndCounts(counts);
  }

  private static int nearest(RestPoint point, List<RestPoint> exact) {
    int nearest = ELSEWHERE;
    double least = Double.POSITIVE_INFINITY;
    for (RestPoint one : exact) {
      double distance = Math.hypot(one.x() - point.x(), one.y() - point.y());
      if (distance < least) {
        least = distance;
        nearest = one.index();
      }
    }
    return nearest == ELSEWHERE || least > room(exact.get(nearest), exact) ? ELSEWHERE : nearest;
  }

  /** Half the way to the next rest point; as far as one likes where there is none. */
  private static double room(RestPoint point, List<RestPoint> all) {
    return all.stream()
        .filter(other -> other.index() != point.index())
        .mapToDouble(other -> Math.hypot(other.x() - point.x(), other.y() - point.y()) / 2)
        .min()
        .orElse(Double.POSITIVE_INFINITY);
  }
}
