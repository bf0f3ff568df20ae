package lodeswing.core.motion;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Supplier;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.SteelBacking;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * Motions of rigs that differ in a few figures, for thousands of paths.
 *
 * <p>The figures' space is cut into boxes, two steps wide. For the middle of a box the magnets'
 * energy over the two angles is fitted, and so it is a step to each side in each figure and a step
 * in every two: the quadratic through these stands for all rigs of the box. Figures that do not
 * change that energy (losses, a mass) need no step. Where a neighbour cannot be built, rigs of the
 * box take the exact energy.
 *
 * <p>Not for several threads.
 */
public final class NearbyMotion {

  /** Nets of all boxes that are kept, some 80 kB each. */
  private static final int NETS_KEPT = 400;

  private final Rigs rigs;
  private final double[] steps;
  private final double swing;
  private final ExactMotion exact = new ExactMotion();
  private final Map<List<Long>, Optional<Box>> boxes =
      new LinkedHashMap<>(16, 0.75f, true) {
        @Override
        protected boolean removeEldestEntry(Map.Entry<List<Long>, Optional<Box>> eldest) {
          return size() * nets() > NETS_KEPT;
        }
      };
  private Optional<boolean[]> matter = Optional.empty();

  /** Rigs by their figures. */
  @FunctionalInterface
  public interface Rigs {

    /**
     * A rig; empty where it cannot be built.
     *
     * @param figures in one order
     */
    Optional<Layout> rig(List<Double> figures);
  }

  /** What the magnets' energy over the angles hangs on. */
  private record Magnetics(
      Optional<BenchLayout.BobMagnet> bob,
      List<PlacedMagnet> magnets,
      Optional<SteelBacking> backing,
      double axisOffset,
      double bobArm,
      double axisHeight) {

    static Magnetics of(BenchLayout bench) {
      TwoAxisBody body = bench.suspension().body();
      return new Magnetics(
          bench.bob(),
          bench.magnets(),
          bench.backing(),
          body.axisOffset(),
          body.bobArm(),
          bench.axisHeight());
    }
  }

  /** The rigs of one box: the middle, and nets of the quadratic's terms in their order. */
  private record Box(List<Double> middle, EnergyNet net, List<EnergyNet> terms) {}

  /**
   * A family of rigs.
   *
   * @param rigs the rigs
   * @param steps of each figure, above 0, over which the energy is taken for a quadratic
   * @param swing how far the bob swings to, in the plan [m]; beyond it rigs take the exact energy
   */
  public NearbyMotion(Rigs rigs, double[] steps, double swing) {
    this.rigs = rigs;
    this.steps = steps.clone();
    this.swing = swing;
  }

  /**
   * The motion of a rig; the support's pull is taken as without magnets. Empty where the rig cannot
   * be built.
   *
   * @param figures in the order of the family
   */
  public Optional<Motion> of(List<Double> figures) {
    return rigs.rig(figures).map(layout -> motion(layout, figures));
  }

  private Motion motion(Layout layout, List<Double> figures) {
    if (layout instanceof TextbookLayout textbook) {
      return new TextbookMotion(textbook);
    }
    BenchLayout bench = (BenchLayout) layout;
    if (ExactMotion.bare(bench)) {
      return BenchMotion.withoutMagnets(bench);
    }
    boolean[] mattering = matter(figures, bench);
    List<Long> key = new ArrayList<>();
    for (int k = 0; k < steps.length; k++) {
      key.add(mattering[k] ? Math.round(figures.get(k) / (2 * steps[k])) : 0L);
    }
    Optional<Box> box = boxes.get(key);
    if (box == null) {
      box = box(key, figures, mattering);
      boxes.put(key, box);
    }
    AngleEnergy energy =
        box.map(found -> within(found, figures, mattering, bench))
            .orElseGet(() -> exact.energy(bench));
    return BenchMotion.amongMagnets(bench, energy, (beta, alpha) -> 0);
  }

  private AngleEnergy within(
      Box box, List<Double> figures, boolean[] mattering, BenchLayout bench) {
    List<Double> shifts = new ArrayList<>();
    for (int k = 0; k < steps.length; k++) {
      if (mattering[k]) {
        shifts.add((figures.get(k) - box.middle.get(k)) / steps[k]);
      }
    }
    List<Double> factors = new ArrayList<>();
    for (int k = 0; k < shifts.size(); k++) {
      factors.add(shifts.get(k));
      factors.add(shifts.get(k) * shifts.get(k));
      for (int j = 0; j < k; j++) {
        factors.add(shifts.get(k) * shifts.get(j));
      }
    }
    return box.net.plus(
        box.terms.toArray(EnergyNet[]::new),
        factors.stream().mapToDouble(Double::doubleValue).toArray(),
        new Once(bench));
  }

  /** The exact energy, made when it is first asked. */
  private final class Once implements Supplier<AngleEnergy> {

    private final BenchLayout bench;
    private Optional<AngleEnergy> made = Optional.empty();

    Once(BenchLayout bench) {
      this.bench = bench;
    }

    @Override
    public AngleEnergy get() {
      if (made.isEmpty()) {
        made = Optional.of(exact.energy(bench));
      }
      return made.get();
    }
  }

  /** Nets of a box. */
  private int nets() {
    int figures = 0;
    for (boolean one : matter.orElse(new boolean[0])) {
      figures += one ? 1 : 0;
    }
    return 1 + 2 * figures + figures * (figures - 1) / 2;
  }

  /** Which figures change the magnets' energy over the angles. */
  private boolean[] matter(List<Double> figures, BenchLayout bench) {
    if (matter.isEmpty()) {
      boolean[] found = new boolean[steps.length];
      for (int k = 0; k < steps.length; k++) {
        found[k] =
            rig(figures, k, 1)
                .filter(other -> Magnetics.of(other).equals(Magnetics.of(bench)))
                .isEmpty();
      }
      matter = Optional.of(found);
    }
    return matter.get();
  }

  private Optional<BenchLayout> rig(List<Double> figures, int k, double shift) {
    List<Double> moved = new ArrayList<>(figures);
    moved.set(k, figures.get(k) + shift * steps[k]);
    return bench(moved);
  }

  private Optional<BenchLayout> bench(List<Double> figures) {
    return rigs.rig(figures)
        .filter(BenchLayout.class::isInstance)
        .map(BenchLayout.class::cast)
        .filter(bench -> !ExactMotion.bare(bench));
  }

  private Optional<Box> box(List<Long> key, List<Double> figures, boolean[] mattering) {
    List<Double> middle = new ArrayList<>();
    for (int k = 0; k < steps.length; k++) {
      middle.add(mattering[k] ? 2 * steps[k] * key.get(k) : figures.get(k));
    }
    return bench(middle).flatMap(bench -> box(middle, bench, mattering));
  }

  private Optional<Box> box(List<Double> middle, BenchLayout bench, boolean[] mattering) {
    EnergyNet net = EnergyNet.of(exact.energy(bench), reach(bench));
    List<EnergyNet> terms = new ArrayList<>();
    List<EnergyNet> ups = new ArrayList<>();
    List<Integer> places = new ArrayList<>();
    for (int k = 0; k < steps.length; k++) {
      if (!mattering[k]) {
        continue;
      }
      Optional<EnergyNet> up = rig(middle, k, 1).map(exact::energy).map(net::alike);
      Optional<EnergyNet> down = rig(middle, k, -1).map(exact::energy).map(net::alike);
      if (up.isEmpty() || down.isEmpty()) {
        return Optional.empty();
      }
      terms.add(up.get().halfLess(down.get()));
      terms.add(up.get().bend(net, down.get()));
      for (int j = 0; j < places.size(); j++) {
        List<Double> moved = new ArrayList<>(middle);
        moved.set(k, middle.get(k) + steps[k]);
        Optional<EnergyNet> both = rig(moved, places.get(j), 1).map(exact::energy).map(net::alike);
        if (both.isEmpty()) {
          return Optional.empty();
        }
        terms.add(both.get().twist(up.get(), ups.get(j), net));
      }
      ups.add(up.get());
      places.add(k);
    }
    return Optional.of(new Box(middle, net, terms));
  }

  /** The angle that the swing takes, on the axis that is nearer to the bob. */
  private double reach(BenchLayout bench) {
    double sine = Math.min(1, swing / bench.suspension().body().bobArm());
    return Math.min(BenchMotion.MAX_ANGLE, StrictMath.asin(sine));
  }
}
