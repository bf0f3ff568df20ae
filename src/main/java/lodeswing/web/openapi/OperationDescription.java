package lodeswing.web.openapi;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.body.RecordShape;
import lodeswing.web.body.Shape;
import lodeswing.web.representation.Representation;

/**
 * What an operation says about itself; a bean of this type for each controller method.
 *
 * @param operationId the controller method's name: verb and noun
 * @param tag the resource it belongs to
 * @param summary one line
 * @param description more, in plain words
 * @param parameters its own query and path parameters
 * @param request the body it takes, if any
 * @param answers what it answers when all goes well
 * @param problems the statuses of the problems it can answer with
 * @param keepable whether others may keep what it reads, so that its parts can be asked for (RFC
 *     9110, section 14)
 * @param ofLayout whether it answers for a layout, so that its documents carry the layout's
 *     warnings and all its answers link to the safety notes
 */
public record OperationDescription(
    String operationId,
    String tag,
    String summary,
    String description,
    List<ParameterText> parameters,
    Optional<RequestText> request,
    List<AnswerText> answers,
    List<Integer> problems,
    boolean keepable,
    boolean ofLayout) {

  /** An operation that answers for a layout; what it reads, if it reads, may be kept. */
  public OperationDescription(
      String operationId,
      String tag,
      String summary,
      String description,
      List<ParameterText> parameters,
      Optional<RequestText> request,
      List<AnswerText> answers,
      List<Integer> problems) {
    this(
        operationId, tag, summary, description, parameters, request, answers, problems, true, true);
  }

  public OperationDescription {
    parameters = List.copyOf(parameters);
    answers = List.copyOf(answers);
    problems = List.copyOf(problems);
  }

  /** The same operation, whose answer holds for the moment only. */
  public OperationDescription ofTheMoment() {
    return with(false, ofLayout);
  }

  /** The same operation, which answers for no layout. */
  public OperationDescription ofNoLayout() {
    return with(keepable, false);
  }

  private OperationDescription with(boolean keeping, boolean layout) {
    return new OperationDescription(
        operationId,
        tag,
        summary,
        description,
        parameters,
        request,
        answers,
        problems,
        keeping,
        layout);
  }

  /**
   * A parameter.
   *
   * @param name its name
   * @param inPath whether it is part of the path
   * @param shape what it takes
   * @param text what it means
   * @param example a value that works
   * @param required whether nothing is answered without it
   */
  public record ParameterText(
      String name, boolean inPath, Shape shape, String text, String example, boolean required) {

    /** A parameter that is required only as part of the path. */
    public ParameterText(String name, boolean inPath, Shape shape, String text, String example) {
      this(name, inPath, shape, text, example, inPath);
    }

    /** A parameter of the query that may be left out. */
    public static ParameterText optional(String name, Shape shape, String text, String example) {
      return new ParameterText(name, false, shape, text, example);
    }

    /** A parameter of the query without which nothing is answered. */
    public static ParameterText needed(String name, Shape shape, String text, String example) {
      return new ParameterText(name, false, shape, text, example, true);
    }
  }

  /**
   * A body.
   *
   * @param shape what is accepted
   * @param examples worked examples by name; each can be posted as it is
   * @param table a CSV table that says the same, where one is taken too
   */
  public record RequestText(RecordShape shape, Map<String, Body> examples, Optional<String> table) {

    /** A body in JSON alone. */
    public RequestText(RecordShape shape, Map<String, Body> examples) {
      this(shape, examples, Optional.empty());
    }
  }

  /**
   * An answer.
   *
   * @param status HTTP status
   * @param text when it is given
   * @param shapes the JSON document; more than one where the request chooses
   * @param forms the forms in which it comes
   */
  public record AnswerText(
      int status, String text, List<RecordShape> shapes, List<Representation> forms) {

    /** An answer whose document is always of one shape. */
    public AnswerText(int status, String text, RecordShape shape, List<Representation> forms) {
      this(status, text, List.of(shape), forms);
    }

    public AnswerText {
      shapes = List.copyOf(shapes);
      forms = List.copyOf(forms);
    }
  }
}
