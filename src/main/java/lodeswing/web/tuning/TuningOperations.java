package lodeswing.web.tuning;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.TextShape;
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

/** What the operations on tunings say about themselves. */
@Configuration(proxyBeanMethods = false)
class TuningOperations {

  private static final String TAG = "Tunings";

  private final SampleLayouts samples;

  TuningOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeCreateTuning() {
    return new OperationDescription(
        "createTuning",
        TAG,
        "Ask how to bring the odds to what is wanted",
        "Looks for moves of the magnets, of the gap, of the release, or for magnets from a stock,"
            + " that bring the chances of the labels nearest to the wanted ones, for a hand that"
            + " wanders; each on a step that a hand can place. Answers the nearest layouts, stored"
            + " under ids of their own, with their odds, confirmed by tries of another seed, and"
            + " says so where what is wanted was not reached. Layouts that could not be built are"
            + " never answered. The same request always has the same bytes.",
        List.of(SharedTexts.dryRun(), value(), label(), table()),
        Optional.of(new RequestText(TuningShapes.REQUEST, examples())),
        List.of(
            new AnswerText(
                200,
                "The tuning, or what a dry run tells.",
                List.of(TuningShapes.DOCUMENT, DryRun.DOCUMENT),
                TuningController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 413, 415, 422, 503));
  }

  private Map<String, Body> examples() {
    Map<String, Object> release = new LinkedHashMap<>();
    release.put("x", 60.0);
    release.put("y", 0.0);
    Map<String, Object> spread = new LinkedHashMap<>();
    spread.put("kind", "gaussian");
    spread.put("deviation", 3.0);
    Map<String, Object> places = new LinkedHashMap<>();
    places.put("within", 15.0);
    Map<String, Object> fair = new LinkedHashMap<>();
    fair.put("layoutId", samples.get("three-stations").document().layoutId());
    fair.put("release", Body.of(release));
    fair.put("spread", Body.of(spread));
    fair.put("move", Body.of(Map.of("places", Body.of(places))));
    Map<String, Body> examples = new LinkedHashMap<>();
    examples.put("fair-within-fifteen-millimetres", Body.of(fair));
    return examples;
  }

  @Bean
  OperationDescription describeGetTuning() {
    return new OperationDescription(
        "getTuning",
        TAG,
        "Get a tuning",
        "The tuning of an id: the document, the odds or the moves as a table, or one value as text.",
        List.of(tuningId(), value(), label(), table()),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The tuning.", TuningShapes.DOCUMENT, TuningController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  @Bean
  OperationDescription describeGetTuningPlate() {
    return new OperationDescription(
        "getTuningPlate",
        TAG,
        "Get the picture of the moves",
        "The plate with the magnets where they stood, in outline, and where they are moved to.",
        List.of(
            tuningId(),
            ParameterText.optional(
                "rank",
                NumberShape.count(1, TuningShapes.MOST_ANSWERS),
                "Which of the layouts, the nearest is 1.",
                "1"),
            SharedTexts.pixels(DrawnReply.USUAL_WIDTH)),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The picture.", TuningShapes.DOCUMENT, TuningController.PICTURE),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  private static ParameterText tuningId() {
    return SharedTexts.id("tuningId", "The id, as createTuning gave it.", "tun-…");
  }

  private static ParameterText value() {
    return SharedTexts.word(
        "value",
        TuningValue.values(),
        TuningValue::word,
        "One value as text, for a cell of a spreadsheet: distance is the greatest of a label from"
            + " its wanted chance; chance, low and high are the confirmed ones.",
        "moves");
  }

  private static ParameterText label() {
    return ParameterText.optional(
        "label",
        new TextShape(200),
        "The label that before, chance, low and high are asked of; the one farthest off if left"
            + " out.",
        "Tide");
  }

  private static ParameterText table() {
    return ParameterText.optional(
        "table", ChoiceShape.of("odds", "moves"), "Which table a CSV file has.", "odds");
  }
}
