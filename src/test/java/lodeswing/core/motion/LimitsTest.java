package lodeswing.core.motion;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Magnet;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.magnet.Sphere;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Suspension;
import lodeswing.core.suspension.TwoAxisBody;
import org.junit.jupiter.api.Test;

/** Margins of a bench rig's limits against sampled solids and against forces from differences. */
class LimitsTest {

  private static final double G = Rigs.GRAVITY;
  private static final Disc BOB = new Disc(0.0075, 0.005, 1.195);
  private static final Disc STATION = new Disc(0.0125, 0.005, 0.385);

  private static BenchLayout plate(Magnet bob, double gap, List<PlacedMagnet> magnets) {
    return new BenchLayout(
        Rigs.CORD,
        Optional.of(new BenchLayout.BobMagnet(bob, Pole.NORTH)),
        gap,
        magnets,
        Optional.empty(),
        G,
        LossLaw.none());
  }

  private static PlacedMagnet at(Magnet magnet, double x, double y, double turn) {
    return new PlacedMagnet(magnet, new Vec3(x, y, magnet.halfHeight()), turn, Pole.SOUTH);
  }

  private static Limit limit(Motion motion, Limit.Kind kind) {
    return motion.limits().stream().filter(l -> l.kind() == kind).findFirst().orElseThrow();
  }

  @Test
  void bobHangingOverAMagnetClearsItByTheFaceGap() {
    BenchLayout layout = plate(BOB, 0.012, List.of(at(STATION, 0, 0, 0)));
    Motion motion = BenchMotion.withoutMagnets(layout);
    assertEquals(0.007, limit(motion, Limit.Kind.MAGNET_CONTACT).leastMargin(0, 0), 1e-15);
    assertEquals(0.012, limit(motion, Limit.Kind.PLATE_CONTACT).leastMargin(0, 0), 1e-15);
  }

  @Test
  void ballClearsThePlateByItsLowestPointAtAnyTilt() {
    Motion motion = BenchMotion.withoutMagnets(plate(new Sphere(0.01, 1.2), 0.012, List.of()));
    Limit limit = limit(motion, Limit.Kind.PLATE_CONTACT);
    for (double angle = -0.9; angle < 1; angle += 0.3) {
      assertEquals(0.012 + 0.42 * (1 - Math.cos(angle)), limit.leastMargin(angle, 0), 1e-15);
      assertEquals(0.012 + 0.42 * (1 - Math.cos(angle)), limit.leastMargin(0, angle), 1e-15);
    }
  }

  @Test
  void tiltedDiscsLowestRimPointIsFoundBySampling() {
    BenchLayout layout = plate(BOB, 0.012, List.of());
    Limit limit = limit(BenchMotion.withoutMagnets(layout), Limit.Kind.PLATE_CONTACT);
    Random random = new Random(3);
    for (int trial = 0; trial < 200; trial++) {
      double beta = 2 * random.nextDouble() - 1;
      double alpha = 2 * random.nextDouble() - 1;
      double lowest = Double.POSITIVE_INFINITY;
      for (int k = 0; k < 2000; k++) {
        lowest = Math.min(lowest, rimPoint(layout, beta, alpha, Math.PI * k / 1000, 1)[2]);
      }
      assertEquals(lowest, limit.leastMargin(beta, alpha), 1e-7);
    }
  }

  @Test
  void clearanceToADiscNeverExceedsTheSampledDistance() {
    BenchLayout layout = plate(BOB, 0.008, List.of(at(STATION, 0.02, -0.01, 0)));
    Limit limit = limit(BenchMotion.withoutMagnets(layout), Limit.Kind.MAGNET_CONTACT);
    Random random = new Random(4);
    int told = 0;
    for (int trial = 0; trial < 300; trial++) {
      double beta = 0.3 * (2 * random.nextDouble() - 1);
      double alpha = 0.3 * (2 * random.nextDouble() - 1);
      double nearest = Double.POSITIVE_INFINITY;
      for (int k = 0; k < 400; k++) {
        for (int end = -1; end <= 1; end += 2) {
          double[] p = rimPoint(layout, beta, alpha, Math.PI * k / 200, end);
          double out = Math.max(0, Math.hypot(p[0] - 0.02, p[1] + 0.01) - 0.0125);
          double up = Math.max(0, p[2] - 0.005);
          nearest = Math.min(nearest, Math.hypot(out, up));
        }
      }
      double margin = limit.leastMargin(beta, alpha);
      assertTrue(margin <= nearest + 1e-9, () -> "margin " + margin);
      told += margin > 0.8 * nearest ? 1 : 0;
    }
    assertTrue(told > 250, "the bound is rarely far from the true distance, but only " + told);
  }

  /** A rim point of the bob disc in the layout's frame; end +1 is the lower face. */
  private static double[] rimPoint(
      BenchLayout layout, double beta, double alpha, double angle, int end) {
    double px = 0.0075 * Math.cos(angle);
    double py = 0.0075 * Math.sin(angle);
    double pz = -0.42 - end * 0.0025;
    double x = Math.cos(beta) * px - Math.sin(beta) * pz;
    double z = Math.sin(beta) * px + Math.cos(beta) * pz;
    double y = Math.cos(alpha) * py - Math.sin(alpha) * z;
    return new double[] {x, y, Math.sin(alpha) * py + Math.cos(alpha) * z + layout.axisHeight()};
  }

  @Test
  void turnedBlockShowsItsSideToTheBob() {
    Block block = new Block(0.04, 0.01, 0.03, 0.4);
    double beta = Math.asin(0.05 / 0.42);
    Motion lengthwise =
        BenchMotion.withoutMagnets(plate(new Sphere(0.005, 1), 0.004, List.of(at(block, 0, 0, 0))));
    Motion across =
        BenchMotion.withoutMagnets(
            plate(new Sphere(0.005, 1), 0.004, List.of(at(block, 0, 0, Math.PI / 2))));
    Limit.Kind kind = Limit.Kind.MAGNET_CONTACT;
    assertEquals(0.025, limit(lengthwise, kind).leastMargin(beta, 0), 1e-15);
    assertEquals(0.04, limit(across, kind).leastMargin(beta, 0), 1e-15);
  }

  @Test
  void clearanceOverManyMagnetsIsTheLeastOfEach() {
    Random random = new Random(5);
    List<PlacedMagnet> many = new ArrayList<>();
    for (int i = 0; i < 200; i++) {
      Magnet magnet = i % 2 == 0 ? STATION : new Block(0.03, 0.01, 0.006, 0.4);
      many.add(at(magnet, random.nextDouble() - 0.5, random.nextDouble() - 0.5, random.nextInt(4)));
    }
    List<Limit> alone = new ArrayList<>();
    for (PlacedMagnet magnet : many) {
      alone.add(
          limit(
              BenchMotion.withoutMagnets(plate(BOB, 0.015, List.of(magnet))),
              Limit.Kind.MAGNET_CONTACT));
    }
    Limit together =
        limit(BenchMotion.withoutMagnets(plate(BOB, 0.015, many)), Limit.Kind.MAGNET_CONTACT);
    for (int trial = 0; trial < 100; trial++) {
      double b = random.nextDouble() - 0.5;
      double a = random.nextDouble() - 0.5;
      double least = alone.stream().mapToDouble(l -> l.leastMargin(b, a)).min().orElseThrow();
      assertEquals(least, together.leastMargin(b, a));
    }
  }

  /** Pull at the lowest point after a release at theta: m g (3 - 2 cos theta), any textbook. */
  @Test
  void cordPullsWithItsTextbookForceAtTheLowestPoint() {
    Motion motion = BenchMotion.withoutMagnets(Rigs.layout(Rigs.CORD, LossLaw.none()));
    Limit slack = limit(motion, Limit.Kind.SUSPENSION_SLACK);
    double theta = 0.9;
    double speed = Math.sqrt(2 * motion.potential(theta, 0) / (0.045 * 0.42 * 0.42));
    double pull = 0.045 * G * (3 - 2 * Math.cos(theta));
    assertEquals(pull, slack.margin(new double[] {0, 0, speed, 0}), 1e-14);
    assertEquals(pull, slack.margin(new double[] {0, 0, 0, speed}), 1e-14);
    assertEquals(0.045 * G, slack.leastMargin(0, 0), 1e-15);
  }

  @Test
  void upperCordOfTheYokeIsSlackWhereTheLegPointsPastItsSupport() {
    Motion motion = BenchMotion.withoutMagnets(Rigs.layout(Rigs.YOKE, LossLaw.none()));
    Limit slack = limit(motion, Limit.Kind.SUSPENSION_SLACK);
    double edge = Math.atan(0.15 / 0.15);
    assertTrue(slack.leastMargin(edge - 1e-6, 0.2) > 0);
    assertTrue(slack.leastMargin(-edge - 1e-6, 0.2) < 0);
  }

  @Test
  void pullIsTheSupportsForceFromTheMotionsOwnAcceleration() {
    Random random = new Random(6);
    for (Suspension suspension : Rigs.all()) {
      LossLaw loss = new LossLaw(0.02, List.of(), 0);
      BenchLayout layout = Rigs.layout(suspension, loss);
      PointAttractor attractor = Rigs.attractor(layout);
      BenchMotion motion = Rigs.over(layout, attractor);
      Limit slack = limit(motion, Limit.Kind.SUSPENSION_SLACK);
      for (int trial = 0; trial < 50; trial++) {
        double[] state = state(random, 0.4);
        double expected = supportForce(motion, attractor, state);
        assertEquals(expected, slack.margin(state), 2e-6 * (1 + Math.abs(expected)));
      }
    }
  }

  /** The force of the support along its line: M (a - g) less magnets and loss, by differences. */
  private static double supportForce(BenchMotion motion, PointAttractor attractor, double[] s) {
    Suspension suspension = motion.layout().suspension();
    TwoAxisBody body = suspension.body();
    double[] a = new double[3];
    motion.acceleration(s[0], s[1], s[2], s[3], a);
    double h = 1e-4;
    double[] now = place(body, body.centreArm(), s, a, 0);
    double[] next = place(body, body.centreArm(), s, a, h);
    double[] last = place(body, body.centreArm(), s, a, -h);
    double[] bobNext = place(body, body.bobArm(), s, a, h);
    double[] bobLast = place(body, body.bobArm(), s, a, -h);
    double[] bob = place(body, body.bobArm(), s, a, 0);
    double[] knot = place(body, 0, s, a, 0);
    double[] line = knot;
    double length = body.axisOffset();
    if (!(suspension instanceof HookedBar)) {
      line = new double[] {bob[0] - knot[0], bob[1] - knot[1], bob[2] - knot[2]};
      length = body.bobArm();
    }
    double[] force = new double[3];
    attractor.force(bob[0], bob[1], bob[2], force);
    double pull = 0;
    for (int i = 0; i < 3; i++) {
      double acceleration = (next[i] - 2 * now[i] + last[i]) / (h * h);
      double drag = -motion.layout().loss().linear() * (bobNext[i] - bobLast[i]) / (2 * h);
      double weight = i == 2 ? -body.mass() * G : 0;
      double support = body.mass() * acceleration - weight - force[i] - drag;
      pull -= support * line[i] / length;
    }
    return suspension.slackestShare(0, 1) == Double.POSITIVE_INFINITY
        ? pull
        : Math.min(pull, body.mass() * G * shareOf(s[0]));
  }

  private static double shareOf(double beta) {
    return Rigs.YOKE.slackestShare(Math.sin(beta), Math.cos(beta));
  }

  private static double[] place(TwoAxisBody body, double arm, double[] s, double[] a, double t) {
    double beta = s[0] + t * (s[2] + t * a[0] / 2);
    double alpha = s[1] + t * (s[3] + t * a[1] / 2);
    double radius = body.axisOffset() + arm * Math.cos(beta);
    return new double[] {arm * Math.sin(beta), radius * Math.sin(alpha), -radius * Math.cos(alpha)};
  }

  @Test
  void leastMarginHoldsAtEverySpeedAndIsTheOneAtRestWithoutLoss() {
    Random random = new Random(9);
    for (Suspension suspension : Rigs.all()) {
      for (LossLaw loss : List.of(LossLaw.none(), Rigs.everyLoss(suspension))) {
        BenchLayout layout = Rigs.layout(suspension, loss);
        BenchMotion motion = Rigs.over(layout, Rigs.attractor(layout));
        Limit slack = limit(motion, Limit.Kind.SUSPENSION_SLACK);
        for (int trial = 0; trial < 2000; trial++) {
          double[] s = state(random, trial % 2 == 0 ? 6 : 0.05);
          double least = slack.leastMargin(s[0], s[1]);
          assertTrue(Double.isFinite(least));
          assertTrue(least <= slack.margin(s) + 1e-14);
          if (loss.linear() == 0) {
            assertEquals(slack.margin(new double[] {s[0], s[1], 0, 0}), least);
          }
        }
      }
    }
  }

  @Test
  void angleLimitIsSixtyDegreesAboutEitherAxis() {
    Motion motion = BenchMotion.withoutMagnets(Rigs.layout(Rigs.CORD, LossLaw.none()));
    Limit limit = limit(motion, Limit.Kind.ANGLE_LIMIT);
    assertEquals(0, limit.leastMargin(-Math.PI / 3, 0.2), 1e-15);
    assertEquals(0, limit.leastMargin(0.1, Math.PI / 3), 1e-15);
    assertEquals(Math.PI / 3 - 0.5, limit.margin(new double[] {0.3, -0.5, 9, 9}), 1e-15);
  }

  @Test
  void frictionHoldsARestingBobInsideItsZoneAndLetsItGoOutside() {
    double zone = 0.01;
    double torque = Rigs.CORD.body().firstMoment() * G * zone;
    BenchLayout layout = Rigs.layout(Rigs.CORD, new LossLaw(0, List.of(), torque));
    BenchMotion motion = BenchMotion.withoutMagnets(layout);
    assertTrue(motion.slideMargin(new double[] {0.99 * zone, 0, 0, 0}) < 0);
    assertTrue(motion.slideMargin(new double[] {0, 1.01 * zone, 0, 0}) > 0);
    assertTrue(motion.slideMargin(new double[] {0, 0, 0.01, 0}) > 0);
  }

  private static double[] state(Random random, double speed) {
    return new double[] {
      1.4 * random.nextDouble() - 0.7,
      1.4 * random.nextDouble() - 0.7,
      speed * (2 * random.nextDouble() - 1),
      speed * (2 * random.nextDouble() - 1)
    };
  }
}
