package lodeswing.web.layout;

import static lodeswing.web.layout.LayoutBodies.BOB;
import static lodeswing.web.layout.LayoutBodies.CORD;
import static lodeswing.web.layout.LayoutBodies.SWINGS;
import static lodeswing.web.layout.LayoutBodies.bench;
import static lodeswing.web.layout.LayoutBodies.disc;
import static lodeswing.web.layout.LayoutBodies.faults;
import static lodeswing.web.layout.LayoutBodies.read;
import static lodeswing.web.layout.LayoutBodies.with;
import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lodeswing.web.problem.Fault;
import org.junit.jupiter.api.Test;

class ClearanceReviewTest {

  private static final String BLOCK =
      "{\"x\":%s,\"y\":0,\"shape\":\"block\",\"lengthMm\":40,\"widthMm\":20,\"heightMm\":10,"
          + "\"turnDeg\":%s,\"grade\":\"Y30\",\"poleUp\":\"south\"}";
  private static final String RING =
      "{\"x\":0,\"y\":0,\"shape\":\"ring\",\"diameterMm\":60,\"innerDiameterMm\":%s,"
          + "\"heightMm\":5,\"grade\":\"Y30\",\"poleUp\":\"south\"}";
  private static final String SPHERE =
      "{\"x\":%s,\"y\":%s,\"shape\":\"sphere\",\"diameterMm\":10,\"bottomMm\":%s,"
          + "\"grade\":\"N35\",\"poleUp\":\"south\"}";

  private static String oneFault(String json) {
    List<Fault> faults = faults(json);
    assertEquals(1, faults.size(), faults::toString);
    return faults.get(0).pointer() + " " + faults.get(0).detail();
  }

  private static List<String> warnings(String json) {
    return read(json).warnings().stream().map(w -> w.code() + " " + w.detail()).toList();
  }

  private static String overlap(String first, String second) {
    return oneFault(bench("60", first + "," + second));
  }

  private static String into(String millimetres) {
    return "/magnets/1 magnet 2 reaches "
        + millimetres
        + " mm into magnet 1; move them apart by that much";
  }

  @Test
  void discsOverlapByWhatTheirDistanceLacks() {
    assertEquals(into("1.5"), overlap(disc("40", "0"), disc("63.5", "0")));
    assertEquals(into("2"), overlap(disc("40", "0"), disc("41", "0", ",\"bottomMm\":3")));
  }

  @Test
  void discsThatJustTouchAreWarnedAbout() {
    assertEquals(
        List.of("magnets-touch Magnet 2 just touches magnet 1."),
        warnings(bench("25", disc("40", "0") + "," + disc("65", "0"))));
    assertEquals(List.of(), warnings(bench("25", disc("40", "0") + "," + disc("65.1", "0"))));
  }

  @Test
  void discInsideARingsHoleNeedsRoom() {
    assertEquals(List.of(), warnings(bench("25", RING.formatted("26") + "," + disc("0", "0"))));
    assertEquals(into("0.5"), overlap(RING.formatted("26"), disc("1", "0")));
  }

  @Test
  void blocksAreMeasuredAsTheyAreTurned() {
    assertEquals(into("5"), overlap(BLOCK.formatted("40", "0"), BLOCK.formatted("75", "0")));
    assertEquals(
        List.of(),
        warnings(bench("25", BLOCK.formatted("40", "90") + "," + BLOCK.formatted("75", "0"))));
    assertEquals(into("2.5"), overlap(BLOCK.formatted("40", "0"), disc("70", "0")));
  }

  @Test
  void spheresReachIntoOneAnotherAndIntoDiscs() {
    assertEquals(
        into("2"), overlap(SPHERE.formatted("40", "0", "0"), SPHERE.formatted("48", "0", "0")));
    assertEquals(into("1"), overlap(disc("40", "0"), SPHERE.formatted("40", "0", "4")));
    assertEquals(into("1"), overlap(BLOCK.formatted("40", "0"), SPHERE.formatted("40", "14", "0")));
  }

  @Test
  void bobInsideAMagnetOrThePlateIsRefused() {
    assertEquals(
        "/gapMm the bob at rest would reach 2 mm into magnet 1; make the gap larger or move the"
            + " magnet",
        oneFault(bench("3", disc("0", "0"))));
    assertEquals(
        "/gapMm the bob would hang 3 mm inside the plate at rest", oneFault(bench("-3", "")));
  }

  @Test
  void bobNearAMagnetOrThePlateIsWarnedAbout() {
    assertEquals(
        List.of("bob-near-magnet At rest the bob is only 0.3 mm from magnet 1."),
        warnings(bench("5.3", disc("0", "0"))));
    assertEquals(
        List.of("bob-near-plate The bob hangs only 0.2 mm over the plate at rest."),
        warnings(bench("0.2", "")));
  }

  @Test
  void magnetThatReachesIntoTheSteelIsRefused() {
    String steel = ",\"backing\":{\"kind\":\"steel\",\"topMm\":-3}";

    assertEquals(
        "/magnets/0/bottomMm magnet 1 reaches 2 mm into the steel, whose upper face is at -3 mm",
        oneFault(bench("25", disc("40", "0", ",\"bottomMm\":-5"), steel)));
    assertEquals(List.of(), warnings(bench("25", disc("40", "0", ",\"bottomMm\":-3"), steel)));
  }

  @Test
  void bobInsideTheSteelIsRefused() {
    assertEquals(
        "/gapMm the bob would hang 5 mm inside the steel",
        oneFault(bench("25", "", ",\"backing\":{\"kind\":\"steel\",\"topMm\":30}")));
  }

  @Test
  void magnetBeyondThePlateOrTheSwingIsWarnedAbout() {
    assertEquals(
        List.of("magnet-off-plate Magnet 1 reaches 2.5 mm beyond the plate's edge."),
        warnings(bench("25", disc("90", "0"), ",\"plate\":{\"shape\":\"round\",\"widthMm\":200}")));
    assertEquals(
        List.of(),
        warnings(
            bench("25", disc("70", "70"), ",\"plate\":{\"shape\":\"square\",\"widthMm\":200}")));
    assertEquals(
        List.of(
            "magnet-beyond-swing Magnet 1 stands 400 mm from the middle; the bob swings 363.73 mm"
                + " at most."),
        warnings(bench("25", disc("400", "0"))));
  }

  @Test
  void standTooLowAndBobTooLightAreWarnedAbout() {
    assertEquals(
        List.of(
            "stand-too-low The pivot must be 447.5 mm over the plate; the stand is 47.5 mm too"
                + " low."),
        warnings(bench("25", "", ",\"stand\":{\"heightMm\":400}")));
    assertEquals(
        List.of(
            "bob-lighter-than-magnet The whole bob is said to weigh 5 g, but its magnet alone"
                + " weighs about 6.6 g."),
        warnings(with(CORD.replace("45", "5"), BOB, "25", "", SWINGS)));
  }

  @Test
  void everyClashIsReportedAtOnce() {
    List<Fault> faults =
        faults(
            bench(
                "2",
                disc("0", "0") + "," + disc("10", "0", ",\"bottomMm\":-5"),
                ",\"backing\":{\"kind\":\"steel\",\"topMm\":-3}"));

    assertEquals(
        List.of("/magnets/1/bottomMm", "/gapMm"),
        faults.stream().map(Fault::pointer).distinct().toList());
  }
}
