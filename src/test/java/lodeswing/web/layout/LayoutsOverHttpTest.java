package lodeswing.web.layout;

import static io.restassured.RestAssured.given;
import static lodeswing.web.layout.LayoutBodies.bench;
import static lodeswing.web.layout.LayoutBodies.disc;
import static org.hamcrest.Matchers.containsInAnyOrder;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.hasSize;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.List;
import java.util.Random;
import lodeswing.RunningService;
import lodeswing.web.body.DamagedBodies;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class LayoutsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final List<String> SAMPLE_BODIES =
      SampleLayouts.load().all().stream().map(sample -> sample.sent().toJson()).toList();

  private static Response post(byte[] body) {
    return given().contentType("application/json").body(body).post("/v1/layouts");
  }

  private static Response post(String body) {
    return given().contentType("application/json").body(body).post("/v1/layouts");
  }

  private static String fresh() {
    double gap = 20 + new Random().nextInt(1_000_000) / 1e6;
    return bench(String.valueOf(gap), disc("45", "0", ",\"label\":\"Tide\""));
  }

  @Test
  void layoutIsCreatedOnceAndGivenBack() {
    String body = fresh();

    Response first = post(body);
    Response second = post(body);

    assertEquals(201, first.statusCode());
    assertEquals(200, second.statusCode());
    assertArrayEquals(first.asByteArray(), second.asByteArray());
    String id = first.path("layoutId");
    assertEquals("/v1/layouts/" + id, first.header("Location"));
    Response stored = given().get("/v1/layouts/" + id);
    assertEquals("Tide", stored.path("layout.magnets[0].label"));
    given()
        .header("If-None-Match", stored.header("ETag"))
        .get("/v1/layouts/" + id)
        .then()
        .statusCode(304);
    given()
        .queryParam("format", "cbor")
        .get("/v1/layouts/" + id)
        .then()
        .statusCode(200)
        .contentType("application/cbor");
  }

  @Test
  void dryRunStoresNothing() {
    String body = fresh();

    Response dry =
        given()
            .contentType("application/json")
            .queryParam("dry-run", "true")
            .body(body)
            .post("/v1/layouts");

    assertEquals(200, dry.statusCode());
    String id = dry.path("layoutId");
    given().get("/v1/layouts/" + id).then().statusCode(404).body("code", equalTo("not-found"));
    post(body).then().statusCode(201).body("layoutId", equalTo(id));
  }

  @Test
  void fiveFaultsGiveFiveErrors() {
    String body =
        bench("25", disc("45", "0"))
            .replace("\"lengthMm\":420", "\"lengthMm\":-1")
            .replace("\"swingsToHalf\":25", "\"swingsToHalf\":\"often\"")
            .replace("\"gapMm\"", "\"gabMm\"")
            .replace("\"poleUp\":\"south\"", "\"poleUp\":\"west\"");

    post(body)
        .then()
        .statusCode(400)
        .contentType("application/problem+json")
        .body("errors", hasSize(5))
        .body(
            "errors.pointer",
            hasItems(
                "/pendulum/lengthMm",
                "/damping/swingsToHalf",
                "/gabMm",
                "/gapMm",
                "/magnets/0/poleUp"));
  }

  @Test
  void impossibleLayoutIsRefusedWithItsFigure() {
    post(bench("3", disc("0", "0")))
        .then()
        .statusCode(422)
        .body("code", equalTo("impossible-layout"))
        .body("errors[0].detail", containsString("2 mm into magnet 1"));
  }

  @Test
  void rigIsMadeAndChangedByGetAlone() {
    String id =
        given().queryParam("format", "text").get("/v1/sample-layouts/three-stations").asString();
    String changed =
        given()
            .queryParam("format", "text")
            .queryParam("gapMm", "30")
            .queryParam("magnet.2.poleUp", "north")
            .get("/v1/layouts/" + id + "/variant")
            .asString();

    assertTrue(changed.matches("lay-[a-z2-7]{26}"), changed);
    given()
        .get("/v1/layouts/" + changed)
        .then()
        .statusCode(200)
        .body("layout.gapMm", equalTo(30))
        .body("layout.magnets[1].poleUp", equalTo("north"));
  }

  @Test
  void wrongNameInAFormulaIsReadableInACell() {
    String id =
        given().queryParam("format", "text").get("/v1/sample-layouts/three-stations").asString();

    Response answer =
        given()
            .queryParam("gabMm", "30")
            .queryParam("format", "text")
            .queryParam("errors", "inline")
            .get("/v1/layouts/" + id + "/variant");

    assertEquals(200, answer.statusCode());
    assertTrue(answer.asString().startsWith("ERROR "), answer.asString());
    assertTrue(answer.asString().contains("gapMm"), answer.asString());
  }

  @Test
  void samplesAreListedAndFoundById() {
    Response list = given().get("/v1/sample-layouts");

    list.then().statusCode(200).body("samples", hasSize(11));
    String id = list.path("samples[3].layoutId");
    given().get("/v1/layouts/" + id).then().statusCode(200);
    given()
        .get("/v1/sample-layouts/three-station")
        .then()
        .statusCode(404)
        .body("detail", containsString("three-stations"));
  }

  @Test
  void damagedBodiesGiveNoServerErrorAndNothingHalf() {
    var damaged = new DamagedBodies(SAMPLE_BODIES, 20_261_125);
    for (int i = 0; i < 1_000; i++) {
      Response answer = post(damaged.next());
      assertTrue(answer.statusCode() < 500, answer.asString());
      if (answer.statusCode() < 300) {
        String id = answer.path("layoutId");
        given().get("/v1/layouts/" + id).then().statusCode(200);
      } else {
        assertTrue(answer.statusCode() == 400 || answer.statusCode() == 422, answer.asString());
        answer.then().contentType("application/problem+json");
      }
    }
  }

  private static String stations() {
    return given().queryParam("format", "text").get("/v1/sample-layouts/three-stations").asString();
  }

  @Test
  void everyFaultOfAnAddressIsToldAtOnceWithTheNearestName() {
    given()
        .get("/v1/layouts/" + stations() + "/outcome?X=-70&y=30&gapmm=3&gapMm=-5&wait=soon")
        .then()
        .statusCode(400)
        .body("code", equalTo("unknown-parameter"))
        .body("errors.pointer", containsInAnyOrder("?x", "?X", "?gapmm", "?gapMm", "?wait"))
        .body("errors.find { it.pointer == '?X' }.detail", containsString("did you mean x?"));
    given()
        .get("/v1/layouts/" + stations() + "/variant?damping.swingsToHalf=10&qualityFactor=40")
        .then()
        .statusCode(400)
        .body("errors.pointer", equalTo(List.of("?damping.swingsToHalf")))
        .body("errors[0].detail", containsString("keep one"));
    given()
        .get("/v1/layouts/lay-none/outcome?X=-70")
        .then()
        .statusCode(400)
        .body("errors.pointer", equalTo(List.of("?x", "?y")));
    given().get("/v1/layouts/lay-none/outcome?x=1&y=2").then().statusCode(404);
  }

  @Test
  void samplesComeAsATableAndAsNames() {
    List<String> names = given().get("/v1/sample-layouts").path("samples.name");

    String table = given().queryParam("format", "csv").get("/v1/sample-layouts").asString();
    assertEquals("name,layout_id,title,model,magnets,description", table.split("\r\n")[0]);
    assertTrue(table.contains("\r\nthree-stations," + stations() + ","), table);
    assertEquals(names.size() + 1, table.split("\r\n").length);

    String lines = given().queryParam("format", "text").get("/v1/sample-layouts").asString();
    assertEquals(names, List.of(lines.split("\n")));
  }

  @Test
  void linksOfALayoutLeadToOutcomesAndMaps() {
    String self = "/v1/layouts/" + stations();
    given()
        .get(self)
        .then()
        .body("links.outcome", equalTo(self + "/outcome"))
        .body("links.outcomes", equalTo(self + "/outcomes"))
        .body("links.basin", equalTo(self + "/basin"))
        .body("links.basins", equalTo("/v1/basins"));
  }
}
