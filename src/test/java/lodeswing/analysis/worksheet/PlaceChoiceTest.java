package lodeswing.analysis.worksheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.outcome.Ends;
import org.junit.jupiter.api.Test;

class PlaceChoiceTest {

  private static TriedPlace place(double x, double y, Map<Integer, Integer> ends) {
    return new TriedPlace(x, y, new EndCounts(new TreeMap<>(ends)));
  }

  @Test
  void sureEndsAreThreeDifferentOnesAlthoughOneEndIsSurerThanBoth() {
    List<TriedPlace> tried = new ArrayList<>();
    for (int k = 0; k < 6; k++) {
      tried.add(place(0.01 * k, 0.05, Map.of(0, 100)));
    }
    TriedPlace second = place(-0.03, -0.04, Map.of(1, 90, 0, 10));
    TriedPlace third = place(0.04, -0.03, Map.of(2, 85, 0, 15));
    tried.add(second);
    tried.add(third);
    tried.add(place(0.05, 0.01, Map.of(0, 40, 1, 30, 2, 30)));
    tried.add(place(-0.05, 0.01, Map.of(0, 35, 1, 35, 2, 30)));
    tried.add(place(-0.05, 0.02, Map.of(0, 45, 1, 30, 2, 25)));

    PlaceChoice choice = PlaceChoice.of(tried);

    assertEquals(6, choice.aims().size());
    assertEquals(6, new HashSet<>(choice.aims()).size());
    assertTrue(choice.aims().containsAll(Set.of(second, third)), choice.toString());
    assertEquals(3, choice.aims().stream().filter(one -> one.surest() < 0.5).count());
    assertEquals(1, choice.pair().get(0).surest());
    assertEquals(0.35, choice.pair().get(1).surest());
  }

  @Test
  void theOrderGoesByDirectionAndTellsNothing() {
    List<TriedPlace> aims =
        PlaceChoice.of(
                List.of(
                    place(0, 0.05, Map.of(0, 100)),
                    place(0, -0.05, Map.of(1, 50, 0, 50)),
                    place(0.05, 0, Map.of(0, 60, 1, 40))))
            .aims();
    assertEquals(List.of(-0.05, 0.0, 0.05), aims.stream().map(TriedPlace::y).toList());
  }

  @Test
  void placesFromWhichNothingCanBeLetGoAreInNeitherList() {
    TriedPlace barred = place(0.05, 0.05, Map.of(Ends.CANNOT_START, 1, 0, 99));
    TriedPlace free = place(-0.05, 0.05, Map.of(0, 60, 1, 40));
    PlaceChoice choice = PlaceChoice.of(List.of(barred, free));
    assertEquals(List.of(free), choice.aims());
    assertFalse(choice.pair().contains(barred));

    PlaceChoice none = PlaceChoice.of(List.of(barred));
    assertTrue(none.aims().isEmpty() && none.pair().isEmpty());
  }
}
