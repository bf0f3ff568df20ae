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
import java.util.List;
import java.util.TreeSet;
import lodeswing.RunningService;
import lodeswing.web.openapi.ContractTour;
import lodeswing.web.openapi.ContractTour.Visit;
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
  private static final String LAYOUT = ContractTour.LAYOUT;
  private static final String MAGNET = ContractTour.MAGNET;
  private static final String TRACE = ContractTour.TRACE;

  private static String layoutId() {
    return SERVICE
        .given()
        .contentType("application/json")
        .body(LAYOUT)
        .post("/v1/layouts")
        .path("layoutId");
  }

  private static boolean warned(Visit visit) {
    String form = visit.form();
    if (!form.equals("json") && !form.equals("cbor")) {
      return true;
    }
    byte[] body = visit.answer().asByteArray();
    JsonNode document =
        form.equals("json") ? JSON.readTree(body) : CBORMapper.shared().readTree(body);
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
    List<String> wrong = new ArrayList<>();
    TreeSet<String> operations = new TreeSet<>();
    for (Visit visit : new ContractTour(SERVICE).visits()) {
      if (visit.ofLayout()) {
        operations.add(visit.operationId());
        check(visit, wrong);
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(operations.size() >= 55, operations.toString());
  }

  private static void check(Visit visit, List<String> wrong) {
    Response answer = visit.answer();
    if (answer.statusCode() != 200 && answer.statusCode() != 201) {
      wrong.add(visit.name() + " answered " + answer.statusCode() + " " + answer.asString());
    } else {
      if (!linked(answer)) {
        wrong.add(visit.name() + " has no link: " + answer.headers().getValues("Link"));
      }
      if (!warned(visit)) {
        wrong.add(visit.name() + " does not warn");
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
    String body = "{\"layout\":" + LAYOUT + "," + TRACE + "}";
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
        .body(body + TRACE + "}")
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
