package lodeswing.analysis.tuning;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.chance.HandSpread;
import lodeswing.core.chance.Odds;
import lodeswing.core.chance.OddsSpec;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.WorkExceededException;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.Layout;

/**
 * Tunes a rig until its labels come as often as wanted, as near as its figures may go.
 *
 * <p>Every candidate is tried by the same tries of the hand (common random numbers), on a loose
 * table of its own; the hand's spread makes of the ends' fine patterns a chance that changes slowly
 * with a magnet's place. The nearest are made ready in full and counted anew until their intervals
 * are as short as asked, by the seed and by another one that had no part in the choice.
 */
public final class Tuning {

  private final Bench bench;
  private final TuningSpec spec;
  private final OutcomeFinders finders;
  private final double mostWork;

  /** Where a rig is made ready in full. */
  @FunctionalInterface
  public interface Ready {

    /** The rig of a setting, which can be built, made ready. */
    Landscape of(int[] setting);
  }

  /**
   * A tuning.
   *
   * @param bench what may be changed
   * @param spec what is asked
   * @param finders find the ends of releases
   * @param mostWork work that making one rig ready may take
   */
  public Tuning(Bench bench, TuningSpec spec, OutcomeFinders finders, double mostWork) {
    this.bench = bench;
    this.spec = spec;
    this.finders = finders;
    this.mostWork = mostWork;
  }

  /**
   * Runs it.
   *
   * @param ready makes rigs ready in full
   * @param progress hears how far it has come
   */
  public TuningResult run(Ready ready, TuningProgress progress) {
    int[] own = new int[bench.figures()];
    Tuned before = counted(own, ready, progress.before());
    if (distance(before) <= spec.wish().tolerance() / 2) {
      // Already as wanted: nothing is moved.
      return new TuningResult(before, List.of(before), 0, 0);
    }
    var search = new Search(bench, new Glances(), spec, progress.search());
    search.run();
    List<List<Integer>> nearest = search.nearest(spec.finalists());
    List<Tuned> finalists = new ArrayList<>();
    for (int k = 0; k < nearest.size(); k++) {
      int[] setting = nearest.get(k).stream().mapToInt(Integer::intValue).toArray();
      double begun = (double) k / nearest.size();
      finalists.add(
          Arrays.equals(setting, own)
              ? before
              : counted(
                  setting, ready, part -> progress.finish().accept(begun + part / nearest.size())));
    }
    finalists.sort(Comparator.comparingDouble(this::distance));
    return new TuningResult(before, finalists, search.measured(), search.refused());
  }

  /** The greatest distance of a label's chance from the wanted one, by the seed of the search. */
  private double distance(Tuned one) {
    EndCounts counted = one.counted();
    return spec.wish().distance(spec.wish().counts(counted, one.restPoints()), counted.total());
  }

  private Tuned counted(int[] setting, Ready ready, DoubleConsumer progress) {
    progress.accept(0);
    Landscape landscape = ready.of(setting);
    HandSpread hand = bench.hand(setting);
    var odds = new Odds(landscape, hand, finders, spec.longest());
    EndCounts counted =
        odds.count(asked(hand, spec.seed()), part -> progress.accept(Math.min(1, part) / 2));
    EndCounts confirmed =
        odds.count(
            asked(hand, spec.confirmSeed()), part -> progress.accept((1 + Math.min(1, part)) / 2));
    return new Tuned(
        Arrays.stream(setting).boxed().toList(), landscape.restPoints().list(), counted, confirmed);
  }

  private OddsSpec asked(HandSpread hand, long seed) {
    return new OddsSpec(hand, spec.width(), spec.rule(), seed, spec.longest());
  }

  /** Measures candidates by a glance; the rig of the last one is kept for another aim. */
  private final class Glances implements Search.Gauge {

    private int[] rig = new int[0];
    private Optional<Landscape> made = Optional.empty();

    @Override
    public Optional<Search.Miss> measure(int[] setting, int tries, DoubleConsumer progress) {
      progress.accept(0);
      return landscape(setting, progress)
          .map(
              landscape -> {
                EndCounts counts =
                    new Odds(landscape, bench.hand(setting), finders, spec.longest())
                        .count(tries, spec.seed(), part -> progress.accept((1 + part) / 2));
                int[] byLabel = spec.wish().counts(counts, landscape.restPoints().list());
                return new Search.Miss(spec.wish().off(byLabel, tries));
              });
    }

    private Optional<Landscape> landscape(int[] setting, DoubleConsumer progress) {
      int[] figures = Arrays.copyOf(setting, setting.length - bench.aims());
      if (!Arrays.equals(figures, rig) || rig.length == 0) {
        made = bench.layout(setting).flatMap(layout -> made(layout, progress));
        rig = figures;
      }
      return made;
    }

    private Optional<Landscape> made(Layout layout, DoubleConsumer progress) {
      try {
        return Optional.of(Landscape.loose(layout, mostWork, spent -> progress.accept(0)));
      } catch (WorkExceededException e) {
        return Optional.empty();
      }
    }
  }
}
