package lodeswing.safety;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;

/**
 * A limit that a rig's magnets pass: what every answer about the rig warns of.
 *
 * @param code what it is about
 * @param limit the limit
 * @param value what passes it, in SI
 * @param magnets how many magnets pass it; of a pinch two, or one where steel is the other
 * @param kind the worst of them
 */
public record Exceeded(
    SafetyCode code, SafetyLimit limit, double value, int magnets, MagnetKind kind) {

  /** Every limit that a layout passes; none for a textbook layout, which has no real magnets. */
  public static List<Exceeded> of(Layout layout) {
    if (!(layout instanceof BenchLayout bench)) {
      return List.of();
    }
    List<MagnetKind> kinds = MagnetKind.of(bench);
    return Stream.of(swallowing(kinds), pinching(kinds)).flatMap(Optional::stream).toList();
  }

  private record Indexed(MagnetKind kind, double index) {}

  private static Optional<Exceeded> swallowing(List<MagnetKind> kinds) {
    List<Indexed> over =
        kinds.stream()
            .flatMap(
                kind ->
                    FluxIndex.of(kind.magnet()).stream()
                        .map(index -> new Indexed(kind, index.value())))
            .filter(indexed -> SafetyLimit.FLUX_INDEX.reachedBy(indexed.index()))
            .filter(indexed -> SmallPartsCylinder.holds(indexed.kind().magnet()))
            .toList();
    return over.stream()
        .max(Comparator.comparingDouble(Indexed::index))
        .map(
            worst ->
                new Exceeded(
                    SafetyCode.SWALLOWING,
                    SafetyLimit.FLUX_INDEX,
                    worst.index(),
                    over.stream().mapToInt(indexed -> indexed.kind().count()).sum(),
                    worst.kind()));
  }

  private static Optional<Exceeded> pinching(List<MagnetKind> kinds) {
    double crushing = SafetyLimit.CRUSHING.value();
    return Grip.allBelow(kinds, crushing)
        ? Optional.empty()
        : Grip.of(kinds)
            .filter(grip -> grip.force() >= crushing)
            .map(
                grip ->
                    new Exceeded(
                        SafetyCode.PINCHING,
                        SafetyLimit.CRUSHING,
                        grip.force(),
                        grip.byPair() ? 2 : 1,
                        grip.strongest()));
  }
}
