package lodeswing.web.occupancy;

import java.util.List;
import java.util.Optional;
import lodeswing.web.body.NumberShape;
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

/** What the operation on occupancies says about itself. */
@Configuration(proxyBeanMethods = false)
class OccupancyOperations {

  private final SampleLayouts samples;

  OccupancyOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeGetOccupancy() {
    return new OperationDescription(
        "getOccupancy",
        "Occupancy",
        "See where the bob spends its time",
        "Many releases followed with the magnets and without: the share of the time in each cell of"
            + " the plate beside the field's strength there, their rank correlation, what the"
            + " magnets change, and the time over magnets, each with its interval; a picture of"
            + " both maps side by side. Every figure of the layout may be changed on the way, as in"
            + " getLayoutVariant.",
        List.of(
            SharedTexts.layoutId(samples.get("closed-doors").document().layoutId()),
            ParameterText.optional(
                "radius",
                OccupancyController.RADIUS,
                "Radius of the disc about the middle that releases come from, in the layout's unit"
                    + " of length; if left out half the side of the usual map.",
                "60"),
            ParameterText.optional(
                "durationS",
                TraceShapes.DURATION,
                "How long each release is followed; if left out until a free swing has half its"
                    + " size, three swings at least.",
                "12"),
            ParameterText.optional(
                "releases",
                NumberShape.count(
                    OccupancyController.LEAST_RELEASES, OccupancyController.MOST_RELEASES),
                "How many releases, a multiple of 16.",
                "1024"),
            ParameterText.optional(
                "seed",
                NumberShape.count(0, Integer.MAX_VALUE),
                "Another seed gives other releases.",
                "1"),
            SharedTexts.pixels(DrawnReply.USUAL_WIDTH),
            SharedTexts.word(
                "value",
                OccupancyValue.values(),
                OccupancyValue::word,
                "One value as text, for a cell of a spreadsheet.",
                "correlation")),
        Optional.empty(),
        List.of(
            new AnswerText(
                200, "The occupancy.", OccupancyShapes.DOCUMENT, OccupancyController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }
}
