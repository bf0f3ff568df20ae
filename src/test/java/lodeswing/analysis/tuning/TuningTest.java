package lodeswing.analysis.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.concurrent.CancellationException;
import java.util.concurrent.ForkJoinPool;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.chance.DiscSpread;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.chance.HandSpread;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.Release;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.statistics.IntervalRule;
import org.junit.jupiter.api.Test;

/** Tunings of the papers' triangle, whose candidates need no table. */
class TuningTest {

  private static final OutcomeFinders FINDERS = new OutcomeFinders(LaneProvider.choose());
  private static final double THIRD = 1.0 / 3;

  /** The triangle, its first magnet off by so much, each magnet to be moved in hundredths. */
  private record Triangle(double off, int most) implements Bench {

    @Override
    public int figures() {
      return 6;
    }

    @Override
    public int aims() {
      return 0;
    }

    @Override
    public int least(int figure) {
      return -most;
    }

    @Override
    public int most(int figure) {
      return most;
    }

    @Override
    public int[] within(int[] setting) {
      int[] kept = setting.clone();
      for (int k = 0; k < kept.length; k++) {
        kept[k] = Math.max(-most, Math.min(most, kept[k]));
      }
      return kept;
    }

    private TextbookLayout of(int[] setting) {
      TextbookLayout own = TrialLayouts.triangle(0.8);
      List<TextbookLayout.Attractor> magnets = new ArrayList<>();
      for (int k = 0; k < 3; k++) {
        TextbookLayout.Attractor magnet = own.magnets().get(k);
        magnets.add(
            new TextbookLayout.Attractor(
                magnet.x() + (k == 0 ? off : 0) + setting[2 * k] / 100.0,
                magnet.y() + setting[2 * k + 1] / 100.0,
                magnet.strength()));
      }
      return new TextbookLayout(own.omega0(), own.drag(), own.height(), magnets);
    }

    @Override
    public Optional<Layout> layout(int[] setting) {
      // As if a magnet would stand on another: not to be answered.
      return setting[2] == 3 ? Optional.empty() : Optional.of(of(setting));
    }

    @Override
    public HandSpread hand(int[] setting) {
      return new HandSpread(new Release(0, 0, 0, 0), new DiscSpread(1.5), 0);
    }
  }

  private static TuningSpec spec(long seed) {
    return new TuningSpec(
        new Wish(List.of(THIRD, THIRD, THIRD), List.of(0, 1, 2), 0.02),
        40,
        2,
        0.02,
        IntervalRule.WILSON,
        seed,
        seed + 1,
        600);
  }

  private static TuningResult run(Triangle bench, TuningSpec spec) {
    return new Tuning(bench, spec, FINDERS, 1e18)
        .run(
            setting -> Landscape.of(bench.of(setting)),
            new TuningProgress(part -> {}, part -> {}, part -> {}));
  }

  private static double distance(Tuned tuned, EndCounts counts) {
    Wish wish = spec(1).wish();
    return wish.distance(wish.counts(counts, tuned.restPoints()), counts.total());
  }

  /** The layout is its own picture when turned by a third, and so is the hand. */
  @Test
  void symmetricalLayoutIsFairAsItIs() {
    TuningResult result = run(new Triangle(0, 20), spec(1));

    assertEquals(0, result.tried());
    assertEquals(List.of(0, 0, 0, 0, 0, 0), result.nearest().get(0).setting());
  }

  @Test
  void unevenLayoutIsTunedAndConfirmedByAnotherSeed() {
    Triangle bench = new Triangle(-0.2, 25);
    TuningResult result = run(bench, spec(1));
    Tuned best = result.nearest().get(0);

    assertTrue(distance(result.before(), result.before().confirmed()) > 0.05, "begins unfair");
    assertTrue(distance(best, best.confirmed()) <= 0.02, "is " + distance(best, best.confirmed()));
    assertTrue(result.tried() + result.refused() <= 40);
    result.nearest().forEach(one -> assertTrue(one.setting().get(2) != 3));
    best.setting().forEach(step -> assertTrue(Math.abs(step) <= 25));
  }

  @Test
  void boundsThatAreTooNearLeaveItUnfair() {
    TuningResult result = run(new Triangle(-0.2, 1), spec(1));
    Tuned best = result.nearest().get(0);

    assertTrue(distance(best, best.confirmed()) > 0.02);
    assertEquals(2, result.nearest().size());
  }

  @Test
  void threadsChangeNothing() throws Exception {
    Triangle bench = new Triangle(-0.2, 25);
    TuningResult usual = run(bench, spec(5));
    ForkJoinPool one = new ForkJoinPool(1);
    try {
      TuningResult again = one.submit(() -> run(bench, spec(5))).get();
      assertEquals(
          usual.nearest().stream().map(Tuned::setting).toList(),
          again.nearest().stream().map(Tuned::setting).toList());
      assertEquals(usual.nearest().get(0).confirmed(), again.nearest().get(0).confirmed());
    } finally {
      one.shutdown();
    }
  }

  @Test
  void searchCanBeEnded() {
    Triangle bench = new Triangle(-0.2, 25);
    TuningProgress ending =
        new TuningProgress(
            part -> {},
            part -> {
              throw new CancellationException("enough");
            },
            part -> {});
    assertThrows(
        CancellationException.class,
        () ->
            new Tuning(bench, spec(1), FINDERS, 1e18)
                .run(setting -> Landscape.of(bench.of(setting)), ending));
  }
}
