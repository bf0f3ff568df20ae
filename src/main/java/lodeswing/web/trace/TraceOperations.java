package lodeswing.web.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import lodeswing.render.png.PngWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts.Sample;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.OperationDescription.RequestText;
import lodeswing.web.openapi.PendingAnswer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on traces and outcomes say about themselves. */
@Configuration(proxyBeanMethods = false)
class TraceOperations {
  private static final String TAG = "Traces";
  private static final ParameterText TRACE_ID =
      new ParameterText(
          "traceId",
          true,
          new TextShape(60),
          "The trace's id, as createTrace answers it.",
          "trc-aaaaaaaaaaaaaaaaaaaaaaaaaa");
  private static final ParameterText WIDTH =
      new ParameterText(
          "width",
          false,
          NumberShape.count(PngWriter.LEAST_WIDTH, PngWriter.GREATEST_WIDTH).in("pixels"),
          "Width of a PNG picture; SVG scales by itself.",
          "1200");

  private final Sample sample;

  TraceOperations(LayoutStore layouts) {
    sample = layouts.samples().all().get(0);
  }

  @Bean
  OperationDescription describeCreateTrace() {
    return new OperationDescription(
        "createTrace",
        TAG,
        "Follow one release",
        "Computes the path of one release, where it comes to rest, and how far the path can be"
            + " trusted and foretold. The same request always has the same id.",
        List.of(
            new ParameterText(
                "dry-run",
                false,
                new FlagShape(),
                "true: answer the id and the cost, compute and store nothing.",
                "false")),
        Optional.of(new RequestText(TraceShapes.REQUEST, examples())),
        List.of(
            new AnswerText(
                200, "The trace, or its estimate.", TraceShapes.DOCUMENT, TraceController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 413, 415, 422, 503));
  }

  /** Short ones: whoever tries them has an answer at once. */
  private Map<String, Body> examples() {
    Map<String, Object> stored = new LinkedHashMap<>();
    stored.put("layoutId", sample.document().layoutId());
    stored.put("release", place(80, 30));
    stored.put("durationS", 20.0);
    Map<String, Object> whole = new LinkedHashMap<>();
    whole.put("layout", sample.sent());
    whole.put("release", place(-60, 45));
    whole.put("durationS", 10.0);
    whole.put("sampleIntervalS", 0.05);
    whole.put("placingAccuracy", 2.0);
    whole.put("thin", 0.5);
    Map<String, Body> examples = new LinkedHashMap<>();
    examples.put("stored-layout", Body.of(stored));
    examples.put("whole-layout", Body.of(whole));
    return examples;
  }

  private static Body place(double x, double y) {
    Map<String, Object> place = new LinkedHashMap<>();
    place.put("x", x);
    place.put("y", y);
    return Body.of(place);
  }

  @Bean
  OperationDescription describeGetTrace() {
    return reading(
        "getTrace",
        "Get a trace",
        "A trace by its id; what is answered for an id never changes.",
        List.of(TRACE_ID),
        new AnswerText(200, "The trace.", TraceShapes.DOCUMENT, TraceController.DOCUMENT));
  }

  @Bean
  OperationDescription describeGetTracePath() {
    return reading(
        "getTracePath",
        "Get the picture of a trace",
        "The path over the plate, with its magnets, legend and a description in words.",
        List.of(TRACE_ID, WIDTH),
        new AnswerText(200, "The picture.", TraceShapes.DOCUMENT, TraceController.PICTURE));
  }

  @Bean
  OperationDescription describeGetLayoutTrace() {
    List<ParameterText> parameters = new ArrayList<>(release());
    parameters.add(
        optional("durationS", TraceShapes.DURATION, "How long samples are taken.", "30"));
    parameters.add(
        optional("sampleIntervalS", TraceShapes.INTERVAL, "Time between samples.", "0.02"));
    parameters.add(
        optional(
            "placingAccuracy", TraceShapes.ACCURACY, "How exactly a hand places the bob.", "1"));
    parameters.add(
        optional(
            "thin", TraceShapes.THIN, "How far a line between kept samples may be off.", "0.5"));
    parameters.add(WIDTH);
    parameters.add(
        new ParameterText(
            "value",
            false,
            ChoiceShape.of(
                Stream.of(TraceValue.values()).map(TraceValue::word).toArray(String[]::new)),
            "A single value as text, for a cell.",
            "sealedAtS"));
    return reading(
        "getLayoutTrace",
        "Follow one release by one address",
        "What createTrace answers, for clients that cannot post. Figures of the layout may be"
            + " changed on the way, such as gapMm=30.",
        parameters,
        new AnswerText(200, "The trace.", TraceShapes.DOCUMENT, LayoutTraceController.TRACE));
  }

  @Bean
  OperationDescription describeGetOutcome() {
    return reading(
        "getOutcome",
        "Tell where one release settles",
        "format=text gives the label alone. Figures of the layout may be changed on the way, such"
            + " as gapMm=30.",
        release(),
        new AnswerText(
            200, "The outcome.", TraceShapes.OUTCOME_DOCUMENT, LayoutTraceController.OUTCOME));
  }

  private List<ParameterText> release() {
    return List.of(
        new ParameterText(
            "layoutId", true, new TextShape(60), "The layout's id.", sample.document().layoutId()),
        new ParameterText("x", false, TraceShapes.PLACE, "Place of release.", "80", true),
        new ParameterText("y", false, TraceShapes.PLACE, "Place of release.", "30", true),
        optional("vx", TraceShapes.SPEED, "Push along x.", "0"),
        optional("vy", TraceShapes.SPEED, "Push along y.", "0"));
  }

  private static ParameterText optional(
      String name, NumberShape shape, String text, String example) {
    return new ParameterText(name, false, shape, text, example);
  }

  private static OperationDescription reading(
      String operationId,
      String summary,
      String description,
      List<ParameterText> parameters,
      AnswerText answer) {
    return new OperationDescription(
        operationId,
        TAG,
        summary,
        description,
        parameters,
        Optional.empty(),
        List.of(answer, PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }
}
