package lodeswing.web.fit;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.body.TextShape;
import lodeswing.web.landscape.DryRun;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.OperationDescription.RequestText;
import lodeswing.web.openapi.PendingAnswer;
import lodeswing.web.openapi.SharedTexts;
import lodeswing.web.representation.DrawnReply;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on fits say about themselves. */
@Configuration(proxyBeanMethods = false)
class FitOperations {

  private static final String TAG = "Fits";

  @Bean
  OperationDescription describeCreateFit() {
    return new OperationDescription(
        "createFit",
        TAG,
        "Ask which rig made a recording",
        "Takes places of the bob over time, from any video tracker, and seeks the figures that are"
            + " named as unknown, with the release and the recording's frame, by least squares over"
            + " a stretch that grows as far as the recording can be followed. Answers each with its"
            + " 95 % interval, how they hang together, the residuals, why the stretch ended, and"
            + " the fitted layout, stored. Missing rows, uneven times, another origin, a turn and a"
            + " reversed axis are dealt with and told of.",
        List.of(SharedTexts.dryRun(), value(), parameter()),
        Optional.of(new RequestText(FitShapes.REQUEST, examples())),
        List.of(
            new AnswerText(
                200,
                "The fit, or what a dry run tells.",
                List.of(FitShapes.DOCUMENT, DryRun.DOCUMENT),
                FitController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 413, 415, 422, 503));
  }

  /** A free swing of a cord that is thought to be 10 mm too long, without noise. */
  private static Map<String, Body> examples() {
    List<Double> t = new ArrayList<>();
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    double rate = Math.sqrt(9.80665 / 0.42);
    for (int i = 0; i <= 60; i++) {
      double time = i / 30.0;
      double left = Math.exp(-0.02 * time);
      t.add(Math.rint(time * 1e4) / 1e4);
      x.add(Math.rint(20e3 * left * Math.cos(rate * time)) / 1e3);
      y.add(Math.rint(10e3 * left * Math.sin(rate * time)) / 1e3);
    }
    Map<String, Object> recording = new LinkedHashMap<>();
    recording.put("t", t);
    recording.put("x", x);
    recording.put("y", y);
    Map<String, Object> pendulum = new LinkedHashMap<>();
    pendulum.put("kind", "cord");
    pendulum.put("lengthMm", 430.0);
    pendulum.put("bobMassG", 45.0);
    Map<String, Object> layout = new LinkedHashMap<>();
    layout.put("model", "bench");
    layout.put("pendulum", Body.of(pendulum));
    layout.put("gapMm", 25.0);
    layout.put("magnets", List.of());
    layout.put("damping", Body.of(Map.of("linearNsPerM", 0.001)));
    Map<String, Object> request = new LinkedHashMap<>();
    request.put("layout", Body.of(layout));
    request.put("recording", Body.of(recording));
    request.put("unknown", List.of("lengthMm", "linearNsPerM"));
    Map<String, Body> examples = new LinkedHashMap<>();
    examples.put("loss-and-length-of-a-free-swing", Body.of(request));
    return examples;
  }

  @Bean
  OperationDescription describeGetFit() {
    return new OperationDescription(
        "getFit",
        TAG,
        "Get a fit again",
        "Never changes, so that it may be kept for good.",
        List.of(fitId(), value(), parameter()),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The fit.", FitShapes.DOCUMENT, FitController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  @Bean
  OperationDescription describeGetFitPaths() {
    return new OperationDescription(
        "getFitPaths",
        TAG,
        "Get the picture of a fit",
        "The plate, its magnets, the recorded places on it as the frame was fitted, and the fitted"
            + " path as a thin line.",
        List.of(fitId(), SharedTexts.pixels(DrawnReply.USUAL_WIDTH)),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The picture.", FitShapes.DOCUMENT, FitController.PICTURE),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  private static ParameterText value() {
    return SharedTexts.word(
        "value",
        FitValue.values(),
        FitValue::word,
        "One value as text, for a cell of a spreadsheet; value, low, high and standardError are of"
            + " the quantity in parameter.",
        "sentence");
  }

  private static ParameterText parameter() {
    return ParameterText.optional(
        "parameter", new TextShape(80), "The quantity that a value is of.", "lengthMm");
  }

  private static ParameterText fitId() {
    return SharedTexts.id("fitId", "The id, as createFit gave it.", "fit-…");
  }
}
