package lodeswing.web.restpoint;

import java.util.List;
import java.util.Optional;
import lodeswing.web.jobs.AddressedPart;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.PendingAnswer;
import lodeswing.web.openapi.SharedTexts;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operation on rest points says about itself. */
@Configuration(proxyBeanMethods = false)
class RestPointOperations {

  @Bean
  OperationDescription describeListRestPoints(LayoutStore layouts) {
    return new OperationDescription(
        "listRestPoints",
        "Rest points",
        "List where the bob can rest",
        "Every stable rest point with the energy that keeps the bob there and its small-swing"
            + " periods, the saddles between them, and the places where the model stops to hold."
            + " Every figure of the layout may be changed on the way, as in getLayoutVariant.",
        List.of(
            SharedTexts.layoutId(layouts.samples().get("three-stations").document().layoutId())),
        Optional.empty(),
        List.of(
            new AnswerText(
                200, "The rest points.", RestPointAnswers.DOCUMENT, RestPointController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  @Bean
  AddressedPart restPointPart(RestPointController controller) {
    return new AddressedPart("/v1/layouts/{id}/rest-points", controller::asked);
  }
}
