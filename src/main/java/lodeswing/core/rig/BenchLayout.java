package lodeswing.core.rig;

import java.util.List;
import java.util.Optional;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.magnet.SteelBacking;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.TwoAxisBody;

/**
 * A real rig in true units.
 *
 * @param suspension what the bob hangs on
 * @param bob the bob's magnet, where it has one
 * @param gap height of the bob magnet's lower face at rest over the plate's upper surface [m] (of
 *     the suspension's end where there is no bob magnet, of its centre for a dipole)
 * @param magnets the magnets of the plate
 * @param backing steel below them, where there is any
 * @param gravity local acceleration of gravity [m/s^2]
 * @param loss what takes energy out
 */
public record BenchLayout(
    Suspension suspension,
    Optional<BobMagnet> bob,
    double gap,
    List<PlacedMagnet> magnets,
    Optional<SteelBacking> backing,
    double gravity,
    LossLaw loss)
    implements Layout {

  public BenchLayout {
    magnets = List.copyOf(magnets);
  }

  @Override
  public int magnetCount() {
    return magnets.size();
  }

  @Override
  public boolean lossless() {
    return loss.linear() == 0 && loss.pivotTorque() == 0 && loss.drag().isEmpty();
  }

  @Override
  public BenchLayout withoutMagnets() {
    return new BenchLayout(suspension, bob, gap, List.of(), Optional.empty(), gravity, loss);
  }

  /** The same rig with other parts in the same world: backing, gravity and loss stay. */
  public BenchLayout with(
      Suspension otherSuspension,
      Optional<BobMagnet> otherBob,
      double otherGap,
      List<PlacedMagnet> otherMagnets) {
    return new BenchLayout(
        otherSuspension, otherBob, otherGap, otherMagnets, backing, gravity, loss);
  }

  /** The same rig with another loss. */
  public BenchLayout withLoss(LossLaw other) {
    return new BenchLayout(suspension, bob, gap, magnets, backing, gravity, other);
  }

  /** Height of the bob magnet's centre over the plate at rest [m]. */
  public double bobCentreHeight() {
    return gap + bob.map(b -> b.magnet().halfHeight()).orElse(0.0);
  }

  /** Height of the upper axis over the plate [m]. */
  public double axisHeight() {
    return bobCentreHeight() + suspension.body().bobArm() + suspension.body().axisOffset();
  }

  /**
   * Height of the bob magnet's centre over the plate in a swing [m].
   *
   * @param beta angle about the lower axis [rad]
   * @param alpha angle about the upper axis [rad]
   */
  public double bobHeight(double beta, double alpha) {
    TwoAxisBody body = suspension.body();
    double radius = body.axisOffset() + body.bobArm() * StrictMath.cos(beta);
    return axisHeight() - radius * StrictMath.cos(alpha);
  }

  /**
   * The magnet on the bob, its axis in line with the bar or cord.
   *
   * @param magnet its shape and strength
   * @param poleDown the pole that faces the plate
   */
  public record BobMagnet(Magnet magnet, Pole poleDown) {}
}
