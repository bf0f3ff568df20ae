package lodeswing.web.twins;

import java.nio.charset.StandardCharsets;
import lodeswing.figure.Drawing;
import lodeswing.render.png.PngWriter;
import lodeswing.render.svg.SvgWriter;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** Twins in each of their forms. */
final class TwinsReplies {

  private static final int USUAL_WIDTH = 1_200;

  /** Width of a picture in pixels. */
  static final Parameter<Integer> WIDTH =
      Parameter.integer("width", PngWriter.LEAST_WIDTH, PngWriter.GREATEST_WIDTH)
          .orElse(USUAL_WIDTH);

  /** The value for a cell. */
  static final Parameter<TwinsValue> VALUE =
      Parameter.constant("value", TwinsValue.class, TwinsValue::word);

  /** Which picture. */
  enum Picture {
    PATHS("paths"),
    SEPARATION("separation");

    private final String word;

    Picture(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  private TwinsReplies() {}

  /** The answer in a form; {@code query} must know {@link #WIDTH} for a picture. */
  static Reply of(
      Representation form,
      TwinsRequest request,
      byte[] result,
      Picture picture,
      QueryParameters query) {
    var answers = new TwinsAnswers(request, result);
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG ->
          Reply.of(
              form,
              SvgWriter.write(drawing(request, answers, picture)).getBytes(StandardCharsets.UTF_8));
      case PNG ->
          Reply.of(form, PngWriter.write(drawing(request, answers, picture), query.get(WIDTH)));
      default -> Reply.ofResult(form, answers.json(), request.revision());
    };
  }

  private static Drawing drawing(TwinsRequest request, TwinsAnswers answers, Picture picture) {
    var pictures = new TwinsPictures(request, answers);
    return picture == Picture.PATHS ? pictures.paths() : pictures.separation();
  }

  /** The single value. */
  private static Reply text(TwinsAnswers answers, QueryParameters query) {
    TwinsValue asked = query.find(VALUE).orElse(TwinsValue.SENTENCE);
    String value = answers.value(asked);
    return TwinsAnswers.isFigure(asked, value)
        ? Reply.ofFigure(value, query)
        : Reply.ofWords(value);
  }
}
