package lodeswing.core.landscape;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.outcome.Ends;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.outcome.ParallelOutcomes;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.suspension.Cord;
import org.junit.jupiter.api.Test;

/** A landscape under another loss is the one that is made anew. */
class OtherLossTest {

  private static BenchLayout rig(double swings) {
    Cord cord = new Cord(0.42, 0.045);
    return new BenchLayout(
        cord,
        Optional.of(new BenchLayout.BobMagnet(new Dipole(0.84), Pole.NORTH)),
        0.025,
        List.of(
            new PlacedMagnet(new Dipole(0.75), new Vec3(0.04, 0, 0), 0, Pole.SOUTH),
            new PlacedMagnet(new Dipole(0.75), new Vec3(-0.03, 0.02, 0), 0, Pole.SOUTH)),
        Optional.empty(),
        9.80665,
        LossLaw.fromSwingsToHalf(swings, cord.body(), 9.80665));
  }

  @Test
  void releasesEndAndSealAsOnALandscapeMadeAnew() {
    Landscape other = Landscape.of(rig(20)).underLossOf(rig(5)).orElseThrow();
    Landscape anew = Landscape.of(rig(5));
    double[] releases = new double[4 * 64];
    for (int i = 0; i < 64; i++) {
      releases[4 * i] = 0.07 * Math.cos(0.4 * i);
      releases[4 * i + 1] = 0.07 * Math.sin(0.4 * i);
    }
    Ends one = ends(other, releases);
    Ends two = ends(anew, releases);
    for (int i = 0; i < one.size(); i++) {
      assertEquals(two.end(i), one.end(i));
      assertEquals(two.sealedAt(i), one.sealedAt(i));
    }
  }

  private static Ends ends(Landscape landscape, double[] releases) {
    var finder =
        new OutcomeFinders(LaneProvider.choose())
            .of(landscape, landscape.planScale().tolerance(1e-5, 0.07), 600);
    return new ParallelOutcomes(finder)
        .find(
            releases.length / 4,
            (from, to, out) -> System.arraycopy(releases, 4 * from, out, 0, 4 * (to - from)),
            part -> {});
  }

  @Test
  void anotherRigHasALandscapeOfItsOwn() {
    var plane = new TextbookLayout(0.5, 0.2, 0.3, List.of(new TextbookLayout.Attractor(0.5, 0, 1)));
    var higher =
        new TextbookLayout(0.5, 0.2, 0.4, List.of(new TextbookLayout.Attractor(0.5, 0, 1)));
    Landscape landscape = Landscape.of(plane);
    assertTrue(landscape.underLossOf(higher).isEmpty());
    assertTrue(landscape.underLossOf(rig(5)).isEmpty());
    var slower =
        new TextbookLayout(0.5, 0.1, 0.3, List.of(new TextbookLayout.Attractor(0.5, 0, 1)));
    assertEquals(slower, landscape.underLossOf(slower).orElseThrow().layout());
  }
}
