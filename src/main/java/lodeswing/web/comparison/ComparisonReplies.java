package lodeswing.web.comparison;

import lodeswing.web.body.Numbers;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** A comparison in each of its forms. */
final class ComparisonReplies {

  /** Both paths over the plate, below the address of a comparison. */
  static final String PATHS = "/paths";

  /** Their distance over time, below the address of a comparison. */
  static final String DISTANCE = "/distance";

  /** The value for a cell. */
  static final Parameter<ComparisonValue> VALUE =
      Parameter.constant("value", ComparisonValue.class, ComparisonValue::word);

  private ComparisonReplies() {}

  /**
   * Writes answers in a form; {@code query} knows the parameters of this class that it needs.
   *
   * @param part what stands below the comparison's address
   */
  static PostedAnswers.Writer<ComparisonRequest> writer(
      Representation form, String part, QueryParameters query) {
    return (asked, result) -> of(form, part, asked, result.bytes(), query);
  }

  private static Reply of(
      Representation form,
      String part,
      ComparisonRequest asked,
      byte[] result,
      QueryParameters query) {
    var answers = new ComparisonAnswers(asked, result);
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG, PNG -> {
        var pictures = new ComparisonPictures(asked, answers);
        yield DrawnReply.of(
            form, part.equals(PATHS) ? pictures.paths() : pictures.distance(), query);
      }
      default -> Reply.ofResult(form, answers.json(), asked.revision());
    };
  }

  private static Reply text(ComparisonAnswers answers, QueryParameters query) {
    Object written = answers.value(query.find(VALUE).orElse(ComparisonValue.SENTENCE));
    return written instanceof Double number
        ? Reply.ofFigure(Numbers.shortest(number), query)
        : Reply.ofWords(written.toString());
  }
}
