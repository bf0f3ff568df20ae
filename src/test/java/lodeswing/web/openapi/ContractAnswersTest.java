package lodeswing.web.openapi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.networknt.schema.Schema;
import com.networknt.schema.SchemaRegistry;
import com.networknt.schema.SpecificationVersion;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Set;
import java.util.TreeSet;
import lodeswing.RunningService;
import lodeswing.web.openapi.ContractTour.Visit;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.extension.RegisterExtension;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.SerializationFeature;
import tools.jackson.databind.json.JsonMapper;
import tools.jackson.databind.node.ArrayNode;
import tools.jackson.databind.node.ObjectNode;
import tools.jackson.dataformat.cbor.CBORMapper;

/**
 * Every document that the service answers is as its contract says, and the contract shows what such
 * an answer looks like.
 *
 * <p>{@code mvn test -Dtest=ContractAnswersTest -Dopenapi.write=true} records the examples anew;
 * then {@code OpenApiDocumentTest} writes the copy of the contract.
 */
class ContractAnswersTest {

  @RegisterExtension static final RunningService SERVICE = RunningService.shared();

  private static final JsonMapper JSON = JsonMapper.shared();
  private static final Path EXAMPLES =
      Path.of("src", "main", "resources", "lodeswing", "openapi", "answers");

  /** Forms of which a document can show an example. */
  private static final Set<String> SHOWN = Set.of("json", "linkset", "csv", "text");

  /** Forms that are written as JSON. */
  private static final Set<String> TREES = Set.of("json", "linkset");

  private static final int LONGEST_LIST = 3;
  private static final int MOST_LINES = 4;

  private static JsonNode contract = JSON.createObjectNode();
  private static List<Visit> visits = List.of();

  @BeforeAll
  static void visit() {
    var tour = new ContractTour(SERVICE);
    contract = tour.contract();
    visits = tour.visits();
  }

  private static Map<String, JsonNode> operations() {
    Map<String, JsonNode> operations = new HashMap<>();
    for (JsonNode path : contract.get("paths")) {
      for (JsonNode operation : path) {
        operations.put(operation.get("operationId").stringValue(), operation);
      }
    }
    return operations;
  }

  private static JsonNode content(Map<String, JsonNode> operations, Visit visit) {
    return Objects.requireNonNull(operations.get(visit.operationId()))
        .get("responses")
        .path(String.valueOf(visit.answer().statusCode()))
        .path("content")
        .path(visit.mediaType());
  }

  private static List<String> faults(JsonNode schema, JsonNode document) {
    ObjectNode whole = JSON.createObjectNode();
    whole.put("$schema", "https://json-schema.org/draft/2020-12/schema");
    whole.setAll((ObjectNode) schema);
    whole.set("components", contract.get("components"));
    Schema read =
        SchemaRegistry.withDefaultDialect(SpecificationVersion.DRAFT_2020_12).getSchema(whole);
    return read.validate(document).stream().map(Object::toString).toList();
  }

  @Test
  void everyDocumentIsAsItsSchemaSays() {
    Map<String, JsonNode> operations = operations();
    List<String> wrong = new ArrayList<>();
    var seen = new TreeSet<String>();
    for (Visit visit : visits) {
      boolean cbor = visit.form().equals("cbor");
      if (!cbor && !TREES.contains(visit.form())) {
        continue;
      }
      seen.add(visit.operationId());
      JsonNode schema = content(operations, visit).path("schema");
      if (schema.isMissingNode()) {
        wrong.add(visit.name() + ": no schema for status " + visit.answer().statusCode());
        continue;
      }
      byte[] body = visit.answer().asByteArray();
      JsonNode document = cbor ? CBORMapper.shared().readTree(body) : JSON.readTree(body);
      faults(schema, document).forEach(fault -> wrong.add(visit.name() + ": " + fault));
    }
    assertEquals(List.of(), wrong);
    assertTrue(seen.size() >= 50, seen.toString());
  }

  /** A schema that holds everything to be good would let the test above pass too. */
  @Test
  void validationSeesWhatIsWrong() {
    JsonNode trace = JSON.createObjectNode().put("$ref", "#/components/schemas/Trace");
    assertTrue(faults(trace, JSON.readTree("{\"traceId\":3}")).size() > 1);
  }

  @Test
  void everyOperationShowsWhatItAnswers() throws IOException {
    if (Boolean.getBoolean("openapi.write")) {
      record();
      return;
    }
    Map<String, JsonNode> operations = operations();
    List<String> wrong = new ArrayList<>();
    for (Visit visit : visits) {
      if (!SHOWN.contains(visit.form())) {
        continue;
      }
      JsonNode content = content(operations, visit);
      JsonNode example = content.path("example");
      if (example.isMissingNode()) {
        wrong.add(visit.name() + " has no example");
      } else if (TREES.contains(visit.form())) {
        faults(content.get("schema"), example)
            .forEach(fault -> wrong.add(visit.name() + ": " + fault));
        Set<String> today = names(JSON.readTree(visit.answer().asByteArray()));
        if (!names(example).equals(today)) {
          wrong.add(visit.name() + " shows " + names(example) + " and answers " + today);
        }
      }
    }
    assertEquals(List.of(), wrong);
  }

  private static Set<String> names(JsonNode document) {
    return new TreeSet<>(document.propertyNames());
  }

  private static void record() throws IOException {
    Files.createDirectories(EXAMPLES);
    for (Visit visit : visits) {
      if (SHOWN.contains(visit.form()) && visit.answer().statusCode() < 300) {
        byte[] body = visit.answer().asByteArray();
        Files.write(
            EXAMPLES.resolve(visit.operationId() + "." + visit.form()),
            TREES.contains(visit.form()) ? shortened(body) : firstLines(body));
      }
    }
  }

  private static byte[] shortened(byte[] body) {
    JsonNode document = JSON.readTree(body);
    shorten(document);
    return JSON.writer()
        .with(SerializationFeature.INDENT_OUTPUT)
        .writeValueAsString(document)
        .replace(SERVICE.uri(), "https://lodeswing.example")
        .concat("\n")
        .getBytes(StandardCharsets.UTF_8);
  }

  private static void shorten(JsonNode node) {
    if (node instanceof ArrayNode list) {
      while (list.size() > LONGEST_LIST) {
        list.remove(list.size() - 1);
      }
    }
    node.forEach(ContractAnswersTest::shorten);
  }

  private static byte[] firstLines(byte[] body) {
    List<String> lines =
        new String(body, StandardCharsets.UTF_8).lines().limit(MOST_LINES).toList();
    return String.join("\n", lines).getBytes(StandardCharsets.UTF_8);
  }
}
