package lodeswing.web.layout;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.OperationDescription.RequestText;
import lodeswing.web.openapi.SharedTexts;
import lodeswing.web.representation.Representation;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on layouts say about themselves. */
@Configuration(proxyBeanMethods = false)
class LayoutOperations {
  private static final String TAG = "Layouts";
  private static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CBOR);
  private static final List<Representation> WITH_ID =
      List.of(Representation.JSON, Representation.CBOR, Representation.TEXT);

  private final SampleLayouts samples;
  private final ParameterText layoutId;

  LayoutOperations(LayoutStore layouts) {
    samples = layouts.samples();
    layoutId = SharedTexts.layoutId(samples.all().get(0).document().layoutId());
  }

  @Bean
  OperationDescription describeCreateLayout() {
    return new OperationDescription(
        "createLayout",
        TAG,
        "Store a layout",
        "Checks a layout, stores it under an id made from its content, and tells what is odd about"
            + " it. The same layout always has the same id, however it is written.",
        List.of(
            ParameterText.optional(
                "dry-run", new FlagShape(), "true: check only, store nothing.", "false")),
        Optional.of(new RequestText(LayoutShapes.REQUEST, examples())),
        List.of(
            new AnswerText(201, "Stored for the first time.", LayoutAnswers.SUMMARY, DOCUMENT),
            new AnswerText(200, "Stored before, or a dry run.", LayoutAnswers.SUMMARY, DOCUMENT)),
        List.of(413, 415, 422));
  }

  private Map<String, Body> examples() {
    var examples = new LinkedHashMap<String, Body>();
    samples.all().forEach(sample -> examples.put(sample.name(), sample.sent()));
    return examples;
  }

  @Bean
  OperationDescription describeGetLayout() {
    return new OperationDescription(
        "getLayout",
        TAG,
        "Get a layout",
        "The layout in its canonical form: defaults filled in, stock and patterns expanded.",
        List.of(layoutId),
        Optional.empty(),
        List.of(new AnswerText(200, "The layout.", LayoutAnswers.FULL, DOCUMENT)),
        List.of(404));
  }

  @Bean
  OperationDescription describeDeleteLayout() {
    return new OperationDescription(
            "deleteLayout",
            TAG,
            "Delete a private layout",
            "Deletes a private layout with everything that was computed of it: results, jobs, what"
                + " was asked. Layouts made of it by changing figures are layouts of their own and"
                + " stay. A public layout is everybody's and is not deleted.",
            List.of(layoutId),
            Optional.empty(),
            List.of(new AnswerText(204, "It is deleted.", List.of(), List.of())),
            List.of(404, 409))
        .ofNoLayout();
  }

  @Bean
  OperationDescription describeListPrivateLayouts() {
    return new OperationDescription(
            "listPrivateLayouts",
            TAG,
            "List your private layouts",
            "The private layouts of the key's or token's owner; as text an id a line.",
            List.of(),
            Optional.empty(),
            List.of(new AnswerText(200, "The layouts.", LayoutAnswers.OWN, LayoutController.OWN)),
            List.of(412, 422))
        .ofTheMoment()
        .ofNoLayout();
  }

  @Bean
  OperationDescription describeGetLayoutVariant() {
    return new OperationDescription(
        "getLayoutVariant",
        TAG,
        "Change some figures of a layout",
        "Stores the layout with some figures changed and answers its id; format=text gives the bare"
            + " id. Every figure of the canonical form is a parameter under its dotted path:"
            + " gapMm, pendulum.lengthMm, bobMagnet.grade, magnet.1.poleUp (the first magnet),"
            + " magnet.all.bottomMm (every magnet but those whose own is given),"
            + " pendulum.part.2.massG, damping.swingsToHalf. Members of pendulum and damping also go"
            + " by their bare names, such as bobMassG. A figure takes the place of what cannot stand"
            + " beside it in the layout, as remanenceT of grade; two of these in one query are a"
            + " fault. Numbers may have a decimal comma. The same parameters change the layout in"
            + " every other GET below it.",
        List.of(
            layoutId,
            ParameterText.optional(
                "gapMm",
                NumberShape.between(-1000, 5000).in("millimetres"),
                "A new gap; other figures likewise.",
                "30"),
            ParameterText.optional(
                "magnet.1.poleUp", MagnetShapes.POLE, "A pole, turned.", "north")),
        Optional.empty(),
        List.of(new AnswerText(200, "The changed layout.", LayoutAnswers.SUMMARY, WITH_ID)),
        List.of(404, 422));
  }

  @Bean
  OperationDescription describeListSampleLayouts() {
    return new OperationDescription(
            "listSampleLayouts",
            TAG,
            "List the built-in layouts",
            "Layouts to start from, each with its id; as a table, or as text a name a line.",
            List.of(),
            Optional.empty(),
            List.of(
                new AnswerText(
                    200, "The samples.", LayoutAnswers.SAMPLES, LayoutController.SAMPLES)),
            List.of())
        .ofNoLayout();
  }

  @Bean
  OperationDescription describeGetSampleLayout() {
    return new OperationDescription(
        "getSampleLayout",
        TAG,
        "Get a built-in layout by name",
        "Answers the sample's id; format=text gives the bare id, for a cell of a spreadsheet.",
        List.of(
            new ParameterText(
                "name", true, new TextShape(40), "The sample's name.", "three-stations")),
        Optional.empty(),
        List.of(new AnswerText(200, "The sample.", LayoutAnswers.SUMMARY, WITH_ID)),
        List.of(404));
  }
}
