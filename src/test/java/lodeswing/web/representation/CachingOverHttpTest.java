package lodeswing.web.representation;

import static io.restassured.config.DecoderConfig.decoderConfig;
import static org.hamcrest.MatcherAssert.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.matchesPattern;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import io.restassured.RestAssured;
import io.restassured.http.Header;
import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import java.util.zip.GZIPInputStream;
import lodeswing.RunningService;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.TestInstance;
import org.junit.jupiter.api.TestInstance.Lifecycle;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** What RFC 9110, 9111 and 9211 and the W3C's Server Timing ask of every resource that is read. */
@TestInstance(Lifecycle.PER_CLASS)
class CachingOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String BODY_OF_BASIN = "{\"layoutId\":\"%s\"}";
  private static final String BODY_OF_TRACE =
      "{\"layoutId\":\"%s\",\"release\":{\"x\":0.7,\"y\":0.4},\"durationS\":5}";

  private String layout = "";
  private String basin = "";
  private String trace = "";

  @BeforeAll
  void makeThem() {
    layout =
        "/v1/layouts/"
            + SERVICE.given().get("/v1/sample-layouts/paper-triangle").path("layoutId").toString();
    basin = posted("/v1/basins", BODY_OF_BASIN.formatted(id(layout)), "basinId");
    trace = posted("/v1/traces", BODY_OF_TRACE.formatted(id(layout)), "traceId");
  }

  private static String id(String path) {
    return path.substring(path.lastIndexOf('/') + 1);
  }

  private static String posted(String path, String body, String name) {
    return path
        + "/"
        + SERVICE
            .given()
            .contentType("application/json")
            .body(body)
            .post(path + "?wait=60")
            .path(name);
  }

  Stream<String> resources() {
    return Stream.of(
        "/v1/sample-layouts",
        "/v1/sample-layouts/paper-triangle",
        layout,
        layout + "?format=cbor",
        layout + "/rest-points",
        layout + "/plate",
        layout + "/plate?format=png",
        layout + "/outcome?x=0.7&y=0.4",
        layout + "/outcome?x=0.7&y=0.4&format=text",
        layout + "/trace?x=0.7&y=0.4&durationS=5",
        layout + "/basin?format=json",
        trace,
        trace + "?format=csv",
        trace + "?format=csv&decimal=comma&bom=true",
        trace + "?format=cbor",
        trace + "/path",
        trace + "/path?format=png",
        basin,
        basin + "/viewer",
        basin + "/tiles/0/0/0",
        basin + "/tiles/0/0/0?patterns=true",
        basin + "/tiles/0/0/0?format=csv",
        basin + "/tiles/0/0/0?format=binary",
        basin + "/preview?width=64&height=64",
        basin + "/overlay",
        basin + "/legend",
        basin + "/legend?format=svg",
        basin + "/summary?side=64",
        "/v1/limits",
        "/v3/api-docs",
        "/v3/api-docs.yaml",
        "/problems",
        "/problems/not-found");
  }

  /** A request whose answer is not unpacked on the way. */
  private static RequestSpecification asking(String coding) {
    return SERVICE
        .given()
        .config(RestAssured.config().decoderConfig(decoderConfig().noContentDecoders()))
        .header("Accept-Encoding", coding)
        .urlEncodingEnabled(false);
  }

  private static Response plain(String path) {
    return asking("identity").get(path);
  }

  private static String tag(String path) {
    return plain(path).then().statusCode(200).extract().header("ETag");
  }

  @ParameterizedTest
  @MethodSource("resources")
  void hasAStrongTagThatStaysAndSaysHowLongItMayBeKept(String path) {
    Response first = plain(path);
    // RFC 9110, section 8.8.3: quoted, and strong without W/.
    assertThat(first.header("ETag"), matchesPattern("\"[!#-~]+\""));
    assertThat(first.header("ETag"), equalTo(tag(path)));
    // RFC 9111, section 5.2.2, and RFC 8246 for what never changes.
    boolean byResult = path.startsWith("/v1/basins/") || path.startsWith("/v1/traces/");
    String policy =
        byResult
            ? "public, max-age=31536000, immutable"
            : path.equals("/v1/limits") || path.startsWith("/v3/")
                ? "no-cache"
                : "public, max-age=300, stale-while-revalidate=86400";
    assertThat(first.header("Cache-Control"), equalTo(policy));
  }

  @ParameterizedTest
  @MethodSource("resources")
  void ifNoneMatchIsAWeakComparisonWithAList(String path) {
    Response whole = plain(path);
    String tag = whole.header("ETag");
    // RFC 9110, section 13.1.2: a list, weak comparison, a star.
    for (String named : new String[] {tag, "\"x\", " + tag, "W/" + tag, "*"}) {
      for (String method : new String[] {"GET", "HEAD"}) {
        Response known = asking("identity").header("If-None-Match", named).request(method, path);
        assertThat(path + " " + named, known.statusCode(), equalTo(304));
        assertThat(known.asByteArray().length, equalTo(0));
        // RFC 9110, section 15.4.5: what a cache needs to renew, and nothing about the body.
        for (String same : new String[] {"ETag", "Cache-Control"}) {
          assertThat(known.header(same), equalTo(whole.header(same)));
        }
        assertThat(vary(known), equalTo(vary(whole)));
        assertThat(known.header("Content-Type"), nullValue());
        assertThat(known.header("Content-Language"), nullValue());
      }
    }
    assertThat(
        asking("identity").header("If-None-Match", "\"x\"").get(path).statusCode(), equalTo(200));
  }

  @ParameterizedTest
  @MethodSource("resources")
  void ifMatchIsAStrongComparison(String path) {
    String tag = tag(path);
    // RFC 9110, section 13.1.1.
    for (String named : new String[] {tag, "\"x\", " + tag, "*"}) {
      asking("identity").header("If-Match", named).get(path).then().statusCode(200);
    }
    for (String other : new String[] {"\"x\"", "W/" + tag, "x"}) {
      asking("identity")
          .header("If-Match", other)
          .get(path)
          .then()
          .statusCode(412)
          .header("ETag", tag)
          .header("Cache-Control", "no-store");
    }
    // RFC 9110, section 13.2.2: If-Match is judged before If-None-Match.
    asking("identity")
        .header("If-Match", "\"x\"")
        .header("If-None-Match", tag)
        .get(path)
        .then()
        .statusCode(412);
  }

  @ParameterizedTest
  @MethodSource("resources")
  void headHasTheFieldsOfGet(String path) {
    // RFC 9110, section 9.3.2.
    for (String coding : new String[] {"identity", "gzip"}) {
      Response get = asking(coding).get(path);
      Response head = asking(coding).head(path);
      assertThat(head.statusCode(), equalTo(200));
      assertThat(head.asByteArray().length, equalTo(0));
      assertThat(lasting(head), equalTo(lasting(get)));
      assertThat(get.header("Content-Length"), equalTo(String.valueOf(get.asByteArray().length)));
    }
  }

  /** The fields that do not tell of the one answer: neither its date nor its time. */
  private static List<String> lasting(Response answer) {
    return answer.headers().asList().stream()
        .filter(field -> !Set.of("Date", "Server-Timing").contains(field.getName()))
        .map(Header::toString)
        .sorted()
        .toList();
  }

  @ParameterizedTest
  @MethodSource("resources")
  void gzippedTextHasATagOfItsOwn(String path) throws IOException {
    Response plain = plain(path);
    Response packed = asking("gzip").get(path);
    if (packed.header("Content-Encoding") == null) {
      assertThat(packed.header("ETag"), equalTo(plain.header("ETag")));
      return;
    }
    // RFC 9110, section 8.8.3.3.
    assertThat(packed.header("ETag"), not(equalTo(plain.header("ETag"))));
    assertThat(packed.header("ETag"), endsWith("\""));
    assertThat(vary(plain).contains("accept-encoding"), equalTo(true));
    asking("gzip")
        .header("If-None-Match", packed.header("ETag"))
        .get(path)
        .then()
        .statusCode(304)
        .header("ETag", packed.header("ETag"));
    asking("identity")
        .header("If-None-Match", packed.header("ETag"))
        .get(path)
        .then()
        .statusCode(200);
    try (var unpacked = new GZIPInputStream(new ByteArrayInputStream(packed.asByteArray()))) {
      assertThat(Arrays.equals(unpacked.readAllBytes(), plain.asByteArray()), equalTo(true));
    }
  }

  @ParameterizedTest
  @MethodSource("resources")
  void oneRangeIsOfTheBytesAsTheyAre(String path) {
    Response plain = plain(path);
    byte[] whole = plain.asByteArray();
    int length = whole.length;
    assertThat(plain.header("Accept-Ranges"), equalTo("bytes"));
    // RFC 9110, sections 14.1.2 and 15.3.7; gzip is welcome, but a range is of no coding.
    range(path, "bytes=0-4", plain, Arrays.copyOfRange(whole, 0, Math.min(5, length)), 0);
    range(path, "bytes=3-", plain, Arrays.copyOfRange(whole, 3, length), 3);
    range(path, "bytes=-2", plain, Arrays.copyOfRange(whole, length - 2, length), length - 2);
    range(path, "bytes=-99999999", plain, whole, 0);
    range(path, "bytes=0-99999999999999999999", plain, whole, 0);
    range(path, "bytes=1-99999999", plain, Arrays.copyOfRange(whole, 1, length), 1);
    // RFC 9110, section 15.5.17.
    for (String outside :
        new String[] {"bytes=" + length + "-", "bytes=-0", "bytes=99999999999999999999-"}) {
      asking("gzip")
          .header("Range", outside)
          .get(path)
          .then()
          .statusCode(416)
          .header("Content-Range", "bytes */" + length);
    }
    // RFC 9110, section 14.2: what is not one range of bytes is ignored, and so it is with HEAD.
    for (String ignored : new String[] {"bytes=0-0,2-2", "lines=0-1", "bytes=4-1"}) {
      asking("identity")
          .header("Range", ignored)
          .get(path)
          .then()
          .statusCode(200)
          .header("Content-Length", String.valueOf(length));
    }
    asking("identity").header("Range", "bytes=0-4").head(path).then().statusCode(200);
  }

  private static void range(String path, String asked, Response plain, byte[] part, int first) {
    Response ranged = asking("gzip").header("Range", asked).get(path);
    assertThat(path + " " + asked, ranged.statusCode(), equalTo(206));
    assertThat(
        ranged.header("Content-Range"),
        equalTo(
            "bytes %d-%d/%d"
                .formatted(first, first + part.length - 1, plain.asByteArray().length)));
    assertThat(ranged.header("ETag"), equalTo(plain.header("ETag")));
    assertThat(ranged.header("Content-Encoding"), nullValue());
    assertThat(ranged.header("Content-Length"), equalTo(String.valueOf(part.length)));
    assertThat(Arrays.equals(ranged.asByteArray(), part), equalTo(true));
  }

  @ParameterizedTest
  @MethodSource("resources")
  void ifRangeGuardsTheRest(String path) {
    String tag = tag(path);
    // RFC 9110, section 13.1.5: strong comparison, and nothing here has a date.
    conditionalRange(path, tag, 206);
    for (String other : new String[] {"W/" + tag, "\"x\"", "Thu, 26 Nov 2026 12:00:00 GMT", "*"}) {
      conditionalRange(path, other, 200);
    }
    String packed = asking("gzip").get(path).header("ETag");
    if (!packed.equals(tag)) {
      conditionalRange(path, packed, 200);
    }
    // RFC 9110, section 13.2.2: If-None-Match is judged before the range.
    asking("identity")
        .header("Range", "bytes=0-1")
        .header("If-None-Match", tag)
        .get(path)
        .then()
        .statusCode(304);
  }

  private static void conditionalRange(String path, String condition, int status) {
    asking("gzip")
        .header("Range", "bytes=1-")
        .header("If-Range", condition)
        .get(path)
        .then()
        .statusCode(status);
  }

  @ParameterizedTest
  @MethodSource("resources")
  void variesByWhatChoosesTheAnswer(String path) {
    // RFC 9110, section 12.5.5; an address that names the form leaves nothing to Accept.
    Response answer = plain(path);
    assertThat(vary(answer).contains("accept"), equalTo(!path.contains("format=")));
    String type = answer.header("Content-Type");
    boolean binary =
        type.startsWith("image/png") || type.contains("cbor") || type.contains("basin-tile");
    assertThat(vary(answer).contains("accept-encoding"), equalTo(!binary));
  }

  private static Set<String> vary(Response answer) {
    return answer.headers().getValues("Vary").stream()
        .flatMap(line -> Arrays.stream(line.split(",")))
        .map(name -> name.strip().toLowerCase(java.util.Locale.ROOT))
        .collect(Collectors.toCollection(TreeSet::new));
  }

  @Test
  void eachFormAndCodingHasAnotherTag() {
    List<String> forms = List.of("json", "csv", "csv&decimal=comma", "csv&bom=true", "cbor");
    Set<String> tags = new HashSet<>();
    forms.forEach(form -> tags.add(tag(trace + "?format=" + form)));
    forms.forEach(form -> tags.add(asking("gzip").get(trace + "?format=" + form).header("ETag")));
    // CBOR is not packed.
    assertThat(tags, hasSize(2 * forms.size() - 1));
  }

  @Test
  void oldNameOfTheCodingIsTheSameCoding() {
    // RFC 9110, section 8.4.1.3.
    asking("x-gzip").get(trace).then().header("Content-Encoding", "gzip");
    asking("x-gzip;q=0, *;q=0.1").get(trace).then().header("Content-Encoding", nullValue());
  }

  @ParameterizedTest
  @ValueSource(strings = {"/v1/nowhere", "/v1/jobs/none", "/v1/limits?format=gif"})
  void errorIsKeptByNobodyAndComesWhole(String path) {
    asking("gzip")
        .header("Range", "bytes=0-1")
        .header("If-None-Match", "*")
        .get(path)
        .then()
        .header("Cache-Control", "no-store")
        .header("ETag", nullValue())
        .header("Accept-Ranges", nullValue())
        .header("Content-Range", nullValue())
        .contentType("application/problem+json");
  }

  @Test
  void postedTraceIsWhatIsReadWhereItSays() {
    // RFC 9110, sections 8.7 and 15.3.2; a condition or a range is for reading only.
    asking("identity")
        .contentType("application/json")
        .header("Range", "bytes=0-1")
        .body(BODY_OF_TRACE.formatted(id(layout)))
        .post("/v1/traces?wait=60")
        .then()
        .statusCode(200)
        .header("Content-Location", trace)
        .header("ETag", tag(trace));
  }

  @Test
  void answerToAPostThatIsNoResourceHasNoTag() {
    SERVICE
        .given()
        .contentType("application/json")
        .body(BODY_OF_TRACE.formatted(id(layout)))
        .post("/v1/traces?dry-run=true")
        .then()
        .statusCode(200)
        .header("ETag", nullValue());
  }

  @Test
  void timesTellWhereTheyWent() {
    String url = layout + "/trace?x=0.123&y=-0.456&durationS=4&wait=60";
    String time = ";dur=\\d+\\.\\d{3}";
    Function<String, String> pattern =
        name -> "read" + time + ", " + name + time + ", render" + time + ", total" + time;
    // W3C, Server Timing, section 3; RFC 9211, section 2.
    plain(url)
        .then()
        .header("Server-Timing", matchesPattern(pattern.apply("compute")))
        .header("Cache-Status", equalTo("lodeswing; fwd=miss; stored"));
    plain(url)
        .then()
        .header("Server-Timing", matchesPattern(pattern.apply("store")))
        .header("Cache-Status", startsWith("lodeswing; hit"));
    plain(layout).then().header("Server-Timing", matchesPattern("total" + time));
    plain(layout).then().header("Cache-Status", nullValue());
    asking("identity")
        .header("If-None-Match", "*")
        .get(basin + "/tiles/0/0/0")
        .then()
        .statusCode(304)
        .header("Server-Timing", containsString("total"))
        .header("Cache-Status", startsWith("lodeswing; hit"));
    asking("identity")
        .header("Range", "bytes=0-1")
        .get(basin + "/tiles/0/0/0")
        .then()
        .statusCode(206)
        .header("Server-Timing", containsString("total"));
  }

  @Test
  void pagesThatMayAskMayReadTheTimes() {
    // W3C, Resource Timing, Timing-Allow-Origin.
    plain(layout).then().header("Timing-Allow-Origin", "*");
  }

  @Test
  void keptAnswerStillConfirmsHowLongItWaits() {
    plain(basin + "/tiles/0/0/0").then().statusCode(200);
    asking("identity")
        .header("Prefer", "wait=5")
        .get(basin + "/tiles/0/0/0")
        .then()
        .header("Preference-Applied", "wait=5");
  }

  @Test
  void keptTablesOfOneMapHaveTheLabelsOfTheirOwnLayouts() {
    // Both maps have one result, since a label changes no end.
    Map<String, String> labelled =
        Stream.of("Mole", "Quay").collect(Collectors.toMap(Function.identity(), this::table));
    labelled.forEach((label, table) -> assertThat(table, containsString("," + label + ",")));
    assertThat(labelled.get("Mole"), not(containsString("Quay")));
  }

  private String table(String label) {
    String body =
        """
        {"layout": {"model": "textbook", "omega0": 0.5, "drag": 0.2, "height": 0.3, "magnets": [
          {"x": 0.577, "y": 0, "strength": 1, "label": "%s"},
          {"x": -0.577, "y": 0, "strength": 1, "label": "Pier"}]}}
        """
            .formatted(label);
    String map = posted("/v1/basins", body, "basinId");
    String path = map + "/tiles/0/0/0?format=csv&wait=60";
    return plain(path).then().statusCode(200).extract().asString();
  }
}
