package lodeswing.core.motion;

import java.util.Arrays;
import java.util.function.Supplier;
import java.util.stream.IntStream;

/**
 * The magnets' energy over the two angles as a net of equal squares, a Chebyshev polynomial on
 * each: nets of one shape can be added and scaled, so that few of them stand for a family of rigs.
 *
 * <p>A square whose last coefficients are not small, near a touch, is not held: there, and beyond
 * the net, the exact energy answers. Immutable; evaluation is safe for several threads and
 * allocates a small array.
 */
final class EnergyNet implements AngleEnergy {

  private static final int DEGREE = 16;
  private static final int TERMS = DEGREE + 1;

  /** Squares a side that are tried in turn. */
  private static final int[] ACROSS = {4, 6, 8, 12};

  /** Error at most, as a share of the energy's range. */
  private static final double TOLERANCE = 1e-7;

  /** What is left out and folded back, in units of the sum of the last two degrees' terms. */
  private static final double TAIL = 2;

  private final Shape shape;
  private final double[] c;
  private final Supplier<AngleEnergy> exact;

  private EnergyNet(Shape shape, double[] c, Supplier<AngleEnergy> exact) {
    this.shape = shape;
    this.c = c;
    this.exact = exact;
  }

  /** Squares of a net, and which of them hold. */
  private static final class Shape {

    private final double reach;
    private final int across;
    private final boolean[] held;

    Shape(double reach, int across) {
      this.reach = reach;
      this.across = across;
      this.held = new boolean[across * across];
    }

    double half() {
      return reach / across;
    }

    double middle(int index) {
      return -reach + (2 * index + 1) * half();
    }

    /** The square that holds a place; below 0 where none does. */
    int find(double u, double v) {
      int i = index(u);
      int j = index(v);
      int square = i * across + j;
      return i < 0 || j < 0 || !held[square] ? -1 : square;
    }

    private int index(double angle) {
      double at = (angle + reach) / (2 * half());
      return at >= 0 && at < across ? (int) at : -1;
    }
  }

  /**
   * A net that is as fine as an energy asks.
   *
   * @param energy safe for several threads
   * @param reach half the net's side [rad]
   */
  static EnergyNet of(AngleEnergy energy, double reach) {
    for (int across : ACROSS) {
      Shape shape = new Shape(reach, across);
      double[] c = coefficients(shape, energy);
      judge(shape, c);
      boolean last = across == ACROSS[ACROSS.length - 1];
      if (last || IntStream.range(0, across * across).allMatch(k -> shape.held[k])) {
        return new EnergyNet(shape, c, () -> energy);
      }
    }
    throw new IllegalStateException("no net was tried");
  }

  /** A net of the same shape for another energy; squares hold where they do here. */
  EnergyNet alike(AngleEnergy energy) {
    return new EnergyNet(shape, coefficients(shape, energy), () -> energy);
  }

  /**
   * A sum of nets of this shape.
   *
   * @param nets what is added
   * @param factors as many
   * @param energy what answers where no square holds, asked for once and only when needed
   */
  EnergyNet plus(EnergyNet[] nets, double[] factors, Supplier<AngleEnergy> energy) {
    double[] sum = c.clone();
    for (int n = 0; n < nets.length; n++) {
      double factor = factors[n];
      double[] other = nets[n].c;
      for (int k = 0; k < sum.length; k++) {
        sum[k] = Math.fma(factor, other[k], sum[k]);
      }
    }
    return new EnergyNet(shape, sum, energy);
  }

  /** Half the difference to the net on the other side: the slope over a step. */
  EnergyNet halfLess(EnergyNet down) {
    return combined(0.5, new EnergyNet[] {down}, -0.5);
  }

  /** Half the second difference over a step. */
  EnergyNet bend(EnergyNet middle, EnergyNet down) {
    return combined(0.5, new EnergyNet[] {middle, middle, down}, -0.5, -0.5, 0.5);
  }

  /** The mixed difference over a step in each of two figures. */
  EnergyNet twist(EnergyNet one, EnergyNet other, EnergyNet middle) {
    return combined(1, new EnergyNet[] {one, other, middle}, -1, -1, 1);
  }

  private EnergyNet combined(double own, EnergyNet[] nets, double... factors) {
    return new EnergyNet(shape, new double[c.length], exact)
        .plus(new EnergyNet[] {this}, new double[] {own}, exact)
        .plus(nets, factors, exact);
  }

  private static double[] coefficients(Shape shape, AngleEnergy energy) {
    ChebyshevGrid grid = ChebyshevGrid.of(DEGREE);
    double[] all = new double[shape.held.length * TERMS * TERMS];
    IntStream.range(0, shape.held.length)
        .parallel()
        .forEach(
            square -> {
              double u = shape.middle(square / shape.across);
              double v = shape.middle(square % shape.across);
              double[] values = new double[TERMS * TERMS];
              for (int k = 0; k < TERMS; k++) {
                for (int l = 0; l < TERMS; l++) {
                  values[k * TERMS + l] =
                      energy.value(
                          u + shape.half() * grid.node(k), v + shape.half() * grid.node(l));
                }
              }
              double[] own = grid.coefficients(values);
              System.arraycopy(own, 0, all, square * own.length, own.length);
            });
    return all;
  }

  private static void judge(Shape shape, double[] c) {
    double[] tails = new double[shape.held.length];
    double size = 0;
    for (int square = 0; square < tails.length; square++) {
      double late = 0;
      double range = 0;
      for (int k = 0; k < TERMS * TERMS; k++) {
        double term = Math.abs(c[square * TERMS * TERMS + k]);
        int degree = Math.max(k / TERMS, k % TERMS);
        late += degree >= DEGREE - 1 ? term : 0;
        range += degree == 1 || degree == 2 ? term : 0;
      }
      tails[square] = TAIL * late;
      // Squares on a magnet would make any error small.
      size = late < range ? Math.max(size, range) : size;
    }
    for (int square = 0; square < tails.length; square++) {
      shape.held[square] = tails[square] <= TOLERANCE * size;
    }
  }

  @Override
  public void gradient(double beta, double alpha, double[] out) {
    int square = shape.find(beta, alpha);
    if (square < 0) {
      exact.get().gradient(beta, alpha, out);
      return;
    }
    double[] t = new double[6 * TERMS];
    terms(beta, shape.middle(square / shape.across), t, 0, false);
    terms(alpha, shape.middle(square % shape.across), t, 3 * TERMS, false);
    double value = 0;
    double slopeU = 0;
    double slopeV = 0;
    int at = square * TERMS * TERMS;
    for (int p = 0; p < TERMS; p++) {
      double row = 0;
      double bent = 0;
      for (int q = 0; q < TERMS; q++) {
        double term = c[at++];
        row = Math.fma(term, t[3 * TERMS + q], row);
        bent = Math.fma(term, t[4 * TERMS + q], bent);
      }
      value = Math.fma(t[p], row, value);
      slopeU = Math.fma(t[TERMS + p], row, slopeU);
      slopeV = Math.fma(t[p], bent, slopeV);
    }
    out[0] = value;
    out[1] = slopeU;
    out[2] = slopeV;
  }

  @Override
  public void curvature(double beta, double alpha, double[] out) {
    int square = shape.find(beta, alpha);
    if (square < 0) {
      exact.get().curvature(beta, alpha, out);
      return;
    }
    double[] t = new double[6 * TERMS];
    terms(beta, shape.middle(square / shape.across), t, 0, true);
    terms(alpha, shape.middle(square % shape.across), t, 3 * TERMS, true);
    Arrays.fill(out, 0, 6, 0);
    int at = square * TERMS * TERMS;
    for (int p = 0; p < TERMS; p++) {
      double row = 0;
      double slope = 0;
      double bend = 0;
      for (int q = 0; q < TERMS; q++) {
        double term = c[at++];
        row = Math.fma(term, t[3 * TERMS + q], row);
        slope = Math.fma(term, t[4 * TERMS + q], slope);
        bend = Math.fma(term, t[5 * TERMS + q], bend);
      }
      out[0] = Math.fma(t[p], row, out[0]);
      out[1] = Math.fma(t[TERMS + p], row, out[1]);
      out[2] = Math.fma(t[p], slope, out[2]);
      out[3] = Math.fma(t[2 * TERMS + p], row, out[3]);
      out[4] = Math.fma(t[TERMS + p], slope, out[4]);
      out[5] = Math.fma(t[p], bend, out[5]);
    }
  }

  /** Chebyshev polynomials, their slopes and, where wanted, bends, by their recurrences. */
  private void terms(double angle, double middle, double[] t, int at, boolean bends) {
    double scale = 1 / shape.half();
    double a = (angle - middle) * scale;
    t[at] = 1;
    t[at + 1] = a;
    t[at + TERMS + 1] = scale;
    for (int p = 2; p < TERMS; p++) {
      t[at + p] = 2 * a * t[at + p - 1] - t[at + p - 2];
      t[at + TERMS + p] =
          2 * (scale * t[at + p - 1] + a * t[at + TERMS + p - 1]) - t[at + TERMS + p - 2];
    }
    for (int p = 2; bends && p < TERMS; p++) {
      t[at + 2 * TERMS + p] =
          2 * (2 * scale * t[at + TERMS + p - 1] + a * t[at + 2 * TERMS + p - 1])
              - t[at + 2 * TERMS + p - 2];
    }
  }
}
