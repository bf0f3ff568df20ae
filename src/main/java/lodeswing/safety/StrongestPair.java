package lodeswing.safety;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import lodeswing.core.magnet.Dipole;

/**
 * The two magnets of a rig that pinch hardest; both the same where there is only one, which then
 * pinches against steel.
 *
 * @param one a magnet
 * @param other another one, or one of its kind
 * @param force their pull at contact [N]
 */
record StrongestPair(MagnetKind one, MagnetKind other, double force) {

  /** So many kinds, the strongest by their pull on their like, are tried with each other. */
  private static final int KINDS = 3;

  ContactPull pull() {
    return ContactPull.of(one.magnet(), other.magnet());
  }

  /** Whether there is only one magnet with a size, so that steel takes the other's place. */
  boolean steel() {
    return one.equals(other) && one.count() == 1;
  }

  private record Strength(MagnetKind kind, double onLike) {}

  /** The pair; nothing where no magnet has a size. */
  static Optional<StrongestPair> of(List<MagnetKind> kinds) {
    List<Strength> sized =
        kinds.stream()
            .filter(kind -> !(kind.magnet() instanceof Dipole))
            .map(kind -> new Strength(kind, ContactPull.ofLike(kind.magnet())))
            .sorted(Comparator.comparingDouble(strength -> -strength.onLike()))
            .limit(KINDS)
            .toList();
    Optional<StrongestPair> best = Optional.empty();
    for (int i = 0; i < sized.size(); i++) {
      Strength one = sized.get(i);
      if (one.kind().count() > 1 || sized.size() == 1) {
        best = harder(best, new StrongestPair(one.kind(), one.kind(), one.onLike()));
      }
      for (Strength other : sized.subList(i + 1, sized.size())) {
        double force = ContactPull.of(one.kind().magnet(), other.kind().magnet()).force();
        best = harder(best, new StrongestPair(one.kind(), other.kind(), force));
      }
    }
    return best;
  }

  private static Optional<StrongestPair> harder(
      Optional<StrongestPair> best, StrongestPair candidate) {
    return best.filter(own -> own.force() >= candidate.force()).or(() -> Optional.of(candidate));
  }

  /** Whether no two of them can reach a force, by a bound that takes no search [N]. */
  static boolean allBelow(List<MagnetKind> kinds, double force) {
    List<MagnetKind> sized =
        kinds.stream().filter(kind -> !(kind.magnet() instanceof Dipole)).toList();
    for (MagnetKind one : sized) {
      for (MagnetKind other : sized) {
        if (ContactPull.of(one.magnet(), other.magnet()).bound() >= force) {
          return false;
        }
      }
    }
    return true;
  }
}
