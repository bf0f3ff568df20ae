package lodeswing.analysis.worksheet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.atomic.DoubleAccumulator;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import org.junit.jupiter.api.Test;

class PlaceTrialsTest {

  private static final double REACH = 3;
  private static final PlaceTrials TRIALS =
      new PlaceTrials(
          Landscape.of(TrialLayouts.triangle(0.5)),
          new OutcomeFinders(LaneProvider.choose()),
          600,
          REACH);

  /** By symmetry each of three equal magnets takes a third of the disc. */
  @Test
  void fromAnywhereEachMagnetOfTheTriangleTakesAThird() {
    EndCounts ends = TRIALS.anywhere(done -> {});
    assertEquals(PlaceTrials.FROM_ANYWHERE, ends.total());
    double deviation = Math.sqrt(PlaceTrials.FROM_ANYWHERE * 2.0 / 9);
    for (int end = 0; end < 3; end++) {
      assertEquals(PlaceTrials.FROM_ANYWHERE / 3.0, ends.of(end), 4 * deviation, ends.toString());
    }
  }

  @Test
  void placesLieWithinReachAndAreTriedAsOftenAsTold() {
    var most = new DoubleAccumulator(Math::max, 0);
    PlaceChoice choice = TRIALS.choice(0.03, most::accumulate);
    assertEquals(6, choice.aims().size());
    for (TriedPlace place : choice.aims()) {
      assertTrue(Math.hypot(place.x(), place.y()) < REACH, place.toString());
      assertEquals(PlaceTrials.FROM_PLACES, 24L * place.ends().total());
    }
    assertTrue(choice.pair().get(0).surest() > choice.pair().get(1).surest());
    assertTrue(most.get() > 0.9 && most.get() <= 1, most.toString());
  }
}
