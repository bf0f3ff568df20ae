package lodeswing.core.rest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lodeswing.core.motion.MotionSystem;
import lodeswing.core.rig.TextbookLayout;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.apache.commons.math3.ode.sampling.StepHandler;
import org.apache.commons.math3.ode.sampling.StepInterpolator;
import org.junit.jupiter.api.Test;

/** Sealed outcomes against full runs until rest, integrated by Commons Math's DOP853 at 1e-9. */
class SealRuleTest {

  private static final double MARGIN = 1e-7;

  @Test
  void sealedOutcomeIsWhereTheFullRunComesToRest() {
    List<TextbookLayout> layouts = new ArrayList<>();
    layouts.add(AttractorPlane.threeMagnets());
    for (long seed = 1; seed <= 9; seed++) {
      layouts.add(RandomLayouts.layout(seed));
    }
    SplittableRandom random = new SplittableRandom(7);
    int sealed = 0;
    int changed = 0;
    for (TextbookLayout layout : layouts) {
      Scene scene = new Scene(layout);
      for (int n = 0; n < 12; n++) {
        double[] state = {
          4 * random.nextDouble() - 2,
          4 * random.nextDouble() - 2,
          2 * random.nextDouble() - 1,
          2 * random.nextDouble() - 1
        };
        Run run = scene.run(state);
        assertFalse(run.contradicted, "a sealed outcome changed");
        if (run.firstWell >= 0) {
          sealed++;
          changed += run.firstWell == run.endWell ? 0 : 1;
        }
      }
    }
    assertEquals(120, sealed);
    assertEquals(0, changed);
  }

  /**
   * The hardest case: at rest almost on a saddle, or crossing it with hardly any energy to spare.
   */
  @Test
  void releasesNearPassesAreNeverSealedWrongly() {
    SplittableRandom random = new SplittableRandom(11);
    int runs = 0;
    for (long seed = 20; seed < 28; seed++) {
      Scene scene = new Scene(RandomLayouts.layout(seed));
      for (Saddle s : scene.found.saddles()) {
        for (int n = 0; n < 3; n++) {
          double off = Math.pow(10, -6 + 4 * random.nextDouble());
          double way = 2 * Math.PI * random.nextDouble();
          double speed = n % 2 == 0 ? 0 : Math.pow(10, -5 + 3 * random.nextDouble());
          double[] state = {
            s.q0() + off * Math.cos(way),
            s.q1() + off * Math.sin(way),
            -speed * Math.cos(way),
            -speed * Math.sin(way)
          };
          Run run = scene.run(state);
          assertFalse(run.contradicted, "a sealed outcome changed");
          assertEquals(run.endWell, run.firstWell);
          runs++;
        }
      }
    }
    assertTrue(runs > 40, "too few saddles: " + runs);
  }

  @Test
  void nothingIsSealedAboveTheHighestPass() {
    Scene scene = new Scene(AttractorPlane.threeMagnets());
    double pass = scene.rule.passEnergy(0);
    RestPoint r = scene.found.list().get(0);
    assertEquals(SealRule.NONE, scene.rule.sealedWell(r.q0(), r.q1(), pass));
    assertEquals(SealRule.NONE, scene.rule.sealedWell(r.q0(), r.q1(), Double.NaN));
    assertEquals(0, scene.rule.sealedWell(r.q0(), r.q1(), pass - 2 * MARGIN));
    assertEquals(SealRule.NONE, scene.rule.sealedWell(9, 9, pass - 1));
  }

  @Test
  void bobIsSettledBelowAHundredthOfItsBarrier() {
    Scene scene = new Scene(AttractorPlane.threeMagnets());
    RestPoint r = scene.found.list().get(1);
    double height = r.barrier().height();
    assertTrue(scene.rule.settled(1, r.potential() + 0.0099 * height));
    assertFalse(scene.rule.settled(1, r.potential() + 0.0101 * height));
  }

  @Test
  void wellShallowerThanTheMarginIsNeverSealed() {
    Scene scene = new Scene(AttractorPlane.threeMagnets());
    RestPoint r = scene.found.list().get(0);
    SealRule rule = scene.found.sealRule(1.1 * r.barrier().height());
    assertEquals(SealRule.NONE, rule.sealedWell(r.q0(), r.q1(), r.potential()));
  }

  /** Wells that one cell of the scan would hold, down to 1e-4 of the deepest well. */
  @Test
  void smallestWellsAreSealedToo() {
    int wells = 0;
    int small = 0;
    for (long seed = 100; seed < 300; seed++) {
      Scene scene = new Scene(RandomLayouts.layout(seed));
      for (RestPoint r : scene.found.list()) {
        double energy = r.potential() + 2e-2 * r.barrier().height();
        assertEquals(r.index(), scene.rule.sealedWell(r.q0(), r.q1(), energy));
        wells++;
        small += r.barrier().height() < 0.01 ? 1 : 0;
      }
    }
    assertTrue(wells > 300 && small > 3, wells + " wells, " + small + " small");
  }

  private static final class Run implements StepHandler {
    private final Scene scene;
    private int firstWell = SealRule.NONE;
    private int endWell = SealRule.NONE;
    private boolean contradicted;

    private Run(Scene scene) {
      this.scene = scene;
    }

    @Override
    public void init(double t0, double[] y0, double t) {}

    @Override
    public void handleStep(StepInterpolator interpolator, boolean isLast) {
      interpolator.setInterpolatedTime(interpolator.getCurrentTime());
      double[] y = interpolator.getInterpolatedState();
      int well = scene.rule.sealedWell(y[0], y[1], scene.plane.energy(y[0], y[1], y[2], y[3]));
      if (well >= 0 && firstWell < 0) {
        firstWell = well;
      }
      contradicted |= well >= 0 && well != firstWell;
      if (isLast) {
        endWell = scene.nearest(y);
      }
    }
  }

  private static final class Scene {
    private final AttractorPlane plane;
    private final double drag;
    private final RestPoints found;
    private final SealRule rule;

    private Scene(TextbookLayout layout) {
      plane = AttractorPlane.of(layout);
      drag = layout.drag();
      found = new RestPointFinder(plane, ScanRegion.of(layout)).find();
      rule = found.sealRule(MARGIN);
    }

    private Run run(double[] state) {
      Run run = new Run(this);
      DormandPrince853Integrator integrator = new DormandPrince853Integrator(1e-12, 1, 1e-9, 1e-9);
      integrator.addStepHandler(run);
      integrator.integrate(MotionSystem.of(plane), 0, state, 20 / drag, new double[4]);
      return run;
    }

    private int nearest(double[] y) {
      int best = SealRule.NONE;
      double least = 0.01;
      for (RestPoint r : found.list()) {
        double distance = Math.hypot(y[0] - r.q0(), y[1] - r.q1());
        if (distance < least) {
          least = distance;
          best = r.index();
        }
      }
      return best;
    }
  }
}
