package lodeswing.web.openapi;

import static java.util.Map.entry;

import io.swagger.v3.core.util.Json31;
import io.swagger.v3.oas.models.OpenAPI;
import io.swagger.v3.oas.models.Operation;
import io.swagger.v3.oas.models.PathItem;
import io.swagger.v3.oas.models.examples.Example;
import io.swagger.v3.oas.models.headers.Header;
import io.swagger.v3.oas.models.info.Info;
import io.swagger.v3.oas.models.media.Content;
import io.swagger.v3.oas.models.media.MediaType;
import io.swagger.v3.oas.models.media.Schema;
import io.swagger.v3.oas.models.parameters.Parameter;
import io.swagger.v3.oas.models.parameters.RequestBody;
import io.swagger.v3.oas.models.responses.ApiResponse;
import io.swagger.v3.oas.models.responses.ApiResponses;
import io.swagger.v3.oas.models.servers.Server;
import io.swagger.v3.oas.models.tags.Tag;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import lodeswing.web.body.Body;
import lodeswing.web.body.RecordShape;
import lodeswing.web.body.SchemaComponents;
import lodeswing.web.body.Shape;
import lodeswing.web.representation.GeneralParameters;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.Subject;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.stereotype.Component;

/** Puts what the operations say about themselves into the document that springdoc draws up. */
@Component
final class ApiDocument implements OpenApiCustomizer {

  private static final Map<Integer, String> PROBLEMS =
      Map.ofEntries(
          entry(400, "Malformed or with faults; each is listed with its pointer."),
          entry(404, "Nothing is stored there."),
          entry(406, "None of the offered forms is acceptable; the detail names them."),
          entry(409, "Another computation needs it."),
          entry(412, "If-Match names tags that the content does not have."),
          entry(413, "The body is too large."),
          entry(415, "The body's media type is not read here."),
          entry(416, "The asked Range lies outside the content; Content-Range tells its length."),
          entry(422, "Well formed, but it cannot be built, released or afforded."),
          entry(501, "The service does not write the asked form; the detail names those it does."),
          entry(503, "Too much to do; Retry-After says when to come back."));
  private static final int PENDING = 202;
  private static final List<Integer> EVERYWHERE = List.of(400, 406);

  /** Conditions and ranges, which a Reply judges wherever something is read that may be kept. */
  private static final List<Integer> READING = List.of(412, 416);

  private final Map<String, OperationDescription> described;

  ApiDocument(List<OperationDescription> described) {
    this.described =
        described.stream()
            .collect(Collectors.toMap(OperationDescription::operationId, Function.identity()));
  }

  @Override
  public void customise(OpenAPI api) {
    api.setInfo(
        new Info()
            .title("Lodeswing")
            .version("1")
            .description(
                "Computes what a teacher needs who builds bench-top chaos: a pendulum with a magnet"
                    + " on its bob, swinging over magnets on a plate.\n\n"
                    + "Words in a text answer (format=text) keep to one line that no spreadsheet"
                    + " splits or runs: separators become dashes, double quotes apostrophes, and"
                    + " what begins with = + - @ gets an apostrophe before it, as in CSV. JSON holds"
                    + " them as they were sent. Figures are bare numbers.\n\n"
                    + "Every document about a layout whose magnets pass a limit has the member"
                    + " warnings, and every answer about a layout, in whatever form, links to the"
                    + " layout's safety notes (Link, rel=\"describedby\"). No request switches"
                    + " either off."));
    api.setServers(List.of(new Server().url("/").description("The service itself.")));
    Optional.ofNullable(api.getPaths()).ifPresent(paths -> paths.remove("/error"));
    var components = new SchemaComponents();
    var tags = new TreeSet<String>();
    for (PathItem path : api.getPaths().values()) {
      path.readOperationsMap()
          .forEach(
              (method, operation) -> {
                OperationDescription about = described.get(operation.getOperationId());
                if (about != null) {
                  describe(operation, about, components);
                }
                operation.setTags(List.of(about == null ? "Service" : about.tag()));
                tags.addAll(operation.getTags());
                problems(operation, statuses(about, method == PathItem.HttpMethod.GET));
              });
    }
    warned(components, described.values());
    api.setTags(tags.stream().map(name -> new Tag().name(name)).toList());
    components.schemas().forEach((name, schema) -> api.schema(name, schema(schema)));
    api.schema("Problem", schema(problemSchema()));
  }

  /** Documents about layouts may have warnings; the layouts' own say so themselves. */
  private static void warned(
      SchemaComponents components, Collection<OperationDescription> operations) {
    Map<String, Object> warnings =
        Map.of(
            "type",
            "array",
            "items",
            Map.of("$ref", "#/components/schemas/LayoutWarning"),
            "description",
            "The limits that the layout's magnets pass; left out where they pass none. Pointers lead"
                + " into the canonical layout.");
    operations.stream()
        .filter(OperationDescription::ofLayout)
        .flatMap(operation -> operation.answers().stream())
        .filter(answer -> answer.status() != PENDING)
        .flatMap(answer -> answer.shapes().stream())
        .map(shape -> components.schemas().get(shape.name()))
        .filter(Objects::nonNull)
        .map(schema -> schema.get("properties"))
        .forEach(
            properties -> {
              if (properties instanceof Map<?, ?>) {
                @SuppressWarnings("unchecked") // a schema's properties go by their names
                Map<String, Object> members = (Map<String, Object>) properties;
                members.putIfAbsent(Subject.WARNINGS, warnings);
              }
            });
  }

  private static void describe(
      Operation operation, OperationDescription about, SchemaComponents components) {
    operation.setSummary(about.summary());
    operation.setDescription(about.description());
    var parameters = new ArrayList<Parameter>();
    about.parameters().forEach(text -> parameters.add(parameter(text, components)));
    parameters.addAll(general(about));
    if (about.answers().stream().anyMatch(answer -> answer.status() == PENDING)) {
      parameters.add(
          header(
              "Prefer",
              "respond-async: do not wait for the result; wait=N: wait N seconds (RFC 7240)."
                  + " Preference-Applied tells what was done.",
              "respond-async"));
    }
    if (about.answers().stream()
        .anyMatch(answer -> answer.forms().contains(Representation.EVENTS))) {
      parameters.add(
          header("Last-Event-ID", "Id of the last event that was seen.", "running-0250"));
    }
    operation.setParameters(parameters);
    about.request().ifPresent(request -> operation.setRequestBody(body(request, components)));
    var responses = new ApiResponses();
    for (OperationDescription.AnswerText answer : about.answers()) {
      ApiResponse response = answer(answer, components);
      if (about.ofLayout()) {
        response.addHeaderObject(
            "Link",
            new Header()
                .description(
                    "The layout's safety notes, rel=\"describedby\"; a title that says where a limit"
                        + " is passed.")
                .schema(schema(Map.of("type", "string"))));
      }
      responses.addApiResponse(String.valueOf(answer.status()), response);
    }
    operation.setResponses(responses);
  }

  private static Parameter parameter(
      OperationDescription.ParameterText text, SchemaComponents components) {
    return new Parameter()
        .name(text.name())
        .in(text.inPath() ? "path" : "query")
        .required(text.required())
        .description(text.text())
        .example(text.example())
        .schema(schema(text.shape(), components));
  }

  private static Parameter header(String name, String text, String example) {
    return new Parameter()
        .name(name)
        .in("header")
        .description(text)
        .example(example)
        .schema(schema(Map.of("type", "string")));
  }

  private static List<Parameter> general(OperationDescription about) {
    List<String> words =
        about.answers().stream()
            .flatMap(answer -> answer.forms().stream())
            .distinct()
            .map(Representation::word)
            .toList();
    return List.of(
        general(GeneralParameters.FORMAT.name(), "Form of the answer; goes before Accept.", words),
        general(
            GeneralParameters.ERRORS.name(),
            "inline: errors come as one line of text with status 200, for spreadsheets.",
            List.of("inline", "status")),
        general(
            GeneralParameters.LANG.name(),
            "Language of texts and notes, as a tag such as en; goes before Accept-Language. Safety"
                + " notes come in English, German and Spanish, all else in English; Content-Language"
                + " says which.",
            List.of()),
        general(
            GeneralParameters.DECIMAL.name(),
            "Decimal sign of numbers in CSV and text; comma also makes the semicolon separate.",
            List.of("point", "comma")),
        general(
            GeneralParameters.BOM.name(),
            "true: CSV begins with a byte-order mark.",
            Map.of("type", "boolean", "default", false)),
        general(
            GeneralParameters.WAIT.name(),
            "Seconds to wait for a result before a pending answer, but never longer than the limit"
                + " waitLongestS; goes before Prefer.",
            Map.of("type", "integer", "minimum", 0, "maximum", 3600)),
        general(GeneralParameters.CB.name(), "No effect; forces a refresh.", List.of()));
  }

  private static Parameter general(String name, String text, List<String> words) {
    var schema = new LinkedHashMap<String, Object>();
    schema.put("type", "string");
    if (!words.isEmpty()) {
      schema.put("enum", words);
    }
    return general(name, text, schema);
  }

  private static Parameter general(String name, String text, Map<String, Object> schema) {
    return new Parameter().name(name).in("query").description(text).schema(schema(schema));
  }

  private static RequestBody body(
      OperationDescription.RequestText request, SchemaComponents components) {
    var media = new MediaType().schema(schema(request.shape(), components));
    request
        .examples()
        .forEach(
            (name, body) ->
                media.addExamples(
                    name, new Example().summary(title(name, body)).value(plain(body))));
    return new RequestBody()
        .required(true)
        .content(new Content().addMediaType("application/json", media));
  }

  private static String title(String name, Body body) {
    return body.findText("title").orElse(name);
  }

  private static ApiResponse answer(
      OperationDescription.AnswerText answer, SchemaComponents components) {
    var content = new Content();
    for (Representation form : answer.forms()) {
      boolean document = form == Representation.JSON || form == Representation.CBOR;
      Schema<?> schema =
          document ? schema(answer.shapes(), components) : schema(Map.of("type", "string"));
      String type = form.mediaType().getType() + "/" + form.mediaType().getSubtype();
      content.addMediaType(type, new MediaType().schema(schema));
    }
    return new ApiResponse().description(answer.text()).content(content);
  }

  private static Set<Integer> statuses(@Nullable OperationDescription about, boolean reads) {
    var all = new TreeSet<>(EVERYWHERE);
    if (about != null) {
      all.addAll(about.problems());
      all.addAll(reads && about.keepable() ? READING : List.of());
    }
    return all;
  }

  private static void problems(Operation operation, Set<Integer> all) {
    for (int status : all) {
      var schema = schema(Map.of("$ref", "#/components/schemas/Problem"));
      var content =
          new Content().addMediaType("application/problem+json", new MediaType().schema(schema));
      operation
          .getResponses()
          .addApiResponse(
              String.valueOf(status),
              new ApiResponse()
                  .description(PROBLEMS.getOrDefault(status, "A problem."))
                  .content(content));
    }
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

  private static Schema<?> schema(Shape shape, SchemaComponents components) {
    return schema(shape.schema(components));
  }

  private static Schema<?> schema(List<RecordShape> shapes, SchemaComponents components) {
    return shapes.size() == 1
        ? schema(shapes.get(0), components)
        : schema(Map.of("anyOf", shapes.stream().map(shape -> shape.schema(components)).toList()));
  }

  private static Schema<?> schema(Map<String, Object> schema) {
    return Json31.mapper().convertValue(schema, Schema.class);
  }

  /** Bodies and lists as maps and lists; whole numbers without a fraction. */
  private static Object plain(Object value) {
    if (value instanceof Body body) {
      var map = new LinkedHashMap<String, Object>();
      body.members().forEach((name, member) -> map.put(name, plain(member)));
      return map;
    }
    if (value instanceof List<?> list) {
      return list.stream().map(ApiDocument::plain).toList();
    }
    if (value instanceof Double number && number == Math.rint(number)) {
      return number.longValue();
    }
    return value;
  }
}
