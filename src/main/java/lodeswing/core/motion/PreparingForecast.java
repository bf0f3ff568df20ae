package lodeswing.core.motion;

import lodeswing.core.magnet.EnergyEffort;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * What making a bench layout ready will take, told before it is begun, in the unit of {@link
 * WorkBudget}.
 *
 * <p>It plays the fits of {@link PatchedFunction} and {@link CellTable} without a single energy: a
 * polynomial of degree n - 1 errs like rho^-n, where rho is the sum of the semi-axes of the ellipse
 * about the patch, in units of its half side, that goes through the nearest singularity of the
 * energy (L. N. Trefethen, Approximation Theory and Approximation Practice, 2013, theorem 8.2, its
 * number from memory); singular are the places, complex ones among them, at which the bob touches a
 * magnet. Held against the work counted for the sample layouts.
 */
public final class PreparingForecast {

  /** Natural logarithms of the energy's size over each tolerance. */
  private static final double FIT_DIGITS = 24;

  private static final double PULL_DIGITS = 14;
  private static final double FINE_DIGITS = 23;
  private static final double COARSE_DIGITS = 12;

  /** Cells are played on a net of squares of this many cells a side of the coarse net. */
  private static final int LEVEL_OF_NET = 2;

  private final double axisHeight;
  private final double offset;
  private final double bobArm;
  private final EnergyEffort effort;
  private final double[] x;
  private final double[] y;
  private final double[] reach;
  private final double[] clear;
  private final double overSteel;

  /**
   * The forecast of a layout that has a bob magnet.
   *
   * @throws java.util.NoSuchElementException where it has none
   */
  public PreparingForecast(BenchLayout layout) {
    TwoAxisBody body = layout.suspension().body();
    Magnet bob = layout.bob().orElseThrow().magnet();
    this.axisHeight = layout.axisHeight();
    this.offset = body.axisOffset();
    this.bobArm = body.bobArm();
    this.effort = new EnergyEffort(bob, new MagnetArray(layout.magnets(), layout.backing()));
    // the bob's image hangs as deep below the steel's face as the bob above it
    this.overSteel =
        layout.backing().map(steel -> 2 * (layout.gap() - steel.top())).orElse(Double.NaN);
    int count = layout.magnets().size();
    this.x = new double[count];
    this.y = new double[count];
    this.reach = new double[count];
    this.clear = new double[count];
    for (int i = 0; i < count; i++) {
      PlacedMagnet placed = layout.magnets().get(i);
      x[i] = placed.centre().x();
      y[i] = placed.centre().y();
      reach[i] = placed.magnet().planRadius() + bob.planRadius();
      clear[i] = clearance(placed, bob);
    }
  }

  /** Height between a bob right over a magnet, or as near as it comes, and the magnet. */
  private double clearance(PlacedMagnet placed, Magnet bob) {
    double length = offset + bobArm;
    double out = Math.hypot(placed.centre().x(), placed.centre().y());
    double sine = Math.min(out / length, Math.sin(BenchMotion.MAX_ANGLE));
    double cosine = Math.sqrt(1 - sine * sine);
    double centre = axisHeight - length * cosine;
    double half = bob.halfHeight() * cosine + bob.planRadius() * sine;
    double below = centre - half - placed.centre().z() - placed.magnet().halfHeight();
    double above = placed.centre().z() - placed.magnet().halfHeight() - centre - half;
    return Math.max(0, Math.max(below, above));
  }

  /** Work of one energy at two angles. */
  public double effortAt(double beta, double alpha) {
    double radius = offset + bobArm * StrictMath.cos(beta);
    double cosine = StrictMath.cos(alpha);
    return effort.at(
        bobArm * StrictMath.sin(beta),
        radius * StrictMath.sin(alpha),
        axisHeight - radius * cosine,
        StrictMath.cos(beta) * cosine);
  }

  /** The work before the first energy. */
  public double beforehand() {
    return effort.tables();
  }

  /**
   * All of the work.
   *
   * @param most above it, any figure above it may be answered
   */
  public double work(double most) {
    double cells = cells(FINE_DIGITS) + cells(COARSE_DIGITS) + cells(PULL_DIGITS);
    double work = beforehand() + CellTable.CELL_WORK * cells + 2 * WorkBudget.SCAN;
    work += patches(FIT_DIGITS, most - work);
    work += WorkBudget.SLOPES * patches(PULL_DIGITS, (most - work) / WorkBudget.SLOPES);
    return work;
  }

  /** Work of all patches of one fit. */
  private double patches(double digits, double most) {
    double half = BenchMotion.MAX_ANGLE / PatchedFunction.COARSE;
    double sum = 0;
    for (int i = 0; i < PatchedFunction.COARSE && sum <= most; i++) {
      for (int j = 0; j < PatchedFunction.COARSE && sum <= most; j++) {
        double u = (2 * i + 1) * half - BenchMotion.MAX_ANGLE;
        double v = (2 * j + 1) * half - BenchMotion.MAX_ANGLE;
        sum += patch(u, v, half, digits, 0);
      }
    }
    return sum;
  }

  private double patch(double u, double v, double half, double digits, int depth) {
    double needed = digits / Math.log(ellipse(u, v, half));
    int degree = PatchedFunction.rung(0, needed);
    boolean cut = degree == 0 && depth < PatchedFunction.DEEPEST;
    int points = Math.max(ChebyshevPatch.FIRST, degree) + 1;
    double sum = points * points * WorkBudget.meanEffort(this::effortAt, u, v, half);
    if (cut) {
      for (int q = 0; q < 4; q++) {
        double quarter = 0.5 * half;
        double du = q < 2 ? -quarter : quarter;
        double dv = q % 2 == 0 ? -quarter : quarter;
        sum += patch(u + du, v + dv, quarter, digits, depth + 1);
      }
    }
    return sum;
  }

  /** How many cells of a table are tried. */
  private double cells(double digits) {
    int across = CellTable.COARSE << LEVEL_OF_NET;
    double half = BenchMotion.MAX_ANGLE / across;
    double sum = 0;
    for (int i = 0; i < across; i++) {
      for (int j = 0; j < across; j++) {
        double u = (2 * i + 1) * half - BenchMotion.MAX_ANGLE;
        double v = (2 * j + 1) * half - BenchMotion.MAX_ANGLE;
        double side = half * (1 << LEVEL_OF_NET);
        double tried = Math.scalb(1.0, -2 * LEVEL_OF_NET);
        sum += tried;
        for (int level = 1; level <= CellTable.DEEPEST; level++) {
          if (digits <= ChebyshevCell.POINTS * Math.log(ellipse(u, v, side))) {
            break;
          }
          tried *= 4;
          side *= 0.5;
          sum += tried;
        }
      }
    }
    return sum;
  }

  /** Sum of the semi-axes of the least ellipse through a singularity, in half sides. */
  private double ellipse(double u, double v, double half) {
    double px = bobArm * Math.sin(u);
    double py = (offset + bobArm * Math.cos(u)) * Math.sin(v);
    double side = half * (offset + bobArm);
    double least =
        Double.isNaN(overSteel) ? Double.POSITIVE_INFINITY : semiMajor(0, overSteel / side);
    for (int i = 0; i < x.length; i++) {
      double dx = Math.max(0, Math.abs(x[i] - px) - reach[i]) / side;
      double dy = Math.max(0, Math.abs(y[i] - py) - reach[i]) / side;
      double up = clear[i] / side;
      least = Math.min(least, semiMajor(dx, root(up, Math.max(0, dy - 1))));
      least = Math.min(least, semiMajor(dy, root(up, Math.max(0, dx - 1))));
    }
    return least + Math.sqrt(Math.max(0, least * least - 1));
  }

  /** Semi-major axis of the ellipse with foci at -1 and 1 through a complex number. */
  private static double semiMajor(double real, double imaginary) {
    return 0.5 * (root(real - 1, imaginary) + root(real + 1, imaginary));
  }

  private static double root(double a, double b) {
    return Math.sqrt(a * a + b * b);
  }
}
