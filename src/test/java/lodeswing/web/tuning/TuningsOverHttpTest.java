package lodeswing.web.tuning;

import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.hasSize;
import static org.hamcrest.Matchers.notNullValue;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

/** Tunings over HTTP: documents, tables, cells, pictures, wishes that cannot be met, and faults. */
class TuningsOverHttpTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final String MAGNET =
      ",\"shape\":\"disc\",\"diameterMm\":25,\"heightMm\":5,\"grade\":\"Y30\",\"poleUp\":\"south\"";

  private static String rig(String magnets) {
    return "{\"model\":\"bench\",\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":420,\"bobMassG\":45},"
        + "\"bobMagnet\":{\"shape\":\"disc\",\"diameterMm\":15,\"heightMm\":5,\"grade\":\"N35\","
        + "\"poleDown\":\"north\"},\"gapMm\":25,\"damping\":{\"swingsToHalf\":8},\"magnets\":["
        + magnets
        + "]}";
  }

  /** A chooser of three labels that was built unevenly, in air that brings it to rest soon. */
  private static final String CHOOSER =
      rig(
          "{\"x\":38,\"y\":0,\"label\":\"Tide\""
              + MAGNET
              + "},{\"x\":-22.5,\"y\":38.97,\"label\":\"Dune\""
              + MAGNET
              + "},{\"x\":-30,\"y\":-50,\"label\":\"Reef\""
              + MAGNET
              + "}");

  /** The same of dipoles, whose tables take less to make. */
  private static final String DIPOLES =
      CHOOSER
          .replace(MAGNET, ",\"shape\":\"dipole\",\"momentAm2\":0.74,\"poleUp\":\"south\"")
          .replace(
              "\"shape\":\"disc\",\"diameterMm\":15,\"heightMm\":5,\"grade\":\"N35\"",
              "\"shape\":\"dipole\",\"momentAm2\":0.84,\"massG\":6")
          .replace("\"gapMm\":25", "\"gapMm\":30");

  private static final String PLANE =
      "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.8,\"height\":0.3,\"magnets\":["
          + "{\"x\":0.377,\"y\":0,\"strength\":1,\"label\":\"Tide\"},"
          + "{\"x\":-0.2885,\"y\":0.4997,\"strength\":1,\"label\":\"Dune\"},"
          + "{\"x\":-0.2885,\"y\":-0.4997,\"strength\":1,\"label\":\"Reef\"}]}";

  private static final String DISC =
      "\"release\":{\"x\":0,\"y\":0},\"spread\":{\"kind\":\"disc\",\"radius\":1.5}";

  private static final String HAND =
      "\"release\":{\"x\":-70,\"y\":30},\"spread\":{\"kind\":\"gaussian\",\"deviation\":3}";

  private static Response post(String layout, String members, String query) {
    return SERVICE
        .given()
        .contentType("application/json")
        .body("{\"layout\":" + layout + "," + members + "}")
        .post("/v1/tunings?wait=60" + query);
  }

  private static Response plane(String members, String query) {
    return post(PLANE, DISC + ",\"width\":0.03," + members, query);
  }

  private static double number(Response answer, String path) {
    return answer.<Number>path(path).doubleValue();
  }

  /** Within two points of fair, in whole millimetres, confirmed by a seed of its own. */
  @Test
  void unfairChooserBecomesFairInWholeMillimetres() {
    Response answer =
        post(
            DIPOLES,
            HAND.replace("-70", "60").replace("30", "0")
                + ",\"move\":{\"places\":{\"within\":15}},\"answers\":1,\"candidates\":20,"
                + "\"width\":0.04,\"seed\":2",
            "");

    answer
        .then()
        .statusCode(200)
        .header("Location", startsWith("/v1/tunings/tun-"))
        .body("met", equalTo(true))
        .body("layouts[0].met", equalTo(true))
        .body("layouts[0].after.seed", equalTo(2))
        .body("layouts[0].confirmed.seed", equalTo(3))
        .body("sentence", startsWith("Move "))
        .body("tolerance", equalTo(0.02f));
    assertTrue(number(answer, "before.distance") > 0.05, "it was unfair");
    assertTrue(number(answer, "layouts[0].confirmed.distance") <= 0.02);
    for (Map<String, Number> move : answer.<List<Map<String, Number>>>path("layouts[0].moves")) {
      double x = move.getOrDefault("x", Double.NaN).doubleValue();
      double y = move.getOrDefault("y", Double.NaN).doubleValue();
      assertEquals(Math.rint(x), x);
      assertEquals(Math.rint(y), y);
      double dx = move.getOrDefault("dx", Double.NaN).doubleValue();
      double dy = move.getOrDefault("dy", Double.NaN).doubleValue();
      assertTrue(Math.hypot(dx, dy) <= 15 + 1e-6, "within the bound");
    }
    // The tuned layout is stored, and its odds by the confirming seed are those that were told.
    SERVICE.given().get(answer.<String>path("layouts[0].links.layout")).then().statusCode(200);
    Response odds = SERVICE.given().get(answer.<String>path("layouts[0].links.odds") + "&wait=60");
    odds.then().statusCode(200);
    assertEquals(
        answer.<Number>path("layouts[0].confirmed.outcomes.find { it.label == 'Tide' }.chance"),
        odds.<Number>path("outcomes.find { it.label == 'Tide' }.chance"));
  }

  @Test
  void tuningHasTheSameBytesByIdAndEveryForm() {
    Response first = plane("\"move\":{\"places\":{\"within\":0.3}},\"candidates\":24", "");
    first.then().statusCode(200);
    String url = first.header("Location");
    Response again = SERVICE.given().get(url);

    again
        .then()
        .statusCode(200)
        .header("Cache-Control", containsString("immutable"))
        .header("ETag", notNullValue());
    assertArrayEquals(first.asByteArray(), again.asByteArray());
    SERVICE.given().get(url + "?format=cbor").then().contentType("application/cbor");
    String[] odds = SERVICE.given().get(url + "?format=csv").asString().split("\r\n");
    assertTrue(odds[0].startsWith("label,wanted,before,"), odds[0]);
    assertEquals(4, odds.length);
    assertTrue(odds[1].startsWith("Tide,0.333333,"), odds[1]);
    String[] moves = SERVICE.given().get(url + "?format=csv&table=moves").asString().split("\r\n");
    assertEquals("rank,magnet,label,dx,dy,x,y", moves[0]);
    assertTrue(moves.length > 1);
    SERVICE
        .given()
        .get(url + "?value=moves")
        .then()
        .body(equalTo(first.<String>path("layouts[0].movesSentence").replace("; ", " - ")));
    double chance =
        Double.parseDouble(SERVICE.given().get(url + "?value=chance&label=Reef").asString());
    assertEquals(
        number(first, "layouts[0].confirmed.outcomes.find { it.label == 'Reef' }.chance"),
        chance,
        1e-5);
    SERVICE.given().get(url + "?value=chance&label=Pier").then().statusCode(400);
    SERVICE.given().get(url + "?value=met").then().body(equalTo("true"));

    Response svg = SERVICE.given().get(url + "/plate?format=svg");
    svg.then().statusCode(200).contentType(startsWith("image/svg+xml"));
    assertTrue(svg.asString().contains("where a magnet stood"));
    assertTrue(svg.asString().contains("by a new seed"), "alternative text says the result");
    byte[] png = SERVICE.given().get(url + "/plate?format=png&pixels=640").asByteArray();
    assertEquals("PNG", new String(png, 1, 3, StandardCharsets.US_ASCII));
    SERVICE.given().get("/v1/tunings/tun-nothing").then().statusCode(404);
  }

  /** The layout is its own picture when turned by a third: so the odds are fair already. */
  @Test
  void fairLayoutStaysAsItIs() {
    post(PLANE.replace("0.377", "0.577"), DISC + ",\"move\":{\"places\":{\"within\":0.3}}", "")
        .then()
        .statusCode(200)
        .body("met", equalTo(true))
        .body("tried", equalTo(0))
        .body("layouts", hasSize(1))
        .body("layouts[0].moves", hasSize(0))
        .body("sentence", containsString("Nothing is to be moved"));
  }

  @Test
  void otherThanFairCanBeWanted() {
    Response answer =
        plane(
            "\"wanted\":{\"kind\":\"chances\",\"chances\":[{\"label\":\"Tide\",\"chance\":0.5},"
                + "{\"label\":\"Dune\",\"chance\":0.25},{\"label\":\"Reef\",\"chance\":0.25}]},"
                + "\"move\":{\"places\":{\"within\":0.3,\"magnets\":[\"Tide\"]},"
                + "\"strength\":{\"magnets\":[\"1\"],\"stock\":[{\"strength\":1.3},"
                + "{\"strength\":0.8},{\"strength\":2}]}},\"candidates\":40,\"tolerance\":0.03",
            "");
    answer.then().statusCode(200).body("met", equalTo(true));
    answer.then().body("layouts[0].moves.label", everyItem(equalTo("Tide")));
  }

  /** One magnet draws the bob to itself; the other pushes it away wherever it stands. */
  @Test
  void whatCannotBeReachedIsSaidSo() {
    String unequal =
        rig(
            "{\"x\":20,\"y\":0,\"label\":\"Tide\""
                + MAGNET
                + "},{\"x\":-45,\"y\":0,\"label\":\"Dune\""
                + MAGNET.replace("south", "north")
                + "}");
    Response answer =
        post(
            unequal,
            HAND
                + ",\"move\":{\"places\":{\"within\":2}},\"answers\":1,\"candidates\":8,"
                + "\"width\":0.1",
            "");

    answer
        .then()
        .statusCode(200)
        .body("met", equalTo(false))
        .body("layouts[0].met", equalTo(false))
        .body("sentence", startsWith("What is wanted was not reached"));
    assertTrue(number(answer, "layouts[0].confirmed.distance") > 0.3);
  }

  @Test
  void releaseAndGapCanMoveToo() {
    Response answer =
        plane(
            "\"move\":{\"release\":{\"within\":0.6,\"step\":0.05}},\"candidates\":12,"
                + "\"answers\":1",
            "");
    answer.then().statusCode(200).body("layouts[0].moves", hasSize(0));
    assertTrue(
        number(answer, "layouts[0].after.distance") < number(answer, "before.distance"),
        "comes nearer");
    answer.then().body("layouts[0].layoutId", equalTo(answer.<String>path("layoutId")));
    post(CHOOSER, HAND + ",\"move\":{\"gap\":{\"leastMm\":22,\"mostMm\":30}}", "&dry-run=true")
        .then()
        .statusCode(200)
        .body("dryRun", equalTo(true))
        .body("candidates", equalTo(48))
        .body("costReleases", greaterThan(1_000_000));
  }

  private static List<String> faults(Response answer) {
    answer.then().statusCode(400).body("code", equalTo("invalid-request"));
    return new ArrayList<>(answer.<List<String>>path("errors.pointer"));
  }

  @Test
  void everyFaultIsToldAtItsPlace() {
    String move = "\"move\":{\"places\":{\"within\":5}}";
    assertEquals(
        List.of("/layoutless", "/move/places/step"),
        faults(plane("\"layoutless\":1,\"move\":{\"places\":{\"within\":5,\"step\":0}}", ""))
            .stream()
            .sorted()
            .toList());
    assertEquals(
        List.of("/move/places/within"),
        faults(plane("\"move\":{\"places\":{\"within\":\"NaN\"}}", "")));
    assertEquals(List.of("/move"), faults(plane("\"move\":{}", "")));
    assertEquals(
        List.of("/move/places/magnets/0"),
        faults(plane("\"move\":{\"places\":{\"within\":5,\"magnets\":[\"Pier\"]}}", "")));
    assertEquals(
        List.of("/wanted/chances/0/label", "/wanted/chances"),
        faults(
            plane(
                "\"wanted\":{\"kind\":\"chances\",\"chances\":[{\"label\":\"Tyde\",\"chance\":0.4}]},"
                    + move,
                "")));
    assertEquals(
        List.of("/move/gap/leastMm"),
        faults(post(CHOOSER, HAND + ",\"move\":{\"gap\":{\"leastMm\":40,\"mostMm\":20}}", "")));
    assertEquals(
        List.of("/move/gap"), faults(plane("\"move\":{\"gap\":{\"leastMm\":1,\"mostMm\":2}}", "")));
    assertEquals(
        List.of("/move/strength/stock/0", "/move/strength/stock/1"),
        faults(
            post(
                CHOOSER,
                HAND
                    + ",\"move\":{\"strength\":{\"stock\":[{\"grade\":\"Z99\"},{\"momentAm2\":1}]}}",
                "")));
    assertEquals(
        List.of("/layout/magnets"),
        faults(post(PLANE.replaceAll(",\"label\":\"\\w+\"", ""), DISC + "," + move, "")));
    assertEquals(
        List.of("/confirmSeed"), faults(plane("\"seed\":3,\"confirmSeed\":3," + move, "")));
    assertEquals(
        List.of("/move/places/within"),
        faults(plane("\"move\":{\"places\":{\"within\":0.001}}", "")));
  }

  @Test
  void whatCostsTooMuchIsRefusedWithWhatWouldNot() {
    StringBuilder many = new StringBuilder();
    for (int k = 0; k < 200; k++) {
      many.append(k == 0 ? "" : ",")
          .append("{\"x\":")
          .append(k % 20)
          .append(",\"y\":")
          .append(k / 20)
          .append(",\"label\":\"L")
          .append(k % 5)
          .append("\"}");
    }
    post(
            "{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.8,\"height\":0.3,\"magnets\":["
                + many
                + "]}",
            DISC + ",\"move\":{\"places\":{\"within\":0.3}}",
            "")
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors.pointer", hasItem("/move"));
    plane("\"move\":{\"places\":{\"within\":0.3}},\"candidates\":1000", "&dry-run=true")
        .then()
        .statusCode(200);
    Response refused =
        post(CHOOSER, HAND + ",\"move\":{\"places\":{\"within\":5}},\"candidates\":1000", "");
    refused
        .then()
        .statusCode(422)
        .body("code", equalTo("too-costly"))
        .body("errors[0].pointer", equalTo("/candidates"));
    String detail = refused.path("errors[0].detail");
    post(
            CHOOSER,
            HAND
                + ",\"move\":{\"places\":{\"within\":5}},\"candidates\":"
                + detail.substring(detail.lastIndexOf(' ') + 1),
            "&dry-run=true")
        .then()
        .statusCode(200);
    SERVICE
        .given()
        .get("/v1/limits")
        .then()
        .body("limits.find { it.name == 'tuningFigures' }.value", equalTo(60));
  }
}
