package lodeswing.analysis.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import lodeswing.core.geometry.PathCurve;
import lodeswing.core.landscape.Landscape;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The curve that pictures are drawn from. */
class PathCurveTest {

  @ParameterizedTest
  @CsvSource({
    "three-stations, 0.07, 0.05",
    "closed-doors, 0.02, 0.03",
    "y-cord, 0.05, 0.035",
    "paper-triangle, 1.1, -0.6"
  })
  void curveKeepsToThePathWhateverTheSamples(String name, double x, double y) {
    Landscape landscape = TrialLandscapes.sample(name);
    double[] start = TrialLandscapes.start(landscape, x, y, 0, 0);
    Trace trace = new Trace(landscape);
    TraceResult fine = trace.run(TrialLandscapes.spec(8, 0.001), start);
    PathCurve curve = trace.run(TrialLandscapes.spec(8, 0.5), start).curve();
    double swing = 0;
    double worst = 0;
    double[] at = new double[4];
    for (int i = 0; i < fine.samples().count(); i++) {
      curve.at(fine.samples().t(i), at);
      double there = fine.samples().x()[i];
      double up = fine.samples().y()[i];
      swing = Math.max(swing, Math.hypot(there, up));
      worst = Math.max(worst, Math.hypot(at[0] - there, at[1] - up));
    }
    double share = worst / swing;
    assertTrue(share < 5e-5, () -> "off by " + share + " of the swing");
    assertEquals(8, curve.ends());
    assertTrue(curve.count() < 4_000, () -> curve.count() + " knots");
  }

  @Test
  void curveEndsWithTheDurationNotWithTheLastSample() {
    Landscape landscape = TrialLandscapes.sample("three-stations");
    double[] start = TrialLandscapes.start(landscape, 0.07, 0.05, 0, 0);
    TraceResult briefly = new Trace(landscape).run(TrialLandscapes.spec(1.3, 0.5), start);
    assertEquals(1.3, briefly.curve().ends());
    assertEquals(3, briefly.samples().count());
  }

  @Test
  void cubicsAreMetExactlyAndThinnedToTheirEnds() {
    double[] t = new double[41];
    double[][] at = new double[4][41];
    for (int i = 0; i < t.length; i++) {
      t[i] = 0.1 * i;
      at[0][i] = x(t[i]);
      at[1][i] = -2 * x(t[i]);
      at[2][i] = slope(t[i]);
      at[3][i] = -2 * slope(t[i]);
    }
    PathCurve curve = new PathCurve(t, at).thinned(1e-9);
    assertEquals(2, curve.count());
    double[] out = new double[4];
    for (double time = 0; time <= 4; time += 0.07) {
      curve.at(time, out);
      assertEquals(x(time), out[0], 1e-12);
      assertEquals(-2 * x(time), out[1], 1e-12);
      assertEquals(slope(time), out[2], 1e-11);
      assertEquals(-2 * slope(time), out[3], 1e-11);
    }
  }

  private static double x(double t) {
    return 1 - 2 * t + 3 * t * t - 0.5 * t * t * t;
  }

  private static double slope(double t) {
    return -2 + 6 * t - 1.5 * t * t;
  }

  @Test
  void thinnedCurveKeepsItsToleranceAndOutsideItTheEndsStand() {
    int count = 1_000;
    double[] t = new double[count];
    double[][] at = new double[4][count];
    for (int i = 0; i < count; i++) {
      t[i] = 0.02 * i;
      at[0][i] = Math.cos(3 * t[i]);
      at[1][i] = Math.sin(2 * t[i]);
      at[2][i] = -3 * Math.sin(3 * t[i]);
      at[3][i] = 2 * Math.cos(2 * t[i]);
    }
    PathCurve curve = new PathCurve(t, at);
    PathCurve thin = curve.thinned(1e-3);
    assertTrue(thin.count() < 120, () -> thin.count() + " knots");
    double[] out = new double[4];
    for (double time = 0; time < thin.ends(); time += 0.0031) {
      thin.at(time, out);
      assertTrue(Math.hypot(out[0] - Math.cos(3 * time), out[1] - Math.sin(2 * time)) < 1.2e-3);
    }
    curve.at(-1, out);
    assertEquals(1, out[0]);
    assertEquals(0, out[3]);
    curve.at(1e9, out);
    assertEquals(at[0][count - 1], out[0]);
  }

  @Test
  void damagedKnotsAreRefused() {
    double[] two = {0, 1};
    for (double[] t : new double[][] {{}, {0, 0}, {1, 0}, {0, Double.NaN}}) {
      double[] same = new double[t.length];
      assertThrows(IllegalArgumentException.class, () -> new PathCurve(t, same, same, same, same));
    }
    assertThrows(IllegalArgumentException.class, () -> new PathCurve(two, two, two, two));
    assertThrows(
        IllegalArgumentException.class,
        () -> new PathCurve(two, two, two, two, new double[] {0, Double.POSITIVE_INFINITY}));
  }
}
