package lodeswing.web.trace;

import java.nio.charset.StandardCharsets;
import lodeswing.figure.Drawing;
import lodeswing.render.png.PngWriter;
import lodeswing.render.svg.SvgWriter;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** A trace in each of its forms. */
final class TraceReplies {

  private static final int USUAL_WIDTH = 1_200;

  /** Width of a picture in pixels. */
  static final Parameter<Integer> WIDTH =
      Parameter.integer("width", PngWriter.LEAST_WIDTH, PngWriter.GREATEST_WIDTH)
          .orElse(USUAL_WIDTH);

  /** The value for a cell. */
  static final Parameter<TraceValue> VALUE =
      Parameter.constant("value", TraceValue.class, TraceValue::word);

  private TraceReplies() {}

  /** The answer in a form; {@code query} must know {@link #WIDTH} for a picture. */
  static Reply of(Representation form, TraceRequest request, byte[] result, QueryParameters query) {
    var answers = new TraceAnswers(request, result);
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG ->
          Reply.of(
              form, SvgWriter.write(drawing(request, answers)).getBytes(StandardCharsets.UTF_8));
      case PNG -> Reply.of(form, PngWriter.write(drawing(request, answers), query.get(WIDTH)));
      default -> Reply.ofResult(form, answers.json(), request.revision());
    };
  }

  /** The outcome alone in a form. */
  static Reply ofOutcome(
      Representation form, TraceRequest request, byte[] result, QueryParameters query) {
    var answers = new TraceAnswers(request, result);
    return switch (form) {
      case CSV -> Reply.of(form, answers.outcomeCsv(TableDialect.of(query)));
      case TEXT -> text(answers, query);
      default -> Reply.ofJson(form, answers.outcomeJson());
    };
  }

  private static Drawing drawing(TraceRequest request, TraceAnswers answers) {
    return new TracePicture(request, answers).drawing();
  }

  /** The single value. */
  private static Reply text(TraceAnswers answers, QueryParameters query) {
    TraceValue asked = query.find(VALUE).orElse(TraceValue.OUTCOME);
    String value = answers.value(asked);
    return asked.inWords() || value.isEmpty() || !Character.isDigit(value.charAt(0))
        ? Reply.ofWords(value)
        : Reply.ofFigure(value, query);
  }
}
