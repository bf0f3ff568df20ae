package lodeswing.web.field;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.Shape;
import lodeswing.web.jobs.AddressedPart;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.PendingAnswer;
import lodeswing.web.openapi.SharedTexts;
import lodeswing.web.representation.DrawnReply;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on the field say about themselves. */
@Configuration(proxyBeanMethods = false)
class FieldOperations {

  private static final String TAG = "Field";
  private static final String CHANGED =
      " Every figure of the layout may be changed on the way, as in getLayoutVariant. A textbook"
          + " layout has no field in tesla.";

  private static final Shape PLACE =
      NumberShape.between(-FieldController.FARTHEST, FieldController.FARTHEST);
  private static final Shape HEIGHT =
      NumberShape.between(FieldController.LEAST_HEIGHT, FieldController.GREATEST_HEIGHT);

  private final SampleLayouts samples;

  FieldOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeGetField() {
    return new OperationDescription(
        "getField",
        TAG,
        "Get the field at a point",
        "The flux density of the plate's magnets at a point, in millitesla, exact also close to and"
            + " within them; the bob's own magnet is not part of it. As text one value."
            + CHANGED,
        List.of(
            layoutId("three-stations"),
            ParameterText.needed("x", PLACE, "The point [mm].", "45"),
            ParameterText.needed("y", PLACE, "The point [mm].", "0"),
            ParameterText.optional(
                "z",
                HEIGHT,
                "Its height over the plate [mm]; if left out, where the bob magnet's centre passes.",
                "27.5"),
            value(PointAnswers.VALUES, "magnitude")),
        Optional.empty(),
        List.of(new AnswerText(200, "The field.", FieldShapes.POINT, FieldController.POINT_FORMS)),
        List.of(404, 422));
  }

  @Bean
  OperationDescription describeGetFieldMap() {
    return described(
        "getFieldMap",
        "Map how strong the field is",
        "The strength at the points of a grid, each exact, over a level plane or along the bob's"
            + " path; of the whole field or of its part in the plane; as a picture with contours and"
            + " their values.",
        parameters(
            "three-stations",
            "the bob's path",
            ParameterText.optional(
                "side",
                NumberShape.count(FieldController.LEAST_SIDE, FieldController.GREATEST_SIDE),
                "Points along a side.",
                "193"),
            part("whole"),
            spots("false"),
            value(MapAnswers.VALUES, "most")),
        new AnswerText(200, "The map.", FieldShapes.MAP, FieldController.FORMS));
  }

  @Bean
  OperationDescription describeGetFieldLines() {
    return described(
        "getFieldLines",
        "Draw lines along the field",
        "Lines evenly apart (Jobard and Lefer 1997), along the field's part in the plane or in an"
            + " upright cut through the window's middle; from above with weak spots marked.",
        parameters(
            "turned-centre",
            "a paper 1 mm over the highest magnet",
            ParameterText.optional(
                "apartMm",
                NumberShape.between(FieldController.LEAST_APART, FieldController.GREATEST_APART),
                "Their distance; a 46th of the window's side if left out.",
                "3"),
            ParameterText.optional(
                "cut", ChoiceShape.of("plan", "upright"), "In which plane.", "plan"),
            ParameterText.optional(
                "turnDeg",
                NumberShape.between(-360, 360),
                "Angle of an upright cut from the x axis.",
                "0"),
            spots("true"),
            value(LinesAnswers.VALUES, "count")),
        new AnswerText(200, "The lines.", FieldShapes.LINES, FieldController.FORMS));
  }

  @Bean
  OperationDescription describeGetFieldFilings() {
    return described(
        "getFieldFilings",
        "Draw what filings on paper show",
        "Short strokes along the field's part in the paper, denser where the field draws filings,"
            + " with gaps where it is weak and weak spots marked. The same seed gives the same"
            + " filings.",
        parameters(
            "closed-doors",
            "a paper 1 mm over the highest magnet",
            ParameterText.optional(
                "count",
                NumberShape.count(FieldController.LEAST_FILINGS, FieldController.GREATEST_FILINGS),
                "How many are strewn.",
                "9000"),
            ParameterText.optional(
                "seed",
                NumberShape.count(0, Integer.MAX_VALUE),
                "Another seed strews other filings.",
                "1"),
            spots("true"),
            value(FilingsAnswers.VALUES, "drawn")),
        new AnswerText(200, "The filings.", FieldShapes.FILINGS, FieldController.FILING_FORMS));
  }

  @Bean
  OperationDescription describeListWeakSpots() {
    return described(
        "listWeakSpots",
        "List where the field is weak",
        "Zeros and least places of the field and of its part in the plane along a surface, with"
            + " kind, index, zone and what borders them, counted by Poincare and Hopf; and the"
            + " places in space without any field. As a picture the map with the spots marked.",
        parameters(
            "closed-doors", "the bob's path", part("whole"), value(SpotAnswers.VALUES, "count")),
        new AnswerText(200, "The weak spots.", FieldShapes.WEAK_SPOTS, FieldController.FORMS));
  }

  private static OperationDescription described(
      String id, String summary, String text, List<ParameterText> parameters, AnswerText answer) {
    return new OperationDescription(
        id,
        TAG,
        summary,
        text + CHANGED,
        parameters,
        Optional.empty(),
        List.of(answer, PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  private List<ParameterText> parameters(String sample, String usual, ParameterText... own) {
    List<ParameterText> all = new ArrayList<>();
    all.add(layoutId(sample));
    all.add(ParameterText.optional("x", PLACE, "Middle of the window [mm].", "0"));
    all.add(ParameterText.optional("y", PLACE, "Middle of the window [mm].", "0"));
    all.add(
        ParameterText.optional(
            "halfWidth",
            NumberShape.between(FieldController.LEAST_WINDOW, FieldController.GREATEST_WINDOW),
            "Half its side [mm]; that of the usual map if left out.",
            "80"));
    all.add(
        ParameterText.optional(
            "zMm", HEIGHT, "Height of a level plane over the plate; or give surface.", "12"));
    all.add(
        ParameterText.optional(
            "surface",
            ChoiceShape.of("path", "paper"),
            "path: where the bob magnet's centre passes; paper: a level plane 1 mm over the highest"
                + " magnet. Without zMm and surface: "
                + usual
                + ".",
            "path"));
    all.addAll(List.of(own));
    all.add(SharedTexts.pixels(DrawnReply.USUAL_WIDTH));
    return all;
  }

  private static ParameterText part(String example) {
    return ParameterText.optional(
        "part",
        ChoiceShape.of("whole", "plane"),
        "whole: the field; plane: its part in the plane of the plate.",
        example);
  }

  private static ParameterText spots(String usual) {
    return ParameterText.optional(
        "spots",
        new FlagShape(),
        "Whether weak spots are marked; " + usual + " if left out.",
        "true");
  }

  private static ParameterText value(String[] values, String example) {
    return ParameterText.optional(
        "value",
        ChoiceShape.of(values),
        "One value as text, for a cell of a spreadsheet.",
        example);
  }

  private ParameterText layoutId(String sample) {
    return SharedTexts.layoutId(samples.get(sample).document().layoutId());
  }

  @Bean
  AddressedPart fieldMapPart(FieldController controller) {
    return new AddressedPart("/v1/layouts/{id}/field/map", controller::mapAsked);
  }

  @Bean
  AddressedPart weakSpotPart(FieldController controller) {
    return new AddressedPart("/v1/layouts/{id}/field/weak-spots", controller::spotsAsked);
  }
}
