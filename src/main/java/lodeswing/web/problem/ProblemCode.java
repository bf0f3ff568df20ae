package lodeswing.web.problem;

/** Every kind of problem the service answers with; each has a page under /problems/. */
public enum ProblemCode {
  MALFORMED_BODY("malformed-body", 400, "The body cannot be read"),
  INVALID_REQUEST("invalid-request", 400, "The request has faults"),
  UNKNOWN_PARAMETER("unknown-parameter", 400, "The query has a parameter that is not known"),
  IMPOSSIBLE_LAYOUT("impossible-layout", 422, "The layout cannot be built"),
  IMPOSSIBLE_RELEASE("impossible-release", 422, "The bob cannot be released there"),
  TOO_COSTLY("too-costly", 422, "The request asks for too much work"),
  NOT_FOUND("not-found", 404, "There is nothing here"),
  METHOD_NOT_ALLOWED("method-not-allowed", 405, "This method is not offered here"),
  NOT_ACCEPTABLE("not-acceptable", 406, "No offered representation is acceptable"),
  BODY_TOO_LARGE("body-too-large", 413, "The body is too large"),
  UNSUPPORTED_MEDIA_TYPE("unsupported-media-type", 415, "The body's media type is not read here"),
  SERVICE_BUSY("service-busy", 503, "The service has too much to do"),
  INTERNAL_FAULT("internal-fault", 500, "Something failed inside the service");

  private final String code;
  private final int status;
  private final String title;

  ProblemCode(String code, int status, String title) {
    this.code = code;
    this.status = status;
    this.title = title;
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
}
