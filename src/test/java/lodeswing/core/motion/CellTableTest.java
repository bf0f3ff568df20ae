package lodeswing.core.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;

/** The cells against the function that they stand for. */
class CellTableTest {

  private static final CellTable.Source BUMPS =
      new CellTable.Source() {
        @Override
        public double value(double u, double v) {
          return 1 / Math.sqrt((u - 0.1) * (u - 0.1) + v * v + 0.01)
              - 1 / Math.sqrt((u + 0.2) * (u + 0.2) + (v - 0.1) * (v - 0.1) + 0.01);
        }

        @Override
        public void slopes(double u, double v, double[] out) {
          double near = (u - 0.1) * (u - 0.1) + v * v + 0.01;
          double far = (u + 0.2) * (u + 0.2) + (v - 0.1) * (v - 0.1) + 0.01;
          double n = 1 / (near * Math.sqrt(near));
          double f = 1 / (far * Math.sqrt(far));
          out[0] = value(u, v);
          out[1] = -(u - 0.1) * n + (u + 0.2) * f;
          out[2] = -v * n + (v - 0.1) * f;
        }
      };

  @Test
  void valuesAndSlopesStayWithinTheMeasuredErrorsBetweenTheCheckPoints() {
    CellTable table = CellTable.build(BUMPS, 1, 1e-9, 1e-7, WorkBudget.unlimited());
    assertTrue(table.valueError() <= 1e-9);
    assertTrue(table.slopeError() <= 1e-7);
    var random = new java.util.Random(5);
    double[] exact = new double[3];
    double[] found = new double[3];
    for (int k = 0; k < 20_000; k++) {
      double u = 2 * random.nextDouble() - 1;
      double v = 2 * random.nextDouble() - 1;
      int cell = table.find(u, v);
      BUMPS.slopes(u, v, exact);
      table.gradient(cell, u, v, found);
      assertEquals(exact[0], found[0], 1e-9);
      assertEquals(exact[1], found[1], 1e-7);
      assertEquals(exact[2], found[2], 1e-7);
      assertEquals(found[0], table.value(cell, u, v), 1e-13);
    }
  }

  @Test
  void secondDerivativesAreThoseOfTheCellsPolynomial() {
    CellTable table = CellTable.build(BUMPS, 1, 1e-9, 1e-7, WorkBudget.unlimited());
    double[] six = new double[6];
    double[] ahead = new double[3];
    double[] behind = new double[3];
    double u = 0.31;
    double v = -0.17;
    double h = 1e-5;
    int cell = table.find(u, v);
    table.curvature(cell, u, v, six);
    table.gradient(cell, u + h, v, ahead);
    table.gradient(cell, u - h, v, behind);
    assertEquals((ahead[1] - behind[1]) / (2 * h), six[3], 1e-5 * Math.abs(six[3]));
    assertEquals((ahead[2] - behind[2]) / (2 * h), six[4], 1e-5 * Math.abs(six[4]));
    table.gradient(cell, u, v + h, ahead);
    table.gradient(cell, u, v - h, behind);
    assertEquals((ahead[2] - behind[2]) / (2 * h), six[5], 1e-5 * Math.abs(six[5]));
  }

  @Test
  void polynomialsOfDegreeSevenAreReproduced() {
    CellTable.Source polynomial =
        new CellTable.Source() {
          @Override
          public double value(double u, double v) {
            return Math.pow(u, 7) * Math.pow(v, 5) - 3 * u * v + 2;
          }

          @Override
          public void slopes(double u, double v, double[] out) {
            out[0] = value(u, v);
            out[1] = 7 * Math.pow(u, 6) * Math.pow(v, 5) - 3 * v;
            out[2] = 5 * Math.pow(u, 7) * Math.pow(v, 4) - 3 * u;
          }
        };
    CellTable table = CellTable.build(polynomial, 1, 1e-11, 1e-9, WorkBudget.unlimited());
    assertEquals(256, table.cells());
  }

  @Test
  void placesWhereTheFunctionIsNotSmoothHaveNoCell() {
    CellTable.Source edge =
        new CellTable.Source() {
          @Override
          public double value(double u, double v) {
            return Math.hypot(u - 0.5, v) > 0.05 ? 0 : Double.NaN;
          }

          @Override
          public void slopes(double u, double v, double[] out) {
            out[0] = value(u, v);
            out[1] = 0;
            out[2] = 0;
          }
        };
    CellTable table = CellTable.build(edge, 1, 1e-9, 1e-7, WorkBudget.unlimited());
    assertTrue(table.find(0.2, 0) >= 0);
    assertEquals(-1, table.find(0.5, 0.01));
    assertEquals(-1, table.find(1.5, 0));
  }
}
