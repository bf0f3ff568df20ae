package lodeswing.web.plate;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.io.ByteArrayInputStream;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class PlateOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  @Test
  void everySampleLinksToAPictureOfItsPlateWithWords() throws Exception {
    var samples = SERVICE.given().get("/v1/sample-layouts").jsonPath();
    List<String> thumbnails = samples.getList("samples.links.thumbnail");
    assertEquals(11, thumbnails.size());
    for (String thumbnail : thumbnails) {
      byte[] svg =
          SERVICE
              .given()
              .get(thumbnail)
              .then()
              .statusCode(200)
              .contentType(containsString("image/svg+xml"))
              .header("Cache-Control", containsString("max-age=300"))
              .extract()
              .asByteArray();
      var root =
          DocumentBuilderFactory.newInstance()
              .newDocumentBuilder()
              .parse(new ByteArrayInputStream(svg))
              .getDocumentElement();
      String words = root.getElementsByTagName("desc").item(0).getTextContent();
      assertTrue(words.contains("agnet"), words);
      assertTrue(svg.length < 60_000, thumbnail + " " + svg.length);
    }
  }

  @Test
  void wordsSayEachMagnetAndFiguresMayBeChangedOnTheWay() {
    String plate = SERVICE.given().get("/v1/sample-layouts/three-stations").path("links.plate");
    String svg = SERVICE.given().get(plate + "?magnet.2.x=-30").asString();
    assertTrue(svg.contains("3 magnets: Tide at"), svg);
    assertTrue(svg.contains("Dune at (−30"), svg);
    SERVICE.given().get(plate + "?magnet.4.x=1").then().statusCode(400);
    SERVICE.given().get("/v1/layouts/lay-none/plate").then().statusCode(404);
    SERVICE.given().get(plate + "?format=csv").then().statusCode(406);
  }

  @Test
  void picturesComeAsPngOfAWidth() throws Exception {
    String plate = SERVICE.given().get("/v1/sample-layouts/crowded-shelf").path("links.plate");
    byte[] png = SERVICE.given().get(plate + "?format=png&pixels=320").asByteArray();
    assertEquals(320, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
  }

  @Test
  void sameTagIsNotSentAgain() {
    String plate = SERVICE.given().get("/v1/sample-layouts/one-well").path("links.plate");
    String tag = SERVICE.given().get(plate).header("ETag");
    SERVICE
        .given()
        .header("If-None-Match", tag)
        .get(plate)
        .then()
        .statusCode(304)
        .body(equalTo(""));
  }
}
