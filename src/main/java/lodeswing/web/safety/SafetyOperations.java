package lodeswing.web.safety;

import java.util.List;
import java.util.Optional;
import lodeswing.web.body.FlagShape;
import lodeswing.web.jobs.AddressedPart;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.SharedTexts;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operation on safety notes says about itself. */
@Configuration(proxyBeanMethods = false)
class SafetyOperations {

  @Bean
  OperationDescription describeGetSafetyNotes(LayoutStore layouts) {
    return new OperationDescription(
        "getSafetyNotes",
        "Safety notes",
        "Get the cautions for a rig",
        "What the magnets, the bob and what is used with it can do to people and things, with figures"
            + " computed for these magnets: flux index against its limit for small parts, pinching"
            + " force, distance to 0.5 mT for implants, speed of the bob, load of the support and"
            + " more. Each caution tells its rule, its limit, where that is from and what it does not"
            + " cover. All of it defers to local rules, the school's own assessment and trained"
            + " staff. In English, German and Spanish, by lang or Accept-Language; with a country,"
            + " as in es-MX, numbers are written as there. As text and HTML the whole notes to"
            + " print: there sentences keep their commas, so that they are not meant for a cell."
            + " Every figure of the layout may be changed on the way, as in getLayoutVariant.",
        List.of(
            SharedTexts.layoutId(layouts.samples().get("three-stations").document().layoutId()),
            ParameterText.optional(
                SafetyController.SHORT.name(),
                new FlagShape(),
                "true: as text or HTML the short lines alone that every sheet prints.",
                "true"),
            SharedTexts.word(
                SafetyController.VALUE.name(),
                SafetyValue.values(),
                SafetyValue::word,
                "One value as text, for a cell: severity is that of the gravest note; where nothing"
                    + " is known of a figure, none.",
                "severity")),
        Optional.empty(),
        List.of(new AnswerText(200, "The notes.", SafetyShapes.DOCUMENT, SafetyController.OFFERED)),
        List.of(404, 422));
  }

  @Bean
  AddressedPart safetyPart(SafetyController controller) {
    return new AddressedPart("/v1/layouts/{id}/safety-notes", controller::asked);
  }
}
