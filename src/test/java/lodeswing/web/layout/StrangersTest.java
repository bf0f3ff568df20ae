package lodeswing.web.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import lodeswing.RunningService;
import lodeswing.job.Realm;
import lodeswing.web.openapi.ContractTour;
import lodeswing.web.openapi.ContractTour.Visit;
import org.junit.jupiter.api.AfterAll;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Every operation of the contract, asked about a private layout by those whose it is not: with
 * their own key, without any, and by the detours that have opened other services.
 */
class StrangersTest {

  private static final String SECRET = "Wreck behind the reef";

  private static final String LAYOUT =
      ContractTour.LAYOUT.replace(
          "{\"model\":\"bench\",",
          "{\"model\":\"bench\",\"visibility\":\"private\",\"title\":\"" + SECRET + "\",");

  @TempDir static Path folder;

  private static RunningService service;
  private static ContractTour tour;
  private static List<Visit> own = List.of();

  @BeforeAll
  static void visitAsOwner() {
    service = RunningService.onFolder(folder).with(OwnersByHeader.class).start();
    tour = new ContractTour(service, LAYOUT, Map.of(OwnersByHeader.FIELD, "tide"), 1);
    own = tour.visits().stream().filter(visit -> Realm.in(visit.url()).isPresent()).toList();
  }

  @AfterAll
  static void stop() {
    service.close();
  }

  private static RequestSpecification dune() {
    return service.given().header(OwnersByHeader.FIELD, "dune").urlEncodingEnabled(false);
  }

  private static RequestSpecification nobody() {
    return service.given().urlEncodingEnabled(false);
  }

  private static void assertNothingThere(String what, Response answer) {
    assertEquals(404, answer.statusCode(), what);
    assertFalse(answer.asString().contains(SECRET), what);
    assertEquals("private, no-store", answer.header("Cache-Control"), what);
  }

  @Test
  void ownerIsAnsweredEverywhereAndNobodyMayKeepIt() {
    List<String> wrong = new ArrayList<>();
    for (Visit visit : own) {
      // A private layout is not embedded: the pages of others could not ask for it.
      boolean right = (visit.answer().statusCode() < 300) != visit.url().startsWith("/oembed");
      int status = visit.answer().statusCode();
      String kept = visit.answer().header("Cache-Control");
      if (!right || !"private, no-store".equals(kept)) {
        wrong.add(visit.name() + " " + status + " " + kept);
      }
    }
    assertEquals(List.of(), wrong);
    assertTrue(own.size() > 50, "only " + own.size());
  }

  @Test
  void strangerFindsNothingByAnyOfTwoHundredWays() {
    int attempts = 0;
    for (Visit visit : own) {
      String what = visit.name();
      if (visit.method().equals("post")) {
        continue;
      }
      assertNothingThere(what, dune().request(visit.method(), visit.url()));
      assertNothingThere(what + ", nobody", nobody().request(visit.method(), visit.url()));
      Response conditional =
          dune().header("If-None-Match", "*").header("Range", "bytes=0-9").get(visit.url());
      assertNothingThere(what + ", conditional", conditional);
      assertEquals(404, dune().head(visit.url()).statusCode(), what);
      attempts += 4;
    }
    assertTrue(attempts >= 200, "only " + attempts);
  }

  @Test
  void strangerCanPostNothingAboutIt() {
    String id = Realm.in(own.get(0).url()).orElseThrow().text();
    int attempts = 0;
    for (String path :
        List.of(
            "/v1/traces",
            "/v1/twins",
            "/v1/basins",
            "/v1/odds",
            "/v1/sweeps",
            "/v1/tunings",
            "/v1/layouts/{layoutId}/outcomes",
            "/v1/fits",
            "/v1/comparisons")) {
      String body = tour.body(path, id);
      for (RequestSpecification stranger : List.of(dune(), nobody())) {
        for (String query : List.of("", "?dry-run=true")) {
          Response answer =
              stranger
                  .contentType("application/json")
                  .body(body)
                  .post(path.replace("{layoutId}", id) + query);
          boolean refused =
              answer.statusCode() == 404
                  || (answer.statusCode() == 400 && answer.asString().contains("dry-run"));
          assertTrue(refused, path + query + " " + answer.statusCode());
          assertFalse(answer.asString().contains(SECRET), path);
          attempts++;
        }
      }
    }
    assertEquals(36, attempts);
  }

  @Test
  void detoursLeadNowhere() {
    String id = Realm.in(own.get(0).url()).orElseThrow().text();
    String path = "/v1/layouts/" + id;
    for (String detour :
        List.of(
            path.replace("prv-", "%70rv-"),
            path.replace("prv-", "prv%2D"),
            "/v1/layouts/%2e%2e/layouts/" + id,
            "/v1//layouts/" + id,
            "/v1/layouts/x/../" + id,
            path + "/",
            path + ".json",
            path + "%00",
            path.toUpperCase(Locale.ROOT),
            "/embed/" + id,
            "/embed/" + id + "/frame",
            "/oembed?url=" + service.uri() + "/embed/" + id,
            "/oembed?url=" + service.uri() + "/embed/" + id.replace("prv-", "%2570rv-"))) {
      Response answer = dune().get(detour);
      assertTrue(answer.statusCode() >= 400 && answer.statusCode() < 500, detour);
      assertFalse(answer.asString().contains(SECRET), detour);
    }
    for (Map.Entry<String, String> field :
        Map.of(
                "X-Original-URL", path,
                "X-Rewrite-URL", path,
                "X-HTTP-Method-Override", "GET",
                "X-Forwarded-User", "tide",
                "X-Forwarded-For", "127.0.0.1",
                "Forwarded", "for=127.0.0.1",
                "Cookie", "owner=tide")
            .entrySet()) {
      Response answer = nobody().header(field.getKey(), field.getValue()).get(path);
      assertNothingThere(field.getKey(), answer);
    }
  }
}
