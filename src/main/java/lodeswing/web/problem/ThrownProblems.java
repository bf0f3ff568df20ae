package lodeswing.web.problem;

import java.time.Duration;
import java.util.Collection;
import java.util.List;
import java.util.Map;
import java.util.Objects;
import java.util.TreeSet;
import java.util.UUID;
import java.util.stream.Collectors;
import org.slf4j.Logger;
import org.slf4j.LoggerFactory;
import org.springframework.core.NestedExceptionUtils;
import org.springframework.dao.DataAccessResourceFailureException;
import org.springframework.http.HttpStatusCode;
import org.springframework.http.MediaType;
import org.springframework.http.converter.HttpMessageNotReadableException;
import org.springframework.jdbc.UncategorizedSQLException;
import org.springframework.web.ErrorResponse;
import org.springframework.web.HttpMediaTypeNotAcceptableException;
import org.springframework.web.HttpMediaTypeNotSupportedException;
import org.springframework.web.HttpRequestMethodNotSupportedException;
import tools.jackson.core.JacksonException;

/** Turns whatever was thrown into a problem; the inside of the service stays inside. */
public final class ThrownProblems {

  private static final Logger LOG = LoggerFactory.getLogger(ThrownProblems.class);

  private static final Duration STORE_AWAY_FOR = Duration.ofSeconds(5);

  private ThrownProblems() {}

  /** The problem that an exception stands for; logs it where it is a fault of ours. */
  public static ProblemException of(Throwable thrown) {
    for (Throwable cause = thrown; cause != null; cause = cause.getCause()) {
      if (cause instanceof ProblemException problem) {
        return problem;
      }
      if (cause instanceof DataAccessResourceFailureException) {
        LOG.warn("The database does not answer: {}", cause.getMessage());
        return ProblemException.passing(
            ProblemCode.STORE_AWAY, "The database does not answer.", STORE_AWAY_FOR);
      }
      if (cause instanceof UncategorizedSQLException failed) {
        LOG.error("The database could not do what it was asked", failed);
        return ProblemException.passing(
            ProblemCode.STORE_AWAY, "The database cannot keep anything now.", STORE_AWAY_FOR);
      }
    }
    if (thrown instanceof HttpMessageNotReadableException unreadable) {
      return problem(ProblemCode.MALFORMED_BODY, unreadable(unreadable));
    }
    if (thrown instanceof HttpRequestMethodNotSupportedException method) {
      return methodNotAllowed(method);
    }
    if (thrown instanceof HttpMediaTypeNotSupportedException type) {
      return problem(
          ProblemCode.UNSUPPORTED_MEDIA_TYPE,
          "Send one of " + names(type.getSupportedMediaTypes()) + ".");
    }
    if (thrown instanceof HttpMediaTypeNotAcceptableException type) {
      return problem(
          ProblemCode.NOT_ACCEPTABLE, "Offered: " + names(type.getSupportedMediaTypes()) + ".");
    }
    if (thrown instanceof ErrorResponse framework) {
      return ofStatus(framework.getStatusCode());
    }
    String reference = UUID.randomUUID().toString().substring(0, 8);
    LOG.error("Internal fault, reference {}", reference, thrown);
    return problem(
        ProblemCode.INTERNAL_FAULT, "The log has more under reference " + reference + ".");
  }

  /** The problem that stands for a status that the framework or the server chose. */
  static ProblemException ofStatus(HttpStatusCode status) {
    ProblemCode code =
        switch (status.value()) {
          case 404 -> ProblemCode.NOT_FOUND;
          case 405 -> ProblemCode.METHOD_NOT_ALLOWED;
          case 406 -> ProblemCode.NOT_ACCEPTABLE;
          case 413 -> ProblemCode.BODY_TOO_LARGE;
          case 414, 431 -> ProblemCode.URI_TOO_LONG;
          case 415 -> ProblemCode.UNSUPPORTED_MEDIA_TYPE;
          case 416 -> ProblemCode.RANGE_NOT_SATISFIABLE;
          case 503 -> ProblemCode.SERVICE_BUSY;
          default ->
              status.is4xxClientError()
                  ? ProblemCode.MALFORMED_REQUEST
                  : ProblemCode.INTERNAL_FAULT;
        };
    return problem(code, code.meaning());
  }

  private static ProblemException methodNotAllowed(HttpRequestMethodNotSupportedException thrown) {
    var methods = new TreeSet<String>();
    Objects.requireNonNullElse(thrown.getSupportedHttpMethods(), List.of())
        .forEach(method -> methods.add(method.toString()));
    if (methods.contains("GET")) {
      methods.add("HEAD");
    }
    String allow = String.join(", ", methods);
    return new ProblemException(
        ProblemCode.METHOD_NOT_ALLOWED, "Use " + allow + ".", List.of(), Map.of("Allow", allow));
  }

  private static String unreadable(HttpMessageNotReadableException thrown) {
    if (NestedExceptionUtils.getMostSpecificCause(thrown) instanceof JacksonException broken) {
      return "The body cannot be read as JSON: reading stopped at " + place(broken) + ".";
    }
    return "The body is missing or cannot be read.";
  }

  private static String place(JacksonException broken) {
    return broken.getLocation() == null
        ? "a place unknown"
        : "line "
            + broken.getLocation().getLineNr()
            + ", column "
            + broken.getLocation().getColumnNr();
  }

  private static String names(Collection<MediaType> types) {
    return types.stream().map(MediaType::toString).distinct().collect(Collectors.joining(", "));
  }

  private static ProblemException problem(ProblemCode code, String detail) {
    return new ProblemException(code, detail, List.of(), Map.of());
  }
}
