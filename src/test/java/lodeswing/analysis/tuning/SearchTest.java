package lodeswing.analysis.tuning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import lodeswing.core.chance.DiscSpread;
import lodeswing.core.chance.HandSpread;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.Release;
import lodeswing.core.statistics.IntervalRule;
import org.junit.jupiter.api.Test;

/** The search on whole steps against functions whose least place is known. */
class SearchTest {

  private record Grid(int figures, int most) implements Bench {

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

    @Override
    public Optional<Layout> layout(int[] setting) {
      return Optional.empty();
    }

    @Override
    public HandSpread hand(int[] setting) {
      return new HandSpread(new Release(0, 0, 0, 0), new DiscSpread(1), 0);
    }
  }

  private static TuningSpec spec(int candidates) {
    return new TuningSpec(
        new Wish(List.of(1.0), List.of(0), 1e-9),
        candidates,
        1,
        0.02,
        IntervalRule.WILSON,
        3,
        4,
        600);
  }

  /**
   * Rosenbrock's valley, Comput. J. 3 (1960) 175: 100 (y - x^2)^2 + (1 - x)^2, least at (1, 1),
   * with y - x^2 and (1 - x) / 10 for what two labels are off (over 5, so that both are chances);
   * here in steps of a tenth from (-1, 1), so that the least place is 20 steps off along x.
   */
  @Test
  void valleyOfRosenbrockIsFollowedToItsLeastPlace() {
    Search search =
        new Search(
            new Grid(2, 30),
            (setting, tries, progress) -> {
              double x = -1 + setting[0] / 10.0;
              double y = 1 + setting[1] / 10.0;
              return Optional.of(new Search.Miss(List.of((y - x * x) / 5, (1 - x) / 50)));
            },
            spec(900),
            part -> {});
    search.run();
    List<Integer> best = search.nearest(1).get(0);
    double x = -1 + best.get(0) / 10.0;
    double y = 1 + best.get(1) / 10.0;

    double least = 100 * (y - x * x) * (y - x * x) + (1 - x) * (1 - x);
    assertTrue(least < 0.1, x + ", " + y + " has " + least);
  }

  @Test
  void leastPlaceOfABowlIsFoundToTheStepAndNothingIsMeasuredTwice() {
    Set<List<Integer>> seen = new HashSet<>();
    int[] calls = new int[1];
    Search search =
        new Search(
            new Grid(3, 12),
            (setting, tries, progress) -> {
              calls[0]++;
              seen.add(List.of(setting[0], setting[1], setting[2]));
              return Optional.of(
                  new Search.Miss(
                      List.of(
                          (setting[0] - 5) / 30.0, (setting[1] + 7) / 30.0, setting[2] / 30.0)));
            },
            spec(300),
            part -> {});
    search.run();

    assertEquals(List.of(5, -7, 0), search.nearest(1).get(0));
    assertEquals(seen.size(), calls[0]);
    assertTrue(search.measured() <= 300);
  }

  @Test
  void whatNobodyCanBuildIsNeverAnswered() {
    Search search =
        new Search(
            new Grid(1, 9),
            (setting, tries, progress) ->
                setting[0] > 2
                    ? Optional.empty()
                    : Optional.of(new Search.Miss(List.of((6 - setting[0]) / 10.0))),
            spec(60),
            part -> {});
    search.run();

    assertEquals(List.of(2), search.nearest(1).get(0));
    assertTrue(search.refused() > 0);
  }
}
