package lodeswing.core.magnet;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import java.util.Random;
import lodeswing.core.geometry.Vec3;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * What is quick against what is exact: tables against closed forms, rules against stronger ones.
 */
class TabulatedEnergyTest {

  private static final Disc BOB = new Disc(0.0075, 0.005, 1.195);

  private static PlacedMagnet upright(Magnet magnet, double x, double y) {
    return new PlacedMagnet(magnet, new Vec3(x, y, magnet.halfHeight()), 0, Pole.SOUTH);
  }

  private static double[] pose(Random random, double height) {
    double alpha = 0.6 * (random.nextDouble() - 0.5);
    double beta = 0.6 * (random.nextDouble() - 0.5);
    double sa = Math.sin(alpha);
    double ca = Math.cos(alpha);
    double sb = Math.sin(beta);
    double cb = Math.cos(beta);
    double x = 0.1 * (random.nextDouble() - 0.5);
    double y = 0.1 * (random.nextDouble() - 0.5);
    return new double[] {x, y, height, cb, -sb * sa, sb * ca, 0, -ca, -sa, sb, cb * sa, -cb * ca};
  }

  @ParameterizedTest
  @ValueSource(doubles = {0.012, 0.02, 0.04, 0.2})
  void tableAgreesWithTheClosedForms(double height) {
    MagnetArray plate =
        new MagnetArray(
            List.of(
                upright(new Disc(0.0125, 0.005, 0.385), 0.03, 0.01),
                upright(new Ring(0.004, 0.01, 0.004, 1.1), -0.02, 0.01)),
            Optional.of(new SteelBacking(-0.002)));
    BobEnergy quick = BobEnergy.of(BOB, Pole.NORTH, plate);
    BobEnergy exact = BobEnergy.exact(BOB, Pole.NORTH, plate);
    double[] work = new double[BobEnergy.WORK_LENGTH];
    Random random = new Random(7);
    double energyScale = 0;
    double forceScale = 0;
    double energyError = 0;
    double forceError = 0;
    for (int i = 0; i < 40; i++) {
      double[] pose = pose(random, height);
      double expected = exact.energyAndLoad(pose, work);
      double[] load = work.clone();
      double value = quick.energyAndLoad(pose, work);
      assertEquals(value, quick.energy(pose, work.clone()), 1e-12 * Math.abs(expected) + 1e-16);
      energyScale = Math.max(energyScale, Math.abs(expected));
      energyError = Math.max(energyError, Math.abs(value - expected));
      for (int k = 0; k < 3; k++) {
        forceScale = Math.max(forceScale, Math.abs(load[k]));
        forceError = Math.max(forceError, Math.abs(load[k] - work[k]));
      }
    }
    assertTrue(energyError <= 1e-10 * energyScale, "energy off by " + energyError / energyScale);
    assertTrue(forceError <= 1e-8 * forceScale, "force off by " + forceError / forceScale);
  }

  /** The rule that the distance picks, against the plain product of 60 circles and 240 spokes. */
  @Test
  void pickedRuleIsGoodToABillionthOfThePairsEnergy() {
    Disc source = new Disc(0.0125, 0.005, 0.385);
    SourceKernel kernel = new TabulatedKernel(source);
    BobFaces faces = BobFaces.ofAnnulus(0, BOB.radius(), BOB.halfHeight());
    FaceRule strong = FaceRule.annulus(0, BOB.radius(), BOB.radius(), 240, 240 * Math.log(2));
    Random random = new Random(11);
    double[] work = new double[Work.LENGTH];
    for (int i = 0; i < 60; i++) {
      double height = 0.015 + 0.05 * random.nextDouble();
      double[] pose = pose(random, height);
      System.arraycopy(pose, 0, work, Work.POSE, pose.length);
      double edge = kernel.edgeDistance(pose[0], pose[1], pose[2]);
      FaceRule picked = faces.rule(source, edge, height - source.halfHeight(), pose[11]);
      double exact = kernel.faceIntegral(strong, BOB.halfHeight(), work);
      double value = kernel.faceIntegral(picked, BOB.halfHeight(), work);
      double distance = Math.sqrt(pose[0] * pose[0] + pose[1] * pose[1] + height * height);
      double pair = BOB.volume() * source.moment() / (2 * Math.PI * Math.pow(distance, 3));
      assertEquals(exact, value, 1e-9 * pair);
    }
  }
}
