package lodeswing.config;

import static org.hamcrest.MatcherAssert.assertThat;
import static org.hamcrest.Matchers.allOf;
import static org.hamcrest.Matchers.closeTo;
import static org.hamcrest.Matchers.empty;
import static org.hamcrest.Matchers.equalTo;
import static org.hamcrest.Matchers.everyItem;
import static org.hamcrest.Matchers.greaterThan;
import static org.hamcrest.Matchers.greaterThanOrEqualTo;
import static org.hamcrest.Matchers.in;
import static org.hamcrest.Matchers.is;
import static org.hamcrest.Matchers.lessThanOrEqualTo;
import static org.hamcrest.Matchers.not;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.Set;
import java.util.TreeSet;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import lodeswing.RunningService;
import lodeswing.web.probe.ProbeController;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;

class MetricsOverHttpTest {

  @RegisterExtension
  static final RunningService SERVICE = RunningService.shared("probe=true", "metrics.test=true");

  private static final String MEMORY =
      "lodeswing_answers_total{application=\"lodeswing\",asker=\"request\",source=\"memory\"}";
  private static final String COMPUTED =
      "lodeswing_answers_total{application=\"lodeswing\",asker=\"request\",source=\"computed\"}";
  private static final String PENDING =
      "lodeswing_answers_total{application=\"lodeswing\",asker=\"request\",source=\"pending\"}";
  private static final String DONE =
      "lodeswing_computations_seconds_count{application=\"lodeswing\",end=\"done\",kind=\"probe\"}";
  private static final String FAILED =
      "lodeswing_computations_seconds_count{application=\"lodeswing\",end=\"failed\",kind=\"probe\"}";
  private static final String RELEASES = "lodeswing_releases_total{application=\"lodeswing\"}";
  private static final String OLDEST =
      "lodeswing_jobs_oldest_age_seconds{application=\"lodeswing\"}";
  private static final String WAITING =
      "lodeswing_queue_waiting{application=\"lodeswing\",kind=\"probe\"}";
  private static final String WAITING_RELEASES =
      "lodeswing_queue_releases{application=\"lodeswing\",kind=\"outcomes\"}";
  private static final String STORED = "lodeswing_store_bytes{application=\"lodeswing\"}";

  @Test
  void answersAreCountedByTheirSource() {
    String before = metrics();
    SERVICE.given().get("/probe/work?name=counted").then().statusCode(200);
    String computed = metrics();
    assertThat(value(computed, COMPUTED) - value(before, COMPUTED), equalTo(1.0));
    assertThat(value(computed, DONE) - value(before, DONE), equalTo(1.0));
    assertThat(value(computed, STORED), greaterThan(value(before, STORED)));
    for (int i = 0; i < 3; i++) {
      SERVICE.given().get("/probe/work?name=counted").then().statusCode(200);
    }
    String kept = metrics();
    assertThat(value(kept, MEMORY) - value(computed, MEMORY), equalTo(3.0));
    assertThat(value(kept, COMPUTED) - value(computed, COMPUTED), equalTo(0.0));
    assertThat(value(kept, DONE) - value(computed, DONE), equalTo(0.0));
  }

  @Test
  void failuresAreCounted() {
    double before = value(metrics(), FAILED);
    SERVICE.given().get("/probe/work?name=failing").then().statusCode(422);
    assertThat(value(metrics(), FAILED) - before, equalTo(1.0));
  }

  @Test
  void jobsHaveAnAgeUntilTheyEnd() {
    assertThat(value(metrics(), OLDEST), equalTo(0.0));
    ProbeController probe = SERVICE.bean(ProbeController.class);
    double before = value(metrics(), PENDING);
    probe.shut("aged");
    SERVICE.given().get("/probe/work?name=aged&wait=0").then().statusCode(202);
    String running = metrics();
    assertThat(value(running, PENDING) - before, equalTo(1.0));
    assertThat(value(running, OLDEST), greaterThan(0.0));
    probe.open("aged");
    SERVICE.given().get("/probe/work?name=aged&wait=30").then().statusCode(200);
    assertThat(value(metrics(), OLDEST), equalTo(0.0));
  }

  /** The queue asks for a job's result again and again, and the job's work for other results. */
  @Test
  void onlyRequestsAreCountedAsAskedForByRequests() throws InterruptedException {
    String map =
        SERVICE
            .given()
            .contentType("application/json")
            .body(
                "{\"layout\":{\"model\":\"textbook\",\"omega0\":0.5,\"drag\":0.2,\"height\":0.3,"
                    + "\"magnets\":[{\"x\":0.6,\"y\":0.1,\"strength\":1},{\"x\":-0.6,\"y\":0,"
                    + "\"strength\":1}]},\"window\":{\"halfWidth\":1.7}}")
            .post("/v1/basins?wait=60")
            .path("basinId");
    String before = metrics();
    String job =
        SERVICE
            .given()
            .get("/v1/basins/" + map + "/summary?side=400&wait=0")
            .then()
            .statusCode(202)
            .extract()
            .header("Location");
    while (!SERVICE.given().get(job).path("state").equals("done")) {
      Thread.sleep(50);
    }
    // The queue hears of the end a moment later than the job's row.
    while (sum(metrics(), "job") == sum(before, "job")) {
      Thread.sleep(50);
    }
    String after = metrics();
    assertThat(value(after, PENDING) - value(before, PENDING), equalTo(1.0));
    assertThat(sum(after, "request") - sum(before, "request"), equalTo(1.0));
    assertThat(sum(after, "job") - sum(before, "job"), equalTo(1.0));
    assertThat(sum(after, "work") - sum(before, "work"), greaterThanOrEqualTo(2.0));
  }

  /** Answers to an asker, from whatever source. */
  private static double sum(String metrics, String asker) {
    return metrics
        .lines()
        .filter(line -> line.startsWith("lodeswing_answers_total{"))
        .filter(line -> line.contains("asker=\"" + asker + "\""))
        .mapToDouble(line -> Double.parseDouble(line.substring(line.lastIndexOf(' ') + 1)))
        .sum();
  }

  /** No more jobs are begun than there are cores, so of one more than that at least one waits. */
  @Test
  void whatWaitsForACoreIsCounted() {
    ProbeController probe = SERVICE.bean(ProbeController.class);
    int cores = Runtime.getRuntime().availableProcessors();
    for (int i = 0; i < cores + 1; i++) {
      probe.shut("queued-" + i);
      SERVICE.given().get("/probe/work?wait=0&name=queued-" + i).then().statusCode(202);
    }
    SERVICE
        .given()
        .contentType("application/json")
        .body("{\"x\":[-71,11,6,9],\"y\":[31,21,-41,8]}")
        .post("/v1/layouts/lay-gml5i43zz5an5xumg2vdiia3iz/outcomes?wait=0")
        .then()
        .statusCode(202);
    double waiting = value(metrics(), WAITING);
    double releases = value(metrics(), WAITING_RELEASES);
    for (int i = 0; i < cores + 1; i++) {
      probe.open("queued-" + i);
      SERVICE.given().get("/probe/work?wait=30&name=queued-" + i).then().statusCode(200);
    }
    assertThat(waiting, allOf(greaterThanOrEqualTo(1.0), lessThanOrEqualTo(cores + 1.0)));
    assertThat(value(metrics(), WAITING), equalTo(0.0));
    // Four releases, each of which may count for more than one.
    assertThat(releases, greaterThanOrEqualTo(4.0));
  }

  @Test
  void releasesOfAMapAreCountedEachOnce() {
    double before = value(metrics(), RELEASES);
    SERVICE
        .given()
        .contentType("application/json")
        .body("{\"x\":[-70,10,5],\"y\":[30,20,-40]}")
        .post("/v1/layouts/lay-gml5i43zz5an5xumg2vdiia3iz/outcomes?wait=60")
        .then()
        .statusCode(200);
    assertThat(value(metrics(), RELEASES) - before, closeTo(3, 1e-9));
  }

  /** A metric that nothing tells would be an empty panel that nobody notices. */
  @Test
  void everyMetricOfTheDashboardIsTold() throws Exception {
    // Pauses are told from the first one on, some moments after it.
    System.gc();
    for (int tries = 0; !metrics().contains("jvm_gc_pause_seconds_max") && tries < 600; tries++) {
      Thread.sleep(50);
    }
    SERVICE.given().get("/v1/limits").then().statusCode(200);
    SERVICE.given().get("/probe/work?name=shown").then().statusCode(200);
    Set<String> told =
        Arrays.stream(metrics().split("\n"))
            .filter(line -> !line.startsWith("#"))
            .map(line -> line.split("[{ ]", 2)[0])
            .collect(Collectors.toSet());
    assertThat(asked(), is(not(empty())));
    assertThat(asked(), everyItem(is(in(told))));
  }

  private static Set<String> asked() throws IOException {
    String dashboard = Files.readString(Path.of("deploy", "dashboard.json"));
    Matcher found =
        Pattern.compile("\\b((?:lodeswing|http|jvm|process|hikaricp)_[a-z_]+)\\{")
            .matcher(dashboard);
    var names = new TreeSet<String>();
    while (found.find()) {
      names.add(found.group(1));
    }
    return names;
  }

  private static String metrics() {
    return SERVICE.given().get("/actuator/prometheus").then().statusCode(200).extract().asString();
  }

  /** The value of a line; nought where it has not been counted yet. */
  private static double value(String metrics, String name) {
    return metrics
        .lines()
        .filter(line -> line.startsWith(name + " "))
        .mapToDouble(line -> Double.parseDouble(line.substring(name.length() + 1)))
        .findFirst()
        .orElse(0);
  }
}
