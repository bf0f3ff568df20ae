package lodeswing.web.embed;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.security.MessageDigest;
import java.util.Base64;
import java.util.List;
import java.util.Objects;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;
import org.springframework.web.util.HtmlUtils;

/**
 * Pages, script and snippet for other sites: what is served, what it holds, and what it refuses.
 */
class EmbedOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final Pattern INTEGRITY = Pattern.compile("integrity=\"(sha384-[^\"]+)\"");
  private static final Pattern SOURCE = Pattern.compile("src=\"([^\"]+\\.js)\"");

  private static String sample() {
    return SERVICE.given().get("/v1/sample-layouts/paper-triangle?format=text").asString();
  }

  private static String found(Pattern pattern, String text) {
    Matcher matcher = pattern.matcher(text);
    assertTrue(matcher.find(), text);
    return Objects.requireNonNull(matcher.group(1));
  }

  /** The code blocks of a page, as a person copies them. */
  private static String copied(Response page, int block) {
    Matcher code =
        Pattern.compile("<pre><code>(.*?)</code></pre>", Pattern.DOTALL).matcher(page.asString());
    for (int i = 0; i <= block; i++) {
      assertTrue(code.find());
    }
    return HtmlUtils.htmlUnescape(Objects.requireNonNull(code.group(1)));
  }

  private static String sha384(byte[] bytes) throws Exception {
    return "sha384-"
        + Base64.getEncoder().encodeToString(MessageDigest.getInstance("SHA-384").digest(bytes));
  }

  /**
   * Pages were given a version with the digest of its bytes. Where this fails, the script was
   * changed: a version that has been given out never is, so make a folder for a new one, count
   * {@code FigureScript.NEWEST} up and add a line. Only while a version has not been given out is
   * its line written anew.
   */
  @Test
  void scriptOfAVersionNeverChanges() throws Exception {
    List<String> digests = Files.readAllLines(Path.of("src/test/resources/embed-digests.txt"));
    assertEquals(FigureScript.NEWEST, digests.size());
    for (int version = 1; version <= FigureScript.NEWEST; version++) {
      String path = "/embed/" + version + "/lodeswing-figure.js";
      assertEquals(
          digests.get(version - 1),
          version + " " + sha384(SERVICE.given().get(path).asByteArray()));
    }
  }

  @Test
  void copiedSnippetHoldsTheServedScript() throws Exception {
    Response page = SERVICE.given().get("/embed/" + sample() + "?x=1.2&y=0.7");
    page.then().statusCode(200).contentType("text/html;charset=UTF-8");
    String snippet = copied(page, 0);
    String source = found(SOURCE, snippet);
    assertTrue(source.startsWith(SERVICE.uri() + "/embed/"), source);
    Response script = SERVICE.given().header("Accept-Encoding", "gzip").get(source);
    script
        .then()
        .statusCode(200)
        .contentType("text/javascript;charset=UTF-8")
        .header("Cache-Control", "public, max-age=31536000, immutable")
        .header("Content-Encoding", "gzip")
        .header("X-Content-Type-Options", "nosniff")
        .header("Cross-Origin-Resource-Policy", "cross-origin");
    assertEquals(found(INTEGRITY, snippet), sha384(script.asByteArray()));
    assertEquals(found(INTEGRITY, page.asString()), found(INTEGRITY, snippet));
    assertTrue(snippet.contains("layout=\"" + sample() + "\" x=\"1.2\" y=\"0.7\""), snippet);
    assertTrue(snippet.contains("<noscript><img src=\"" + SERVICE.uri() + "/v1/layouts/"), snippet);
  }

  @Test
  void scriptMayBeLoadedByPagesOfOtherOriginsAndIsSmall() {
    Response script =
        SERVICE
            .given()
            .header("Origin", "https://club.example")
            .get("/embed/1/lodeswing-figure.js");
    script.then().statusCode(200).header("Access-Control-Allow-Origin", "*");
    int packed =
        Integer.parseInt(
            SERVICE
                .given()
                .header("Accept-Encoding", "gzip")
                .head("/embed/1/lodeswing-figure.js")
                .header("Content-Length"));
    assertTrue(packed > 1_000 && packed < 60_000, packed + " bytes");
    String tag = script.header("ETag");
    SERVICE
        .given()
        .header("If-None-Match", tag)
        .get("/embed/1/lodeswing-figure.js")
        .then()
        .statusCode(304);
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "/embed/0/lodeswing-figure.js",
        "/embed/2/lodeswing-figure.js",
        "/embed/01/lodeswing-figure.js",
        "/embed/999999999999/lodeswing-figure.js",
        "/embed/..%2F1/lodeswing-figure.js",
        "/embed/1/other.js",
        "/embed/lay-aaaaaaaaaaaaaaaaaaaaaaaaaa",
        "/embed/lay-aaaaaaaaaaaaaaaaaaaaaaaaaa/frame",
        "/embed/%3Cscript%3E",
        "/embed/"
      })
  void whatIsNotThereIsAProblem(String path) {
    Response answer = SERVICE.given().urlEncodingEnabled(false).get(path);
    assertTrue(answer.statusCode() == 404 || answer.statusCode() == 400, path);
    answer.then().contentType("application/problem+json");
    assertFalse(answer.asString().contains("<script>"));
  }

  /** What the page may do is said in its policy; its own style is held by digest. */
  @ParameterizedTest
  @ValueSource(strings = {"", "/frame"})
  void pagesAllowTheirOwnScriptAlone(String part) throws Exception {
    Response page = SERVICE.given().get("/embed/" + sample() + part);
    String policy = page.header("Content-Security-Policy");
    assertTrue(policy.startsWith("default-src 'none'; script-src 'self'; "), policy);
    assertFalse(policy.contains("unsafe"), policy);
    assertTrue(policy.endsWith("frame-ancestors *"), policy);
    String style = found(Pattern.compile("<style>(.*?)</style>", Pattern.DOTALL), page.asString());
    String digest =
        Base64.getEncoder()
            .encodeToString(
                MessageDigest.getInstance("SHA-256")
                    .digest(style.getBytes(StandardCharsets.UTF_8)));
    assertTrue(policy.contains("style-src 'sha256-" + digest + "'"), policy);
    page.then().header("Cache-Control", "no-cache").header("X-Frame-Options", equalTo(null));
    assertFalse(page.asString().contains("style=\""));
    assertFalse(page.asString().matches("(?s).*\\son[a-z]+=\".*"));
  }

  @ParameterizedTest
  @CsvSource({
    "en, where every release ends, Put this figure",
    "de, wo jeder Start endet, Diese Abbildung",
    "es, dónde acaba cada suelta, Poner esta figura"
  })
  void pagesComeInThreeLanguages(String tag, String heading, String copy) {
    SERVICE
        .given()
        .get("/embed/" + sample() + "?lang=" + tag)
        .then()
        .header("Content-Language", tag)
        .body(containsString("<html lang=\"" + tag + "\">"))
        .body(containsString(heading))
        .body(containsString(copy));
    SERVICE
        .given()
        .header("Accept-Language", tag)
        .get("/embed/" + sample() + "/frame")
        .then()
        .header("Content-Language", tag)
        .header("Vary", containsString("Accept"));
  }

  @ParameterizedTest
  @CsvSource({
    "x=1, ?y",
    "x2=1&y2=1, ?x",
    "x=1&y=2&x2=3, ?y2",
    "x=far&y=2, ?x",
    "x=1e9&y=2, ?x",
    "z=1, ?z"
  })
  void halfAReleaseIsAFault(String query, String pointer) {
    SERVICE
        .given()
        .get("/embed/" + sample() + "?" + query)
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItem(equalTo(pointer)));
  }

  /** A figure changed on the way makes a layout of its own, which the copied lines name. */
  @Test
  void changedFigureIsEmbeddedUnderItsOwnId() {
    String changed = copied(SERVICE.given().get("/embed/" + sample() + "?drag=0.3"), 0);
    String id = found(Pattern.compile("layout=\"(lay-[a-z2-7]+)\""), changed);
    assertFalse(id.equals(sample()));
    SERVICE.given().get("/v1/layouts/" + id).then().body("layout.drag", equalTo(0.3f));
    SERVICE.given().get("/embed/" + id).then().statusCode(200);
  }

  @Test
  void titlesAreTextEverywhere() {
    String title = "</title><script>alert(1)</script>\\\" onload=\\\"x <b>&amp;'";
    String id =
        SERVICE
            .given()
            .contentType("application/json")
            .body(
                "{\"model\":\"textbook\",\"title\":\""
                    + title
                    + "\",\"omega0\":0.5,\"drag\":0.4,\"height\":0.3,\"magnets\":[{\"x\":0.5,\"y\":0,"
                    + "\"strength\":1,\"label\":\"<img src=x onerror=alert(1)>\"}]}")
            .post("/v1/layouts")
            .path("layoutId");
    for (String part : new String[] {"", "/frame"}) {
      String page = SERVICE.given().get("/embed/" + id + part).asString();
      assertFalse(page.contains("<script>alert"), page);
      assertFalse(page.contains("\" onload=\"x"), page);
      assertFalse(page.contains("<img src=x"), page);
    }
    String page = SERVICE.uri() + "/embed/" + id;
    Response json = SERVICE.given().queryParam("url", page).get("/oembed");
    assertEquals(
        "</title><script>alert(1)</script>\" onload=\"x <b>&amp;' \u2013 where every release ends",
        json.path("title"));
    assertFalse(json.<String>path("html").contains("<script>"));
    Response xml =
        SERVICE.given().queryParam("url", page).queryParam("format", "xml").get("/oembed");
    assertEquals(json.<String>path("title"), xml.xmlPath().getString("oembed.title"));
    assertEquals(json.<String>path("html"), xml.xmlPath().getString("oembed.html"));
  }

  /** A platform that is given the page's address finds the answer by the page's own links. */
  @Test
  void pageLeadsToItsOembedAnswer() {
    Response page = SERVICE.given().get("/embed/" + sample() + "?x=1.2&y=0.7&lang=de");
    String link =
        page.headers().getValues("Link").stream()
            .filter(one -> one.endsWith("rel=\"alternate\"; type=\"application/json+oembed\""))
            .findFirst()
            .orElseThrow();
    String address = link.substring(1, link.indexOf('>'));
    assertTrue(
        page.asString()
            .contains(
                "<link rel=\"alternate\" type=\"application/json+oembed\" href=\""
                    + HtmlUtils.htmlEscape(address)));
    SERVICE
        .given()
        .urlEncodingEnabled(false)
        .get(address)
        .then()
        .statusCode(200)
        .contentType("application/json")
        .body("version", equalTo("1.0"))
        .body("type", equalTo("rich"))
        .body("title", containsString("wo jeder Start endet"))
        .body("width", equalTo(640))
        .body("height", equalTo(960))
        .body("thumbnail_width", equalTo(256))
        .body("thumbnail_url", startsWith(SERVICE.uri() + "/v1/layouts/"))
        .body(
            "html",
            startsWith(
                "<iframe src=\""
                    + SERVICE.uri()
                    + "/embed/"
                    + sample()
                    + "/frame?x=1.2&amp;y=0.7&amp;lang=de\""));
  }

  @Test
  void oembedKeepsToTheAskedSizeAndPassesOverWhatItDoesNotKnow() {
    SERVICE
        .given()
        .queryParam("url", SERVICE.uri() + "/embed/" + sample())
        .queryParam("maxwidth", 300)
        .queryParam("maxheight", 200)
        .queryParam("dnt", "true")
        .get("/oembed")
        .then()
        .statusCode(200)
        .body("width", equalTo(300))
        .body("height", equalTo(200))
        .body("thumbnail_width", equalTo(200))
        .body("html", containsString("width=\"300\" height=\"200\""));
  }

  @Test
  void oembedTellsFormsItDoesNotWrite() {
    String url = SERVICE.uri() + "/embed/" + sample();
    for (String form : new String[] {"yaml", "csv", ""}) {
      SERVICE
          .given()
          .queryParam("url", url)
          .queryParam("format", form)
          .get("/oembed")
          .then()
          .statusCode(501);
    }
    SERVICE
        .given()
        .queryParam("url", url)
        .queryParam("format", "xml")
        .get("/oembed")
        .then()
        .statusCode(200)
        .contentType("text/xml;charset=UTF-8");
  }

  /** Markup is given for pages of this service alone, whatever the address looks like. */
  @Test
  void oembedIsOfThisServiceAlone() {
    String own = SERVICE.uri();
    String path = "/embed/" + sample();
    for (String url :
        new String[] {
          "https://other.example" + path,
          own.replace("http:", "https:") + path,
          own.replace("://", "://user@") + path,
          own + "@other.example" + path,
          own + ".other.example" + path,
          "//" + own.substring(7) + path,
          "javascript:alert(1)//" + path,
          own + path + "/../../v1/limits",
          own + "/embed/lay-a\"onload=\"x",
          own + "/v1/limits",
          own + "/embed/lay-aaaaaaaaaaaaaaaaaaaaaaaaaa",
          "no address",
          own
        }) {
      Response answer = SERVICE.given().queryParam("url", url).get("/oembed");
      assertEquals(404, answer.statusCode(), url);
      answer.then().contentType("application/problem+json").body(not(containsString("iframe")));
    }
    SERVICE
        .given()
        .get("/oembed")
        .then()
        .statusCode(400)
        .body("errors[0].pointer", equalTo("?url"));
  }

  /** Values of the page's query that the page would refuse do not get into the markup. */
  @Test
  void oembedTakesWhatThePageKnows() {
    SERVICE
        .given()
        .queryParam("url", SERVICE.uri() + "/embed/" + sample() + "?x=\"><b>&y=1")
        .get("/oembed")
        .then()
        .statusCode(404);
    SERVICE
        .given()
        .queryParam("url", SERVICE.uri() + "/embed/" + sample() + "?x=%22&y=1")
        .get("/oembed")
        .then()
        .statusCode(400);
    SERVICE
        .given()
        .queryParam("url", SERVICE.uri() + "/embed/" + sample() + "?x=1&y=2&q=%22%3E%3Cb%3E#top")
        .get("/oembed")
        .then()
        .statusCode(200)
        .body("html", containsString("/frame?x=1&amp;y=2\""));
  }
}
