package lodeswing.web.representation;

import jakarta.servlet.http.HttpServletRequest;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import lodeswing.web.body.NearestName;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * The query of a request, read by the parameters that the resource knows.
 *
 * <p>All faults are found at once: unknown names with the nearest known one, repeated names, values
 * that are not what the parameter takes, missing values.
 */
public final class QueryParameters {

  private static final int MOST_FAULTS = 50;

  private final Map<String, Object> values;
  private final Map<String, String> others;

  private QueryParameters(Map<String, Object> values, Map<String, String> others) {
    this.values = Map.copyOf(values);
    this.others = others;
  }

  /**
   * Reads a query by known parameters and the general ones.
   *
   * @throws ProblemException {@code unknown-parameter} or {@code invalid-request} with every fault
   */
  public static QueryParameters read(HttpServletRequest request, Parameter<?>... known) {
    return readOpen(request, name -> false, known);
  }

  /**
   * Reads a query where further names, such as a layout's own figures, are left to the caller.
   *
   * @param alsoKnown accepts the names that {@link #others()} will hold
   * @param known the parameters with a fixed name
   * @throws ProblemException {@code unknown-parameter} or {@code invalid-request} with every fault
   */
  public static QueryParameters readOpen(
      HttpServletRequest request, Predicate<String> alsoKnown, Parameter<?>... known) {
    var reading = new Reading(RawQuery.parse(request.getQueryString()), List.of(known));
    reading.readAll(alsoKnown);
    return new QueryParameters(reading.values, reading.others);
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

  /** The values of the further names, in the order they came. */
  public Map<String, String> others() {
    return others;
  }

  /** Reads one query and gathers its faults. */
  private static final class Reading {
    private final Map<String, List<String>> raw;
    private final Map<String, Parameter<?>> known = new LinkedHashMap<>();
    private final Map<String, Object> values = new HashMap<>();
    private final Map<String, String> others = new LinkedHashMap<>();
    private final List<Fault> faults = new ArrayList<>();
    private boolean unknownName;
    private final boolean decimalComma;

    Reading(Map<String, List<String>> raw, List<Parameter<?>> parameters) {
      this.raw = raw;
      GeneralParameters.all().forEach(general -> known.put(general.name(), general));
      parameters.forEach(parameter -> known.put(parameter.name(), parameter));
      this.decimalComma = List.of("comma").equals(raw.get(GeneralParameters.DECIMAL.name()));
    }

    void readAll(Predicate<String> alsoKnown) {
      raw.forEach((name, given) -> readOne(name, given, alsoKnown));
      known.values().stream()
          .filter(parameter -> parameter.isRequired() && !raw.containsKey(parameter.name()))
          .forEach(
              parameter -> fault(parameter.name(), "is missing: give " + parameter.expected()));
      if (!faults.isEmpty()) {
        throw new ProblemException(
            unknownName ? ProblemCode.UNKNOWN_PARAMETER : ProblemCode.INVALID_REQUEST,
            faults.size() == 1
                ? "The query parameter " + name(faults.get(0)) + " " + faults.get(0).detail() + "."
                : "The query has " + faults.size() + " faults.",
            faults);
      }
    }

    private void readOne(String name, List<String> given, Predicate<String> alsoKnown) {
      Parameter<?> parameter = known.get(name);
      if (parameter == null && !alsoKnown.test(name)) {
        unknownName = true;
        fault(name, "is not known here: " + suggestion(name));
      } else if (given.size() > 1) {
        fault(name, "is given " + given.size() + " times: give it once");
      } else if (parameter == null) {
        others.put(name, given.get(0));
      } else {
        readValue(parameter, given.get(0));
      }
    }

    private void readValue(Parameter<?> parameter, String given) {
      String text =
          decimalComma && parameter.isNumeric() ? given.strip().replace(',', '.') : given.strip();
      parameter
          .read(text)
          .ifPresentOrElse(
              value -> values.put(parameter.name(), value),
              () ->
                  fault(
                      parameter.name(),
                      "is \""
                          + shortened(given)
                          + "\": give "
                          + parameter.expected()
                          + hint(parameter, given)));
    }

    private String hint(Parameter<?> parameter, String given) {
      return parameter.isNumeric() && !decimalComma && given.indexOf(',') >= 0
          ? " with a decimal point, or add decimal=comma"
          : "";
    }

    private String suggestion(String name) {
      Set<String> names = new TreeSet<>(known.keySet());
      return NearestName.find(name, names).map(near -> "did you mean " + near + "?").orElse("")
          + " Known are "
          + String.join(", ", names);
    }

    private void fault(String name, String detail) {
      if (faults.size() < MOST_FAULTS) {
        faults.add(new Fault("?" + shortened(name), detail));
      }
    }

    private static String name(Fault fault) {
      return fault.pointer().substring(1);
    }

    private static String shortened(String text) {
      return text.length() <= 60 ? text : text.substring(0, 60) + "…";
    }
  }
}
