package lodeswing.core.motion;

import java.util.List;
import java.util.Optional;
import lodeswing.core.magnet.BobEnergy;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.SteelBacking;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;

/**
 * Motions of rigs that differ little from each other, each by the exact energy of its magnets: for
 * one path a rig, where a table would cost more than it saves. Keeps the energy of the last
 * magnets, since rigs of other lengths and losses share it. For one thread.
 */
public final class ExactMotion {

  private Optional<Shared> last = Optional.empty();

  private record Shared(
      BenchLayout.BobMagnet bob,
      List<PlacedMagnet> magnets,
      Optional<SteelBacking> backing,
      BobEnergy energy) {

    boolean fits(BenchLayout bench) {
      return bench.bob().filter(bob::equals).isPresent()
          && magnets.equals(bench.magnets())
          && backing.equals(bench.backing());
    }
  }

  /** The motion of a rig; the support's pull is taken as without magnets. */
  public Motion of(Layout layout) {
    if (layout instanceof TextbookLayout textbook) {
      return new TextbookMotion(textbook);
    }
    BenchLayout bench = (BenchLayout) layout;
    if (bare(bench)) {
      return BenchMotion.withoutMagnets(bench);
    }
    return BenchMotion.amongMagnets(bench, energy(bench), (beta, alpha) -> 0);
  }

  /** Whether no magnets act on a rig's bob. */
  static boolean bare(BenchLayout bench) {
    return bench.bob().isEmpty() || (bench.magnets().isEmpty() && bench.backing().isEmpty());
  }

  /** The magnets' exact energy over the angles of a rig that is not bare. */
  AngleEnergy energy(BenchLayout bench) {
    return new MagnetEnergy(bobEnergy(bench), bench.suspension().body(), bench.axisHeight());
  }

  private BobEnergy bobEnergy(BenchLayout bench) {
    BenchLayout.BobMagnet bob = bench.bob().orElseThrow();
    Optional<BobEnergy> kept = last.filter(one -> one.fits(bench)).map(Shared::energy);
    if (kept.isPresent()) {
      return kept.get();
    }
    BobEnergy energy =
        BobEnergy.of(
            bob.magnet(), bob.poleDown(), new MagnetArray(bench.magnets(), bench.backing()));
    last = Optional.of(new Shared(bob, bench.magnets(), bench.backing(), energy));
    return energy;
  }
}
