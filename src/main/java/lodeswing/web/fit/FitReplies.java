package lodeswing.web.fit;

import java.util.List;
import java.util.Optional;
import lodeswing.web.body.NearestName;
import lodeswing.web.body.Numbers;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** A fit in each of its forms. */
final class FitReplies {

  private static final int LONGEST_NAME = 80;

  /** The value for a cell. */
  static final Parameter<FitValue> VALUE =
      Parameter.constant("value", FitValue.class, FitValue::word);

  /** The quantity that a value is of. */
  static final Parameter<String> PARAMETER = Parameter.text("parameter", LONGEST_NAME);

  private FitReplies() {}

  /** Writes answers in a form; {@code query} knows the parameters of this class that it needs. */
  static PostedAnswers.Writer<FitRequest> writer(Representation form, QueryParameters query) {
    return (asked, result) -> of(form, asked, result.bytes(), query);
  }

  private static Reply of(
      Representation form, FitRequest asked, byte[] result, QueryParameters query) {
    var answers = new FitAnswers(asked, result);
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG, PNG -> DrawnReply.of(form, new FitPicture(asked, answers).paths(), query);
      default -> Reply.ofResult(form, answers.json(), asked.revision());
    };
  }

  private static Reply text(FitAnswers answers, QueryParameters query) {
    FitValue value = query.find(VALUE).orElse(FitValue.SENTENCE);
    String quantity = value.ofQuantity() ? quantity(answers, query.find(PARAMETER)) : "";
    Object written = answers.value(value, quantity);
    return written instanceof Double number
        ? Reply.ofFigure(Numbers.shortest(number), query)
        : Reply.ofWords(written.toString());
  }

  private static String quantity(FitAnswers answers, Optional<String> asked) {
    String among = "must be one of what was sought: " + String.join(", ", answers.found().sought());
    if (asked.isEmpty()) {
      throw refused("is missing; " + among);
    }
    if (!answers.found().sought().contains(asked.get())) {
      throw refused(
          NearestName.find(asked.get(), answers.found().sought())
              .map(near -> "was not sought; did you mean " + near + "?")
              .orElse(among));
    }
    return asked.get();
  }

  private static ProblemException refused(String detail) {
    return new ProblemException(
        ProblemCode.INVALID_REQUEST,
        "The value is of a quantity.",
        List.of(new Fault("?parameter", detail)));
  }
}
