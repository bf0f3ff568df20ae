package lodeswing.analysis.field;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lodeswing.core.field.Frame;
import lodeswing.core.field.LineStepper;
import lodeswing.core.field.PlaneField;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Pole;
import org.junit.jupiter.api.Test;

/** Lines of the field: a dipole's own, and how evenly many of them lie. */
class EvenLinesTest {

  private static PlaneField upright(PlateField plate) {
    double[] b = new double[3];
    return (u, v, out) -> {
      plate.magnets().field(u, 0, v, b);
      out[0] = b[0];
      out[1] = b[2];
    };
  }

  /** r = c sin^2 theta (J. D. Jackson, Classical Electrodynamics, 3rd ed. (1999), section 5.6). */
  @Test
  void dipolesLineKeepsToItsFormula() {
    PlateField plate = Plates.of(new Dipole(0.5), new double[][] {{0, 0}}, Pole.NORTH);
    for (double c : new double[] {0.03, 0.07}) {
      LineStepper line = new LineStepper(upright(plate), c, 0, c / 75, false, 1e-12);
      int steps = 0;
      double r = c;
      while (r > 0.1 * c && line.step()) {
        r = Math.hypot(line.u(), line.v());
        double sine = line.u() / r;
        assertEquals(c, r / (sine * sine), 1e-5 * c);
        steps++;
      }
      assertTrue(steps > 30, "steps " + steps);
      assertTrue(line.v() > 0);
    }
  }

  @Test
  void linesLieEvenlyAndLeaveNoPartOut() {
    PlateField plate =
        Plates.of(
            new Disc(0.0125, 0.005, 0.385),
            new double[][] {{-0.03, 0}, {0.03, 0.01}},
            Pole.NORTH,
            Pole.SOUTH);
    double apart = 0.004;
    Frame window = Frame.square(0, 0, 0.07, 2);
    double[] b = new double[3];
    PlaneField plan =
        (x, y, out) -> {
          plate.magnets().field(x, y, 0.006, b);
          out[0] = b[0];
          out[1] = b[1];
        };
    List<FieldLine> lines =
        new EvenLines(plan, window, apart, 1e-10, f -> {}).run(new double[] {0}, new double[] {0});

    assertTrue(lines.size() > 20);
    for (int n = 0; n < lines.size(); n++) {
      for (int m = 0; m < n; m++) {
        assertTrue(least(lines.get(n), lines.get(m)) > 0.4 * apart, n + " and " + m);
      }
    }
    // Wherever one looks, a line is not much farther than the distance that was asked for.
    for (double x = -0.066; x < 0.067; x += 0.003) {
      for (double y = -0.066; y < 0.067; y += 0.003) {
        double nearest = Double.POSITIVE_INFINITY;
        for (FieldLine line : lines) {
          for (int i = 0; i < line.count(); i++) {
            nearest = Math.min(nearest, Math.hypot(line.u(i) - x, line.v(i) - y));
          }
        }
        assertTrue(nearest < 1.6 * apart, "(" + x + ", " + y + "): " + nearest / apart);
      }
    }
  }

  private static double least(FieldLine a, FieldLine b) {
    double least = Double.POSITIVE_INFINITY;
    // Ends on the window's edge may be nearer: the last step there is cut.
    for (int i = 1; i < a.count() - 1; i++) {
      for (int j = 1; j < b.count() - 1; j++) {
        least = Math.min(least, Math.hypot(a.u(i) - b.u(j), a.v(i) - b.v(j)));
      }
    }
    return least;
  }

  @Test
  void linesThroughAMagnetClose() {
    PlateField plate = Plates.of(new Disc(0.01, 0.01, 1.2), new double[][] {{0, 0}}, Pole.NORTH);
    Frame window = Frame.square(0, 0, 0.06, 2);
    List<FieldLine> lines =
        new EvenLines(upright(plate), window, 0.004, 1e-10, f -> {})
            .run(new double[] {0.008}, new double[] {0});

    assertTrue(lines.stream().anyMatch(FieldLine::closed));
  }
}
