package lodeswing.analysis.comparison;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import lodeswing.core.chance.PartTolerances;
import lodeswing.core.integrate.ScalarIntegrator;
import lodeswing.core.integrate.Tolerance;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.recording.DipoleBench;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.core.rig.Release;
import org.junit.jupiter.api.Test;

/** Recordings by other code, whose truth is known. */
class ComparisonTest {

  private static final double NOISE = 5e-4;
  private static final RecordingFrame PLATE = RecordingFrame.PLATE;
  private static final Landscape BARE = Landscape.of(DipoleBench.bare().layout());

  private static ComparisonSpec spec(Recording recording) {
    return new ComparisonSpec(recording, PLATE, false, Optional.empty(), 0, Optional.empty());
  }

  private static ComparisonSpec told(Recording recording, double x, double y, double time) {
    return new ComparisonSpec(
        recording,
        PLATE,
        false,
        Optional.of(new KnownRelease(new Release(x, y, 0, 0), 1e-3, OptionalDouble.of(time))),
        0,
        Optional.empty());
  }

  /** The path is followed with no end of trust, as long as the recording. */
  static ComparisonResult compared(Landscape landscape, ComparisonSpec spec) {
    Comparison comparison = new Comparison(spec, landscape);
    Start start = comparison.start();
    double[] state = landscape.motion().toState(start.release()).orElseThrow();
    Prediction path = new Prediction(landscape, spec.recording(), start, state);
    double end = spec.recording().since(spec.recording().count() - 1) - start.time();
    ScalarIntegrator.forMotion(landscape.motion())
        .integrate(
            state,
            end,
            Tolerance.TRACE,
            step -> {
              path.look(step, step.endTime());
              return true;
            });
    return comparison.compare(start, path, OptionalDouble.empty(), share -> {});
  }

  private static Recording swing(DipoleBench bench, double seconds, double noise, long seed) {
    return bench
        .bob()
        .record(-0.07, 0.03, DipoleBench.times(seconds, 30), PLATE, noise, new Random(seed));
  }

  @Test
  void aRigThatIsAsDescribedAgreesAllAlongWithinNoise() {
    ComparisonResult found = compared(BARE, spec(swing(DipoleBench.bare(), 10, NOISE, 5)));

    assertEquals(Verdict.AGREES, found.verdict());
    assertTrue(found.hints().isEmpty());
    // Two coordinates of deviation 0.5 mm: 0.71 mm, and what half a swing's noise leaves open.
    assertEquals(Math.sqrt(2) * NOISE, found.near().rms(), 1.2e-4);
    assertEquals(NOISE, found.noise(), 1e-4);
  }

  @Test
  void unevenTimesWithGapsAgreeAsWell() {
    Random random = new Random(3);
    List<Double> kept = new ArrayList<>();
    for (double time : DipoleBench.times(8, 30)) {
      if (random.nextDouble() > 0.1) {
        kept.add(3 + time + 0.008 * (random.nextDouble() - 0.5));
      }
    }
    double[] times = kept.stream().mapToDouble(Double::doubleValue).toArray();
    Recording recording = DipoleBench.bare().bob().record(-0.07, 0.03, times, PLATE, NOISE, random);

    ComparisonResult found = compared(BARE, spec(recording));

    assertEquals(Verdict.AGREES, found.verdict());
    assertTrue(found.near().until() > 10, "by the recording's own time");
  }

  @Test
  void aCordThatIsTwoPercentLongerPartsTooSoonAndThePeriodTellsIt() {
    Recording recording =
        DipoleBench.bare()
            .longer(1.02)
            .bob()
            .record(-0.011, 0.005, DipoleBench.times(8, 30), PLATE, 5e-5, new Random(9));

    ComparisonResult found = compared(BARE, spec(recording));

    assertEquals(Verdict.SOONER, found.verdict());
    assertTrue(found.departedAt().orElseThrow() < 2, found.departedAt().toString());
    Hint hint = found.hints().get(0);
    assertEquals(Hint.Kind.PERIOD, hint.kind());
    assertEquals(8, hint.until(), 0.05);
    // Small swings: the period goes as the root of the length.
    Hint.Change change = hint.changes().get(0);
    assertEquals(Math.sqrt(1.02) - 1, change.value(), 1.5 * change.halfWidth());
    assertTrue(change.halfWidth() < 2e-4, "half width " + change.halfWidth());
  }

  @Test
  void aLengthWithinItsToleranceIsNoDifference() {
    Recording recording = swing(DipoleBench.bare().longer(1.01), 8, NOISE, 4);
    ComparisonSpec exact = spec(recording);
    var tolerant =
        new ComparisonSpec(
            recording,
            PLATE,
            false,
            Optional.empty(),
            0,
            Optional.of(new PartTolerances(0, 0, 0.01, 0)));

    assertEquals(Verdict.SOONER, compared(BARE, exact).verdict());
    assertEquals(Verdict.AGREES, compared(BARE, tolerant).verdict());
  }

  @Test
  void whatCountsAsAgreementIsNoDifference() {
    Recording recording = swing(DipoleBench.bare().longer(1.002), 4, 1e-4, 4);
    ComparisonSpec exact = spec(recording);
    var wide =
        new ComparisonSpec(recording, PLATE, false, Optional.empty(), 3e-3, Optional.empty());

    assertEquals(Verdict.SOONER, compared(BARE, exact).verdict());
    assertEquals(Verdict.AGREES, compared(BARE, wide).verdict());
  }

  @Test
  void aReversedAxisDiffersFromTheStartAndIsNamed() {
    Landscape uneven = Landscape.of(DipoleBench.uneven().layout());
    Recording recording =
        DipoleBench.uneven()
            .bob()
            .record(
                0.09,
                0.09,
                DipoleBench.times(6, 60),
                new RecordingFrame(0, 0, 0, 1, true),
                2e-4,
                new Random(4));

    ComparisonResult found = compared(uneven, spec(recording));

    assertEquals(Verdict.FROM_START, found.verdict());
    Hint hint = found.hints().get(0);
    assertEquals(Hint.Kind.AXES, hint.kind());
    assertTrue(hint.reversed());
    assertEquals(0, hint.changes().get(0).value(), Math.toRadians(0.5));

    var either = new ComparisonSpec(recording, PLATE, true, Optional.empty(), 0, Optional.empty());
    assertTrue(new Comparison(either, uneven).start().frame().mirrored());
    assertFalse(compared(uneven, either).verdict() == Verdict.FROM_START);
  }

  @Test
  void aChaoticReleasePartsNoSoonerThanForetold() {
    ComparisonTrial.Count count = ComparisonTrial.of(12, 60, NOISE, 7);

    // Of 100 such recordings none departed; 99 part, none before the horizon (ComparisonTrial).
    assertTrue(count.departed() <= 1, count.toString());
    assertTrue(count.before() <= 1, count.toString());
    assertTrue(count.parted() >= 8, count.toString());
    // Parting lies within three times the horizon in most cases.
    assertTrue(count.near() >= count.parted() - 3, count.toString());
  }

  @Test
  void aToldReleaseThatIsTheTrueOneAgrees() {
    Recording recording = swing(DipoleBench.bare(), 6, NOISE, 6);

    ComparisonResult found = compared(BARE, told(recording, -0.07, 0.03, 0));

    assertEquals(Verdict.AGREES, found.verdict());
  }

  @Test
  void aToldReleaseThatIsAnotherDiffersFromTheStart() {
    Recording recording = swing(DipoleBench.bare(), 6, NOISE, 6);

    ComparisonResult found = compared(BARE, told(recording, -0.06, 0.03, 0));

    assertEquals(Verdict.FROM_START, found.verdict());
    assertEquals(Hint.Kind.RELEASE, found.hints().get(0).kind());
  }

  @Test
  void aBobThatIsHeldAtFirstNeedsNoTimeOfItsRelease() {
    Recording free = swing(DipoleBench.bare(), 6, 0, 6);
    int held = 40;
    double[][] columns = new double[3][free.count() + held];
    Random random = new Random(8);
    for (int i = 0; i < columns[0].length; i++) {
      int at = Math.max(0, i - held);
      columns[0][i] = i / 30.0;
      columns[1][i] = free.x(at) + NOISE * random.nextGaussian();
      columns[2][i] = free.y(at) + NOISE * random.nextGaussian();
    }
    Recording recording = new Recording(columns[0], columns[1], columns[2]);

    ComparisonResult found = compared(BARE, spec(recording));
    assertEquals(Verdict.AGREES, found.verdict());
    assertTrue(found.track().first() >= held, "first " + found.track().first());

    // A told release without its time: that is found to a part of an interval.
    var told =
        new ComparisonSpec(
            recording,
            PLATE,
            false,
            Optional.of(
                new KnownRelease(new Release(-0.07, 0.03, 0, 0), 1e-3, OptionalDouble.empty())),
            0,
            Optional.empty());
    assertEquals(held / 30.0, new Comparison(told, BARE).start().time(), 0.01);
  }

  @Test
  void aBobAtRestInTheEndIsFoundAtItsRestPoint() {
    DipoleBench slow = DipoleBench.ring().slower(8);
    Landscape ring = Landscape.of(slow.layout());
    Recording recording =
        slow.bob().record(0.05, 0.02, DipoleBench.times(20, 30), PLATE, 2e-4, new Random(2));

    ComparisonResult found = compared(ring, spec(recording));

    RecordedEnd end = found.end().orElseThrow();
    assertTrue(end.belongs());
    assertEquals(0, end.distance(), 1e-3);
    int nearest = end.nearest().orElseThrow();
    assertTrue(ring.restPoints().list().get(nearest).x() > 0.03, "the one at +x");
    assertEquals(Verdict.AGREES, found.verdict());
  }
}
