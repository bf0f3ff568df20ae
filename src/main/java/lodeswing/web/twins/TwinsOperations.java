package lodeswing.web.twins;

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
import lodeswing.web.trace.TraceShapes;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on twins say about themselves. */
@Configuration(proxyBeanMethods = false)
class TwinsOperations {

  private static final String TAG = "Twins";
  private static final String SAMPLE = "three-stations";

  private final SampleLayouts samples;

  TwinsOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeCreateTwins() {
    return new OperationDescription(
        "createTwins",
        TAG,
        "Follow two releases a shift apart",
        "Follows both bobs and answers both paths, their separation as long as both are trusted,"
            + " how fast it grows with an interval, the finite-time Lyapunov exponents, when the two"
            + " are a magnets' spacing apart, and whether they end alike. The same request always"
            + " has the same id and the same bytes.",
        List.of(SharedTexts.dryRun()),
        Optional.of(new RequestText(TwinsShapes.REQUEST, examples())),
        List.of(
            new AnswerText(
                200,
                "The twins, or what a dry run tells.",
                List.of(TwinsShapes.DOCUMENT, DryRun.DOCUMENT),
                TwinsController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 413, 415, 422, 503));
  }

  private Map<String, Body> examples() {
    Map<String, Object> place = new LinkedHashMap<>();
    place.put("x", -70.0);
    place.put("y", 30.0);
    Map<String, Object> aside = new LinkedHashMap<>();
    aside.put("x", 1.0);
    Map<String, Object> stored = new LinkedHashMap<>();
    stored.put("layoutId", samples.get(SAMPLE).document().layoutId());
    stored.put("release", Body.of(place));
    stored.put("shift", Body.of(aside));
    stored.put("durationS", 12.0);
    stored.put("thin", 0.1);
    Map<String, Object> start = new LinkedHashMap<>();
    start.put("x", 1.2);
    start.put("y", 0.4);
    Map<String, Object> pushed = new LinkedHashMap<>();
    pushed.put("vy", 0.001);
    Map<String, Object> whole = new LinkedHashMap<>();
    whole.put("layout", samples.get("paper-triangle").sent());
    whole.put("release", Body.of(start));
    whole.put("shift", Body.of(pushed));
    Map<String, Body> examples = new LinkedHashMap<>();
    examples.put("stored-layout", Body.of(stored));
    examples.put("whole-layout", Body.of(whole));
    return examples;
  }

  @Bean
  OperationDescription describeGetTwins() {
    return new OperationDescription(
        "getTwins",
        TAG,
        "Get twins",
        "The twins of an id: the document, or both paths and their separation as a table.",
        List.of(twinsId()),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The twins.", TwinsShapes.DOCUMENT, TwinsController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  @Bean
  OperationDescription describeGetTwinsPaths() {
    return picture(
        "getTwinsPaths",
        "Get the picture of both paths",
        "The plate, its magnets and both paths, the second one thin; broken beyond what can be"
            + " trusted.");
  }

  @Bean
  OperationDescription describeGetTwinsSeparation() {
    return picture(
        "getTwinsSeparation",
        "Get the picture of the separation",
        "The separation over time on a logarithmic axis, the line of its growth rate, and the"
            + " magnets' spacing.");
  }

  private static OperationDescription picture(String id, String summary, String text) {
    return new OperationDescription(
        id,
        TAG,
        summary,
        text,
        List.of(twinsId(), SharedTexts.pixels(DrawnReply.USUAL_WIDTH)),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The picture.", TwinsShapes.DOCUMENT, TwinsController.PICTURE),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  @Bean
  OperationDescription describeGetLayoutTwins() {
    List<ParameterText> parameters = new ArrayList<>();
    parameters.add(SharedTexts.layoutId(samples.get(SAMPLE).document().layoutId()));
    parameters.add(
        ParameterText.needed("x", TraceShapes.PLACE, "Where the first bob is let go.", "-70"));
    parameters.add(
        ParameterText.needed("y", TraceShapes.PLACE, "Where the first bob is let go.", "30"));
    parameters.add(ParameterText.optional("vx", TraceShapes.SPEED, "A push along x.", "0"));
    parameters.add(ParameterText.optional("vy", TraceShapes.SPEED, "A push along y.", "0"));
    parameters.add(
        ParameterText.optional(
            "shiftX",
            TraceShapes.PLACE,
            "From there to the second release; one of the four shifts is not 0.",
            "1"));
    parameters.add(
        ParameterText.optional(
            "shiftY", TraceShapes.PLACE, "From there to the second release.", "0"));
    parameters.add(
        ParameterText.optional(
            "shiftVx", TraceShapes.SPEED, "What the second push has more along x.", "0"));
    parameters.add(
        ParameterText.optional(
            "shiftVy", TraceShapes.SPEED, "What the second push has more along y.", "0"));
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
        SharedTexts.word(
            "picture",
            TwinsReplies.Picture.values(),
            TwinsReplies.Picture::word,
            "Which picture: both paths, or their separation.",
            "paths"));
    parameters.add(SharedTexts.pixels(DrawnReply.USUAL_WIDTH));
    parameters.add(
        SharedTexts.word(
            "value",
            TwinsValue.values(),
            TwinsValue::word,
            "One value as text, for a cell of a spreadsheet.",
            "growthRatePerS"));
    return new OperationDescription(
        "getLayoutTwins",
        TAG,
        "Follow two releases by address alone",
        "As createTwins, for clients that cannot post; as text the result in a sentence, or one"
            + " value. Every figure of the layout may be changed on the way, as in"
            + " getLayoutVariant.",
        parameters,
        Optional.empty(),
        List.of(
            new AnswerText(200, "The twins.", TwinsShapes.DOCUMENT, LayoutTwinsController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  private static ParameterText twinsId() {
    return SharedTexts.id("twinsId", "The twins' id, as createTwins gave it.", "twn-…");
  }
}
