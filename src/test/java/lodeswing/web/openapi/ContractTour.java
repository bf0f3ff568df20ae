package lodeswing.web.openapi;

import io.restassured.response.Response;
import io.restassured.specification.RequestSpecification;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import lodeswing.RunningService;
import lodeswing.web.representation.Representation;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * Asks a running service for every operation of its own contract, in every form that it offers,
 * about one small rig: what holds for all answers is held against each of them.
 */
public final class ContractTour {

  /** Spheres: felt as dipoles, so that they are quickly computed, yet with a size to swallow. */
  public static final String MAGNET =
      ",\"shape\":\"sphere\",\"diameterMm\":11,\"grade\":\"N35\",\"poleUp\":\"south\"";

  /** The rig: two magnets, and a loss that soon brings the bob to rest. */
  public static final String LAYOUT =
      "{\"model\":\"bench\",\"pendulum\":{\"kind\":\"cord\",\"lengthMm\":420,\"bobMassG\":45},"
          + "\"bobMagnet\":{\"shape\":\"sphere\",\"diameterMm\":12,\"grade\":\"N35\","
          + "\"poleDown\":\"north\"},\"gapMm\":30,\"damping\":{\"swingsToHalf\":1},\"magnets\":["
          + "{\"x\":38,\"y\":0,\"label\":\"Tide\""
          + MAGNET
          + "},{\"x\":-22.5,\"y\":38.97,\"label\":\"Dune\""
          + MAGNET
          + "}]}";

  /** What a trace of it is asked for. */
  public static final String TRACE =
      "\"release\":{\"x\":60,\"y\":5},\"durationS\":2,\"sampleIntervalS\":0.05";

  private static final String HAND =
      "\"release\":{\"x\":60,\"y\":0},\"spread\":{\"kind\":\"gaussian\",\"deviation\":3},"
          + "\"width\":0.3";

  private static final Map<String, String> BODIES =
      Map.of(
          "/v1/traces",
          TRACE,
          "/v1/twins",
          "\"release\":{\"x\":60,\"y\":5},\"shift\":{\"x\":1},\"durationS\":2",
          "/v1/basins",
          "\"window\":{\"x\":36,\"y\":0,\"halfWidth\":2}",
          "/v1/odds",
          HAND,
          "/v1/sweeps",
          "\"vary\":[{\"quantity\":\"gapMm\",\"from\":30,\"to\":32,\"steps\":2}],"
              + "\"measures\":[{\"measure\":\"outcome\"}],\"release\":{\"x\":60,\"y\":5}",
          "/v1/tunings",
          HAND + ",\"move\":{\"places\":{\"within\":5}},\"answers\":1,\"candidates\":8");

  private static final Map<String, String> FORMS =
      Arrays.stream(Representation.values())
          .collect(
              Collectors.toMap(
                  form -> form.mediaType().getType() + "/" + form.mediaType().getSubtype(),
                  Representation::word));

  private final RunningService service;
  private final String layout;
  private final Map<String, String> fields;
  private final int forms;
  private final JsonNode contract;
  private final Map<String, String> ids = new HashMap<>();

  /** A tour of a service, about a public layout. */
  public ContractTour(RunningService service) {
    this(service, LAYOUT, Map.of(), Integer.MAX_VALUE);
  }

  /**
   * A tour of a service.
   *
   * @param layout the rig as it is stored
   * @param fields of every request, such as who sends it
   * @param forms how many forms of each operation are asked for at most
   */
  public ContractTour(
      RunningService service, String layout, Map<String, String> fields, int forms) {
    this.service = service;
    this.forms = forms;
    this.layout = layout;
    this.fields = fields;
    contract = JsonMapper.shared().readTree(service.given().get("/v3/api-docs").asByteArray());
  }

  /**
   * An operation that was asked for in one of its forms.
   *
   * @param operationId its name
   * @param form the form, as in {@code format}
   * @param mediaType the form's media type
   * @param ofLayout whether the contract says that it answers for a layout
   * @param method its method
   * @param url what was asked, from the path on
   * @param answer what came
   */
  public record Visit(
      String operationId,
      String form,
      String mediaType,
      boolean ofLayout,
      String method,
      String url,
      Response answer) {

    /** Operation and form. */
    public String name() {
      return operationId + " as " + form;
    }
  }

  private record Asked(
      String operationId,
      String path,
      String form,
      String mediaType,
      String query,
      boolean ofLayout) {}

  /** The service's own contract. */
  public JsonNode contract() {
    return contract;
  }

  /** Visits everything; nothing is cancelled but at the end. */
  public List<Visit> visits() {
    String layoutId =
        asking().contentType("application/json").body(layout).post("/v1/layouts").path("layoutId");
    ids.put("layoutId", layoutId);
    ids.put("name", "one-well");
    ids.put("code", "too-costly");
    ids.put("version", "1");
    ids.put("z", "0");
    ids.put("x", "0");
    ids.put("y", "0");
    List<Visit> visits = new ArrayList<>();
    for (Asked asked : asked("post")) {
      String to = asked.path().replace("{layoutId}", layoutId);
      Response answer = posted(asked, to, layoutId);
      visits.add(visit(asked, "post", to, answer));
      String location = String.valueOf(answer.header("Location"));
      String id = location.substring(location.lastIndexOf('/') + 1);
      String resource = asked.path().substring(asked.path().lastIndexOf('/') + 1);
      ids.put(resource.replaceAll("s$", "") + "Id", id);
      ids.put(resource + "Id", id);
    }
    ids.put("jobId", job(layoutId));
    for (String method : List.of("get", "delete")) {
      for (Asked asked : asked(method)) {
        String url = filled(asked.path()) + "?wait=60&format=" + asked.form() + "&" + query(asked);
        visits.add(visit(asked, method, url, asking().request(method, url)));
      }
    }
    return visits;
  }

  private static Visit visit(Asked asked, String method, String url, Response answer) {
    return new Visit(
        asked.operationId(),
        asked.form(),
        asked.mediaType(),
        asked.ofLayout(),
        method,
        url,
        answer);
  }

  private RequestSpecification asking() {
    return service.given().headers(fields);
  }

  /** What is posted to an address to make something of a layout. */
  public String body(String path, String layoutId) {
    return switch (path) {
      case "/v1/layouts" -> layout;
      case "/v1/layouts/{layoutId}/outcomes" -> "{\"x\":[60,61],\"y\":[5,5]}";
      case "/v1/fits" -> recorded(layoutId, ",\"unknown\":[\"lengthMm\"]");
      case "/v1/comparisons" -> recorded(layoutId, "");
      default -> "{\"layoutId\":\"" + layoutId + "\"," + BODIES.get(path) + "}";
    };
  }

  private List<Asked> asked(String method) {
    List<Asked> all = new ArrayList<>();
    JsonNode paths = contract.get("paths");
    for (String path : paths.propertyNames()) {
      JsonNode operation = paths.get(path).path(method);
      if (operation.isMissingNode() || path.equals("/v1/private-layouts")) {
        // What needs an owner is asked for by the tests of private layouts.
        continue;
      }
      JsonNode answer = operation.at("/responses/200");
      List<String> needed = new ArrayList<>();
      for (JsonNode parameter : operation.get("parameters")) {
        if (parameter.path("name").stringValue("").equals("pixels")) {
          needed.add("pixels=200");
        } else if (parameter.path("required").booleanValue(false)
            && parameter.get("in").stringValue().equals("query")) {
          needed.add(
              parameter.get("name").stringValue() + "=" + parameter.get("example").asString());
        }
      }
      for (String type : answer.path("content").propertyNames().stream().limit(forms).toList()) {
        all.add(
            new Asked(
                operation.get("operationId").stringValue(),
                path,
                FORMS.getOrDefault(type, type),
                type,
                String.join("&", needed),
                !answer.at("/headers/Link").isMissingNode()));
      }
    }
    return all;
  }

  private String filled(String path) {
    String filled = path;
    for (Map.Entry<String, String> id : ids.entrySet()) {
      filled = filled.replace("{" + id.getKey() + "}", id.getValue());
    }
    return filled;
  }

  /**
   * Examples are those of the samples; what asks for a place or a size does for this layout too.
   */
  private String query(Asked asked) {
    return switch (asked.operationId()) {
      case "getLayoutOdds" -> asked.query() + "&width=0.3";
      case "getOembed" -> "url=" + service.uri() + "/embed/" + ids.get("layoutId");
      case "getSwingCount" -> "swings=20&timeS=26.2&halfAfter=24";
      case "getLayoutSweep" -> "vary=gapMm&from=30&to=32&steps=2&measure=outcome&x=60&y=5";
      case "getOccupancy" -> "releases=64&durationS=1&pixels=200";
      case "getLayoutBundle" -> "mapPixels=16";
      case "getFieldMap" -> "side=33&halfWidth=50&pixels=200";
      case "getFieldLines" -> "apartMm=20&halfWidth=50&spots=false&pixels=200";
      case "getFieldFilings" -> "count=200&halfWidth=50&spots=false&pixels=200";
      case "getBasinSummary" -> "side=64";
      case "getLayoutBasinSummary" -> "x=36&y=0&halfWidth=2&side=64";
      case "getLayoutBasin" -> "x=36&y=0&halfWidth=2&width=64&height=64";
      case "getBasinPreview" -> "width=64&height=64";
      case "getLayoutTwins" -> "x=60&y=5&shiftX=1&durationS=2";
      case "getTraceGlow", "getTraceAnimation" -> "";
      case "getLayoutTrace", "getLayoutTraceGlow", "getLayoutTraceAnimation" ->
          "x=60&y=5&durationS=2";
      case "getMagnetEstimate" -> "diameterMm=15&heightMm=5&pairPullN=4&distanceMm=10";
      default -> asked.query();
    };
  }

  private Response posted(Asked asked, String to, String layoutId) {
    return asking()
        .contentType("application/json")
        .body(body(asked.path(), layoutId))
        .post(to + "?wait=60&format=" + asked.form());
  }

  private String recorded(String layoutId, String more) {
    Response path =
        asking()
            .get("/v1/layouts/" + layoutId + "/trace?x=60&y=5&durationS=1&sampleIntervalS=0.05");
    return "{\"layoutId\":\""
        + layoutId
        + "\",\"recording\":{\"t\":"
        + path.path("samples.t")
        + ",\"x\":"
        + path.path("samples.x")
        + ",\"y\":"
        + path.path("samples.y")
        + "}"
        + more
        + "}";
  }

  /** A job that is there to be read: of a map that nobody has asked for yet. */
  private String job(String layoutId) {
    Response pending =
        asking()
            .contentType("application/json")
            .header("Prefer", "respond-async")
            .body(
                "{\"layoutId\":\"" + layoutId + "\",\"window\":{\"x\":1,\"y\":2,\"halfWidth\":3}}")
            .post("/v1/basins");
    String location = String.valueOf(pending.header("Location"));
    return location.substring(location.lastIndexOf('/') + 1);
  }
}
