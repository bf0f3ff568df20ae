package lodeswing.web.jobs;

import java.util.function.BiFunction;
import lodeswing.web.representation.Asking;

/**
 * A resource that can be asked without HTTP: a bundle collects what such resources answer.
 *
 * @param template its address with {@code {id}} where an id goes
 * @param finder makes of an id and an asking what was asked for, or ends with its problem
 */
public record AddressedPart(String template, BiFunction<String, Asking, Answerable> finder) {

  /** Its address, with a query. */
  public String url(String id, String query) {
    String path = template.replace("{id}", id);
    return query.isEmpty() ? path : path + "?" + query;
  }

  /**
   * What is asked for.
   *
   * @throws lodeswing.web.problem.ProblemException as a request over HTTP would end with
   */
  public Answerable asked(String id, String query) {
    return finder.apply(id, Asking.of(query));
  }
}
