package lodeswing.web.trace;

import lodeswing.figure.Drawing;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** A trace in each of its forms. */
final class TraceReplies {

  /** The value for a cell. */
  static final Parameter<TraceValue> VALUE =
      Parameter.constant("value", TraceValue.class, TraceValue::word);

  private TraceReplies() {}

  /** Writes answers in a form; {@code query} knows the parameters of this class that it needs. */
  static PostedAnswers.Writer<TraceRequest> writer(Representation form, QueryParameters query) {
    return (asked, result) -> of(form, asked, result.bytes(), query);
  }

  private static Reply of(
      Representation form, TraceRequest asked, byte[] result, QueryParameters query) {
    var answers = new TraceAnswers(asked, result);
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG, PNG -> DrawnReply.of(form, drawing(asked, answers), query);
      default -> Reply.ofResult(form, answers.json(), asked.revision());
    };
  }

  /** Writes the outcome alone in a form. */
  static PostedAnswers.Writer<TraceRequest> outcomeWriter(
      Representation form, QueryParameters query) {
    return (asked, result) -> ofOutcome(form, asked, result.bytes(), query);
  }

  private static Reply ofOutcome(
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
