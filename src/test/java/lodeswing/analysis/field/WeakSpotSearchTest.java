package lodeswing.analysis.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lodeswing.core.field.FieldGrid;
import lodeswing.core.field.Frame;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Pole;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Weak spots: where symmetry puts them, what kinds they have, and the count of Poincare and Hopf.
 */
class WeakSpotSearchTest {

  private static final LaneProvider LANES = LaneProvider.choose();
  private static final Disc PUCK = new Disc(0.0125, 0.005, 0.385);
  private static final double[][] TWO = {{-0.03, 0}, {0.03, 0}};
  private static final double[][] FOUR = {
    {-0.03, -0.03}, {0.03, -0.03}, {0.03, 0.03}, {-0.03, 0.03}
  };

  private static WeakSpotSearch.Found found(PlateField plate, double height, double half) {
    Frame window = Frame.square(0.0007, -0.0004, half, 2);
    return new WeakSpotSearch(plate, LANES, window, plate.level(height), f -> {}).run();
  }

  private static List<WeakSpot> of(WeakSpotSearch.Found found, SpotKind kind) {
    return found.inPlane().stream().filter(spot -> spot.kind() == kind).toList();
  }

  @ParameterizedTest
  @CsvSource({"0.006", "0.012", "0.02"})
  void betweenTwoLikePolesLiesASaddleByMirrorSymmetry(double height) {
    WeakSpotSearch.Found found = found(Plates.of(PUCK, TWO, Pole.NORTH), height, 0.08);

    List<WeakSpot> saddles = of(found, SpotKind.SADDLE);
    assertEquals(1, saddles.size());
    assertEquals(0, saddles.get(0).x(), 1e-10);
    assertEquals(0, saddles.get(0).y(), 1e-10);
    List<WeakSpot> poles = of(found, SpotKind.SOURCE);
    assertEquals(2, poles.size());
    assertEquals(poles.get(0).x(), -poles.get(1).x(), 1e-10);
    assertEquals(1, found.indexSum());
    assertTrue(found.agrees());
  }

  /**
   * At height z the pair's potential falls as x/(x^2 + y^2 + z^2)^(5/2): two extrema, no saddle.
   */
  @Test
  void betweenTwoUnlikePolesLiesNone() {
    WeakSpotSearch.Found found = found(Plates.of(PUCK, TWO, Pole.NORTH, Pole.SOUTH), 0.01, 0.08);

    assertEquals(0, of(found, SpotKind.SADDLE).size());
    assertEquals(1, of(found, SpotKind.SOURCE).size());
    assertEquals(1, of(found, SpotKind.SINK).size());
    assertEquals(2, found.indexSum());
    assertTrue(found.agrees());
  }

  /**
   * A square's middle is level in all directions at once; between two sides' magnets lie saddles.
   */
  @Test
  void fourLikePolesHaveANodeInTheMiddleAndFourSaddlesOnTheAxes() {
    WeakSpotSearch.Found found = found(Plates.of(PUCK, FOUR, Pole.NORTH), 0.01, 0.08);

    List<WeakSpot> saddles = of(found, SpotKind.SADDLE);
    assertEquals(4, saddles.size());
    for (WeakSpot saddle : saddles) {
      assertEquals(0, Math.min(Math.abs(saddle.x()), Math.abs(saddle.y())), 1e-10);
    }
    List<WeakSpot> middle =
        of(found, SpotKind.SINK).stream().filter(s -> Math.hypot(s.x(), s.y()) < 1e-9).toList();
    assertEquals(1, middle.size());
    assertEquals(4, of(found, SpotKind.SOURCE).size());
    assertEquals(1, found.indexSum());
    assertTrue(found.agrees());
  }

  /**
   * On a dipole's axis Bz of another at the distance d is as 2 z^2 - d^2: none at z = d/sqrt(2).
   */
  @Test
  void twoAndFourEqualDipolesHaveTheirNullsWhereTheFormulaSays() {
    Dipole dipole = new Dipole(0.5);
    Frame window = Frame.square(0.0007, -0.0004, 0.06, 2);
    for (double[][] places : new double[][][] {TWO, FOUR}) {
      double distance = Math.hypot(places[0][0], places[0][1]);
      SpaceNulls.Found nulls =
          new SpaceNulls(Plates.of(dipole, places, Pole.NORTH), LANES, window, 0.004, 0.09, f -> {})
              .run();
      List<SpaceNull> onAxis =
          nulls.nulls().stream().filter(n -> Math.hypot(n.x(), n.y()) < 1e-9).toList();
      assertEquals(1, onAxis.size());
      assertEquals(distance / Math.sqrt(2), onAxis.get(0).z(), 1e-10);
      assertTrue(nulls.agrees());
    }
  }

  @ParameterizedTest
  @CsvSource({
    "three-stations,level", "closed-doors,level", "turned-centre,level", "uneven-coast,level",
    "three-stations,path", "closed-doors,path", "turned-centre,path", "kitchen-drawer,path"
  })
  void indicesOfSamplesSumUpToTheTurnsAlongTheEdge(String name, String surface) {
    PlateField plate = PlateField.of(Plates.sample(name));
    Frame window = Frame.square(0.001, 0.002, 0.1, 2);
    WeakSpotSearch.Found found =
        new WeakSpotSearch(
                plate,
                LANES,
                window,
                surface.equals("path") ? plate.bobPath() : plate.level(plate.highestTop() + 0.001),
                f -> {})
            .run();

    assertTrue(found.agrees(), found.indexSum() + " against " + found.edgeTurns());
    double[] b = new double[3];
    var field =
        plate.along(
            surface.equals("path") ? plate.bobPath() : plate.level(plate.highestTop() + 0.001));
    for (WeakSpot spot : found.inPlane()) {
      if (spot.kind() != SpotKind.MINIMUM) {
        field.at(spot.x(), spot.y(), b);
        assertEquals(0, Math.hypot(b[0], b[1]), 1e-11);
      }
    }
    assertTrue(found.inPlane().size() >= plate.layout().magnets().size());
  }

  @Test
  void halfWayUpEqualMagnetsTheFieldStandsUprightAllOver() {
    WeakSpotSearch.Found found = found(Plates.of(PUCK, TWO, Pole.NORTH), 0, 0.08);

    assertTrue(found.level());
    assertEquals(List.of(), found.inPlane());
  }

  @Test
  void zoneIsWhatACountOfAFineGridSays() {
    PlateField plate = Plates.of(PUCK, TWO, Pole.NORTH);
    WeakSpot saddle = of(found(plate, 0.01, 0.08), SpotKind.SADDLE).get(0);
    WeakSpot.Zone zone = saddle.zone().orElseThrow();

    Frame fine = Frame.square(0, 0, 0.03, 1201);
    FieldGrid grid = FieldGrid.of(plate.sources(), LANES, fine, plate.level(0.01), f -> {});
    int count =
        Flood.count(fine, grid.strengths(true), fine.nearest(saddle.x(), saddle.y()), zone.level());
    assertEquals(count * fine.stepX() * fine.stepY(), zone.area(), 0.02 * zone.area());
    assertEquals(zone.pass() / 2, zone.level(), 1e-15);
  }
}
