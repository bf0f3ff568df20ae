package lodeswing.web.representation;

import java.nio.charset.StandardCharsets;
import lodeswing.figure.Drawing;
import lodeswing.render.png.PngWriter;
import lodeswing.render.svg.SvgWriter;

/** Answers with a drawing: as SVG, or as PNG of a width that the query may state. */
public final class DrawnReply {

  /** Width of a PNG that the query leaves open [px]. */
  public static final int USUAL_WIDTH = 1_200;

  /** Width of a PNG [px]. */
  public static final Parameter<Integer> PIXELS = pixels(USUAL_WIDTH);

  private DrawnReply() {}

  /** The width of a PNG where the usual one is another [px]. */
  public static Parameter<Integer> pixels(int usual) {
    return Parameter.integer("pixels", PngWriter.LEAST_WIDTH, PngWriter.GREATEST_WIDTH)
        .orElse(usual);
  }

  /** The answer; {@code query} knows {@link #PIXELS}. */
  public static Reply of(Representation form, Drawing drawing, QueryParameters query) {
    return of(form, drawing, query.get(PIXELS));
  }

  /**
   * The answer.
   *
   * @param pixels width of a PNG [px]
   * @throws IllegalArgumentException if the form is not one of a drawing
   */
  public static Reply of(Representation form, Drawing drawing, int pixels) {
    return switch (form) {
      case SVG -> Reply.of(form, SvgWriter.write(drawing).getBytes(StandardCharsets.UTF_8));
      case PNG -> Reply.of(form, PngWriter.write(drawing, pixels));
      default -> throw new IllegalArgumentException(form + " is not drawn");
    };
  }
}
