package lodeswing.analysis.sweep;

import java.util.Arrays;
import java.util.Collections;
import java.util.Optional;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.function.DoubleConsumer;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.outcome.ParallelOutcomes;
import lodeswing.core.statistics.BasinEntropy;
import lodeswing.core.statistics.BoxCount;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.LabelGrid;
import lodeswing.core.statistics.ScalingLaw;
import lodeswing.core.statistics.UncertainPairs;
import lodeswing.core.window.BasinWindow;
import lodeswing.core.window.PixelGrid;

/**
 * What a small map of a layout amounts to, as the summary of a map of that side tells it.
 *
 * <p>Releases that cannot begin and unsettled ones are gaps, as there. Figures that the map is too
 * coarse for are absent: a sweep samples nothing below its pixels.
 *
 * @param counts how many of the map's releases have each end, by its code
 * @param boxDimension box-counting dimension of the border
 * @param uncertaintyExponent how doubt falls with a surer hand
 * @param basinEntropy mean entropy of boxes
 * @param boundaryBasinEntropy the same over boxes on the border
 */
public record MapFigures(
    SortedMap<Integer, Integer> counts,
    Optional<Estimate> boxDimension,
    Optional<Estimate> uncertaintyExponent,
    Optional<Estimate> basinEntropy,
    Optional<Estimate> boundaryBasinEntropy) {

  public MapFigures {
    counts = Collections.unmodifiableSortedMap(new TreeMap<>(counts));
  }

  /**
   * Computes a map on all cores and sums it up.
   *
   * @param landscape the layout made ready
   * @param window what the map shows
   * @param side pixels along its side
   * @param finders find the ends of releases
   * @param longest how long a release is followed at most
   * @param progress told the fraction done by several threads; may throw to end the work
   */
  public static MapFigures of(
      Landscape landscape,
      BasinWindow window,
      int side,
      OutcomeFinders finders,
      double longest,
      DoubleConsumer progress) {
    PixelGrid grid = PixelGrid.tile(window, 0, 0, 0, side);
    var finder = finders.of(landscape, window.tolerance(landscape, grid.pixel()), longest);
    Ends ends = new ParallelOutcomes(finder).find(grid.count(), grid, progress);
    int[] codes = new int[ends.size()];
    SortedMap<Integer, Integer> counts = new TreeMap<>();
    for (int i = 0; i < codes.length; i++) {
      codes[i] = ends.end(i);
      counts.merge(codes[i], 1, Integer::sum);
    }
    return of(side, codes, counts);
  }

  private static MapFigures of(int side, int[] codes, SortedMap<Integer, Integer> counts) {
    int[] labels =
        Arrays.stream(codes).map(end -> Ends.known(end) ? end : LabelGrid.NO_LABEL).toArray();
    LabelGrid grid = LabelGrid.of(side, labels);
    Optional<BasinEntropy> entropy =
        grid.labelled() == 0 ? Optional.empty() : Optional.of(BasinEntropy.of(grid));
    return new MapFigures(
        counts,
        BoxCount.of(grid).dimension().map(ScalingLaw::exponent),
        UncertainPairs.of(grid).exponent().map(ScalingLaw::exponent),
        entropy.map(BasinEntropy::overall),
        entropy.flatMap(BasinEntropy::boundary));
  }
}
