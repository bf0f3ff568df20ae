package lodeswing.core.integrate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import lodeswing.core.integrate.Event.Direction;
import org.junit.jupiter.api.Test;

class EventFinderTest {

  private static final double W = 4.8;

  private static List<Double> times(EventFunction f, Direction direction, boolean terminal) {
    List<Double> times = new ArrayList<>();
    Event event = new Event(f, direction, terminal, (t, s) -> times.add(t));
    ScalarIntegrator.forMotion(PlaneMotion.oscillator(W, 0))
        .integrate(
            new double[] {1, 0, 0, 1},
            6,
            Tolerance.TRACE,
            new EventFinder(List.of(event), StepObserver.NONE));
    return times;
  }

  /** x = cos wt passes zero at (n + 1/2) pi/w. */
  @Test
  void passagesOfAnOscillatorAreWhereTheCosineIsZero() {
    List<Double> times = times((t, s) -> s[0], Direction.ANY, false);
    assertEquals(9, times.size());
    for (int n = 0; n < times.size(); n++) {
      assertEquals((n + 0.5) * Math.PI / W, times.get(n), 1e-9);
    }
  }

  @Test
  void directionsAreKeptApart() {
    List<Double> rising = times((t, s) -> s[0], Direction.RISING, false);
    List<Double> falling = times((t, s) -> s[0], Direction.FALLING, false);
    assertEquals(4, rising.size());
    assertEquals(5, falling.size());
    assertEquals(1.5 * Math.PI / W, rising.get(0), 1e-9);
    assertEquals(0.5 * Math.PI / W, falling.get(0), 1e-9);
  }

  /** x - (1 - 1e-7) is above zero only for 2 acos(1 - 1e-7)/w = 0.19 ms a swing. */
  @Test
  void briefDipsInsideAStepAreSeen() {
    double level = 1 - 1e-7;
    List<Double> times = times((t, s) -> s[0] - level, Direction.ANY, false);
    double half = Math.acos(level) / W;
    assertEquals(9, times.size());
    assertEquals(half, times.get(0), 1e-9);
    for (int n = 1; n < 5; n++) {
      assertEquals(n * 2 * Math.PI / W - half, times.get(2 * n - 1), 1e-9 / Math.sin(half * W));
      assertEquals(n * 2 * Math.PI / W + half, times.get(2 * n), 1e-9 / Math.sin(half * W));
    }
  }

  @Test
  void terminalEventEndsTheIntegration() {
    Event end = new Event((t, s) -> s[0], Direction.RISING, true, (t, s) -> {});
    EventFinder finder = new EventFinder(List.of(end), StepObserver.NONE);
    Arrival arrival =
        ScalarIntegrator.forMotion(PlaneMotion.oscillator(W, 0))
            .integrate(new double[] {1, 0, 0, 0}, 100, Tolerance.TRACE, finder);
    assertTrue(arrival.stopped());
    assertEquals(1.5 * Math.PI / W, finder.endedAt(), 1e-9);
  }

  @Test
  void eventsOfAStepAreToldInTheOrderOfTime() {
    List<Double> told = new ArrayList<>();
    Event one = new Event((t, s) -> s[0] - 0.1, Direction.ANY, false, (t, s) -> told.add(t));
    Event two = new Event((t, s) -> s[0] + 0.1, Direction.ANY, false, (t, s) -> told.add(t));
    ScalarIntegrator.forMotion(PlaneMotion.oscillator(W, 0))
        .integrate(
            new double[] {1, 0, 0, 0},
            6,
            Tolerance.of(1e-6),
            new EventFinder(List.of(two, one), StepObserver.NONE));
    assertEquals(18, told.size());
    for (int i = 1; i < told.size(); i++) {
      assertTrue(told.get(i) > told.get(i - 1));
    }
  }

  @Test
  void nothingExtraIsEvaluatedWhileNoEventIsNear() {
    Event never = new Event((t, s) -> s[0] + 30, Direction.ANY, false, (t, s) -> {});
    double[] start = {1, 0, 0, 0};
    ScalarIntegrator integrator = ScalarIntegrator.forMotion(PlaneMotion.oscillator(W, 0));
    Arrival plain = integrator.integrate(start, 6, Tolerance.TRACE, StepObserver.NONE);
    Arrival watched =
        integrator.integrate(
            start, 6, Tolerance.TRACE, new EventFinder(List.of(never), StepObserver.NONE));
    assertEquals(plain.work().evaluations(), watched.work().evaluations());
  }
}
