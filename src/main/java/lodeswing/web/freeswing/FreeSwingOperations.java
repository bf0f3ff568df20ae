package lodeswing.web.freeswing;

import java.util.List;
import java.util.Optional;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.jobs.AddressedPart;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.PendingAnswer;
import lodeswing.web.openapi.SharedTexts;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.trace.TraceShapes;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on free swings say about themselves. */
@Configuration(proxyBeanMethods = false)
class FreeSwingOperations {

  private static final String TAG = "Free swing";

  private final SampleLayouts samples;

  FreeSwingOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeGetFreeSwing() {
    return new OperationDescription(
        "getFreeSwing",
        TAG,
        "Swing the rig without its magnets",
        "Both small-swing periods, their ratio with the nearest small whole numbers, how long the"
            + " figure takes to close, how the swing dies away, how an ellipse turns on a round rig"
            + " (Airy), and the figure of a release as a picture. Asked with within or secondPath,"
            + " it also tells until when the path among the magnets keeps near this one. Every"
            + " figure of the layout may be changed on the way, as in getLayoutVariant.",
        List.of(
            layoutId(),
            ParameterText.optional(
                "x",
                TraceShapes.PLACE,
                "Where the bob is let go; without x and y, a tenth of its arm out along each axis,"
                    + " in a textbook layout 1.",
                "20"),
            ParameterText.optional("y", TraceShapes.PLACE, "Where the bob is let go.", "20"),
            ParameterText.optional("vx", TraceShapes.SPEED, "A push along x.", "0"),
            ParameterText.optional("vy", TraceShapes.SPEED, "A push along y.", "0"),
            ParameterText.optional(
                "durationS",
                TraceShapes.DURATION,
                "How long the figure is drawn; twelve swings along x if left out, or less where the"
                    + " loss is strong.",
                "10.8"),
            ParameterText.optional(
                "within",
                FreeSwingController.NEARNESS,
                "Distance from the free path up to which the path among the magnets is followed, in"
                    + " the layout's unit of length; where only secondPath or value=partedAtS is"
                    + " given 5 mm, textbook 0.05.",
                "5"),
            ParameterText.optional(
                "secondPath",
                new FlagShape(),
                "true: draw the path among the magnets too.",
                "true"),
            SharedTexts.pixels(DrawnReply.USUAL_WIDTH),
            SharedTexts.word(
                "value",
                FreeSwingValue.values(),
                FreeSwingValue::word,
                "One value as text, for a cell of a spreadsheet.",
                "periodXS")),
        Optional.empty(),
        List.of(
            new AnswerText(
                200, "The free swing.", FreeSwingShapes.DOCUMENT, FreeSwingController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  @Bean
  OperationDescription describeGetFreeSwingDesign() {
    return new OperationDescription(
        "getFreeSwingDesign",
        TAG,
        "Find the suspension for a figure",
        "For a wanted ratio the drop and leg of a Y cord, also one made of a single cord, or the"
            + " hook offset of a bar, in millimetres, with how exact the hand must be. As text the"
            + " first design. Every figure of the layout may be changed on the way, as in"
            + " getLayoutVariant.",
        List.of(
            layoutId(),
            ParameterText.needed(
                "ratio",
                new TextShape(7),
                "Swings along y and along x in the same time: two whole numbers from 1 to 12.",
                "2:3"),
            ParameterText.optional(
                "keep",
                ChoiceShape.of(DesignController.KEEPS),
                "Only designs that leave this as it is.",
                "leg"),
            SharedTexts.word(
                "value",
                DesignValue.values(),
                DesignValue::word,
                "One value as text, for a cell of a spreadsheet.",
                "yokeDropMm")),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The designs.", FreeSwingShapes.DESIGNS, DesignController.OFFERED)),
        List.of(404, 422));
  }

  private ParameterText layoutId() {
    return SharedTexts.layoutId(samples.get("y-cord").document().layoutId());
  }

  @Bean
  AddressedPart freeSwingPart(FreeSwingController controller) {
    return new AddressedPart("/v1/layouts/{id}/free-swing", controller::asked);
  }
}
