package lodeswing.web.field;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasItems;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.path.json.JsonPath;
import io.restassured.response.Response;
import java.io.ByteArrayInputStream;
import java.util.List;
import java.util.Map;
import javax.imageio.ImageIO;
import javax.xml.parsers.DocumentBuilderFactory;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * The field over HTTP, as a course site and a spreadsheet ask for it. Documents are read here to
 * the digits of a float alone, single values in full.
 */
class FieldOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static Response get(String path) {
    return SERVICE.given().get(path);
  }

  private static String base(String name) {
    return "/v1/layouts/" + get("/v1/sample-layouts/" + name + "?format=text").asString();
  }

  private static String description(String path) throws Exception {
    return DocumentBuilderFactory.newInstance()
        .newDocumentBuilder()
        .parse(new ByteArrayInputStream(get(path).asByteArray()))
        .getDocumentElement()
        .getElementsByTagName("desc")
        .item(0)
        .getTextContent();
  }

  /** The axis of a disc: J. M. D. Coey, Magnetism and Magnetic Materials (2010), section 2.2. */
  @Test
  void pointOnADiscsAxisFollowsTheFormula() {
    String field = base("one-well") + "/field?x=35&y=0&z=20&magnet.1.remanenceT=0.4";
    JsonPath told = get(field).jsonPath();
    double far = 20;
    double near = 15;
    double expected = -200 * (far / Math.hypot(12.5, far) - near / Math.hypot(12.5, near));

    assertEquals(expected, told.getDouble("fieldMillitesla.z"), 2e-6);
    assertEquals(0, told.getDouble("fieldMillitesla.x"), 1e-9);
    assertEquals(-expected, told.getDouble("magnitudeMillitesla"), 2e-6);
    assertEquals("mT", told.getString("units.field"));
    assertEquals(
        told.getDouble("magnitudeMillitesla"),
        Double.parseDouble(get(field + "&format=text").asString()),
        2e-6);
    assertEquals(expected, Double.parseDouble(get(field + "&value=z").asString()), 1e-8);
    get(field + "&value=z&decimal=comma").then().body(containsString(","));
    get(field + "&format=csv")
        .then()
        .body(
            startsWith("x_mm,y_mm,z_mm,field_x_mT,field_y_mT,field_z_mT,magnitude_mT\r\n35,0,20,"));
  }

  @Test
  void withoutAHeightItIsThatOfTheBobAndFollowsTheGap() {
    String base = base("three-stations");
    JsonPath near = get(base + "/field?x=45&y=0&gapMm=20").jsonPath();
    JsonPath far = get(base + "/field?x=45&y=0&gapMm=35").jsonPath();

    assertEquals(15, far.getDouble("place.z") - near.getDouble("place.z"), 1e-4);
    assertTrue(near.getDouble("magnitudeMillitesla") > 1.5 * far.getDouble("magnitudeMillitesla"));
    assertTrue(near.getList("notes", String.class).get(0).contains("not of the magnet on the bob"));
  }

  @Test
  void mapHoldsThePointsOwnValues() {
    String base = base("turned-centre");
    String map = base + "/field/map?side=9&halfWidth=60&zMm=15&wait=60";
    JsonPath document = get(map).jsonPath();
    List<Number> strengths = document.getList("strengthsMillitesla");
    String[] rows = get(map + "&format=csv").asString().split("\r\n");

    assertEquals(81, strengths.size());
    assertEquals(82, rows.length);
    assertEquals("x_mm,y_mm,z_mm,field_mT", rows[0]);
    for (int i = 0; i < 81; i += 7) {
      String[] row = rows[i + 1].split(",");
      assertEquals(strengths.get(i).doubleValue(), Double.parseDouble(row[3]), 2e-6);
      String point = base + "/field?x=" + row[0] + "&y=" + row[1] + "&z=" + row[2];
      assertEquals(
          Double.parseDouble(row[3]),
          Double.parseDouble(get(point + "&format=text").asString()),
          1e-8);
    }
    assertEquals(
        document.getDouble("mostMillitesla"),
        Double.parseDouble(get(map + "&value=most").asString()),
        2e-6);
    JsonPath plane = get(map + "&part=plane").jsonPath();
    assertTrue(plane.getDouble("mostMillitesla") < document.getDouble("mostMillitesla"));
  }

  @ParameterizedTest
  @ValueSource(strings = {"map?side=65", "lines?apartMm=7", "filings?count=900", "weak-spots?x=0"})
  void picturesSayTheResultAndComeInBothForms(String what) throws Exception {
    String path = base("closed-doors") + "/field/" + what + "&wait=60&format=";
    byte[] png = get(path + "png&pixels=500").asByteArray();
    assertEquals(500, ImageIO.read(new ByteArrayInputStream(png)).getWidth());
    assertArrayEquals(png, get(path + "png&pixels=500").asByteArray());
    String description = description(path + "svg");
    assertTrue(description.contains("Poles up: Tide north"), description);
    assertTrue(description.contains("not of the magnet on the bob"), description);
    String sentence = get(path + "text").asString();
    assertTrue(sentence.endsWith("."), sentence);
    assertTrue(!sentence.contains(";") && !sentence.contains(","), sentence);
    String svg = get(path + "svg").asString();
    assertTrue(svg.contains("class=\"poles\"") && svg.contains(">N<"));
  }

  @Test
  void filingsAreSettledByTheirSeed() throws Exception {
    String path = base("three-stations") + "/field/filings?count=800&wait=60";
    assertEquals(get(path + "&seed=5").asString(), get(path + "&seed=5&cb=1").asString());
    assertTrue(!get(path + "&seed=5").asString().equals(get(path + "&seed=6").asString()));
    assertTrue(description(path + "&seed=5").contains("seed 5"));
    JsonPath document = get(path + "&seed=5&format=json").jsonPath();
    assertEquals(5, document.getInt("seed"));
    assertTrue(document.getInt("drawn") > 300 && document.getInt("drawn") <= 800);
    assertTrue(document.getString("notes").contains("eye protection"));
  }

  @Test
  void linesComeInThePlanAndInACut() {
    String path =
        base("three-stations") + "/field/lines?apartMm=7&halfWidth=55&spots=false&wait=60";
    JsonPath plan = get(path).jsonPath();
    assertTrue(plan.getString("method").contains("Jobard"));
    List<Map<String, Object>> lines = plan.getList("lines");
    assertTrue(lines.size() > 10);
    assertEquals(lines.size(), Integer.parseInt(get(path + "&value=count").asString()));
    JsonPath cut = get(path + "&cut=upright&turnDeg=0").jsonPath();
    // The x axis is the layout's mirror to a hundredth of a millimetre: the field stays in it.
    assertTrue(cut.getDouble("outOfCut") < 1e-3, cut.getString("outOfCut"));
    JsonPath askew = get(path + "&cut=upright&turnDeg=20").jsonPath();
    assertTrue(askew.getDouble("outOfCut") > 0.05);
    get(path + "&format=csv").then().body(startsWith("line,x_mm,y_mm,z_mm,field_mT\r\n1,"));
  }

  @Test
  void weakSpotsAreListedCountedAndBordered() {
    String path = base("closed-doors") + "/field/weak-spots?zMm=8&wait=60";
    JsonPath document = get(path).jsonPath();
    assertTrue(document.getBoolean("count.agrees"));
    assertTrue(document.getBoolean("space.agrees"));
    assertEquals(4, Integer.parseInt(get(path + "&value=saddles").asString()));
    List<Map<String, Object>> spots = document.getList("inPlane");
    assertEquals(9, spots.size());
    String saddle = "inPlane.find { it.kind == 'saddle' }.";
    assertTrue(document.getString(saddle + "sentence").contains("like poles"));
    assertEquals(2, document.getList(saddle + "between").size());
    assertTrue(document.getDouble(saddle + "zone.areaMm2") > 1);
    String picture = get(path + "&format=svg").asString();
    int whole = document.getList("whole").size();
    assertTrue(picture.contains("Marked here: " + whole + " of the whole field."), picture);
    String[] rows = get(path + "&format=csv").asString().split("\r\n");
    assertTrue(rows[0].startsWith("of,number,kind,index,x_mm"));
    assertEquals(
        spots.size()
            + document.getList("whole").size()
            + document.getList("space.nulls").size()
            + 1,
        rows.length);
  }

  @Test
  void textbookLayoutHasNoField() {
    for (String what : List.of("?x=0&y=0", "/map", "/lines", "/filings", "/weak-spots")) {
      get(base("paper-triangle") + "/field" + what)
          .then()
          .statusCode(422)
          .body("code", equalTo("not-in-this-model"))
          .body("detail", containsString("tesla"));
    }
    get(base("paper-triangle") + "/field?x=0&y=0&format=text&errors=inline")
        .then()
        .statusCode(200)
        .body(startsWith("ERROR "));
    get("/problems/not-in-this-model").then().statusCode(200);
  }

  @Test
  void plateWithoutMagnetsHasNoFieldAnywhere() {
    String base = base("quiet-plate");
    get(base + "/field?x=3&y=4&z=5&format=text").then().statusCode(200).body(equalTo("0"));
    for (String what : List.of("map", "lines", "filings", "weak-spots")) {
      get(base + "/field/" + what + "?format=text&wait=60")
          .then()
          .statusCode(200)
          .body(containsString("no magnets"));
      get(base + "/field/" + what + "?format=png&wait=60").then().statusCode(200);
    }
  }

  @Test
  void faultsAreToldWithWhatWouldDo() {
    String base = base("three-stations");
    get(base + "/field?y=0&z=x")
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItems("?x", "?z"));
    get(base + "/field/map?zMm=10&surface=path")
        .then()
        .statusCode(400)
        .body("errors.pointer", hasItem("?surface"));
    get(base + "/field/map?side=4000")
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors.detail", hasItem(containsString("lower it to 1024")));
    get(base + "/field/filings?count=900000")
        .then()
        .statusCode(422)
        .body("errors.detail", hasItem(containsString("lower it to 40000")));
    get(base + "/field/lines?apartMm=0.02&halfWidth=4000")
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors.detail", hasItem(containsString("raise it to")));
    get(base + "/field/map?halfWidt=3")
        .then()
        .statusCode(400)
        .body("errors.detail", hasItem(containsString("halfWidth")));
    get(base + "/field?x=0&y=0&z=-5&backing.topMm=-3").then().statusCode(400);
    get(base + "/field?x=90000&y=0").then().statusCode(400).body("errors.pointer", hasItem("?z"));
  }

  @Test
  void limitsAndLinksLeadHere() {
    get("/v1/limits")
        .then()
        .body("limits.name", hasItems("fieldPoints", "filings", "fieldEvaluations"));
    String base = base("three-stations");
    JsonPath layout = get(base).jsonPath();
    assertEquals(base + "/field/filings", layout.getString("links.fieldFilings"));
    get(layout.getString("links.field")).then().statusCode(200);
    get(layout.getString("links.weakSpots") + "?wait=60").then().statusCode(200);
    JsonPath map = get(layout.getString("links.fieldMap") + "?side=9&wait=60").jsonPath();
    assertEquals(
        map.getString("links.self"),
        get(map.getString("links.self")).jsonPath().getString("links.self"));
  }
}
