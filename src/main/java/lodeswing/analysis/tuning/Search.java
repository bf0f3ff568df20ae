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
 * <p>First Commons Math's covariance matrix adaptation (N. Hansen and A. Ostermeier, Evol. Comput.
 * 9 (2001) 159) proposes places between the steps, a few generations of them; then {@link Slopes}
 * leads on from the best, and where it leads to what is known, to a neighbour on the grid. Each
 * proposal is rounded to the nearest setting within the bounds before it is measured, and none is
 * measured twice. A setting that looks near is looked at closer, and the search ends when enough of
 * those are near.
 *
 * <p>Settings are measured one after the other, so that neither threads nor their number change
 * anything. Not safe for several threads.
 */
final class Search {

  /** Cost of what nobody can build; errors of chances are 2 at most. */
  private static final double REFUSED = 3;

  /** Generations of proposals before slopes lead on; two of them took more rigs. */
  private static final int GENERATIONS = 1;

  /**
   * Near is a distance up to this share of the tolerance: a closer look errs by a third of two
   * points.
   */
  private static final double NEAR = 0.6;

  /** So many neighbours are thought of before the grid is taken for exhausted. */
  private static final int THOUGHTS = 200;

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
   * @param off each label's chance less the wanted one
   */
  record Miss(List<Double> off) {

    Miss {
      off = List.copyOf(off);
    }

    double squares() {
      return off.stream().mapToDouble(one -> one * one).sum();
    }

    double distance() {
      return off.stream().mapToDouble(Math::abs).max().orElse(0);
    }
  }

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
      descend();
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
    int population = 4 + (int) (3 * Math.log(n));
    int mostMeasured = Math.min(1 + GENERATIONS * population, spec.candidates() / 2);
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
          new CMAESOptimizer.PopulationSize(population),
          new MaxEval(PROPOSALS * spec.candidates()));
    } catch (TooManyEvaluationsException | WanderedEnough e) {
      // Slopes lead on.
    }
  }

  private static final class WanderedEnough extends RuntimeException {
    private static final long serialVersionUID = 1L;

    WanderedEnough() {
      super("slopes lead on", null, false, false);
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

  /** Goes on from the best along the slopes, or to a neighbour of it. */
  private void descend() {
    var random = new MersenneTwister(spec.seed() + 1);
    while (true) {
      List<Map.Entry<List<Integer>, Known>> ordered = ordered();
      if (ordered.get(0).getValue().tries() == 0) {
        return;
      }
      List<Integer> best = ordered.get(0).getKey();
      double[] step =
          new Slopes(
                  ordered.stream()
                      .filter(one -> one.getValue().tries() > 0)
                      .map(one -> sample(one.getKey(), one.getValue()))
                      .toList())
              .step();
      int[] next = new int[step.length];
      for (int k = 0; k < next.length; k++) {
        next[k] = best.get(k) + (int) Math.rint(step[k] * range(k));
      }
      next = bench.within(next);
      for (int thought = 0; isKnown(next); thought++) {
        if (thought >= THOUGHTS) {
          return;
        }
        next = neighbour(best, 1 + thought / 20, random);
      }
      measure(next);
    }
  }

  private int[] neighbour(List<Integer> best, int far, MersenneTwister random) {
    int[] next = best.stream().mapToInt(Integer::intValue).toArray();
    int moved = 1 + random.nextInt(Math.min(2, next.length));
    for (int m = 0; m < moved; m++) {
      next[random.nextInt(next.length)] += random.nextInt(2 * far + 1) - far;
    }
    return bench.within(next);
  }

  private boolean isKnown(int[] setting) {
    return known.containsKey(IntStream.of(setting).boxed().toList());
  }

  private Slopes.Sample sample(List<Integer> setting, Known measuredAs) {
    List<Double> place = new ArrayList<>();
    for (int k = 0; k < setting.size(); k++) {
      place.add(setting.get(k) / range(k));
    }
    return new Slopes.Sample(place, measuredAs.miss().off(), measuredAs.tries());
  }

  private double range(int figure) {
    return Math.max(1.0, bench.most(figure) - bench.least(figure));
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
        .orElseGet(() -> new Known(0, new Miss(List.of(1.0)), REFUSED + change));
  }

  /** Mean square of the changes, each as a share of its figure's range. */
  private double change(int[] setting) {
    double sum = 0;
    for (int k = 0; k < setting.length; k++) {
      sum += setting[k] / range(k) * (setting[k] / range(k));
    }
    return sum / Math.max(1, setting.length);
  }

  /** How many have been looked at closer and were well within the tolerance. */
  private long near() {
    double within = NEAR * spec.wish().tolerance();
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
