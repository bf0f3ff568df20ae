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
    assertEquals("?gapMm", high.faults().get(0).pointer());
  }

  @Test
  void numberBeyondThePartsOrWithoutAnyIsSaid() {
    assertEquals(
        "is not known here: there are no parts to change",
        refused("pendulum.part.1.massG", "3").faults().get(0).detail());
  }
}
