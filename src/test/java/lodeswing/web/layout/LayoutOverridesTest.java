package lodeswing.web.layout;

import static lodeswing.web.layout.LayoutBodies.bench;
import static lodeswing.web.layout.LayoutBodies.disc;
import static lodeswing.web.layout.LayoutBodies.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.junit.jupiter.api.Test;

class LayoutOverridesTest {

  private final LayoutDocument two = read(bench("25", disc("-40", "0") + "," + disc("40", "0")));

  private LayoutDocument changed(String... namesAndValues) {
    var overrides = new LinkedHashMap<String, String>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      overrides.put(namesAndValues[i], namesAndValues[i + 1]);
    }
    return LayoutOverrides.apply(two, overrides, List.of("format", "value"));
  }

  private ProblemException refused(String... namesAndValues) {
    return assertThrows(ProblemException.class, () -> changed(namesAndValues));
  }

  @Test
  void changedFiguresGiveTheLayoutThatWouldHaveBeenPosted() {
    String posted =
        bench("30", disc("-40", "0") + "," + disc("40", "0").replace("south", "north"))
            .replace("\"bobMassG\":45", "\"bobMassG\":60.5");

    assertEquals(
        read(posted).layoutId(),
        changed("gapMm", "30", "bobMassG", "60,5", "magnet.2.poleUp", "north").layoutId());
  }

  @Test
  void everyMagnetCanBeChangedAtOnce() {
    assertEquals(
        read(bench(
                "25",
                disc("-40", "0", ",\"bottomMm\":-2") + "," + disc("40", "0", ",\"bottomMm\":-2")))
            .layoutId(),
        changed("magnet.all.bottomMm", "-2").layoutId());
  }

  @Test
  void rivalOfAChangedMemberIsDropped() {
    LayoutDocument changed = changed("bobMagnet.remanenceT", "1.2", "damping.qualityFactor", "80");

    assertEquals(1.2, changed.canonical().object("bobMagnet").number("remanenceT"));
    assertEquals(List.of("qualityFactor"), List.copyOf(damping(changed).keySet()));
  }

  private static Map<String, Object> damping(LayoutDocument document) {
    return document.canonical().object("damping").members();
  }

  @Test
  void memberThatIsNotThereYetIsMade() {
    LayoutDocument changed = changed("backing.topMm", "-4", "tolerances.gapMm", "0.5");

    assertEquals("steel", changed.canonical().object("backing").text("kind"));
    assertEquals(0.5, changed.canonical().object("tolerances").number("gapMm"));
  }

  @Test
  void nothingChangedIsTheSameDocument() {
    assertSame(two, LayoutOverrides.apply(two, Map.of(), List.of()));
  }

  @Test
  void unknownNamesAreRefusedWithTheNearestKnown() {
    ProblemException refused = refused("gabMm", "3", "magnet.2.pole", "north", "magnet.3.x", "1");

    assertEquals(ProblemCode.UNKNOWN_PARAMETER, refused.code());
    assertEquals(
        List.of(
            new Fault("?gabMm", "is not known here: did you mean gapMm?"),
            new Fault("?magnet.2.pole", "is not known here: did you mean magnet.2.poleUp?"),
            new Fault(
                "?magnet.3.x", "is not known here: there are 2 magnets, numbered from 1 to 2")),
        refused.faults());
  }

  @Test
  void faultsNameTheParameter() {
    ProblemException form = refused("gapMm", "wide", "magnet.1.diameterMm", "9000");
    assertEquals(
        List.of("?gapMm", "?magnet.1.diameterMm"),
        form.faults().stream().map(Fault::pointer).toList());

    ProblemException clash = refused("gapMm", "-5");
    assertEquals(ProblemCode.IMPOSSIBLE_LAYOUT, clash.code());
    assertEquals("?gapMm", clash.faults().get(0).pointer());
  }

  @Test
  void clashesNameTheParameterThatMadeThem() {
    ProblemException moved = refused("magnet.1.x", "30");
    assertEquals(List.of("?magnet.1.x"), moved.faults().stream().map(Fault::pointer).toList());

    ProblemException both = refused("magnet.1.x", "30", "magnet.2.y", "1");
    assertEquals("?magnet.2.y", both.faults().get(0).pointer());

    ProblemException high = refused("magnet.1.x", "0", "magnet.1.bottomMm", "23");
    assertEquals("?magnet.1.x", high.faults().get(0).pointer());

    ProblemException into = refused("gapMm", "26", "magnet.1.x", "30");
    assertEquals("?magnet.1.x", into.faults().get(0).pointer());
  }

  @Test
  void numberBeyondThePartsOrWithoutAnyIsSaid() {
    assertEquals(
        "is not known here: there are no parts to change",
        refused("pendulum.part.1.massG", "3").faults().get(0).detail());
  }

  @Test
  void alternativesInOneQueryAreTheFaultThatABodyHas() {
    ProblemException loss = refused("swingsToHalf", "10", "qualityFactor", "40");
    assertEquals(ProblemCode.INVALID_REQUEST, loss.code());
    assertEquals(
        List.of(
            new Fault(
                "?swingsToHalf",
                "has more than one of swingsToHalf or qualityFactor or"
                    + " linearNsPerM/dragCoefficient/pivotTorqueNm; keep one")),
        loss.faults());

    ProblemException strength = refused("magnet.1.remanenceT", "0.4", "magnet.1.grade", "Y30");
    assertEquals(List.of("?magnet.1.remanenceT"), pointers(strength));

    ProblemException every = refused("magnet.2.remanenceT", "0.4", "magnet.all.grade", "Y30");
    assertEquals(List.of("?magnet.2.remanenceT"), pointers(every));
  }

  private static List<String> pointers(ProblemException problem) {
    return problem.faults().stream().map(Fault::pointer).toList();
  }

  @Test
  void oneMemberUnderTwoNamesIsAFault() {
    ProblemException twice = refused("lengthMm", "400", "pendulum.lengthMm", "410");

    assertEquals(
        List.of(new Fault("?pendulum.lengthMm", "is given as lengthMm already; give it once")),
        twice.faults());
  }

  @Test
  void magnetWithAFigureOfItsOwnIsNotChangedWithAll() {
    List<String> poles = List.of("north", "south");

    assertEquals(poles, poles(changed("magnet.all.poleUp", "north", "magnet.2.poleUp", "south")));
    assertEquals(poles, poles(changed("magnet.2.poleUp", "south", "magnet.all.poleUp", "north")));
  }

  private static List<String> poles(LayoutDocument document) {
    return document.canonical().objects("magnets").stream().map(m -> m.text("poleUp")).toList();
  }

  @Test
  void faultsOfEveryStageAreToldAtOnce() {
    ProblemException refused =
        refused(
            "magnet.2.poleUp",
            "up",
            "magnet.9.x",
            "3",
            "gapMm",
            "-1",
            "lengthMm",
            "-1",
            "bobMagnet.grade",
            "N99",
            "gapmm",
            "3");

    assertEquals(ProblemCode.UNKNOWN_PARAMETER, refused.code());
    assertEquals(
        List.of(
            "?magnet.9.x", "?gapmm", "?lengthMm", "?magnet.2.poleUp", "?bobMagnet.grade", "?gapMm"),
        pointers(refused));
    assertEquals("is not known here: did you mean gapMm?", refused.faults().get(1).detail());
  }

  @Test
  void wordThatIsNotKnownHidesNoFigureThatCannotBeBuilt() {
    ProblemException refused = refused("bobMagnet.grade", "N99", "gapMm", "-1");

    assertEquals(ProblemCode.INVALID_REQUEST, refused.code());
    assertEquals(List.of("?bobMagnet.grade", "?gapMm"), pointers(refused));
    String grade = refused.faults().get(0).detail();
    assertEquals(true, grade.contains("known are ") && !grade.contains("Known"), grade);
  }

  @Test
  void clashIsNotToldWhereOtherFiguresCannotBeRead() {
    // magnet 1 stands at -40: only the figure that cannot be read says whether they clash
    ProblemException refused = refused("magnet.2.x", "-30", "magnet.1.x", "left");

    assertEquals(List.of("?magnet.1.x"), pointers(refused));
  }

  private static LayoutDocument ring(int count) {
    StringBuilder magnets = new StringBuilder();
    for (int i = 0; i < count; i++) {
      double angle = 2 * Math.PI * i / count;
      magnets
          .append(i == 0 ? "" : ",")
          .append(disc(rounded(50 * Math.cos(angle)), rounded(50 * Math.sin(angle))));
    }
    return read(bench("25", magnets.toString()));
  }

  private static String rounded(double value) {
    return Double.toString(Math.rint(value * 1e6) / 1e6 + 0.0);
  }

  @Test
  void ringGetsAnotherNumberOfMagnets() {
    LayoutDocument five = LayoutOverrides.apply(ring(3), Map.of("ring.count", "5"), List.of());

    assertEquals(ring(5).layoutId(), five.layoutId());
    assertEquals(
        ring(3).layoutId(),
        LayoutOverrides.apply(ring(3), Map.of("ring.count", "3"), List.of()).layoutId());
  }

  @Test
  void placesAreScaledTurnedAndPoled() {
    assertEquals(
        read(bench("25", disc("-60", "0") + "," + disc("60", "0"))).layoutId(),
        changed("ring.radiusMm", "60").layoutId());
    assertEquals(
        read(bench("25", disc("-40", "0") + "," + disc("0", "55"))).layoutId(),
        changed("magnet.2.radiusMm", "55", "magnet.2.angleDeg", "90").layoutId());
    assertEquals(
        read(bench("25", disc("-40", "0").replace("south", "north") + "," + disc("40", "0")))
            .layoutId(),
        changed("ring.poles", "ns").layoutId());
  }

  @Test
  void arrangementThatMakesNoSenseIsRefusedByItsName() {
    assertEquals("?ring.poles", refused("ring.poles", "up").faults().get(0).pointer());
    assertEquals("?ring.count", refused("ring.count", "2.5").faults().get(0).pointer());
    assertEquals(
        "?magnet.2.x",
        refused("magnet.2.x", "30", "magnet.2.radiusMm", "30").faults().get(0).pointer());
    assertEquals("?ring.radiusMm", refused("ring.radiusMm", "5").faults().get(0).pointer());
    assertEquals(
        "?ring.count",
        assertThrows(
                ProblemException.class,
                () ->
                    LayoutOverrides.apply(
                        read(bench("25", disc("-40", "0") + "," + disc("40", "20"))),
                        Map.of("ring.count", "3"),
                        List.of()))
            .faults()
            .get(0)
            .pointer());
  }
}
