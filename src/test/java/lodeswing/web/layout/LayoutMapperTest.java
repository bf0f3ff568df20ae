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
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Optional;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.magnet.Block;
import lodeswing.core.magnet.Dipole;
import lodeswing.core.magnet.Disc;
import lodeswing.core.magnet.Grade;
import lodeswing.core.magnet.Pole;
import lodeswing.core.magnet.Ring;
import lodeswing.core.magnet.Sphere;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.suspension.Cord;
import lodeswing.core.suspension.HookedBar;
import lodeswing.core.suspension.Yoke;
import lodeswing.web.problem.Fault;
import org.junit.jupiter.api.Test;

class LayoutMapperTest {

  private static BenchLayout benchOf(String json) {
    return assertInstanceOf(BenchLayout.class, read(json).layout());
  }

  private static void near(Vec3 expected, Vec3 actual) {
    assertEquals(0, expected.minus(actual).length(), 1e-15);
  }

  @Test
  void cordAndDiscComeInMetresAndKilograms() {
    BenchLayout layout = benchOf(bench("25", disc("45", "-10", ",\"bottomMm\":-2")));

    assertEquals(new Cord(0.42, 0.045), layout.suspension());
    assertEquals(0.025, layout.gap());
    assertEquals(9.80665, layout.gravity());
    double ferrite = Grade.find("Y30").orElseThrow().remanence();
    double neodymium = Grade.find("N35").orElseThrow().remanence();
    assertEquals(new Disc(0.0125, 0.005, ferrite), layout.magnets().get(0).magnet());
    near(new Vec3(0.045, -0.01, 0.0005), layout.magnets().get(0).centre());
    assertEquals(Pole.SOUTH, layout.magnets().get(0).poleUp());
    var bob = layout.bob().orElseThrow();
    assertEquals(new Disc(0.0075, 0.005, neodymium), bob.magnet());
    assertEquals(Pole.NORTH, bob.poleDown());
    assertEquals(0.0275, layout.bobCentreHeight(), 1e-15);
  }

  @Test
  void everyShapeOfMagnetIsRead() {
    BenchLayout layout =
        benchOf(
            bench(
                "25",
                "{\"x\":60,\"y\":0,\"shape\":\"ring\",\"diameterMm\":30,\"innerDiameterMm\":12,"
                    + "\"heightMm\":6,\"remanenceT\":0.4,\"poleUp\":\"north\"},"
                    + "{\"x\":-60,\"y\":0,\"shape\":\"block\",\"lengthMm\":40,\"widthMm\":20,"
                    + "\"heightMm\":10,\"turnDeg\":90,\"remanenceT\":0.4,\"poleUp\":\"north\"},"
                    + "{\"x\":0,\"y\":60,\"shape\":\"sphere\",\"diameterMm\":12,\"bottomMm\":-6,"
                    + "\"remanenceT\":1.2,\"poleUp\":\"south\"},"
                    + "{\"x\":0,\"y\":-60,\"shape\":\"dipole\",\"momentAm2\":0.8,\"bottomMm\":3,"
                    + "\"poleUp\":\"south\"}"));

    var magnets = layout.magnets();
    assertEquals(new Ring(0.006, 0.015, 0.006, 0.4), magnets.get(0).magnet());
    assertEquals(new Block(0.04, 0.02, 0.01, 0.4), magnets.get(1).magnet());
    assertEquals(Math.PI / 2, magnets.get(1).turn());
    assertEquals(new Sphere(0.006, 1.2), magnets.get(2).magnet());
    near(new Vec3(0, 0.06, 0), magnets.get(2).centre());
    assertEquals(new Dipole(0.8), magnets.get(3).magnet());
    near(new Vec3(0, -0.06, 0.003), magnets.get(3).centre());
  }

  @Test
  void yokeKeepsSpanDropAndLeg() {
    String yoke =
        "{\"kind\":\"yoke\",\"yokeSpanMm\":300,\"yokeDropMm\":250,\"legMm\":200,\"bobMassG\":60}";

    BenchLayout layout = benchOf(with(yoke, BOB, "26", "", SWINGS));

    assertEquals(new Yoke(0.3, 0.25, 0.2, 0.06), layout.suspension());
  }

  /** Mass of the parts by hand: volume times density (MMPA 0100-00, EN 1991-1-1 for steel). */
  @Test
  void barEndsInTheBobMagnetRightBelowItsLowestPart() {
    String bar =
        "{\"kind\":\"bar\",\"hookOffsetMm\":4,\"parts\":["
            + "{\"kind\":\"rod\",\"fromTopMm\":10,\"diameterMm\":10,\"lengthMm\":300,"
            + "\"material\":\"steel\"},"
            + "{\"kind\":\"nut\",\"fromTopMm\":310,\"acrossFlatsMm\":13,\"holeDiameterMm\":8,"
            + "\"heightMm\":6,\"massG\":5},"
            + "{\"kind\":\"point\",\"fromTopMm\":5,\"massG\":2}]}";

    BenchLayout layout = benchOf(with(bar, BOB, "20", "", SWINGS));

    var hooked = assertInstanceOf(HookedBar.class, layout.suspension());
    assertEquals(0.004, hooked.hookOffset());
    assertEquals(0.3185, hooked.bobArm(), 1e-15);
    double rod = 7850 * Math.PI / 4 * 0.01 * 0.01 * 0.3;
    double magnet = 7500 * Math.PI / 4 * 0.015 * 0.015 * 0.005;
    assertEquals(rod + 0.005 + 0.002 + magnet, hooked.body().mass(), 1e-12);
    assertEquals(
        rod * 0.16 + 0.005 * 0.313 + 0.002 * 0.005 + magnet * 0.3185,
        hooked.body().firstMoment(),
        1e-12);
  }

  @Test
  void lossComesFromSwingsQualityOrParts() {
    var swings = benchOf(bench("25", ""));
    double period = 2 * Math.PI * Math.sqrt(0.42 / 9.80665);
    double gamma = 2 * Math.log(2) / (25 * period);
    assertEquals(gamma * 0.045, swings.loss().linear(), 1e-12);

    var quality = benchOf(with(CORD, BOB, "25", "", "{\"qualityFactor\":100}"));
    assertEquals(2 * Math.PI / (100 * period) * 0.045, quality.loss().linear(), 1e-12);

    var parts =
        benchOf(
            with(
                CORD,
                BOB,
                "25",
                "",
                "{\"linearNsPerM\":0.01,\"dragCoefficient\":1.1,\"pivotTorqueNm\":0.0001}"));
    assertEquals(0.01, parts.loss().linear());
    assertEquals(0.0001, parts.loss().pivotTorque());
    assertEquals(1, parts.loss().drag().size());
    assertEquals(0.5 * 1.204 * 1.1 * 0.015 * 0.005, parts.loss().drag().get(0).coefficient(), 1e-9);
  }

  @Test
  void stockIsPlacedAndOverriddenByThePlacing() {
    String stock =
        ",\"stock\":{\"puck\":{\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,"
            + "\"grade\":\"Y30\",\"poleUp\":\"south\",\"bottomMm\":-1}}";

    LayoutDocument document =
        read(
            bench(
                "25",
                "{\"x\":40,\"y\":0,\"of\":\"puck\",\"label\":\"Tide\"},"
                    + "{\"x\":-40,\"y\":0,\"of\":\"puck\",\"poleUp\":\"north\",\"bottomMm\":0}",
                stock));

    var layout = assertInstanceOf(BenchLayout.class, document.layout());
    assertEquals(List.of(Optional.of("Tide"), Optional.empty()), document.labels());
    assertEquals(Pole.SOUTH, layout.magnets().get(0).poleUp());
    assertEquals(0.0015, layout.magnets().get(0).centre().z(), 1e-15);
    assertEquals(Pole.NORTH, layout.magnets().get(1).poleUp());
    assertEquals(0.0025, layout.magnets().get(1).centre().z(), 1e-15);
  }

  @Test
  void patternsPlaceMagnetsInOrderWithPolesAndLabels() {
    String small =
        "\"magnet\":{\"shape\":\"disc\",\"diameterMm\":8,\"heightMm\":3,\"grade\":\"N35\"}";
    String patterns =
        ",\"patterns\":[{\"kind\":\"ring\",\"count\":3,\"radiusMm\":45,"
            + small
            + ",\"poles\":[\"south\",\"north\"],\"labels\":[\"Tide\",\"Dune\"]},"
            + "{\"kind\":\"grid\",\"columns\":3,\"rows\":2,\"spacingMm\":10,\"rowSpacingMm\":20,"
            + "\"x\":200,"
            + small
            + ",\"poles\":[\"south\"]},"
            + "{\"kind\":\"hex\",\"rings\":2,\"spacingMm\":12,\"y\":200,"
            + small
            + ",\"poles\":[\"south\"]},"
            + "{\"kind\":\"line\",\"count\":3,\"x\":-200,\"y\":0,\"toX\":-200,\"toY\":30,"
            + small
            + ",\"poles\":[\"south\"]}]";

    LayoutDocument document = read(bench("25", "", patterns));

    var magnets = document.canonical().objects("magnets");
    assertEquals(3 + 6 + 19 + 3, magnets.size());
    assertEquals("Dune", magnets.get(1).text("label"));
    assertEquals(List.of(-22.5, 38.971143), place(document, 1));
    assertEquals("south", magnets.get(2).text("poleUp"));
    assertEquals("north", magnets.get(1).text("poleUp"));
    assertEquals(List.of(190.0, -10.0), place(document, 3));
    assertEquals(List.of(210.0, 10.0), place(document, 8));
    assertEquals(List.of(0.0, 200.0), place(document, 9));
    assertEquals(List.of(12.0, 200.0), place(document, 10));
    assertEquals(List.of(-200.0, 15.0), place(document, 29));
    for (int i = 10; i < 16; i++) {
      List<Double> at = place(document, i);
      assertEquals(12, Math.hypot(at.get(0), at.get(1) - 200), 1e-5);
    }
  }

  private static List<Double> place(LayoutDocument document, int index) {
    var magnet = document.canonical().objects("magnets").get(index);
    return List.of(magnet.number("x"), magnet.number("y"));
  }

  @Test
  void textbookKeepsItsOwnUnits() {
    LayoutDocument document =
        read(
            "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,\"magnets\":["
                + "{\"x\":0.577,\"y\":0,\"label\":\"A\"},{\"x\":-1,\"y\":2,\"strength\":-2}]}");

    var layout = assertInstanceOf(TextbookLayout.class, document.layout());
    assertEquals(
        new TextbookLayout(
            0.5,
            0.2,
            0.3,
            List.of(
                new TextbookLayout.Attractor(0.577, 0, 1),
                new TextbookLayout.Attractor(-1, 2, -2))),
        layout);
  }

  @Test
  void faultsOfStockPatternsAndGradesPointToWhatWasSent() {
    List<Fault> form =
        faults(
            bench(
                "25",
                "{\"x\":40,\"y\":0,\"of\":\"pukc\"}",
                ",\"stock\":{\"puck\":{\"shape\":\"sphere\",\"diameterMm\":5,\"grade\":\"N35\"}}",
                ",\"patterns\":[{\"kind\":\"ring\",\"count\":3,\"radiusMm\":40,\"of\":\"disc\"}]"));
    assertEquals(List.of("/magnets/0/of", "/patterns/0/of"), pointers(form));
    assertTrue(form.get(0).detail().contains("did you mean \"puck\"?"));

    List<Fault> poles =
        faults(
            bench(
                "25",
                "",
                ",\"stock\":{\"puck\":{\"shape\":\"sphere\",\"diameterMm\":5,\"grade\":\"N35\"}}",
                ",\"patterns\":[{\"kind\":\"ring\",\"count\":3,\"radiusMm\":40,\"of\":\"puck\"}]"));
    assertEquals(List.of("/patterns/0"), pointers(poles));

    List<Fault> grades = faults(bench("25", disc("40", "0").replace("Y30", "Y3O")));
    assertEquals(List.of("/magnets/0/grade"), pointers(grades));
    assertTrue(grades.get(0).detail().contains("did you mean \"Y30\"?"));

    List<Fault> many =
        faults(
            bench(
                "25",
                "",
                ",\"patterns\":[{\"kind\":\"grid\",\"columns\":15,\"rows\":15,\"spacingMm\":20,"
                    + "\"magnet\":{\"shape\":\"sphere\",\"diameterMm\":5,\"grade\":\"N35\"}}]"));
    assertEquals(List.of("/patterns"), pointers(many));
    assertTrue(many.get(0).detail().contains("makes 225 magnets"));
  }

  private static List<String> pointers(List<Fault> faults) {
    return faults.stream().map(Fault::pointer).toList();
  }

  @Test
  void sizesThatContradictEachOtherAreRefusedTogether() {
    String bar =
        "{\"kind\":\"bar\",\"parts\":[{\"kind\":\"nut\",\"fromTopMm\":0,\"acrossFlatsMm\":8,"
            + "\"holeDiameterMm\":9,\"heightMm\":6,\"massG\":5}]}";
    String ring =
        "{\"x\":40,\"y\":0,\"shape\":\"ring\",\"diameterMm\":10,\"innerDiameterMm\":12,"
            + "\"heightMm\":6,\"grade\":\"Y30\",\"poleUp\":\"north\"}";

    List<Fault> faults = faults(with(bar, BOB, "25", ring, SWINGS));

    assertEquals(
        List.of("/magnets/0/innerDiameterMm", "/pendulum/parts/0/holeDiameterMm"),
        pointers(faults));
  }

  @Test
  void barThatWouldTurnOverIsRefused() {
    String bar =
        "{\"kind\":\"bar\",\"parts\":[{\"kind\":\"rod\",\"fromTopMm\":-400,\"diameterMm\":10,"
            + "\"lengthMm\":500,\"material\":\"steel\"}]}";

    List<Fault> faults = faults(with(bar, BOB, "25", "", SWINGS));

    assertEquals(List.of("/pendulum/parts"), pointers(faults));
    assertTrue(faults.get(0).detail().contains("above it"));
  }

  @Test
  void bobOnABarNeedsAMassWhereItHasNoGrade() {
    String bar =
        "{\"kind\":\"bar\",\"parts\":[{\"kind\":\"rod\",\"fromTopMm\":0,\"diameterMm\":10,"
            + "\"lengthMm\":300,\"material\":\"steel\"}]}";
    String bob = BOB.replace("\"grade\":\"N35\"", "\"remanenceT\":1.2");

    assertEquals(List.of("/bobMagnet/massG"), pointers(faults(with(bar, bob, "25", "", SWINGS))));
  }
}
