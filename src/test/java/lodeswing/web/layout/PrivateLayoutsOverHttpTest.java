package lodeswing.web.layout;

import static lodeswing.web.layout.LayoutBodies.bench;
import static lodeswing.web.layout.LayoutBodies.disc;
import static org.hamcrest.Matchers.containsString;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.hasItem;
import static org.hamcrest.Matchers.not;
import static org.hamcrest.Matchers.startsWith;
import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.file.Path;
import java.util.List;
import lodeswing.RunningService;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.springframework.jdbc.core.simple.JdbcClient;

class PrivateLayoutsOverHttpTest {

  @TempDir static Path folder;

  private static RunningService service;

  @BeforeAll
  static void start() {
    service = RunningService.onFolder(folder).with(OwnersByHeader.class).start();
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  private static RequestSpecification as(String owner) {
    return service.given().header(OwnersByHeader.FIELD, owner);
  }

  private static String body(String gap, String visibility) {
    return bench(
        gap, disc("45", "0", ",\"label\":\"Tide\""), ",\"title\":\"Secret station\"" + visibility);
  }

  private static String body(String gap) {
    return body(gap, ",\"visibility\":\"private\"");
  }

  private static Response post(String owner, String body) {
    return as(owner).contentType("application/json").body(body).post("/v1/layouts");
  }

  private static String stored(String owner, String gap) {
    return post(owner, body(gap)).then().statusCode(201).extract().path("layoutId");
  }

  @Test
  void sameContentIsOneLayoutOfEachOwnerAndNobodyCanGuessItsId() {
    Response first = post("tide", body("21"));
    Response again = post("tide", body("21"));
    Response other = post("dune", body("21"));
    Response open = post("tide", body("21", ""));

    assertEquals(201, first.statusCode());
    assertEquals(200, again.statusCode());
    assertArrayEquals(first.asByteArray(), again.asByteArray());
    String id = first.path("layoutId");
    assertTrue(id.matches("prv-[a-z2-7]{42}"), id);
    assertNotEquals(id, other.path("layoutId"));
    assertTrue(open.<String>path("layoutId").startsWith("lay-"));
    assertEquals("private, no-store", first.header("Cache-Control"));
  }

  @Test
  void ownerReadsItAndItSaysThatItIsPrivateAndNothingOfTheSeal() {
    String id = stored("tide", "22");

    Response read = as("tide").get("/v1/layouts/" + id);

    read.then()
        .statusCode(200)
        .header("Cache-Control", "private, no-store")
        .body("layout.visibility", equalTo("private"))
        .body("layout.title", equalTo("Secret station"));
    assertTrue(read.headers().getValues("Vary").contains("Authorization"));
    assertFalse(read.asString().contains("seal"));
    assertFalse(read.asString().contains("salt"));
    String sentBack = read.asString();
    String layout =
        sentBack.substring(sentBack.indexOf("\"layout\":") + 9, matching(sentBack, "\"layout\":"));
    assertEquals(id, post("tide", layout).path("layoutId"));
  }

  /** Index after the object that a member holds. */
  private static int matching(String json, String member) {
    int depth = 0;
    for (int i = json.indexOf(member) + member.length(); i < json.length(); i++) {
      if (json.charAt(i) == '{') {
        depth++;
      } else if (json.charAt(i) == '}' && --depth == 0) {
        return i + 1;
      }
    }
    throw new AssertionError("no end");
  }

  @Test
  void othersAndNobodySeeNothingThereWhereverTheyName() {
    String id = stored("tide", "23");
    String trace = traced("tide", id);

    for (String path :
        List.of(
            "/v1/layouts/" + id,
            "/v1/layouts/" + id + "/rest-points",
            "/v1/layouts/" + id + "/outcome?x=60&y=5",
            "/v1/layouts/" + id + "/variant?gapMm=30",
            "/v1/traces/" + trace,
            "/v1/traces/" + trace + "/path",
            "/embed/" + id,
            "/embed/" + id + "/frame",
            "/v1/layouts/" + id.replace("prv-", "%70rv-"),
            "/oembed?url=" + service.uri() + "/embed/" + id)) {
      for (RequestSpecification stranger : List.of(as("dune"), service.given())) {
        Response answer = stranger.urlEncodingEnabled(false).get(path);
        assertEquals(404, answer.statusCode(), path);
        assertFalse(answer.asString().contains("Secret"), path);
      }
    }
    as("dune").delete("/v1/layouts/" + id).then().statusCode(404);
    as("dune")
        .contentType("application/json")
        .body("{\"layoutId\":\"" + id + "\",\"release\":{\"x\":60,\"y\":5},\"durationS\":1}")
        .post("/v1/traces")
        .then()
        .statusCode(404);
    as("tide").get("/v1/layouts/" + id).then().statusCode(200);
    as("tide").get("/v1/traces/" + trace).then().statusCode(200);
  }

  @Test
  void answerIsTheSameWhetherAnothersLayoutExistsOrNot() {
    String id = stored("tide", "24");
    String none = id.substring(0, id.length() - 4) + "aaaa";

    String there = as("dune").get("/v1/layouts/" + id).then().extract().asString();
    String notThere = as("dune").get("/v1/layouts/" + none).then().extract().asString();

    assertEquals(there.replace(id, ""), notThere.replace(none, ""));
  }

  private static String traced(String owner, String id) {
    Response made =
        as(owner)
            .contentType("application/json")
            .body("{\"layoutId\":\"" + id + "\",\"release\":{\"x\":60,\"y\":5},\"durationS\":1}")
            .post("/v1/traces?wait=60");
    made.then()
        .statusCode(org.hamcrest.Matchers.oneOf(200, 201))
        .header("Cache-Control", "private, no-store");
    return made.path("traceId");
  }

  @Test
  void figuresAreTheSameAsThoseOfThePublicLayout() {
    String own = stored("tide", "25");
    String open = post("tide", body("25", "")).path("layoutId");

    Response secret = as("tide").get("/v1/layouts/" + own + "/rest-points?wait=60");
    Response known = as("tide").get("/v1/layouts/" + open + "/rest-points?wait=60");

    assertEquals(known.asString().replace(open, "ID"), secret.asString().replace(own, "ID"));
    assertEquals("private, no-store", secret.header("Cache-Control"));
    assertTrue(known.header("Cache-Control").startsWith("public"));
  }

  @Test
  void resultOfAPublicLayoutDoesNotTellThatAnotherAskedTheSameOfAPrivateOne() {
    String own = stored("tide", "26");
    String open = post("dune", body("26", "")).path("layoutId");
    as("tide").get("/v1/layouts/" + own + "/rest-points?wait=60").then().statusCode(200);

    Response first = as("dune").get("/v1/layouts/" + open + "/rest-points?wait=60");

    first.then().statusCode(200).header("Cache-Status", not(containsString("hit")));
  }

  @Test
  void deletingTakesEverythingWithItAndVariantsStay() {
    String id = stored("tide", "27");
    String trace = traced("tide", id);
    as("tide").get("/v1/layouts/" + id + "/rest-points?wait=60").then().statusCode(200);
    as("tide")
        .get(
            "/v1/layouts/"
                + id
                + "/sweep?vary=gapMm&from=27&to=28&steps=2&measure=outcome&x=60&y=5&wait=60")
        .then()
        .statusCode(200);
    Response pending =
        as("tide")
            .header("Prefer", "respond-async")
            .contentType("application/json")
            .body("{\"layoutId\":\"" + id + "\",\"window\":{\"x\":0,\"y\":0,\"halfWidth\":5}}")
            .post("/v1/basins");
    String variant =
        as("tide").get("/v1/layouts/" + id + "/variant?gapMm=31&format=text").asString();
    assertTrue(variant.startsWith("prv-"));
    assertNotEquals(id, variant);
    assertTrue(rows(id) > 3);

    as("tide").delete("/v1/layouts/" + id).then().statusCode(204);

    assertEquals(0, rows(id));
    as("tide").get("/v1/layouts/" + id).then().statusCode(404);
    as("tide").get("/v1/traces/" + trace).then().statusCode(404);
    if (pending.statusCode() == 202) {
      as("tide").get(pending.header("Location")).then().statusCode(404);
    }
    as("tide").get("/v1/layouts/" + variant).then().statusCode(200);
    as("tide").delete("/v1/layouts/" + id).then().statusCode(404);
    assertEquals(id, stored("tide", "27"));
  }

  /** What the database has of a layout, in any table that names it. */
  private static long rows(String id) {
    JdbcClient database = service.bean(JdbcClient.class);
    long rows = 0;
    for (String condition :
        List.of(
            "stored_result WHERE id LIKE :id OR realm LIKE :id OR request LIKE :id",
            "job WHERE job_id LIKE :id OR recipe LIKE :id",
            "job_ask WHERE job_id LIKE :id",
            "scheduled_tasks WHERE task_instance LIKE :id")) {
      rows +=
          database
              .sql("SELECT COUNT(*) FROM " + condition)
              .param("id", "%" + id + "%")
              .query(Long.class)
              .single();
    }
    return rows;
  }

  @Test
  void jobsOfAPrivateLayoutAreItsOwnersAlone() {
    String id = stored("tide", "28");
    Response pending =
        as("tide")
            .header("Prefer", "respond-async")
            .contentType("application/json")
            .body("{\"layoutId\":\"" + id + "\",\"window\":{\"x\":0,\"y\":0,\"halfWidth\":5}}")
            .post("/v1/basins");
    assertEquals(202, pending.statusCode());
    String job = pending.header("Location");

    as("tide").get(job).then().statusCode(200).header("Cache-Control", "private, no-store");
    as("dune").get(job).then().statusCode(404);
    as("dune").get(job + "/events").then().statusCode(404);
    as("dune").delete(job).then().statusCode(404);
    service.given().get(job).then().statusCode(404);
  }

  @Test
  void ownerListsOwnLayoutsAlone() {
    String own = stored("reef", "29");
    String others = stored("tide", "29.5");

    as("reef")
        .get("/v1/private-layouts")
        .then()
        .statusCode(200)
        .header("Cache-Control", containsString("no-store"))
        .body("layouts.layoutId", hasItem(own))
        .body("layouts.layoutId", not(hasItem(others)));
    as("reef")
        .get("/v1/private-layouts?format=text")
        .then()
        .statusCode(200)
        .body(containsString(own));
    service.given().get("/v1/private-layouts").then().statusCode(422);
  }

  @Test
  void whoeverTellsNoOwnerCanStoreNothingPrivate() {
    service
        .given()
        .contentType("application/json")
        .body(body("30"))
        .post("/v1/layouts")
        .then()
        .statusCode(422)
        .body("code", equalTo("owner-needed"))
        .body("errors[0].pointer", equalTo("/visibility"));
    service
        .given()
        .contentType("application/json")
        .body("{\"layout\":" + body("30") + ",\"release\":{\"x\":60,\"y\":5}}")
        .post("/v1/traces")
        .then()
        .statusCode(422)
        .body("errors[0].pointer", startsWith("/layout/visibility"));
  }

  @Test
  void publicLayoutIsNotDeletedAndSealsCannotBeSent() {
    String open = post("tide", body("32", ",\"visibility\":\"public\"")).path("layoutId");
    assertEquals(open, post("dune", body("32", "")).path("layoutId"));
    as("tide")
        .delete("/v1/layouts/" + open)
        .then()
        .statusCode(409)
        .body("code", equalTo("public-layout"));
    post("dune", body("33", ",\"seal\":{\"owner\":\"tide\",\"salt\":\"a\"}"))
        .then()
        .statusCode(400);
    String own = stored("tide", "34");
    as("tide").get("/v1/layouts/" + own + "/variant?seal.owner=dune").then().statusCode(400);
    as("tide").get("/v1/layouts/" + own + "/variant?visibility=public").then().statusCode(400);
  }

  @Test
  void everythingIsThereAfterARestart() {
    String id = stored("tide", "35");
    String trace = traced("tide", id);

    service.restart();

    as("tide").get("/v1/layouts/" + id).then().statusCode(200);
    as("tide").get("/v1/traces/" + trace).then().statusCode(200);
    assertEquals(id, post("tide", body("35")).path("layoutId"));
  }
}
