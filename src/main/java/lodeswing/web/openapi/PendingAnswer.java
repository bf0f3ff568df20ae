package lodeswing.web.openapi;

import java.util.List;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.representation.Representation;

/** The answer of every operation whose result may take longer than a client waits. */
public final class PendingAnswer {
  private static final Shape TEXT = new TextShape(10_000);

  static final ObjectShape JOB =
      ObjectShape.named("Job", "A computation that outlives its request.")
          .open()
          .required("jobId", TEXT, "Its id.")
          .required("kind", TEXT, "The resource its result belongs to.")
          .required("state", TEXT, "waiting, running, done, failed or cancelled.")
          .required("progress", NumberShape.between(0, 1), "Fraction done.")
          .optional(
              "remainingS",
              NumberShape.between(0, 1e9),
              "Seconds of work that remain: an estimate, from its cost first, then from its progress.")
          .required("submittedAt", TEXT, "When it was asked for (RFC 3339).")
          .optional("startedAt", TEXT, "When work on it began.")
          .optional("finishedAt", TEXT, "When it ended.")
          .required("resultUrl", TEXT, "Where the result is or will be.")
          .optional(
              "cancelUrl",
              TEXT,
              "Where DELETE withdraws this asking; the job ends when the last one has withdrawn.")
          .build();

  /** 202 with the job that computes. */
  public static final AnswerText ACCEPTED =
      new AnswerText(
          202,
          "Still being computed; Location names the job and Retry-After says when to come back.",
          JOB,
          List.of(Representation.JSON, Representation.TEXT));

  private PendingAnswer() {}
}
