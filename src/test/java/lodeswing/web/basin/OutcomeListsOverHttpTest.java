package lodeswing.web.basin;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.List;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Lists of releases over HTTP, as columns and as tables. */
class OutcomeListsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String PLANE =
      "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.8,\"height\":0.3,\"magnets\":["
          + "{\"x\":0.577,\"y\":0,\"strength\":1,\"label\":\"Tide\"},"
          + "{\"x\":-0.2885,\"y\":0.5,\"strength\":1,\"label\":\"Dune\"},"
          + "{\"x\":-0.2885,\"y\":-0.5,\"strength\":1,\"label\":\"Reef\"}]}";

  private static String url() {
    String layout =
        SERVICE
            .given()
            .contentType("application/json")
            .body(PLANE)
            .post("/v1/layouts")
            .path("layoutId");
    return "/v1/layouts/" + layout + "/outcomes";
  }

  private static Response post(String type, String body, String query) {
    return SERVICE.given().contentType(type).body(body).post(url() + "?wait=60" + query);
  }

  @Test
  void columnsAreAnsweredInTheirOrder() {
    Response answer =
        post(
            "application/json",
            "{\"x\":[0.6,-0.3,-0.3,1.2],\"y\":[0,0.5,-0.5,0.7],\"vx\":[0,0,0,0.4],"
                + "\"vy\":[0,0,0,0]}",
            "");

    answer
        .then()
        .statusCode(200)
        .header("Location", startsWith("/v1/outcomes/out-"))
        .body("outcome", hasSize(4))
        .body("outcome[0]", equalTo("Tide"))
        .body("outcome[1]", equalTo("Dune"))
        .body("outcome[2]", equalTo("Reef"))
        .body("sealedAtS[0]", equalTo(0));
    String alone =
        SERVICE
            .given()
            .get(url().replace("/outcomes", "/outcome") + "?x=1.2&y=0.7&vx=0.4&format=text")
            .asString();
    assertEquals(alone, answer.path("outcome[3]"));
  }

  @Test
  void tableGoesInAndATableComesOut() {
    Response answer =
        post("text/csv", "x,y\r\n0.6,0\r\n-0.3,0.5\r\n1.4,-1.1\r\n", "&format=csv&settled=true");
    String[] lines = answer.asString().split("\r\n");

    assertEquals("x,y,outcome,settled_s,sealed_s", lines[0]);
    assertTrue(lines[1].matches("0\\.6,0,Tide,[0-9.]+,0"), lines[1]);
    assertEquals(4, lines.length);
    String[] last = lines[3].split(",");
    assertTrue(Double.parseDouble(last[3]) > Double.parseDouble(last[4]));
  }

  @Test
  void decimalCommasAreReadAndWritten() {
    post("text/csv", "x_mm;y_mm\n0,6;0\n", "&format=csv&decimal=comma")
        .then()
        .statusCode(200)
        .body(containsString("0,6;0;Tide;0"));
  }

  @Test
  void listCanBeFetchedAgainByItsId() {
    Response first = post("application/json", "{\"x\":[1,0.5],\"y\":[0.25,0.125]}", "");
    Response again = SERVICE.given().get(first.header("Location"));

    again
        .then()
        .header("Cache-Control", containsString("immutable"))
        .header("Cache-Status", containsString("hit"));
    assertArrayEquals(first.asByteArray(), again.asByteArray());
    SERVICE.given().get("/v1/outcomes/out-nothing").then().statusCode(404);
  }

  @Test
  void undecidedEndsHaveNoTime() {
    String still = PLANE.replace("\"drag\":0.8", "\"drag\":0");
    String layout =
        SERVICE
            .given()
            .contentType("application/json")
            .body(still)
            .post("/v1/layouts")
            .path("layoutId");
    SERVICE
        .given()
        .contentType("application/json")
        .body("{\"x\":[1.5],\"y\":[0.2]}")
        .post("/v1/layouts/" + layout + "/outcomes?wait=60")
        .then()
        .body("outcome[0]", equalTo("undecided"))
        .body("sealedAtS[0]", equalTo(null));
  }

  @Test
  void faultsAreNamedByLineOrColumn() {
    post("application/json", "{\"x\":[1,2],\"y\":[1]}", "")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("/y"));
    post("text/csv", "x,y\n1,oops\n3\n1,1e9\n", "")
        .then()
        .statusCode(400)
        .body("errors.pointer", equalTo(List.of("/line/2/y", "/line/3", "/line/4/y")));
    post("text/csv", "a,b\n1,2\n", "").then().statusCode(400);
    post("text/csv", "x,y\n", "").then().statusCode(400);
    post("text/csv", "", "").then().statusCode(400);
    post("application/json", "{\"x\":[],\"y\":[]}", "").then().statusCode(400);
    post("text/plain", "x,y\n1,2\n", "").then().statusCode(415);
  }

  @Test
  void listOverTheLimitIsRefusedBeforeItIsComputed() {
    post("text/csv", "x,y\n" + "0.1,0.1\n".repeat(100_001), "")
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"));
    post("text/csv", "x,y\n" + "0.1,0.1\n".repeat(5_001), "&settled=true")
        .then()
        .statusCode(422)
        .body("errors[0].detail", containsString("5000"));
  }

  @Test
  void longListsPassWhereOtherBodiesWouldNot() {
    String table = "x,y\n" + "0.1000000000000000,0.2000000000000000\n".repeat(60_000);
    post("text/csv", table, "&dry-run=true")
        .then()
        .statusCode(200)
        .body("releases", equalTo(60_000));
    SERVICE
        .given()
        .contentType("application/json")
        .body(" ".repeat(1_100_000))
        .post("/v1/basins")
        .then()
        .statusCode(413);
  }

  @Test
  void labelThatLooksLikeAFormulaStaysText() {
    String layout =
        SERVICE
            .given()
            .contentType("application/json")
            .body(PLANE.replace("Tide", "=1+1"))
            .post("/v1/layouts")
            .path("layoutId");
    SERVICE
        .given()
        .contentType("text/csv")
        .body("x,y\n0.6,0\n")
        .post("/v1/layouts/" + layout + "/outcomes?format=csv&wait=60")
        .then()
        .body(containsString("'=1+1"))
        .body(not(containsString(",=1+1")));
  }
}
