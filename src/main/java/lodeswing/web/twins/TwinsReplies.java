package lodeswing.web.twins;

import lodeswing.figure.Drawing;
import lodeswing.web.posted.PostedAnswers;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** Twins in each of their forms. */
final class TwinsReplies {

  /** The value for a cell. */
  static final Parameter<TwinsValue> VALUE =
      Parameter.constant("value", TwinsValue.class, TwinsValue::word);

  /** Which picture. */
  enum Picture {
    PATHS("paths"),
    SEPARATION("separation");

    private final String word;

    Picture(String word) {
      this.word = word;
    }

    String word() {
      return word;
    }
  }

  private TwinsReplies() {}

  /** Writes answers in a form; {@code query} knows the parameters of this class that it needs. */
  static PostedAnswers.Writer<TwinsRequest> writer(
      Representation form, Picture picture, QueryParameters query) {
    return (asked, result) -> of(form, asked, result.bytes(), picture, query);
  }

  private static Reply of(
      Representation form,
      TwinsRequest asked,
      byte[] result,
      Picture picture,
      QueryParameters query) {
    var answers = new TwinsAnswers(asked, result);
    return switch (form) {
      case CSV -> Reply.of(form, answers.csv(TableDialect.of(query)));
      case TEXT -> text(answers, query);
      case SVG, PNG -> DrawnReply.of(form, drawing(asked, answers, picture), query);
      default -> Reply.ofResult(form, answers.json(), asked.revision());
    };
  }

  private static Drawing drawing(TwinsRequest request, TwinsAnswers answers, Picture picture) {
    var pictures = new TwinsPictures(request, answers);
    return picture == Picture.PATHS ? pictures.paths() : pictures.separation();
  }

  /** The single value. */
  private static Reply text(TwinsAnswers answers, QueryParameters query) {
    TwinsValue asked = query.find(VALUE).orElse(TwinsValue.SENTENCE);
    String value = answers.value(asked);
    return TwinsAnswers.isFigure(asked, value)
        ? Reply.ofFigure(value, query)
        : Reply.ofWords(value);
  }
}
