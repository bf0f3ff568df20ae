package lodeswing.analysis.trace;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.motion.Limit;
import lodeswing.core.motion.Motion;
import lodeswing.core.rest.RestPoint;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;
import lodeswing.core.suspension.BarPart;
import lodeswing.core.suspension.BarShape;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Material;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Where the model ends or the bob sticks: each a root of the figure that defines it. */
class TraceEndingsTest {

  /** A torque that holds the bob within some millimetres of a rest point [N m]. */
  private static final double FRICTION = 2e-3;

  /**
   * A release whose path ends early.
   *
   * @param layout the rig
   * @param release how the bob is let go
   * @param kind what ends it
   */
  private record Case(BenchLayout layout, Release release, TraceEvent.Kind kind) {
    @Override
    public String toString() {
      return kind + " " + layout.suspension().getClass().getSimpleName();
    }
  }

  static Stream<Case> endings() {
    BenchLayout bare = TrialLayouts.bench("quiet-plate");
    return Stream.of(
        new Case(bare, new Release(0.1, 0.02, 3, 0.4), TraceEvent.Kind.ANGLE_LIMIT),
        new Case(bare, new Release(0.02, -0.1, -0.1, 2.6), TraceEvent.Kind.ANGLE_LIMIT),
        new Case(
            over(bare, Optional.of(new Disc(0.0075, 0.005, 1.195)), 2e-5, List.of()),
            new Release(-0.1, 0.03, 0, 0),
            TraceEvent.Kind.PLATE_CONTACT),
        new Case(
            over(bare, Optional.empty(), 4e-3, List.of(at(new Disc(0.01, 0.008, 0.1), 0.03, 0))),
            new Release(-0.05, 0.002, 0, 0),
            TraceEvent.Kind.MAGNET_CONTACT),
        new Case(
            over(bare, Optional.of(new Dipole(1)), 0.03, List.of(at(new Dipole(4), 0, 0))),
            new Release(-0.12, 0.01, 1.5, 0),
            TraceEvent.Kind.SUSPENSION_SLACK),
        new Case(
            over(onRod(bare), Optional.of(new Dipole(1)), 0.03, List.of(at(new Dipole(4), 0, 0))),
            new Release(-0.12, 0.01, 1.5, 0),
            TraceEvent.Kind.SUSPENSION_SLACK),
        new Case(
            over(TrialLayouts.bench("y-cord"), Optional.of(new Dipole(1)), 0.03, List.of()),
            new Release(0.05, 0.01, 1.1, 0.1),
            TraceEvent.Kind.SUSPENSION_SLACK));
  }

  /** The same rig with a light steel rod in an eye instead of its cord. */
  private static BenchLayout onRod(BenchLayout rig) {
    BarPart rod = BarPart.of(new BarShape.Cylinder(0.004, 0.42), Material.STEEL, 0.21);
    return new BenchLayout(
        new HookedBar(0.003, List.of(rod), 0.42),
        rig.bob(),
        rig.gap(),
        rig.magnets(),
        rig.backing(),
        rig.gravity(),
        LossLaw.none());
  }

  /** A rig with another bob magnet, north pole down, over other magnets. */
  private static BenchLayout over(
      BenchLayout rig, Optional<Magnet> bob, double gap, List<PlacedMagnet> magnets) {
    return new BenchLayout(
        rig.suspension(),
        bob.map(magnet -> new BenchLayout.BobMagnet(magnet, Pole.NORTH)),
        gap,
        magnets,
        Optional.empty(),
        rig.gravity(),
        rig.loss());
  }

  private static PlacedMagnet at(Magnet magnet, double x, double y) {
    Pole up = magnet instanceof Dipole ? Pole.NORTH : Pole.SOUTH;
    return new PlacedMagnet(magnet, new Vec3(x, y, magnet.halfHeight()), 0, up);
  }

  @ParameterizedTest
  @MethodSource("endings")
  void pathEndsWhereItsLimitIsZero(Case one) {
    Landscape landscape = TrialLandscapes.of(one.layout());
    Motion motion = landscape.motion();
    double[] start = motion.toState(one.release()).orElseThrow();
    assertTrue(TrialLandscapes.inside(motion, start));
    TraceResult path = new Trace(landscape).run(TrialLandscapes.spec(60, 0.01), start);
    TraceEvent ending = path.ending().orElseThrow();
    assertEquals(one.kind(), ending.kind());
    double time = ending.time();
    assertEquals(time, path.followedUntil());
    double[] there = TrialLandscapes.stateAt(landscape, start, time, Tolerance.TRACE);
    Limit limit = limit(motion, one.kind());
    double scale = limit.margin(start);
    assertEquals(0, limit.margin(there), 1e-7 * scale);
    double[] before = TrialLandscapes.stateAt(landscape, start, time - 1e-4, Tolerance.TRACE);
    assertTrue(TrialLandscapes.inside(motion, before));
    assertTrue(nearestStepEnd(landscape, start, time) > 1e-7);
    assertEquals((int) Math.floor(time / 0.01) + 1, path.samples().count());
    assertTrue(path.settledAt().isEmpty());
    TraceResult rough = new Trace(landscape).run(TrialLandscapes.spec(60, 0.01), start, ROUGH);
    assertEquals(time, rough.ending().orElseThrow().time(), 1e-4 * Math.max(1, time));
  }

  private static final Tolerance ROUGH = Tolerance.of(1e-7);

  private static Limit limit(Motion motion, TraceEvent.Kind kind) {
    return motion.limits().stream()
        .filter(l -> l.kind().name().equals(kind.name()))
        .findFirst()
        .orElseThrow();
  }

  /** How far the nearest end of an integration step lies from a time. */
  private static double nearestStepEnd(Landscape landscape, double[] start, double time) {
    double[] nearest = {Double.POSITIVE_INFINITY};
    ScalarIntegrator.forMotion(landscape.motion())
        .integrate(
            start,
            600,
            Tolerance.TRACE,
            step -> {
              nearest[0] = Math.min(nearest[0], Math.abs(step.endTime() - time));
              return step.endTime() < time;
            });
    return nearest[0];
  }

  private static Landscape withFriction() {
    return TrialLandscapes.of(TrialLayouts.withFriction("three-stations", FRICTION));
  }

  @Test
  void frictionHoldsTheBobInsideItsZoneAboutARestPoint() {
    Landscape landscape = withFriction();
    Motion motion = landscape.motion();
    double zone = widestZone(landscape);
    List<Double> offsets = new ArrayList<>();
    double[][] places = {{0.08, 0.03}, {-0.06, 0.07}, {0.02, -0.1}, {0.07, 0.01}};
    for (double[] place : places) {
      double[] start = TrialLandscapes.start(landscape, place[0], place[1], 0, 0);
      TraceResult path = new Trace(landscape).run(TrialLandscapes.spec(60, 0.05), start);
      TraceEvent stuck =
          path.events().stream()
              .filter(e -> e.kind() == TraceEvent.Kind.STUCK)
              .findFirst()
              .orElseThrow();
      double[] there = TrialLandscapes.stateAt(landscape, start, stuck.time(), Tolerance.TRACE);
      assertEquals(0, motion.slideMargin(there), 1e-5);
      double[] slopes = new double[6];
      motion.potentialDerivatives(there[0], there[1], slopes);
      assertTrue(Math.hypot(slopes[1], slopes[2]) <= FRICTION * (1 + 1e-9));
      assertEquals(stuck.time(), path.followedUntil());
      assertTrue(path.settledAt().orElseThrow() <= stuck.time());
      RestPoint rest = landscape.restPoints().list().get(path.restPoint().orElseThrow());
      double[] plan = new double[4];
      motion.toPlan(there, plan);
      offsets.add(Math.hypot(plan[0] - rest.x(), plan[1] - rest.y()));
      Samples samples = path.samples();
      assertEquals(1201, samples.count());
      for (int i = (int) (stuck.time() / 0.05) + 1; i < samples.count(); i++) {
        assertEquals(plan[0], samples.x()[i], 1e-9);
        assertEquals(plan[1], samples.y()[i], 1e-9);
        assertEquals(0, samples.vx()[i]);
      }
    }
    assertTrue(offsets.stream().allMatch(o -> o < zone));
    assertTrue(offsets.stream().anyMatch(o -> o > 0.01 * zone));
  }

  /** Where the slope H d stays below the friction, d is below friction over the least curvature. */
  private static double widestZone(Landscape landscape) {
    double[] d = new double[6];
    double widest = 0;
    for (RestPoint rest : landscape.restPoints().list()) {
      landscape.motion().potentialDerivatives(rest.q0(), rest.q1(), d);
      double half = 0.5 * (d[3] - d[5]);
      double least = 0.5 * (d[3] + d[5]) - Math.sqrt(half * half + d[4] * d[4]);
      widest = Math.max(widest, FRICTION / least);
    }
    // A tenth more for what the curvature changes inside the zone.
    return 1.1 * widest * landscape.planScale().perCoordinate();
  }

  /** Let go where friction outdoes the pull, it never moves. */
  @Test
  void bobReleasedInsideTheZoneIsHeldThere() {
    Landscape landscape = withFriction();
    Motion motion = landscape.motion();
    for (RestPoint rest : landscape.restPoints().list()) {
      double shift = 0.2 * widestZone(landscape) / landscape.planScale().perCoordinate();
      double[] start = {rest.q0() + shift, rest.q1() - shift, 0, 0};
      assertTrue(motion.slideMargin(start) < 0);
      TraceResult path = new Trace(landscape).run(TrialLandscapes.spec(5, 0.5), start);
      assertEquals(rest.index(), path.restPoint().orElseThrow());
      assertEquals(0, path.settledAt().orElseThrow());
      assertEquals(0, path.sealedAt().orElseThrow());
      assertTrue(path.sure());
      assertEquals(0, path.followedUntil());
      assertTrue(path.events().contains(new TraceEvent(0, TraceEvent.Kind.STUCK)));
      double[] plan = new double[4];
      motion.toPlan(start, plan);
      assertEquals(11, path.samples().count());
      for (int i = 0; i < 11; i++) {
        assertEquals(plan[0], path.samples().x()[i]);
        assertEquals(plan[1], path.samples().y()[i]);
      }
    }
  }

  /** The middle of the triangle is a hill or a pass: held there, the bob belongs to no station. */
  @Test
  void bobHeldOnAPassBelongsToNoRestPoint() {
    Landscape landscape = withFriction();
    TraceResult path =
        new Trace(landscape).run(TrialLandscapes.spec(5, 0.5), new double[] {0, 0, 0, 0});
    assertTrue(path.events().contains(new TraceEvent(0, TraceEvent.Kind.STUCK)));
    assertTrue(path.restPoint().isEmpty());
    assertFalse(path.sure());
    assertTrue(path.sealedAt().isEmpty());
  }

  @Test
  void frictionlessRigNeverSticks() {
    BenchLayout bare = TrialLayouts.bench("quiet-plate");
    assertEquals(0, bare.loss().pivotTorque());
    assertTrue(LossLaw.none().pivotTorque() == 0);
    Landscape landscape = TrialLandscapes.of(bare);
    double[] start = TrialLandscapes.start(landscape, 0.1, 0, 0, 0);
    TraceResult path = new Trace(landscape).run(TrialLandscapes.spec(60, 0.5), start);
    assertTrue(path.events().stream().noneMatch(e -> e.kind() == TraceEvent.Kind.STUCK));
    assertTrue(path.settledAt().isPresent());
  }
}
