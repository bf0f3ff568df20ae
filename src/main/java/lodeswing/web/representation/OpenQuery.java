package lodeswing.web.representation;

import java.util.Collection;
import java.util.List;
import java.util.Map;
import lodeswing.web.problem.ProblemException;

/**
 * A query with further names that another reader judges, such as the figures of a layout.
 *
 * <p>Its own faults wait for those of the other reader, so that all are told at once: {@link
 * #closed} where that one found none, {@link #with} where it did.
 */
public final class OpenQuery {

  private final QueryReading reading;

  private OpenQuery(QueryReading reading) {
    this.reading = reading;
  }

  /**
   * Reads the parameters with a fixed name.
   *
   * @throws ProblemException {@code malformed-request} where the query cannot be decoded
   */
  public static OpenQuery read(Asking asking, Parameter<?>... known) {
    return new OpenQuery(QueryReading.of(asking, name -> true, known));
  }

  /** The values of the further names, in the order they came. */
  public Map<String, String> others() {
    return reading.others();
  }

  /** The names that are not further ones, whether they were given or not. */
  public Collection<String> names() {
    return List.copyOf(reading.names());
  }

  /**
   * The parameters, where the further names have no fault.
   *
   * @throws ProblemException {@code unknown-parameter} or {@code invalid-request} with every fault
   */
  public QueryParameters closed() {
    reading.refuseIfAny();
    return reading.parameters();
  }

  /**
   * The problem to answer with, where the other reader found one.
   *
   * @param problem what it found
   * @return that problem where this query has no fault; else all faults together
   */
  public ProblemException with(ProblemException problem) {
    return reading.clean() ? problem : reading.with(problem);
  }
}
