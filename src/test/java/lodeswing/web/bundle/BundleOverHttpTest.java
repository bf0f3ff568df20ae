package lodeswing.web.bundle;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.security.MessageDigest;
import java.util.ArrayList;
import java.util.HexFormat;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.zip.ZipEntry;
import java.util.zip.ZipInputStream;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.RunningService;
import org.apache.pdfbox.Loader;
import org.apache.pdfbox.text.PDFTextStripper;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

class BundleOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final JsonMapper JSON = JsonMapper.shared();

  /** Spheres: felt as dipoles, so that they are quickly computed, yet with a size to swallow. */
  private static String layout(String title, String one, String other) {
    String magnet =
        ",\"shape\":\"sphere\",\"diameterMm\":11,\"grade\":\"N35\",\"poleUp\":\"south\"}";
    return "{\"title\":"
        + JSON.writeValueAsString(title)
        + ",\"model\":\"bench\",\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":420,\"bobMassG\":45},"
        + "\"bobMagnet\":{\"shape\":\"sphere\",\"diameterMm\":12,\"grade\":\"N35\","
        + "\"poleDown\":\"north\"},\"gapMm\":30,\"damping\":{\"swingsToHalf\":2},\"magnets\":["
        + "{\"x\":38,\"y\":0,\"label\":"
        + JSON.writeValueAsString(one)
        + magnet
        + ",{\"x\":-22.5,\"y\":38.97,\"label\":"
        + JSON.writeValueAsString(other)
        + magnet
        + "]}";
  }

  private static String stored(String layout) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(layout.getBytes(StandardCharsets.UTF_8))
        .post("/v1/layouts")
        .then()
        .extract()
        .path("layoutId");
  }

  private static String stations() {
    return stored(layout("Which way?", "Tide", "Dune"));
  }

  private static String sample(String name) {
    return SERVICE.given().get("/v1/sample-layouts/" + name).path("layoutId");
  }

  private static String url(String layoutId, String query) {
    return "/v1/layouts/" + layoutId + "/bundle?wait=60&mapPixels=24&" + query;
  }

  private static byte[] bundle(String layoutId, String query) {
    return SERVICE
        .given()
        .urlEncodingEnabled(false)
        .get(url(layoutId, query))
        .then()
        .statusCode(200)
        .contentType("application/zip")
        .extract()
        .asByteArray();
  }

  /** Reads every entry to its end, by which its checksum is held against its bytes. */
  private static Map<String, byte[]> files(byte[] archive) throws IOException {
    Map<String, byte[]> files = new LinkedHashMap<>();
    try (var zip = new ZipInputStream(new ByteArrayInputStream(archive))) {
      for (ZipEntry next = zip.getNextEntry(); next != null; next = zip.getNextEntry()) {
        files.put(next.getName(), zip.readAllBytes());
        assertEquals("1980-02-01T00:00", next.getTimeLocal().toString());
      }
    }
    return files;
  }

  private static String text(Map<String, byte[]> files, String name) {
    return new String(Objects.requireNonNull(files.get(name), name), StandardCharsets.UTF_8);
  }

  private static JsonNode manifest(Map<String, byte[]> files) {
    return JSON.readTree(text(files, "manifest.json"));
  }

  private static Set<String> leftOut(JsonNode manifest) {
    return manifest
        .get("leftOut")
        .valueStream()
        .map(one -> one.get("code").stringValue() + " " + one.get("path").stringValue())
        .collect(Collectors.toCollection(TreeSet::new));
  }

  private static List<String> all(String pattern, String text) {
    List<String> found = new ArrayList<>();
    Matcher matcher = Pattern.compile(pattern).matcher(text);
    while (matcher.find()) {
      found.add(matcher.group(1));
    }
    return found;
  }

  @Test
  void everyFileIsWhatItsOwnRequestAnswers() throws Exception {
    String layoutId = stations();
    Map<String, byte[]> files = files(bundle(layoutId, "lang=en"));
    JsonNode manifest = manifest(files);
    Set<String> told = new TreeSet<>(Set.of("manifest.json"));
    for (JsonNode file : manifest.get("files")) {
      String path = file.get("path").stringValue();
      byte[] body = Objects.requireNonNull(files.get(path), path);
      assertEquals(file.get("bytes").intValue(), body.length, path);
      String digest = HexFormat.of().formatHex(MessageDigest.getInstance("SHA-256").digest(body));
      assertEquals(file.get("sha256").stringValue(), digest, path);
      told.add(path);
      if (path.equals("index.html")) {
        continue;
      }
      Response alone =
          SERVICE.given().urlEncodingEnabled(false).get(file.get("request").stringValue());
      assertEquals(200, alone.statusCode(), path);
      assertEquals(file.get("mediaType").stringValue(), alone.contentType(), path);
      if (file.has("member")) {
        JsonNode member = JSON.readTree(alone.asByteArray()).get(file.get("member").stringValue());
        assertEquals(member, JSON.readTree(body), path);
      } else {
        assertArrayEquals(alone.asByteArray(), body, path);
      }
    }
    assertEquals(new TreeSet<>(files.keySet()), told);
    // Members stand in one order whatever process writes them.
    String written = text(files, "manifest.json");
    assertTrue(written.matches("(?s).*\"release\":\\{\"x\":[^,]+,\"y\":.*"), written);
    assertEquals(0, manifest.get("leftOut").size(), manifest.toString());
    assertTrue(files.size() >= 24, files.keySet().toString());
    assertTrue(files.keySet().stream().allMatch(name -> name.matches("[a-z0-9/.-]+")));
  }

  @Test
  void everyFormIsSound() throws Exception {
    Map<String, byte[]> files = files(bundle(stations(), "lang=es&paper=a3"));
    var xml = DocumentBuilderFactory.newInstance();
    xml.setFeature("http://apache.org/xml/features/disallow-doctype-decl", true);
    int pages = 0;
    for (Map.Entry<String, byte[]> file : files.entrySet()) {
      String ending = file.getKey().substring(file.getKey().lastIndexOf('.'));
      switch (ending) {
        case ".pdf" -> {
          try (var document = Loader.loadPDF(file.getValue())) {
            pages += document.getNumberOfPages();
          }
        }
        case ".svg" ->
            assertEquals(
                "svg",
                xml.newDocumentBuilder()
                    .parse(new ByteArrayInputStream(file.getValue()))
                    .getDocumentElement()
                    .getNodeName());
        case ".png" ->
            assertEquals(24, ImageIO.read(new ByteArrayInputStream(file.getValue())).getWidth());
        case ".json" -> JSON.readTree(file.getValue());
        default -> assertTrue(file.getValue().length > 0, file.getKey());
      }
    }
    assertTrue(pages >= 4, "pages: " + pages);
    try (var key = Loader.loadPDF(Objects.requireNonNull(files.get("sheets/worksheet-key.pdf")))) {
      assertTrue(new PDFTextStripper().getText(key).contains("Soluciones"));
    }
  }

  @Test
  void thePageNeedsNothingButItsNeighbours() throws Exception {
    Map<String, byte[]> files = files(bundle(stations(), "lang=de&decimal=comma"));
    String page = text(files, "index.html");
    assertTrue(page.startsWith("<!doctype html>\n<html lang=\"de\">"), page);
    assertTrue(page.contains("Sicherheit zuerst") && page.contains("Vorschriften vor Ort"), page);
    assertFalse(page.contains("<script") || page.contains("http:") || page.contains("https:"));
    List<String> links = all("(?:href|src)=\"([^\"]*)\"", page);
    assertTrue(files.keySet().containsAll(links), links.toString());
    for (String name : files.keySet()) {
      assertTrue(name.equals("index.html") || links.contains(name), name + " is not linked");
    }
    assertEquals(all("(<img)", page).size(), all("alt=\"([^\"]+)\"", page).size());
    // The safety lines come before any other file is linked.
    assertTrue(page.indexOf("class=\"safety\"") < page.indexOf("sheets/"));
    assertTrue(text(files, "tables/path.csv").contains(";"));
    assertTrue(text(files, "safety/safety-notes.html").contains("lang=\"de\""));
    assertTrue(page.contains("\u00a0kB"), page);
  }

  @Test
  void theLayoutCanBePostedAgain() throws Exception {
    String layoutId = stations();
    Map<String, byte[]> files = files(bundle(layoutId, ""));
    assertEquals(layoutId, stored(text(files, "data/layout.json")));
  }

  @Test
  void aTextbookLayoutSaysWhatItLacks() throws Exception {
    Map<String, byte[]> files = files(bundle(sample("paper-triangle"), "lang=en"));
    JsonNode manifest = manifest(files);
    assertEquals(
        Set.of(
            "not-in-this-model sheets/placing-sheet.pdf",
            "not-in-this-model sheets/placing-sheet.svg",
            "not-in-this-model sheets/worksheet.pdf",
            "not-in-this-model sheets/worksheet-key.pdf",
            "not-in-this-model pictures/field-map.svg",
            "not-in-this-model pictures/weak-spots.svg",
            "not-in-this-model tables/weak-spots.csv"),
        leftOut(manifest));
    String page = text(files, "index.html");
    assertTrue(page.contains("A textbook layout has no millimetres"), page);
    assertTrue(page.contains("/field/map?format=svg"), page);
    assertFalse(page.contains(" mm"), page);
    for (String path : List.of("pictures/path.svg", "tables/odds.csv", "pictures/basin-map.png")) {
      assertTrue(files.containsKey(path), path);
    }
  }

  @Test
  void whatIsWrittenIntoALayoutStaysText() throws Exception {
    String hostile = "<script>alert(1)</script>";
    String link = "\"><img src=x onerror=y>";
    String layoutId = stored(layout("</title>" + hostile + "../../up", hostile, link));
    Map<String, byte[]> files = files(bundle(layoutId, ""));
    String page = text(files, "index.html");
    assertFalse(page.contains("<script") || page.contains("<img src=x"), page);
    assertTrue(page.contains("&lt;/title&gt;&lt;script&gt;"), page);
    assertEquals(1, all("(</title>)", page).size());
    assertTrue(files.keySet().stream().allMatch(name -> name.matches("[a-z0-9/.-]+")));
    assertTrue(text(files, "manifest.json").contains("<script>"));
  }

  @Test
  void theReleaseOfAskingIsTaken() throws Exception {
    String layoutId = stations();
    JsonNode own = manifest(files(bundle(layoutId, "without=basin-map,check")));
    assertEquals(
        Set.of(
            "left-out data/check.json",
            "left-out pictures/basin-map-legend.svg",
            "left-out pictures/basin-map.png",
            "left-out tables/check.csv"),
        leftOut(own));
    Map<String, byte[]> given =
        files(bundle(layoutId, "x=50&y=-10,5&decimal=comma&without=worksheet,basin-map,check"));
    assertEquals(50, manifest(given).at("/release/x").doubleValue());
    assertEquals(-10.5, manifest(given).at("/release/y").doubleValue());
    assertTrue(text(given, "index.html").contains("(50; -10.5) mm"));
    // The surest of the places tried: the chance of its first end is above that of chance alone.
    String x = own.at("/release/x").toString();
    String y = own.at("/release/y").toString();
    List<Number> chances =
        SERVICE
            .given()
            .get("/v1/layouts/" + layoutId + "/odds?spreadMm=3&x=" + x + "&y=" + y)
            .path("outcomes.chance");
    assertTrue(chances.stream().anyMatch(chance -> chance.doubleValue() > 0.9), chances.toString());
  }

  @Test
  void aBareLayoutAndAFigureChangedOnTheWay() throws Exception {
    Map<String, byte[]> files = files(bundle(sample("quiet-plate"), "without=basin-map"));
    assertTrue(files.containsKey("sheets/worksheet.pdf"), files.keySet().toString());
    String layoutId = stations();
    JsonNode changed = manifest(files(bundle(layoutId, "gapMm=32&without=basin-map,odds,check")));
    assertFalse(changed.get("layoutId").stringValue().equals(layoutId));
    assertTrue(
        changed.get("request").stringValue().contains(changed.get("layoutId").stringValue()));
  }

  @Test
  void theSameRequestHasTheSameBytesAndTag() {
    String layoutId = stations();
    Response first = SERVICE.given().get(url(layoutId, ""));
    String tag = first.header("ETag");
    assertArrayEquals(first.asByteArray(), bundle(layoutId, ""));
    SERVICE.given().header("If-None-Match", tag).get(url(layoutId, "")).then().statusCode(304);
    SERVICE
        .given()
        .head(url(layoutId, ""))
        .then()
        .statusCode(200)
        .header("Content-Length", Integer.toString(first.asByteArray().length))
        .header("Link", containsString("rel=\"describedby\""));
    byte[] start =
        SERVICE
            .given()
            .header("Range", "bytes=0-3")
            .get(url(layoutId, ""))
            .then()
            .statusCode(206)
            .extract()
            .asByteArray();
    assertArrayEquals(new byte[] {'P', 'K', 3, 4}, start);
  }

  @Test
  void whoDoesNotWaitGetsAJob() {
    String layoutId = stored(layout("Another", "Reef", "Tide").replace("420", "433"));
    String path = "/v1/layouts/" + layoutId + "/bundle?mapPixels=25";
    SERVICE
        .given()
        .header("Prefer", "respond-async")
        .get(path)
        .then()
        .statusCode(202)
        .body("kind", equalTo("bundle"))
        .body("resultUrl", startsWith("/v1/layouts/" + layoutId + "/bundle?"));
    String inline = SERVICE.given().get(path + "&wait=0&errors=inline").asString();
    assertTrue(inline.startsWith("PENDING ") || inline.startsWith("PK"), inline);
    assertEquals(200, SERVICE.given().get(path + "&wait=60").statusCode());
  }

  @Test
  void faultsAreTold() {
    String layoutId = stations();
    SERVICE.given().get(url("lay-nothing", "")).then().statusCode(404);
    SERVICE
        .given()
        .get(url(layoutId, "mapPixel=2"))
        .then()
        .statusCode(400)
        .body("errors.detail", hasItem(containsString("mapPixels")));
    SERVICE
        .given()
        .get(url(layoutId, "x=2"))
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("?y"));
    SERVICE
        .given()
        .get(url(layoutId, "without=basin-mop"))
        .then()
        .statusCode(400)
        .body("errors[0].detail", containsString("basin-map?"));
    SERVICE
        .given()
        .get("/v1/layouts/" + layoutId + "/bundle?mapPixels=2048")
        .then()
        .statusCode(422)
        .body("errors[0].detail", containsString("1024"));
    SERVICE.given().get(url(layoutId, "format=pdf")).then().statusCode(406);
  }
}
