package lodeswing.web.problem;

import static org.hamcrest.MatcherAssert.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.lessThan;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;

import io.restassured.http.ContentType;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.net.Socket;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpRequest.BodyPublisher;
import java.net.http.HttpRequest.BodyPublishers;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.nio.charset.StandardCharsets;
import java.util.List;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class ProblemsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared("probe=true");

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

  @Test
  void brokenBodyTellsThePlaceWhereReadingStopped() {
    SERVICE
        .given()
        .contentType(ContentType.JSON)
        .body("{\"figure\": 1,\n \"figure\": 2}")
        .post("/probe/json")
        .then()
        .statusCode(400)
        .body("code", equalTo("malformed-body"))
        .body("detail", containsString("line 2"))
        .body("detail", not(containsString("uplicate")));
    SERVICE
        .given()
        .contentType(ContentType.JSON)
        .post("/probe/json")
        .then()
        .statusCode(400)
        .body("code", equalTo("malformed-body"));
  }

  @Test
  void wrongMediaTypeNamesTheRightOne() {
    SERVICE
        .given()
        .contentType("application/xml")
        .body("<a/>")
        .post("/probe/json")
        .then()
        .statusCode(415)
        .contentType("application/problem+json")
        .body("code", equalTo("unsupported-media-type"))
        .body("detail", containsString("application/json"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"gzip", "br", "identity, gzip", "x"})
  void packedBodyIsRefusedAndWhatIsAcceptedIsSaid(String coding) {
    SERVICE
        .given()
        .contentType(ContentType.JSON)
        .header("Content-Encoding", coding)
        .body("{\"figure\":1}")
        .post("/probe/json")
        .then()
        .statusCode(415)
        .header("Accept-Encoding", "identity")
        .body("code", equalTo("unsupported-media-type"));
  }

  @Test
  void bodySaidNotToBePackedIsRead() {
    SERVICE
        .given()
        .contentType(ContentType.JSON)
        .header("Content-Encoding", "identity")
        .body("{\"figure\":1}")
        .post("/probe/json")
        .then()
        .statusCode(200);
  }

  @ParameterizedTest
  @ValueSource(strings = {"/v1/limits;a=b", "/v1;x/limits", "/v1/sample-layouts/one-well;v=1"})
  void parametersInThePathAreNotDroppedInSilence(String path) {
    SERVICE
        .given()
        .urlEncodingEnabled(false)
        .get(path)
        .then()
        .statusCode(400)
        .contentType("application/problem+json")
        .body("code", equalTo("malformed-request"));
  }

  @Test
  void namesThatWereSentAreRepeatedWithoutWhatCannotBeSeen() {
    SERVICE
        .given()
        .urlEncodingEnabled(false)
        .get("/v1/limits?a%01b%E2%80%AEc%0A=1")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("?a?b?c?"))
        .body("detail", containsString("a?b?c?"));
    SERVICE
        .given()
        .contentType(ContentType.JSON)
        .body("{\"model\":\"textbook\",\"a\\u0007b\":1}")
        .post("/v1/layouts")
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItem("/a?b"));
  }

  @Test
  void bodyOverTheLimitIsRefusedWithAndWithoutAStatedLength() throws Exception {
    byte[] large =
        ("{\"figure\":" + " ".repeat(1_200_000) + "1}").getBytes(StandardCharsets.US_ASCII);
    for (BodyPublisher body :
        List.of(
            BodyPublishers.ofByteArray(large),
            BodyPublishers.ofInputStream(() -> new ByteArrayInputStream(large)))) {
      HttpResponse<String> answer =
          HttpClient.newHttpClient()
              .send(
                  HttpRequest.newBuilder(URI.create(SERVICE.uri() + "/probe/json"))
                      .header("Content-Type", "application/json")
                      .POST(body)
                      .build(),
                  BodyHandlers.ofString());
      assertThat(answer.statusCode(), equalTo(413));
      assertThat(answer.body(), containsString("body-too-large"));
    }
  }

  @Test
  void addressOverTheLimitIsRefused() {
    SERVICE
        .given()
        .get("/probe/body?cb=" + "a".repeat(9_000))
        .then()
        .statusCode(414)
        .contentType("application/problem+json")
        .body("code", equalTo("uri-too-long"));
  }

  @Test
  void insideOfTheServiceStaysInside() {
    SERVICE
        .given()
        .get("/probe/broken")
        .then()
        .statusCode(500)
        .contentType("application/problem+json")
        .body("code", equalTo("internal-fault"))
        .body(not(containsString("secret")))
        .body(not(containsString("Exception")));
  }

  @Test
  void errorForASheetIsOneLineThatCannotRun() {
    String line =
        SERVICE
            .given()
            .get("/probe/formula?format=csv")
            .then()
            .statusCode(400)
            .contentType("text/plain;charset=UTF-8")
            .extract()
            .asString();
    assertThat(line, startsWith("ERROR invalid-request: "));
    assertThat(line, not(matchesPattern("(?s).*[,;\\t\\r\\n\"].*")));
    SERVICE.given().get("/probe/formula?errors=inline").then().statusCode(200).body(equalTo(line));
  }

  @Test
  void queryThatIsNotUtf8IsRefused() {
    SERVICE
        .given()
        .urlEncodingEnabled(false)
        .get("/probe/body?size=%ff")
        .then()
        .statusCode(400)
        .body("code", equalTo("malformed-request"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "GET /v1/limits{} HTTP/1.1\r\nHost: a\r\n\r\n",
        "GET /v1/limits HTTP/1.1\r\nHost: a b\r\n\r\n",
        "GET /v1/limits HTTP/1.1\r\n\r\n",
        "GET /v1/limits HTTP/1.1\r\nHost: a\r\nX: \u0001\r\n\r\n",
        "GET /v1/%00 HTTP/1.1\r\nHost: a\r\n\r\n",
        "GET /v1/../../limits HTTP/1.1\r\nHost: a\r\n\r\n",
        "POST /probe/json HTTP/1.1\r\nHost: a\r\nContent-Length: -1\r\n\r\n",
        "POST /probe/json HTTP/1.1\r\nHost: a\r\nContent-Length: 1\r\nContent-Length: 2\r\n\r\n",
        "NOT HTTP AT ALL\r\n\r\n"
      })
  void whatIsNotHttpIsRefusedWithAProblem(String request) throws IOException {
    String answer = raw(request);
    assertThat(answer, startsWith("HTTP/1.1 4"));
    assertThat(answer, containsString("application/problem+json"));
    assertThat(answer, not(containsString("Tomcat")));
    assertThat(answer, not(containsString("<html")));
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "Accept|;;;/",
        "Accept|a/b;q=banana",
        "Accept-Encoding|gzip;q=x, ,*;q=9",
        "If-None-Match|\"\"\"\"",
        "Range|bytes=9999999999999999999-",
        "Prefer|wait=99999999999999",
        "Origin|not an origin",
        "Accept-Language|-"
      })
  void hostileHeaderNeverFailsInside(String name, String value) {
    int status = SERVICE.given().header(name, value).get("/probe/work?name=hostile").statusCode();
    assertThat(status, lessThan(500));
  }

  private static String raw(String request) throws IOException {
    try (var socket = new Socket("localhost", SERVICE.port())) {
      socket.setSoTimeout(10_000);
      socket.getOutputStream().write(request.getBytes(StandardCharsets.ISO_8859_1));
      socket.getOutputStream().flush();
      socket.shutdownOutput();
      return new String(socket.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
    }
  }

  @Test
  void echoIsRefusedAsEveryOtherMethodThatIsNotOffered() {
    for (String path : List.of("/v1/limits", "/v1/traces/trc-x", "/v1/traces", "/v1/jobs/job-x")) {
      Response echo = SERVICE.given().header("Cookie", "a=secret").request("TRACE", path);
      Response patch = SERVICE.given().patch(path);
      echo.then()
          .statusCode(405)
          .contentType("application/problem+json")
          .header("Allow", patch.header("Allow"))
          .body("code", equalTo("method-not-allowed"))
          .body(not(containsString("secret")));
      assertThat(echo.asString(), equalTo(patch.asString()));
    }
    SERVICE.given().patch("/v1/jobs/job-x").then().header("Allow", "DELETE, GET, HEAD");
    SERVICE.given().request("TRACE", "/v1/nowhere").then().statusCode(404);
  }

  @Test
  void memberGivenTwiceIsTheProblemWhosePageSaysSo() {
    SERVICE
        .given()
        .contentType(ContentType.JSON)
        .body("{\"model\":\"textbook\",\"model\":\"textbook\"}")
        .post("/v1/layouts")
        .then()
        .statusCode(400)
        .body("code", equalTo("invalid-request"))
        .body("errors.pointer", hasItem("/model"));
    SERVICE
        .given()
        .get("/problems/invalid-request")
        .then()
        .body("meaning", containsString("given twice"));
    SERVICE
        .given()
        .get("/problems/malformed-body")
        .then()
        .body("meaning", not(containsString("twice")));
  }

  @Test
  void errorForASheetSaysNothingTwice() {
    String one = SERVICE.given().get("/v1/limits?bom=nope&format=text").asString();
    assertThat(
        one,
        equalTo("ERROR invalid-request: The query parameter bom is 'nope': give true or false."));

    String two = SERVICE.given().get("/v1/limits?bom=nope&wait=x&format=text").asString();
    assertThat(two, containsString("[?bom] is 'nope'"));
    assertThat(two, containsString("[?wait] is 'x'"));
  }
}
