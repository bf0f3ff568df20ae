package lodeswing.web.trace;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;

import io.restassured.response.Response;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Motions that the model cannot follow to a rest point: what their answers say. */
class EndedTracesOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String RIG =
      "{\"model\":\"bench\","
          + "\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":400,\"bobMassG\":%s},"
          + "\"bobMagnet\":{\"shape\":\"sphere\",\"diameterMm\":10,\"grade\":\"N35\","
          + "\"poleDown\":\"north\"},\"gapMm\":10,"
          + "\"magnets\":[{\"shape\":\"sphere\",\"grade\":\"N35\",%s,\"label\":\"Grove\"}],"
          + "\"damping\":{\"swingsToHalf\":30}}";

  /**
   * The bob's centre passes 60 mm from the middle at a height of 19.5 mm; side by side, magnets
   * with opposite poles up attract.
   */
  private static final String IN_THE_WAY =
      RIG.formatted(
          "20", "\"diameterMm\":12,\"x\":60,\"y\":0,\"bottomMm\":13,\"poleUp\":\"north\"");

  private static final String PUSHING =
      RIG.formatted("6", "\"diameterMm\":20,\"x\":0,\"y\":0,\"bottomMm\":-20,\"poleUp\":\"north\"");

  private static String outcome(String layout) {
    String id =
        SERVICE
            .given()
            .contentType("application/json")
            .body(layout)
            .post("/v1/layouts")
            .path("layoutId");
    return "/v1/layouts/" + id + "/outcome?x=-280&y=0&wait=60";
  }

  private static Response followed(String layout) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body("{\"layout\":" + layout + ",\"release\":{\"x\":-280,\"y\":0},\"durationS\":5}")
        .post("/v1/traces");
  }

  private static void endsWith(String layout, String kind, String words) {
    String url = outcome(layout);
    SERVICE
        .given()
        .get(url)
        .then()
        .statusCode(200)
        .body("outcome.kind", equalTo(kind))
        .body("outcome.name", equalTo(words))
        .body("outcome.label", nullValue())
        .body("outcome.restPointId", nullValue())
        .body("settledAtS", nullValue())
        .body("notReached", hasItem("settledAtS"))
        .body("notes", hasItem(containsString("the model holds no further")));
    SERVICE.given().get(url + "&format=text").then().statusCode(200).body(equalTo(words));
    SERVICE
        .given()
        .get(url.replace("/outcome", "/trace") + "&durationS=5&value=settledAtS")
        .then()
        .body(equalTo("not reached"));
    followed(layout)
        .then()
        .statusCode(200)
        .body("events.kind", hasItem(kind))
        .body("events.kind", not(hasItem("settled")));
  }

  @Test
  void bobThatMeetsAMagnetEndsThere() {
    endsWith(IN_THE_WAY, "magnet-contact", "the bob touches a magnet");
  }

  @Test
  void bobThatIsPushedUpLeavesItsCordSlack() {
    endsWith(PUSHING, "suspension-slack", "the suspension goes slack");
  }
}
