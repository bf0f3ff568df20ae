package lodeswing.web.restpoint;

import java.util.List;
import java.util.Optional;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.PendingAnswer;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operation on rest points says about itself. */
@Configuration(proxyBeanMethods = false)
class RestPointOperations {

  @Bean
  OperationDescription describeListRestPoints(LayoutStore layouts) {
    String sample = layouts.samples().all().get(0).document().layoutId();
    return new OperationDescription(
        "listRestPoints",
        "Rest points",
        "List where the bob can come to rest",
        "Every stable rest point with its energy, the barrier of its well and the periods of small"
            + " swings there; the saddles between them; the borders of the model. Figures of the"
            + " layout may be changed on the way.",
        List.of(
            new ParameterText("layoutId", true, new TextShape(60), "The layout's id.", sample),
            new ParameterText(
                "gapMm",
                false,
                NumberShape.between(-1000, 5000).in("millimetres"),
                "A new gap; other figures likewise.",
                "30")),
        Optional.empty(),
        List.of(
            new AnswerText(
                200,
                "The rest points; CSV has them without the saddles.",
                RestPointAnswers.DOCUMENT,
                RestPointController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }
}
