package lodeswing.web.swingcount;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.regex.Pattern;
import lodeswing.analysis.swingcount.Along;
import lodeswing.analysis.swingcount.Measured;
import lodeswing.analysis.swingcount.Readings;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.suspension.TwoAxisBody;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;

/**
 * What a query tells of counted swings, in SI.
 *
 * @param readings what was counted
 * @param quarter swings to a quarter of the amplitude, where they were counted
 * @param amplitude plan distance of the first swing's end from the middle [m], where it was told
 * @param written the query's own parameters as they are written again
 */
record SwingCountQuery(
    Readings readings,
    Optional<Measured> quarter,
    Optional<Double> amplitude,
    Map<String, String> written) {

  private static final double MM = 1e-3;
  private static final double PERCENT = 1e-2;

  /** Angle up to which a suspension is computed. */
  private static final double WIDEST_DEG = 60;

  private static final int MOST_TIMES = 20;
  private static final double LONGEST_S = 1e6;

  /** Uncertainty of a time by hand and stopwatch [s]: a tenth at either end, common practice. */
  static final double USUAL_TIME_OFF = 0.2;

  /** Uncertainty of a length by a ruler [mm]: its smallest division, common practice. */
  static final double USUAL_LENGTH_OFF = 1;

  /** Uncertainty of an amplitude by eye over a ruler [%]: a guess that may be replaced. */
  static final double USUAL_AMPLITUDE_OFF = 10;

  /**
   * How well half an amplitude is seen, as a part of it: a guess that may be replaced by
   * halfUncertaintySwings.
   */
  private static final double SEEN_TO = 0.05;

  /** Swings are counted in whole ones. */
  private static final double COUNTED_TO = 0.5;

  /**
   * Gravity where nobody says: 9.780 at the equator to 9.832 at the poles [m/s^2] (normal gravity
   * of the World Geodetic System 1984, NIMA TR8350.2 (2000), chapter 4; from memory).
   */
  static final double USUAL_GRAVITY_OFF = 0.026;

  private static final double STANDARD_GRAVITY = 9.80665;

  static final Parameter<Integer> SWINGS = Parameter.integer("swings", 1, 10_000);
  static final Parameter<List<Double>> TIME =
      Parameter.of(
          "timeS",
          "seconds above 0, or up to " + MOST_TIMES + " of them with semicolons between",
          SwingCountQuery::times);
  static final Parameter<Double> TIME_OFF = Parameter.number("timeUncertaintyS", 0, 60);
  static final Parameter<Double> HALF = Parameter.number("halfAfter", 0.5, 1e6);
  static final Parameter<Double> QUARTER = Parameter.number("quarterAfter", 1, 2e6);
  static final Parameter<Double> HALF_OFF = Parameter.number("halfUncertaintySwings", 0, 1e5);
  static final Parameter<Double> AMPLITUDE_MM = Parameter.number("amplitudeMm", 0, 5_000);
  static final Parameter<Double> AMPLITUDE_DEG = Parameter.number("amplitudeDeg", 0, WIDEST_DEG);
  static final Parameter<Double> AMPLITUDE_OFF =
      Parameter.number("amplitudeUncertaintyPercent", 0, 100);
  static final Parameter<Double> LENGTH_OFF = Parameter.number("lengthUncertaintyMm", 0, 100);
  static final Parameter<Double> GRAVITY_OFF = Parameter.number("gravityUncertaintyMPerS2", 0, 1);
  static final Parameter<Along> ALONG =
      Parameter.constant("along", Along.class, Along::word).orElse(Along.X);

  /** A time as a query writes it, with a decimal point or comma. */
  private static final Pattern SECONDS = Pattern.compile("\\d{1,9}([.,]\\d{0,40})?");

  /** Every parameter of the resource but the one that names a value. */
  static List<Parameter<?>> parameters() {
    return List.of(
        SWINGS,
        TIME,
        TIME_OFF,
        HALF,
        QUARTER,
        HALF_OFF,
        AMPLITUDE_MM,
        AMPLITUDE_DEG,
        AMPLITUDE_OFF,
        LENGTH_OFF,
        GRAVITY_OFF,
        ALONG);
  }

  private static Optional<List<Double>> times(String text) {
    List<Double> times = new ArrayList<>();
    for (String part : text.split(";", -1)) {
      String one = part.strip();
      if (!SECONDS.matcher(one).matches()) {
        return Optional.empty();
      }
      times.add(Double.parseDouble(one.replace(',', '.')));
    }
    boolean sound =
        times.size() <= MOST_TIMES && times.stream().allMatch(t -> t > 0 && t <= LONGEST_S);
    return sound ? Optional.of(List.copyOf(times)) : Optional.empty();
  }

  /**
   * What a query tells.
   *
   * @throws ProblemException {@code invalid-request}, telling which combination lacks what
   */
  static SwingCountQuery of(QueryParameters query, LayoutDocument layout, BenchLayout rig) {
    return new Reader(query, layout, rig).read();
  }

  /** One reading of a query with everything that is wrong. */
  private static final class Reader {

    private final QueryParameters query;
    private final LayoutDocument layout;
    private final BenchLayout rig;
    private final List<Fault> faults = new ArrayList<>();

    Reader(QueryParameters query, LayoutDocument layout, BenchLayout rig) {
      this.query = query;
      this.layout = layout;
      this.rig = rig;
    }

    SwingCountQuery read() {
      companions();
      Optional<Measured> angle = angle();
      if (!faults.isEmpty()) {
        throw new ProblemException(
            ProblemCode.INVALID_REQUEST,
            faults.size() == 1
                ? "The query parameter "
                    + faults.get(0).pointer().substring(1)
                    + " "
                    + faults.get(0).detail()
                    + "."
                : "The query has " + faults.size() + " faults.",
            faults);
      }
      Optional<Readings.Timing> timing =
          query
              .find(TIME)
              .map(
                  times ->
                      Readings.Timing.of(
                          query.get(SWINGS), times, query.find(TIME_OFF).orElse(USUAL_TIME_OFF)));
      Readings readings =
          new Readings(
              query.get(ALONG),
              timing,
              angle,
              query.find(HALF).map(this::counted),
              Measured.within(0, lengthOff() * MM),
              Measured.within(rig.gravity(), gravityOff()));
      return new SwingCountQuery(
          readings,
          query.find(QUARTER).map(this::counted),
          angle.map(at -> query.get(ALONG).arm(body()) * Math.sin(at.value())),
          written());
    }

    private void companions() {
      if (!has(TIME) && !has(HALF)) {
        faults.add(
            new Fault(
                "?timeS",
                "is missing, as is halfAfter: give swings with timeS for the period and the length,"
                    + " halfAfter for the loss, or both"));
      }
      needs(SWINGS, TIME);
      needs(TIME, SWINGS);
      needs(TIME_OFF, TIME);
      needs(QUARTER, HALF);
      needs(HALF_OFF, HALF);
      if (has(AMPLITUDE_OFF) && !has(AMPLITUDE_MM) && !has(AMPLITUDE_DEG)) {
        fault(AMPLITUDE_OFF, "means nothing without amplitudeMm or amplitudeDeg");
      }
      if (has(QUARTER)
          && has(HALF)
          && query.find(QUARTER).orElseThrow() <= query.find(HALF).orElseThrow()) {
        fault(QUARTER, "must be more than halfAfter: a quarter is left later than a half");
      }
    }

    private boolean has(Parameter<?> parameter) {
      return query.find(parameter).isPresent();
    }

    private void needs(Parameter<?> given, Parameter<?> other) {
      if (has(given) && !has(other)) {
        fault(given, "means nothing without " + other.name());
      }
    }

    private void fault(Parameter<?> parameter, String detail) {
      faults.add(new Fault("?" + parameter.name(), detail));
    }

    private TwoAxisBody body() {
      return rig.suspension().body();
    }

    private Optional<Measured> angle() {
      if (has(AMPLITUDE_MM) && has(AMPLITUDE_DEG)) {
        fault(AMPLITUDE_DEG, "stands beside amplitudeMm; give one of them");
        return Optional.empty();
      }
      double share = query.find(AMPLITUDE_OFF).orElse(USUAL_AMPLITUDE_OFF) * PERCENT;
      if (has(AMPLITUDE_DEG)) {
        double angle = Math.toRadians(query.find(AMPLITUDE_DEG).orElseThrow());
        return Optional.of(Measured.within(angle, share * angle));
      }
      if (!has(AMPLITUDE_MM)) {
        return Optional.empty();
      }
      double out = query.find(AMPLITUDE_MM).orElseThrow() * MM;
      double arm = query.get(ALONG).arm(body());
      double most = arm * Math.sin(Math.toRadians(WIDEST_DEG));
      if (out > most) {
        fault(
            AMPLITUDE_MM,
            "must be at most " + Numbers.plain(Math.floor(most / MM)) + ", 60 degrees of this rig");
        return Optional.empty();
      }
      double angle = Math.asin(out / arm);
      return Optional.of(Measured.within(angle, share * angle));
    }

    /** A count of swings until a part of the amplitude is left. */
    private Measured counted(double swings) {
      double seen = SEEN_TO * swings / Math.log(2);
      return Measured.within(swings, query.find(HALF_OFF).orElse(Math.hypot(COUNTED_TO, seen)));
    }

    private double lengthOff() {
      return query
          .find(LENGTH_OFF)
          .orElseGet(
              () ->
                  layout
                      .canonical()
                      .findObject("tolerances")
                      .map(tolerances -> tolerances.findNumber("lengthMm"))
                      .filter(OptionalDouble::isPresent)
                      .map(OptionalDouble::getAsDouble)
                      .orElse(USUAL_LENGTH_OFF));
    }

    private double gravityOff() {
      boolean told = rig.gravity() != STANDARD_GRAVITY;
      return query.find(GRAVITY_OFF).orElse(told ? 0 : USUAL_GRAVITY_OFF);
    }

    private Map<String, String> written() {
      Map<String, String> written = new LinkedHashMap<>();
      for (Parameter<?> parameter : parameters()) {
        query.find(parameter).ifPresent(value -> written.put(parameter.name(), sent(value)));
      }
      return written;
    }

    private static String sent(Object value) {
      if (value instanceof Double number) {
        return Numbers.shortest(number);
      }
      if (value instanceof List<?> times) {
        return String.join("%3B", times.stream().map(t -> Numbers.shortest((Double) t)).toList());
      }
      return value instanceof Along along ? along.word() : value.toString();
    }
  }
}
