package lodeswing.web.occupancy;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.util.List;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Occupancies over HTTP, as a course site and a spreadsheet ask for them. */
class OccupancyOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String FEW = "releases=64&durationS=4&wait=60";

  private static Response get(String path) {
    return SERVICE.given().get(path);
  }

  private static String occupancy(String name, String query) {
    return "/v1/layouts/"
        + get("/v1/sample-layouts/" + name + "?format=text").asString()
        + "/occupancy?"
        + query;
  }

  @Test
  void repelledBobKeepsToTheWeakZonesAnAttractedOneToTheStrong() {
    String query = "releases=128&durationS=6&wait=60";
    JsonPath repelled = get(occupancy("closed-doors", query)).jsonPath();
    JsonPath attracted = get(occupancy("three-stations", query)).jsonPath();

    assertTrue(repelled.getDouble("change.high") < 0, repelled.prettify().substring(0, 900));
    assertTrue(attracted.getDouble("change.low") > 0, attracted.prettify().substring(0, 900));
    assertTrue(
        repelled.getDouble("meanFieldMillitesla.value")
            < repelled.getDouble("freeMeanFieldMillitesla.value"));
    assertTrue(repelled.getString("sentence").contains("field is weak"));
    assertTrue(attracted.getString("sentence").contains("field is strong"));
    List<Number> shares = repelled.getList("cells.timeShares");
    int side = repelled.getInt("cells.side");
    assertEquals(side * side, shares.size());
    assertEquals(
        1,
        shares.stream().mapToDouble(Number::doubleValue).sum() + repelled.getDouble("elsewhere"),
        1e-5);
  }

  @Test
  void tableHoldsWhatTheDocumentHolds() {
    String address = occupancy("paper-triangle", FEW);
    JsonPath document = get(address).jsonPath();
    String[] rows = get(address + "&format=csv").asString().split("\r\n");

    assertEquals("x,y,field,time_share,free_time_share", rows[0]);
    List<Number> shares = document.getList("cells.timeShares");
    assertEquals(shares.size() + 1, rows.length);
    for (int cell = 0; cell < shares.size(); cell += 97) {
      String[] row = rows[cell + 1].split(",");
      assertEquals(shares.get(cell).doubleValue(), Double.parseDouble(row[3]), 1e-9);
    }
  }

  @Test
  void cellReadsOneFigure() {
    String address = occupancy("paper-triangle", FEW);
    JsonPath document = get(address).jsonPath();
    for (String[] pair :
        new String[][] {
          {"correlation", "correlation.value"},
          {"low", "correlation.low"},
          {"changeHigh", "change.high"},
          {"meanField", "meanField.value"},
          {"freeOverMagnets", "freeOverMagnets.value"}
        }) {
      String cell = get(address + "&value=" + pair[0]).asString();
      assertEquals(document.getDouble(pair[1]), Double.parseDouble(cell), 1e-6, pair[0]);
    }
    get(address + "&value=sentence").then().body(equalTo(document.getString("sentence")));
    get(address + "&value=correlation&decimal=comma").then().body(containsString(","));
  }

  @Test
  void pictureShowsBothMapsAndSaysSo() throws Exception {
    String address = occupancy("three-stations", FEW);
    byte[] png = get(address + "&format=png&pixels=900").asByteArray();
    assertEquals(900, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
    var svg =
        DocumentBuilderFactory.newInstance()
            .newDocumentBuilder()
            .parse(new ByteArrayInputStream(get(address + "&format=svg").asByteArray()))
            .getDocumentElement();
    String description = svg.getElementsByTagName("desc").item(0).getTextContent();
    assertTrue(description.contains("in stronger field"), description);
    assertArrayEquals(png, get(address + "&format=png&pixels=900").asByteArray());
  }

  @Test
  void sameReleasesGiveTheSameBytesAnotherSeedOthers() {
    String address = occupancy("paper-triangle", FEW);
    String first = get(address + "&seed=5").asString();
    assertEquals(first, get(address + "&seed=5&cb=1").asString());
    assertTrue(!first.equals(get(address + "&seed=6").asString()));
  }

  @Test
  void faultsAreToldWithWhatWouldDo() {
    get(occupancy("paper-triangle", "releases=70"))
        .then()
        .statusCode(400)
        .body("errors.detail", hasItem(containsString("such as 64")));
    get(occupancy("paper-triangle", "radius=-1&releases=1"))
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItem("?radius"))
        .body("errors.pointer", hasItem("?releases"));
    get(occupancy("paper-triangle", "releases=1048576"))
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors.pointer", hasItem("?releases"))
        .body("errors.detail", hasItem(containsString("lower it to")));
    get(occupancy("paper-triangle", "releases=1&format=text&errors=inline"))
        .then()
        .statusCode(200)
        .body(startsWith("ERROR "));
    get(occupancy("paper-triangle", "radiu=2"))
        .then()
        .statusCode(400)
        .body("errors.detail", hasItem(containsString("radius")));
  }

  @Test
  void rigWithoutMagnetsHasNoFieldToCompare() {
    Response answer = get(occupancy("quiet-plate", FEW));
    answer.then().statusCode(200);
    get(occupancy("quiet-plate", FEW + "&value=correlation"))
        .then()
        .statusCode(200)
        .body(equalTo("none"));
  }
}
