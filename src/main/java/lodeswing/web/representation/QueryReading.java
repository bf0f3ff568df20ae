package lodeswing.web.representation;

import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.function.Predicate;
import lodeswing.web.body.NearestName;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** One reading of a query: the values by the known parameters, and everything that is wrong. */
final class QueryReading {

  private static final int MOST_FAULTS = 50;

  private final Map<String, List<String>> raw;
  private final Map<String, Parameter<?>> known = new LinkedHashMap<>();
  private final Map<String, Object> values = new HashMap<>();
  private final Map<String, String> others = new LinkedHashMap<>();
  private final List<Fault> faults = new ArrayList<>();
  private final boolean decimalComma;
  private boolean unknownName;

  private QueryReading(Map<String, List<String>> raw, List<Parameter<?>> parameters) {
    this.raw = raw;
    GeneralParameters.all().forEach(general -> known.put(general.name(), general));
    parameters.forEach(parameter -> known.put(parameter.name(), parameter));
    this.decimalComma = List.of("comma").equals(raw.get(GeneralParameters.DECIMAL.name()));
  }

  /**
   * Reads a query and keeps its faults.
   *
   * @param alsoKnown accepts the names that {@link #others} will hold
   * @param known the parameters with a fixed name
   */
  static QueryReading of(Asking asking, Predicate<String> alsoKnown, Parameter<?>... known) {
    var reading = new QueryReading(RawQuery.parse(asking.query().orElse("")), List.of(known));
    reading.readAll(alsoKnown);
    return reading;
  }

  QueryParameters parameters() {
    return new QueryParameters(values);
  }

  Map<String, String> others() {
    return others;
  }

  Set<String> names() {
    return known.keySet();
  }

  boolean clean() {
    return faults.isEmpty();
  }

  /** Ends the request with every fault, where there is one. */
  void refuseIfAny() {
    if (!faults.isEmpty()) {
      throw problem(unknownName, faults);
    }
  }

  /** The problem of this query's faults and of those that the reader of the other names found. */
  ProblemException with(ProblemException more) {
    var all = new ArrayList<>(faults);
    all.addAll(more.faults());
    return problem(unknownName || more.code() == ProblemCode.UNKNOWN_PARAMETER, all);
  }

  private static ProblemException problem(boolean unknownName, List<Fault> faults) {
    return new ProblemException(
        unknownName ? ProblemCode.UNKNOWN_PARAMETER : ProblemCode.INVALID_REQUEST,
        faults.size() == 1
            ? "The query parameter " + name(faults.get(0)) + " " + faults.get(0).detail() + "."
            : "The query has " + faults.size() + " faults.",
        faults);
  }

  private void readAll(Predicate<String> alsoKnown) {
    raw.forEach((name, given) -> readOne(name, given, alsoKnown));
    known.values().stream()
        .filter(parameter -> parameter.isRequired() && !raw.containsKey(parameter.name()))
        .forEach(parameter -> fault(parameter.name(), "is missing: give " + parameter.expected()));
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
    String all = "known are " + String.join(", ", names);
    return NearestName.find(name, names)
        .map(near -> "did you mean " + near + "? (" + all + ")")
        .orElse(all);
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
