package lodeswing.web.basin;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.analysis.basin.BasinSummary;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.PendingAnswer;
import lodeswing.web.openapi.SharedTexts;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on summaries of maps say about themselves. */
@Configuration(proxyBeanMethods = false)
class SummaryOperations {

  private static final String TAG = "Maps";
  private static final String SAMPLE = "paper-triangle";

  private static final String FORMS =
      " CSV has a row for each figure; text is the sentence, or the one figure that value names"
          + " (none where the map has none).";

  private final SampleLayouts samples;

  SummaryOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeGetBasinSummary() {
    List<ParameterText> parameters = new ArrayList<>();
    parameters.add(SharedTexts.id("basinId", "The map's id, as createBasin gave it.", "bas-…"));
    parameters.addAll(common());
    return operation(
        "getBasinSummary",
        "Sum up a map",
        "The share of each end, how tangled the border between them is (box-counting dimension,"
            + " uncertainty exponent, basin entropy, boundary basin entropy, test for the Wada"
            + " property), each with its 95 % interval and its published source, and one sentence"
            + " for a pupil. Figures that the map does not have are left out."
            + FORMS,
        parameters);
  }

  @Bean
  OperationDescription describeGetLayoutBasinSummary() {
    List<ParameterText> parameters = new ArrayList<>();
    parameters.add(SharedTexts.layoutId(samples.get(SAMPLE).document().layoutId()));
    parameters.addAll(BasinOperations.window());
    parameters.addAll(common());
    return operation(
        "getLayoutBasinSummary",
        "Sum up a map, by address alone",
        "As getBasinSummary, for clients that cannot post: the window in the address as in"
            + " getLayoutBasin, and every figure of the layout may be changed on the way."
            + FORMS,
        parameters);
  }

  private static List<ParameterText> common() {
    return List.of(
        ParameterText.optional(
            "side",
            NumberShape.count(BasinSummary.LEAST_SIDE, BasinQuery.GREATEST_SIDE),
            "Pixels along the side of the map that is summarised, up to the limit previewPixels; "
                + SummaryRequest.USUAL_SIDE
                + ".",
            Integer.toString(SummaryRequest.USUAL_SIDE)),
        ParameterText.optional(
            "seed",
            NumberShape.count(0, Integer.MAX_VALUE),
            "Seed of the releases drawn below the pixels where the map itself is too finely mixed"
                + " to give an uncertainty exponent; "
                + SummaryRequest.USUAL_SEED
                + ".",
            Integer.toString(SummaryRequest.USUAL_SEED)),
        SharedTexts.word(
            "value",
            SummaryValue.values(),
            SummaryValue::word,
            "One value as text, for a cell; a share also needs outcome.",
            "boxDimension"),
        ParameterText.optional(
            "outcome",
            new TextShape(BasinSummaryController.LONGEST_NAME),
            "The label or name of the end whose share is asked.",
            "A"));
  }

  private static OperationDescription operation(
      String operationId, String summary, String description, List<ParameterText> parameters) {
    return new OperationDescription(
        operationId,
        TAG,
        summary,
        description,
        parameters,
        Optional.empty(),
        List.of(
            new AnswerText(
                200, "The summary.", SummaryShapes.DOCUMENT, BasinSummaryController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }
}
