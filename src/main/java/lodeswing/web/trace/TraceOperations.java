package lodeswing.web.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.landscape.DryRun;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.OperationDescription.RequestText;
import lodeswing.web.openapi.PendingAnswer;
import lodeswing.web.openapi.SharedTexts;
import lodeswing.web.representation.DrawnReply;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on traces and outcomes say about themselves. */
@Configuration(proxyBeanMethods = false)
class TraceOperations {

  private static final String TAG = "Traces";
  private static final String SAMPLE = "three-stations";

  private final SampleLayouts samples;

  TraceOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeCreateTrace() {
    return new OperationDescription(
        "createTrace",
        TAG,
        "Follow one release",
        "Follows the bob from its release until it has settled and answers the path, what happened"
            + " on the way, where it comes to rest, from when on that was certain, and until when"
            + " the path can be trusted. The same request always has the same id and the same bytes.",
        List.of(SharedTexts.dryRun()),
        Optional.of(new RequestText(TraceShapes.REQUEST, examples())),
        List.of(
            new AnswerText(
                200,
                "The trace, or what a dry run tells.",
                List.of(TraceShapes.DOCUMENT, DryRun.DOCUMENT),
                TraceController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 413, 415, 422, 503));
  }

  private Map<String, Body> examples() {
    Map<String, Object> place = new LinkedHashMap<>();
    place.put("x", -70.0);
    place.put("y", 30.0);
    Map<String, Object> stored = new LinkedHashMap<>();
    stored.put("layoutId", samples.get(SAMPLE).document().layoutId());
    stored.put("release", Body.of(place));
    stored.put("durationS", 12.0);
    stored.put("thin", 0.1);
    Map<String, Object> pushed = new LinkedHashMap<>();
    pushed.put("x", 1.2);
    pushed.put("y", 0.4);
    pushed.put("vx", 0.1);
    Map<String, Object> whole = new LinkedHashMap<>();
    whole.put("layout", samples.get("paper-triangle").sent());
    whole.put("release", Body.of(pushed));
    Map<String, Body> examples = new LinkedHashMap<>();
    examples.put("stored-layout", Body.of(stored));
    examples.put("whole-layout", Body.of(whole));
    return examples;
  }

  @Bean
  OperationDescription describeGetTrace() {
    return new OperationDescription(
        "getTrace",
        TAG,
        "Get a trace",
        "The trace of an id: the document, or the path as a table.",
        List.of(traceId()),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The trace.", TraceShapes.DOCUMENT, TraceController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  @Bean
  OperationDescription describeGetTracePath() {
    return new OperationDescription(
        "getTracePath",
        TAG,
        "Get the picture of a trace",
        "The plate, its magnets and the path: thin beyond what a hand can foretell, broken beyond"
            + " what can be trusted.",
        List.of(traceId(), SharedTexts.pixels(DrawnReply.USUAL_WIDTH)),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The picture.", TraceShapes.DOCUMENT, TraceController.PICTURE),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  @Bean
  OperationDescription describeGetLayoutTrace() {
    List<ParameterText> parameters = new ArrayList<>(whole(samples));
    parameters.add(SharedTexts.pixels(DrawnReply.USUAL_WIDTH));
    parameters.add(value("sealedAtS"));
    return new OperationDescription(
        "getLayoutTrace",
        TAG,
        "Follow one release by address alone",
        "As createTrace, for clients that cannot post. Every figure of the layout may be changed on"
            + " the way, as in getLayoutVariant.",
        parameters,
        Optional.empty(),
        List.of(
            new AnswerText(200, "The trace.", TraceShapes.DOCUMENT, LayoutTraceController.TRACE),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  @Bean
  OperationDescription describeGetOutcome() {
    List<ParameterText> parameters = new ArrayList<>(release(samples));
    parameters.add(value("sure"));
    return new OperationDescription(
        "getOutcome",
        TAG,
        "Ask where one release ends",
        "The rest point where the bob settles; as text its label, or its place in words, alone:"
            + " whether it is sure, value=sure tells (true or false) for a cell beside it, from the"
            + " same computation, and value=mapOutcome what the map of the usual window shows here"
            + " (the same, not on the map, or another end in words). Every figure of the layout may be changed on the way, as in"
            + " getLayoutVariant.",
        parameters,
        Optional.empty(),
        List.of(
            new AnswerText(
                200, "The outcome.", TraceShapes.OUTCOME_DOCUMENT, LayoutTraceController.OUTCOME),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  private static ParameterText value(String example) {
    return SharedTexts.word(
        "value",
        TraceValue.values(),
        TraceValue::word,
        "One value as text, for a cell of a spreadsheet.",
        example);
  }

  /** What names a trace in an address below a layout. */
  static List<ParameterText> whole(SampleLayouts samples) {
    List<ParameterText> parameters = new ArrayList<>(release(samples));
    parameters.add(
        ParameterText.optional(
            "durationS", TraceShapes.DURATION, "How long samples are taken.", "12"));
    parameters.add(
        ParameterText.optional(
            "sampleIntervalS", TraceShapes.INTERVAL, "Time between samples.", "0.02"));
    parameters.add(
        ParameterText.optional(
            "placingAccuracy",
            TraceShapes.ACCURACY,
            "How exactly a hand places the bob, in the layout's unit of length.",
            "1"));
    parameters.add(
        ParameterText.optional(
            "thin", TraceShapes.THIN, "Distance by which a thinned path may differ.", "0.1"));
    parameters.add(
        ParameterText.optional(
            "between",
            TraceShapes.BETWEEN,
            "What is drawn between the places: straight lines, or cubics by the velocities.",
            "lines"));
    return parameters;
  }

  private static List<ParameterText> release(SampleLayouts samples) {
    return List.of(
        SharedTexts.layoutId(samples.get(SAMPLE).document().layoutId()),
        ParameterText.needed("x", TraceShapes.PLACE, "Where the bob is let go.", "-70"),
        ParameterText.needed("y", TraceShapes.PLACE, "Where the bob is let go.", "30"),
        ParameterText.optional("vx", TraceShapes.SPEED, "A push along x.", "0"),
        ParameterText.optional("vy", TraceShapes.SPEED, "A push along y.", "0"));
  }

  static ParameterText traceId() {
    return SharedTexts.id("traceId", "The trace's id, as createTrace gave it.", "trc-…");
  }
}
