package lodeswing.web.basin;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.RecordShape;
import lodeswing.web.jobs.AddressedPart;
import lodeswing.web.landscape.DryRun;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.OperationDescription.RequestText;
import lodeswing.web.openapi.PendingAnswer;
import lodeswing.web.openapi.SharedTexts;
import lodeswing.web.representation.Representation;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on maps say about themselves. */
@Configuration(proxyBeanMethods = false)
class BasinOperations {

  private static final String TAG = "Maps";
  private static final String SAMPLE = "paper-triangle";

  private static final String BINARY =
      " The binary form (application/vnd.lodeswing.basin-tile, little-endian) has a header of 64"
          + " bytes: LSWM, version (uint16, 1), length of the header (uint16), columns and rows"
          + " (uint32), number of rest points and bytes of an index (uint16), 1 where settling"
          + " times follow, else 0 (uint32), x"
          + " of the left and y of the upper edge, side of a pixel, time at which shading is"
          + " halfway, time of one unit (float64); then for each pixel, row by row from the top,"
          + " the index of its end (uint16), and after all of them its sealing time (float32, NaN"
          + " where the end was never certain), and its settling time where they follow (float32,"
          + " NaN where the bob never settled).";

  private final SampleLayouts samples;

  BasinOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeCreateBasin() {
    return new OperationDescription(
        "createBasin",
        TAG,
        "Map where every release ends",
        "Surveys a window of the plate and answers how to read its map: legend, tiles, zoom range."
            + " Tiles are computed when they are asked for. Every place stands for a bob let go"
            + " there at rest; its colour says where it ends, its lightness how late that was"
            + " certain. zoom.steady is the last zoom at which labels on boundaries still hold when"
            + " the tolerance is tightened tenfold.",
        List.of(
            ParameterText.optional(
                "dry-run",
                new FlagShape(),
                "true: tell the survey's cost (costReleases), compute and store nothing.",
                "false")),
        Optional.of(new RequestText(BasinShapes.REQUEST, examples())),
        List.of(
            new AnswerText(
                201, "Asked for the first time.", BasinShapes.DOCUMENT, BasinController.DOCUMENT),
            new AnswerText(
                200,
                "Asked before, or what a dry run tells.",
                List.of(BasinShapes.DOCUMENT, DryRun.DOCUMENT),
                BasinController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 413, 415, 422, 503));
  }

  private Map<String, Body> examples() {
    Map<String, Object> window = new LinkedHashMap<>();
    window.put("x", 0.0);
    window.put("y", 0.0);
    window.put("halfWidth", 2.0);
    Map<String, Object> stored = new LinkedHashMap<>();
    stored.put("layoutId", samples.get(SAMPLE).document().layoutId());
    stored.put("window", Body.of(window));
    Map<String, Body> examples = new LinkedHashMap<>();
    examples.put("stored-layout", Body.of(stored));
    return examples;
  }

  @Bean
  OperationDescription describeGetBasin() {
    return reading(
        "getBasin",
        "Get a map's document",
        "Legend, window, zoom range and the addresses of its pictures.",
        List.of(),
        BasinShapes.DOCUMENT,
        BasinController.DOCUMENT);
  }

  @Bean
  OperationDescription describeGetBasinViewer() {
    return reading(
        "getBasinViewer",
        "Get what a tile viewer needs",
        "Origin, direction of y, units a tile, zoom range and URL template: all that a tile viewer"
            + " with a coordinate system of its own must be told.",
        List.of(),
        BasinShapes.VIEWER,
        BasinController.DOCUMENT);
  }

  @Bean
  OperationDescription describeGetBasinTile() {
    return reading(
        "getBasinTile",
        "Get a tile of a map",
        "At zoom 0 one tile shows the window; each further zoom cuts every tile into four, counted"
            + " from the left and from the top. Nothing is found outside the window and the zoom"
            + " range."
            + BINARY,
        List.of(
            place("z", "Zoom, from 0 to the map's zoom.max.", "1"),
            place("x", "Tiles to the left of it.", "0"),
            place("y", "Tiles above it.", "1"),
            ParameterText.optional(
                "size", ChoiceShape.of("256", "512"), "Pixels along a side.", "256"),
            ParameterText.optional(
                "settled",
                new FlagShape(),
                "true: with settling times, which cost more; in the table and the binary form.",
                "false"),
            patterns(),
            look()),
        BasinShapes.DOCUMENT,
        BasinPictureController.TILE);
  }

  @Bean
  OperationDescription describeGetBasinPreview() {
    return reading(
        "getBasinPreview",
        "Get a picture of the whole window",
        "At any size up to the limit previewPixels; a picture that is not square shows more than the"
            + " window along its longer side. The PNG holds its alternative text."
            + BINARY,
        sized(),
        BasinShapes.DOCUMENT,
        BasinPictureController.PREVIEW);
  }

  @Bean
  OperationDescription describeGetBasinOverlay() {
    return reading(
        "getBasinOverlay",
        "Get what lies over a map",
        "Outlines, poles and labels of the magnets and the rest points, without a ground, to lie"
            + " edge to edge over the whole window.",
        List.of(look()),
        BasinShapes.DOCUMENT,
        BasinPictureController.OVERLAY);
  }

  @Bean
  OperationDescription describeGetBasinLegend() {
    List<ParameterText> parameters = new ArrayList<>(List.of(patterns(), look()));
    parameters.add(SharedTexts.pixels(720));
    return reading(
        "getBasinLegend",
        "Get the legend of a map",
        "As data, as a picture, or in words for those who do not see it.",
        parameters,
        BasinShapes.LEGEND,
        BasinPictureController.LEGEND);
  }

  @Bean
  OperationDescription describeGetLayoutBasin() {
    List<ParameterText> parameters = new ArrayList<>();
    parameters.add(SharedTexts.layoutId(samples.get(SAMPLE).document().layoutId()));
    parameters.addAll(window());
    parameters.addAll(sized().subList(0, 3));
    return new OperationDescription(
        "getLayoutBasin",
        TAG,
        "Map where every release ends, by address alone",
        "As createBasin, for clients that cannot post: the document, its id as text, or the picture"
            + " itself. Every figure of the layout may be changed on the way, as in"
            + " getLayoutVariant.",
        parameters,
        Optional.empty(),
        List.of(
            new AnswerText(200, "The map.", BasinShapes.DOCUMENT, LayoutBasinController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  @Bean
  OperationDescription describeCreateOutcomes() {
    return new OperationDescription(
        "createOutcomes",
        TAG,
        "Ask where many releases end",
        "Up to 100,000 releases as JSON columns, or as a CSV table whose first row names the columns"
            + " x and y, perhaps vx and vy (Content-Type text/csv; semicolons mean decimal commas)."
            + " The answer keeps their order. Settling times cost much more and are computed only"
            + " where they are asked for.",
        List.of(
            SharedTexts.layoutId(samples.get(SAMPLE).document().layoutId()),
            ParameterText.optional(
                "settled", new FlagShape(), "true: also when each bob had settled.", "false"),
            SharedTexts.dryRun()),
        Optional.of(
            new RequestText(
                OutcomeShapes.REQUEST,
                Map.of(
                    "two-releases",
                    Body.of(Map.of("x", List.of(60.0, -70.0), "y", List.of(0.0, 30.0)))),
                Optional.of("x,y\n60,0\n-70,30\n"))),
        List.of(
            new AnswerText(
                200,
                "The ends, or what a dry run tells.",
                List.of(OutcomeShapes.DOCUMENT, DryRun.DOCUMENT),
                OutcomeListController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 413, 415, 422, 503));
  }

  @Bean
  OperationDescription describeGetOutcomes() {
    return new OperationDescription(
        "getOutcomes",
        TAG,
        "Get the ends of a list again",
        "As createOutcomes answered.",
        List.of(SharedTexts.id("outcomesId", "The list's id.", "out-…")),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The ends.", OutcomeShapes.DOCUMENT, OutcomeListController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  private static ParameterText place(String name, String text, String example) {
    return new ParameterText(name, true, NumberShape.between(0, 1e18), text, example);
  }

  private static ParameterText patterns() {
    return ParameterText.optional(
        "patterns",
        new FlagShape(),
        "true: every end has its pattern, for print and for eyes that do not tell the colours.",
        "false");
  }

  private static ParameterText look() {
    return ParameterText.optional(
        "look",
        NumberShape.count(1, 1_000_000),
        "No effect: the revision of the pictures, in addresses that are kept for ever.",
        "1");
  }

  /** The window in an address. */
  static List<ParameterText> window() {
    return List.of(
        ParameterText.optional("x", BasinShapes.PLACE, "Middle of the window; 0.", "0"),
        ParameterText.optional("y", BasinShapes.PLACE, "Middle of the window; 0.", "0"),
        ParameterText.optional(
            "halfWidth",
            BasinShapes.HALF_WIDTH,
            "Half of the window's side; the magnets with a margin if left out.",
            "2"));
  }

  private static List<ParameterText> sized() {
    NumberShape side = NumberShape.count(BasinQuery.LEAST_SIDE, BasinQuery.GREATEST_SIDE);
    return List.of(
        ParameterText.optional("width", side, "Width in pixels; 512.", "512"),
        ParameterText.optional("height", side, "Height in pixels; the width.", "512"),
        patterns(),
        look());
  }

  private static OperationDescription reading(
      String operationId,
      String summary,
      String description,
      List<ParameterText> parameters,
      RecordShape shape,
      List<Representation> forms) {
    List<ParameterText> all = new ArrayList<>();
    all.add(SharedTexts.id("basinId", "The map's id, as createBasin gave it.", "bas-…"));
    all.addAll(parameters);
    return new OperationDescription(
        operationId,
        TAG,
        summary,
        description,
        all,
        Optional.empty(),
        List.of(new AnswerText(200, "The answer.", shape, forms), PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  @Bean
  AddressedPart basinPart(LayoutBasinController controller) {
    return new AddressedPart("/v1/layouts/{id}/basin", controller::asked);
  }

  @Bean
  AddressedPart legendPart(BasinPictureController controller) {
    return new AddressedPart("/v1/basins/{id}/legend", controller::legendAsked);
  }
}
