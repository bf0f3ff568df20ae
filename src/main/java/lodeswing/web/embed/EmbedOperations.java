package lodeswing.web.embed;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.SharedTexts;
import lodeswing.web.trace.TraceShapes;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations for other sites say about themselves. */
@Configuration(proxyBeanMethods = false)
class EmbedOperations {

  private static final String TAG = "Embedding";
  private static final Shape TEXT = new TextShape(10_000);
  private static final NumberShape PIXELS = NumberShape.count(1, 100_000);

  private static final ObjectShape FILE =
      ObjectShape.named("EmbedFile", "A page or a script.").open().build();

  private static final ObjectShape OEMBED =
      ObjectShape.named("Oembed", "How to embed a page (oEmbed 1.0).")
          .open()
          .required("version", TEXT, "1.0")
          .required("type", TEXT, "rich")
          .required("title", TEXT, "What the figure is called; text of the layout's author.")
          .required("provider_name", TEXT, "The service.")
          .required("provider_url", TEXT, "Its address.")
          .required("cache_age", NumberShape.count(0, 31_536_000), "How long to keep it, seconds.")
          .required("html", TEXT, "The markup to put on the page: a frame.")
          .required("width", PIXELS, "Width of the frame in pixels.")
          .required("height", PIXELS, "Height of the frame in pixels.")
          .optional("thumbnail_url", TEXT, "A picture of the map.")
          .optional("thumbnail_width", PIXELS, "Its width in pixels.")
          .optional("thumbnail_height", PIXELS, "Its height in pixels.")
          .build();

  @Bean
  OperationDescription describeGetFigureScript() {
    return new OperationDescription(
            "getFigureScript",
            TAG,
            "Get the figure's script",
            "A module that makes the element lodeswing-figure: the map of a layout to zoom and pan,"
                + " releases by tap, keyboard or typed places, and their paths in true time. A"
                + " version never changes, so that a page may hold it to its digest (integrity).",
            List.of(SharedTexts.id("version", "A version, counted from 1.", "1")),
            Optional.empty(),
            List.of(new AnswerText(200, "The script.", FILE, EmbedController.SCRIPT)),
            List.of(404))
        .ofNoLayout();
  }

  @Bean
  OperationDescription describeGetEmbedPage(LayoutStore layouts) {
    return page(
        layouts,
        "getEmbedPage",
        "Get the page of a figure",
        "The figure, and the lines to copy into a page of one's own. Without scripts a picture and"
            + " a link. It names its oEmbed answer by Link and link, rel=\"alternate\".");
  }

  @Bean
  OperationDescription describeGetEmbedFrame(LayoutStore layouts) {
    return page(
        layouts,
        "getEmbedFrame",
        "Get the figure alone, to be framed",
        "For sites that take a frame and no script. Who may frame it is set by the operator.");
  }

  @Bean
  OperationDescription describeGetOembed(LayoutStore layouts) {
    return new OperationDescription(
        "getOembed",
        TAG,
        "Tell how to embed a page (oEmbed)",
        "For platforms that are given the address of a page getEmbedPage: markup, size and title,"
            + " as JSON or XML (oEmbed 1.0). Parameters that are not known are passed over here."
            + " url must be of this service; where that is reached by another address than requests"
            + " tell, its operator names it (lodeswing.embed.public-address).",
        List.of(
            ParameterText.needed(
                OembedController.URL.name(),
                new TextShape(2_000),
                "The page's whole address.",
                "https://lodeswing.example/embed/" + example(layouts)),
            ParameterText.optional(
                OembedController.MAX_WIDTH.name(), PIXELS, "Widest frame in pixels.", "640"),
            ParameterText.optional(
                OembedController.MAX_HEIGHT.name(), PIXELS, "Highest frame in pixels.", "960")),
        Optional.empty(),
        List.of(new AnswerText(200, "The answer.", OEMBED, OembedController.OFFERED)),
        List.of(404, 501));
  }

  private static OperationDescription page(
      LayoutStore layouts, String operationId, String summary, String description) {
    return new OperationDescription(
        operationId,
        TAG,
        summary,
        description
            + " x and y are where the bob is first released, x2 and y2 a second release to compare."
            + " In English, German and Spanish. Every figure of the layout may be changed on the"
            + " way, as in getLayoutVariant.",
        Stream.concat(
                Stream.of(SharedTexts.layoutId(example(layouts))),
                Stream.of(ShownReleases.X, ShownReleases.Y, ShownReleases.X2, ShownReleases.Y2)
                    .map(
                        parameter ->
                            ParameterText.optional(
                                parameter.name(),
                                TraceShapes.PLACE,
                                "Place of a release, in the layout's unit of length.",
                                "30")))
            .toList(),
        Optional.empty(),
        List.of(new AnswerText(200, "The page.", FILE, EmbedController.PAGE)),
        List.of(404, 422));
  }

  private static String example(LayoutStore layouts) {
    return layouts.samples().get("three-stations").document().layoutId();
  }
}
