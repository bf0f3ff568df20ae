package lodeswing.web.gauging;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import lodeswing.analysis.gauging.MagnetSize;
import lodeswing.analysis.gauging.Reading;
import lodeswing.core.magnet.Grade.Material;
import lodeswing.web.body.Numbers;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.Parameter;
import lodeswing.web.representation.QueryParameters;

/**
 * What a query tells of a magnet and of readings on it, in SI.
 *
 * @param size the magnet's form and size; empty where a compass alone was asked
 * @param sizeOff uncertainty of its lengths [m]
 * @param material its material, where it is known
 * @param kinds the readings' kinds, in the order of {@code readings}
 * @param readings the readings, none where a compass alone was asked
 * @param compass what a compass needle did
 * @param self the address that asks the same
 */
record EstimateQuery(
    Optional<MagnetSize> size,
    double sizeOff,
    Optional<Material> material,
    List<String> kinds,
    List<Reading> readings,
    Optional<Compass> compass,
    String self) {

  private static final double MM = 1e-3;
  private static final double PERCENT = 1e-2;

  private static final String DIFFERENCE = "difference";
  private static final double LEAST_SIZE = 0.2;
  private static final double GREATEST_SIZE = 500;
  private static final double GREATEST_DISTANCE = 2000;

  /**
   * Greatest strength of the earth's field at its surface [microtesla]: 22 to 67 (The US/UK World
   * Magnetic Model for 2020-2025, technical report (2020), section 1).
   */
  static final double EARTH = 67;

  /** Uncertainty of a density from a table: a few hundredths, common practice. */
  private static final double DENSITY_SHARE = 0.02;

  /** Uncertainty of a length by a simple calliper [mm]: a guess that may be replaced. */
  static final double USUAL_SIZE_OFF = 0.1;

  /** Uncertainty of a spacer's thickness [mm]: a guess that may be replaced. */
  static final double USUAL_SPACER_OFF = 0.05;

  /**
   * Widest hidden gap at contact [mm]: plating of some hundredths on the magnet, paint or rust on
   * the steel (common practice).
   */
  static final double USUAL_CONTACT_GAP = 0.1;

  /** Uncertainty of a pull by a spring balance [%]: a guess that may be replaced. */
  static final double USUAL_FORCE_OFF = 5.0;

  /** Uncertainty of a weighed mass [%]: a guess that may be replaced. */
  static final double USUAL_MASS_OFF = 2.0;

  /** Uncertainty of a distance between faces by a ruler [mm]: a guess that may be replaced. */
  static final double USUAL_DISTANCE_OFF = 0.5;

  /** Uncertainty of a distance to a sensor inside a phone [mm]: a guess that may be replaced. */
  static final double USUAL_SENSOR_OFF = 2.0;

  /** Uncertainty of a phone's field sensor [%]: a guess that may be replaced. */
  static final double USUAL_FIELD_OFF = 5.0;

  static final Parameter<Double> DIAMETER = size("diameterMm");
  static final Parameter<Double> INNER = size("innerDiameterMm");
  static final Parameter<Double> LENGTH = size("lengthMm");
  static final Parameter<Double> WIDTH = size("widthMm");
  static final Parameter<Double> HEIGHT = size("heightMm");
  static final Parameter<Double> SIZE_OFF = Parameter.number("sizeUncertaintyMm", 0, 10);
  static final Parameter<Material> MATERIAL =
      Parameter.constant("material", Material.class, EstimateQuery::word);

  static final Parameter<Double> PULL = Parameter.number("pullN", 0.001, 10_000);
  static final Parameter<Double> SPACER = Parameter.number("spacerMm", 0, 100);
  static final Parameter<Double> SPACER_OFF = Parameter.number("spacerUncertaintyMm", 0, 10);
  static final Parameter<Double> CONTACT_GAP = Parameter.number("contactGapMm", 0, 2);
  static final Parameter<Double> PAIR_PULL = Parameter.number("pairPullN", 0.001, 10_000);
  static final Parameter<Double> DISTANCE = Parameter.number("distanceMm", 0.1, GREATEST_DISTANCE);
  static final Parameter<Double> FORCE_OFF = Parameter.number("forceUncertaintyPercent", 0, 50);
  static final Parameter<Double> LIFT_DISTANCE =
      Parameter.number("liftDistanceMm", 0.1, GREATEST_DISTANCE);
  static final Parameter<Double> LIFT_MASS = Parameter.number("liftMassG", 0.001, 50_000);
  static final Parameter<Double> MASS_OFF = Parameter.number("massUncertaintyPercent", 0, 50);
  static final Parameter<Double> DISTANCE_OFF = Parameter.number("distanceUncertaintyMm", 0, 50);
  static final Parameter<Double> FIELD = Parameter.number("fieldMicrotesla", 0.1, 1_500_000);
  static final Parameter<Double> SENSOR_DISTANCE =
      Parameter.number("sensorDistanceMm", 0, GREATEST_DISTANCE);
  static final Parameter<Double> SENSOR_OFF =
      Parameter.number("sensorDistanceUncertaintyMm", 0, 50);
  static final Parameter<Double> FIELD_OFF = Parameter.number("fieldUncertaintyPercent", 0, 50);
  static final Parameter<String> FIELD_READING =
      Parameter.oneOf("fieldReading", "single", DIFFERENCE);
  static final Parameter<Compass> COMPASS =
      Parameter.constant("compass", Compass.class, Compass::word);

  /** Parameters that mean nothing without another one. */
  private static final List<Companion> COMPANIONS =
      List.of(
          new Companion(SPACER, PULL),
          new Companion(SPACER_OFF, SPACER),
          new Companion(CONTACT_GAP, PULL),
          new Companion(DISTANCE, PAIR_PULL),
          new Companion(LIFT_MASS, LIFT_DISTANCE),
          new Companion(MASS_OFF, LIFT_DISTANCE),
          new Companion(SENSOR_DISTANCE, FIELD),
          new Companion(SENSOR_OFF, FIELD),
          new Companion(FIELD_OFF, FIELD),
          new Companion(FIELD_READING, FIELD));

  private record Companion(Parameter<?> given, Parameter<?> needs) {}

  private static Parameter<Double> size(String name) {
    return Parameter.number(name, LEAST_SIZE, GREATEST_SIZE);
  }

  /** Every parameter of the resource but the one that names a value. */
  static List<Parameter<?>> parameters() {
    return List.of(
        DIAMETER,
        INNER,
        LENGTH,
        WIDTH,
        HEIGHT,
        SIZE_OFF,
        MATERIAL,
        PULL,
        SPACER,
        SPACER_OFF,
        CONTACT_GAP,
        PAIR_PULL,
        DISTANCE,
        FORCE_OFF,
        LIFT_DISTANCE,
        LIFT_MASS,
        MASS_OFF,
        DISTANCE_OFF,
        FIELD,
        SENSOR_DISTANCE,
        SENSOR_OFF,
        FIELD_OFF,
        FIELD_READING,
        COMPASS);
  }

  /** A material as the query and answers have it. */
  static String word(Material material) {
    return material.name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  /**
   * What a query tells.
   *
   * @throws ProblemException {@code invalid-request}, telling which combination lacks what
   */
  static EstimateQuery of(QueryParameters query) {
    return new Reader(query).read();
  }

  /** One reading of a query with everything that is wrong. */
  private static final class Reader {
    private final QueryParameters query;
    private final List<Fault> faults = new ArrayList<>();
    private final List<String> kinds = new ArrayList<>();
    private final List<Reading> readings = new ArrayList<>();

    Reader(QueryParameters query) {
      this.query = query;
    }

    EstimateQuery read() {
      for (Companion companion : COMPANIONS) {
        if (has(companion.given) && !has(companion.needs)) {
          fault(companion.given, "means nothing without " + companion.needs.name());
        }
      }
      boolean measured = Stream.of(PULL, PAIR_PULL, LIFT_DISTANCE, FIELD).anyMatch(this::has);
      boolean sized = Stream.of(DIAMETER, INNER, LENGTH, WIDTH, HEIGHT).anyMatch(this::has);
      if (!measured && faults.isEmpty() && (sized || !has(COMPASS))) {
        fault(
            PULL,
            "is missing, as are the other readings: give one or more of pullN, pairPullN with"
                + " distanceMm, liftDistanceMm, fieldMicrotesla with sensorDistanceMm; or compass"
                + " alone for the pole");
      }
      Optional<MagnetSize> size = measured || sized ? size() : Optional.empty();
      readAll(size);
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
      return new EstimateQuery(
          size,
          off(SIZE_OFF, USUAL_SIZE_OFF) * MM,
          query.find(MATERIAL),
          List.copyOf(kinds),
          List.copyOf(readings),
          query.find(COMPASS),
          self());
    }

    private boolean has(Parameter<?> parameter) {
      return query.find(parameter).isPresent();
    }

    private double off(Parameter<Double> parameter, double usual) {
      return query.find(parameter).orElse(usual);
    }

    private String self() {
      return parameters().stream()
          .flatMap(
              parameter ->
                  query.find(parameter).map(v -> parameter.name() + "=" + sent(v)).stream())
          .collect(Collectors.joining("&", "/v1/magnet-estimates?", ""));
    }

    private static String sent(Object value) {
      if (value instanceof Double number) {
        return Numbers.shortest(number);
      }
      if (value instanceof Material one) {
        return word(one);
      }
      return value instanceof Compass one ? one.word() : value.toString();
    }

    private void fault(Parameter<?> parameter, String detail) {
      faults.add(new Fault("?" + parameter.name(), detail));
    }

    private void missing(Parameter<?> parameter, String why) {
      if (!has(parameter)) {
        fault(parameter, "is missing: " + why);
      }
    }

    private Optional<MagnetSize> size() {
      int before = faults.size();
      boolean round = has(DIAMETER) || has(INNER);
      boolean block = has(LENGTH) || has(WIDTH);
      if (round && block) {
        fault(
            has(DIAMETER) ? DIAMETER : INNER,
            "cannot go with lengthMm or widthMm: a disc or ring has a diameter, a block length and"
                + " width");
      } else if (block) {
        missing(LENGTH, "a block needs lengthMm, widthMm and heightMm");
        missing(WIDTH, "a block needs lengthMm, widthMm and heightMm");
      } else {
        missing(
            DIAMETER,
            "a disc needs diameterMm and heightMm, a ring innerDiameterMm too; a block lengthMm,"
                + " widthMm and heightMm");
      }
      missing(HEIGHT, "the magnet's extent along its magnetisation is needed");
      if (has(DIAMETER)
          && has(INNER)
          && query.find(INNER).orElseThrow() >= query.find(DIAMETER).orElseThrow()) {
        fault(INNER, "must be less than diameterMm, " + plain(query.find(DIAMETER).orElseThrow()));
      }
      if (faults.size() > before) {
        return Optional.empty();
      }
      MagnetSize size = sized(block);
      double thinnest = thinnest(size);
      if (off(SIZE_OFF, USUAL_SIZE_OFF) * MM > thinnest / 4) {
        fault(
            SIZE_OFF,
            "must be at most a quarter of the magnet's thinnest part, " + plain(thinnest / MM / 4));
        return Optional.empty();
      }
      return Optional.of(size);
    }

    private MagnetSize sized(boolean block) {
      double height = query.find(HEIGHT).orElseThrow() * MM;
      if (block) {
        return new MagnetSize(
            MagnetSize.Form.BLOCK,
            List.of(
                height,
                query.find(LENGTH).orElseThrow() * MM,
                query.find(WIDTH).orElseThrow() * MM));
      }
      double diameter = query.find(DIAMETER).orElseThrow() * MM;
      return query
          .find(INNER)
          .map(inner -> new MagnetSize(MagnetSize.Form.RING, List.of(height, diameter, inner * MM)))
          .orElseGet(() -> new MagnetSize(MagnetSize.Form.DISC, List.of(height, diameter)));
    }

    /** The least length that an uncertainty could use up, a ring's wall included. */
    private static double thinnest(MagnetSize size) {
      double least = size.lengths().stream().mapToDouble(Double::doubleValue).min().orElseThrow();
      return size.form() == MagnetSize.Form.RING
          ? Math.min(least, (size.lengths().get(1) - size.lengths().get(2)) / 2)
          : least;
    }

    private void readAll(Optional<MagnetSize> size) {
      double forceShare = off(FORCE_OFF, USUAL_FORCE_OFF) * PERCENT;
      double distanceOff = off(DISTANCE_OFF, USUAL_DISTANCE_OFF) * MM;
      query.find(PULL).ifPresent(force -> offSteel(force, forceShare));
      query
          .find(PAIR_PULL)
          .ifPresent(
              force -> {
                missing(DISTANCE, "pairPullN needs the distance between the facing faces");
                query
                    .find(DISTANCE)
                    .ifPresent(
                        distance ->
                            add(
                                "pair-pull",
                                new Reading.OffEqual(
                                    force, forceShare, distance * MM, distanceOff)));
              });
      query.find(LIFT_DISTANCE).ifPresent(distance -> lift(distance * MM, distanceOff));
      query.find(FIELD).ifPresent(field -> onAxis(field, size));
    }

    private void offSteel(double force, double share) {
      double spacer = off(SPACER, 0) * MM;
      boolean contact = spacer == 0;
      double off = off(SPACER_OFF, USUAL_SPACER_OFF) * MM;
      double wider = contact ? off(CONTACT_GAP, USUAL_CONTACT_GAP) * MM : off;
      if (!contact && has(CONTACT_GAP)) {
        fault(CONTACT_GAP, "is for a pull at contact: leave it out, or spacerMm");
      }
      add(
          contact ? "contact-pull" : "spaced-pull",
          new Reading.OffSteel(force, share, spacer, contact ? 0 : off, wider));
    }

    private void lift(double distance, double distanceOff) {
      double massShare = off(MASS_OFF, USUAL_MASS_OFF) * PERCENT;
      Optional<Double> mass = query.find(LIFT_MASS);
      if (mass.isPresent()) {
        double weight = mass.get() / 1000 * Reading.GRAVITY;
        add("lift", new Reading.OffEqual(weight, massShare, distance, distanceOff));
      } else if (has(MATERIAL)) {
        double density = query.find(MATERIAL).orElseThrow().density();
        add(
            "lift",
            new Reading.LiftOfEqual(
                density, Math.max(massShare, DENSITY_SHARE), distance, distanceOff));
      } else {
        fault(
            LIFT_MASS,
            "is missing: weigh what is lifted, or give material, from whose density and the size"
                + " the mass of the magnet's equal follows");
      }
    }

    private void onAxis(double field, Optional<MagnetSize> size) {
      missing(SENSOR_DISTANCE, "fieldMicrotesla needs the distance from the face to the sensor");
      boolean single = !query.find(FIELD_READING).equals(Optional.of(DIFFERENCE));
      if (single && field <= EARTH) {
        fault(
            FIELD,
            "is "
                + plain(field)
                + ": a single reading tells nothing up to "
                + plain(EARTH)
                + ", which the earth's field alone can reach: go nearer, or give the difference of"
                + " readings with and without the magnet and fieldReading=difference");
        return;
      }
      query
          .find(SENSOR_DISTANCE)
          .ifPresent(
              distance -> {
                var reading =
                    new Reading.OnAxis(
                        field * 1e-6,
                        off(FIELD_OFF, USUAL_FIELD_OFF) * PERCENT,
                        single ? EARTH * 1e-6 : 0,
                        distance * MM,
                        off(SENSOR_OFF, USUAL_SENSOR_OFF) * MM);
                if (size.map(one -> reading.oneWay(one.unit())).orElse(true)) {
                  add("field", reading);
                } else {
                  fault(
                      SENSOR_DISTANCE,
                      "lies where the field on a ring's axis turns round: measure farther away,"
                          + " beyond the diameter of its hole");
                }
              });
    }

    private void add(String kind, Reading reading) {
      kinds.add(kind);
      readings.add(reading);
    }
  }

  private static String plain(double value) {
    return Numbers.plain(value);
  }
}
