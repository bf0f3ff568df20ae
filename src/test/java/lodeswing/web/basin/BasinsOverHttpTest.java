package lodeswing.web.basin;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.ByteBuffer;
import java.nio.ByteOrder;
import java.nio.charset.StandardCharsets;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import javax.imageio.ImageIO;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Maps over HTTP on a plane with much loss, where every end is certain soon. */
class BasinsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String PLANE =
      "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.8,\"height\":0.3,\"magnets\":["
          + "{\"x\":0.577,\"y\":0,\"strength\":1,\"label\":\"Tide\"},"
          + "{\"x\":-0.2885,\"y\":0.5,\"strength\":1,\"label\":\"Dune\"},"
          + "{\"x\":-0.2885,\"y\":-0.5,\"strength\":1,\"label\":\"Reef\"}]}";

  private static Response post(String body) {
    return SERVICE.given().contentType("application/json").body(body).post("/v1/basins?wait=60");
  }

  private static String basin(String layout) {
    Response answer =
        post("{\"layout\":" + layout + ",\"window\":{\"x\":0.1,\"y\":-0.1,\"halfWidth\":1.5}}");
    assertTrue(answer.statusCode() < 300, answer.asString());
    return "/v1/basins/" + answer.path("basinId");
  }

  private static Response get(String path) {
    return SERVICE.given().urlEncodingEnabled(false).get(path);
  }

  private static ByteBuffer file(String path) {
    byte[] bytes = get(path).asByteArray();
    return ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);
  }

  @Test
  void documentTellsAViewerAllItNeeds() {
    String basin = basin(PLANE);

    get(basin)
        .then()
        .statusCode(200)
        .header("Cache-Control", containsString("immutable"))
        .body("tiles", equalTo(basin + "/tiles/{z}/{x}/{y}?look=1"))
        .body("origin.x", equalTo(-1.4f))
        .body("origin.y", equalTo(1.4f))
        .body("yDown", equalTo(true))
        .body("unitsPerTile", equalTo(3))
        .body("zoom.min", equalTo(0))
        .body("legend.label", hasItems("Tide", "Dune", "Reef"))
        .body("legend[0].index", equalTo(0))
        .body("legend.kind", hasItems("rest-point", "unsettled"))
        .body("steadyShare", equalTo(1));
    get(basin + "/viewer")
        .then()
        .body("pixelsPerUnit", equalTo(256 / 3f))
        .body("bounds[1].x", equalTo(1.6f))
        .body("alternative", containsString("Lighter"));
  }

  @Test
  void secondPostAnswersTheSameMap() {
    String body = "{\"layout\":" + PLANE + ",\"window\":{\"halfWidth\":1.25}}";
    Response first = post(body);
    Response second = post(body);

    first.then().statusCode(201).header("Location", startsWith("/v1/basins/bas-"));
    second.then().statusCode(200).header("Cache-Status", containsString("hit"));
    assertArrayEquals(first.asByteArray(), second.asByteArray());
  }

  @Test
  void tilesFitTogetherToThePictureOfTheWhole() throws IOException {
    String basin = basin(PLANE);
    for (String patterns : List.of("", "&patterns=true")) {
      BufferedImage whole = picture(basin + "/preview?width=512" + patterns);
      for (int t = 0; t < 4; t++) {
        BufferedImage tile =
            picture(basin + "/tiles/1/" + t % 2 + "/" + t / 2 + "?look=1" + patterns);
        assertArrayEquals(
            whole.getRGB(256 * (t % 2), 256 * (t / 2), 256, 256, null, 0, 256),
            tile.getRGB(0, 0, 256, 256, null, 0, 256));
      }
    }
  }

  private static BufferedImage picture(String path) throws IOException {
    return ImageIO.read(new ByteArrayInputStream(get(path).asByteArray()));
  }

  @Test
  void pixelIsWhatTheOutcomeThereSays() {
    String basin = basin(PLANE);
    String layout = get(basin).path("layoutId");
    List<String> names = get(basin).path("legend.name");
    ByteBuffer tile = file(basin + "/tiles/3/2/5?format=binary");
    double left = tile.getDouble(24);
    double top = tile.getDouble(32);
    double pixel = tile.getDouble(40);
    Random random = new Random(8);
    for (int n = 0; n < 12; n++) {
      int column = random.nextInt(256);
      int row = random.nextInt(256);
      double x = left + (column + 0.5) * pixel;
      double y = top - (row + 0.5) * pixel;
      int index = tile.getShort(64 + 2 * (256 * row + column));
      float sealed = tile.getFloat(64 + 2 * 65_536 + 4 * (256 * row + column));
      Response outcome = get("/v1/layouts/" + layout + "/outcome?x=" + x + "&y=" + y);
      assertEquals(names.get(index), outcome.path("outcome.name"));
      assertEquals(outcome.<Number>path("sealedAtS").doubleValue(), sealed, 1e-3);
    }
  }

  @Test
  void binaryTileHasItsHeaderAndIsServedInRanges() {
    String url = basin(PLANE) + "/tiles/0/0/0?format=binary";
    Response whole = get(url);
    byte[] bytes = whole.asByteArray();
    ByteBuffer tile = ByteBuffer.wrap(bytes).order(ByteOrder.LITTLE_ENDIAN);

    whole
        .then()
        .contentType("application/vnd.lodeswing.basin-tile")
        .header("Cache-Control", equalTo("public, max-age=31536000, immutable"));
    assertEquals("LSWM", new String(bytes, 0, 4, StandardCharsets.US_ASCII));
    assertEquals(64 + 6 * 65_536, bytes.length);
    assertEquals(256, tile.getInt(8));
    assertEquals(3, tile.getShort(16));
    assertEquals(3.0 / 256, tile.getDouble(40));
    Response part = SERVICE.given().header("Range", "bytes=64-95").get(url);
    part.then().statusCode(206);
    assertArrayEquals(Arrays.copyOfRange(bytes, 64, 96), part.asByteArray());
    SERVICE.given().header("If-None-Match", whole.header("ETag")).get(url).then().statusCode(304);
  }

  @Test
  void tableOfATileHasARowForEachPixel() {
    String basin = basin(PLANE);
    String[] lines = get(basin + "/tiles/1/0/0?format=csv").asString().split("\r\n");

    assertEquals(65_537, lines.length);
    assertEquals("x,y,index,outcome,sealed_s", lines[0]);
    assertTrue(lines[1].matches("-1\\.39\\d*,1\\.39\\d*,[012],(Tide|Dune|Reef),[0-9.]+"), lines[1]);
  }

  @Test
  void doubledTileShowsTheSamePlace() throws IOException {
    String basin = basin(PLANE);
    BufferedImage fine = picture(basin + "/tiles/0/0/0?size=512");
    BufferedImage whole = picture(basin + "/preview?width=512");

    assertEquals(512, fine.getWidth());
    assertArrayEquals(
        whole.getRGB(0, 0, 512, 512, null, 0, 512), fine.getRGB(0, 0, 512, 512, null, 0, 512));
  }

  @Test
  void newLabelComputesNothing() {
    get(basin(PLANE) + "/tiles/1/1/1").then().statusCode(200);
    String renamed = basin(PLANE.replace("Tide", "Harbour"));

    get(renamed + "/tiles/1/1/1")
        .then()
        .statusCode(200)
        .header("Cache-Status", containsString("hit"));
    get(renamed + "/legend?format=text").then().body(containsString("Harbour: amber"));
    get(renamed).then().body("legend.label", hasItems("Harbour"));
  }

  @Test
  void legendAndOverlayComeAsPicturesThatCanBeRead() {
    String basin = basin(PLANE);

    get(basin + "/legend?format=svg&patterns=true")
        .then()
        .contentType("image/svg+xml")
        .body(containsString("Dune"));
    get(basin + "/overlay")
        .then()
        .contentType("image/svg+xml")
        .body(containsString("where every release ends"))
        .body(containsString("Reef"));
    get(basin + "/legend")
        .then()
        .body("legend[1].pattern", equalTo("rising"))
        .body("shading.by", equalTo("lightness"));
  }

  /** A client that paints swatches by the legend's own rows and ink paints what the map shows. */
  @Test
  void legendTellsPatternsAndPlaces() throws IOException {
    String basin = basin(PLANE);
    Response legend = get(basin + "/legend");
    BufferedImage plain = picture(basin + "/tiles/0/0/0");
    BufferedImage patterned = picture(basin + "/tiles/0/0/0?patterns=true");
    String[] table = get(basin + "/tiles/0/0/0?format=csv").asString().split("\r?\n");
    for (int index : new int[] {1, 2}) {
      List<String> rows = legend.path("legend[" + index + "].patternRows");
      int inked = 0;
      for (int pixel = 0; pixel < 256 * 256; pixel++) {
        if (table[pixel + 1].split(",")[2].equals(Integer.toString(index))) {
          int x = pixel % 256;
          int y = pixel / 256;
          boolean ink = rows.get(y % rows.size()).charAt(x % rows.get(0).length()) == '1';
          assertEquals(ink, plain.getRGB(x, y) != patterned.getRGB(x, y), x + ", " + y);
          inked += ink ? 1 : 0;
        }
      }
      assertTrue(inked > 1_000);
    }
    legend.then().body("legend[1].ink", startsWith("#")).body("legend[3].x", equalTo(null));
    Response rests = get("/v1/layouts/" + get(basin).path("layoutId") + "/rest-points");
    assertEquals(rests.<Float>path("restPoints[0].x"), legend.<Float>path("legend[0].x"));
    assertEquals(rests.<Float>path("restPoints[2].y"), legend.<Float>path("legend[2].y"));
  }

  @Test
  void previewCarriesItsWords() {
    String png =
        new String(
            get(basin(PLANE) + "/preview?width=32").asByteArray(), StandardCharsets.ISO_8859_1);

    assertTrue(png.contains("Description"));
    assertTrue(png.contains("Shares: Tide "));
  }

  @Test
  void spreadsheetGetsIdAndPictureByAddress() {
    String layout = get(basin(PLANE)).path("layoutId");
    String url = "/v1/layouts/" + layout + "/basin?halfWidth=1.5&x=0.1&y=-0.1";

    get(url + "&format=text").then().body(equalTo(basin(PLANE).substring("/v1/basins/".length())));
    get(url + "&format=png&width=24&height=16").then().contentType("image/png");
    get(url + "&drag=0.9&format=text").then().statusCode(200).body(startsWith("bas-"));
  }

  @Test
  void whatLiesOutsideIsNotFound() {
    String basin = basin(PLANE);
    for (String tile :
        List.of(
            "99/0/0",
            "-1/0/0",
            "1/2/0",
            "1/0/-1",
            "0/0/1",
            "1/x/0",
            "59/1/1",
            "1/1e0/0",
            "3/99999999999999999999/0")) {
      get(basin + "/tiles/" + tile).then().statusCode(404).body("code", equalTo("not-found"));
    }
    get("/v1/basins/bas-nothing").then().statusCode(404);
  }

  @Test
  void hostileFiguresGiveProblems() {
    String basin = basin(PLANE);

    for (String query :
        List.of("size=1e9", "size=1000000000", "patterns=perhaps", "look=-1", "colour=red")) {
      get(basin + "/tiles/0/0/0?" + query).then().statusCode(400);
    }
    get(basin + "/tiles/0/0/0?format=pdf").then().statusCode(406);
    get(basin + "/overlay?format=png").then().statusCode(406);
    get(basin + "/preview?width=1000000000").then().statusCode(400);
    get(basin + "/preview?width=8000&height=8000")
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors[0].detail", containsString("lower both to 1024"));
    for (String halfWidth : List.of("0", "-1", "1e300", "NaN", "\"2\"", "null", "1e999")) {
      post("{\"layout\":" + PLANE + ",\"window\":{\"halfWidth\":" + halfWidth + "}}")
          .then()
          .statusCode(400);
    }
    post("{\"layout\":" + PLANE + ",\"window\":{\"x\":90000,\"halfWidth\":1e-12}}")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/window/halfWidth"))
        .body("errors[0].detail", containsString("raise it to"));
    post("{\"layoutId\":\"lay-x\",\"layout\":" + PLANE + "}").then().statusCode(400);
    post("").then().statusCode(400);
  }

  @Test
  void dryRunTellsTheWorkAndStoresNothing() {
    Response answer =
        SERVICE
            .given()
            .contentType("application/json")
            .body("{\"layout\":" + PLANE + ",\"window\":{\"halfWidth\":1.375}}")
            .post("/v1/basins?dry-run=true");

    answer.then().statusCode(200).body("releasesPerTile", equalTo(65_536));
    get("/v1/basins/" + answer.path("basinId")).then().statusCode(404);
  }
}
