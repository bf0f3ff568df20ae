package lodeswing.safety;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.rig.BenchLayout;

/**
 * Magnets of a rig that are alike in shape, size and strength.
 *
 * @param magnet one of them
 * @param bob whether the bob's is among them
 * @param plate those of the plate, by their indices
 */
public record MagnetKind(Magnet magnet, boolean bob, List<Integer> plate) {

  public MagnetKind {
    plate = List.copyOf(plate);
  }

  /** How many they are. */
  public int count() {
    return plate.size() + (bob ? 1 : 0);
  }

  /** The kinds of a rig, the bob's first, then in the order of the plate's magnets. */
  static List<MagnetKind> of(BenchLayout bench) {
    Map<Magnet, List<Integer>> plate = new LinkedHashMap<>();
    bench.bob().ifPresent(bob -> plate.put(bob.magnet(), new ArrayList<>()));
    for (int i = 0; i < bench.magnets().size(); i++) {
      plate.computeIfAbsent(bench.magnets().get(i).magnet(), own -> new ArrayList<>()).add(i);
    }
    List<MagnetKind> kinds = new ArrayList<>();
    plate.forEach(
        (magnet, places) ->
            kinds.add(
                new MagnetKind(
                    magnet,
                    bench.bob().filter(bob -> bob.magnet().equals(magnet)).isPresent(),
                    places)));
    return List.copyOf(kinds);
  }
}
