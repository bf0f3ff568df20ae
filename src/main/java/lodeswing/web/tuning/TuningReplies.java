package lodeswing.web.tuning;

import java.nio.charset.StandardCharsets;
import lodeswing.render.png.PngWriter;
import lodeswing.render.svg.SvgWriter;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** A tuning in each of its forms. */
final class TuningReplies {

  private static final int USUAL_WIDTH = 1_200;
  private static final int LONGEST_NAME = 200;

  /** Width of a picture in pixels. */
  static final Parameter<Integer> PIXELS =
      Parameter.integer("pixels", PngWriter.LEAST_WIDTH, PngWriter.GREATEST_WIDTH)
          .orElse(USUAL_WIDTH);

  /** Which of the layouts a picture shows. */
  static final Parameter<Integer> RANK =
      Parameter.integer("rank", 1, TuningShapes.MOST_ANSWERS).orElse(1);

  /** The value for a cell. */
  static final Parameter<TuningValue> VALUE =
      Parameter.constant("value", TuningValue.class, TuningValue::word);

  /** The label that a chance is asked of. */
  static final Parameter<String> LABEL = Parameter.text("label", LONGEST_NAME);

  /** Which table. */
  static final Parameter<String> TABLE = Parameter.oneOf("table", "odds", "moves").orElse("odds");

  private TuningReplies() {}

  /** The answer in a form; {@code query} must know the parameters of this class that it needs. */
  static Reply of(
      Representation form, TuningRequest request, byte[] result, QueryParameters query) {
    var answers = new TuningAnswers(request, StoredTuning.read(result));
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(query.get(TABLE), TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG ->
          Reply.of(
              form,
              SvgWriter.write(answers.plate(query.get(RANK))).getBytes(StandardCharsets.UTF_8));
      case PNG ->
          Reply.of(form, PngWriter.write(answers.plate(query.get(RANK)), query.get(PIXELS)));
      default -> Reply.ofResult(form, answers.json(), request.revision());
    };
  }

  private static Reply text(TuningAnswers answers, QueryParameters query) {
    TuningValue asked = query.find(VALUE).orElse(TuningValue.SENTENCE);
    String value = answers.value(asked, query.find(LABEL));
    return asked.inWords() ? Reply.ofWords(value) : Reply.ofFigure(value, query);
  }
}
