package lodeswing.web.comparison;

import java.util.ArrayList;
import java.util.LinkedHashMap;
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

  /** A free swing of a cord that is thought to be 10 mm too long, without noise. */
  private static Map<String, Body> examples() {
    List<Double> t = new ArrayList<>();
    List<Double> x = new ArrayList<>();
    List<Double> y = new ArrayList<>();
    double rate = Math.sqrt(9.80665 / 0.42);
    for (int i = 0; i <= 120; i++) {
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
    layout.put("damping", Body.of(Map.of("linearNsPerM", 0.0018)));
    Map<String, Object> request = new LinkedHashMap<>();
    request.put("layout", Body.of(layout));
    request.put("recording", Body.of(recording));
    Map<String, Body> examples = new LinkedHashMap<>();
    examples.put("free-swing-of-a-cord-thought-too-long", Body.of(request));
    return examples;
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
