package lodeswing.analysis.fit;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import lodeswing.analysis.fit.FitParameter.Role;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.loss.LossLaw;
import lodeswing.core.magnet.BobEnergy;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.MagnetArray;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.core.magnet.Pole;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.MagnetEnergy;
import lodeswing.core.motion.Motion;
import lodeswing.core.recording.CartesianBob;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.core.regression.FreeParameter;
import lodeswing.core.regression.Regression;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.Cord;
import org.junit.jupiter.api.Test;

/** Recordings by other code, whose truth is known. */
class PathFitTest {

  private static final double LENGTH = 0.42;
  private static final double MASS = 0.045;
  private static final double HEIGHT = 0.03;
  private static final double BOB = 0.84;
  private static final double[][] PLATE = {
    {0.045, 0, 0.0025, -0.75}, {-0.0225, 0.03897, 0.0025, -0.75}, {-0.0225, -0.03897, 0.0025, -0.75}
  };
  private static final double GRAVITY = 9.80665;

  /** Swings to half: 25. */
  private static final double LOSS =
      MASS * 2 * Math.log(2) / (25 * 2 * Math.PI * Math.sqrt(LENGTH / GRAVITY));

  private static Optional<Motion> rig(double loss, double length, double[][] plate) {
    var bob = new Dipole(BOB);
    List<PlacedMagnet> magnets = new ArrayList<>();
    for (double[] one : plate) {
      Pole up = one[3] > 0 ? Pole.NORTH : Pole.SOUTH;
      magnets.add(
          new PlacedMagnet(new Dipole(Math.abs(one[3])), new Vec3(one[0], one[1], one[2]), 0, up));
    }
    var layout =
        new BenchLayout(
            new Cord(length, MASS),
            Optional.of(new BenchLayout.BobMagnet(bob, Pole.NORTH)),
            HEIGHT,
            magnets,
            Optional.empty(),
            GRAVITY,
            new LossLaw(loss, List.of(), 0));
    if (plate.length == 0) {
      return Optional.of(BenchMotion.withoutMagnets(layout));
    }
    BobEnergy energy =
        BobEnergy.of(bob, Pole.NORTH, new MagnetArray(layout.magnets(), layout.backing()));
    var exact = new MagnetEnergy(energy, layout.suspension().body(), layout.axisHeight());
    return Optional.of(BenchMotion.amongMagnets(layout, exact, (beta, alpha) -> 0));
  }

  private static FitParameter free(Role role, String name, double start, double scale) {
    return new FitParameter(role, FreeParameter.unbounded(name, start, scale), true, false);
  }

  private static FitParameter fixed(Role role, String name, double value) {
    return new FitParameter(role, FreeParameter.unbounded(name, value, 1), false, true);
  }

  /** With a turn that is thought to be near 0. */
  private static FitSpec nearlyTurned(FitSpec spec) {
    List<FitParameter> parameters = new ArrayList<>(spec.parameters());
    FitParameter turn = parameters.get(Role.TURN.place());
    parameters.set(Role.TURN.place(), new FitParameter(Role.TURN, turn.value(), true, true));
    return new FitSpec(
        spec.recording(),
        parameters,
        spec.mirroring(),
        spec.family(),
        spec.naturalRate(),
        spec.spacing(),
        spec.anchors(),
        spec.mostPaths());
  }

  private static FitSpec spec(Recording recording, double[][] plate, boolean framed) {
    List<FitParameter> parameters = new ArrayList<>();
    parameters.add(free(Role.X, "x", 0, 0.01));
    parameters.add(free(Role.Y, "y", 0, 0.01));
    parameters.add(free(Role.VX, "vx", 0, 0.01));
    parameters.add(free(Role.VY, "vy", 0, 0.01));
    parameters.add(fixed(Role.RELEASE_TIME, "releaseTimeS", 0));
    for (Role role : List.of(Role.ORIGIN_X, Role.ORIGIN_Y, Role.TURN)) {
      parameters.add(framed ? free(role, role.name(), 0, 0.01) : fixed(role, role.name(), 0));
    }
    parameters.add(fixed(Role.SCALE, "scale", 1));
    parameters.add(
        new FitParameter(
            Role.FIGURE, new FreeParameter("loss", 1.5 * LOSS, LOSS, 0, 1), true, false));
    parameters.add(
        new FitParameter(
            Role.FIGURE, new FreeParameter("length", 0.43, 0.01, 0.1, 1), true, false));
    return new FitSpec(
        recording,
        parameters,
        FitSpec.Mirroring.NONE,
        figures -> rig(figures.get(0), figures.get(1), plate),
        Math.sqrt(GRAVITY / LENGTH),
        0.078,
        List.of(),
        100_000);
  }

  private static double[] times(double duration, double rate) {
    double[] times = new double[(int) (duration * rate) + 1];
    for (int i = 0; i < times.length; i++) {
      times[i] = i / rate;
    }
    return times;
  }

  private static CartesianBob bob(double[][] plate) {
    return new CartesianBob(LENGTH, MASS, LOSS, HEIGHT, BOB, plate);
  }

  /** North down means a moment along the cord, away from the pivot. */
  private static CartesianBob amongMagnets() {
    return bob(PLATE);
  }

  @Test
  void givesBackLossLengthOriginAndTurnOfARecordingByOtherCode() {
    double turn = Math.toRadians(7);
    var frame = new RecordingFrame(0.012, -0.007, turn, 1, false);
    Recording recording =
        amongMagnets().record(-0.07, 0.03, times(10, 30), frame, 5e-4, new Random(11));

    FitResult fit = new PathFit(nearlyTurned(spec(recording, PLATE, true)), share -> {}).run();

    assertEquals(LOSS, fit.values().get(9), 0.05 * LOSS);
    assertEquals(LENGTH, fit.values().get(10), 0.005 * LENGTH);
    assertEquals(turn, fit.frame().turn(), Math.toRadians(0.5));
    assertEquals(0.012, fit.frame().originX(), 5e-4);
    assertEquals(-0.007, fit.frame().originY(), 5e-4);
    assertEquals(5e-4, fit.regression().residualRms(), 5e-5);
    assertTrue(Math.abs(fit.neighbourCorrelation()) < 0.2, "residuals run on");
    // Four swings among the magnets and more: beyond, its own errors grow to half a spacing soon.
    assertTrue(fit.used() > 120, "used " + fit.used());
    assertEquals(FitResult.End.HORIZON, fit.end());
    assertTruthCovered(fit, new double[] {-0.07, 0.03, 0, 0, 0.012, -0.007, turn, LOSS, LENGTH});
  }

  /** More than three of nine intervals of 95 % miss by chance once in some 1,600 recordings. */
  private static void assertTruthCovered(FitResult fit, double[] truth) {
    Regression found = fit.regression();
    int covered = 0;
    for (int k = 0; k < truth.length; k++) {
      covered += Math.abs(found.value(k) - truth[k]) <= found.halfWidth(k) ? 1 : 0;
    }
    assertTrue(covered >= truth.length - 3, covered + " of " + truth.length + " covered");
  }

  @Test
  void saysWhereNoRigOfTheFamilyFollows() {
    double[][] stronger = new double[PLATE.length][];
    for (int i = 0; i < PLATE.length; i++) {
      stronger[i] = PLATE[i].clone();
      stronger[i][3] *= 1.5;
    }
    Recording recording =
        bob(stronger).record(-0.07, 0.03, times(8, 30), RecordingFrame.PLATE, 5e-4, new Random(3));

    FitResult fit = new PathFit(spec(recording, PLATE, false), share -> {}).run();

    assertEquals(FitResult.End.DISAGREES, fit.end());
    assertTrue(fit.used() < recording.count() / 2, "used " + fit.used());
  }

  @Test
  void aTurnThatNothingShowsIsToldAsUndetermined() {
    Recording recording =
        bob(new double[0][])
            .record(-0.07, 0.03, times(4, 30), RecordingFrame.PLATE, 5e-4, new Random(8));
    FitSpec asked = spec(recording, new double[0][], true);

    FitResult fit = new PathFit(asked, share -> {}).run();

    assertTrue(fit.regression().undetermined().contains("TURN"));
    assertTrue(fit.regression().determined(7), "the loss is told");
    assertEquals(LENGTH, fit.values().get(10), 0.005 * LENGTH);
  }

  @Test
  void intervalsCoverTheTruthAsOftenAsTheySay() {
    IntervalCoverage.Share share = IntervalCoverage.of(60, 4711);

    // 120 intervals of 95 %: 114 on average, deviation 2.4.
    assertTrue(share.covered() >= 105, share.toString());
    assertTrue(share.asked() == 120, share.toString());
  }

  /** A recording of a free swing, with gaps and uneven times. */
  static Recording gappy(Random random) {
    List<Double> kept = new ArrayList<>();
    for (double time : times(4, 30)) {
      if (time == 0 || random.nextDouble() > 0.1) {
        kept.add(time + (time == 0 ? 0 : 0.008 * (random.nextDouble() - 0.5)));
      }
    }
    double[] times = kept.stream().mapToDouble(Double::doubleValue).toArray();
    return bob(new double[0][]).record(-0.07, 0.03, times, RecordingFrame.PLATE, 5e-4, random);
  }

  /** Whether a fit's intervals hold loss and length. */
  static int covered(Recording recording) {
    FitResult fit = new PathFit(spec(recording, new double[0][], false), share -> {}).run();
    Regression found = fit.regression();
    int covered = 0;
    covered += Math.abs(found.value(4) - LOSS) <= found.halfWidth(4) ? 1 : 0;
    covered += Math.abs(found.value(5) - LENGTH) <= found.halfWidth(5) ? 1 : 0;
    return covered;
  }

  /**
   * A recording whose axes are turned by 100 degrees, reversed and elsewhere, nothing of it told.
   */
  static void reversedAxesAreFound() {
    double[] times = times(6, 30);
    var frame = new RecordingFrame(-0.02, 0.015, Math.toRadians(-100), 1, true);
    Recording recording = amongMagnets().record(0.06, 0.045, times, frame, 5e-4, new Random(5));
    FitSpec asked = spec(recording, PLATE, true);
    var unknown =
        new FitSpec(
            recording,
            asked.parameters(),
            FitSpec.Mirroring.UNKNOWN,
            asked.family(),
            asked.naturalRate(),
            asked.spacing(),
            asked.anchors(),
            asked.mostPaths());

    FitResult fit = new PathFit(unknown, share -> {}).run();

    assertEquals(LENGTH, fit.values().get(10), 0.005 * LENGTH);
    assertEquals(5e-4, fit.regression().residualRms(), 5e-5);
    // Three like magnets in a ring: a third of a turn, or a mirror, shows the same path.
    double[] seen = new double[2];
    double[] again = new double[2];
    frame.toPlan(0.01, 0.02, seen);
    fit.frame().toPlan(0.01, 0.02, again);
    assertEquals(Math.hypot(seen[0], seen[1]), Math.hypot(again[0], again[1]), 1e-3);
  }
}
