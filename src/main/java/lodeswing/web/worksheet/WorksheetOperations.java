package lodeswing.web.worksheet;

import java.util.List;
import java.util.Optional;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.jobs.AddressedPart;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.PendingAnswer;
import lodeswing.web.openapi.SharedTexts;
import lodeswing.web.sheet.SheetQuery;
import lodeswing.web.sheet.SheetReply;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operation on worksheets says about itself. */
@Configuration(proxyBeanMethods = false)
class WorksheetOperations {

  private final SampleLayouts samples;

  WorksheetOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeGetLayoutWorksheet() {
    return new OperationDescription(
        "getLayoutWorksheet",
        "Sheets",
        "Print activities for a class",
        "Activities at the rig with blank tables, a grid of the plate to draw into and space to"
            + " write: predict and tally, the same release again, is it fair, find the weak spots,"
            + " the swing without magnets, how it dies away. answers=true adds a key on pages of its"
            + " own, computed for this very layout: chances with intervals, weak spots, periods,"
            + " loss. Places to let go at are chosen so that some ends can be foretold and some"
            + " cannot. In English, German or Spanish, by lang or Accept-Language; tagged PDF, or"
            + " one page as SVG. Every figure of the layout may be changed on the way, as in"
            + " getLayoutVariant.",
        List.of(
            SharedTexts.layoutId(samples.get("three-stations").document().layoutId()),
            ParameterText.optional(
                "age",
                WorksheetController.AGE,
                "Age of the youngest, which chooses the activities; if left out the layout's"
                    + " audience, or 12.",
                "12"),
            ParameterText.optional(
                "activities",
                new TextShape(200),
                "Activities by name, with commas: predict, twice, fair, weak-spots, free-swing,"
                    + " damping; if left out those for the age.",
                "predict,fair"),
            ParameterText.optional("answers", new FlagShape(), "Whether the key follows.", "true"),
            ParameterText.optional(
                "spreadMm",
                WorksheetController.SPREAD,
                "Standard deviation of the hand that lets go, in millimetres.",
                "3"),
            SheetQuery.paperText(),
            SheetQuery.pageText()),
        Optional.empty(),
        List.of(
            new AnswerText(
                200,
                "The sheet.",
                ObjectShape.named("PrintedSheet", "A sheet to print.").open().build(),
                SheetReply.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  @Bean
  AddressedPart worksheetPart(WorksheetController controller) {
    return new AddressedPart("/v1/layouts/{id}/worksheet", controller::asked);
  }
}
