package lodeswing.web.representation;

import jakarta.servlet.http.HttpServletRequest;
import java.util.Map;
import java.util.Optional;
import java.util.TreeMap;
import lodeswing.web.problem.ProblemException;

/**
 * The query of a request, read by the parameters that the resource knows.
 *
 * <p>All faults are found at once: unknown names with the nearest known one, repeated names, values
 * that are not what the parameter takes, missing values.
 */
public final class QueryParameters {

  private final Map<String, Object> values;

  QueryParameters(Map<String, Object> values) {
    this.values = Map.copyOf(values);
  }

  /**
   * Reads a query by known parameters and the general ones.
   *
   * @throws ProblemException {@code unknown-parameter} or {@code invalid-request} with every fault
   */
  public static QueryParameters read(HttpServletRequest request, Parameter<?>... known) {
    return read(Asking.of(request), known);
  }

  /**
   * The same of what was asked for without HTTP.
   *
   * @throws ProblemException {@code unknown-parameter} or {@code invalid-request} with every fault
   */
  public static QueryParameters read(Asking request, Parameter<?>... known) {
    QueryReading reading = QueryReading.of(request, name -> false, known);
    reading.refuseIfAny();
    return reading.parameters();
  }

  /** The values that change the bytes of an answer beside its form, alike in any order. */
  String figures() {
    if (values.isEmpty()) {
      return "";
    }
    var figures = new TreeMap<>(values);
    figures.keySet().removeAll(GeneralParameters.WITHOUT_EFFECT_ON_BYTES);
    return figures.toString();
  }

  /** The value of a parameter that is required or has a default. */
  public <T> T get(Parameter<T> parameter) {
    return find(parameter)
        .orElseThrow(
            () ->
                new IllegalStateException(
                    parameter.name() + " is neither required nor has a default"));
  }

  /** The value of a parameter, or its default, or nothing. */
  @SuppressWarnings("unchecked") // the value under a name was read by the parameter of that name
  public <T> Optional<T> find(Parameter<T> parameter) {
    return Optional.ofNullable((T) values.get(parameter.name())).or(parameter::fallback);
  }
}
