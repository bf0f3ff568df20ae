package lodeswing.web.fit;

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
import lodeswing.web.recording.ExampleRecording;
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

  private static Map<String, Body> examples() {
    Map<String, Object> request = ExampleRecording.request(60, 0.001);
    request.put("unknown", List.of("lengthMm", "linearNsPerM"));
    return Map.of("loss-and-length-of-a-free-swing", Body.of(request));
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
