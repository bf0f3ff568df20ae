package lodeswing.web.restpoint;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.HashSet;
import java.util.List;
import lodeswing.RunningService;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The larger sample layouts: rest points that are named, and a release that comes to one. */
class LargeSampleRestPointsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  @ParameterizedTest
  @ValueSource(strings = {"closed-doors", "uneven-coast", "heavy-bar", "crowded-shelf"})
  void releaseComesToANamedRestPointAndIsDrawn(String name) {
    String id = given().queryParam("format", "text").get("/v1/sample-layouts/" + name).asString();
    String layout = "/v1/layouts/" + id;

    Response points = patiently(given(), layout + "/rest-points");

    assertEquals(200, points.statusCode(), points.asString());
    assertEquals(true, points.path("complete"));
    List<String> names = points.path("restPoints.name");
    List<String> ids = points.path("restPoints.id");
    assertEquals(names.size(), new HashSet<>(names).size(), names.toString());
    List<List<String>> sides = points.path("saddles.between");
    sides.forEach(between -> assertTrue(ids.containsAll(between), between.toString()));
    String csv = given().queryParam("format", "csv").get(layout + "/rest-points").asString();
    assertTrue(csv.startsWith("id,name,x"), csv);
    assertEquals(ids.size() + 1, csv.split("\r\n").length);
    given()
        .queryParam("format", "cbor")
        .get(layout + "/rest-points")
        .then()
        .statusCode(200)
        .contentType("application/cbor");

    Response trace =
        patiently(
            given().queryParam("x", 70).queryParam("y", 25).queryParam("durationS", 15),
            layout + "/trace");
    assertEquals(200, trace.statusCode(), trace.asString());
    if (trace.path("settledAtS") != null) {
      assertTrue(ids.contains(trace.<String>path("outcome.restPointId")), trace.asString());
    }
    Response picture = given().queryParam("format", "png").get(trace.<String>path("links.path"));
    assertEquals(200, picture.statusCode());
    if (name.equals("closed-doors")) {
      assertTrue(trace.path("notes").toString().contains("not over a magnet"), trace.asString());
    }
  }

  /** Asks again while the work is still under way, as a client would. */
  private static Response patiently(RequestSpecification request, String url) {
    Response answer = request.queryParam("wait", 60).get(url);
    for (int again = 0; answer.statusCode() == 202 && again < 8; again++) {
      answer = request.get(url);
    }
    return answer;
  }
}
