package lodeswing.analysis.worksheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/**
 * Which of many places pupils let go at. Places from which no bob can be let go are in neither
 * list; both are empty where there is no other.
 *
 * @param aims to predict from: up to three whose end is as sure as any, each of another end where
 *     there is one, and up to three whose end is the least sure, in an order that does not tell
 *     which is which: by their direction
 * @param pair the surest place and the least sure one
 */
public record PlaceChoice(List<TriedPlace> aims, List<TriedPlace> pair) {

  private static final int SURE = 3;
  private static final int OPEN = 3;

  /** Copies the lists. */
  public PlaceChoice {
    aims = List.copyOf(aims);
    pair = List.copyOf(pair);
  }

  /** The choice among places that were tried. */
  public static PlaceChoice of(List<TriedPlace> tried) {
    List<TriedPlace> sorted = surestFirst(tried);
    return new PlaceChoice(
        aims(sorted),
        sorted.isEmpty() ? List.of() : List.of(sorted.get(0), sorted.get(sorted.size() - 1)));
  }

  private static List<TriedPlace> aims(List<TriedPlace> sorted) {
    List<TriedPlace> left = new ArrayList<>(sorted);
    List<TriedPlace> chosen = new ArrayList<>();
    for (int k = 0; k < SURE && !left.isEmpty(); k++) {
      TriedPlace next =
          left.stream()
              .filter(
                  one -> chosen.stream().noneMatch(other -> one.commonest() == other.commonest()))
              .findFirst()
              .orElse(left.get(0));
      chosen.add(next);
      left.remove(next);
    }
    for (int k = 0; k < OPEN && !left.isEmpty(); k++) {
      chosen.add(left.remove(left.size() - 1));
    }
    chosen.sort(Comparator.comparingDouble((TriedPlace one) -> Math.atan2(one.y(), one.x())));
    return chosen;
  }

  private static List<TriedPlace> surestFirst(List<TriedPlace> tried) {
    return tried.stream()
        .filter(TriedPlace::allowed)
        .sorted(
            Comparator.comparingDouble(TriedPlace::surest)
                .reversed()
                .thenComparingDouble(TriedPlace::x)
                .thenComparingDouble(TriedPlace::y))
        .toList();
  }
}
