package lodeswing.safety;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lodeswing.core.magnet.Dipole;

/**
 * The strongest of some kinds and what they can do.
 *
 * @param pairs of them, the one that pinches hardest first; empty where no two have a size
 * @param strongest the kind that holds to steel hardest
 * @param onSteel its pull on thick steel [N]
 */
record Grip(List<StrongestPair> pairs, MagnetKind strongest, double onSteel) {

  Grip {
    pairs = List.copyOf(pairs);
  }

  /** So many kinds, the strongest by their flux index, are tried. */
  private static final int KINDS = 3;

  private record Strength(MagnetKind kind, double onLike) {}

  private record Indexed(MagnetKind kind, double index) {}

  /** Of some kinds; nothing where no magnet has a size. */
  static Optional<Grip> of(List<MagnetKind> kinds) {
    List<Strength> strong =
        kinds.stream()
            .flatMap(
                kind ->
                    FluxIndex.of(kind.magnet()).stream()
                        .map(index -> new Indexed(kind, index.value())))
            .sorted(Comparator.comparingDouble(indexed -> -indexed.index()))
            .limit(KINDS)
            .map(Indexed::kind)
            .map(kind -> new Strength(kind, ContactPull.ofLike(kind.magnet())))
            .toList();
    return strong.stream()
        .max(Comparator.comparingDouble(Strength::onLike))
        .map(best -> new Grip(pairs(strong), best.kind(), best.onLike()));
  }

  private static List<StrongestPair> pairs(List<Strength> strong) {
    List<StrongestPair> pairs = new ArrayList<>();
    for (int i = 0; i < strong.size(); i++) {
      Strength one = strong.get(i);
      if (one.kind().count() > 1) {
        pairs.add(new StrongestPair(one.kind(), one.kind(), one.onLike()));
      }
      for (Strength other : strong.subList(i + 1, strong.size())) {
        double force = ContactPull.of(one.kind().magnet(), other.kind().magnet()).force();
        pairs.add(new StrongestPair(one.kind(), other.kind(), force));
      }
    }
    pairs.sort(Comparator.comparingDouble(pair -> -pair.force()));
    return pairs;
  }

  /** The two that pinch hardest. */
  Optional<StrongestPair> pair() {
    return pairs.stream().findFirst();
  }

  /** The harder of both [N]. */
  double force() {
    return Math.max(onSteel, pair().map(StrongestPair::force).orElse(0.0));
  }

  /** Whether the pair is what pinches hardest. */
  boolean byPair() {
    return pair().filter(pair -> pair.force() >= onSteel).isPresent();
  }

  /** Whether no two of some magnets, and none on steel, can reach a force [N]: by a bound. */
  static boolean allBelow(List<MagnetKind> kinds, double force) {
    return kinds.stream()
        .map(MagnetKind::magnet)
        .filter(magnet -> !(magnet instanceof Dipole))
        .allMatch(magnet -> ContactPull.of(magnet, magnet).bound() < force);
  }
}
