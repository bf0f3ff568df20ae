package lodeswing.web.field;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.web.layout.LayoutDocument;

/** Which magnets a place lies over or between. */
final class Neighbours {

  /** Others count as long as they are no farther than so many times the nearest. */
  private static final double AS_NEAR = 1.35;

  private static final int MOST = 4;
  private static final int LONGEST_NAME = 40;

  private final LayoutDocument layout;
  private final List<PlacedMagnet> magnets;

  Neighbours(FieldRequest request) {
    this.layout = request.layout();
    this.magnets = request.bench().magnets();
  }

  /** The magnet over which a place lies. */
  Optional<Integer> over(double x, double y) {
    return IntStream.range(0, magnets.size())
        .boxed()
        .filter(i -> distance(i, x, y) <= magnets.get(i).magnet().planRadius())
        .min(Comparator.comparingDouble(i -> distance(i, x, y)));
  }

  /** The nearest magnets, those that are about as near as the nearest one. */
  List<Integer> about(double x, double y) {
    List<Integer> sorted =
        IntStream.range(0, magnets.size())
            .boxed()
            .sorted(Comparator.comparingDouble(i -> distance(i, x, y)))
            .toList();
    List<Integer> near = new ArrayList<>();
    for (int i : sorted) {
      if (near.size() < MOST
          && distance(i, x, y) <= AS_NEAR * distance(sorted.get(0), x, y) + 1e-9) {
        near.add(i);
      }
    }
    return near;
  }

  private double distance(int i, double x, double y) {
    return Math.hypot(magnets.get(i).centre().x() - x, magnets.get(i).centre().y() - y);
  }

  /** A magnet's label, or its number. */
  String name(int i) {
    String label = layout.labels().get(i).orElse("magnet " + (i + 1));
    return label.length() > LONGEST_NAME ? label.substring(0, LONGEST_NAME) : label;
  }

  /** Its upper pole in a word. */
  String pole(int i) {
    return magnets.get(i).poleUp() == Pole.NORTH ? "north" : "south";
  }

  /** Where a place is, in words: over a magnet, or between which and whether these are alike. */
  String words(double x, double y) {
    Optional<Integer> over = over(x, y);
    if (over.isPresent()) {
      return "over " + name(over.get()) + " (" + pole(over.get()) + " pole up)";
    }
    List<Integer> near = about(x, y);
    if (near.isEmpty()) {
      return "by itself";
    }
    if (near.size() == 1) {
      return "beside " + name(near.get(0)) + " (" + pole(near.get(0)) + " pole up)";
    }
    boolean alike = near.stream().map(this::pole).distinct().count() == 1;
    String last = name(near.get(near.size() - 1));
    String others =
        near.subList(0, near.size() - 1).stream().map(this::name).collect(Collectors.joining(", "));
    return "between "
        + others
        + " and "
        + last
        + (alike ? " (like poles: " + pole(near.get(0)) + " up)" : " (unlike poles)");
  }
}
