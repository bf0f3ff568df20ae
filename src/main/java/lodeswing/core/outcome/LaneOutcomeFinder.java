package lodeswing.core.outcome;

import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneKernel;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.integrate.lane.Watch;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.landscape.MirrorSymmetry;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.Motion;

/**
 * Finds ends on lanes, many releases at once.
 *
 * <p>1. A lane is stopped as soon as its outcome is certain, and filled with the next release.
 *
 * <p>2. What lanes cannot decide by themselves, a release that comes near contact, slack or
 * sticking or that runs out of numbers, is handed to the finder that follows one release at a time,
 * from its beginning.
 *
 * <p>3. A release's end hangs on nothing but the release, whatever lane it gets and whatever its
 * neighbours are.
 */
final class LaneOutcomeFinder implements SharedFinder {

  /** Steps below this part of a small swing's angle are lost in rounding. */
  private static final double SMALLEST_ANGLE = 1e-9;

  /** Textbook coordinates have no border. */
  private static final double NO_BORDER = Double.MAX_VALUE;

  private final Landscape landscape;
  private final LaneProvider provider;
  private final LaneScheme scheme;
  private final Tolerance tolerance;
  private final double longest;
  private final boolean untilSettled;
  private final SharedFinder reference;

  LaneOutcomeFinder(
      Landscape landscape, LaneProvider provider, Tolerance tolerance, double longest) {
    this(landscape, provider, LaneScheme.best(landscape.motion()), tolerance, longest, false);
  }

  LaneOutcomeFinder(
      Landscape landscape,
      LaneProvider provider,
      LaneScheme scheme,
      Tolerance tolerance,
      double longest,
      boolean untilSettled) {
    this.landscape = landscape;
    this.provider = provider;
    this.scheme = scheme;
    this.tolerance = tolerance;
    this.longest = longest;
    this.reference = new ScalarOutcomeFinder(landscape, tolerance, longest, untilSettled);
    this.untilSettled = untilSettled;
  }

  @Override
  public MirrorSymmetry symmetry() {
    return landscape.symmetry();
  }

  @Override
  public void find(double[] releases, ReleaseQueue queue, Ends ends) {
    if (landscape.layout().lossless()) {
      reference.find(releases, queue, ends);
    } else {
      new LaneRun(landscape, kernel(), longest, untilSettled).run(releases, queue, ends, reference);
    }
  }

  private LaneKernel kernel() {
    Motion motion = landscape.motion();
    double seal = landscape.sealRule().highestSealEnergy();
    double smallest = SMALLEST_ANGLE / Math.max(motion.naturalRate(), SMALLEST_ANGLE);
    return scheme.kernel(motion, provider, tolerance, watch(motion, seal, smallest));
  }

  private Watch watch(Motion motion, double seal, double smallest) {
    if (motion instanceof BenchMotion bench) {
      boolean friction = bench.layout().loss().pivotTorque() > 0;
      boolean everyStep = !landscape.limitMap().empty() || friction;
      return new Watch(seal, longest, motion.reach(), smallest, everyStep);
    }
    return new Watch(seal, longest, NO_BORDER, smallest, false);
  }
}
