package lodeswing.web.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.jobs.AddressedPart;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.odds.LabelOdds;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.PendingAnswer;
import lodeswing.web.openapi.SharedTexts;
import lodeswing.web.trace.TraceShapes;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on sheets say about themselves. */
@Configuration(proxyBeanMethods = false)
class SheetOperations {

  private static final String TAG = "Sheets";

  /** Paper alone is offered; no JSON document of a sheet exists. */
  private static final ObjectShape SHEET =
      ObjectShape.named("PrintedSheet", "A sheet to print.").open().build();

  private final SampleLayouts samples;

  SheetOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeGetLayoutTemplate() {
    List<ParameterText> all = new ArrayList<>();
    all.add(layoutId());
    all.addAll(SheetQuery.texts());
    all.add(
        ParameterText.optional(
            "x", TraceShapes.PLACE, "Where the bob is to be let go, to be marked.", "-70"));
    all.add(
        ParameterText.optional(
            "y", TraceShapes.PLACE, "Where the bob is to be let go, to be marked.", "30"));
    return new OperationDescription(
        "getLayoutTemplate",
        TAG,
        "Print where the magnets go",
        "The plate in true scale, to within 0.1 mm as far as the printer is: the outline of each"
            + " magnet with a cross at its centre, its number, the pole that faces up, grade and"
            + " label, the point under the bob, and two check lines of 100 mm that show a printer"
            + " that scales. A plate larger than the paper comes on several pages that share a"
            + " strip with matching marks, with an overview. Further pages list parts, places and"
            + " cautions. In English, German or Spanish, by lang or Accept-Language. As PDF it is"
            + " tagged (PDF/UA-1, PDF/A-2a). Every figure of the layout may be changed on the way,"
            + " as in getLayoutVariant.",
        all,
        Optional.empty(),
        List.of(new AnswerText(200, "The sheet.", SHEET, SheetReply.OFFERED)),
        List.of(404, 422));
  }

  @Bean
  OperationDescription describeGetLayoutOutcomeSheet() {
    List<ParameterText> all = new ArrayList<>();
    all.add(layoutId());
    all.addAll(SheetQuery.texts());
    all.add(
        ParameterText.optional(
            "pieces",
            ChoiceShape.of(OutcomeSheetController.pieces()),
            "wedges: one disc in true scale, cut up about the point under the bob; tags: a tag for"
                + " each label, to cut out. Where it is left out, wedges if they fit.",
            "tags"));
    all.addAll(LabelOdds.texts());
    return new OperationDescription(
        "getLayoutOutcomeSheet",
        TAG,
        "Print the labels of the outcomes",
        "The labels in wedges or on tags, each set as large as its place; in any of the scripts"
            + " that the typefaces have (Latin, Greek, Cyrillic, Arabic, Hebrew, Devanagari,"
            + " Chinese, kana), others as a line to write on. With x, y and spreadMm the chance of"
            + " each label stands beside it, as getLayoutOdds tells it. In English, German or"
            + " Spanish, by lang or Accept-Language. As PDF it is tagged (PDF/UA-1, PDF/A-2a)."
            + " Every figure of the layout may be changed on the way, as in getLayoutVariant.",
        all,
        Optional.empty(),
        List.of(
            new AnswerText(200, "The sheet.", SHEET, SheetReply.OFFERED), PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  private ParameterText layoutId() {
    return SharedTexts.layoutId(samples.get("three-stations").document().layoutId());
  }

  @Bean
  AddressedPart templatePart(TemplateController controller) {
    return new AddressedPart("/v1/layouts/{id}/template", controller::asked);
  }

  @Bean
  AddressedPart outcomeSheetPart(OutcomeSheetController controller) {
    return new AddressedPart("/v1/layouts/{id}/outcome-sheet", controller::asked);
  }
}
