package lodeswing.analysis.basin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.EnumSet;
import java.util.Set;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.window.BasinWindow;
import lodeswing.core.window.PixelGrid;
import org.junit.jupiter.api.Test;

class PossibleEndsTest {

  private static final OutcomeFinders FINDERS = new OutcomeFinders(LaneProvider.choose());
  private static final int SIDE = 24;

  /** The special ends that a coarse map really has. */
  private static Set<SpecialEnd> found(Landscape landscape, BasinWindow window) {
    PixelGrid grid = PixelGrid.whole(window, SIDE, SIDE);
    BasinMap map =
        BasinMap.of(
            landscape,
            grid,
            FINDERS.of(landscape, window.tolerance(landscape, grid.pixel()), 20),
            part -> {});
    Set<SpecialEnd> found = EnumSet.noneOf(SpecialEnd.class);
    for (int i = 0; i < SIDE * SIDE; i++) {
      int index = map.index(i % SIDE, i / SIDE);
      if (index >= map.restPoints()) {
        found.add(SpecialEnd.at(index - map.restPoints()));
      }
    }
    return found;
  }

  @Test
  void releasesNearTheStationsMeetNoLimit() {
    Landscape landscape = Landscape.of(TrialLayouts.sample("three-stations"));
    BasinWindow window = new BasinWindow(0, 0, 0.1);
    assertEquals(EnumSet.of(SpecialEnd.UNSETTLED), PossibleEnds.of(landscape, window));
    assertTrue(PossibleEnds.of(landscape, window).containsAll(found(landscape, window)));
  }

  @Test
  void windowsBeyondTheSuspensionCannotStartEverywhere() {
    Landscape landscape = Landscape.of(TrialLayouts.sample("three-stations"));
    BasinWindow window = new BasinWindow(0, 0, 0.6);
    Set<SpecialEnd> possible = PossibleEnds.of(landscape, window);
    assertTrue(possible.contains(SpecialEnd.CANNOT_START), possible::toString);
    Set<SpecialEnd> found = found(landscape, window);
    assertTrue(found.contains(SpecialEnd.CANNOT_START), found::toString);
    assertTrue(possible.containsAll(found), () -> possible + " " + found);
  }

  @Test
  void frictionCanHoldTheBob() {
    Landscape landscape = Landscape.of(TrialLayouts.withFriction("three-stations", 1e-4));
    BasinWindow window = new BasinWindow(0, 0, 0.1);
    assertEquals(
        EnumSet.of(SpecialEnd.UNSETTLED, SpecialEnd.HELD), PossibleEnds.of(landscape, window));
    assertTrue(PossibleEnds.of(landscape, window).containsAll(found(landscape, window)));
  }

  @Test
  void textbookReleasesAreUndecidedAtMost() {
    Landscape landscape = Landscape.of(TrialLayouts.triangle(0.2));
    assertEquals(
        EnumSet.of(SpecialEnd.UNSETTLED), PossibleEnds.of(landscape, new BasinWindow(0, 0, 2)));
  }
}
