package lodeswing.benchmark;

import com.sun.management.OperatingSystemMXBean;
import io.restassured.response.Response;
import java.io.IOException;
import java.lang.management.ManagementFactory;
import java.nio.file.Files;
import java.util.List;
import java.util.Locale;
import java.util.SplittableRandom;
import java.util.function.Supplier;
import java.util.stream.Collectors;
import lodeswing.RunningService;

/**
 * What each kind of work costs beside a release of a textbook map: the figures of {@code WorkCost}.
 *
 * <p>Processor time of the whole process, since a machine's other load stretches wall time, of one
 * run each over HTTP; the same requests of a layout with another gap come first, so that the
 * compiler has seen them.
 */
public final class WorkCostReport {

  private static final List<String> SAMPLES =
      List.of(
          "paper-triangle",
          "three-stations",
          "kitchen-drawer",
          "y-cord",
          "heavy-bar",
          "uneven-coast");
  private static final int SIDE = 200;
  private static final String PREVIEW = "/preview?width=" + SIDE + "&height=" + SIDE + "&wait=60";

  private final RunningService service;
  private double perRelease;
  private boolean shown;

  private WorkCostReport(RunningService service) {
    this.service = service;
  }

  /** Prints the report. */
  public static void main(String[] arguments) throws IOException {
    try (var service =
        RunningService.onFolder(
            Files.createTempDirectory("cost-"), "lodeswing.limits.preparing-work=1e11")) {
      var report = new WorkCostReport(service.start());
      report.rows("paper-triangle", report.changed("paper-triangle", "drag=0.21"));
      report.rows("three-stations", report.changed("three-stations", "gapMm=25.5"));
      report.shown = true;
      System.out.println("| layout | work | processor s | releases of a textbook map |");
      System.out.println("| --- | --- | ---: | ---: |");
      for (String name : SAMPLES) {
        report.rows(
            name,
            report.service.given().get("/v1/sample-layouts/" + name + "?format=text").asString());
      }
    }
  }

  private String changed(String name, String change) {
    String id = service.given().get("/v1/sample-layouts/" + name + "?format=text").asString();
    return service.given().get("/v1/layouts/" + id + "/variant?format=text&" + change).asString();
  }

  private void rows(String name, String id) {
    String layout = "/v1/layouts/" + id;
    boolean paper = name.equals("paper-triangle");
    row(name, "making ready", 1, () -> get(layout + "/rest-points?wait=60"));
    String map =
        "/v1/basins/"
            + row(name, "survey", 1, () -> get(layout + "/basin?format=text&wait=60")).asString();
    double pixels = time(name, "map, a pixel", SIDE * SIDE, () -> get(map + PREVIEW));
    if (paper) {
      perRelease = pixels / (SIDE * SIDE);
    }
    row(name, "summary of 65,536 pixels", 1, () -> get(map + "/summary?side=256&wait=60"));
    String unit = paper ? "0.6" : "60";
    row(
        name,
        "trace of 12 s",
        1,
        () -> get(layout + "/trace?x=" + unit + "&y=" + unit + "&durationS=12&wait=60"));
    row(
        name,
        "trace of 60 s",
        1,
        () -> get(layout + "/trace?x=-" + unit + "&y=" + unit + "&durationS=60&wait=60"));
    row(
        name,
        "trace of 600 s",
        1,
        () ->
            get(
                layout
                    + "/trace?x=-"
                    + unit
                    + "&y=-"
                    + unit
                    + "&durationS=600&sampleIntervalS=0.1&wait=60"));
    row(name, "free swing", 1, () -> get(layout + "/free-swing?x=" + unit + "&y=" + unit));
    row(name, "list, a release", 1_000, () -> list(layout, 1_000, false, paper ? 1 : 70));
    row(name, "settled list, a release", 200, () -> list(layout, 200, true, paper ? 1 : 70));
  }

  private Response get(String path) {
    return service.given().get(path);
  }

  private Response list(String layout, int count, boolean settled, double reach) {
    var random = new SplittableRandom(7);
    Supplier<String> places =
        () ->
            random
                .doubles(count, -reach, reach)
                .mapToObj(value -> String.format(Locale.ROOT, "%.4f", value))
                .collect(Collectors.joining(",", "[", "]"));
    return service
        .given()
        .contentType("application/json")
        .body("{\"x\":" + places.get() + ",\"y\":" + places.get() + "}")
        .post(layout + "/outcomes?wait=60&settled=" + settled);
  }

  private Response row(String name, String work, int parts, Supplier<Response> request) {
    var answer = new Response[1];
    time(
        name,
        work,
        parts,
        () -> {
          answer[0] = request.get();
          return answer[0];
        });
    return answer[0];
  }

  private double time(String name, String work, int parts, Supplier<Response> request) {
    var machine = (OperatingSystemMXBean) ManagementFactory.getOperatingSystemMXBean();
    long begun = machine.getProcessCpuTime();
    Response answer = request.get();
    double seconds = (machine.getProcessCpuTime() - begun) / 1e9;
    if (shown) {
      String cost =
          answer.statusCode() == 200
              ? String.format(
                  Locale.ROOT,
                  "%.3g",
                  seconds / (perRelease > 0 ? perRelease : seconds / parts) / parts)
              : answer.asString().strip();
      System.out.printf(Locale.ROOT, "| %s | %s | %.3f | %s |%n", name, work, seconds, cost);
    }
    return seconds;
  }
}
