package lodeswing.safety;

import java.util.Optional;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.Ring;
import lodeswing.core.magnet.Sphere;

/**
 * Magnetic flux index of a loose magnet: the square of the greatest flux density that the standard
 * probe reads on a pole face, times the area of that face.
 *
 * <p>The probe is held upright on the face and moved all over it; its active area, a disc of 0.76
 * mm, is 0.38 mm away from its tip and so from the face, and it reads the component along itself
 * (Canada, Toys Regulations SOR/2011-17, schedule 10, whose method is that of ASTM F963-17, 8.25.1
 * to 8.25.3, the method that 16 CFR 1262.4 names; that EN 71-1 and ISO 8124-1 measure alike is from
 * memory). What it reads is finite, also at the rim, where the field itself is not. It is greatest
 * over the middle of a long magnet and near the rim of a flat one. It is taken at the middle of the
 * active area; a real probe, which averages over that, reads up to some per cent less of magnets of
 * a few millimetres.
 *
 * <p>The face of a disc, ring or block is the flat one, of a ring without its hole; of a sphere the
 * greatest section across its axis counts (schedule 10, 2 (d)). A dipole has no face and no index.
 *
 * @param reading greatest flux density that the probe reads [T]
 * @param area of the pole face [m^2]
 */
public record FluxIndex(double reading, double area) {

  /** From the probe's tip to its active area [m]; the standard allows 0.13 mm either way. */
  public static final double PROBE_DISTANCE = 0.38e-3;

  /** Places along a radius, and along either half side, of the first look. */
  private static final int FIRST_LOOK = 48;

  private static final int FIRST_LOOK_OF_BLOCKS = 16;

  /** The search ends where its steps are this part of the face. */
  private static final double FINEST = 1e-6;

  /** The index [T^2 m^2]; 1e-8 of that is one kG^2 mm^2, the unit of the standards. */
  public double value() {
    return reading * reading * area;
  }

  /** The index of a magnet by itself; empty for a dipole. */
  public static Optional<FluxIndex> of(Magnet magnet) {
    return of(magnet, PROBE_DISTANCE);
  }

  /**
   * The same with the probe's active area at another distance.
   *
   * @param distance from the face [m], above 0
   */
  static Optional<FluxIndex> of(Magnet magnet, double distance) {
    if (magnet instanceof Dipole) {
      return Optional.empty();
    }
    var probe = new Probe(magnet, magnet.halfHeight() + distance);
    double reading =
        magnet instanceof Block block
            ? onRectangle(probe, block.length() / 2, block.width() / 2)
            : onRadius(probe, inner(magnet), magnet instanceof Sphere ? 0 : magnet.planRadius());
    return Optional.of(new FluxIndex(reading, area(magnet)));
  }

  private static double inner(Magnet magnet) {
    return magnet instanceof Ring ring ? ring.innerRadius() : 0;
  }

  private static double area(Magnet magnet) {
    if (magnet instanceof Disc disc) {
      return Math.PI * disc.radius() * disc.radius();
    }
    if (magnet instanceof Ring ring) {
      return Math.PI
          * (ring.outerRadius() - ring.innerRadius())
          * (ring.outerRadius() + ring.innerRadius());
    }
    if (magnet instanceof Block block) {
      return block.length() * block.width();
    }
    return Math.PI * magnet.planRadius() * magnet.planRadius();
  }

  /** The greatest reading along a radius of a round face. */
  private static double onRadius(Probe probe, double from, double to) {
    double step = (to - from) / FIRST_LOOK;
    double best = from;
    double greatest = probe.at(from, 0);
    for (int i = 1; i <= FIRST_LOOK; i++) {
      double here = probe.at(from + i * step, 0);
      if (here > greatest) {
        greatest = here;
        best = from + i * step;
      }
    }
    while (step > FINEST * to) {
      step /= 2;
      for (double other : new double[] {best - step, best + step}) {
        double here = other < from || other > to ? 0 : probe.at(other, 0);
        if (here > greatest) {
          greatest = here;
          best = other;
        }
      }
    }
    return greatest;
  }

  /** The greatest reading over a quarter of a rectangle; the others mirror it. */
  private static double onRectangle(Probe probe, double halfLength, double halfWidth) {
    double stepX = halfLength / FIRST_LOOK_OF_BLOCKS;
    double stepY = halfWidth / FIRST_LOOK_OF_BLOCKS;
    double x = 0;
    double y = 0;
    double greatest = 0;
    for (int i = 0; i <= FIRST_LOOK_OF_BLOCKS; i++) {
      for (int k = 0; k <= FIRST_LOOK_OF_BLOCKS; k++) {
        double here = probe.at(i * stepX, k * stepY);
        if (here > greatest) {
          greatest = here;
          x = i * stepX;
          y = k * stepY;
        }
      }
    }
    while (stepX > FINEST * halfLength) {
      double[][] around = {{stepX, 0}, {-stepX, 0}, {0, stepY}, {0, -stepY}};
      boolean moved = false;
      for (double[] way : around) {
        double otherX = x + way[0];
        double otherY = y + way[1];
        boolean onFace = Math.abs(otherX) <= halfLength && Math.abs(otherY) <= halfWidth;
        double here = onFace ? probe.at(otherX, otherY) : 0;
        if (here > greatest) {
          greatest = here;
          x = otherX;
          y = otherY;
          moved = true;
        }
      }
      if (!moved) {
        stepX /= 2;
        stepY /= 2;
      }
    }
    return greatest;
  }

  /**
   * A probe over a magnet's upper face.
   *
   * @param magnet in its own frame
   * @param height of the active area over the magnet's middle [m]
   */
  private record Probe(Magnet magnet, double height) {

    /** What it reads [T]: the component along the axis. */
    double at(double x, double y) {
      double[] b = new double[3];
      magnet.field(x, y, height, b);
      return Math.abs(b[2]);
    }
  }
}
