package lodeswing.web.bundle;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.PendingAnswer;
import lodeswing.web.openapi.SharedTexts;
import lodeswing.web.sheet.SheetQuery;
import lodeswing.web.trace.TraceShapes;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operation on bundles says about itself. */
@Configuration(proxyBeanMethods = false)
class BundleOperations {

  private final SampleLayouts samples;

  BundleOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeGetLayoutBundle() {
    return new OperationDescription(
        "getLayoutBundle",
        "Sheets",
        "Take all of a layout to a room without network",
        "One ZIP with the placing sheet, the labels, the worksheet and its key, the safety notes, the"
            + " check, the rest points, the path and the odds of one release, the swing without"
            + " magnets, the field, its weak spots, the map of ends, and the layout as it can be"
            + " posted again; an index page that needs neither network nor script; and"
            + " manifest.json, which has each file's path, media type, bytes, SHA-256 and the"
            + " request that gives it again. What a layout lacks, or what would cost too much, is"
            + " left out and listed with its reason. The same request has the same bytes on any"
            + " day. Page, sheets and notes are in English, German or Spanish, by lang or"
            + " Accept-Language. Every figure of the layout may be changed on the way, as in"
            + " getLayoutVariant.",
        List.of(
            SharedTexts.layoutId(samples.get("three-stations").document().layoutId()),
            ParameterText.optional(
                "x",
                TraceShapes.PLACE,
                "Where the bob is let go for path and odds; if left out, with y, the surest place of"
                    + " the worksheet.",
                "-70"),
            ParameterText.optional("y", TraceShapes.PLACE, "The same along y.", "30"),
            ParameterText.optional(
                "spreadMm",
                BundleController.SPREAD,
                "Standard deviation of the hand that lets go: 3 mm if left out, in a textbook layout"
                    + " 0.05 of its own unit.",
                "3"),
            ParameterText.optional(
                "age",
                BundleController.AGE,
                "Age of the youngest, which chooses the worksheet's activities; if left out the"
                    + " layout's audience, or 12.",
                "12"),
            SheetQuery.paperText(),
            ParameterText.optional(
                "mapPixels", BundleController.MAP, "Side of the map of ends.", "256"),
            ParameterText.optional(
                "without",
                new TextShape(200),
                "What is to be left out, with commas: "
                    + Arrays.stream(BundleGroup.values())
                        .map(BundleGroup::word)
                        .collect(Collectors.joining(", "))
                    + ". The layout and the safety notes are in every bundle.",
                "basin-map,odds")),
        Optional.empty(),
        List.of(
            new AnswerText(
                200,
                "The archive.",
                ObjectShape.named("Bundle", "Files in one.").open().build(),
                BundleController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }
}
