package lodeswing.analysis.swingcount;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.recording.DipoleBench;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.BarPart;
import lodeswing.core.suspension.Cord;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.Yoke;
import org.apache.commons.math3.ode.FirstOrderDifferentialEquations;
import org.apache.commons.math3.ode.events.EventHandler;
import org.apache.commons.math3.ode.nonstiff.DormandPrince853Integrator;
import org.junit.jupiter.api.Test;

/** Counted swings against closed forms, other code, and many tries. */
class SwingCountTest {

  private static final double GRAVITY = 9.80665;
  private static final Measured EXACT_LENGTH = new Measured(0, 0);
  private static final Measured EXACT_GRAVITY = new Measured(GRAVITY, 0);

  private static BenchLayout rig(Suspension suspension) {
    return new BenchLayout(
        suspension, Optional.empty(), 0.02, List.of(), Optional.empty(), GRAVITY, LossLaw.none());
  }

  private static Readings.Timing timed(int swings, double time) {
    return new Readings.Timing(swings, new Measured(time, 0));
  }

  private static CountedFigures count(BenchLayout rig, Readings readings) {
    return new SwingCount(rig, readings).figures();
  }

  private static Readings small(Along along, int swings, double time) {
    return new Readings(
        along,
        Optional.of(timed(swings, time)),
        Optional.empty(),
        Optional.empty(),
        EXACT_LENGTH,
        EXACT_GRAVITY);
  }

  /** T = 2 pi (l/g)^(1/2): a metre of cord beats seconds nearly, 2.006409 s at g = 9.80665. */
  @Test
  void theLengthOfACordFollowsFromItsPeriod() {
    double period = 2 * Math.PI * Math.sqrt(1 / GRAVITY);
    assertEquals(2.006409, period, 1e-6);

    CountedFigures found = count(rig(new Cord(0.98, 0.05)), small(Along.X, 10, 10 * period));

    assertEquals(1, found.get(Figure.ARM).value(), 1e-10);
    assertEquals(0.02, found.get(Figure.LENGTHENING).value(), 1e-10);
    assertEquals(Math.sqrt(1 / 0.98), found.get(Figure.PERIOD_RATIO).value(), 1e-12);
  }

  /**
   * The period at an amplitude over the small one, as tables of pendulums have it: 1.0019 at 10
   * degrees, 1.0077 at 20, 1.0174 at 30, 1.0732 at 60 (R. A. Nelson, M. G. Olsson, Am. J. Phys. 54
   * (1986) 112, give the series 1 + theta^2/16 + 11 theta^4/3072 + ...; the figures from memory).
   */
  @Test
  void aLargeSwingIsSlowerAsTablesHaveIt() {
    double[][] table = {{10, 1.0019}, {20, 1.0077}, {30, 1.0174}, {60, 1.0732}};
    for (double[] row : table) {
      double angle = Math.toRadians(row[0]);
      Readings readings =
          new Readings(
              Along.X,
              Optional.of(timed(1, 1)),
              Optional.of(new Measured(angle, 0)),
              Optional.empty(),
              EXACT_LENGTH,
              EXACT_GRAVITY);
      double small = count(rig(new Cord(0.42, 0.05)), readings).get(Figure.SMALL_PERIOD).value();
      assertEquals(row[1], 1 / small, 5e-5);
      double series = 1 + angle * angle / 16 + 11 * Math.pow(angle, 4) / 3072;
      assertEquals(series, 1 / small, 173.0 / 737_280 * Math.pow(angle, 6) * 1.3);
    }
  }

  /** A damped pendulum, counted by Commons Math's integrator. */
  private static double timeOfSwings(double length, double gamma, double angle, int swings) {
    FirstOrderDifferentialEquations pendulum =
        new FirstOrderDifferentialEquations() {
          @Override
          public int getDimension() {
            return 2;
          }

          @Override
          public void computeDerivatives(double t, double[] y, double[] slopes) {
            slopes[0] = y[1];
            slopes[1] = -GRAVITY / length * Math.sin(y[0]) - gamma * y[1];
          }
        };
    var integrator = new DormandPrince853Integrator(1e-8, 0.1, 1e-12, 1e-12);
    List<Double> passed = new ArrayList<>();
    integrator.addEventHandler(
        new EventHandler() {
          @Override
          public void init(double t0, double[] y0, double t) {}

          @Override
          public double g(double t, double[] y) {
            return y[0];
          }

          @Override
          public Action eventOccurred(double t, double[] y, boolean increasing) {
            passed.add(t);
            return passed.size() == 2 * swings + 1 ? Action.STOP : Action.CONTINUE;
          }

          @Override
          public void resetState(double t, double[] y) {}
        },
        0.01,
        1e-12,
        100);
    integrator.integrate(pendulum, 0, new double[] {angle, 0}, 1000, new double[2]);
    // From one way through the middle to the same way again, n swings later.
    return passed.get(2 * swings) - passed.get(0);
  }

  @Test
  void aSwingThatFallsFromALargeAngleTellsItsLength() {
    double length = 0.42;
    double period = 2 * Math.PI * Math.sqrt(length / GRAVITY);
    double half = 12;
    double gamma = 2 * Math.log(2) / (half * period);
    double angle = Math.toRadians(20);
    int swings = 20;
    // Counting begins at the middle, a quarter of a swing after the release.
    double amplitude = angle * Math.exp(-Math.log(2) / half / 4);
    Readings readings =
        new Readings(
            Along.X,
            Optional.of(timed(swings, timeOfSwings(length, gamma, angle, swings))),
            Optional.of(new Measured(amplitude, 0)),
            Optional.of(new Measured(half, 0)),
            EXACT_LENGTH,
            EXACT_GRAVITY);

    CountedFigures found = count(rig(new Cord(0.4, 0.05)), readings);

    // Without the amplitude it would be 1.5 mm off.
    assertEquals(length, found.get(Figure.ARM).value(), 2e-5);
    assertEquals(gamma / 2, found.get(Figure.DAMPING_RATE).value(), 1e-4 * gamma);
    assertEquals(0.05 * gamma, found.get(Figure.LINEAR_LOSS).value(), 1e-2 * 0.05 * gamma);
    assertEquals(Math.PI * half / Math.log(2), found.get(Figure.QUALITY_FACTOR).value(), 1e-9);
  }

  /** A rod of length L hung by its end: T = 2 pi (2 L/(3 g))^(1/2) (any textbook). */
  @Test
  void aYokeAndABarTellTheirOwnLengths() {
    Yoke yoke = new Yoke(0.3, 0.25, 0.2, 0.06);
    double across = 2 * Math.PI * Math.sqrt(0.46 / GRAVITY);
    assertEquals(
        0.01,
        count(rig(yoke), small(Along.Y, 5, 5 * across)).get(Figure.LENGTHENING).value(),
        1e-9);
    double alongX = 2 * Math.PI * Math.sqrt(0.19 / GRAVITY);
    assertEquals(
        -0.01,
        count(rig(yoke), small(Along.X, 5, 5 * alongX)).get(Figure.LENGTHENING).value(),
        1e-9);

    double rod = 0.6;
    BarPart part = new BarPart(0.1, rod / 2, 0.1 * rod * rod / 12, 0, rod, 0.004);
    BenchLayout bar = rig(new HookedBar(0, List.of(part), rod));
    double period = 2 * Math.PI * Math.sqrt(2 * rod / (3 * GRAVITY));
    CountedFigures found = count(bar, small(Along.X, 5, 5 * period));
    assertEquals(0, found.get(Figure.LENGTHENING).value(), 1e-9);
    assertEquals(1, found.get(Figure.PERIOD_RATIO).value(), 1e-12);

    // No bar of this kind swings so fast.
    CountedFigures fast = count(bar, small(Along.X, 5, 0.1));
    assertFalse(fast.find(Figure.LENGTHENING).isPresent());
  }

  /** JCGM 101: the spread of results of many tries, each with its inputs drawn anew. */
  @Test
  void uncertaintiesAreThoseOfManyTries() {
    Measured time = new Measured(26.2, 0.1);
    Measured amplitude = new Measured(Math.toRadians(12), Math.toRadians(1));
    Measured half = new Measured(20, 1);
    Measured length = new Measured(0, 1e-3);
    Measured gravity = new Measured(GRAVITY, 0.013);
    BenchLayout rig = rig(new Cord(0.42, 0.05));
    Readings readings =
        new Readings(
            Along.X,
            Optional.of(new Readings.Timing(20, time)),
            Optional.of(amplitude),
            Optional.of(half),
            length,
            gravity);
    SwingCount count = new SwingCount(rig, readings);
    CountedFigures found = count.figures();

    int tries = 20_000;
    Random random = new Random(1);
    double[][] drawn = new double[Figure.values().length][tries];
    List<Measured> inputs = List.of(time, amplitude, half, length, gravity);
    for (int i = 0; i < tries; i++) {
      double[] at =
          inputs.stream().mapToDouble(m -> m.value() + m.error() * random.nextGaussian()).toArray();
      double[] results = count.results(at);
      for (int k = 0; k < results.length; k++) {
        drawn[k][i] = results[k];
      }
    }
    for (Figure figure : Figure.values()) {
      double mean = 0;
      double squares = 0;
      for (double value : drawn[figure.place()]) {
        mean += value / tries;
      }
      for (double value : drawn[figure.place()]) {
        squares += (value - mean) * (value - mean) / tries;
      }
      double error = found.get(figure).error();
      // A spread of 20,000 tries is right within half a percent, curved models within a percent.
      assertEquals(Math.sqrt(squares), error, 0.02 * error, figure.name());
    }
  }

  @Test
  void severalCountingsAreAveraged() {
    Readings.Timing even = Readings.Timing.of(20, List.of(26.1, 26.2, 26.3, 26.2), 0.2);
    assertEquals(26.2, even.time().value(), 1e-12);
    assertEquals(0.13, even.time().half(), 0.01);
    // Student's t of 3 degrees of freedom at 97.5 %: 3.182 (any table).
    Readings.Timing uneven = Readings.Timing.of(20, List.of(25.2, 26.2, 27.2, 26.2), 0.2);
    double deviation = Math.sqrt(2.0 / 3);
    assertEquals(3.182 * deviation / 2, uneven.time().half(), 1e-3);
    assertTrue(even.time().half() < uneven.time().half());
  }

  /** Without magnets the first swing is that of the formula; among them it is another. */
  @Test
  void magnetsChangeTheFirstSwing() {
    double small = 2 * Math.PI * Math.sqrt(0.42 / GRAVITY);
    double out = 0.42 * Math.sin(Math.toRadians(10));
    BenchLayout bare = rig(new Cord(0.42, 0.05));
    assertEquals(1.0019 * small, MagnetSwing.firstSwing(bare, Along.X, out).orElseThrow(), 1e-4);
    assertEquals(1.0019 * small, MagnetSwing.firstSwing(bare, Along.Y, out).orElseThrow(), 1e-4);
    BenchLayout ring = DipoleBench.ring().layout();
    double among = MagnetSwing.firstSwing(ring, Along.X, out).orElseThrow();
    assertTrue(Math.abs(among - small) > 0.05 * small, "among magnets " + among);
    assertTrue(MagnetSwing.firstSwing(bare, Along.X, 1).isEmpty(), "beyond the cord");
  }
}
