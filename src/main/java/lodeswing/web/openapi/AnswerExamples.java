package lodeswing.web.openapi;

import io.swagger.v3.core.util.Json31;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.Optional;
import lodeswing.web.representation.Representation;

/**
 * Answers that the service really gave, shortened: recorded by a test of the contract and kept
 * beside this class's resources, one file for each operation and form.
 */
final class AnswerExamples {

  private static final String FOLDER = "/lodeswing/openapi/answers/";

  private AnswerExamples() {}

  /** Whether a form is written as JSON. */
  static boolean isTree(Representation form) {
    return form == Representation.JSON || form == Representation.LINKSET;
  }

  /** The example of an operation's answer; none for forms that a document cannot show. */
  static Optional<Object> of(String operationId, int status, Representation form) {
    if (status == ApiDocument.PENDING) {
      return form == Representation.TEXT ? Optional.of("PENDING 2") : read("getJob", form);
    }
    return read(operationId, form);
  }

  private static Optional<Object> read(String operationId, Representation form) {
    String file = FOLDER + operationId + "." + form.word();
    try (InputStream in = AnswerExamples.class.getResourceAsStream(file)) {
      if (in == null) {
        return Optional.empty();
      }
      byte[] body = in.readAllBytes();
      return Optional.of(
          isTree(form) ? Json31.mapper().readTree(body) : new String(body, StandardCharsets.UTF_8));
    } catch (IOException e) {
      throw new UncheckedIOException(e);
    }
  }
}
