package lodeswing.core.chance;

import java.util.Map;
import java.util.function.DoubleConsumer;
import lodeswing.core.statistics.Interval;
import lodeswing.core.statistics.Proportion;

/**
 * Counts lot by lot until every chance is known as well as asked.
 *
 * <p>The lots' sizes follow from the counts alone, so that neither threads nor lanes change
 * anything. Every union of ends has an interval within the asked width, so that labels that share
 * ends have one too.
 *
 * @param spec what is asked
 */
record AdaptiveCount(OddsSpec spec) {

  /** Releases of the first lot, where no fewer will do. */
  private static final int FIRST = 1_024;

  /** Counts the ends of one lot. */
  @FunctionalInterface
  interface Lot {

    /**
     * Counts them.
     *
     * @param releases plan x, y, vx, vy side by side
     * @param progress told the fraction of the lot that is done
     * @return counts above 0 by end
     */
    Map<Integer, Integer> count(double[] releases, DoubleConsumer progress);
  }

  EndCounts run(Tries tries, Lot lot, DoubleConsumer progress) {
    int most = spec.mostReleases();
    EndCounts counts = EndCounts.NONE;
    int next = Math.min(FIRST, most);
    while (next > 0) {
      int done = counts.total();
      int size = next;
      double all = Math.max(needed(counts, most), done + size);
      counts =
          counts.and(
              lot.count(tries.next(size), part -> progress.accept((done + part * size) / all)));
      next = goodEnough(counts) ? 0 : further(counts, most);
    }
    return counts;
  }

  private boolean goodEnough(EndCounts counts) {
    int all = counts.total();
    Interval interval = spec.rule().of(new Proportion(counts.nearestToHalf(), all));
    return interval.width() <= spec.width();
  }

  private int further(EndCounts counts, int most) {
    int all = counts.total();
    return all >= most ? 0 : Math.max(OddsSpec.LOT, OddsSpec.rounded(needed(counts, most) - all));
  }

  /** How many releases it takes if the shares stay as they are. */
  private int needed(EndCounts counts, int most) {
    int all = counts.total();
    return all == 0
        ? most
        : spec.rule().trials((double) counts.nearestToHalf() / all, spec.width(), most);
  }
}
