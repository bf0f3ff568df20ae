package lodeswing.analysis.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.core.field.FieldSources;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.rig.BenchLayout;
import lodeswing.web.layout.SampleLayouts;

/** Plates of a few equal magnets for tests. */
final class Plates {

  static final SampleLayouts SAMPLES = SampleLayouts.load();

  private Plates() {}

  static BenchLayout sample(String name) {
    return (BenchLayout) SAMPLES.get(name).document().layout();
  }

  /** Equal magnets with their centres at places of the plane z = 0, each with its pole. */
  static PlateField of(Magnet magnet, double[][] places, Pole... poles) {
    List<PlacedMagnet> magnets = new ArrayList<>();
    for (int i = 0; i < places.length; i++) {
      Vec3 centre = new Vec3(places[i][0], places[i][1], 0);
      magnets.add(new PlacedMagnet(magnet, centre, 0, poles[i % poles.length]));
    }
    BenchLayout some = sample("three-stations");
    BenchLayout layout = some.with(some.suspension(), some.bob(), some.gap(), magnets);
    MagnetArray array = new MagnetArray(magnets, Optional.empty());
    return new PlateField(layout, array, new FieldSources(array));
  }
}
