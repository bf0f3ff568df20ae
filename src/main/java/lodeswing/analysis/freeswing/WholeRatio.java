package lodeswing.analysis.freeswing;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.swing.SmallSwings;

/**
 * Two whole numbers of swings that take the same time, or nearly: y swings along y while x go along
 * x.
 *
 * <p>With x = cos(phi_x) and y = cos(phi_y) the form of the figure is told by psi = X phi_y - Y
 * phi_x alone, X and Y the two numbers: at a multiple of pi it is a line that is traced there and
 * back, halfway between it is widest (J. A. Lissajous, Ann. Chim. Phys. 51 (1857) 147, from
 * memory). Where the frequencies do not fit quite, psi grows evenly and the figure runs through all
 * forms in 2 pi.
 *
 * @param y swings along y, 1 or more
 * @param x swings along x in the same time, 1 or more, without a divisor in common with y
 */
public record WholeRatio(int y, int x) {

  /** Greatest number of swings that a ratio is made of. */
  public static final int MOST = 12;

  /** Share of all its forms that a figure may go through until it closes, to be seen as one. */
  private static final double STEADY = 1.0 / 16;

  /**
   * @throws IllegalArgumentException where a number is below 1 or both have a divisor in common
   */
  public WholeRatio {
    if (y < 1 || x < 1 || divisor(y, x) != 1) {
      throw new IllegalArgumentException("not a ratio in its lowest terms: " + y + ":" + x);
    }
  }

  /** The ratio of any two whole numbers in its lowest terms. */
  public static WholeRatio reduced(int y, int x) {
    int divisor = divisor(y, x);
    return new WholeRatio(y / divisor, x / divisor);
  }

  private static int divisor(int a, int b) {
    return b == 0 ? a : divisor(b, a % b);
  }

  /**
   * The best ratios for a value, simplest first: each is nearer than every one whose larger number
   * is smaller.
   *
   * @param value swings along y to one along x, above 0
   */
  public static List<WholeRatio> nearest(double value) {
    List<WholeRatio> best = new ArrayList<>();
    double least = Double.POSITIVE_INFINITY;
    for (int larger = 1; larger <= MOST; larger++) {
      WholeRatio next = best(value, larger);
      double distance = next.distance(value);
      if (distance < least) {
        best.add(next);
        least = distance;
      }
    }
    return List.copyOf(best);
  }

  /** The nearest ratio whose larger number is given; the smaller one at least 1. */
  private static WholeRatio best(double value, int larger) {
    double small = value <= 1 ? value : 1 / value;
    int smaller = (int) Math.max(1, Math.min(larger, Math.rint(small * larger)));
    return value <= 1 ? reduced(smaller, larger) : reduced(larger, smaller);
  }

  /** The ratio whose figure a value draws: the simplest one that keeps its form until it closes. */
  public static WholeRatio figureOf(double value) {
    List<WholeRatio> all = nearest(value);
    WholeRatio steadiest = all.get(0);
    for (WholeRatio ratio : all) {
      if (ratio.formsPerClosing(value) <= STEADY) {
        return ratio;
      }
      steadiest =
          ratio.formsPerClosing(value) < steadiest.formsPerClosing(value) ? ratio : steadiest;
    }
    return steadiest;
  }

  /** Its value. */
  public double value() {
    return (double) y / x;
  }

  private double distance(double value) {
    return Math.abs(Math.log(value / value()));
  }

  /**
   * Share of all its forms that the figure goes through until it closes: X |X v - Y|.
   *
   * @param value swings along y to one along x
   */
  public double formsPerClosing(double value) {
    return x * Math.abs(x * value - y);
  }

  /** Time in which the figure closes, as far as it does: the mean of both counts of swings. */
  public double closesAfter(SmallSwings swings) {
    return (x * swings.periodX() + y * swings.periodY()) / 2;
  }

  /**
   * Time in which the figure runs through all its forms, 2 pi / |X omega_y - Y omega_x|; infinite
   * where the ratio is met to rounding.
   */
  public double formsAfter(SmallSwings swings) {
    double drift = x * swings.rateY() - y * swings.rateX();
    return Math.abs(drift) <= 1e-11 * x * swings.rateY()
        ? Double.POSITIVE_INFINITY
        : 2 * Math.PI / Math.abs(drift);
  }

  /** Both numbers as they are asked for, such as {@code 2:3}. */
  @Override
  public String toString() {
    return y + ":" + x;
  }
}
