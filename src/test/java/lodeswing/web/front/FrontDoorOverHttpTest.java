package lodeswing.web.front;

import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasKey;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The root answers a machine and a person, and nothing that it names leads nowhere. */
class FrontDoorOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final Pattern ADDRESS = Pattern.compile("(?:href|src)=\"(/[^\"]*)\"");
  private static final int SAMPLES = 11;

  private static Response page(String language) {
    return SERVICE.given().header("Accept", "text/html").get("/?lang=" + language);
  }

  private static Set<String> addresses(String html) {
    var addresses = new TreeSet<String>();
    Matcher matcher = ADDRESS.matcher(html);
    while (matcher.find()) {
      addresses.add(matcher.group(1).replace("&amp;", "&"));
    }
    return addresses;
  }

  @Test
  void machineReadsLinksThatLeadSomewhere() {
    Response root = SERVICE.given().get("/");
    root.then()
        .statusCode(200)
        .contentType("application/json")
        .body("name", equalTo("Lodeswing"))
        .body("links.contract", equalTo("/v3/api-docs"));
    Map<String, String> links = root.path("links");
    links.values().forEach(url -> SERVICE.given().get(url).then().statusCode(200));
    List<String> fields = root.headers().getValues("Link");
    for (String relation : List.of("service-desc", "service-doc", "service-meta", "api-catalog")) {
      assertTrue(
          fields.stream().anyMatch(field -> field.contains("rel=\"" + relation + "\"")), relation);
    }
  }

  /** RFC 9727, sections 2 and 4: a link set of the profile, also by HEAD, with the relation. */
  @Test
  void catalogueIsALinkSet() {
    Response catalog = SERVICE.given().get("/.well-known/api-catalog");
    catalog
        .then()
        .statusCode(200)
        .header(
            "Content-Type",
            allOf(
                startsWith("application/linkset+json"),
                containsString("profile=\"https://www.rfc-editor.org/info/rfc9727\"")))
        .body("linkset[0].anchor", equalTo("/v1"))
        .body("linkset[0]", hasKey("service-desc"))
        .body("linkset[0].service-desc.href", hasItem("/v3/api-docs"));
    SERVICE
        .given()
        .head("/.well-known/api-catalog")
        .then()
        .statusCode(200)
        .header("Link", containsString("rel=\"api-catalog\""));
    List<String> targets = new ArrayList<>();
    for (String relation : List.of("service-desc", "service-doc", "service-meta", "start")) {
      targets.addAll(catalog.path("linkset[0].'" + relation + "'.href"));
    }
    assertEquals(6, targets.size());
    targets.forEach(url -> SERVICE.given().get(url).then().statusCode(200));
  }

  @ParameterizedTest
  @CsvSource({
    "en, For a course site",
    "de, Für eine Kursseite",
    "es, Para el sitio web de un curso"
  })
  void personReadsAPageInTheirLanguage(String language, String heading) {
    Response page = page(language);
    page.then()
        .statusCode(200)
        .header("Content-Language", language)
        .header("Content-Security-Policy", startsWith("default-src 'none'"));
    String html = page.asString();
    assertTrue(html.contains("<html lang=\"" + language + "\">"));
    assertTrue(html.contains("<h2>" + heading + "</h2>"));
    assertEquals(3 + 1, html.split("<h2>", -1).length - 1);
    assertFalse(html.contains("<script"));
    assertEquals(SAMPLES, html.split("<img ", -1).length - 1);
  }

  @Test
  void everyAddressOnThePageAnswers() {
    Set<String> addresses = addresses(page("en").asString());
    assertTrue(addresses.size() > 3 * SAMPLES, addresses.toString());
    for (String address : addresses) {
      int status = SERVICE.given().urlEncodingEnabled(false).get(address).statusCode();
      assertTrue(status == 200 || status == 202, address + " answered " + status);
    }
  }

  @Test
  void browserThatTakesAnythingGetsThePage() {
    SERVICE
        .given()
        .header("Accept", "text/html,application/xhtml+xml,application/xml;q=0.9,*/*;q=0.8")
        .get("/")
        .then()
        .contentType(startsWith("text/html"));
    SERVICE.given().get("/?format=html").then().contentType(startsWith("text/html"));
    SERVICE.given().header("Accept", "image/png").get("/").then().statusCode(406);
    SERVICE.given().get("/?page=2").then().statusCode(400);
    SERVICE.given().post("/").then().statusCode(405);
  }

  @Test
  void documentationIsServed() {
    SERVICE
        .given()
        .get("/docs")
        .then()
        .statusCode(200)
        .contentType(startsWith("text/html"))
        .body(containsString("swagger-ui"));
  }
}
