package lodeswing.analysis.field;

import java.util.Arrays;
import java.util.Comparator;
import java.util.Random;
import java.util.function.DoubleConsumer;
import java.util.stream.IntStream;
import lodeswing.core.field.Frame;
import lodeswing.core.field.LaneField;
import lodeswing.core.field.Surface;
import lodeswing.core.integrate.lane.LaneProvider;

/**
 * What filings on paper over the plate show.
 *
 * <p>Filings are strewn evenly and at random; taps on the paper let each hop along the gradient of
 * B^2, which is where a small piece of iron is pulled (L. D. Landau and E. M. Lifshitz,
 * Electrodynamics of Continuous Media, section 34), the farther the harder it is pulled. Then each
 * lies down along the field's part in the paper and bends with it; one that the field there is too
 * weak to turn is left out, which is what makes the gaps. How far they hop and how weak is too weak
 * are set by the eye: this is a picture, not a count of iron.
 *
 * <p>The same seed gives the same filings: places come from {@link Random}, whose sequence its
 * documentation fixes.
 */
public final class Filings {

  /** Hops that the taps make. */
  private static final int TAPS = 3;

  /** Length of a hop at most, in lengths of a filing. */
  private static final double HOP = 0.55;

  /** In-plane field at which half of the filings lie along it, in medians of the window. */
  private static final double WEAK = 0.3;

  /** Half of the way over which slopes are taken, in lengths of a filing. */
  private static final double NEAR = 0.2;

  private static final int SORTED_COLUMNS = 48;

  private final LaneField lanes;
  private final Frame window;
  private final Surface surface;
  private final double length;

  /**
   * Filings that are not strewn yet.
   *
   * @param length of a filing, about [m]
   */
  public Filings(
      PlateField plate, LaneProvider provider, Frame window, Surface surface, double length) {
    this.lanes = new LaneField(plate.sources(), provider);
    this.window = window;
    this.surface = surface;
    this.length = length;
  }

  /** The filings that lie along the field; owns its arrays. */
  public static final class Strewn {
    private final double[] places;
    private final int[] widths;
    private final int count;
    private final double weak;

    private Strewn(double[] places, int[] widths, int count, double weak) {
      this.places = places;
      this.widths = widths;
      this.count = count;
      this.weak = weak;
    }

    /**
     * Filings from their columns, which it copies.
     *
     * @param places six numbers each: x and y of both ends and of the middle between
     * @param widths how thick each is
     * @param weak in-plane field at which half of the filings lie along it [T]
     */
    public static Strewn of(double[] places, int[] widths, double weak) {
      return new Strewn(places.clone(), widths.clone(), widths.length, weak);
    }

    /** How many there are. */
    public int count() {
      return count;
    }

    /**
     * x of one of a filing's three places, both ends and the middle [m].
     *
     * @param filing which filing
     * @param place 0 to 2 along it
     */
    public double x(int filing, int place) {
      return places[6 * filing + 2 * place];
    }

    /** y of one of a filing's three places [m]. */
    public double y(int filing, int place) {
      return places[6 * filing + 2 * place + 1];
    }

    /** How thick it is: 0 to 2. */
    public int width(int filing) {
      return widths[filing];
    }

    /** In-plane field at which half of the filings lie along it [T]. */
    public double weak() {
      return weak;
    }
  }

  /**
   * Strews filings.
   *
   * @param count how many
   * @param seed of their places
   * @param progress told the fraction done; may throw to end the work
   */
  public Strewn strew(int count, long seed, DoubleConsumer progress) {
    Random random = new Random(seed);
    double[][] place = sorted(count, random);
    double[] x = place[0];
    double[] y = place[1];
    for (int tap = 0; tap < TAPS; tap++) {
      progress.accept(tap / (TAPS + 2.0));
      hop(x, y);
    }
    progress.accept(TAPS / (TAPS + 2.0));
    double[] b = field(x, y, 0, 0);
    double[] inPlane = new double[count];
    Arrays.setAll(inPlane, i -> Math.hypot(b[3 * i], b[3 * i + 1]));
    double weak = WEAK * median(inPlane);
    double[] angle = new double[count];
    double[] half = new double[count];
    boolean[] kept = new boolean[count];
    for (int i = 0; i < count; i++) {
      double strength = inPlane[i];
      // The same draws for each, so that no filing depends on what became of another.
      double chance = random.nextDouble();
      double turn = random.nextGaussian();
      double size = 0.7 + 0.6 * random.nextDouble();
      double whole = Math.hypot(strength, b[3 * i + 2]);
      double share = strength * strength / (strength * strength + weak * weak);
      kept[i] = strength > 0 && chance < share;
      angle[i] = Math.atan2(b[3 * i + 1], b[3 * i]) + 0.05 * turn * (2 - share);
      // One that stands up steeply is seen from above as a short one.
      half[i] = kept[i] ? length / 2 * size * (0.4 + 0.6 * strength / whole) : 0;
    }
    return bent(x, y, angle, half, kept, random, weak);
  }

  /** Places all over the window, neighbours next to each other so that lanes meet like work. */
  private double[][] sorted(int count, Random random) {
    double[] x = new double[count];
    double[] y = new double[count];
    int[] cell = new int[count];
    for (int i = 0; i < count; i++) {
      double u = random.nextDouble();
      double v = random.nextDouble();
      x[i] = window.left() + u * window.width();
      y[i] = window.bottom() + v * window.height();
      cell[i] = ((int) (v * SORTED_COLUMNS)) * SORTED_COLUMNS + ((int) (u * SORTED_COLUMNS));
    }
    int[] order =
        IntStream.range(0, count)
            .boxed()
            .sorted(Comparator.comparingInt(i -> cell[i]))
            .mapToInt(Integer::intValue)
            .toArray();
    return new double[][] {
      Arrays.stream(order).mapToDouble(i -> x[i]).toArray(),
      Arrays.stream(order).mapToDouble(i -> y[i]).toArray()
    };
  }

  private void hop(double[] x, double[] y) {
    double near = NEAR * length;
    double[] east = squares(field(x, y, near, 0));
    double[] west = squares(field(x, y, -near, 0));
    double[] north = squares(field(x, y, 0, near));
    double[] south = squares(field(x, y, 0, -near));
    double[] pull = new double[x.length];
    Arrays.setAll(pull, i -> Math.hypot(east[i] - west[i], north[i] - south[i]));
    double usual = median(pull);
    for (int i = 0; i < x.length; i++) {
      if (pull[i] > 0) {
        double hop = HOP * length * pull[i] / (pull[i] + usual);
        x[i] += hop * (east[i] - west[i]) / pull[i];
        y[i] += hop * (north[i] - south[i]) / pull[i];
      }
    }
  }

  private static double[] squares(double[] b) {
    double[] squares = new double[b.length / 3];
    Arrays.setAll(
        squares,
        i -> {
          double square = b[3 * i] * b[3 * i] + b[3 * i + 1] * b[3 * i + 1];
          double all = square + b[3 * i + 2] * b[3 * i + 2];
          return Double.isFinite(all) ? all : 0;
        });
    return squares;
  }

  private static double median(double[] values) {
    double[] sorted = Arrays.stream(values).filter(Double::isFinite).sorted().toArray();
    return sorted.length == 0 ? 0 : sorted[sorted.length / 2];
  }

  private double[] field(double[] x, double[] y, double dx, double dy) {
    double[] u = new double[x.length];
    double[] v = new double[x.length];
    double[] w = new double[x.length];
    for (int i = 0; i < x.length; i++) {
      u[i] = x[i] + dx;
      v[i] = y[i] + dy;
      w[i] = surface.height(u[i], v[i]);
    }
    double[] b = new double[3 * x.length];
    lanes.at(u, v, w, x.length, b);
    return b;
  }

  /** Each filing's ends follow the field on either side of its middle. */
  private Strewn bent(
      double[] x,
      double[] y,
      double[] angle,
      double[] half,
      boolean[] kept,
      Random random,
      double weak) {
    int count = x.length;
    double[] places = new double[6 * count];
    int[] widths = new int[count];
    double[][] ends = new double[2][];
    for (int side = 0; side < 2; side++) {
      double sign = side == 0 ? -0.5 : 0.5;
      double[] u = new double[count];
      double[] v = new double[count];
      for (int i = 0; i < count; i++) {
        u[i] = x[i] + sign * half[i] * Math.cos(angle[i]);
        v[i] = y[i] + sign * half[i] * Math.sin(angle[i]);
      }
      ends[side] = field(u, v, 0, 0);
    }
    int held = 0;
    for (int i = 0; i < count; i++) {
      int width = random.nextInt(3);
      if (!kept[i] || !window.holds(x[i], y[i])) {
        continue;
      }
      places[6 * held + 2] = x[i];
      places[6 * held + 3] = y[i];
      for (int side = 0; side < 2; side++) {
        double c = Math.cos(angle[i]);
        double s = Math.sin(angle[i]);
        double fx = ends[side][3 * i];
        double fy = ends[side][3 * i + 1];
        double size = Math.hypot(fx, fy);
        // Near a weak spot the field may turn round within a filing, which does not.
        boolean follows = size > 0 && (fx * c + fy * s) / size > 0.5;
        double way = (side == 0 ? -1 : 1) * half[i];
        places[6 * held + 4 * side] = x[i] + way * (follows ? fx / size : c);
        places[6 * held + 4 * side + 1] = y[i] + way * (follows ? fy / size : s);
      }
      boolean whole =
          window.holds(places[6 * held], places[6 * held + 1])
              && window.holds(places[6 * held + 4], places[6 * held + 5]);
      widths[held] = width;
      held += whole ? 1 : 0;
    }
    return new Strewn(Arrays.copyOf(places, 6 * held), Arrays.copyOf(widths, held), held, weak);
  }
}
