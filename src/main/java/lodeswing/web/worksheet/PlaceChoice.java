package lodeswing.web.worksheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import lodeswing.core.outcome.Ends;
import lodeswing.web.worksheet.StoredFigures.Place;

/**
 * Which of many places pupils let go at: some whose end can be foretold, each of another end where
 * there is one, and some whose end cannot.
 */
final class PlaceChoice {

  private static final int SURE = 3;
  private static final int OPEN = 3;

  private PlaceChoice() {}

  /** Places to predict from, in an order that does not tell which are sure: by their direction. */
  static List<Place> aims(List<Place> tried) {
    List<Place> left = surestFirst(tried);
    List<Place> chosen = new ArrayList<>();
    for (int k = 0; k < SURE && !left.isEmpty(); k++) {
      Place next =
          left.stream()
              .filter(one -> chosen.stream().noneMatch(other -> end(one) == end(other)))
              .findFirst()
              .orElse(left.get(0));
      chosen.add(next);
      left.remove(next);
    }
    for (int k = 0; k < OPEN && !left.isEmpty(); k++) {
      chosen.add(left.remove(left.size() - 1));
    }
    chosen.sort(Comparator.comparingDouble((Place one) -> Math.atan2(one.y(), one.x())));
    return chosen;
  }

  /** The surest place and the least sure one. */
  static List<Place> pair(List<Place> tried) {
    List<Place> sorted = surestFirst(tried);
    return sorted.isEmpty() ? List.of() : List.of(sorted.get(0), sorted.get(sorted.size() - 1));
  }

  /** Places from which a bob can be let go. */
  private static List<Place> surestFirst(List<Place> tried) {
    List<Place> sorted =
        new ArrayList<>(
            tried.stream().filter(place -> place.ends().of(Ends.CANNOT_START) == 0).toList());
    sorted.sort(
        Comparator.comparingDouble(Place::surest)
            .reversed()
            .thenComparingDouble(Place::x)
            .thenComparingDouble(Place::y));
    return sorted;
  }

  private static int end(Place place) {
    return place.ends().byEnd().entrySet().stream()
        .max(Map.Entry.comparingByValue())
        .map(Map.Entry::getKey)
        .orElse(Ends.UNSETTLED);
  }
}
