package lodeswing.web.sweep;

import lodeswing.figure.Drawing;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** Sweeps in each of their forms. */
final class SweepReplies {

  private static final int LONGEST_NAME = 300;

  /** The value for a cell. */
  static final Parameter<SweepValue> VALUE =
      Parameter.constant("value", SweepValue.class, SweepValue::word);

  /** The column that a value or a picture is of. */
  static final Parameter<String> COLUMN = Parameter.text("column", LONGEST_NAME);

  /** The row of a cell, from 1. */
  static final Parameter<Integer> ROW =
      Parameter.integer("row", 1, SweepShapes.MOST_VALUES).orElse(1);

  private SweepReplies() {}

  /** Writes answers in a form; {@code query} knows the parameters of this class that it needs. */
  static PostedAnswers.Writer<SweepRequest> writer(Representation form, QueryParameters query) {
    return (asked, result) -> of(form, asked, result.bytes(), query);
  }

  private static Reply of(
      Representation form, SweepRequest asked, byte[] result, QueryParameters query) {
    var answers = new SweepAnswers(asked, result);
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG, PNG -> DrawnReply.of(form, plot(answers, query), query);
      default -> Reply.ofResult(form, answers.json(), asked.revision());
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
