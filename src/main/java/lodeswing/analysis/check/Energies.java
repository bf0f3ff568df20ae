package lodeswing.analysis.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import lodeswing.core.magnet.BobEnergy;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.MagnetEnergy;
import lodeswing.core.rig.BenchLayout;

/**
 * Exact motions of rigs on the bench. Most changes of a rig leave its magnets as they are, and so
 * the tables of their fields, which are dear to make and are kept here. For one thread.
 */
final class Energies {

  private final Map<List<Object>, BobEnergy> made = new HashMap<>();

  BenchMotion motion(BenchLayout layout) {
    boolean bare = layout.magnets().isEmpty() && layout.backing().isEmpty();
    if (bare || layout.bob().isEmpty()) {
      return BenchMotion.withoutMagnets(layout);
    }
    BenchLayout.BobMagnet bob = layout.bob().get();
    BobEnergy energy =
        made.computeIfAbsent(
            List.of(bob, layout.magnets(), layout.backing()),
            key ->
                BobEnergy.of(
                    bob.magnet(),
                    bob.poleDown(),
                    new MagnetArray(layout.magnets(), layout.backing())));
    MagnetEnergy exact = new MagnetEnergy(energy, layout.suspension().body(), layout.axisHeight());
    return BenchMotion.amongMagnets(
        layout, exact, exact.axialForce(layout.suspension().pullLine()));
  }
}
