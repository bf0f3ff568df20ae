package lodeswing.web.layout;

import static lodeswing.web.layout.LayoutBodies.bench;
import static lodeswing.web.layout.LayoutBodies.disc;
import static lodeswing.web.layout.LayoutBodies.read;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;

import java.nio.charset.StandardCharsets;
import org.junit.jupiter.api.Test;

class LayoutDocumentTest {

  private static final String TITLED = ",\"title\":\"Which first?\"";

  @Test
  void orderOfMembersAndSpelledOutDefaultsDoNotChangeTheId() {
    String plain = bench("25", disc("45", "0"), TITLED);
    String other =
        "{\"title\":\"Which first?\",\"localGravityMPerS2\":9.80665,\"damping\":{\"swingsToHalf\":"
            + "2.5e1},\"magnets\":[{\"poleUp\":\"south\",\"grade\":\"Y30\",\"bottomMm\":-0.0,"
            + "\"heightMm\":5.0,\"diameterMm\":25,\"shape\":\"disc\",\"y\":0,\"x\":45}],"
            + "\"gapMm\":25.000,\"bobMagnet\":"
            + LayoutBodies.BOB
            + ",\"pendulum\":{\"bobMassG\":45,\"lengthMm\":420,\"kind\":\"cord\"},"
            + "\"model\":\"bench\",\"patterns\":[],\"stock\":{}}";

    assertEquals(read(plain).layoutId(), read(other).layoutId());
    assertEquals(read(plain).canonical().toJson(), read(other).canonical().toJson());
  }

  @Test
  void patternAndItsSingleMagnetsAreTheSameLayout() {
    String pattern =
        bench(
            "25",
            "",
            ",\"stock\":{\"puck\":{\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,"
                + "\"grade\":\"Y30\",\"poleUp\":\"south\"}},\"patterns\":[{\"kind\":\"line\","
                + "\"count\":2,\"x\":-40,\"y\":0,\"toX\":40,\"toY\":0,\"of\":\"puck\"}]");

    assertEquals(
        read(bench("25", disc("-40", "0") + "," + disc("40", "0"))).layoutId(),
        read(pattern).layoutId());
  }

  @Test
  void canonicalFormReadsBackAsItself() {
    for (SampleLayouts.Sample sample : SampleLayouts.load().all()) {
      LayoutDocument document = sample.document();
      byte[] stored = document.canonical().toJson().getBytes(StandardCharsets.UTF_8);

      assertEquals(document.layoutId(), LayoutDocument.ofCanonical(stored).layoutId());
      assertEquals(document.layoutId(), LayoutDocument.read(stored).layoutId());
      assertEquals(document.layout(), LayoutDocument.ofCanonical(stored).layout());
    }
  }

  @Test
  void newTitleOrLabelIsANewLayoutOfTheSamePhysics() {
    LayoutDocument plain = read(bench("25", disc("45", "0")));
    LayoutDocument titled = read(bench("25", disc("45", "0", ",\"label\":\"Tide\""), TITLED));
    LayoutDocument wider = read(bench("25.5", disc("45", "0")));

    assertNotEquals(plain.layoutId(), titled.layoutId());
    assertEquals(plain.physicsKey(), titled.physicsKey());
    assertNotEquals(plain.physicsKey(), wider.physicsKey());
  }

  /** Frozen: an id in a link must outlive every upgrade. */
  @Test
  void idOfTheFirstSampleStaysAsItIs() {
    LayoutDocument first = SampleLayouts.load().find("three-stations").orElseThrow().document();

    assertEquals("lay-gml5i43zz5an5xumg2vdiia3iz", first.layoutId());
  }
}
