package lodeswing.web.embed;

import java.util.List;
import java.util.Optional;
import java.util.function.BinaryOperator;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lodeswing.web.body.Numbers;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Parameter;
import lodeswing.web.trace.TraceShapes;

/**
 * The releases that a figure shows when it opens: none, one, or two to compare.
 *
 * @param first where the first is, in the layout's unit of length
 * @param second where the second is
 */
record ShownReleases(Optional<Place> first, Optional<Place> second) {

  static final Parameter<Double> X = number("x");
  static final Parameter<Double> Y = number("y");
  static final Parameter<Double> X2 = number("x2");
  static final Parameter<Double> Y2 = number("y2");

  /**
   * A place on the plate.
   *
   * @param x in the layout's unit of length
   * @param y likewise
   */
  record Place(double x, double y) {}

  private static Parameter<Double> number(String name) {
    return Parameter.number(name, TraceShapes.PLACE.least(), TraceShapes.PLACE.most());
  }

  /**
   * Reads them.
   *
   * @param value the value of a parameter, where it is given
   * @throws ProblemException {@code invalid-request} where half a place is missing, or there is a
   *     second release and no first
   */
  static ShownReleases of(Function<Parameter<Double>, Optional<Double>> value) {
    Optional<Place> first = place(X, Y, value);
    Optional<Place> second = place(X2, Y2, value);
    if (first.isEmpty() && second.isPresent()) {
      throw missing(X, X2);
    }
    return new ShownReleases(first, second);
  }

  private static Optional<Place> place(
      Parameter<Double> across,
      Parameter<Double> up,
      Function<Parameter<Double>, Optional<Double>> value) {
    Optional<Double> x = value.apply(across);
    Optional<Double> y = value.apply(up);
    if (x.isPresent() != y.isPresent()) {
      throw x.isPresent() ? missing(up, across) : missing(across, up);
    }
    return x.flatMap(right -> y.map(above -> new Place(right, above)));
  }

  private static ProblemException missing(Parameter<Double> missed, Parameter<Double> given) {
    return new ProblemException(
        ProblemCode.INVALID_REQUEST,
        "A release has two coordinates, and the second release goes with a first.",
        List.of(new Fault("?" + missed.name(), "is missing beside " + given.name())));
  }

  /** As a query, each pair after the given sign; empty where nothing is released. */
  String query(String before) {
    return written((name, figure) -> name + "=" + figure, before, "&");
  }

  /** As attributes of the element, with a space before each. */
  String attributes() {
    return written((name, figure) -> name + "=\"" + figure + "\"", " ", " ");
  }

  private String written(BinaryOperator<String> pair, String before, String between) {
    String all =
        Stream.concat(figures(first, X, Y, pair), figures(second, X2, Y2, pair))
            .collect(Collectors.joining(between));
    return all.isEmpty() ? "" : before + all;
  }

  private static Stream<String> figures(
      Optional<Place> place,
      Parameter<Double> x,
      Parameter<Double> y,
      BinaryOperator<String> pair) {
    return place.stream()
        .flatMap(
            at ->
                Stream.of(
                    pair.apply(x.name(), Numbers.shortest(at.x())),
                    pair.apply(y.name(), Numbers.shortest(at.y()))));
  }
}
