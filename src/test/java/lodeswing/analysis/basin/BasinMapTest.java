package lodeswing.analysis.basin;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.concurrent.CancellationException;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.window.BasinWindow;
import lodeswing.core.window.PixelGrid;
import org.junit.jupiter.api.Test;

class BasinMapTest {

  private static final Landscape TRIANGLE = Landscape.of(TrialLayouts.triangle(0.5));
  private static final OutcomeFinders FINDERS = new OutcomeFinders(LaneProvider.choose());
  private static final BasinWindow WINDOW = new BasinWindow(0.1, -0.2, 1.7);

  private static BasinMap map(PixelGrid grid) {
    return BasinMap.of(
        TRIANGLE,
        grid,
        FINDERS.of(TRIANGLE, WINDOW.tolerance(TRIANGLE, grid.pixel()), 600),
        part -> {});
  }

  @Test
  void tilesAreCutFromTheWholeToTheBit() {
    PixelGrid whole = PixelGrid.whole(WINDOW, 64, 64);
    BasinMap one = map(whole);
    for (int ty = 0; ty < 2; ty++) {
      for (int tx = 0; tx < 2; tx++) {
        PixelGrid grid = PixelGrid.tile(WINDOW, 1, tx, ty, 32);
        BasinMap tile = map(grid);
        for (int row = 0; row < 32; row++) {
          for (int column = 0; column < 32; column++) {
            int c = 32 * tx + column;
            int r = 32 * ty + row;
            assertEquals(whole.x(c), grid.x(column), 0);
            assertEquals(whole.y(r), grid.y(row), 0);
            assertEquals(one.index(c, r), tile.index(column, row));
            assertEquals(one.sealedAt(c, r), tile.sealedAt(column, row), 0);
          }
        }
      }
    }
  }

  @Test
  void rowsRunDownwardsFromTheTop() {
    PixelGrid grid = PixelGrid.tile(WINDOW, 0, 0, 0, 4);
    assertEquals(0.1 - 1.7 + 0.425, grid.x(0), 1e-12);
    assertEquals(-0.2 + 1.7 - 0.425, grid.y(0), 1e-12);
    assertTrue(grid.y(3) < grid.y(0));
  }

  @Test
  void picturesThatAreNotSquareShowTheWindowInTheirMiddle() {
    PixelGrid wide = PixelGrid.whole(WINDOW, 30, 10);
    assertEquals(WINDOW.x(), (wide.x(0) + wide.x(29)) / 2, 1e-12);
    assertEquals(WINDOW.y() + 1.7 - 0.17, wide.y(0), 1e-12);
  }

  @Test
  void toleranceFollowsThePixelWithinItsBounds() {
    double reach = WINDOW.reach();
    assertEquals(1e-5, WINDOW.tolerance(TRIANGLE, reach).relative());
    assertEquals(5e-9, WINDOW.tolerance(TRIANGLE, 1e-5 * reach).relative(), 1e-15);
    assertEquals(1e-14, WINDOW.tolerance(TRIANGLE, 1e-13 * reach).relative());
    Tolerance tighter = WINDOW.tighter(TRIANGLE, 1e-5 * reach);
    assertEquals(5e-10, tighter.relative(), 1e-16);
  }

  /** A whole tile at the map's own tolerance against 1e-12: at most 5 labels, at a boundary. */
  @Test
  void fewLabelsChangeWhenTheToleranceIsTightenedAndNoneFarFromAnother() {
    int side = 256;
    PixelGrid grid = PixelGrid.tile(WINDOW, 0, 0, 0, side);
    BasinMap usual = map(grid);
    BasinMap tight =
        BasinMap.of(TRIANGLE, grid, FINDERS.of(TRIANGLE, Tolerance.of(1e-12), 600), part -> {});
    int changed = 0;
    for (int i = 0; i < grid.count(); i++) {
      int column = i % side;
      int row = i / side;
      if (usual.index(column, row) != tight.index(column, row)) {
        changed++;
        assertTrue(nearAnother(tight, column, row), "far from a boundary: " + column + ", " + row);
      }
    }
    assertTrue(changed <= 5, changed + " changed");
  }

  /** Whether another label lies within two pixels. */
  private static boolean nearAnother(BasinMap map, int column, int row) {
    boolean near = false;
    for (int r = Math.max(0, row - 2); r <= Math.min(map.height() - 1, row + 2); r++) {
      for (int c = Math.max(0, column - 2); c <= Math.min(map.width() - 1, column + 2); c++) {
        near |= map.index(c, r) != map.index(column, row);
      }
    }
    return near;
  }

  @Test
  void workEndsWhereProgressThrows() {
    assertThrows(
        CancellationException.class,
        () ->
            BasinMap.of(
                TRIANGLE,
                PixelGrid.tile(WINDOW, 0, 0, 0, 256),
                FINDERS.of(TRIANGLE, Tolerance.of(1e-6), 600),
                part -> {
                  throw new CancellationException();
                }));
  }

  @Test
  void surveyFindsHowDeepBoundariesHold() {
    BasinSurvey survey = new BasinSurveyor(TRIANGLE, WINDOW, FINDERS, 600).survey(part -> {});
    assertEquals(1, survey.steadyShare(), 0.01);
    assertTrue(survey.deepestZoom() >= 20 && survey.deepestZoom() < 45, survey.toString());
    assertTrue(survey.halfTime() > 0 && survey.halfTime() < 30, survey.toString());
  }

  @Test
  void windowOfOneEndMayBeZoomedAsFarAsNumbersReach() {
    BasinWindow still = new BasinWindow(0.577, 0, 0.01);
    BasinSurvey survey = new BasinSurveyor(TRIANGLE, still, FINDERS, 600).survey(part -> {});
    assertEquals(1, survey.steadyShare());
    assertTrue(still.resolves(Math.scalb(0.02 / 256, -survey.deepestZoom())));
  }
}
