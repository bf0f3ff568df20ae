package lodeswing.core.outcome;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;

import java.util.Optional;
import lodeswing.core.integrate.lane.LaneBlock;
import lodeswing.core.integrate.lane.LaneKernel;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Motion;
import lodeswing.core.rest.SealRule;
import lodeswing.core.rig.Release;

/** One thread's share of a run of releases, through a block of lanes. One owner, one thread. */
final class LaneRun {

  private static final int FREE = -1;

  private final Motion motion;
  private final SealRule rule;
  private final LaneKernel kernel;
  private final double longest;
  private final StepDoubts doubts;
  private final double[] s;
  private final int[] release = new int[LANES];
  private final boolean untilSettled;
  private final double[] shutAt;
  private final double[] still = new double[4];
  private int running;

  /**
   * A run.
   *
   * @param untilSettled whether a bob whose end is certain is followed until it has settled
   */
  LaneRun(Landscape landscape, LaneKernel kernel, double longest, boolean untilSettled) {
    this.untilSettled = untilSettled;
    this.motion = landscape.motion();
    this.rule = landscape.sealRule();
    this.kernel = kernel;
    this.longest = longest;
    this.doubts = new StepDoubts(motion, landscape.limitMap(), kernel.slots());
    this.s = kernel.slots();
    this.shutAt = new double[rule.wells() * LANES];
  }

  void run(double[] releases, ReleaseQueue queue, Ends ends, OutcomeFinder reference) {
    running = 0;
    for (int lane = 0; lane < LANES; lane++) {
      fill(lane, releases, queue, ends, reference);
    }
    while (running > 0) {
      kernel.attempt();
      for (int lane = 0; lane < LANES; lane++) {
        if (s[LaneBlock.ATTENTION + lane] != 0 && release[lane] != FREE) {
          attend(lane, releases, queue, ends, reference);
        }
      }
    }
  }

  /** Puts the next release that is not decided at once into a lane; with none left, a still bob. */
  private void fill(
      int lane, double[] releases, ReleaseQueue queue, Ends ends, OutcomeFinder reference) {
    release[lane] = FREE;
    for (int i = queue.take(); i != ReleaseQueue.EMPTY; i = queue.take()) {
      int k = 4 * i;
      Optional<double[]> start =
          motion.toState(
              new Release(releases[k], releases[k + 1], releases[k + 2], releases[k + 3]));
      if (start.isEmpty() || !begins(start.get(), i, ends)) {
        reference.find(releases, i, i + 1, ends);
        continue;
      }
      if (decided(start.get(), i, ends)) {
        continue;
      }
      release[lane] = i;
      running++;
      kernel.start(lane, start.get());
      start(lane);
      return;
    }
    kernel.start(lane, still);
  }

  /** Whether lanes can follow a release; one that is certain at once is written down. */
  private boolean begins(double[] state, int i, Ends ends) {
    double energy = motion.energy(state[0], state[1], state[2], state[3]);
    if (!Double.isFinite(energy) || doubts.atStart(state)) {
      return false;
    }
    int well = rule.sealedWell(state[0], state[1], energy);
    ends.set(i, well >= 0 ? well : Ends.UNSETTLED, well >= 0 ? 0 : Double.NaN);
    return true;
  }

  /** Whether nothing more is to be learned of a release that has just begun. */
  private boolean decided(double[] state, int i, Ends ends) {
    int well = ends.end(i);
    if (well < 0 || !untilSettled) {
      return well >= 0;
    }
    boolean settled =
        motion.energy(state[0], state[1], state[2], state[3]) < rule.settledEnergy(well);
    ends.settle(i, settled ? 0 : Double.NaN);
    return settled;
  }

  /** Nothing is shut yet but what the energy at the release is below. */
  private void start(int lane) {
    double energy = s[LaneBlock.ENERGY + lane];
    for (int w = 0; w < rule.wells(); w++) {
      shutAt[w * LANES + lane] = energy < rule.sealEnergy(w) ? 0 : Double.NaN;
    }
  }

  private void attend(
      int lane, double[] releases, ReleaseQueue queue, Ends ends, OutcomeFinder reference) {
    int i = release[lane];
    boolean rejected = !(s[LaneBlock.ERROR + lane] <= 1);
    if (rejected || doubts.onStep(lane)) {
      follow(releases, i, ends, reference);
      free(lane, releases, queue, ends, reference);
      return;
    }
    double energy = s[LaneBlock.NEW_ENERGY + lane];
    if (energy < rule.highestSealEnergy()) {
      if (ends.end(i) < 0 && !seal(lane, energy, ends)) {
        note(lane, energy);
      }
      if (ends.end(i) >= 0 && ended(lane, energy, ends)) {
        free(lane, releases, queue, ends, reference);
        return;
      }
    }
    if (s[LaneBlock.TIME + lane] >= longest) {
      free(lane, releases, queue, ends, reference);
    }
  }

  /** Whether the bob can leave a well no more; most are shut in on the step that falls below it. */
  private boolean seal(int lane, double energy, Ends ends) {
    int well = rule.sealedWell(s[LaneBlock.NEW + lane], s[LaneBlock.NEW + LANES + lane], energy);
    if (well < 0) {
      return false;
    }
    double at = shutAt[well * LANES + lane];
    if (Double.isNaN(at)) {
      at = crossing(lane, rule.sealEnergy(well));
    }
    if (at <= longest) {
      ends.set(release[lane], well, at);
    }
    return true;
  }

  /** Whether nothing more is to be learned of a release whose end is certain. */
  private boolean ended(int lane, double energy, Ends ends) {
    if (!untilSettled) {
      return true;
    }
    double level = rule.settledEnergy(ends.end(release[lane]));
    if (!(energy < level)) {
      return false;
    }
    double at = crossing(lane, level);
    ends.settle(release[lane], at <= longest ? at : Double.NaN);
    return true;
  }

  /**
   * Follows a release by itself; an end that was certain on lanes stays.
   *
   * <p>When it settles is taken over only from a path that ends so too, and not before its end was
   * certain: any other is the path of a neighbouring release.
   */
  private static void follow(double[] releases, int i, Ends ends, OutcomeFinder reference) {
    int end = ends.end(i);
    double sealedAt = ends.sealedAt(i);
    reference.find(releases, i, i + 1, ends);
    if (end >= 0) {
      if (ends.end(i) != end || !(ends.settledAt(i) >= sealedAt)) {
        ends.settle(i, Double.NaN);
      }
      ends.set(i, end, sealedAt);
    }
  }

  private void free(
      int lane, double[] releases, ReleaseQueue queue, Ends ends, OutcomeFinder reference) {
    running--;
    fill(lane, releases, queue, ends, reference);
  }

  /** Notes when the energy fell below the levels of wells over this step. */
  private void note(int lane, double energy) {
    for (int w = 0; w < rule.wells(); w++) {
      int slot = w * LANES + lane;
      if (Double.isNaN(shutAt[slot]) && energy < rule.sealEnergy(w)) {
        shutAt[slot] = crossing(lane, rule.sealEnergy(w));
      }
    }
  }

  /** When the energy fell below a level over this step. */
  private double crossing(int lane, double level) {
    double size = s[LaneBlock.TRIED + lane];
    double begin = s[LaneBlock.TIME + lane] - size;
    double before = s[LaneBlock.ENERGY + lane];
    if (!(before > level)) {
      return begin;
    }
    EnergyFall fall =
        new EnergyFall(
            before,
            s[LaneBlock.NEW_ENERGY + lane],
            size * power(LaneBlock.Q0 + lane),
            size * power(LaneBlock.NEW + lane));
    return begin + size * fall.reaches(level);
  }

  private double power(int at) {
    return motion.power(s[at], s[at + LANES], s[at + 2 * LANES], s[at + 3 * LANES]);
  }
}
