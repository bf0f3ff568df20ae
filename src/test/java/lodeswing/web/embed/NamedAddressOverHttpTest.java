package lodeswing.web.embed;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.endsWith;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import java.util.Optional;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** A service that is told its public address and who may frame its pages. */
class NamedAddressOverHttpTest {

  @RegisterExtension
  static final RunningService SERVICE =
      RunningService.shared(
          "lodeswing.embed.public-address=https://Lodeswing.example/",
          "lodeswing.embed.frame-ancestors=https://club.example");

  private static String sample() {
    return SERVICE.given().get("/v1/sample-layouts/paper-triangle?format=text").asString();
  }

  @Test
  void whatIsCopiedNamesThePublicAddress() {
    SERVICE
        .given()
        .get("/embed/" + sample())
        .then()
        .header("Content-Security-Policy", endsWith("frame-ancestors https://club.example"))
        .body(containsString("src=&quot;https://lodeswing.example/embed/1/lodeswing-figure.js"))
        .body(not(containsString("localhost")));
    SERVICE
        .given()
        .queryParam("url", "https://lodeswing.example/embed/" + sample())
        .get("/oembed")
        .then()
        .statusCode(200)
        .body("html", startsWith("<iframe src=\"https://lodeswing.example/embed/"));
    SERVICE
        .given()
        .queryParam("url", SERVICE.uri() + "/embed/" + sample())
        .get("/oembed")
        .then()
        .statusCode(404);
  }

  @Test
  void addressesOfTheWebHaveAnOrigin() {
    assertEquals(
        Optional.of("https://a.example"), ServiceAddress.origin("HTTPS://A.example:443/x"));
    assertEquals(
        Optional.of("http://a.example:8080"), ServiceAddress.origin("http://a.example:8080"));
    assertEquals(Optional.of("http://[::1]:81"), ServiceAddress.origin("http://[::1]:81/"));
    assertEquals(Optional.empty(), ServiceAddress.origin("ftp://a.example"));
    assertEquals(Optional.empty(), ServiceAddress.origin("https://me@a.example"));
    assertEquals(Optional.empty(), ServiceAddress.origin("a b"));
    assertThrows(IllegalArgumentException.class, () -> new ServiceAddress("lodeswing.example"));
  }
}
