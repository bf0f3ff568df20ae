package lodeswing.web.trace;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.zip.CRC32;
import javax.imageio.ImageIO;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Long exposures over HTTP. */
class GlowOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  /**
   * One attracting magnet beside the middle, 40 mm to the right and 20 mm up, and a round plate.
   */
  private static final String LAYOUT =
      "{\"model\":\"bench\",\"title\":\"Night over Dune\","
          + "\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":420,\"bobMassG\":45},"
          + "\"bobMagnet\":{\"shape\":\"disc\",\"diameterMm\":15,\"heightMm\":5,\"grade\":\"N35\","
          + "\"poleDown\":\"north\"},\"gapMm\":25,"
          + "\"plate\":{\"shape\":\"round\",\"widthMm\":240},"
          + "\"magnets\":[{\"x\":40,\"y\":20,\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,"
          + "\"grade\":\"Y30\",\"poleUp\":\"south\",\"label\":\"Dune\"}],"
          + "\"damping\":{\"swingsToHalf\":4}}";

  private static String sample(String name) {
    return SERVICE
        .given()
        .queryParam("format", "text")
        .get("/v1/sample-layouts/" + name)
        .asString();
  }

  private static Response trace(String layout, double duration) {
    String body =
        "{" + layout + ",\"release\":{\"x\":-60,\"y\":30},\"durationS\":" + duration + "}";
    return SERVICE.given().contentType("application/json").body(body).post("/v1/traces");
  }

  private static String glowOf(Response trace) {
    trace.then().statusCode(200);
    return trace.jsonPath().getString("links.glow");
  }

  private static String stations(double duration) {
    return glowOf(trace("\"layoutId\":\"" + sample("three-stations") + "\"", duration));
  }

  private static String oneMagnet(double duration) {
    return glowOf(trace("\"layout\":" + LAYOUT, duration));
  }

  /** Chunks of a PNG by type, their check sums held against their bytes. */
  private static Map<String, byte[]> chunks(byte[] png) {
    Map<String, byte[]> chunks = new LinkedHashMap<>();
    ByteBuffer in = ByteBuffer.wrap(png);
    in.position(8);
    while (in.hasRemaining()) {
      byte[] data = new byte[in.getInt()];
      byte[] type = new byte[4];
      in.get(type);
      in.get(data);
      CRC32 sum = new CRC32();
      sum.update(type);
      sum.update(data);
      assertEquals((int) sum.getValue(), in.getInt());
      chunks.putIfAbsent(new String(type, StandardCharsets.US_ASCII), data);
    }
    return chunks;
  }

  private static BufferedImage read(byte[] png) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(png));
  }

  @Test
  void thePictureStatesItsTrueScale() throws IOException {
    byte[] png = SERVICE.given().get(oneMagnet(10) + "?pixelSize=0.5").asByteArray();
    Map<String, byte[]> chunks = chunks(png);
    ByteBuffer size = ByteBuffer.wrap(chunks.get("pHYs"));
    assertEquals(2_000, size.getInt());
    assertEquals(2_000, size.getInt());
    assertEquals(1, size.get());
    // The plate is 240 mm wide and all of the light falls on it.
    BufferedImage picture = read(png);
    assertEquals(480, picture.getWidth());
    assertEquals(480, picture.getHeight());
    assertTrue(
        chunks.keySet().stream().toList().indexOf("pHYs")
            < chunks.keySet().stream().toList().indexOf("IDAT"));
  }

  @Test
  void theBrightestPixelIsWhereTheBobRests() throws IOException {
    Response trace = trace("\"layout\":" + LAYOUT, 30);
    double x = trace.jsonPath().getDouble("outcome.x");
    double y = trace.jsonPath().getDouble("outcome.y");
    BufferedImage picture =
        read(SERVICE.given().get(glowOf(trace) + "?pixelSize=0.5").asByteArray());
    double sumX = 0;
    double sumY = 0;
    int count = 0;
    int most = 0;
    for (int pass = 0; pass < 2; pass++) {
      for (int row = 0; row < picture.getHeight(); row++) {
        for (int column = 0; column < picture.getWidth(); column++) {
          int pixel = picture.getRGB(column, row);
          int light = ((pixel >> 16) & 0xFF) + ((pixel >> 8) & 0xFF) + (pixel & 0xFF);
          if (pass == 0) {
            most = Math.max(most, light);
          } else if (light == most) {
            sumX += (column + 0.5) * 0.5 - 120;
            sumY += 120 - (row + 0.5) * 0.5;
            count++;
          }
        }
      }
    }
    assertEquals(x, sumX / count, 1);
    assertEquals(y, sumY / count, 1);
  }

  @Test
  void theTextStatesTheResult() {
    String url = oneMagnet(30);
    String words = SERVICE.given().get(url + "?format=text").asString();
    assertTrue(words.contains("the whole 240\u00a0mm by 240\u00a0mm"), words);
    assertTrue(words.contains("from the middle of Dune"), words);
    assertTrue(words.contains("all of which is shown"), words);
    assertTrue(words.contains("The bob comes to rest"), words);
    byte[] png = SERVICE.given().get(url).asByteArray();
    String inside = new String(png, StandardCharsets.UTF_8);
    assertTrue(inside.contains(words.strip()), "the PNG does not hold its text");
  }

  @Test
  void whatIsNotTrustedIsLeftOutAndSaidToBe() {
    Response trace = trace("\"layoutId\":\"" + sample("three-stations") + "\"", 20);
    double trusted = trace.jsonPath().getDouble("trustedUntilS");
    assertTrue(trusted < 20);
    String words = SERVICE.given().get(glowOf(trace) + "?format=text").asString();
    assertTrue(words.contains("left out because the computed path is not to be trusted"), words);
    byte[] upToTrust =
        SERVICE
            .given()
            .get(glowOf(trace) + "?decayTimeS=100000&exposureS=" + (trusted + 1e-9))
            .asByteArray();
    byte[] longer =
        SERVICE.given().get(glowOf(trace) + "?decayTimeS=100000&exposureS=20").asByteArray();
    assertArrayEquals(chunks(upToTrust).get("IHDR"), chunks(longer).get("IHDR"));
  }

  @Test
  void byAddressAloneItIsTheSamePicture() {
    byte[] posted = SERVICE.given().get(stations(6) + "?spot=3").asByteArray();
    byte[] asked =
        SERVICE
            .given()
            .get(
                "/v1/layouts/"
                    + sample("three-stations")
                    + "/trace/glow?x=-60&y=30&durationS=6&spot=3")
            .asByteArray();
    assertArrayEquals(posted, asked);
  }

  @Test
  void aKeptPictureIsNotSentAgain() {
    String url = stations(6);
    Response first = SERVICE.given().get(url);
    first
        .then()
        .statusCode(200)
        .contentType("image/png")
        .header("Cache-Control", containsString("immutable"));
    SERVICE.given().header("If-None-Match", first.header("ETag")).get(url).then().statusCode(304);
    assertTrue(!first.header("ETag").equals(SERVICE.given().get(url + "?gain=3").header("ETag")));
  }

  @Test
  void aTextbookPictureHasNoMillimetres() {
    String layout =
        "\"layout\":{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,"
            + "\"magnets\":[{\"x\":0.6,\"y\":0,\"strength\":1}]}";
    String body = "{" + layout + ",\"release\":{\"x\":1.2,\"y\":0.4},\"durationS\":20}";
    Response trace = SERVICE.given().contentType("application/json").body(body).post("/v1/traces");
    byte[] png = SERVICE.given().get(glowOf(trace)).asByteArray();
    assertTrue(!chunks(png).containsKey("pHYs"));
    SERVICE.given().get(glowOf(trace) + "?format=text").then().body(not(containsString("mm")));
  }

  @Test
  void figuresThatDoNotSuitAreRefusedAllAtOnce() {
    SERVICE
        .given()
        .get(stations(6) + "?exposureS=7&pixelSize=3")
        .then()
        .statusCode(400)
        .body("code", equalTo("invalid-request"))
        .body("errors.pointer", hasItem("?exposureS"))
        .body("errors.pointer", hasItem("?pixelSize"))
        .body("errors.detail", hasItem(containsString("to 2")));
    SERVICE
        .given()
        .get(stations(6) + "?spot=-1&gain=0&brightness=2")
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItem("?spot"))
        .body("errors.pointer", hasItem("?gain"));
    SERVICE
        .given()
        .get(stations(6) + "?spot=0.1&pixelSize=0.05")
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors.pointer", hasItem("?pixelSize"));
    SERVICE.given().get(stations(6) + "?format=svg").then().statusCode(406);
    SERVICE.given().get("/v1/traces/trc-none/glow").then().statusCode(404);
  }
}
