package lodeswing.web.representation;

import static org.hamcrest.MatcherAssert.assertThat;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.nullValue;
import static org.hamcrest.Matchers.startsWith;

import java.io.ByteArrayInputStream;
import java.net.URI;
import java.net.http.HttpClient;
import java.net.http.HttpRequest;
import java.net.http.HttpResponse;
import java.net.http.HttpResponse.BodyHandlers;
import java.util.zip.GZIPInputStream;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import tools.jackson.databind.JsonNode;
import tools.jackson.dataformat.cbor.CBORMapper;

class RepresentationOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared("probe=true");

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "*/*|application/json",
        "text/csv|text/csv",
        "text/csv;q=0.5, application/cbor|application/cbor",
        "image/*|image/png",
        "application/json;q=0.1, */*;q=0.2|text/csv",
        "text/html, text/csv;q=0.9, */*;q=0.1|text/csv"
      })
  void acceptChoosesTheForm(String accept, String expected) {
    SERVICE
        .given()
        .accept(accept)
        .get("/probe/body")
        .then()
        .statusCode(200)
        .contentType(startsWith(expected));
  }

  @Test
  void formatWinsOverAccept() {
    SERVICE
        .given()
        .accept("application/json")
        .get("/probe/body?format=csv")
        .then()
        .contentType(startsWith("text/csv"));
  }

  @ParameterizedTest
  @CsvSource({"video/mp4,", "application/json,?format=gif", "*/*;q=0,"})
  void unofferedFormNamesWhatIsOffered(String accept, String query) {
    SERVICE
        .given()
        .accept(accept)
        .get("/probe/body" + (query == null ? "" : query))
        .then()
        .statusCode(406)
        .body("code", equalTo("not-acceptable"))
        .body("detail", containsString("csv (text/csv)"));
  }

  @Test
  void sameBodyIsNotSentAgain() {
    String tag = SERVICE.given().get("/probe/body").header("ETag");
    assertThat(tag, startsWith("\""));
    for (String condition : new String[] {tag, "\"other\", " + tag, "W/" + tag, "*"}) {
      SERVICE
          .given()
          .header("If-None-Match", condition)
          .get("/probe/body")
          .then()
          .statusCode(304)
          .header("ETag", tag)
          .header("Cache-Control", "public, max-age=31536000, immutable")
          .body(equalTo(""));
    }
    SERVICE.given().header("If-None-Match", "\"other\"").get("/probe/body").then().statusCode(200);
  }

  @Test
  void fieldThatIsNoListOfTagsNamesNone() {
    String tag = SERVICE.given().get("/probe/body").header("ETag");
    for (String malformed :
        new String[] {
          tag + "x", "x" + tag, tag + " \"other\"", "w/" + tag, tag + ", x", "*, " + tag
        }) {
      SERVICE.given().header("If-None-Match", malformed).get("/probe/body").then().statusCode(200);
    }
    SERVICE
        .given()
        .header("If-None-Match", " ,, \"a,b\" , " + tag + ",")
        .get("/probe/body")
        .then()
        .statusCode(304);
  }

  @Test
  void languageOfTextsIsSaidWhateverIsAskedFor() {
    SERVICE.given().get("/probe/body?lang=fr").then().header("Content-Language", "en");
    SERVICE
        .given()
        .header("Accept-Language", "de")
        .get("/v1/nowhere")
        .then()
        .statusCode(404)
        .header("Content-Language", "en");
  }

  @Test
  void headAnswersLikeGetWithoutTheBody() {
    String tag = SERVICE.given().get("/probe/body").header("ETag");
    SERVICE
        .given()
        .head("/probe/body")
        .then()
        .statusCode(200)
        .header("ETag", tag)
        .header("Content-Length", Integer.toString("{\"digits\":\"\",\"half\":0.5}".length() + 50));
  }

  @ParameterizedTest
  @CsvSource({
    "bytes=0-9,0123456789,bytes 0-9/25",
    "bytes=20-,01234,bytes 20-24/25",
    "bytes=-3,234,bytes 22-24/25",
    "bytes=24-900,4,bytes 24-24/25"
  })
  void binaryFormComesInRanges(String range, String expected, String contentRange) {
    SERVICE
        .given()
        .header("Range", range)
        .get("/probe/body?format=png&size=25")
        .then()
        .statusCode(206)
        .header("Content-Range", contentRange)
        .header("Accept-Ranges", "bytes")
        .body(equalTo(expected));
  }

  @Test
  void rangeOutsideIsAProblemAndUnreadableRangesAreIgnored() {
    SERVICE
        .given()
        .header("Range", "bytes=25-")
        .get("/probe/body?format=png&size=25")
        .then()
        .statusCode(416)
        .header("Content-Range", "bytes */25")
        .contentType("application/problem+json");
    for (String ignored : new String[] {"bytes=5-2", "lines=1-2", "bytes=0-1,3-4", "bytes=-"}) {
      SERVICE
          .given()
          .header("Range", ignored)
          .get("/probe/body?format=png&size=25")
          .then()
          .statusCode(200);
    }
    SERVICE
        .given()
        .header("Range", "bytes=0-1")
        .header("If-Range", "\"older\"")
        .get("/probe/body?format=png&size=25")
        .then()
        .statusCode(200);
  }

  @Test
  void textIsGzippedUnderATagOfItsOwn() throws Exception {
    HttpResponse<byte[]> plain = get("identity");
    HttpResponse<byte[]> packed = get("br, gzip;q=0.5");
    assertThat(plain.headers().firstValue("Content-Encoding").orElse(null), nullValue());
    assertThat(packed.headers().firstValue("Content-Encoding").orElse(""), equalTo("gzip"));
    assertThat(packed.headers().allValues("Vary").toString(), containsString("Accept-Encoding"));
    String tag = packed.headers().firstValue("ETag").orElseThrow();
    assertThat(tag, endsWith("-gzip\""));
    assertThat(tag, not(equalTo(plain.headers().firstValue("ETag").orElseThrow())));
    try (var unpacked = new GZIPInputStream(new ByteArrayInputStream(packed.body()))) {
      assertThat(unpacked.readAllBytes(), equalTo(plain.body()));
    }
    assertThat(get("gzip;q=0").headers().firstValue("Content-Encoding").orElse(null), nullValue());
  }

  private static HttpResponse<byte[]> get(String acceptEncoding) throws Exception {
    return HttpClient.newHttpClient()
        .send(
            HttpRequest.newBuilder(URI.create(SERVICE.uri() + "/probe/body?size=5000"))
                .header("Accept-Encoding", acceptEncoding)
                .build(),
            BodyHandlers.ofByteArray());
  }

  @Test
  void cborHoldsTheSameTreeAsJson() {
    byte[] cbor = SERVICE.given().get("/probe/body?format=cbor").asByteArray();
    JsonNode tree = CBORMapper.shared().readTree(cbor);
    assertThat(tree.get("half").doubleValue(), equalTo(0.5));
    assertThat(tree.get("digits").stringValue().length(), equalTo(50));
  }

  @ParameterizedTest
  @CsvSource({
    "figure=1.5,200",
    "figure=-5,200",
    "figure=1e0,200",
    "figure=5.0001,400",
    "figure=NaN,400",
    "figure=Infinity,400",
    "figure=1e999,400",
    "figure=0x1p1,400",
    "figure=,400",
    "figure=1&figure=1,400",
    "format=json&format=json,400",
    "format=csv&format=json,400",
    "'figure=1,5',400",
    "'figure=1,5&decimal=comma',200",
    "size=2147483648,400",
    "size=1.5,400",
    "cb=anything,200"
  })
  void queryNumbersAreStrict(String query, int status) {
    SERVICE.given().urlEncodingEnabled(false).get("/probe/body?" + query).then().statusCode(status);
  }

  @Test
  void pagesOfAnyOriginMayAsk() {
    SERVICE
        .given()
        .header("Origin", "https://club.example")
        .get("/probe/body")
        .then()
        .statusCode(200)
        .header("Access-Control-Allow-Origin", "*")
        .header("Access-Control-Expose-Headers", containsString("RateLimit-Policy"));
    SERVICE
        .given()
        .header("Origin", "https://club.example")
        .header("Access-Control-Request-Method", "POST")
        .header("Access-Control-Request-Headers", "content-type, prefer")
        .options("/probe/json")
        .then()
        .statusCode(200)
        .header("Access-Control-Allow-Methods", containsString("POST"));
    SERVICE
        .given()
        .header("Origin", "https://club.example")
        .header("Access-Control-Request-Method", "PUT")
        .options("/probe/json")
        .then()
        .statusCode(403)
        .body("code", equalTo("origin-not-allowed"));
  }

  @Test
  void errorCanBeReadByAPageOfAnotherOrigin() {
    SERVICE
        .given()
        .header("Origin", "https://club.example")
        .get("/v1/nowhere")
        .then()
        .statusCode(404)
        .header("Access-Control-Allow-Origin", "*");
  }
}
