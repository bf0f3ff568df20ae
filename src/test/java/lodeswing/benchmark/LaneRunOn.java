package lodeswing.benchmark;

import static lodeswing.core.integrate.lane.LaneBlock.LANES;

import java.util.Arrays;
import java.util.List;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.integrate.lane.LaneBlock;
import lodeswing.core.integrate.lane.LaneKernel;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.integrate.lane.NystromKernel;
import lodeswing.core.integrate.lane.RungeKuttaKernel;
import lodeswing.core.integrate.lane.RungeKuttaPair;
import lodeswing.core.integrate.lane.Watch;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.motion.TextbookMotion;
import lodeswing.core.rest.SealRule;

/**
 * Releases on lanes until rest: the very steps of the finder on lanes, going on where that stops.
 *
 * <p>Of the seal rule only the levels are read, to say in which step the energy fell below each, so
 * that a sealing time can be recognised as one of this path. One owner, one thread.
 */
final class LaneRunOn {

  /** Places looked at within a step, for limits and friction. */
  private static final int PIECES = 8;

  private static final int FREE = -1;
  private static final double SMALLEST_STEP = 1e-12;

  private final Motion motion;
  private final List<Limit> limits;
  private final SealRule rule;
  private final WellOfPlace wells;
  private final double settledShare;
  private final double longest;
  private final LaneKernel kernel;
  private final double[] s;
  private final int[] release = new int[LANES];
  private final double[] state = new double[4];

  LaneRunOn(
      Landscape landscape,
      LaneProvider provider,
      Tolerance tolerance,
      double longest,
      double settledShare) {
    this.motion = landscape.motion();
    this.limits = motion.limits();
    this.rule = landscape.sealRule();
    this.wells = new WellOfPlace(landscape);
    this.longest = longest;
    this.settledShare = settledShare;
    Watch watch = new Watch(Double.MAX_VALUE, longest, Double.MAX_VALUE, SMALLEST_STEP, true);
    this.kernel =
        motion instanceof TextbookMotion plane
            ? new NystromKernel(plane, provider, tolerance, watch)
            : new RungeKuttaKernel(
                (BenchMotion) motion, RungeKuttaPair.ORDER_8, provider, tolerance, watch);
    this.s = kernel.slots();
  }

  /** One release's way. */
  static final class Way {
    private final double[] from;
    private final double[] to;
    private RunOn rest = RunOn.OPEN;

    private Way(double[] from) {
      this.from = from;
      this.to = from.clone();
    }

    /** How it ended. */
    RunOn rest() {
      return rest;
    }

    /** Whether its energy fell below a well's seal level in a step that holds this time. */
    boolean sealsAt(int well, double time) {
      return from[well] <= time && time <= to[well];
    }

    private void note(int well, double begin, double end) {
      from[well] = begin;
      to[well] = end;
    }
  }

  /** Follows each of the states until rest. */
  Way[] run(double[][] starts) {
    Way[] ways = new Way[starts.length];
    int next = 0;
    int running = 0;
    Arrays.fill(release, FREE);
    double[] still = new double[4];
    do {
      for (int lane = 0; lane < LANES; lane++) {
        if (release[lane] == FREE && next < starts.length) {
          ways[next] = begin(starts[next]);
          kernel.start(lane, starts[next]);
          release[lane] = next++;
          running++;
        }
      }
      kernel.attempt();
      for (int lane = 0; lane < LANES; lane++) {
        if (release[lane] != FREE && s[LaneBlock.ATTENTION + lane] != 0) {
          Way way = ways[release[lane]];
          way.rest = look(lane, way);
          if (!way.rest.open() || s[LaneBlock.TIME + lane] >= longest) {
            kernel.start(lane, still);
            release[lane] = FREE;
            running--;
          }
        }
      }
    } while (running > 0 || next < starts.length);
    return ways;
  }

  private Way begin(double[] start) {
    double energy = motion.energy(start[0], start[1], start[2], start[3]);
    double[] from = new double[rule.wells()];
    for (int w = 0; w < from.length; w++) {
      from[w] = energy < rule.sealEnergy(w) ? 0 : Double.NaN;
    }
    return new Way(from);
  }

  private RunOn look(int lane, Way way) {
    if (!(s[LaneBlock.ERROR + lane] <= 1)) {
      throw new IllegalStateException("a lane ran out of numbers");
    }
    double end = s[LaneBlock.TIME + lane];
    double begin = end - s[LaneBlock.TRIED + lane];
    double energy = s[LaneBlock.NEW_ENERGY + lane];
    for (int w = 0; w < rule.wells(); w++) {
      if (Double.isNaN(way.from[w]) && energy < rule.sealEnergy(w)) {
        way.note(w, begin, end);
      }
    }
    for (int k = 1; k <= PIECES && !limits.isEmpty(); k++) {
      place(lane, (double) k / PIECES);
      double time = begin + (end - begin) * k / PIECES;
      for (Limit limit : limits) {
        if (!(limit.margin(state) > 0)) {
          return new RunOn(LimitCodes.of(limit), false, time);
        }
      }
      if (!(motion.slideMargin(state) > 0)) {
        return RunOn.held(wells, state, motion.potential(state[0], state[1]), time);
      }
    }
    int well =
        wells.settledAt(
            s[LaneBlock.NEW + lane], s[LaneBlock.NEW + LANES + lane], energy, settledShare);
    return well == WellOfPlace.NONE ? RunOn.OPEN : new RunOn(well, false, end);
  }

  /** Place and speed at a part of the step, by the cubic through both ends (Hermite). */
  private void place(int lane, double t) {
    double size = s[LaneBlock.TRIED + lane];
    double left = 1 - t;
    for (int c = 0; c < 2; c++) {
      int old = LaneBlock.Q0 + c * LANES + lane;
      int now = LaneBlock.NEW + c * LANES + lane;
      double push =
          size * (left * s[old + 2 * LANES] * left * t - t * t * left * s[now + 2 * LANES]);
      state[c] = left * left * (1 + 2 * t) * s[old] + t * t * (3 - 2 * t) * s[now] + push;
      double slope = left * (1 - 3 * t) * s[old + 2 * LANES] - t * (2 - 3 * t) * s[now + 2 * LANES];
      state[c + 2] = 6 * t * left * (s[now] - s[old]) / size + slope;
    }
  }
}
