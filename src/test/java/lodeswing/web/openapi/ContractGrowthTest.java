package lodeswing.web.openapi;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.yaml.snakeyaml.LoaderOptions;
import org.yaml.snakeyaml.Yaml;
import org.yaml.snakeyaml.constructor.SafeConstructor;
import tools.jackson.databind.JsonNode;
import tools.jackson.databind.json.JsonMapper;

/**
 * The contract only grows: nothing that a client relies on is taken away from one commit to the
 * next, and the check that says so sees what it should.
 */
class ContractGrowthTest {

  private static final JsonMapper JSON = JsonMapper.shared();
  private static final String FILE = "api/openapi.yaml";
  private static final int LARGEST = 20_000_000;

  private static final String SMALL =
      """
      paths:
        /bobs/{id}:
          get:
            operationId: getBob
            parameters:
            - {name: id, in: path, required: true, schema: {type: string}}
            - {name: lift, in: query, schema: {type: number, minimum: 0, maximum: 10}}
            responses:
              "200":
                content:
                  application/json: {schema: {$ref: '#/components/schemas/Bob'}}
                  text/csv: {schema: {type: string}}
          post:
            operationId: createBob
            parameters:
            - {name: id, in: path, required: true, schema: {type: string}}
            requestBody:
              content:
                application/json: {schema: {$ref: '#/components/schemas/NewBob'}}
            responses:
              "200": {content: {application/json: {schema: {$ref: '#/components/schemas/Bob'}}}}
      components:
        schemas:
          Bob:
            type: object
            required: [mass]
            properties:
              mass: {type: number}
              marks: {type: array, items: {type: [integer, string]}}
              pole: {type: string, enum: [north, south]}
          NewBob:
            type: object
            required: [mass]
            properties:
              mass: {type: number}
              label: {type: string, maxLength: 60}
              kind: {type: string, enum: [cord, bar]}
              part: {oneOf: [{type: string}, {type: object}]}
      """;

  /** Where the contract said what never was, and now says what always was. */
  private static final Set<String> CORRECTIONS =
      Set.of(
          "OutcomeList.sealedAtS[] was [integer, number] and is [integer, null, number]",
          "OutcomeList.settledAtS[] was [integer, number] and is [integer, null, number]");

  private static JsonNode read(String yaml) {
    var options = new LoaderOptions();
    options.setCodePointLimit(LARGEST);
    Object tree = new Yaml(new SafeConstructor(options)).load(yaml);
    return JSON.valueToTree(tree);
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "/bobs/{id}: | /rods/{id}:",
        "operationId: getBob | operationId: fetchBob",
        "name: lift, in: query, schema | name: rise, in: query, schema",
        "name: lift, in: query, schema | name: lift, in: query, required: true, schema",
        "maximum: 10 | maximum: 5",
        "minimum: 0 | minimum: 1",
        "text/csv: {schema: {type: string}} | text/plain: {schema: {type: string}}",
        "mass: {type: number}\\n        marks | weight: {type: number}\\n        marks",
        "mass: {type: number}\\n        marks | mass: {type: [number, string]}\\n        marks",
        "items: {type: [integer, string]} | items: {type: boolean}",
        "required: [mass]\\n      properties:\\n        mass: {type: number}\\n        marks"
            + "| required: []\\n      properties:\\n        mass: {type: number}\\n        marks",
        "required: [mass]\\n      properties:\\n        mass: {type: number}\\n        label"
            + "| required: [mass, label]\\n      properties:\\n        mass: {type: number}\\n       "
            + " label",
        "maxLength: 60 | maxLength: 59",
        "label: {type | name: {type",
        "enum: [cord, bar] | enum: [cord]",
        "requestBody:\\n | requestBody:\\n        required: true\\n",
        "oneOf: [{type: string}, {type: object}] | oneOf: [{type: string}]",
      })
  void breaksAreSeen(String before, String after) {
    String was = before.strip().replace("\\n", "\n");
    String changed =
        SMALL.replaceFirst(
            Pattern.quote(was), Matcher.quoteReplacement(after.strip().replace("\\n", "\n")));
    assertNotEquals(SMALL, changed);
    assertFalse(ContractGrowth.breaks(read(SMALL), read(changed)).isEmpty());
  }

  @ParameterizedTest
  @CsvSource(
      delimiter = '|',
      value = {
        "maximum: 10 | maximum: 12",
        "pole: {type: string, enum: [north, south]} | pole: {type: string, enum: [north, south, none]}",
        "marks: {type | tilt: {type: number}, marks: {type",
        "kind: {type: string, enum: [cord, bar]} | kind: {type: string}",
        "items: {type: [integer, string]} | items: {type: string}",
        "oneOf: [{type: string}, {type: object}] | oneOf: [{type: string}, {type: object}, {type: number}]",
      })
  void growthIsNoBreak(String before, String after) {
    String changed =
        SMALL.replace(before.strip(), after.strip().replace(", marks", "\n        marks"));
    assertNotEquals(SMALL, changed);
    assertEquals(List.of(), ContractGrowth.breaks(read(SMALL), read(changed)));
  }

  /**
   * Against the commit before the last change of the file, or the last commit where it is changed.
   */
  @Test
  void contractGrewOutOfTheLastCommitted() throws IOException, InterruptedException {
    String now = Files.readString(Path.of(FILE));
    assumeTrue(git("rev-parse", "--is-inside-work-tree").strip().equals("true"), "no history here");
    String earlier = git("show", "HEAD:" + FILE);
    if (earlier.equals(now)) {
      List<String> changes = git("log", "-2", "--format=%H", "--", FILE).lines().toList();
      assumeTrue(changes.size() == 2, "the history holds no earlier contract");
      earlier = git("show", changes.get(1) + ":" + FILE);
    }
    assumeTrue(!earlier.isBlank(), "the history holds no earlier contract");
    List<String> breaks = new ArrayList<>(ContractGrowth.breaks(read(earlier), read(now)));
    breaks.removeAll(CORRECTIONS);
    assertEquals(List.of(), breaks);
  }

  /** What git says; nothing where there is no git. */
  private static String git(String... arguments) throws InterruptedException {
    try {
      var command = new ArrayList<String>(List.of("git"));
      command.addAll(List.of(arguments));
      Process process =
          new ProcessBuilder(command).redirectError(ProcessBuilder.Redirect.DISCARD).start();
      String said = new String(process.getInputStream().readAllBytes(), StandardCharsets.UTF_8);
      return process.waitFor() == 0 ? said : "";
    } catch (IOException e) {
      return "";
    }
  }
}
