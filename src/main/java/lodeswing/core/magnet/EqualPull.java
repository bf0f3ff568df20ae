package lodeswing.core.magnet;

import java.util.ArrayList;
import java.util.List;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Pull between a magnet and its equal, unlike poles facing and edges in line, from contact on; with
 * it the pull on thick steel, in which the equal is the mirror image.
 *
 * <p>F = Br/mu0 times the flux of one magnet through the other's near face less that through its
 * far face (J. D. Jackson, Classical Electrodynamics, 3rd ed. (1999), section 5.9: surface charges
 * of hard magnets). The flux is summed by Gauss's rule on strips that get narrower towards the
 * edges, where at contact the field changes within no distance at all; {@link AxialPull} needs a
 * gap.
 *
 * <p>The error is below 1e-8 of the force, at contact too. Immutable.
 */
public final class EqualPull {

  /** Each strip towards an edge is this part of what is left. */
  private static final double NARROWER = 0.25;

  /** Least strip, as a part of the whole: what is left beyond changes nothing. */
  private static final double LEAST_STRIP = 1e-7;

  private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(12);

  private final Magnet magnet;

  /** The pull of a magnet on its equal. */
  public EqualPull(Magnet magnet) {
    this.magnet = magnet;
  }

  /**
   * Force that draws the two together [N].
   *
   * @param gap between the facing faces [m], 0 for contact
   */
  public double at(double gap) {
    if (!(gap >= 0 && gap < Double.POSITIVE_INFINITY)) {
      throw new IllegalArgumentException("gap must be finite and not negative, was " + gap);
    }
    if (magnet instanceof Disc disc) {
      return disc.remanence() * roundFlux(0, disc.radius(), gap) / MagneticConstant.MU_0;
    }
    if (magnet instanceof Ring ring) {
      double flux = roundFlux(ring.innerRadius(), ring.outerRadius(), gap);
      return ring.remanence() * flux / MagneticConstant.MU_0;
    }
    if (magnet instanceof Block block) {
      return block.remanence() * blockFlux(block, gap) / MagneticConstant.MU_0;
    }
    // A sphere is felt as a dipole; Jackson (1999), section 5.7.
    double apart = gap + 2 * magnet.halfHeight();
    double moment = magnet.moment();
    return 3 * MagneticConstant.MU_0 * moment * moment / (2 * Math.PI * Math.pow(apart, 4));
  }

  /**
   * Force that draws the magnet onto a thick, wide plate of steel that is far from saturation [N].
   *
   * @param spacer between face and steel [m], 0 for contact
   */
  public double onSteel(double spacer) {
    return at(2 * spacer);
  }

  private double roundFlux(double inner, double outer, double gap) {
    double middle = inner > 0 ? (inner + outer) / 2 : 0;
    List<double[]> radii = new ArrayList<>(strips(middle, outer, gap));
    if (inner > 0) {
      radii.addAll(strips(middle, inner, gap));
    }
    double[] b = new double[3];
    double sum = 0;
    for (double[] radius : radii) {
      sum += 2 * Math.PI * radius[0] * radius[1] * fall(radius[0], 0, gap, b);
    }
    return sum;
  }

  private double blockFlux(Block block, double gap) {
    List<double[]> across = strips(0, block.width() / 2, gap);
    double[] b = new double[3];
    double sum = 0;
    for (double[] x : strips(0, block.length() / 2, gap)) {
      for (double[] y : across) {
        sum += x[1] * y[1] * fall(x[0], y[0], gap, b);
      }
    }
    return 4 * sum;
  }

  /** Flux density at the near face less that at the far one [T]. */
  private double fall(double x, double y, double gap, double[] b) {
    double near = magnet.halfHeight() + gap;
    magnet.field(x, y, near, b);
    double entering = b[2];
    magnet.field(x, y, near + 2 * magnet.halfHeight(), b);
    return entering - b[2];
  }

  /** Places and weights from a middle to an edge, on strips that get narrower down to the gap. */
  private static List<double[]> strips(double middle, double edge, double gap) {
    double whole = Math.abs(edge - middle);
    double way = Math.signum(middle - edge);
    double least = Math.max(gap, LEAST_STRIP * whole);
    List<double[]> points = new ArrayList<>();
    double from = whole;
    while (from > 0) {
      double to = from > least ? NARROWER * from : 0;
      for (int i = 0; i < GAUSS.getNumberOfPoints(); i++) {
        double off = (from + to) / 2 + (from - to) / 2 * GAUSS.getPoint(i);
        points.add(new double[] {edge + way * off, (from - to) / 2 * GAUSS.getWeight(i)});
      }
      from = to;
    }
    return points;
  }
}
