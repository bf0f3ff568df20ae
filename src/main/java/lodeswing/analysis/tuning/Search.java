package lodeswing.analysis.tuning;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;
import org.apache.commons.math3.exception.TooManyEvaluationsException;
import org.apache.commons.math3.optim.InitialGuess;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.SimpleBounds;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.nonlinear.scalar.ObjectiveFunction;
import org.apache.commons.math3.optim.nonlinear.scalar.noderiv.CMAESOptimizer;
import org.apache.commons.math3.random.MersenneTwister;

/**
 * Looks for settings with little error, on the grid of a hand's steps.
 *
 * <p>Commons Math's covariance matrix adaptation (N. Hansen and A. Ostermeier, Evol. Comput. 9
 * (2001) 159) proposes places between the steps; each is rounded to the nearest setting within the
 * bounds before it is measured, and none is measured twice. What budget is left goes to the
 * neighbours of the best, one step along one figure each. A setting that looks near is looked at
 * closer, and the search ends when enough of those are near.
 *
 * <p>Errors are measured one after the other, so that neither threads nor their number change
 * anything. Not safe for several threads.
 */
final class Search {

  /** Cost of what nobody can build; errors of chances are 2 at most. */
  private static final double REFUSED = 3;

  /** Share of the budget that is kept for neighbours. */
  private static final double NEIGHBOURS = 0.25;

  /** Proposals may round to what is known already; so many of them are heard for each new one. */
  private static final int PROPOSALS = 8;

  /** First spread of the proposals, as a share of a figure's range. */
  private static final double FIRST_SPREAD = 0.25;

  /** Settings alike in error: the smaller change is to be preferred up to this [squared chance]. */
  private static final double CHANGE_COST = 1e-4;

  private final Bench bench;
  private final Gauge gauge;
  private final TuningSpec spec;
  private final DoubleConsumer progress;
  private final Map<List<Integer>, Known> known = new LinkedHashMap<>();
  private int measured;
  private int refused;
  private int looked;

  /** Measures settings. */
  interface Gauge {

    /**
     * How far a setting is off.
     *
     * @param tries how many tries it is measured with
     * @param progress told the fraction done
     * @return nothing where nobody can build it
     */
    Optional<Miss> measure(int[] setting, int tries, DoubleConsumer progress);
  }

  /**
   * How far a setting is from what is wanted.
   *
   * @param squares sum over the labels of squared distances
   * @param distance the greatest distance
   */
  record Miss(double squares, double distance) {}

  private record Known(int tries, Miss miss, double cost) {}

  /** Ends the optimiser. */
  private static final class Enough extends RuntimeException {
    private static final long serialVersionUID = 1L;

    Enough() {
      super("enough settings were measured", null, false, false);
    }
  }

  Search(Bench bench, Gauge gauge, TuningSpec spec, DoubleConsumer progress) {
    this.bench = bench;
    this.gauge = gauge;
    this.spec = spec;
    this.progress = progress;
  }

  /** Searches; the answer is in {@link #nearest}. */
  void run() {
    int[] own = new int[bench.figures()];
    try {
      measure(own);
      wander();
      neighbours();
    } catch (Enough e) {
      // What is known suffices.
    }
    progress.accept(1);
  }

  private void wander() {
    int n = bench.figures();
    double[] least = new double[n];
    double[] most = new double[n];
    double[] spread = new double[n];
    for (int k = 0; k < n; k++) {
      // Half a step more, so that the outermost settings are as likely as others.
      least[k] = bench.least(k) - 0.49;
      most[k] = bench.most(k) + 0.49;
      spread[k] = Math.max(0.5, FIRST_SPREAD * (bench.most(k) - bench.least(k)));
      spread[k] = Math.min(spread[k], most[k] - least[k]);
    }
    int mostMeasured = spec.candidates() - (int) (NEIGHBOURS * spec.candidates());
    var optimiser =
        new CMAESOptimizer(
            Integer.MAX_VALUE, 0, true, 0, 1, new MersenneTwister(spec.seed()), false, null);
    try {
      optimiser.optimize(
          new InitialGuess(new double[n]),
          new ObjectiveFunction(place -> cost(place, mostMeasured)),
          GoalType.MINIMIZE,
          new SimpleBounds(least, most),
          new CMAESOptimizer.Sigma(spread),
          new CMAESOptimizer.PopulationSize(4 + (int) (3 * Math.log(n))),
          new MaxEval(PROPOSALS * spec.candidates()));
    } catch (TooManyEvaluationsException | WanderedEnough e) {
      // The neighbours are next.
    }
  }

  private static final class WanderedEnough extends RuntimeException {
    private static final long serialVersionUID = 1L;

    WanderedEnough() {
      super("the rest of the budget is for neighbours", null, false, false);
    }
  }

  private double cost(double[] place, int mostMeasured) {
    if (measured + refused >= mostMeasured) {
      throw new WanderedEnough();
    }
    int[] setting = new int[place.length];
    for (int k = 0; k < place.length; k++) {
      setting[k] = (int) Math.rint(place[k]);
    }
    return measure(bench.within(setting)).cost();
  }

  /** Measures the neighbours of the best until none is better. */
  private void neighbours() {
    boolean better = true;
    while (better) {
      List<Integer> best = ordered().get(0).getKey();
      for (int k = 0; k < bench.figures(); k++) {
        for (int step = -1; step <= 1; step += 2) {
          int[] setting = best.stream().mapToInt(Integer::intValue).toArray();
          setting[k] += step;
          measure(bench.within(setting));
        }
      }
      better = !ordered().get(0).getKey().equals(best);
    }
  }

  private Known measure(int[] setting) {
    List<Integer> key = IntStream.of(setting).boxed().toList();
    Known before = known.get(key);
    if (before != null) {
      return before;
    }
    if (measured + refused >= spec.candidates()) {
      throw new Enough();
    }
    Known found = look(setting, TuningSpec.GLANCE);
    known.put(key, found);
    if (found.cost() < REFUSED) {
      measured++;
    } else {
      refused++;
    }
    double noise = 1 / Math.sqrt(TuningSpec.GLANCE);
    if (found.miss().distance() < spec.wish().tolerance() + noise && looked < spec.looks()) {
      looked++;
      found = look(setting, TuningSpec.LOOK);
      known.put(key, found);
    }
    if (near() >= spec.finalists()) {
      throw new Enough();
    }
    return found;
  }

  private Known look(int[] setting, int tries) {
    double begun = Math.min(1, (measured + refused) / (double) spec.candidates());
    Optional<Miss> found =
        gauge.measure(
            setting, tries, part -> progress.accept(Math.min(1, begun + part / spec.candidates())));
    double change = CHANGE_COST * change(setting);
    return found
        .map(of -> new Known(tries, of, of.squares() + change))
        .orElseGet(() -> new Known(0, new Miss(REFUSED, 1), REFUSED + change));
  }

  /** Mean square of the changes, each as a share of its figure's range. */
  private double change(int[] setting) {
    double sum = 0;
    for (int k = 0; k < setting.length; k++) {
      double range = Math.max(1, bench.most(k) - bench.least(k));
      sum += setting[k] / range * (setting[k] / range);
    }
    return sum / Math.max(1, setting.length);
  }

  /** How many have been looked at closer and were well within the tolerance. */
  private long near() {
    double within = 0.5 * spec.wish().tolerance();
    return known.values().stream()
        .filter(one -> one.tries() >= TuningSpec.LOOK && one.miss().distance() <= within)
        .count();
  }

  private List<Map.Entry<List<Integer>, Known>> ordered() {
    List<Map.Entry<List<Integer>, Known>> all = new ArrayList<>(known.entrySet());
    all.sort(
        Comparator.comparing((Map.Entry<List<Integer>, Known> one) -> one.getValue().tries() == 0)
            .thenComparing(one -> one.getValue().cost()));
    return all;
  }

  /** The settings with the least cost, the least first; none that nobody can build. */
  List<List<Integer>> nearest(int count) {
    return ordered().stream()
        .filter(one -> one.getValue().tries() > 0)
        .limit(count)
        .map(Map.Entry::getKey)
        .toList();
  }

  /** How many settings were measured. */
  int measured() {
    return measured;
  }

  /** How many settings nobody could build. */
  int refused() {
    return refused;
  }
}
