package lodeswing.core.magnet;

import static lodeswing.core.magnet.Work.FRAME;
import static lodeswing.core.magnet.Work.LOAD;
import static lodeswing.core.magnet.Work.POSE;
import static lodeswing.core.magnet.Work.SUM;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * Energy of a bob magnet in the field of a plate's magnets, U = -integral of M . B over its volume,
 * with the force and the torque on it.
 *
 * <p>The pose is twelve numbers: the bob's centre c [m] and its orthonormal axes ex, ey and t in
 * the layout's frame. t points along the bar, away from the pivot; the stated pole is on that side.
 * A block's length lies along ex, its width along ey. ex, ey, t may be of either hand.
 *
 * <p>Steel below the plate adds the images of the plate's magnets, and half the energy of the bob
 * with its own image; the force of that part is the image's whole pull (J. D. Jackson, Classical
 * Electrodynamics, 3rd ed. (1999), section 2.1 for the same half with charges).
 *
 * <p>The error is below 1e-9 of each pair's energy as long as the bob's faces keep a tenth of its
 * radius away from a source's edges; closer, it grows, and U stays finite. The jumps where a rule
 * changes with distance are below the same bound.
 *
 * <p>Immutable; allocates nothing in its methods; safe for many threads, each with its own arrays.
 */
public final class BobEnergy {

  /** Length of a pose. */
  public static final int POSE_LENGTH = 12;

  /** Length of the work array, whose first six places receive force and torque. */
  public static final int WORK_LENGTH = Work.LENGTH;

  private record Source(SourceKernel kernel, PlacedSource place) {}

  private final BobProbe probe;
  private final List<Source> sources;
  private final double imagePlane;
  private final SourceKernel image;
  private final double imageSign;

  private BobEnergy(
      Magnet bob, Pole poleDown, MagnetArray array, Function<Magnet, SourceKernel> kernels) {
    this.probe = BobProbe.of(bob, poleDown);
    List<Source> all = new ArrayList<>();
    Map<Magnet, SourceKernel> kinds = new HashMap<>();
    for (PlacedSource place : array.sources()) {
      all.add(new Source(kinds.computeIfAbsent(place.magnet(), kernels), place));
    }
    this.sources = List.copyOf(all);
    this.imagePlane = array.backing().map(SteelBacking::top).orElse(Double.NaN);
    this.image =
        array.backing().isPresent() ? kinds.computeIfAbsent(bob, kernels) : new ExactKernel(bob);
    this.imageSign = -poleDown.sign();
  }

  /**
   * The energy of a bob over an array, with one table for each kind of disc and ring in it, some
   * tens of milliseconds to build.
   *
   * @param poleDown the pole on the t side
   */
  public static BobEnergy of(Magnet bob, Pole poleDown, MagnetArray array) {
    boolean points = BobProbe.of(bob, poleDown) instanceof PointProbe;
    return new BobEnergy(bob, poleDown, array, points ? ExactKernel::new : BobEnergy::tabulated);
  }

  private static SourceKernel tabulated(Magnet magnet) {
    boolean axial = magnet instanceof Disc || magnet instanceof Ring;
    return axial ? new TabulatedKernel(magnet) : new ExactKernel(magnet);
  }

  /** The energy by closed forms alone: slow, and what the tabulated one is measured by. */
  public static BobEnergy exact(Magnet bob, Pole poleDown, MagnetArray array) {
    return new BobEnergy(bob, poleDown, array, ExactKernel::new);
  }

  /**
   * Energy U [J], 0 at infinite distance.
   *
   * @param pose centre, ex, ey, t; left as it is
   * @param work at least {@link #WORK_LENGTH} long; overwritten
   */
  public double energy(double[] pose, double[] work) {
    double sum = 0;
    for (int i = 0; i < sources.size(); i++) {
      Source source = sources.get(i);
      seenFrom(source.place(), pose, work);
      sum += source.place().sign() * probe.energy(source.kernel(), work);
    }
    if (!Double.isNaN(imagePlane)) {
      seenFromImage(pose, work);
      sum += 0.5 * imageSign * probe.energy(image, work);
    }
    return sum;
  }

  /**
   * Energy U [J], with force and torque.
   *
   * @param pose centre, ex, ey, t; left as it is
   * @param work receives the force -dU/dc [N] at 0 to 2 and the torque about the centre [N m] at 3
   *     to 5, so that dU = -F . dc - T . dw for a small shift dc and turn dw; the rest is
   *     overwritten
   */
  public double energyAndLoad(double[] pose, double[] work) {
    for (int i = 0; i < 6; i++) {
      work[LOAD + i] = 0;
    }
    double sum = 0;
    for (int i = 0; i < sources.size(); i++) {
      Source source = sources.get(i);
      PlacedSource place = source.place();
      seenFrom(place, pose, work);
      sum += place.sign() * probe.energyAndLoad(source.kernel(), work);
      addTurned(place, 0, work);
      addTurned(place, 3, work);
    }
    if (!Double.isNaN(imagePlane)) {
      seenFromImage(pose, work);
      sum += 0.5 * imageSign * probe.energyAndLoad(image, work);
      addFromImage(0, work);
      addFromImage(3, work);
    }
    System.arraycopy(work, LOAD, work, 0, 6);
    return sum;
  }

  private static void seenFrom(PlacedSource place, double[] pose, double[] work) {
    double cos = place.cosTurn();
    double sin = place.sinTurn();
    for (int i = 0; i < POSE_LENGTH; i += 3) {
      double x = i == 0 ? pose[0] - place.x() : pose[i];
      double y = i == 0 ? pose[1] - place.y() : pose[i + 1];
      work[POSE + i] = cos * x + sin * y;
      work[POSE + i + 1] = cos * y - sin * x;
      work[POSE + i + 2] = i == 0 ? pose[2] - place.z() : pose[i + 2];
    }
  }

  private static void addTurned(PlacedSource place, int at, double[] work) {
    double x = place.sign() * work[SUM + at];
    double y = place.sign() * work[SUM + at + 1];
    work[LOAD + at] += place.cosTurn() * x - place.sinTurn() * y;
    work[LOAD + at + 1] += place.sinTurn() * x + place.cosTurn() * y;
    work[LOAD + at + 2] += place.sign() * work[SUM + at + 2];
  }

  /** The image's frame has the bob's mirrored axes, the pole on its t side is the other one. */
  private void seenFromImage(double[] pose, double[] work) {
    for (int i = 0; i < POSE_LENGTH; i += 3) {
      work[FRAME + i] = pose[i];
      work[FRAME + i + 1] = pose[i + 1];
      work[FRAME + i + 2] = i == 0 ? 2 * imagePlane - pose[2] : -pose[i + 2];
    }
    for (int i = 0; i < POSE_LENGTH; i += 3) {
      double x = i == 0 ? 0 : pose[i];
      double y = i == 0 ? 0 : pose[i + 1];
      double z = i == 0 ? 2 * (pose[2] - imagePlane) : pose[i + 2];
      for (int axis = 0; axis < 3; axis++) {
        int at = FRAME + 3 + 3 * axis;
        work[POSE + i + axis] = x * work[at] + y * work[at + 1] + z * work[at + 2];
      }
    }
  }

  /**
   * A torque, a pseudovector, changes sign in axes of the left hand; the mirrored axes are of the
   * other hand than the pose's.
   */
  private void addFromImage(int at, double[] work) {
    double sign = at == 0 ? imageSign : imageSign * hand(work);
    for (int k = 0; k < 3; k++) {
      double sum = 0;
      for (int axis = 0; axis < 3; axis++) {
        sum += work[SUM + at + axis] * work[FRAME + 3 + 3 * axis + k];
      }
      work[LOAD + at + k] += sign * sum;
    }
  }

  /** +1 where the image's axes are of the right hand, -1 where of the left. */
  private static double hand(double[] work) {
    int x = FRAME + 3;
    int y = FRAME + 6;
    int t = FRAME + 9;
    double determinant =
        work[x] * (work[y + 1] * work[t + 2] - work[y + 2] * work[t + 1])
            - work[x + 1] * (work[y] * work[t + 2] - work[y + 2] * work[t])
            + work[x + 2] * (work[y] * work[t + 1] - work[y + 1] * work[t]);
    return Math.signum(determinant);
  }
}
