package lodeswing.web.odds;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.body.TextShape;
import lodeswing.web.jobs.AddressedPart;
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

/** What the operations on odds say about themselves. */
@Configuration(proxyBeanMethods = false)
class OddsOperations {

  private static final String TAG = "Odds";
  private static final String SAMPLE = "three-stations";

  private final SampleLayouts samples;

  OddsOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeCreateOdds() {
    return new OperationDescription(
        "createOdds",
        TAG,
        "Ask how likely each end is",
        "Lets a hand that wanders release the bob many times and answers the chance of each label"
            + " with its 95 % interval, adding releases until no interval is longer than width; the"
            + " chance that two tries end alike; how many tries a class needs to tell two ends"
            + " apart; and chi-square against what a class counted. With parts or tolerances rigs"
            + " are built anew, each part uniform between its bounds: then it tells whether the"
            + " scatter comes from the hand or from the parts, and whether the odds are robust."
            + " Tries are points of a Sobol' sequence with a random digital shift by the seed; the"
            + " same request always has the same bytes.",
        List.of(SharedTexts.dryRun(), value(), outcome()),
        Optional.of(new RequestText(OddsShapes.REQUEST, examples())),
        List.of(
            new AnswerText(
                200,
                "The odds, or what a dry run tells.",
                List.of(OddsShapes.DOCUMENT, DryRun.DOCUMENT),
                OddsController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 413, 415, 422, 503));
  }

  private Map<String, Body> examples() {
    Map<String, Object> normal = new LinkedHashMap<>();
    normal.put("kind", "gaussian");
    normal.put("deviation", 3.0);
    Map<String, Object> hand = new LinkedHashMap<>();
    hand.put("layoutId", samples.get(SAMPLE).document().layoutId());
    hand.put("release", place(-70, 30));
    hand.put("spread", Body.of(normal));
    hand.put("counts", List.of(count("Tide", 11), count("Dune", 12), count("Reef", 7)));
    Map<String, Object> zone = new LinkedHashMap<>();
    zone.put("kind", "polygon");
    zone.put("corners", List.of(place(0.5, 0.5), place(1.5, 0.5), place(1.0, 1.5)));
    Map<String, Object> whole = new LinkedHashMap<>();
    whole.put("layout", samples.get("paper-triangle").sent());
    whole.put("spread", Body.of(zone));
    whole.put("width", 0.05);
    Map<String, Body> examples = new LinkedHashMap<>();
    examples.put("hand-of-three-millimetres", Body.of(hand));
    examples.put("release-zone", Body.of(whole));
    return examples;
  }

  private static Body place(double x, double y) {
    Map<String, Object> place = new LinkedHashMap<>();
    place.put("x", x);
    place.put("y", y);
    return Body.of(place);
  }

  private static Body count(String label, double count) {
    Map<String, Object> line = new LinkedHashMap<>();
    line.put("label", label);
    line.put("count", count);
    return Body.of(line);
  }

  @Bean
  OperationDescription describeGetOdds() {
    return new OperationDescription(
        "getOdds",
        TAG,
        "Get odds",
        "The odds of an id: the document, an end a row as a table, or one value as text.",
        List.of(oddsId(), value(), outcome()),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The odds.", OddsShapes.DOCUMENT, OddsController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  @Bean
  OperationDescription describeGetOddsBars() {
    return new OperationDescription(
        "getOddsBars",
        TAG,
        "Get the picture of odds",
        "A bar for each end with its interval, in the colour and pattern that the end has in maps.",
        List.of(oddsId(), SharedTexts.pixels(DrawnReply.USUAL_WIDTH)),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The picture.", OddsShapes.DOCUMENT, OddsController.PICTURE),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  @Bean
  OperationDescription describeGetLayoutOdds() {
    List<ParameterText> all = new ArrayList<>();
    all.add(SharedTexts.layoutId(samples.get(SAMPLE).document().layoutId()));
    all.addAll(OddsByAddress.texts());
    all.add(SharedTexts.pixels(DrawnReply.USUAL_WIDTH));
    all.add(value());
    all.add(outcome());
    return new OperationDescription(
        "getLayoutOdds",
        TAG,
        "Ask how likely each end is by address alone",
        "As createOdds, for clients that cannot post; zones with corners must be posted. Every figure"
            + " of the layout may be changed on the way, as in getLayoutVariant.",
        all,
        Optional.empty(),
        List.of(
            new AnswerText(200, "The odds.", OddsShapes.DOCUMENT, LayoutOddsController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  private static ParameterText value() {
    return SharedTexts.word(
        "value",
        OddsValue.values(),
        OddsValue::word,
        "One value as text, for a cell of a spreadsheet: outcome is the likeliest end, tries how"
            + " many a class needs to tell the two likeliest places apart; expected, chiSquare,"
            + " degreesOfFreedom, pValue and countedSentence are of what a class counted.",
        "chance");
  }

  private static ParameterText outcome() {
    return ParameterText.optional(
        "outcome",
        new TextShape(200),
        "The label or name that chance, low, high and expected are asked of; the likeliest if left"
            + " out.",
        "Tide");
  }

  private static ParameterText oddsId() {
    return SharedTexts.id("oddsId", "The id, as createOdds gave it.", "odd-…");
  }

  @Bean
  AddressedPart oddsPart(LayoutOddsController controller) {
    return new AddressedPart("/v1/layouts/{id}/odds", controller::asked);
  }
}
