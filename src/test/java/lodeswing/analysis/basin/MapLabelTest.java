package lodeswing.analysis.basin;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.OptionalInt;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.Release;
import lodeswing.core.window.BasinWindow;
import lodeswing.core.window.PixelGrid;
import org.junit.jupiter.api.Test;

class MapLabelTest {

  private static final OutcomeFinders FINDERS = new OutcomeFinders(LaneProvider.choose());
  private static final Landscape TRIANGLE = Landscape.of(TrialLayouts.triangle(0.1));
  private static final BasinWindow WINDOW = new BasinWindow(0.1, -0.2, 1.7);
  private static final int SIDE = 16;
  private static final MapLabel LABEL = new MapLabel(TRIANGLE, WINDOW, SIDE);

  private static OptionalInt end(double x, double y, double vx) {
    return LABEL.of(new Release(x, y, vx, 0), FINDERS, 600);
  }

  @Test
  void aPixelsCentreGetsItsLabelWhateverItsUnitsRoundTo() {
    PixelGrid grid = PixelGrid.tile(WINDOW, 0, 0, 0, SIDE);
    BasinMap map =
        BasinMap.of(
            TRIANGLE,
            grid,
            FINDERS.of(TRIANGLE, WINDOW.tolerance(TRIANGLE, grid.pixel()), 600),
            part -> {});
    for (int row = 0; row < SIDE; row++) {
      for (int column = 0; column < SIDE; column++) {
        double x = Math.nextUp(grid.x(column) / 1e3 * 1e3);
        double y = Math.nextDown(grid.y(row) / 1e3 * 1e3);
        assertEquals(OptionalInt.of(map.index(column, row)), end(x, y, 0));
      }
    }
  }

  @Test
  void outsideTheWindowAndWithAPushThereIsNone() {
    assertEquals(OptionalInt.empty(), end(1.81, 0, 0));
    assertEquals(OptionalInt.empty(), end(0, -1.91, 0));
    assertEquals(OptionalInt.empty(), end(0, 0, 0.1));
  }
}
