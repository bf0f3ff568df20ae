package lodeswing.web.openapi;

import java.util.List;
import java.util.Optional;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.representation.Representation;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations about the service itself say: limits, problems, jobs. */
@Configuration(proxyBeanMethods = false)
class ServiceOperations {
  private static final String TAG = "Service";
  private static final Shape ANY_TEXT = new TextShape(10_000);
  private static final List<Representation> DOCUMENT =
      List.of(Representation.JSON, Representation.CBOR);
  private static final List<Representation> PAGE =
      List.of(Representation.JSON, Representation.HTML);

  private static final ObjectShape PROBLEM_PAGE =
      ObjectShape.named("ProblemPage", "What a kind of problem means and what helps.")
          .open()
          .required("code", ANY_TEXT, "The word in code and at the end of type.")
          .required("status", NumberShape.count(400, 599), "HTTP status.")
          .required("title", ANY_TEXT, "Short title.")
          .required("type", ANY_TEXT, "The address of this page.")
          .required("meaning", ANY_TEXT, "What it means.")
          .required("remedy", ANY_TEXT, "What helps.")
          .build();

  private static final ObjectShape PROBLEM_PAGES =
      ObjectShape.named("ProblemPages", "Every kind of problem.")
          .open()
          .required("problems", new ListShape(PROBLEM_PAGE, 0, 100), "One for each.")
          .build();

  private static final ObjectShape LIMITS =
      ObjectShape.named("Limits", "Every limit of the service.")
          .open()
          .required(
              "limits",
              new ListShape(
                  ObjectShape.named("Limit", "One limit.")
                      .open()
                      .required("name", ANY_TEXT, "Its name.")
                      .required("value", NumberShape.between(0, 1e18), "The limit.")
                      .required("unit", ANY_TEXT, "What is counted.")
                      .required("meaning", ANY_TEXT, "What it means.")
                      .build(),
                  0,
                  100),
              "One for each.")
          .build();

  @Bean
  OperationDescription describeGetLimits() {
    return reading(
        "getLimits",
        "State every limit",
        "Each limit with its unit.",
        List.of(),
        ok(LIMITS, DOCUMENT));
  }

  @Bean
  OperationDescription describeListProblems() {
    return reading(
        "listProblems",
        "List every kind of problem",
        "What the type of a problem document leads to, all on one page.",
        List.of(),
        ok(PROBLEM_PAGES, PAGE));
  }

  @Bean
  OperationDescription describeGetProblem() {
    return reading(
        "getProblem",
        "Explain a kind of problem",
        "What it means and what helps.",
        List.of(
            new ParameterText(
                "code", true, new TextShape(60), "The problem's code.", "invalid-request")),
        ok(PROBLEM_PAGE, PAGE));
  }

  @Bean
  OperationDescription describeGetJob() {
    return new OperationDescription(
            "getJob",
            TAG,
            "Get a job",
            "How far a computation is, and where its result will be.",
            List.of(jobId()),
            Optional.empty(),
            List.of(ok(PendingAnswer.JOB, DOCUMENT)),
            List.of(404, 412))
        .ofTheMoment()
        .ofNoLayout();
  }

  @Bean
  OperationDescription describeCancelJob() {
    return new OperationDescription(
            "cancelJob",
            TAG,
            "Cancel a job",
            "Ends a computation that has not ended: nothing of it is kept, whoever waits for it gets the"
                + " problem job-cancelled, and asking again computes it anew. Answers the job as it"
                + " stands; one that has ended stays as it is. A job that several asked for ends"
                + " when the last of them has withdrawn by its cancelUrl. One that another computation"
                + " waits for goes on: 409 with the problem job-needed.",
            List.of(
                jobId(),
                ParameterText.optional(
                    "ask",
                    new TextShape(40),
                    "Which asking is withdrawn, as in cancelUrl; needed where several asked.",
                    "ask-1")),
            Optional.empty(),
            List.of(ok(PendingAnswer.JOB, DOCUMENT)),
            List.of(404, 409))
        .ofNoLayout();
  }

  @Bean
  OperationDescription describeStreamJob() {
    return new OperationDescription(
            "streamJob",
            TAG,
            "Follow a job",
            "Server-sent events: the job as it stands, whenever that changes, until it has ended. The"
                + " event's name is the state, its data the job as JSON. With Last-Event-ID only what"
                + " that event did not tell yet; 204 where it told the end.",
            List.of(jobId()),
            Optional.empty(),
            List.of(
                ok(PendingAnswer.JOB, List.of(Representation.EVENTS)),
                new AnswerText(204, "Last-Event-ID names the end.", List.of(), List.of())),
            List.of(404))
        .ofTheMoment()
        .ofNoLayout();
  }

  private static AnswerText ok(ObjectShape answer, List<Representation> forms) {
    return new AnswerText(200, "The answer.", answer, forms);
  }

  private static OperationDescription reading(
      String operationId,
      String summary,
      String description,
      List<ParameterText> parameters,
      AnswerText answer) {
    return new OperationDescription(
            operationId,
            TAG,
            summary,
            description,
            parameters,
            Optional.empty(),
            List.of(answer),
            parameters.isEmpty() ? List.of() : List.of(404))
        .ofNoLayout();
  }

  private static ParameterText jobId() {
    return SharedTexts.id("jobId", "The job's id.", "job-1");
  }
}
