package lodeswing.web.swingcount;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lodeswing.analysis.swingcount.Along;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.Numbers;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.SharedTexts;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operation on swing counts says about itself. */
@Configuration(proxyBeanMethods = false)
class SwingCountOperations {

  private static final int LONGEST_TIMES = 400;
  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);

  private static final ObjectShape RANGE =
      ObjectShape.named("CountedFigure", "A figure with its 95 % interval.")
          .open()
          .required("value", NUMBER, "The figure.")
          .required("low", NUMBER, "Lower end.")
          .required("high", NUMBER, "Upper end.")
          .build();

  private static final ObjectShape PERIOD =
      ObjectShape.named("CountedPeriod", "What timed swings tell.")
          .open()
          .required("swings", NUMBER, "How many were timed.")
          .required("meanS", RANGE, "Mean time of one of them.")
          .required("smallS", RANGE, "Time of a small swing without loss.")
          .required("expectedS", RANGE, "The same by the layout's own length.")
          .required("offPercent", RANGE, "By how much the former is more than the latter.")
          .required("agrees", new FlagShape(), "Whether that interval holds 0.")
          .build();

  private static final ObjectShape LENGTH =
      ObjectShape.named("CountedLength", "The suspension whose small swing takes as long.")
          .open()
          .required(
              "name",
              ChoiceShape.of("lengthMm", "legMm", "bobFromTopMm"),
              "Which length: a cord's, a Y cord's leg, or a bar's from hook to bob, all parts of"
                  + " which lie lower or higher together.")
          .required("ownMm", NUMBER, "The layout's.")
          .required("countedMm", RANGE, "The counted one.")
          .required("changeMm", NUMBER, "From the former to the latter.")
          .build();

  private static final ObjectShape LOSS =
      ObjectShape.named("CountedLoss", "What swings to half the amplitude tell.")
          .open()
          .required("swingsToHalf", RANGE, "Full swings to half the amplitude.")
          .required("qualityFactor", RANGE, "Quality factor.")
          .required("dampingRatePerS", RANGE, "Rate at which the amplitude falls.")
          .required("linearNsPerM", RANGE, "Force over speed at the bob that does this.")
          .optional("ownSwingsToHalf", NUMBER, "The layout's, where its loss is linear alone.")
          .optional(
              "law",
              ChoiceShape.of("linear", "drag", "friction"),
              "What the second halving speaks for, where it was counted.")
          .build();

  private static final ObjectShape SUGGESTION =
      ObjectShape.named("CountedLayout", "The layout that would swing as counted, stored.")
          .open()
          .required("layoutId", TEXT, "Its id.")
          .required("changes", new MapShape(NUMBER, 200, 80), "Changed figures, as of variants.")
          .build();

  static final ObjectShape DOCUMENT =
      ObjectShape.named("SwingCount", "Period, length and loss from counted swings.")
          .open()
          .required("layoutId", TEXT, "The layout, with the figures of the query.")
          .required("along", ChoiceShape.of("x", "y"), "Along which axis the bob swung.")
          .optional("period", PERIOD, "Left out where nothing was timed.")
          .optional("length", LENGTH, "Left out where nothing was timed, or no length swings so.")
          .optional("loss", LOSS, "Left out where halfAfter was.")
          .optional("suggestion", SUGGESTION, "Left out where nothing differs.")
          .required("sentence", TEXT, "The result in words.")
          .required("notes", new ListShape(TEXT, 0, 20), "What to know, in sentences.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .required("links", new MapShape(TEXT, 50, 8_000), "Where to go from here.")
          .build();

  @Bean
  OperationDescription describeGetSwingCount() {
    return new OperationDescription(
        "getSwingCount",
        "Layouts",
        "Tell period, length and loss from counted swings",
        "Count full swings, there and back, without magnets on the plate: how long some take"
            + " (swings with timeS), and after how many half the amplitude is left (halfAfter). The"
            + " period of a large swing is brought to that of a small one; it is held against what"
            + " the layout's own length says (a ruler's, given as lengthMm or legMm like any figure"
            + " of the layout), and the length that would swing so is told, for a cord, a Y cord's"
            + " leg or a bar as a whole. All with 95 % intervals from uncertainties, of which each"
            + " has a stated usual value. The layout with the counted loss, and with the counted"
            + " length where that disagrees with its own, is stored and named.",
        Stream.of(List.of(SharedTexts.layoutId("lay-…")), timing(), amplitude(), halving(), rest())
            .flatMap(List::stream)
            .toList(),
        Optional.empty(),
        List.of(
            new AnswerText(200, "What the count tells.", DOCUMENT, SwingCountController.OFFERED)),
        List.of(404, 422));
  }

  private static List<ParameterText> timing() {
    return List.of(
        ParameterText.optional(
            "swings", NumberShape.count(1, 10_000), "Full swings that were timed.", "20"),
        ParameterText.optional(
            "timeS",
            new TextShape(LONGEST_TIMES),
            "Their time in seconds, or several countings of as many with semicolons between.",
            "26.2"),
        off(
            "timeUncertaintyS",
            NumberShape.between(0, 60).in("seconds"),
            "Uncertainty of one counting by hand and stopwatch, common practice",
            SwingCountQuery.USUAL_TIME_OFF));
  }

  private static List<ParameterText> amplitude() {
    return List.of(
        ParameterText.optional(
            "amplitudeMm",
            NumberShape.between(0, 5_000).in("millimetres"),
            "How far out the first counted swing reaches, seen from above; small if left out.",
            "40"),
        ParameterText.optional(
            "amplitudeDeg",
            NumberShape.between(0, 60).in("degrees"),
            "The same as an angle, instead.",
            "6"),
        off(
            "amplitudeUncertaintyPercent",
            NumberShape.between(0, 100).in("percent"),
            "Uncertainty of the amplitude",
            SwingCountQuery.USUAL_AMPLITUDE_OFF));
  }

  private static List<ParameterText> halving() {
    return List.of(
        ParameterText.optional(
            "halfAfter",
            NumberShape.between(0.5, 1e6),
            "Full swings after which half the amplitude is left.",
            "25"),
        ParameterText.optional(
            "quarterAfter",
            NumberShape.between(1, 2e6),
            "Full swings, from the same begin, after which a quarter is left: tells the loss's law.",
            "50"),
        ParameterText.optional(
            "halfUncertaintySwings",
            NumberShape.between(0, 1e5),
            "Uncertainty of halfAfter; half a swing and what a half seen to a twentieth makes if left"
                + " out.",
            "2"));
  }

  private static List<ParameterText> rest() {
    return List.of(
        off(
            "lengthUncertaintyMm",
            NumberShape.between(0, 100).in("millimetres"),
            "Uncertainty of the layout's length; its tolerance, or else",
            SwingCountQuery.USUAL_LENGTH_OFF),
        ParameterText.optional(
            "gravityUncertaintyMPerS2",
            NumberShape.between(0, 1),
            "Uncertainty of gravity; 0.026 for standard gravity (equator to poles), 0 where the"
                + " layout names its own, if left out.",
            "0"),
        SharedTexts.word(
            "along", Along.values(), Along::word, "Along which axis the bob swung.", "x"),
        SharedTexts.word(
            "value",
            SwingCountValue.values(),
            SwingCountValue::word,
            "One value as text, for a cell of a spreadsheet.",
            "lengthMm"));
  }

  private static ParameterText off(String name, Shape shape, String text, double usual) {
    String figure = Numbers.shortest(usual);
    return ParameterText.optional(name, shape, text + "; " + figure + " if left out.", figure);
  }
}
