package lodeswing.web.check;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.jobs.AddressedPart;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.PendingAnswer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operation on checks says about itself. */
@Configuration(proxyBeanMethods = false)
class CheckOperations {

  private final SampleLayouts samples;

  CheckOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeGetCheck() {
    return new OperationDescription(
        "getCheck",
        "Check",
        "Check a rig before it is built",
        "Whether the rig will swing, stick, lift off its hook or do nothing: each line with a"
            + " measured figure, its limit, a verdict, the reason, and the smallest change of one"
            + " member that would make it good. A line that misses something answers unknown and"
            + " names the member in needs. Of a bar also its parts with their masses. Every figure"
            + " of the layout may be changed on the way, as in getLayoutVariant; a textbook layout"
            + " has fewer lines.",
        List.of(
            new ParameterText(
                "layoutId",
                true,
                new TextShape(60),
                "The layout's id.",
                samples.get("kitchen-drawer").document().layoutId()),
            parameter(
                "radius",
                CheckController.RADIUS,
                "Radius of the disc about the middle that the bob is released from, in the layout's"
                    + " unit of length; if left out half the side of the usual map.",
                "60"),
            parameter(
                "spreadMm",
                CheckController.HAND,
                "How far the hand wanders that lets go (standard deviation along either axis), in"
                    + " the layout's unit of length; 3 if left out, in a textbook layout 0.02.",
                "3"),
            parameter(
                "seed", NumberShape.count(0, Integer.MAX_VALUE), "Another seed: other tries.", "1"),
            parameter("line", CheckShapes.CODES, "The line that value is of.", "sticking"),
            parameter(
                "value",
                ChoiceShape.of(
                    Arrays.stream(CheckValue.values())
                        .map(CheckValue::word)
                        .toArray(String[]::new)),
                "One value as text, for a cell of a spreadsheet: of the whole check sentence,"
                    + " verdict and massG; of a line all the others too.",
                "verdict")),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The check.", CheckShapes.DOCUMENT, CheckController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  private static ParameterText parameter(String name, Shape shape, String text, String example) {
    return new ParameterText(name, false, shape, text, example);
  }

  @Bean
  AddressedPart checkPart(CheckController controller) {
    return new AddressedPart("/v1/layouts/{id}/check", controller::asked);
  }
}
