package lodeswing.analysis.trace;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.OptionalInt;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.motion.Motion;
import lodeswing.core.rest.RestPoint;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Samples, sealing, settling and rest of one path. */
class TracePathTest {

  @ParameterizedTest
  @CsvSource({
    "three-stations, 0.07, 0.05",
    "kitchen-drawer, 0.06, -0.1",
    "paper-triangle, 1.1, -0.6"
  })
  void samplesLieOnTheDenseOutput(String name, double x, double y) {
    Landscape landscape = TrialLandscapes.sample(name);
    Motion motion = landscape.motion();
    double[] start = TrialLandscapes.start(landscape, x, y, 0, 0);
    double interval = 0.037;
    Samples samples = new Trace(landscape).run(TrialLandscapes.spec(5, interval), start).samples();
    assertEquals(136, samples.count());
    List<double[]> dense = new ArrayList<>();
    ScalarIntegrator.forMotion(motion)
        .integrate(
            start,
            600,
            Tolerance.TRACE,
            step -> {
              while (dense.size() * interval <= step.endTime()) {
                double[] state = new double[4];
                step.at(dense.size() * interval, state);
                dense.add(state);
              }
              return step.endTime() < 5;
            });
    double[] plan = new double[4];
    for (int i = 0; i < samples.count(); i++) {
      motion.toPlan(dense.get(i), plan);
      double[] sample = {samples.x()[i], samples.y()[i], samples.vx()[i], samples.vy()[i]};
      assertArrayEquals(plan, sample, "sample " + i);
      assertEquals(TrialLandscapes.energy(motion, dense.get(i)), samples.energy()[i]);
    }
  }

  /** The dense output against integrations that end at the sample's time. */
  @Test
  void samplesAreTheStatesOfIntegrationsThatEndThere() {
    Landscape landscape = TrialLandscapes.sample("three-stations");
    double[] start = TrialLandscapes.start(landscape, 0.07, 0.05, 0, 0);
    Samples samples = new Trace(landscape).run(TrialLandscapes.spec(2, 0.01), start).samples();
    double[] plan = new double[4];
    for (int i = 1; i < samples.count(); i += 13) {
      landscape
          .motion()
          .toPlan(
              TrialLandscapes.stateAt(landscape, start, samples.t(i), Tolerance.of(1e-13)), plan);
      assertEquals(plan[0], samples.x()[i], 1e-9);
      assertEquals(plan[1], samples.y()[i], 1e-9);
      assertEquals(plan[2], samples.vx()[i], 1e-7);
      assertEquals(plan[3], samples.vy()[i], 1e-7);
    }
  }

  /** 3 * 0.1 lies a rounding past 0.3, and nothing is followed past the duration without loss. */
  @Test
  void lastSampleIsThereEvenWhereItsTimeRoundsPastTheEnd() {
    Landscape landscape =
        TrialLandscapes.of(TrialLayouts.withLoss("three-stations", LossLaw.none()));
    double[] start = TrialLandscapes.start(landscape, 0.07, 0.05, 0, 0);
    TraceSpec spec = TrialLandscapes.spec(0.3, 0.1);
    assertEquals(4, spec.samples());
    assertEquals(4, new Trace(landscape).run(spec, start).samples().count());
  }

  @ParameterizedTest
  @CsvSource({
    "three-stations, 0.07, 0.05", "three-stations, -0.02, 0.09",
    "kitchen-drawer, 0.06, 0.03", "paper-triangle, 1.1, -0.6"
  })
  void sealingAndSettlingAreRootsOfTheEnergy(String name, double x, double y) {
    Landscape landscape = TrialLandscapes.sample(name);
    double[] start = TrialLandscapes.start(landscape, x, y, 0, 0);
    TraceResult path = new Trace(landscape).run(TrialLandscapes.spec(1, 0.1), start);
    int well = path.restPoint().orElseThrow();
    RestPoint rest = landscape.restPoints().list().get(well);
    double height = rest.barrier().height();
    double sealedAt = path.sealedAt().orElseThrow();
    double settledAt = path.settledAt().orElseThrow();
    assertTrue(0 < sealedAt && sealedAt < settledAt);
    double sealed = TrialLandscapes.energyAt(landscape, start, sealedAt);
    assertEquals(landscape.sealRule().sealEnergy(well), sealed, 1e-7 * height);
    assertEquals(rest.barrier().passEnergy(), sealed, 1e-4 * height);
    double settled = TrialLandscapes.energyAt(landscape, start, settledAt);
    assertEquals(0.01 * height, settled - rest.potential(), 1e-7 * height);
    double before = TrialLandscapes.energyAt(landscape, start, 0.999 * settledAt);
    double after = TrialLandscapes.energyAt(landscape, start, 1.001 * settledAt);
    assertTrue(before > settled && settled > after);
    assertEquals(
        List.of(TraceEvent.Kind.SEALED, TraceEvent.Kind.SETTLED),
        path.events().stream()
            .map(TraceEvent::kind)
            .filter(k -> k == TraceEvent.Kind.SEALED || k == TraceEvent.Kind.SETTLED)
            .toList());
  }

  @ParameterizedTest
  @ValueSource(strings = {"three-stations", "kitchen-drawer", "paper-triangle", "quiet-plate"})
  void bobReleasedAtRestPointStaysThere(String name) {
    Landscape landscape = TrialLandscapes.sample(name);
    double length = TrialLandscapes.isBench(landscape) ? 1e-8 : 1e-7;
    for (RestPoint rest : landscape.restPoints().list()) {
      double[] start = {rest.q0(), rest.q1(), 0, 0};
      TraceResult path = new Trace(landscape).run(TrialLandscapes.spec(20, 0.1), start);
      assertEquals(OptionalInt.of(rest.index()), path.restPoint());
      assertEquals(0, path.sealedAt().orElseThrow());
      assertEquals(0, path.settledAt().orElseThrow());
      assertTrue(path.sure());
      assertEquals(201, path.samples().count());
      for (int i = 0; i < path.samples().count(); i++) {
        assertEquals(rest.x(), path.samples().x()[i], length);
        assertEquals(rest.y(), path.samples().y()[i], length);
      }
    }
  }

  /** A release inside a well would swing there for ever, one outside anywhere. */
  @ParameterizedTest
  @CsvSource({"0.041, 0.002", "0.09, 0.05"})
  void pathWithoutLossNeverSettlesNorSeals(double x, double y) {
    Landscape landscape =
        TrialLandscapes.of(TrialLayouts.withLoss("three-stations", LossLaw.none()));
    double[] start = TrialLandscapes.start(landscape, x, y, 0, 0);
    TraceResult path = new Trace(landscape).run(TrialLandscapes.spec(30, 0.1), start);
    assertTrue(path.restPoint().isEmpty());
    assertTrue(path.sealedAt().isEmpty() && path.settledAt().isEmpty());
    assertFalse(path.sure());
    assertTrue(path.ending().isEmpty());
    assertEquals(30, path.followedUntil());
    assertEquals(301, path.samples().count());
  }
}
