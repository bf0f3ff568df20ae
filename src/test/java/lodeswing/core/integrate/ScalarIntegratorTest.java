package lodeswing.core.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import lodeswing.core.motion.Motion;
import org.junit.jupiter.api.Test;

class ScalarIntegratorTest {

  private static List<ScalarIntegrator> both(PlaneMotion motion) {
    return List.of(ScalarIntegrator.forMotion(motion), ScalarIntegrator.general(motion));
  }

  /** x = e^(-kt) (x0 cos mt + (v0 + k x0)/m sin mt), m^2 = w^2 - k^2: any textbook of mechanics. */
  @Test
  void dampedOscillatorFollowsItsClosedForm() {
    double w = 4.8;
    double k = 0.15;
    double m = Math.sqrt(w * w - k * k);
    double t = 20;
    for (ScalarIntegrator integrator : both(PlaneMotion.oscillator(w, 2 * k))) {
      double[] end =
          integrator
              .integrate(new double[] {0.3, -0.1, 0, 0.7}, t, Tolerance.TRACE, StepObserver.NONE)
              .state();
      double decay = Math.exp(-k * t);
      double x = decay * (0.3 * Math.cos(m * t) + k * 0.3 / m * Math.sin(m * t));
      double y = decay * (-0.1 * Math.cos(m * t) + (0.7 - k * 0.1) / m * Math.sin(m * t));
      assertEquals(x, end[0], 1e-10);
      assertEquals(y, end[1], 1e-10);
    }
  }

  /** The bound is the project's own: 1e-9 of the swing energy after 100 swings of 57 degrees. */
  @Test
  void hundredSwingsWithoutLossKeepTheirEnergy() {
    PlaneMotion motion = PlaneMotion.pendulum(4.8);
    double[] start = {1, 0.2, 0, 0};
    double swing = motion.energy(1, 0.2, 0, 0);
    double[] worst = new double[1];
    for (ScalarIntegrator integrator : both(motion)) {
      integrator.integrate(
          start,
          100 * 2 * Math.PI / 4.8 * 1.0663,
          Tolerance.TRACE,
          step -> {
            double e = motion.energy(step.end(0), step.end(1), step.end(2), step.end(3));
            worst[0] = Math.max(worst[0], Math.abs(e - swing));
            return true;
          });
      assertTrue(worst[0] < 1e-9 * swing, () -> "energy off by " + worst[0] / swing);
    }
  }

  @Test
  void hundredSwingsOverMagnetsWithoutLossKeepTheirEnergy() {
    Motion motion = new DipoleBenchMotion(6.3e-8, 0);
    double bottom = motion.potential(0.1, 0);
    double start = motion.energy(0.2, 0.1, 0, 0);
    double[] end =
        ScalarIntegrator.forMotion(motion)
            .integrate(new double[] {0.2, 0.1, 0, 0}, 130, Tolerance.TRACE, StepObserver.NONE)
            .state();
    double off = motion.energy(end[0], end[1], end[2], end[3]) - start;
    assertTrue(Math.abs(off) < 1e-9 * (start - bottom), () -> "off by " + off);
  }

  /** A Kepler ellipse of eccentricity 0.6 is back at its pericentre after 2 pi (Kepler, 1619). */
  @Test
  void keplerEllipseCloses() {
    double e = 0.6;
    double[] start = {1 - e, 0, 0, Math.sqrt((1 + e) / (1 - e))};
    for (ScalarIntegrator integrator : both(PlaneMotion.kepler())) {
      double[] end =
          integrator.integrate(start, 2 * Math.PI, Tolerance.of(1e-12), StepObserver.NONE).state();
      for (int i = 0; i < 4; i++) {
        assertEquals(start[i], end[i], 2e-10);
      }
    }
  }

  @Test
  void reversedSpeedsLeadBack() {
    for (ScalarIntegrator integrator : both(PlaneMotion.threeAttractors(0))) {
      double[] start = {1.2, -0.4, 0.3, 0.1};
      double[] end = integrator.integrate(start, 5, Tolerance.TRACE, StepObserver.NONE).state();
      double[] back = {end[0], end[1], -end[2], -end[3]};
      double[] again = integrator.integrate(back, 5, Tolerance.TRACE, StepObserver.NONE).state();
      assertEquals(start[0], again[0], 1e-8);
      assertEquals(start[1], again[1], 1e-8);
      assertEquals(-start[2], again[2], 1e-8);
      assertEquals(-start[3], again[3], 1e-8);
    }
  }

  @Test
  void bothPairsAgreeWithCommonsMathOnTheThreeAttractorPlane() {
    PlaneMotion motion = PlaneMotion.threeAttractors(0.2);
    double[] start = {1.1, 0.9, 0, 0};
    double[] reference = ReferenceRun.of(motion, start, 8);
    for (ScalarIntegrator integrator : both(motion)) {
      double[] end = integrator.integrate(start, 8, Tolerance.TRACE, StepObserver.NONE).state();
      for (int i = 0; i < 4; i++) {
        assertEquals(reference[i], end[i], 1e-8);
      }
    }
  }

  @Test
  void localErrorEstimateBoundsTheErrorOfAStep() {
    PlaneMotion motion = PlaneMotion.threeAttractors(0.2);
    for (ScalarIntegrator integrator : both(motion)) {
      integrator.integrate(
          new double[] {1.1, 0.9, 0, 0},
          3,
          Tolerance.of(1e-8),
          step -> {
            double[] state = new double[4];
            step.startState(state);
            double[] truth = ReferenceRun.of(motion, state, step.endTime() - step.startTime());
            double off = Math.hypot(step.end(0) - truth[0], step.end(1) - truth[1]);
            assertTrue(off < 1.2 * step.localError() + 1e-13, () -> off + " at " + step.endTime());
            return true;
          });
    }
  }

  @Test
  void observerEndsTheIntegration() {
    Arrival arrival =
        ScalarIntegrator.forMotion(PlaneMotion.kepler())
            .integrate(new double[] {1, 0, 0, 1}, 100, Tolerance.TRACE, step -> step.endTime() < 3);
    assertTrue(arrival.stopped());
    assertTrue(arrival.time() >= 3 && arrival.time() < 5);
  }

  @Test
  void endTimeIsMetExactly() {
    Arrival arrival =
        ScalarIntegrator.forMotion(PlaneMotion.kepler())
            .integrate(new double[] {1, 0, 0, 1}, 7.3, Tolerance.TRACE, StepObserver.NONE);
    assertEquals(7.3, arrival.time(), 1e-14);
    assertFalse(arrival.stopped());
    Work work = arrival.work();
    long least = 8 * work.acceptedSteps() + 2;
    assertTrue(work.evaluations() >= least);
    assertTrue(work.evaluations() <= least + 8 * work.rejectedSteps());
  }

  @Test
  void stepsStayBelowTheBoundAndTheirNumberIsBounded() {
    ScalarIntegrator integrator = ScalarIntegrator.forMotion(PlaneMotion.kepler());
    double[] circle = {1, 0, 0, 1};
    integrator.integrate(
        circle,
        2,
        Tolerance.of(1e-4),
        new StepLimits(1000, 0.05),
        step -> {
          assertTrue(step.endTime() - step.startTime() <= 0.05 + 1e-12);
          return true;
        });
    IntegrationFailure failure =
        assertThrows(
            IntegrationFailure.class,
            () ->
                integrator.integrate(
                    circle, 1e9, Tolerance.TRACE, new StepLimits(500, 1), StepObserver.NONE));
    assertEquals(IntegrationFailure.Reason.TOO_MANY_STEPS, failure.reason());
    assertTrue(failure.time() > 1);
  }

  @Test
  void notANumberEndsWithAFailure() {
    PlaneMotion edge =
        new PlaneMotion(0, 1) {
          @Override
          public void force(double q0, double q1, double[] out) {
            out[0] = q0 < 2 ? 1 : Double.NaN;
            out[1] = 0;
          }

          @Override
          public double potential(double q0, double q1) {
            return -q0;
          }
        };
    for (ScalarIntegrator integrator : both(edge)) {
      IntegrationFailure failure =
          assertThrows(
              IntegrationFailure.class,
              () ->
                  integrator.integrate(
                      new double[] {0, 0, 0, 0}, 10, Tolerance.TRACE, StepObserver.NONE));
      assertEquals(2, failure.time(), 1e-6);
      assertThrows(
          IntegrationFailure.class,
          () ->
              integrator.integrate(
                  new double[] {Double.NaN, 0, 0, 0}, 10, Tolerance.TRACE, StepObserver.NONE));
    }
  }

  @Test
  void fallIntoACentreEndsWithAFailure() {
    for (ScalarIntegrator integrator : both(PlaneMotion.kepler())) {
      assertThrows(
          IntegrationFailure.class,
          () ->
              integrator.integrate(
                  new double[] {1, 0, 0, 0}, 10, Tolerance.TRACE, StepObserver.NONE));
    }
  }
}
