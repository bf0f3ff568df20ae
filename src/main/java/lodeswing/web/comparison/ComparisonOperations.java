package lodeswing.web.comparison;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
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

/** What the operations on comparisons say about themselves. */
@Configuration(proxyBeanMethods = false)
class ComparisonOperations {

  private static final String TAG = "Comparisons";

  @Bean
  OperationDescription describeCreateComparison() {
    return new OperationDescription(
        "createComparison",
        TAG,
        "Hold a recording against what the layout foretells",
        "Takes places of the bob over time, as createFit does, and foretells the path of the layout"
            + " as it is described, nothing of it being fitted: from the release that is told, or"
            + " from place and velocity that the first half small swing of the recording shows,"
            + " with their uncertainty. Answers the distance over time, from when on no start of"
            + " this rig explains it, when the two part, until when the path is trusted and until"
            + " when it can be foretold from such a start, whether the ends agree, and a verdict:"
            + " agrees; parted-by-chance, no sooner than the start lets the path be foretold;"
            + " parted-too-soon, so that something differs; differs-from-start. In the latter two,"
            + " hints name what alone would explain it: another period, scale, origin, direction of"
            + " the axes or release, each with its 95 % interval.",
        List.of(SharedTexts.dryRun(), value()),
        Optional.of(new RequestText(ComparisonShapes.REQUEST, examples())),
        List.of(
            new AnswerText(
                200,
                "The comparison, or what a dry run tells.",
                List.of(ComparisonShapes.DOCUMENT, DryRun.DOCUMENT),
                ComparisonController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 413, 415, 422, 503));
  }

  private static Map<String, Body> examples() {
    Map<String, Object> request = ExampleRecording.request(120, 0.0018);
    return Map.of("free-swing-of-a-cord-thought-too-long", Body.of(request));
  }

  @Bean
  OperationDescription describeGetComparison() {
    return new OperationDescription(
        "getComparison",
        TAG,
        "Get a comparison again",
        "Never changes, so that it may be kept for good.",
        List.of(comparisonId(), value()),
        Optional.empty(),
        List.of(
            new AnswerText(
                200, "The comparison.", ComparisonShapes.DOCUMENT, ComparisonController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  @Bean
  OperationDescription describeGetComparisonPaths() {
    return picture(
        "getComparisonPaths",
        "Get the picture of both paths",
        "The plate, its magnets, the recorded path, the foretold one as a thin line with its"
            + " horizons, and where the two part.");
  }

  @Bean
  OperationDescription describeGetComparisonDistance() {
    return picture(
        "getComparisonDistance",
        "Get the picture of the distance over time",
        "The distance between both places on a logarithmic axis beside what noise and start"
            + " explain, with parting and horizons.");
  }

  private static OperationDescription picture(String operation, String summary, String text) {
    return new OperationDescription(
        operation,
        TAG,
        summary,
        text,
        List.of(comparisonId(), SharedTexts.pixels(DrawnReply.USUAL_WIDTH)),
        Optional.empty(),
        List.of(
            new AnswerText(
                200, "The picture.", ComparisonShapes.DOCUMENT, ComparisonController.PICTURE),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  private static ParameterText value() {
    return SharedTexts.word(
        "value",
        ComparisonValue.values(),
        ComparisonValue::word,
        "One value as text, for a cell of a spreadsheet.",
        "verdict");
  }

  private static ParameterText comparisonId() {
    return SharedTexts.id("comparisonId", "The id, as createComparison gave it.", "cmp-…");
  }
}
