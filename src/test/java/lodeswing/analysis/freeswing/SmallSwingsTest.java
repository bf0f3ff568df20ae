package lodeswing.analysis.freeswing;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.geometry.PathCurve;
import lodeswing.core.integrate.Event;
import lodeswing.core.integrate.EventFinder;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.StepObserver;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.loss.AirDrag;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.Release;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.swing.LargeSwing;
import lodeswing.core.swing.SmallSwings;
import org.apache.commons.math3.analysis.integration.RombergIntegrator;
import org.junit.jupiter.api.Test;

/** Periods, decay and precession against closed forms and against the exact motion. */
class SmallSwingsTest {

  private static final double G = FreeRigs.GRAVITY;

  /** T = 2 pi (L/g)^(1/2), any handbook; 0.5 m swing in 1.41875 s, 0.9 m in 1.9034 s. */
  @Test
  void periodsAreThoseOfTheSimplePendulums() {
    SmallSwings cord = SmallSwings.of(FreeRigs.lossless(FreeRigs.CORD));
    assertEquals(1.41875, cord.periodX(), 5e-6);
    assertTrue(cord.alike());
    SmallSwings yoke = SmallSwings.of(FreeRigs.lossless(FreeRigs.TWO_TO_THREE));
    assertEquals(2 * Math.PI * Math.sqrt(0.4 / G), yoke.periodX(), 1e-14);
    assertEquals(1.9034, yoke.periodY(), 5e-5);
    assertEquals(2.0 / 3, yoke.ratio(), 1e-15);
    SmallSwings paper = SmallSwings.of(new TextbookLayout(0.5, 0.2, 0.3, List.of()));
    assertEquals(4 * Math.PI, paper.periodX(), 1e-14);
    assertTrue(paper.alike());
  }

  /**
   * K(k) as the integral that defines it: NIST Digital Library of Mathematical Functions, 19.2.8.
   */
  @Test
  void largeSwingsTakeTheCompleteEllipticIntegral() {
    for (double angle : new double[] {0.01, 0.3, 1, 2.5}) {
      double k2 = Math.sin(angle / 2) * Math.sin(angle / 2);
      double integral =
          new RombergIntegrator(1e-12, 1e-13, 5, 30)
              .integrate(
                  1_000_000,
                  t -> 1 / Math.sqrt(1 - k2 * Math.sin(t) * Math.sin(t)),
                  0,
                  Math.PI / 2);
      assertEquals(4 * integral / 3, LargeSwing.period(3, angle, 0).orElseThrow(), 1e-11);
    }
    // the same swing, seen at its lowest point: omega 2 sin(theta/2) there
    assertEquals(
        LargeSwing.period(3, 1, 0).orElseThrow(),
        LargeSwing.period(3, 0, 6 * Math.sin(0.5)).orElseThrow(),
        1e-13);
    assertTrue(LargeSwing.period(3, 0, 6.001).isEmpty());
  }

  @Test
  void largeSwingsAlongEitherAxisTakeAsLongInTheExactMotion() {
    for (Suspension suspension : List.of(FreeRigs.TWO_TO_THREE, FreeRigs.bar(0.006))) {
      Layout layout = FreeRigs.lossless(suspension);
      SmallSwings swings = SmallSwings.of(layout);
      Motion motion = FreeSwing.of(layout).motion();
      for (int axis = 0; axis < 2; axis++) {
        double[] start = new double[4];
        start[axis] = 0.45;
        double rate = axis == 0 ? swings.rateX() : swings.rateY();
        int speed = 2 + axis;
        List<double[]> turns = turns(motion, start, 10, s -> s[speed]);
        assertEquals(
            LargeSwing.period(rate, 0.45, 0).orElseThrow(), turns.get(0)[0], 1e-9, suspension + "");
      }
    }
  }

  /** What a counted swing means: after n periods of the swing in x a half is left. */
  @Test
  void swingHasHalfItsSizeWhenTheLawSaysSo() {
    for (Suspension suspension : List.of(FreeRigs.CORD, FreeRigs.TWO_TO_THREE)) {
      LossLaw loss = LossLaw.fromSwingsToHalf(20, suspension.body(), G);
      Layout layout = FreeRigs.layout(suspension, loss);
      SmallSwings swings = SmallSwings.of(layout);
      double halves = SmallSwings.halvingTime(swings.lossX().orElseThrow()).orElseThrow();
      assertEquals(20 * swings.periodX(), halves, 1e-10);
      double alongX =
          FreeRigs.path(layout, new Release(0.01, 0, 0, 0), 1, 600).halvedAt().orElseThrow();
      assertEquals(halves, alongX, 0.01 * halves);
      double alongY =
          FreeRigs.path(layout, new Release(0, 0.01, 0, 0), 1, 600).halvedAt().orElseThrow();
      double expected = SmallSwings.halvingTime(swings.lossY().orElseThrow()).orElseThrow();
      assertEquals(expected, alongY, 0.01 * expected);
    }
  }

  @Test
  void dampedSwingIsSlowerByTheLawOfTheDampedOscillator() {
    // omega 0.5 and drag 0.2: (0.25 - 0.01)^(1/2) = 0.4898979 (any textbook of mechanics)
    assertEquals(
        2 * Math.PI / 0.4898979485566356,
        SmallSwings.periodWithLoss(0.5, 0.2).orElseThrow(),
        1e-12);
    assertTrue(SmallSwings.periodWithLoss(0.5, 1).isEmpty());
    assertTrue(SmallSwings.halvingTime(0).isEmpty());
  }

  @Test
  void otherLawsOfLossHaveNoRateButAreFollowed() {
    LossLaw drag = new LossLaw(0, List.of(AirDrag.inRoom(1.1).small(0.5, 0.004)), 0);
    Layout layout = FreeRigs.layout(FreeRigs.CORD, drag);
    assertTrue(SmallSwings.of(layout).lossX().isEmpty());
    FreePath far = FreeRigs.path(layout, new Release(0.2, 0, 0, 0), 5, 3_000);
    FreePath near = FreeRigs.path(layout, new Release(0.1, 0, 0, 0), 5, 3_000);
    // drag as the square of the speed: a swing of half the size takes twice as long to halve
    // (common practice, from dA/dt = -const A^2)
    assertEquals(2, near.halvedAt().orElseThrow() / far.halvedAt().orElseThrow(), 0.03);
  }

  /**
   * Airy's rate is the limit for small ellipses: measured on the exact motion at sizes that halve,
   * the relative deviation falls to a quarter each time, and the limit that Richardson's
   * extrapolation makes of two sizes agrees far better than each.
   */
  @Test
  void precessionIsTheLimitOfTheExactMotion() {
    Layout layout = FreeRigs.lossless(FreeRigs.CORD);
    double[] deviation = new double[3];
    for (int i = 0; i < 3; i++) {
      double a = 0.08 / (1 << i);
      deviation[i] = measured(layout, a, 0.4 * a) / airy(layout, a, 0.4 * a) - 1;
    }
    assertTrue(Math.abs(deviation[0]) > 1e-3, "" + deviation[0]);
    assertEquals(4, deviation[0] / deviation[1], 0.1);
    assertEquals(4, deviation[1] / deviation[2], 0.1);
    assertEquals(0, (4 * deviation[2] - deviation[1]) / 3, 2e-6);
  }

  /**
   * By hand: 500 mm, half axes 50 and 20 mm: 3/8 x 4.4287 x 0.004 rad/s = 0.38061 degrees a second.
   */
  @Test
  void precessionHasAirysFigureAndTheBobsSense() {
    SmallSwings cord = SmallSwings.of(FreeRigs.lossless(FreeRigs.CORD));
    double push = cord.rateX() * 0.02;
    double there = cord.precession(0.05, 0, 0, push).orElseThrow();
    assertEquals(0.38061, Math.toDegrees(there), 1e-5);
    assertEquals(-there, cord.precession(0.05, 0, 0, -push).orElseThrow(), 0);
    assertEquals(0, cord.precession(0.05, 0.02, 0, 0).orElseThrow(), 0);
    assertTrue(
        SmallSwings.of(FreeRigs.lossless(FreeRigs.TWO_TO_THREE))
            .precession(0.05, 0, 0, 0.1)
            .isEmpty());
    // a harmonic oscillator's ellipse stands still: Newton, Principia, book I, proposition X
    assertEquals(
        0,
        SmallSwings.of(new TextbookLayout(0.5, 0, 0.3, List.of()))
            .precession(1, 0, 0, 0.3)
            .orElseThrow(),
        0);
  }

  @Test
  void roundBarTurnsAsItsAnglesSayLessItsOwnMoment() {
    Layout layout = FreeRigs.lossless(FreeRigs.bar(0));
    double own =
        ((BenchLayout) layout).suspension().body().axialInertia()
            / ((BenchLayout) layout).suspension().body().swingInertia();
    double ratio = measured(layout, 0.02, 0.008) / airy(layout, 0.02, 0.008);
    assertFalse(own > 0.01);
    assertEquals(1, ratio, 1e-3 + 2 * own);
  }

  private static double airy(Layout layout, double a, double b) {
    SmallSwings swings = SmallSwings.of(layout);
    return swings.precession(a, 0, 0, swings.rateX() * b).orElseThrow();
  }

  /** Turn of the farthest points over twelve swings, by the exact motion. */
  private static double measured(Layout layout, double a, double b) {
    SmallSwings swings = SmallSwings.of(layout);
    Motion motion = FreeSwing.of(layout).motion();
    double[] start = motion.toState(new Release(a, 0, 0, swings.rateX() * b)).orElseThrow();
    double[] plan = new double[4];
    List<double[]> far =
        turns(
            motion,
            start,
            13 * swings.periodX(),
            s -> {
              motion.toPlan(s, plan);
              return plan[0] * plan[2] + plan[1] * plan[3];
            });
    double[] first = far.get(1);
    double[] last = far.get(23);
    double[] there = new double[4];
    motion.toPlan(new double[] {first[1], first[2], first[3], first[4]}, there);
    double before = Math.atan2(there[1], there[0]);
    motion.toPlan(new double[] {last[1], last[2], last[3], last[4]}, there);
    return (Math.atan2(there[1], there[0]) - before) / (last[0] - first[0]);
  }

  private interface OfState {
    double value(double[] state);
  }

  /** Times and states at which a function falls through zero. */
  private static List<double[]> turns(
      Motion motion, double[] start, double duration, OfState function) {
    List<double[]> turns = new ArrayList<>();
    Event event =
        new Event(
            (time, state) -> function.value(state),
            Event.Direction.FALLING,
            false,
            (time, s) -> turns.add(new double[] {time, s[0], s[1], s[2], s[3]}));
    ScalarIntegrator.forMotion(motion)
        .integrate(
            start,
            duration,
            Tolerance.of(1e-13),
            new EventFinder(List.of(event), StepObserver.NONE));
    return turns;
  }

  @Test
  void straightLineStaysStraightOnARoundRigAndOpensOnOneWithTwoPeriods() {
    Release diagonal = new Release(0.06, 0.045, 0, 0);
    for (Suspension round : List.of(FreeRigs.CORD, FreeRigs.bar(0))) {
      FreePath path = FreeRigs.path(FreeRigs.lossless(round), diagonal, 30, 0);
      double straight = round == FreeRigs.CORD ? 1e-10 : 1e-4;
      assertTrue(path.widest() < straight, path.widest() + "");
      assertTrue(reach(path.curve()) > 0.074);
    }
    FreePath textbook =
        FreeRigs.path(
            new TextbookLayout(0.5, 0.01, 0.3, List.of()), new Release(1, 0.5, 0, 0), 100, 0);
    assertTrue(textbook.widest() < 1e-9, textbook.widest() + "");
    FreePath open = FreeRigs.path(FreeRigs.lossless(FreeRigs.TWO_TO_THREE), diagonal, 30, 0);
    assertTrue(open.widest() > 0.03, open.widest() + "");
  }

  private static double reach(PathCurve curve) {
    double reach = 0;
    for (int i = 0; i < curve.count(); i++) {
      reach = Math.max(reach, Math.hypot(curve.x(i), curve.y(i)));
    }
    return reach;
  }
}
