package lodeswing.web.safety;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeSet;
import java.util.stream.Collectors;
import lodeswing.RunningService;
import lodeswing.web.representation.Representation;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.dataformat.cbor.CBORMapper;

/**
 * A layout whose magnets pass a limit says so in every document about it, and links to its safety
 * notes from every answer, whatever is asked for: every operation of the contract that answers for
 * a layout, in every form.
 */
class WarningsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final JsonMapper JSON = JsonMapper.shared();

  /** Spheres: felt as dipoles, so that they are quickly computed, yet with a size to swallow. */
  private static final String MAGNET =
      ",\"shape\":\"sphere\",\"diameterMm\":11,\"grade\":\"N35\",\"poleUp\":\"south\"";

  private static final String LAYOUT =
      "{\"model\":\"bench\",\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":420,\"bobMassG\":45},"
          + "\"bobMagnet\":{\"shape\":\"sphere\",\"diameterMm\":12,\"grade\":\"N35\","
          + "\"poleDown\":\"north\"},\"gapMm\":30,\"damping\":{\"swingsToHalf\":1},\"magnets\":["
          + "{\"x\":38,\"y\":0,\"label\":\"Tide\""
          + MAGNET
          + "},{\"x\":-22.5,\"y\":38.97,\"label\":\"Dune\""
          + MAGNET
          + "}]}";

  private static final String HAND =
      "\"release\":{\"x\":60,\"y\":0},\"spread\":{\"kind\":\"gaussian\",\"deviation\":3},"
          + "\"width\":0.3";

  private static final Map<String, String> FORMS =
      Arrays.stream(Representation.values())
          .collect(
              Collectors.toMap(
                  form -> form.mediaType().getType() + "/" + form.mediaType().getSubtype(),
                  Representation::word));

  private static final Map<String, String> BODIES =
      Map.of(
          "/v1/traces",
          "\"release\":{\"x\":60,\"y\":5},\"durationS\":2,\"sampleIntervalS\":0.05",
          "/v1/twins",
          "\"release\":{\"x\":60,\"y\":5},\"shift\":{\"x\":1},\"durationS\":2",
          "/v1/basins",
          "\"window\":{\"x\":36,\"y\":0,\"halfWidth\":2}",
          "/v1/odds",
          HAND,
          "/v1/sweeps",
          "\"vary\":[{\"quantity\":\"gapMm\",\"from\":30,\"to\":32,\"steps\":2}],"
              + "\"measures\":[{\"measure\":\"outcome\"}],\"release\":{\"x\":60,\"y\":5}",
          "/v1/tunings",
          HAND + ",\"move\":{\"places\":{\"within\":5}},\"answers\":1,\"candidates\":8");

  private static String layoutId() {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(LAYOUT)
        .post("/v1/layouts")
        .path("layoutId");
  }

  private static JsonNode contract() {
    return JSON.readTree(SERVICE.given().get("/v3/api-docs").asByteArray());
  }

  /** An operation in one of its forms. */
  private record Asked(String id, String method, String path, String form, String query) {}

  private static List<Asked> asked(String method) {
    List<Asked> all = new ArrayList<>();
    JsonNode paths = contract().get("paths");
    for (String path : paths.propertyNames()) {
      JsonNode operation = paths.get(path).path(method);
      JsonNode answer = operation.at("/responses/200");
      if (answer.at("/headers/Link").isMissingNode()) {
        continue;
      }
      List<String> needed = new ArrayList<>();
      for (JsonNode parameter : operation.get("parameters")) {
        String name = parameter.get("name").stringValue();
        if (name.equals("pixels")) {
          needed.add("pixels=200");
        } else if (parameter.path("required").booleanValue(false)
            && parameter.get("in").stringValue().equals("query")) {
          needed.add(name + "=" + parameter.get("example").stringValue());
        }
      }
      for (String type : answer.get("content").propertyNames()) {
        all.add(
            new Asked(
                operation.get("operationId").stringValue(),
                method,
                path,
                FORMS.getOrDefault(type, type),
                String.join("&", needed)));
      }
    }
    return all;
  }

  private static String filled(String path, Map<String, String> ids) {
    String filled = path;
    for (Map.Entry<String, String> id : ids.entrySet()) {
      filled = filled.replace("{" + id.getKey() + "}", id.getValue());
    }
    return filled;
  }

  private static boolean warned(Asked asked, Response answer) {
    if (!asked.form().equals("json") && !asked.form().equals("cbor")) {
      return true;
    }
    byte[] body = answer.asByteArray();
    JsonNode document =
        asked.form().equals("json") ? JSON.readTree(body) : CBORMapper.shared().readTree(body);
    List<String> codes =
        document
            .path("warnings")
            .valueStream()
            .map(one -> one.path("code").stringValue(""))
            .toList();
    return codes.equals(List.of("swallowing-limit"));
  }

  private static boolean linked(Response answer) {
    return answer.headers().getValues("Link").stream()
        .anyMatch(
            link ->
                link.matches(
                    "</v1/layouts/lay-[a-z2-7]+/safety-notes>; rel=\"describedby\";"
                        + " title=\"Safety notes: a limit is passed\""));
  }

  @Test
  void everyOperationOfALayoutWarnsAndLinksInEveryForm() {
    String layoutId = layoutId();
    Map<String, String> ids = new HashMap<>();
    ids.put("layoutId", layoutId);
    ids.put("name", "one-well");
    ids.put("z", "0");
    ids.put("x", "0");
    ids.put("y", "0");
    List<String> wrong = new ArrayList<>();
    TreeSet<String> operations = new TreeSet<>();
    for (Asked asked : asked("post")) {
      operations.add(asked.id());
      Response answer = posted(asked, layoutId, "");
      check(asked, answer, wrong);
      String location = String.valueOf(answer.header("Location"));
      String id = location.substring(location.lastIndexOf('/') + 1);
      String resource = asked.path().substring(asked.path().lastIndexOf('/') + 1);
      ids.put(resource.replaceAll("s$", "") + "Id", id);
      ids.put(resource + "Id", id);
    }
    for (Asked asked : asked("get")) {
      operations.add(asked.id());
      String url = filled(asked.path(), ids) + "?wait=60&format=" + asked.form();
      check(asked, SERVICE.given().get(url + "&" + query(asked)), wrong);
    }
    assertEquals(List.of(), wrong);
    assertTrue(operations.size() >= 55, operations.toString());
  }

  /**
   * Examples are those of the samples; what asks for a place or a size does for this layout too.
   */
  private static String query(Asked asked) {
    return switch (asked.id()) {
      case "getLayoutOdds" -> asked.query() + "&width=0.3";
      case "getSwingCount" -> "swings=20&timeS=26.2&halfAfter=24";
      case "getLayoutSweep" -> "vary=gapMm&from=30&to=32&steps=2&measure=outcome&x=60&y=5";
      case "getOccupancy" -> "releases=64&durationS=1&pixels=200";
      case "getLayoutBundle" -> "mapPixels=16";
      case "getFieldMap" -> "side=33&halfWidth=50&pixels=200";
      case "getFieldLines" -> "apartMm=20&halfWidth=50&spots=false&pixels=200";
      case "getFieldFilings" -> "count=200&halfWidth=50&spots=false&pixels=200";
      case "getBasinSummary" -> "side=64";
      case "getLayoutBasinSummary" -> "x=36&y=0&halfWidth=2&side=64";
      case "getLayoutBasin" -> "x=36&y=0&halfWidth=2&width=64&height=64";
      case "getBasinPreview" -> "width=64&height=64";
      case "getLayoutTwins" -> "x=60&y=5&shiftX=1&durationS=2";
      case "getTraceGlow", "getTraceAnimation" -> "";
      case "getLayoutTrace", "getLayoutTraceGlow", "getLayoutTraceAnimation" ->
          "x=60&y=5&durationS=2";
      default -> asked.query();
    };
  }

  private static Response posted(Asked asked, String layoutId, String more) {
    String body =
        switch (asked.path()) {
          case "/v1/layouts" -> LAYOUT;
          case "/v1/layouts/{layoutId}/outcomes" -> "{\"x\":[60,61],\"y\":[5,5]}";
          case "/v1/fits" -> recorded(layoutId, ",\"unknown\":[\"lengthMm\"]");
          case "/v1/comparisons" -> recorded(layoutId, "");
          default -> "{\"layoutId\":\"" + layoutId + "\"," + BODIES.get(asked.path()) + "}";
        };
    return SERVICE
        .given()
        .contentType("application/json")
        .body(body)
        .post(
            asked.path().replace("{layoutId}", layoutId)
                + "?wait=60&format="
                + asked.form()
                + more);
  }

  private static String recorded(String layoutId, String more) {
    Response path =
        SERVICE
            .given()
            .get("/v1/layouts/" + layoutId + "/trace?x=60&y=5&durationS=1&sampleIntervalS=0.05");
    return "{\"layoutId\":\""
        + layoutId
        + "\",\"recording\":{\"t\":"
        + path.path("samples.t")
        + ",\"x\":"
        + path.path("samples.x")
        + ",\"y\":"
        + path.path("samples.y")
        + "}"
        + more
        + "}";
  }

  private static void check(Asked asked, Response answer, List<String> wrong) {
    String name = asked.id() + " as " + asked.form();
    if (answer.statusCode() != 200 && answer.statusCode() != 201) {
      wrong.add(name + " answered " + answer.statusCode() + " " + answer.asString());
    } else {
      if (!linked(answer)) {
        wrong.add(name + " has no link: " + answer.headers().getValues("Link"));
      }
      if (!warned(asked, answer)) {
        wrong.add(name + " does not warn");
      }
    }
  }

  @Test
  void nothingInARequestSwitchesItOff() {
    String base = "/v1/layouts/" + layoutId() + "/rest-points";
    String tag = "";
    for (String more :
        List.of(
            "", "?errors=inline", "?lang=de", "?wait=30", "?cb=1", "?decimal=comma", "?gapMm=31")) {
      Response answer = SERVICE.given().get(base + more);
      assertEquals(200, answer.statusCode(), more);
      assertTrue(linked(answer), more);
      assertEquals("swallowing-limit", answer.path("warnings[0].code"), more);
      tag = more.isEmpty() ? answer.header("ETag") : tag;
    }
    for (String more : List.of("?warnings=false", "?notes=none")) {
      SERVICE.given().get(base + more).then().statusCode(400);
    }
    assertTrue(linked(SERVICE.given().head(base)));
    Response unchanged = SERVICE.given().header("If-None-Match", tag).get(base);
    assertEquals(304, unchanged.statusCode());
    assertTrue(linked(unchanged));
    Response part = SERVICE.given().header("Range", "bytes=0-9").get(base);
    assertEquals(206, part.statusCode());
    assertTrue(linked(part));
  }

  /**
   * A figure changed on the way is told of the changed layout, whose notes are there to be read.
   */
  @Test
  void changedLayoutIsWarnedOfByItself() {
    String base = "/v1/layouts/" + layoutId();
    Response stronger = SERVICE.given().get(base + "/plate?magnet.all.diameterMm=14");
    String link = stronger.headers().getValues("Link").get(0);
    String notes = link.substring(1, link.indexOf('>'));
    assertFalse(notes.startsWith(base + "/"));
    SERVICE
        .given()
        .get(notes)
        .then()
        .statusCode(200)
        .body("magnets", hasSize(2))
        .body("magnets[1].overLimit", equalTo(true));
  }

  /** What is posted and read again at its address has the same bytes and the same warnings. */
  @Test
  void postAndAddressHaveTheSameBytes() {
    String body = "{\"layout\":" + LAYOUT + "," + BODIES.get("/v1/traces") + "}";
    Response posted =
        SERVICE.given().contentType("application/json").body(body).post("/v1/traces?wait=60");
    for (int again = 0; again < 2; again++) {
      Response read = SERVICE.given().get(posted.header("Location"));
      assertEquals(posted.asString(), read.asString());
      assertEquals(posted.header("ETag"), read.header("ETag"));
      assertTrue(linked(read));
    }
    assertEquals("/bobMagnet", posted.path("warnings[0].pointer"));
  }

  /** Nothing of a dry run is stored, so that no link leads to its notes; the warning stands. */
  @Test
  void dryRunWarnsWithoutALink() {
    String body = "{\"layout\":" + LAYOUT.replace("\"x\":38", "\"x\":38.125") + ",";
    SERVICE
        .given()
        .contentType("application/json")
        .body(body + BODIES.get("/v1/traces") + "}")
        .post("/v1/traces?dry-run=true")
        .then()
        .statusCode(200)
        .header("Link", equalTo(null))
        .body("dryRun", equalTo(true))
        .body("warnings[0].code", equalTo("swallowing-limit"));
  }

  /** Magnets below the limit bring no warning, and a layout's own document has an empty list. */
  @Test
  void layoutsBelowTheLimitDoNotWarn() {
    String weak =
        LAYOUT
            .replace("\"diameterMm\":12,\"grade\":\"N35\"", "\"diameterMm\":6,\"grade\":\"Y10\"")
            .replace("\"diameterMm\":11,\"grade\":\"N35\"", "\"diameterMm\":6,\"grade\":\"Y10\"");
    Response stored =
        SERVICE.given().contentType("application/json").body(weak).post("/v1/layouts");
    stored.then().statusCode(201).body("warnings", hasSize(0));
    SERVICE
        .given()
        .get("/v1/layouts/" + stored.path("layoutId") + "/free-swing?x=60&y=0")
        .then()
        .statusCode(200)
        .header("Link", containsString("title=\"Safety notes\""))
        .body("warnings", equalTo(null));
    SERVICE
        .given()
        .get("/v1/sample-layouts/paper-triangle")
        .then()
        .header("Link", containsString("/safety-notes"))
        .body("warnings", hasSize(0));
  }

  @Test
  void listOfSamplesWarnsOfEach() {
    Response samples = SERVICE.given().get("/v1/sample-layouts");
    samples
        .then()
        .header("Link", equalTo(null))
        .body("samples.find { it.name == 'three-stations' }.warnings", hasSize(1))
        .body("samples.find { it.name == 'paper-triangle' }.warnings", equalTo(null))
        .body("samples[0].links.safetyNotes", notNullValue());
  }

  /** The strongest grip is a limit too. */
  @Test
  void crushingMagnetsAreWarnedOf() {
    String great =
        LAYOUT.replace(
            MAGNET,
            ",\"shape\":\"block\",\"lengthMm\":50,\"widthMm\":40,\"heightMm\":15,\"grade\":\"N45\","
                + "\"poleUp\":\"south\"");
    great = great.replace("\"x\":-22.5", "\"x\":-62.5").replace("\"gapMm\":30", "\"gapMm\":60");
    SERVICE
        .given()
        .contentType("application/json")
        .body(great)
        .post("/v1/layouts")
        .then()
        .statusCode(201)
        .body("warnings.code", equalTo(List.of("swallowing-limit", "pinching-limit")))
        .body("warnings[0].pointer", equalTo("/bobMagnet"))
        .body("warnings[1].pointer", equalTo("/magnets/0"))
        .body("warnings[1].detail", containsString("140"));
  }
}
