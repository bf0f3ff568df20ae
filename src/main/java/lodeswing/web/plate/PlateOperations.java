package lodeswing.web.plate;

import java.util.List;
import java.util.Optional;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.SharedTexts;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operation on plates says about itself. */
@Configuration(proxyBeanMethods = false)
class PlateOperations {

  /** Pictures alone are offered; no JSON document of a plate exists. */
  private static final ObjectShape PICTURE =
      ObjectShape.named("PlatePicture", "A picture.").open().build();

  @Bean
  OperationDescription describeGetLayoutPlate(LayoutStore layouts) {
    return new OperationDescription(
        "getLayoutPlate",
        "Layouts",
        "Get the picture of a plate",
        "The plate and its magnets with pole and label, a scale bar and a legend, without any path;"
            + " the SVG carries its alternative text. Nothing is computed for it, so it suits a"
            + " thumbnail. Every figure of the layout may be changed on the way, as in"
            + " getLayoutVariant.",
        List.of(
            SharedTexts.layoutId(layouts.samples().get("three-stations").document().layoutId()),
            SharedTexts.pixels(PlateController.USUAL_WIDTH)),
        Optional.empty(),
        List.of(new AnswerText(200, "The picture.", PICTURE, PlateController.OFFERED)),
        List.of(404, 422));
  }
}
