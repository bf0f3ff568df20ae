package lodeswing.analysis.glow;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lodeswing.core.geometry.PathCurve;
import org.apache.commons.math3.special.Erf;
import org.junit.jupiter.api.Test;

/** The light on the paper against integrals in closed form. */
class GlowTrailTest {

  private static final double SPOT = 4e-3;

  /** Standard deviation: width at half height over 2 sqrt(2 ln 2). */
  private static final double SPREAD = SPOT / 2.354820045;

  /** A paper that hardly fades. */
  private static final DecayLaw LASTING = new DecayLaw(1e12, 1);

  private static GlowPaper paper(double pixel) {
    return GlowPaper.covering(-0.1, -0.08, 0.1, 0.08, pixel);
  }

  /** Along x from -50 to 50 mm at even speed in two seconds, along a line that is no pixel's. */
  private static PathCurve straight() {
    return new PathCurve(
        new double[] {0, 2},
        new double[] {-0.05, 0.05},
        new double[] {0.00317, 0.00317},
        new double[] {0.05, 0.05},
        new double[] {0, 0});
  }

  /** A damped ellipse about the origin. */
  private static PathCurve swing(int knots, double until) {
    double[][] columns = new double[4][knots];
    double[] t = new double[knots];
    for (int i = 0; i < knots; i++) {
      t[i] = until * i / (knots - 1);
      double size = 0.06 * Math.exp(-0.1 * t[i]);
      columns[0][i] = size * Math.cos(5 * t[i]);
      columns[1][i] = 0.5 * size * Math.sin(5 * t[i]);
      columns[2][i] = -0.1 * columns[0][i] - 5 * size * Math.sin(5 * t[i]);
      columns[3][i] = -0.1 * columns[1][i] + 2.5 * size * Math.cos(5 * t[i]);
    }
    return new PathCurve(t, columns);
  }

  @Test
  void allOfTheLightIsOnThePaper() {
    for (double pixel : new double[] {0.2e-3, 0.5e-3, 1e-3, 2e-3}) {
      LongExposure exposure = new LongExposure(7.3, 7.3, SPOT, LASTING);
      GlowField field = GlowTrail.of(swing(200, 12), exposure, paper(pixel));
      assertEquals(7.3, field.total(), 1e-8, () -> "pixels of " + pixel);
    }
  }

  @Test
  void whatFallsBesideThePaperIsNotOnIt() {
    GlowPaper right = GlowPaper.covering(0, -0.08, 0.1, 0.08, 0.5e-3);
    GlowField field = GlowTrail.of(straight(), new LongExposure(2, 2, SPOT, LASTING), right);
    assertEquals(1, field.total(), 0.02);
  }

  /**
   * A light of normal profile moving evenly from a to b leaves, across the path, the profile, and
   * along it the difference of two error functions over twice the length (integral of the normal
   * density; Abramowitz and Stegun, 7.1.1).
   */
  @Test
  void aStraightPathLeavesTheKnownProfile() {
    GlowPaper paper = paper(0.5e-3);
    GlowField field = GlowTrail.of(straight(), new LongExposure(2, 2, SPOT, LASTING), paper);
    double greatest = 2 / 0.1 / (Math.sqrt(2 * Math.PI) * SPREAD);
    double pixel = paper.pixel();
    for (int row = 0; row < paper.rows(); row++) {
      for (int column = 0; column < paper.columns(); column++) {
        double y = paper.y(row) - 0.00317;
        double across =
            (Erf.erf((y + pixel / 2) / (SPREAD * Math.sqrt(2)))
                    - Erf.erf((y - pixel / 2) / (SPREAD * Math.sqrt(2))))
                / (2 * pixel);
        double x = paper.x(column);
        double along =
            (Erf.erf((x + 0.05) / (SPREAD * Math.sqrt(2)))
                    - Erf.erf((x - 0.05) / (SPREAD * Math.sqrt(2))))
                / 2;
        assertEquals(20 * across * along, field.at(column, row), 2e-3 * greatest);
      }
    }
    assertEquals(greatest, field.greatest(), 0.02 * greatest);
    assertEquals(field.greatest(), field.typical(), 0.03 * greatest);
  }

  /**
   * Knots far apart and close together tell of the same cubic, so the same light to a thousandth.
   */
  @Test
  void theLightDoesNotDependOnHowThePathIsCut() {
    PathCurve whole = straight();
    double[] t = new double[301];
    double[][] columns = new double[4][301];
    double[] at = new double[4];
    for (int i = 0; i < t.length; i++) {
      t[i] = 2.0 * i / 300;
      whole.at(t[i], at);
      for (int c = 0; c < 4; c++) {
        columns[c][i] = at[c];
      }
    }
    LongExposure exposure = new LongExposure(1.7, 60, SPOT, DecayLaw.STRONTIUM_ALUMINATE);
    GlowField few = GlowTrail.of(whole, exposure, paper(1e-3));
    GlowField many = GlowTrail.of(new PathCurve(t, columns), exposure, paper(1e-3));
    for (int column = 0; column < few.paper().columns(); column++) {
      int row = few.paper().rows() / 2 - 4;
      assertEquals(few.at(column, row), many.at(column, row), 1e-3 * few.greatest());
    }
  }

  /** Without light that fades, a bob at rest leaves the integral of the law of decay. */
  @Test
  void aPlaceOfRestKeepsWhatTheDecayLeaves() {
    PathCurve rest =
        new PathCurve(
            new double[] {0, 40}, new double[2], new double[2], new double[2], new double[2]);
    LongExposure exposure = new LongExposure(40, 50, SPOT, new DecayLaw(30, 2));
    GlowField field = GlowTrail.of(rest, exposure, paper(1e-3));
    // The integral of (1 + u/30)^-2 over u from 10 to 50.
    assertEquals(30 / (1 + 10.0 / 30) - 30 / (1 + 50.0 / 30), field.total(), 1e-6);
    assertEquals(0, Math.abs(field.brightestX()), 0.51e-3);
    assertEquals(0, Math.abs(field.brightestY()), 0.51e-3);
  }

  /** There and back on one line: the picture is its own mirror image. */
  @Test
  void aSymmetricPathLeavesASymmetricPicture() {
    int knots = 401;
    double[][] columns = new double[4][knots];
    double[] t = new double[knots];
    for (int i = 0; i < knots; i++) {
      t[i] = 2 * Math.PI * i / (knots - 1);
      columns[0][i] = 0.06 * Math.cos(t[i]);
      columns[1][i] = 0.04 * Math.sin(2 * t[i]);
      columns[2][i] = -0.06 * Math.sin(t[i]);
      columns[3][i] = 0.08 * Math.cos(2 * t[i]);
    }
    LongExposure exposure = new LongExposure(2 * Math.PI, 7, SPOT, LASTING);
    GlowField field = GlowTrail.of(new PathCurve(t, columns), exposure, paper(0.5e-3));
    int right = field.paper().columns() - 1;
    int low = field.paper().rows() - 1;
    for (int row = 0; row <= low; row++) {
      for (int column = 0; column <= right; column++) {
        double own = field.at(column, row);
        assertEquals(own, field.at(right - column, row), 1e-4 * field.greatest());
        assertEquals(own, field.at(column, low - row), 1e-4 * field.greatest());
      }
    }
    // The bob is slowest where it turns round.
    assertEquals(0.04, Math.abs(field.brightestX()), 0.022);
    assertTrue(field.greatest() > field.typical());
  }

  @Test
  void whatWasDrawnFirstIsFaintest() {
    GlowPaper paper = paper(0.5e-3);
    GlowField field =
        GlowTrail.of(straight(), new LongExposure(2, 2, SPOT, new DecayLaw(1, 1)), paper);
    int row = paper.rows() / 2 - 7;
    double early = field.at(paper.columns() / 2 - 80, row);
    double late = field.at(paper.columns() / 2 + 80, row);
    // At -40 mm the light was 1.8 s ago, at 40 mm 0.2 s: 1/2.8 against 1/1.2.
    assertEquals(1.2 / 2.8, early / late, 0.01);
  }

  @Test
  void aSpotNarrowerThanItsPixelsIsRefused() {
    LongExposure exposure = new LongExposure(2, 2, 1e-3, LASTING);
    assertThrows(
        IllegalArgumentException.class, () -> GlowTrail.of(straight(), exposure, paper(1e-3)));
    assertThrows(IllegalArgumentException.class, () -> new LongExposure(2, 1, 1e-3, LASTING));
    assertThrows(IllegalArgumentException.class, () -> new LongExposure(2, 2, 0, LASTING));
  }
}
