package lodeswing.safety;

import java.util.List;
import lodeswing.core.magnet.AxialPull;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.EqualPull;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.MagneticConstant;
import lodeswing.core.magnet.Ring;
import lodeswing.core.magnet.Sphere;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Pull of two magnets whose unlike poles touch, middle on middle: the most that they can pinch
 * with.
 *
 * <p>Of magnets alike in shape exactly at contact ({@link EqualPull}), which is also the pull on
 * thick steel; of others with a tenth of a millimetre between, as paint and plating keep them
 * ({@link AxialPull}). Dipoles have no size and touch nowhere.
 */
final class ContactPull {

  /** What paint and plating leave between two magnets [m]. Common practice. */
  static final double PAINT = 1e-4;

  /** A pull does not depend on which of two pulls; the finer rule is that over the smaller face. */
  private final Magnet larger;

  private final Magnet smaller;

  private ContactPull(Magnet larger, Magnet smaller) {
    this.larger = larger;
    this.smaller = smaller;
  }

  static ContactPull of(Magnet one, Magnet other) {
    if (one instanceof Dipole || other instanceof Dipole) {
      throw new IllegalArgumentException("dipoles do not touch");
    }
    return one.planRadius() >= other.planRadius()
        ? new ContactPull(one, other)
        : new ContactPull(other, one);
  }

  /** The pull of a magnet on its like, or on thick steel [N]. */
  static double ofLike(Magnet magnet) {
    return new EqualPull(magnet).at(0);
  }

  /** The pull [N]. */
  double force() {
    return shape(larger).equals(shape(smaller))
        ? ofLike(larger) * remanence(smaller) / remanence(larger)
        : new AxialPull(larger, smaller).at(PAINT);
  }

  private static List<Double> shape(Magnet magnet) {
    double inner = magnet instanceof Ring ring ? ring.innerRadius() : 0;
    double round = magnet instanceof Sphere ? magnet.planRadius() : 0;
    double length = magnet instanceof Block block ? block.length() : 0;
    return List.of(magnet.planRadius(), magnet.halfHeight(), inner, round, length);
  }

  /**
   * More than it can be [N]: Br Br' / (2 mu0) over the smaller face, what the charges of two
   * endless magnets do. Of unlike ones it is below the greater of what each does with its like.
   */
  double bound() {
    double pressure = remanence(larger) * remanence(smaller) / (2 * MagneticConstant.MU_0);
    return pressure * Math.min(face(larger), face(smaller));
  }

  /**
   * The gap at which they draw each other as strongly as a force [m]; 0 where they do not even
   * nearly touching.
   *
   * @param force above 0 [N]
   */
  double gapAt(double force) {
    var pull = new AxialPull(larger, smaller);
    double far = 4 * (larger.planRadius() + larger.halfHeight());
    while (pull.at(far) > force) {
      far *= 2;
    }
    return pull.at(PAINT) <= force
        ? 0
        : new BrentSolver(1e-5, 1e-6).solve(100, gap -> pull.at(gap) - force, PAINT, far);
  }

  private static double face(Magnet magnet) {
    double across = magnet.planRadius();
    if (magnet instanceof Block block) {
      return block.length() * block.width();
    }
    return Math.PI * across * across;
  }

  private static double remanence(Magnet magnet) {
    if (magnet instanceof Disc disc) {
      return disc.remanence();
    }
    if (magnet instanceof Ring ring) {
      return ring.remanence();
    }
    if (magnet instanceof Block block) {
      return block.remanence();
    }
    return ((Sphere) magnet).remanence();
  }
}
