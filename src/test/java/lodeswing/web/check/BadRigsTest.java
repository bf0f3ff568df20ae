package lodeswing.web.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import lodeswing.analysis.check.Change;
import lodeswing.analysis.check.CheckCode;
import lodeswing.analysis.check.Finding;
import lodeswing.analysis.check.Verdict;
import lodeswing.web.layout.LayoutDocument;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * Bad rigs: each is found, mended by the change that its line asks for, and the mended rig passes
 * the line; a step less does not.
 */
class BadRigsTest {

  private static final String LOOSE =
      "{\"shape\":\"round\",\"widthMm\":200,\"frictionCoefficient\":0.3}";

  static Stream<Arguments> rigs() {
    return Stream.of(
        rig(
            "bob too low at rest",
            Rigs.sample("turned-centre", "/gapMm", "5.8"),
            CheckCode.CLEARANCE_AT_REST,
            "/gapMm"),
        rig(
            "bob too low on its way",
            Rigs.sample("three-stations", "/gapMm", "4.6"),
            CheckCode.CLEARANCE_ON_THE_WAY,
            "/gapMm"),
        rig(
            "bob too high",
            Rigs.sample("three-stations", "/gapMm", "70"),
            CheckCode.PULL_AGAINST_WEIGHT,
            "/gapMm"),
        rig(
            "bob slowed too much",
            Rigs.sample("three-stations", "/damping", "{\"pivotTorqueNm\":0.06}"),
            CheckCode.PULL_AGAINST_SLOWING,
            "/damping/pivotTorqueNm"),
        rig("bar too light", lightBar(), CheckCode.WEIGHT_FOR_THE_PLATE, "/pendulum/parts/1/massG"),
        rig(
            "bob too strong",
            Rigs.sample(
                "three-stations",
                "/bobMagnet/grade",
                "\"N52\"",
                "/bobMagnet/heightMm",
                "20",
                "/bobMagnet/diameterMm",
                "18",
                "/magnets/1/grade",
                "\"N52\""),
            CheckCode.STICKING,
            "/bobMagnet/heightMm"),
        rig(
            "hook lifts off over a magnet that repels",
            Rigs.sample("kitchen-drawer", "/bobMagnet/grade", "\"N52\"", "/magnets/0", repelling()),
            CheckCode.SUSPENSION_SLACK,
            "/pendulum/parts/1/diameterMm"),
        rig(
            "hook made for less",
            Rigs.sample("kitchen-drawer", "/hook/ratedLoadN", "1"),
            CheckCode.HOOK_LOAD,
            "/hook/ratedLoadN"),
        rig(
            "hook too shallow",
            Rigs.sample("kitchen-drawer", "/hook", "{\"openingMm\":20,\"depthMm\":1}"),
            CheckCode.HOOK_DEPTH,
            "/hook/depthMm"),
        rig(
            "magnets that jump together",
            Rigs.sample(
                "three-stations",
                "/plate",
                LOOSE,
                "/magnets/0/poleUp",
                "\"north\"",
                "/magnets/0/x",
                "-22.5",
                "/magnets/0/y",
                "11",
                "/magnets/0/grade",
                "\"N42\"",
                "/magnets/1/grade",
                "\"N42\""),
            CheckCode.MAGNETS_SLIDE,
            ""),
        rig(
            "plate too smooth",
            Rigs.sample(
                "three-stations",
                "/plate",
                "{\"shape\":\"round\",\"widthMm\":200,\"frictionCoefficient\":0.05}"),
            CheckCode.MAGNETS_SLIDE,
            "/plate/frictionCoefficient"),
        rig(
            "bob that lifts the magnets",
            Rigs.sample("three-stations", "/plate", LOOSE),
            CheckCode.MAGNETS_LIFT,
            "/gapMm"),
        rig(
            "stand too narrow",
            Rigs.sample("heavy-bar", "/stand/baseMm", "120", "/stand/tiltDeg", "0.5"),
            CheckCode.STAND_TIPS,
            "/stand/baseMm"),
        rig(
            "stand that leans",
            Rigs.sample("heavy-bar", "/stand/tiltDeg", "-1.5"),
            CheckCode.STAND_LEANS,
            "/stand/tiltDeg"));
  }

  private static Arguments rig(
      String name, LayoutDocument document, CheckCode code, String pointer) {
    return Arguments.of(name, document, code, pointer);
  }

  /** A light bar over the twenty-seven magnets. */
  static LayoutDocument lightBar() {
    return Rigs.sample(
        "crowded-shelf",
        "/pendulum/parts/0",
        "{\"kind\":\"rod\",\"fromTopMm\":0,\"diameterMm\":4,\"lengthMm\":380,\"material\":\"beech\"}",
        "/pendulum/parts/1",
        "{\"kind\":\"disc\",\"fromTopMm\":380,\"diameterMm\":25,\"heightMm\":5,\"massG\":12}");
  }

  private static String repelling() {
    return "{\"x\":32,\"y\":0,\"shape\":\"disc\",\"diameterMm\":18,\"heightMm\":10,"
        + "\"grade\":\"N52\",\"poleUp\":\"north\"}";
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("rigs")
  void badRigIsFoundAndMendedByTheChangeAskedFor(
      String name, LayoutDocument document, CheckCode code, String pointer) {
    Finding bad = Rigs.line(document, code);
    assertEquals(Verdict.FAILS, bad.measure().verdict(), bad.toString());
    Change change = bad.change().orElseThrow(() -> new AssertionError(bad.toString()));
    assertTrue(change.pointer().startsWith(pointer), change.toString());

    double radius = CheckRequest.usualRadius(document);
    Finding mended = Rigs.line(Rigs.mended(document, change), code, radius);
    assertEquals(Verdict.GOOD, mended.measure().verdict(), change + " gives " + mended);

    if (change instanceof Change.OfFigure figure) {
      double step = new LayoutWorkshopSteps(document).of(figure.pointer());
      double less = figure.to() - Math.signum(figure.to() - figure.from().orElseThrow()) * step;
      Change tried = new Change.OfFigure(figure.pointer(), figure.from(), less);
      Finding before = Rigs.line(Rigs.mended(document, tried), code, radius);
      assertNotEquals(Verdict.GOOD, before.measure().verdict(), tried + " would do");
    }
  }

  @Test
  void badRigsAreMoreThanTwelve() {
    assertTrue(rigs().count() >= 12);
  }
}
