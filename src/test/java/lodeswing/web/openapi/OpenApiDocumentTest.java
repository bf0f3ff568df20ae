package lodeswing.web.openapi;

import static io.restassured.RestAssured.given;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.restassured.response.Response;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import lodeswing.RunningService;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The copy in {@code api/openapi.yaml} is what the service answers, and its examples work.
 *
 * <p>{@code mvn test -Dtest=OpenApiDocumentTest -Dopenapi.write=true} writes the copy anew.
 */
class OpenApiDocumentTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final Path COPY = Path.of("api", "openapi.yaml");
  private static final JsonMapper JSON = JsonMapper.shared();

  private static JsonNode document() {
    return JSON.readTree(given().get("/v3/api-docs").asByteArray());
  }

  private static List<JsonNode> operations() {
    var operations = new ArrayList<JsonNode>();
    for (JsonNode path : document().get("paths")) {
      for (JsonNode operation : path) {
        operations.add(operation);
      }
    }
    return operations;
  }

  @Test
  void copyIsWhatTheServiceAnswers() throws IOException {
    String served =
        new String(given().get("/v3/api-docs.yaml").asByteArray(), StandardCharsets.UTF_8);
    if (Boolean.getBoolean("openapi.write")) {
      Files.createDirectories(COPY.getParent());
      Files.writeString(COPY, served);
    }
    assertEquals(Files.readString(COPY), served);
  }

  @Test
  void documentIsOpenApi31WithANamedOperationEach() {
    assertTrue(document().get("openapi").stringValue().startsWith("3.1"));
    var ids = new HashSet<String>();
    for (JsonNode operation : operations()) {
      String id = operation.get("operationId").stringValue();
      assertTrue(id.matches("(create|get|list|cancel|delete|stream)[A-Z][A-Za-z]+"), id);
      assertTrue(ids.add(id), id);
      assertTrue(operation.get("responses").has("400"), id);
    }
    assertTrue(ids.size() > 5);
  }

  /** Conditions and ranges are for reading; an answer of the moment has no parts to ask for. */
  @Test
  void whatCanBeReadSaysThatConditionsAndRangesMayFail() {
    JsonNode paths = document().get("paths");
    for (String path : paths.propertyNames()) {
      for (String method : paths.get(path).propertyNames()) {
        JsonNode responses = paths.get(path).get(method).get("responses");
        boolean job = path.startsWith("/v1/jobs") || path.equals("/v1/private-layouts");
        boolean read = method.equals("get");
        assertEquals(read && !path.endsWith("/events"), responses.has("412"), path);
        assertEquals(read && !job, responses.has("416"), path);
      }
    }
  }

  @Test
  void whatHasADryRunSaysWhatThatAnswers() {
    JsonNode paths = document().get("paths");
    int dry = 0;
    for (String path : paths.propertyNames()) {
      JsonNode post = paths.get(path).path("post");
      if (post.path("parameters").findValuesAsString("name").contains("dry-run")) {
        String answer = post.at("/responses/200/content/application~1json/schema").toString();
        assertTrue(answer.contains(path.equals("/v1/layouts") ? "LayoutSummary" : "DryRun"), path);
        dry++;
      }
    }
    assertEquals(10, dry);
    for (String name : List.of("LayoutSummary", "DryRun")) {
      assertTrue(
          document().at("/components/schemas/" + name + "/properties").has("costReleases"), name);
    }
  }

  @Test
  void everyReferenceLeadsToAComponent() {
    JsonNode document = document();
    var kinds = new HashSet<String>();
    for (JsonNode reference : document.findValues("$ref")) {
      String pointer = reference.stringValue().substring(1);
      assertFalse(document.at(pointer).isMissingNode(), pointer);
      kinds.add(pointer.split("/")[2]);
    }
    assertEquals(Set.of("schemas", "parameters", "responses"), kinds);
    JsonNode length = document.at("/components/schemas/Cord/properties/lengthMm");
    assertEquals(5, length.get("minimum").doubleValue());
    assertFalse(document.at("/components/schemas/Cord/additionalProperties").booleanValue(true));
  }

  @Test
  void everyExampleCanBePosted() {
    int posted = 0;
    String sample = given().get("/v1/sample-layouts/three-stations").path("layoutId");
    JsonNode paths = document().get("paths");
    for (String path : paths.propertyNames()) {
      JsonNode examples =
          paths.get(path).at("/post/requestBody/content/application~1json/examples");
      for (JsonNode example : examples) {
        Response answer =
            given()
                .contentType("application/json")
                .body(example.get("value").toString())
                .post(path.replace("{layoutId}", sample));
        assertTrue(answer.statusCode() < 300, answer.asString());
        posted++;
      }
    }
    assertTrue(posted >= 11);
  }
}
