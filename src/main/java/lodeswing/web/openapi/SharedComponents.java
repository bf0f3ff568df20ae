package lodeswing.web.openapi;

import io.swagger.v3.oas.models.Components;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.responses.ApiResponse;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.Representation;

/**
 * What nearly every operation has in common, said once and referred to: the general parameters and
 * the answers that are problems.
 */
final class SharedComponents {

  private static final Map<Integer, String> PROBLEMS =
      new TreeMap<>(
          Map.ofEntries(
              Map.entry(400, "Malformed or with faults; each is listed with its pointer."),
              Map.entry(
                  403, "The page that asks is of a site that the operator does not let in (CORS)."),
              Map.entry(404, "Nothing is stored there."),
              Map.entry(406, "None of the offered forms is acceptable; the detail names them."),
              Map.entry(409, "Another computation needs it."),
              Map.entry(412, "If-Match names tags that the content does not have."),
              Map.entry(413, "The body is too large."),
              Map.entry(415, "The body's media type is not read here."),
              Map.entry(
                  416, "The asked Range lies outside the content; Content-Range tells its length."),
              Map.entry(422, "Well formed, but it cannot be built, released or afforded."),
              Map.entry(
                  501,
                  "The service does not write the asked form; the detail names those it does."),
              Map.entry(503, "Too much to do; Retry-After says when to come back.")));

  private static final Parameter PREFER =
      new Parameter()
          .name("Prefer")
          .in("header")
          .description(
              "respond-async: do not wait for the result; wait=N: wait N seconds (RFC 7240)."
                  + " Preference-Applied tells what was done.")
          .example("respond-async")
          .schema(ApiDocument.schema(Map.of("type", "string")));

  private static final Parameter LAST_EVENT =
      new Parameter()
          .name("Last-Event-ID")
          .in("header")
          .description("Id of the last event that was seen.")
          .example("running-0250")
          .schema(ApiDocument.schema(Map.of("type", "string")));

  private static final Map<String, Parameter> EVERYWHERE =
      inOrder(
          query(
              GeneralParameters.ERRORS.name(),
              "inline: errors come as one line of text with status 200, for spreadsheets.",
              Map.of("type", "string", "enum", List.of("inline", "status")),
              "status"),
          query(
              GeneralParameters.LANG.name(),
              "Language of texts and notes, as a tag such as en; goes before Accept-Language. Safety"
                  + " notes and sheets come in English, German and Spanish, all else in English;"
                  + " Content-Language says which.",
              Map.of("type", "string"),
              GeneralParameters.LANGUAGE),
          query(
              GeneralParameters.DECIMAL.name(),
              "Decimal sign of numbers in CSV and text; comma also makes the semicolon separate.",
              Map.of("type", "string", "enum", List.of("point", "comma")),
              "point"),
          query(
              GeneralParameters.BOM.name(),
              "true: CSV begins with a byte-order mark.",
              Map.of("type", "boolean", "default", false),
              false),
          query(
              GeneralParameters.WAIT.name(),
              "Seconds to wait for a result before a pending answer, but never longer than the limit"
                  + " waitLongestS; goes before Prefer.",
              Map.of("type", "integer", "minimum", 0, "maximum", 3600),
              20),
          query(
              GeneralParameters.CB.name(),
              "No effect; forces a refresh.",
              Map.of("type", "string"),
              "1"));

  private SharedComponents() {}

  /** The parameters that an operation shares with others, and its choice of forms. */
  static List<Parameter> parameters(OperationDescription about) {
    var parameters = new ArrayList<Parameter>();
    if (about.answers().stream().anyMatch(answer -> answer.status() == ApiDocument.PENDING)) {
      parameters.add(referred(PREFER));
    }
    List<Representation> forms =
        about.answers().stream().flatMap(answer -> answer.forms().stream()).distinct().toList();
    if (forms.contains(Representation.EVENTS)) {
      parameters.add(LAST_EVENT);
    }
    List<String> words = forms.stream().map(Representation::word).toList();
    if (!words.isEmpty()) {
      parameters.add(
          query(
              GeneralParameters.FORMAT.name(),
              "Form of the answer; goes before Accept.",
              Map.of("type", "string", "enum", words),
              words.get(0)));
    }
    EVERYWHERE.values().forEach(parameter -> parameters.add(referred(parameter)));
    return parameters;
  }

  /** Adds the answers to an operation that are problems. */
  static void addProblems(Operation operation, Set<Integer> statuses) {
    statuses.forEach(
        status ->
            operation
                .getResponses()
                .addApiResponse(
                    String.valueOf(status),
                    new ApiResponse().$ref("#/components/responses/" + problemName(status))));
  }

  /** Adds what operations refer to. */
  static void addTo(Components components) {
    EVERYWHERE.values().forEach(one -> components.addParameters(componentName(one), one));
    components.addParameters(componentName(PREFER), PREFER);
    components.addSchemas("Problem", ApiDocument.schema(problemSchema()));
    var content =
        new Content()
            .addMediaType(
                "application/problem+json",
                new MediaType()
                    .schema(ApiDocument.schema(Map.of("$ref", "#/components/schemas/Problem"))))
            .addMediaType(
                "text/plain",
                new MediaType()
                    .schema(
                        ApiDocument.schema(
                            Map.of(
                                "type",
                                "string",
                                "pattern",
                                "^ERROR ",
                                "description",
                                "One line, where format is text or csv.")))
                    .example(
                        "ERROR not-found: The address is not one of the service's, or names"
                            + " something that is not stored here."));
    PROBLEMS.forEach(
        (status, text) ->
            components.addResponses(
                problemName(status), new ApiResponse().description(text).content(content)));
  }

  private static String problemName(int status) {
    if (!PROBLEMS.containsKey(status)) {
      throw new IllegalArgumentException(
          "No text tells what a problem of status " + status + " is");
    }
    return "Problem" + status;
  }

  private static Parameter referred(Parameter parameter) {
    return new Parameter().$ref("#/components/parameters/" + componentName(parameter));
  }

  private static String componentName(Parameter parameter) {
    return parameter.getName();
  }

  private static Parameter query(
      String name, String text, Map<String, Object> schema, Object example) {
    return new Parameter()
        .name(name)
        .in("query")
        .description(text)
        .schema(ApiDocument.schema(schema))
        .example(example);
  }

  private static Map<String, Parameter> inOrder(Parameter... parameters) {
    var map = new LinkedHashMap<String, Parameter>();
    for (Parameter parameter : parameters) {
      map.put(parameter.getName(), parameter);
    }
    return map;
  }

  private static Map<String, Object> problemSchema() {
    var text = Map.of("type", "string");
    var fault =
        Map.of(
            "type",
            "object",
            "required",
            List.of("pointer", "detail"),
            "properties",
            Map.of("pointer", text, "detail", text));
    var schema = new LinkedHashMap<String, Object>();
    schema.put("type", "object");
    schema.put("description", "What went wrong (RFC 9457), with every fault of the request.");
    schema.put("required", List.of("type", "title", "status", "code"));
    schema.put(
        "properties",
        Map.of(
            "type",
            Map.of("type", "string", "format", "uri-reference"),
            "title",
            text,
            "status",
            Map.of("type", "integer"),
            "detail",
            text,
            "code",
            text,
            "errors",
            Map.of("type", "array", "items", fault)));
    return schema;
  }
}
