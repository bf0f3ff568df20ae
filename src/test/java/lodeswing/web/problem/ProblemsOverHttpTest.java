package lodeswing.web.problem;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.startsWith;

import io.restassured.http.ContentType;
import java.util.List;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class ProblemsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  @Test
  void unknownPathIsAProblem() {
    SERVICE
        .given()
        .get("/v1/nowhere")
        .then()
        .statusCode(404)
        .contentType("application/problem+json")
        .header("Cache-Control", "no-store")
        .body("type", equalTo("/problems/not-found"))
        .body("status", equalTo(404))
        .body("code", equalTo("not-found"))
        .body("errors", hasSize(0));
  }

  @Test
  void wrongMethodIsAProblemThatNamesTheRightOnes() {
    SERVICE
        .given()
        .delete("/v1/limits")
        .then()
        .statusCode(405)
        .header("Allow", "GET, HEAD")
        .contentType("application/problem+json")
        .body("code", equalTo("method-not-allowed"));
  }

  @Test
  void problemPagesComeAsJsonAndHtml() {
    SERVICE
        .given()
        .get("/problems/too-costly")
        .then()
        .statusCode(200)
        .contentType(ContentType.JSON)
        .body("type", equalTo("/problems/too-costly"))
        .body("status", equalTo(422));
    SERVICE
        .given()
        .accept("text/html,application/xhtml+xml,*/*;q=0.8")
        .get("/problems/too-costly")
        .then()
        .statusCode(200)
        .contentType(startsWith("text/html"))
        .body(containsString("How to mend it"));
  }

  @Test
  void everyFaultOfAQueryIsToldAtOnceWithTheNearestName() {
    SERVICE
        .given()
        .get("/v1/limits?fromat=csv&bom=perhaps&cb=17")
        .then()
        .statusCode(400)
        .body("code", equalTo("unknown-parameter"))
        .body("errors.pointer", equalTo(List.of("?fromat", "?bom")))
        .body("errors[0].detail", containsString("format"));
  }
}
