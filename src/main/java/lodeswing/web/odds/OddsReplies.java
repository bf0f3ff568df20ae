package lodeswing.web.odds;

import java.nio.charset.StandardCharsets;
import lodeswing.render.png.PngWriter;
import lodeswing.render.svg.SvgWriter;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** Odds in each of their forms. */
final class OddsReplies {

  private static final int USUAL_WIDTH = 1_200;
  private static final int LONGEST_NAME = 200;

  /** Width of a picture in pixels. */
  static final Parameter<Integer> PIXELS =
      Parameter.integer("pixels", PngWriter.LEAST_WIDTH, PngWriter.GREATEST_WIDTH)
          .orElse(USUAL_WIDTH);

  /** The value for a cell. */
  static final Parameter<OddsValue> VALUE =
      Parameter.constant("value", OddsValue.class, OddsValue::word);

  /** The end that a chance is asked of. */
  static final Parameter<String> OUTCOME = Parameter.text("outcome", LONGEST_NAME);

  private OddsReplies() {}

  /** The answer in a form; {@code query} must know the parameters of this class that it needs. */
  static Reply of(Representation form, OddsRequest request, byte[] result, QueryParameters query) {
    var answers = new OddsAnswers(request, result);
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG -> Reply.of(form, SvgWriter.write(answers.bars()).getBytes(StandardCharsets.UTF_8));
      case PNG -> Reply.of(form, PngWriter.write(answers.bars(), query.get(PIXELS)));
      default -> Reply.ofResult(form, answers.json(), request.revision());
    };
  }

  /** The single value. */
  private static Reply text(OddsAnswers answers, QueryParameters query) {
    OddsValue asked = query.find(VALUE).orElse(OddsValue.SENTENCE);
    String value = answers.value(asked, query.find(OUTCOME));
    return asked.inWords() || !Character.isDigit(value.charAt(0))
        ? Reply.ofWords(value)
        : Reply.ofFigure(value, query);
  }
}
