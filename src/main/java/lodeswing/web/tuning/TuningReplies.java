package lodeswing.web.tuning;

import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** A tuning in each of its forms. */
final class TuningReplies {

  private static final int LONGEST_NAME = 200;

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

  /** Writes answers in a form; {@code query} knows the parameters of this class that it needs. */
  static PostedAnswers.Writer<TuningRequest> writer(Representation form, QueryParameters query) {
    return (asked, result) -> of(form, asked, result.bytes(), query);
  }

  private static Reply of(
      Representation form, TuningRequest asked, byte[] result, QueryParameters query) {
    var answers = new TuningAnswers(asked, StoredTuning.read(result));
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(query.get(TABLE), TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG, PNG -> DrawnReply.of(form, answers.plate(query.get(RANK)), query);
      default -> Reply.ofResult(form, answers.json(), asked.revision());
    };
  }

  private static Reply text(TuningAnswers answers, QueryParameters query) {
    TuningValue asked = query.find(VALUE).orElse(TuningValue.SENTENCE);
    String value = answers.value(asked, query.find(LABEL));
    return asked.inWords() ? Reply.ofWords(value) : Reply.ofFigure(value, query);
  }
}
