package lodeswing.core.outcome;

import java.util.Optional;
import lodeswing.core.integrate.IntegrationFailure;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.landscape.MirrorSymmetry;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.Release;

/**
 * Finds ends one release at a time: the reference that faster finders are held against.
 *
 * <p>Limits and sticking are roots on the dense output as in a trace, so that a trace of the same
 * release ends alike.
 */
final class ScalarOutcomeFinder implements SharedFinder {

  private final Landscape landscape;
  private final Motion motion;
  private final Tolerance tolerance;
  private final double longest;
  private final boolean untilSettled;
  private final ScalarIntegrator integrator;

  /**
   * A finder.
   *
   * @param untilSettled whether to follow each bob until it has settled
   */
  ScalarOutcomeFinder(
      Landscape landscape, Tolerance tolerance, double longest, boolean untilSettled) {
    this.untilSettled = untilSettled;
    this.landscape = landscape;
    this.motion = landscape.motion();
    this.tolerance = tolerance;
    this.longest = landscape.lossless() ? 0 : longest;
    this.integrator = ScalarIntegrator.forMotion(motion);
  }

  @Override
  public MirrorSymmetry symmetry() {
    // On the release as it stands, as a trace follows it; lanes hand over what is folded already.
    return MirrorSymmetry.NONE;
  }

  @Override
  public void find(double[] releases, ReleaseQueue queue, Ends ends) {
    for (int i = queue.take(); i != ReleaseQueue.EMPTY; i = queue.take()) {
      follow(releases, i, ends);
    }
  }

  private void follow(double[] releases, int i, Ends ends) {
    int k = 4 * i;
    Optional<double[]> start =
        motion.toState(new Release(releases[k], releases[k + 1], releases[k + 2], releases[k + 3]));
    if (start.isEmpty() || !motion.allows(start.get())) {
      ends.set(i, Ends.CANNOT_START, 0);
      return;
    }
    ReleaseWatch watch = new ReleaseWatch(landscape, start.get(), untilSettled);
    try {
      if (!watch.done() && longest > 0) {
        integrator.integrate(start.get(), longest, tolerance, watch.observer());
      }
    } catch (IntegrationFailure e) {
      ends.set(i, Ends.UNSETTLED, Double.NaN);
      return;
    }
    ends.set(i, watch.end(), watch.sealedAt());
    if (untilSettled) {
      ends.settle(i, watch.settledAt());
    }
  }
}
