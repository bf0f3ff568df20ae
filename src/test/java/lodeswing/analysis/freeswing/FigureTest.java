package lodeswing.analysis.freeswing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lodeswing.core.geometry.PathCurve;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.Release;
import lodeswing.core.suspension.Yoke;
import lodeswing.core.swing.SmallSwings;
import org.junit.jupiter.api.Test;

/**
 * Figures of the exact motion against those of an ideal harmonic pair, x = A cos(omega_x t), y = B
 * cos(omega_y t): J. A. Lissajous, Ann. Chim. Phys. 51 (1857) 147 (from memory).
 */
class FigureTest {

  private static final Layout RIG = FreeRigs.lossless(FreeRigs.TWO_TO_THREE);

  /** A swing's path differs from the harmonic one by its cube; at a tenth by a thousandth. */
  @Test
  void smallSwingsDrawTheFigureOfTheHarmonicPair() {
    double large = deviation(1e-2);
    double small = deviation(1e-3);
    assertTrue(large < 1e-4, large + "");
    assertEquals(1e3, large / small, 30);
  }

  /** Greatest deviation within one closing, for a release at rest on the diagonal. */
  private static double deviation(double size) {
    SmallSwings swings = SmallSwings.of(RIG);
    double closing = new WholeRatio(2, 3).closesAfter(swings);
    PathCurve curve = FreeRigs.path(RIG, new Release(size, size, 0, 0), closing, 0).curve();
    double worst = 0;
    for (int i = 0; i < curve.count(); i++) {
      double x = size * Math.cos(swings.rateX() * curve.t(i));
      double y = size * Math.cos(swings.rateY() * curve.t(i));
      worst = Math.max(worst, Math.hypot(curve.x(i) - x, curve.y(i) - y));
    }
    return worst;
  }

  /** A figure of 2 to 3 touches the sides of its box twice and three times in a closing. */
  @Test
  void figureTouchesItsBoxAsOftenAsTheRatioSays() {
    SmallSwings swings = SmallSwings.of(RIG);
    WholeRatio ratio = new WholeRatio(2, 3);
    double closing = ratio.closesAfter(swings);
    // a push, so that no touch lies at the ends
    PathCurve curve = FreeRigs.path(RIG, new Release(2e-3, 1e-3, 1e-3, 5e-3), closing, 0).curve();
    int right = 0;
    int top = 0;
    for (int i = 1; i < curve.count(); i++) {
      right += curve.vx(i - 1) > 0 && curve.vx(i) <= 0 ? 1 : 0;
      top += curve.vy(i - 1) > 0 && curve.vy(i) <= 0 ? 1 : 0;
    }
    assertEquals(3, right);
    assertEquals(2, top);
    int last = curve.count() - 1;
    assertEquals(2e-3, curve.x(last), 2e-6);
    assertEquals(1e-3, curve.y(last), 2e-6);
    assertEquals(5e-3, curve.vy(last), 2e-5);
  }

  /** A leg that is a little too long runs through all forms in the time that is told. */
  @Test
  void figureComesBackToItsFormInTheTimeThatIsTold() {
    Layout near = FreeRigs.lossless(new Yoke(0.6, 0.49, 0.4, 0.06));
    SmallSwings swings = SmallSwings.of(near);
    WholeRatio ratio = WholeRatio.figureOf(swings.ratio());
    assertEquals("2:3", ratio.toString());
    double round = ratio.formsAfter(swings);
    // the harmonic pair itself: psi = 3 phi_y - 2 phi_x has gone once round
    assertEquals(2 * Math.PI, Math.abs(3 * swings.rateY() - 2 * swings.rateX()) * round, 1e-12);
    double size = 1e-3;
    PathCurve curve = FreeRigs.path(near, new Release(size, size, 0, 0), round * 1.02, 0).curve();
    // released at rest the path is a line traced there and back; so it is again then
    double whole = slowest(curve, 0.97 * round, 1.02 * round);
    assertTrue(whole < 0.05 * size * swings.rateX(), whole + "");
    double widest = slowest(curve, 0.22 * round, 0.28 * round);
    assertTrue(widest > 0.2 * size * swings.rateX(), widest + "");
  }

  /** Least speed of the bob in a stretch of time. */
  private static double slowest(PathCurve curve, double from, double to) {
    double least = Double.POSITIVE_INFINITY;
    double[] at = new double[4];
    for (double t = from; t < to; t += 1e-3) {
      curve.at(t, at);
      least = Math.min(least, Math.hypot(at[2], at[3]));
    }
    return least;
  }

  @Test
  void exactRatioNeverChangesItsForm() {
    SmallSwings swings = SmallSwings.of(RIG);
    assertEquals(Double.POSITIVE_INFINITY, new WholeRatio(2, 3).formsAfter(swings));
    assertFalse(Double.isInfinite(new WholeRatio(1, 1).formsAfter(swings)));
    assertEquals(2 * swings.periodY(), new WholeRatio(2, 3).closesAfter(swings), 1e-12);
  }
}
