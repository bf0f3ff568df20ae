package lodeswing.web.gauging;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lodeswing.core.magnet.Grade;
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

/** What the operation on magnet estimates says about itself. */
@Configuration(proxyBeanMethods = false)
class EstimateOperations {

  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final Shape SIZE = NumberShape.between(0.2, 500).in("millimetres");
  private static final Shape FORCE = NumberShape.between(0.001, 10_000).in("newtons");
  private static final Shape DISTANCE = NumberShape.between(0.1, 2000).in("millimetres");
  private static final Shape PERCENT = NumberShape.between(0, 50).in("percent");
  private static final Shape WITHIN = NumberShape.between(0, 50).in("millimetres");
  private static final Shape CLOSELY = NumberShape.between(0, 10).in("millimetres");

  private static final ObjectShape MAGNET =
      ObjectShape.named("GaugedMagnet", "Form and size of the magnet.")
          .open()
          .required("shape", ChoiceShape.of("disc", "ring", "block"), "Its form.")
          .required("heightMm", NUMBER, "Height along the magnetisation.")
          .optional("diameterMm", NUMBER, "Of a disc or ring.")
          .optional("innerDiameterMm", NUMBER, "Of a ring's hole.")
          .optional("lengthMm", NUMBER, "Of a block.")
          .optional("widthMm", NUMBER, "Of a block.")
          .build();

  private static final ObjectShape FITTING_GRADE =
      ObjectShape.named("FittingGrade", "A grade whose remanence meets the range.")
          .open()
          .required("code", TEXT, "Its trade code.")
          .required("material", TEXT, "Its material.")
          .required("lowT", NUMBER, "Lowest remanence.")
          .required("highT", NUMBER, "Highest remanence.")
          .required("source", TEXT, "What the figures rest on.")
          .build();

  private static final ObjectShape READING =
      ObjectShape.named("MagnetReading", "What one reading tells by itself.")
          .open()
          .required("kind", TEXT, "contact-pull, spaced-pull, pair-pull, lift or field.")
          .required("remanenceT", NUMBER, "Remanence.")
          .required("remanenceLowT", NUMBER, "Lower end of its range.")
          .required("remanenceHighT", NUMBER, "Upper end of its range.")
          .required("atLeast", new FlagShape(), "Whether it tells the least remanence only.")
          .required("counted", new FlagShape(), "Whether it is part of the result.")
          .build();

  private static final ObjectShape POLE =
      ObjectShape.named("CompassPole", "Which pole the face is that was held to a compass.")
          .open()
          .required("compass", TEXT, "What the needle did.")
          .required("face", ChoiceShape.of("north", "south"), "The pole.")
          .build();

  static final ObjectShape DOCUMENT =
      ObjectShape.named("MagnetEstimate", "How strong a magnet is, and which pole is which.")
          .open()
          .optional("magnet", MAGNET, "The magnet; left out where a compass alone was asked.")
          .optional("remanenceT", NUMBER, "Remanence.")
          .optional("remanenceLowT", NUMBER, "Lower end of its range.")
          .optional("remanenceHighT", NUMBER, "Upper end of its range.")
          .optional("atLeast", new FlagShape(), "Whether it is the least remanence only.")
          .optional("momentAm2", NUMBER, "Magnetic moment by that remanence.")
          .optional("agree", new FlagShape(), "Whether the readings agree.")
          .optional(
              "grades",
              new ListShape(FITTING_GRADE, 0, 100),
              "Grades that fit, nearest to the range's middle first; of a least remanence all stronger ones too.")
          .optional("readings", new ListShape(READING, 1, 10), "What each reading tells.")
          .optional("pole", POLE, "Where a compass was asked.")
          .required("sentence", TEXT, "The result in words.")
          .required("notes", new ListShape(TEXT, 0, 50), "What to know, in sentences.")
          .required("caution", TEXT, "What to beware of.")
          .required("engineRevision", NUMBER, "Revision of the engine that computed it.")
          .required("links", new MapShape(TEXT, 50, 40), "Where to go from here.")
          .build();

  @Bean
  OperationDescription describeGetMagnetEstimate() {
    return new OperationDescription(
            "getMagnetEstimate",
            "Magnet estimates",
            "Tell a magnet's remanence from what a bench can measure",
            "Any of: the pull off thick steel (pullN, with or without a spacer), the pull between two"
                + " equal magnets (pairPullN with distanceMm), the distance at which one just lifts its"
                + " equal (liftDistanceMm), a field reading on the axis (fieldMicrotesla with"
                + " sensorDistanceMm). Each is solved by the exact field of a disc, ring or block;"
                + " several are combined; a pull at contact tells the least remanence only. The range"
                + " comes from the uncertainties, of which each has a stated usual value. compass tells"
                + " which pole a face is, also alone. "
                + EstimateAnswers.CAUTION,
            Stream.of(sizes(), pulls(), lifts(), fields(), rest()).flatMap(List::stream).toList(),
            Optional.empty(),
            List.of(new AnswerText(200, "The estimate.", DOCUMENT, EstimateController.OFFERED)),
            List.of())
        .ofNoLayout();
  }

  private static List<ParameterText> sizes() {
    return List.of(
        measured("diameterMm", SIZE, "Outer diameter of a disc or ring.", "15"),
        measured("innerDiameterMm", SIZE, "Diameter of a ring's hole.", "5"),
        measured("lengthMm", SIZE, "Length of a block.", "20"),
        measured("widthMm", SIZE, "Width of a block.", "10"),
        measured(
            "heightMm",
            SIZE,
            "Height along the magnetisation; always needed but for a compass alone.",
            "5"),
        off(
            "sizeUncertaintyMm",
            CLOSELY,
            "Uncertainty of each length",
            EstimateQuery.USUAL_SIZE_OFF),
        SharedTexts.word(
            "material",
            Grade.Material.values(),
            EstimateQuery::word,
            "Material, where it is known: only its grades are named, and its density gives the mass"
                + " of a lifted equal.",
            "neodymium"));
  }

  private static List<ParameterText> pulls() {
    return List.of(
        measured("pullN", FORCE, "Force that takes the magnet off thick, flat steel.", "20"),
        measured(
            "spacerMm",
            NumberShape.between(0, 100).in("millimetres"),
            "Thickness of what lies between magnet and steel; 0 if left out: at contact.",
            "1"),
        off(
            "spacerUncertaintyMm",
            CLOSELY,
            "Uncertainty of the spacer",
            EstimateQuery.USUAL_SPACER_OFF),
        off(
            "contactGapMm",
            NumberShape.between(0, 2).in("millimetres"),
            "Widest hidden gap at contact: plating, paint, rust",
            EstimateQuery.USUAL_CONTACT_GAP),
        measured(
            "pairPullN", FORCE, "Pull between the magnet and its equal, unlike poles facing.", "4"),
        measured("distanceMm", DISTANCE, "Distance between their facing faces.", "10"),
        off(
            "forceUncertaintyPercent",
            PERCENT,
            "Uncertainty of both pulls",
            EstimateQuery.USUAL_FORCE_OFF));
  }

  private static List<ParameterText> lifts() {
    return List.of(
        measured(
            "liftDistanceMm",
            DISTANCE,
            "Distance between the facing faces at which the magnet just lifts its equal off the table.",
            "44"),
        measured(
            "liftMassG",
            NumberShape.between(0.001, 50_000).in("grams"),
            "All that is lifted: the equal magnet with what is fixed to it; needed without material.",
            "6.6"),
        off(
            "massUncertaintyPercent",
            PERCENT,
            "Uncertainty of that mass",
            EstimateQuery.USUAL_MASS_OFF),
        off(
            "distanceUncertaintyMm",
            WITHIN,
            "Uncertainty of distanceMm and liftDistanceMm",
            EstimateQuery.USUAL_DISTANCE_OFF));
  }

  private static List<ParameterText> fields() {
    return List.of(
        measured(
            "fieldMicrotesla",
            NumberShape.between(0.1, 1_500_000).in("microtesla"),
            "Size of the flux density on the magnet's axis, such as a phone shows it.",
            "700"),
        measured(
            "sensorDistanceMm",
            NumberShape.between(0, 2000).in("millimetres"),
            "From the nearer face to the sensor.",
            "60"),
        off(
            "sensorDistanceUncertaintyMm",
            WITHIN,
            "Uncertainty of that distance",
            EstimateQuery.USUAL_SENSOR_OFF),
        off(
            "fieldUncertaintyPercent",
            PERCENT,
            "Uncertainty of the sensor",
            EstimateQuery.USUAL_FIELD_OFF),
        ParameterText.optional(
            "fieldReading",
            ChoiceShape.of("single", "difference"),
            "difference: of two readings, with the magnet and without; single, if left out, has the"
                + " earth's field in it as an uncertainty.",
            "difference"));
  }

  private static List<ParameterText> rest() {
    return List.of(
        SharedTexts.word(
            "compass",
            Compass.values(),
            Compass::word,
            "Which end of a compass needle a face attracts: that which points north, or south.",
            "north-end-attracted"),
        SharedTexts.word(
            "value",
            EstimateValue.values(),
            EstimateValue::word,
            "One value as text, for a cell of a spreadsheet.",
            "remanenceT"));
  }

  private static ParameterText measured(String name, Shape shape, String text, String example) {
    return ParameterText.optional(name, shape, text, example);
  }

  private static ParameterText off(String name, Shape shape, String text, double usual) {
    String figure = Numbers.shortest(usual);
    return ParameterText.optional(name, shape, text + "; " + figure + " if left out.", figure);
  }
}
