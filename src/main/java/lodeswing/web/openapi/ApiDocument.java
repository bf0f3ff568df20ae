package lodeswing.web.openapi;

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
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.Optional;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;
import java.util.function.Function;
import java.util.stream.Collectors;
import lodeswing.web.body.Body;
import lodeswing.web.body.RecordShape;
import lodeswing.web.body.SchemaComponents;
import lodeswing.web.body.Shape;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.Subject;
import org.jspecify.annotations.Nullable;
import org.springdoc.core.customizers.OpenApiCustomizer;
import org.springframework.stereotype.Component;

/** Puts what the operations say about themselves into the document that springdoc draws up. */
@Component
final class ApiDocument implements OpenApiCustomizer {

  static final int PENDING = 202;
  private static final List<Integer> EVERYWHERE = List.of(400, 403, 406);

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
    // Said, not left out: nobody needs a key.
    api.setSecurity(List.of());
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
                SharedComponents.addProblems(
                    operation, statuses(about, method == PathItem.HttpMethod.GET));
              });
    }
    warned(components, described.values());
    api.setTags(
        tags.stream().map(name -> new Tag().name(name).description(TagTexts.of(name))).toList());
    // What springdoc found by looking at return types is nothing that is sent.
    api.getComponents().setSchemas(new TreeMap<>());
    components.schemas().forEach((name, schema) -> api.schema(name, schema(schema)));
    SharedComponents.addTo(api.getComponents());
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
    parameters.addAll(SharedComponents.parameters(about));
    operation.setParameters(parameters);
    about.request().ifPresent(request -> operation.setRequestBody(body(request, components)));
    var responses = new ApiResponses();
    for (OperationDescription.AnswerText answer : about.answers()) {
      ApiResponse response = answer(about.operationId(), answer, components);
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
    Schema<?> schema = schema(text.shape(), components);
    return new Parameter()
        .name(text.name())
        .in(text.inPath() ? "path" : "query")
        .required(text.required())
        .description(text.text())
        .example(typed(text.example(), schema))
        .schema(schema);
  }

  /** An example of a number or a flag as one, and not as its text. */
  private static Object typed(String example, Schema<?> schema) {
    Set<String> types = schema.getTypes() == null ? Set.of() : schema.getTypes();
    if (types.contains("boolean")) {
      return Boolean.valueOf(example);
    }
    if (types.contains("integer") || types.contains("number")) {
      return new BigDecimal(example);
    }
    return example;
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
    var content = new Content().addMediaType("application/json", media);
    request
        .table()
        .ifPresent(
            table ->
                content.addMediaType(
                    "text/csv",
                    new MediaType().schema(schema(Map.of("type", "string"))).example(table)));
    return new RequestBody().required(true).content(content);
  }

  private static String title(String name, Body body) {
    return body.findText("title").orElse(name);
  }

  private static ApiResponse answer(
      String operationId, OperationDescription.AnswerText answer, SchemaComponents components) {
    var content = new Content();
    for (Representation form : answer.forms()) {
      boolean document = AnswerExamples.isTree(form) || form == Representation.CBOR;
      Schema<?> schema =
          document ? schema(answer.shapes(), components) : schema(Map.of("type", "string"));
      String type = form.mediaType().getType() + "/" + form.mediaType().getSubtype();
      var media = new MediaType().schema(schema);
      AnswerExamples.of(operationId, answer.status(), form).ifPresent(media::setExample);
      content.addMediaType(type, media);
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

  private static Schema<?> schema(Shape shape, SchemaComponents components) {
    return schema(shape.schema(components));
  }

  private static Schema<?> schema(List<RecordShape> shapes, SchemaComponents components) {
    return shapes.size() == 1
        ? schema(shapes.get(0), components)
        : schema(Map.of("anyOf", shapes.stream().map(shape -> shape.schema(components)).toList()));
  }

  static Schema<?> schema(Map<String, Object> schema) {
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
