package lodeswing.analysis.trace;

import java.util.concurrent.ConcurrentHashMap;
import lodeswing.core.integrate.Arrival;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.StepObserver;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.Release;

/** Landscapes that the tests of traces share, each made once, and ways into them. */
final class TrialLandscapes {

  private static final ConcurrentHashMap<Layout, Landscape> MADE = new ConcurrentHashMap<>();

  private TrialLandscapes() {}

  static Landscape of(Layout layout) {
    return MADE.computeIfAbsent(layout, Landscape::of);
  }

  static Landscape sample(String name) {
    return of(TrialLayouts.sample(name));
  }

  static boolean isBench(Landscape landscape) {
    return landscape.layout() instanceof BenchLayout;
  }

  /** A spec with a hand of 1 mm, followed for ten minutes at most. */
  static TraceSpec spec(double duration, double interval) {
    return new TraceSpec(
        new Release(0, 0, 0, 0), duration, interval, 1e-3, Math.max(duration, 600));
  }

  static double[] start(Landscape landscape, double x, double y, double vx, double vy) {
    return landscape.motion().toState(new Release(x, y, vx, vy)).orElseThrow();
  }

  /** Whether every limit holds at a state, whatever its speed. */
  static boolean inside(Motion motion, double[] state) {
    for (Limit limit : motion.limits()) {
      if (limit.margin(state) <= 0) {
        return false;
      }
    }
    return true;
  }

  /** The state at a time by an integration of its own that ends there. */
  static double[] stateAt(Landscape landscape, double[] start, double time, Tolerance tolerance) {
    Arrival arrival =
        ScalarIntegrator.forMotion(landscape.motion())
            .integrate(start, time, tolerance, StepObserver.NONE);
    return arrival.state();
  }

  static double energyAt(Landscape landscape, double[] start, double time) {
    return energy(landscape.motion(), stateAt(landscape, start, time, Tolerance.TRACE));
  }

  static double energy(Motion motion, double[] s) {
    return motion.energy(s[0], s[1], s[2], s[3]);
  }

  /** Energy of a release above the deepest rest point. */
  static double swingEnergy(Landscape landscape, double[] start) {
    double deepest =
        landscape.restPoints().list().stream().mapToDouble(r -> r.potential()).min().orElseThrow();
    return energy(landscape.motion(), start) - deepest;
  }
}
