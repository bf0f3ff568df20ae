package lodeswing.core.outcome;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotSame;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.rig.BenchLayout;
import org.junit.jupiter.api.Test;

/** The table of fewer cells that maps of coarse pixels use. */
class LooseTableTest {

  private static final int SIDE = 48;
  private static final double REACH = 0.05;
  private static final double LONGEST = 200;
  private static final Tolerance OF_MAPS = Tolerance.of(1e-6);

  private final Landscape fine = Landscape.of(threeStations());
  private final Landscape loose = fine.asFineAs(OF_MAPS);

  private static BenchLayout threeStations() {
    BenchLayout b = TrialLayouts.bench("three-stations");
    double linear = LossLaw.fromSwingsToHalf(4, b.suspension().body(), b.gravity()).linear();
    return TrialLayouts.withLoss("three-stations", new LossLaw(linear, List.of(), 0));
  }

  @Test
  void fewerCellsKeepAMillionthOfTheShallowestBarrier() {
    double barrier = fine.restPoints().shallowestBarrier();
    assertNotSame(fine, loose);
    assertSame(fine, fine.asFineAs(Tolerance.of(1e-7)));
    assertTrue(loose.tableErrors().cells() < 0.6 * fine.tableErrors().cells());
    assertTrue(loose.tableErrors().energy() < 1.2e-6 * barrier);
    assertTrue(loose.tableErrors().energy() > fine.tableErrors().energy());
    assertTrue(loose.sealRule().highestSealEnergy() < fine.sealRule().highestSealEnergy());
  }

  @Test
  void labelsOfAMapAreThoseOfTheFineTable() {
    double[] releases = new double[4 * SIDE * SIDE];
    for (int i = 0; i < SIDE * SIDE; i++) {
      int column = i % SIDE;
      int row = i / SIDE;
      releases[4 * i] = REACH * (2 * (column + 0.5) / SIDE - 1);
      releases[4 * i + 1] = REACH * (2 * (row + 0.5) / SIDE - 1);
    }
    Ends byFine = ends(fine, releases);
    Ends byLoose = ends(loose, releases);
    int differ = 0;
    for (int i = 0; i < SIDE * SIDE; i++) {
      if (byFine.end(i) == byLoose.end(i)) {
        assertEquals(byFine.sealedAt(i), byLoose.sealedAt(i), 0.01 * LONGEST);
      } else {
        differ++;
      }
    }
    assertTrue(differ <= 1, differ + " of " + SIDE * SIDE);
  }

  private static Ends ends(Landscape landscape, double[] releases) {
    Ends ends = new Ends(SIDE * SIDE);
    new LaneOutcomeFinder(landscape, LaneProvider.choose(), OF_MAPS, LONGEST)
        .find(releases, 0, SIDE * SIDE, ends);
    return ends;
  }
}
