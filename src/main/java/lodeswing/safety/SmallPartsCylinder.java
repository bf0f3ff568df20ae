package lodeswing.safety;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.Sphere;

/**
 * The gauge for small parts: a cylinder with a slanting floor. What fits into it whole, in any
 * orientation and without being pressed, is a small part (16 CFR 1501.4; EN 71-1, 8.2, and ISO
 * 8124-1 have the same gauge, from memory).
 *
 * <p>Its diameter is 1.25 inches, its depth 1 inch on one side and 2.25 inches on the other. Rounds
 * wider than that never fit, since no plane section of a cylinder holds a wider circle; what stands
 * upright in it does. Between these a way is sought by turning the magnet in steps of ten degrees
 * and then finer; what fits to within a tenth of a millimetre counts as fitting.
 */
final class SmallPartsCylinder {

  private static final double INCH = 0.0254;

  /** Radius of the gauge [m]. */
  static final double RADIUS = 1.25 * INCH / 2;

  /** Depth at its shallow side [m]. */
  static final double SHALLOW = INCH;

  /** Depth at its deep side [m]. */
  static final double DEEP = 2.25 * INCH;

  /** By which a part is let in too easily [m]: the gauge is made to about this. */
  private static final double SLACK = 1e-4;

  /** Depth on the gauge's axis [m]; the floor rises as fast as it runs: 1.25 inches each. */
  private static final double MIDDLE = (SHALLOW + DEEP) / 2;

  private static final double LONGEST = Math.hypot(2 * RADIUS, DEEP);
  private static final double ROOM = Math.PI * RADIUS * RADIUS * MIDDLE;

  private static final int RIM_POINTS = 48;
  private static final double COARSE = Math.toRadians(10);
  private static final double FINE = Math.toRadians(0.05);
  private static final int ASIDE_STEPS = 12;

  private SmallPartsCylinder() {}

  /** Whether a magnet fits into it; a dipole has no size and does not. */
  static boolean holds(Magnet magnet) {
    if (magnet instanceof Dipole) {
      return false;
    }
    if (magnet instanceof Sphere) {
      return magnet.planRadius() <= RADIUS + SLACK;
    }
    double[] sides = sides(magnet);
    if (sides[1] > 2 * RADIUS + SLACK
        || sides[2] > LONGEST + SLACK
        || magnet.volume() > ROOM * (1 + SLACK / RADIUS)) {
      return false;
    }
    double acrossUpright =
        magnet instanceof Block ? Math.hypot(sides[0], sides[1]) : 2 * magnet.planRadius();
    double upright = magnet instanceof Block ? sides[2] : 2 * magnet.halfHeight();
    if (acrossUpright <= 2 * RADIUS + SLACK && upright <= DEEP - acrossUpright + SLACK) {
      return true;
    }
    return new Turning(points(magnet)).fits();
  }

  /** Its sides from the least to the greatest [m]; of a round the diameter twice. */
  private static double[] sides(Magnet magnet) {
    double high = 2 * magnet.halfHeight();
    double[] sides =
        magnet instanceof Block block
            ? new double[] {block.length(), block.width(), high}
            : new double[] {2 * magnet.planRadius(), 2 * magnet.planRadius(), high};
    java.util.Arrays.sort(sides);
    return sides;
  }

  private static List<double[]> points(Magnet magnet) {
    List<double[]> points = new ArrayList<>();
    for (double z : new double[] {-magnet.halfHeight(), magnet.halfHeight()}) {
      if (magnet instanceof Block block) {
        for (int corner = 0; corner < 4; corner++) {
          double x = (corner < 2 ? -1 : 1) * block.length() / 2;
          double y = (corner % 2 == 0 ? -1 : 1) * block.width() / 2;
          points.add(new double[] {x, y, z});
        }
      } else {
        for (int i = 0; i < RIM_POINTS; i++) {
          double angle = 2 * Math.PI * i / RIM_POINTS;
          points.add(
              new double[] {
                magnet.planRadius() * Math.cos(angle), magnet.planRadius() * Math.sin(angle), z
              });
        }
      }
    }
    return points;
  }

  /**
   * A body that is turned until it fits.
   *
   * @param points whose hull it is, about its middle [m]
   */
  private record Turning(List<double[]> points) {

    boolean fits() {
      double[] best = {0, 0, 0};
      double least = sticksOut(best);
      for (double tilt = 0; tilt <= Math.PI / 2 + FINE; tilt += COARSE) {
        for (double way = 0; way < Math.PI; way += COARSE) {
          for (double roll = 0; roll < Math.PI; roll += COARSE) {
            double[] turn = {tilt, way, roll};
            double out = sticksOut(turn);
            if (out <= SLACK) {
              return true;
            }
            if (out < least) {
              least = out;
              best = turn;
            }
          }
        }
      }
      return refined(best, least) <= SLACK;
    }

    private double refined(double[] start, double out) {
      double[] best = start;
      double least = out;
      double step = COARSE / 2;
      while (step > FINE && least > SLACK) {
        double before = least;
        for (int axis = 0; axis < 3; axis++) {
          for (int side = -1; side <= 1; side += 2) {
            double[] turn = best.clone();
            turn[axis] += side * step;
            double here = sticksOut(turn);
            if (here < least) {
              least = here;
              best = turn;
            }
          }
        }
        step = least < before ? step : step / 2;
      }
      return least;
    }

    /** How far it sticks out of the gauge at best in one orientation [m]; infinite if too wide. */
    private double sticksOut(double[] turn) {
      double[][] turned =
          points.stream().map(point -> turned(point, turn)).toArray(double[][]::new);
      double top = Double.NEGATIVE_INFINITY;
      double floor = Double.NEGATIVE_INFINITY;
      double wide = 0;
      for (double[] point : turned) {
        top = Math.max(top, point[2]);
        floor = Math.max(floor, point[0] - point[2]);
        wide = Math.max(wide, Math.abs(point[1]));
      }
      double least = Double.POSITIVE_INFINITY;
      for (int i = -ASIDE_STEPS; i <= ASIDE_STEPS; i++) {
        double aside = (RADIUS - wide) * i / ASIDE_STEPS;
        least = Math.min(least, deepest(turned, aside));
      }
      return top + floor + least - MIDDLE;
    }

    /** The farthest that it can be pushed to the deep side, counted from there; else infinite. */
    private static double deepest(double[][] turned, double aside) {
      double least = Double.NEGATIVE_INFINITY;
      double most = Double.POSITIVE_INFINITY;
      for (double[] point : turned) {
        double across = point[1] + aside;
        double half =
            Math.sqrt(Math.max(0, (RADIUS + SLACK / 2) * (RADIUS + SLACK / 2) - across * across));
        least = Math.max(least, -point[0] - half);
        most = Math.min(most, -point[0] + half);
      }
      return least <= most ? least : Double.POSITIVE_INFINITY;
    }

    /** Rolled about its own axis, then tilted, then turned about the gauge's. */
    private static double[] turned(double[] point, double[] turn) {
      double x1 = point[0] * Math.cos(turn[2]) - point[1] * Math.sin(turn[2]);
      double y1 = point[0] * Math.sin(turn[2]) + point[1] * Math.cos(turn[2]);
      double x2 = x1 * Math.cos(turn[0]) + point[2] * Math.sin(turn[0]);
      double z2 = point[2] * Math.cos(turn[0]) - x1 * Math.sin(turn[0]);
      return new double[] {
        x2 * Math.cos(turn[1]) - y1 * Math.sin(turn[1]),
        x2 * Math.sin(turn[1]) + y1 * Math.cos(turn[1]),
        z2
      };
    }
  }
}
