package lodeswing.web.odds;

import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** Odds in each of their forms. */
final class OddsReplies {

  private static final int LONGEST_NAME = 200;

  /** The value for a cell. */
  static final Parameter<OddsValue> VALUE =
      Parameter.constant("value", OddsValue.class, OddsValue::word);

  /** The end that a chance is asked of. */
  static final Parameter<String> OUTCOME = Parameter.text("outcome", LONGEST_NAME);

  private OddsReplies() {}

  /** Writes answers in a form; {@code query} knows the parameters of this class that it needs. */
  static PostedAnswers.Writer<OddsRequest> writer(
      Representation form, QueryParameters query, LayoutPlace place) {
    return (asked, result) -> of(form, new OddsAnswers(asked, result.bytes(), place), asked, query);
  }

  private static Reply of(
      Representation form, OddsAnswers answers, OddsRequest asked, QueryParameters query) {
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG, PNG -> DrawnReply.of(form, answers.bars(), query);
      default -> Reply.ofResult(form, answers.json(), asked.revision());
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
