package lodeswing.web.problem;

import java.util.Arrays;
import java.util.Optional;

/** Every kind of problem the service answers with; each has a page under /problems/. */
public enum ProblemCode {
  MALFORMED_BODY(
      "malformed-body",
      400,
      "The body cannot be read",
      "The body is not what its Content-Type says, or is cut short.",
      "Check the body with a JSON checker; the detail tells the place where reading stopped."),
  INVALID_REQUEST(
      "invalid-request",
      400,
      "The request has faults",
      "The request can be read, but some of its values are missing, given twice, unknown or out of"
          + " range.",
      "Mend every entry of errors: its pointer names the place, its detail says what is accepted."),
  UNKNOWN_PARAMETER(
      "unknown-parameter",
      400,
      "The query has a parameter that is not known",
      "The address has a query parameter that this resource does not know.",
      "Correct the name to the nearest one that the detail gives, or leave the parameter out."),
  IMPOSSIBLE_LAYOUT(
      "impossible-layout",
      422,
      "The layout cannot be built",
      "The layout is well formed, but nobody could build it: parts overlap or nothing can swing.",
      "Change the figures that errors names; each says by how much."),
  IMPOSSIBLE_RELEASE(
      "impossible-release",
      422,
      "The bob cannot be released there",
      "The bob cannot be held at the place the release names, or would touch something there.",
      "Release the bob nearer to the middle, or make the gap larger."),
  UNREACHABLE_RATIO(
      "unreachable-ratio",
      422,
      "No suspension of this kind gives that ratio",
      "The two periods of the rig cannot be brought into the ratio that was asked for.",
      "Ask for a ratio within the range that the detail names, or change the kind of suspension."),
  NOT_IN_THIS_MODEL(
      "not-in-this-model",
      422,
      "The layout's model has no such quantity",
      "What was asked for exists on a bench, in true units, and not in the plane idealisation.",
      "Ask for it of a bench layout; GET /v1/sample-layouts names some."),
  OWNER_NEEDED(
      "owner-needed",
      422,
      "A private layout needs an owner",
      "What is private belongs to whoever stores it, and the request does not tell who that is.",
      "Send a key or token of the service, or leave visibility out; an open service has no owners."),
  TOO_COSTLY(
      "too-costly",
      422,
      "The request asks for too much work",
      "The work was estimated before it was begun and is over a limit.",
      "Lower the figure that the detail names to the value it gives; /v1/limits has every limit."),
  NOT_FOUND(
      "not-found",
      404,
      "There is nothing here",
      "The address is not one of the service's, or names something that is not stored here.",
      "Check the address; store a layout again if its id is not known any more."),
  METHOD_NOT_ALLOWED(
      "method-not-allowed",
      405,
      "This method is not offered here",
      "The address exists, but not with this HTTP method.",
      "Use one of the methods in the Allow header."),
  NOT_ACCEPTABLE(
      "not-acceptable",
      406,
      "No offered representation is acceptable",
      "The resource does not come in the form that the format parameter or Accept asks for.",
      "Ask for one of the forms that the detail names."),
  PRECONDITION_FAILED(
      "precondition-failed",
      412,
      "The content is another one",
      "If-Match names tags that the content does not have now.",
      "Ask again without If-Match, or with the tag that ETag gives."),
  BODY_TOO_LARGE(
      "body-too-large",
      413,
      "The body is too large",
      "The body has more bytes than the service reads.",
      "Send less at once; /v1/limits states the limit."),
  URI_TOO_LONG(
      "uri-too-long",
      414,
      "The address is too long",
      "The address with its query has more characters than the service reads.",
      "Shorten the query, or send the request as a body by POST."),
  UNSUPPORTED_MEDIA_TYPE(
      "unsupported-media-type",
      415,
      "The body's media type is not read here",
      "The body's Content-Type is not one that this resource reads, or the body is packed.",
      "Send one of the media types that the detail names, say so in Content-Type, and do not pack it."),
  RANGE_NOT_SATISFIABLE(
      "range-not-satisfiable",
      416,
      "The asked range lies outside the content",
      "The Range header asks for bytes that the content does not have.",
      "Ask for a range within the length that Content-Range gives."),
  MALFORMED_REQUEST(
      "malformed-request",
      400,
      "The request is not proper HTTP",
      "The request line, a header or the query cannot be read.",
      "Percent-encode the address (RFC 3986) and check the headers."),
  ORIGIN_NOT_ALLOWED(
      "origin-not-allowed",
      403,
      "Pages of this origin may not ask",
      "The service is set up to answer browser pages of certain origins only.",
      "Ask the service's operator to add the page's origin."),
  FORM_NOT_WRITTEN(
      "form-not-written",
      501,
      "The service does not write this form",
      "The answer exists, but not in the form that the protocol at this address lets clients ask for.",
      "Ask for one of the forms that the detail names."),
  TOO_MANY_REQUESTS(
      "too-many-requests",
      429,
      "This client asks for too much at once",
      "The client has used up its share of computing for the moment.",
      "Wait as many seconds as Retry-After says."),
  SERVICE_BUSY(
      "service-busy",
      503,
      "The service has too much to do",
      "More work is waiting than the service takes in.",
      "Wait as many seconds as Retry-After says and ask again."),
  STORE_AWAY(
      "store-away",
      503,
      "What is stored cannot be reached",
      "The database does not answer at the moment; nothing of the request was lost or kept.",
      "Wait as many seconds as Retry-After says and ask again."),
  PUBLIC_LAYOUT(
      "public-layout",
      409,
      "A public layout is not deleted",
      "A public layout has the same id for everybody who stores it, so nobody's alone can delete it.",
      "Leave it; store what shall be deleted one day with visibility private."),
  JOB_CANCELLED(
      "job-cancelled",
      503,
      "The computation was cancelled",
      "Somebody cancelled the computation of the result before it was there; nothing of it is kept.",
      "Ask again: it is then computed anew."),
  JOB_NEEDED(
      "job-needed",
      409,
      "The job is needed by another",
      "Another computation waits for the result of this job, or several asked for it.",
      "Withdraw by the cancelUrl of the answer that named the job, cancel the job that needs it, or"
          + " let it end."),
  INTERNAL_FAULT(
      "internal-fault",
      500,
      "Something failed inside the service",
      "The service has a fault of its own; the request may be in order.",
      "Tell the service's operator the reference in the detail: the log has more under it.");

  private final String code;
  private final int status;
  private final String title;
  private final String meaning;
  private final String remedy;

  ProblemCode(String code, int status, String title, String meaning, String remedy) {
    this.code = code;
    this.status = status;
    this.title = title;
    this.meaning = meaning;
    this.remedy = remedy;
  }

  /** The kind with a code word. */
  public static Optional<ProblemCode> find(String code) {
    return Arrays.stream(values()).filter(known -> known.code.equals(code)).findFirst();
  }

  /** The word in {@code code} and at the end of {@code type}. */
  public String code() {
    return code;
  }

  /** HTTP status. */
  public int status() {
    return status;
  }

  /** Short title that is the same for every occurrence. */
  public String title() {
    return title;
  }

  /** What it means, in a sentence. */
  public String meaning() {
    return meaning;
  }

  /** How to mend it, in a sentence. */
  public String remedy() {
    return remedy;
  }

  /** The address of its page, without the host. */
  public String type() {
    return "/problems/" + code;
  }
}
