package lodeswing.web.sweep;

import java.nio.charset.StandardCharsets;
import lodeswing.figure.Drawing;
import lodeswing.render.png.PngWriter;
import lodeswing.render.svg.SvgWriter;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** Sweeps in each of their forms. */
final class SweepReplies {

  private static final int USUAL_WIDTH = 1_200;
  private static final int LONGEST_NAME = 300;

  /** Width of a picture in pixels. */
  static final Parameter<Integer> PIXELS =
      Parameter.integer("pixels", PngWriter.LEAST_WIDTH, PngWriter.GREATEST_WIDTH)
          .orElse(USUAL_WIDTH);

  /** The value for a cell. */
  static final Parameter<SweepValue> VALUE =
      Parameter.constant("value", SweepValue.class, SweepValue::word);

  /** The column that a value or a picture is of. */
  static final Parameter<String> COLUMN = Parameter.text("column", LONGEST_NAME);

  /** The row of a cell, from 1. */
  static final Parameter<Integer> ROW =
      Parameter.integer("row", 1, SweepShapes.MOST_VALUES).orElse(1);

  private SweepReplies() {}

  /** The answer in a form; {@code query} must know the parameters of this class that it needs. */
  static Reply of(Representation form, SweepRequest request, byte[] result, QueryParameters query) {
    var answers = new SweepAnswers(request, result);
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG ->
          Reply.of(form, SvgWriter.write(plot(answers, query)).getBytes(StandardCharsets.UTF_8));
      case PNG -> Reply.of(form, PngWriter.write(plot(answers, query), query.get(PIXELS)));
      default -> Reply.ofResult(form, answers.json(), request.revision());
    };
  }

  private static Drawing plot(SweepAnswers answers, QueryParameters query) {
    return new SweepPlot(answers).drawing(query.find(COLUMN));
  }

  private static Reply text(SweepAnswers answers, QueryParameters query) {
    SweepValue asked = query.find(VALUE).orElse(SweepValue.SENTENCE);
    Object value = answers.value(asked, answers.column(query.find(COLUMN)), query.get(ROW));
    return value instanceof Double number
        ? Reply.ofFigure(SweepAnswers.shown(number), query)
        : Reply.ofWords(value.toString());
  }
}
