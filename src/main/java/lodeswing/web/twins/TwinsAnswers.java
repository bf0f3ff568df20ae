package lodeswing.web.twins;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lodeswing.analysis.trace.Samples;
import lodeswing.analysis.twins.TwinsResult;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.trace.TracedPath;

/** Twins as documents, tables and single values, in the layout's own units. */
final class TwinsAnswers {

  private static final String NOT_REACHED = "not reached";
  private static final double ROUNDING = 1e-12;
  private static final MathContext DIGITS = new MathContext(7, RoundingMode.HALF_EVEN);

  private final TwinsRequest request;
  private final TracedPath first;
  private final TracedPath second;
  private final TwinsResult pair;
  private final TwinsWords words;

  TwinsAnswers(TwinsRequest request, byte[] result) {
    StoredTwins stored = StoredTwins.read(result);
    this.request = request;
    this.first = new TracedPath(request.first(), stored.first());
    this.second = new TracedPath(request.second(), stored.second());
    this.pair = stored.pair();
    this.words = new TwinsWords(request, first, second, pair);
  }

  TracedPath first() {
    return first;
  }

  TracedPath second() {
    return second;
  }

  TwinsResult pair() {
    return pair;
  }

  TwinsWords words() {
    return words;
  }

  /** The document. */
  byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("twinsId", request.id());
    members.put("layoutId", request.layout().layoutId());
    members.put("model", request.layout().model());
    members.put("units", Body.of(new LinkedHashMap<>(request.layout().units())));
    members.put("sentence", words.sentence());
    members.put("release", request.first().canonical().object("release"));
    members.put("shift", request.shiftBody());
    members.put("outcomes", List.of(first.outcome(), second.outcome()));
    if (first.decided() && second.decided()) {
      members.put("alike", first.endsLike(second));
    }
    members.put("sure", sure());
    pair.growth().ifPresent(growth -> putGrowth(members, growth));
    put(members, "partedAtS", pair.partedAt());
    members.put("partedDistance", length(pair.partedDistance()));
    members.put("shownUntilS", time(pair.shownUntil()));
    members.put("shownEnd", pair.shownEnd().word());
    members.put("separation", separation());
    members.put("paths", List.of(first.document(), second.document()));
    members.put("sampleIntervalS", request.first().sampleIntervalS());
    members.put("notReached", words.notReached());
    members.put("notes", words.notes());
    members.put("engineRevision", (double) request.revision());
    members.put("links", links());
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private boolean sure() {
    return first.path().sure() && second.path().sure();
  }

  private static void putGrowth(Map<String, Object> members, TwinsResult.Growth growth) {
    double rate = growth.rate().value();
    members.put("growthRatePerS", rate(rate));
    Map<String, Object> fit = new LinkedHashMap<>();
    fit.put("perS", rate(rate));
    fit.put("lowPerS", rate(growth.rate().interval().low()));
    fit.put("highPerS", rate(growth.rate().interval().high()));
    fit.put("standardErrorPerS", rate(growth.rate().standardError()));
    fit.put("confidence", 0.95);
    fit.put("fromS", 0.0);
    fit.put("untilS", time(growth.until()));
    fit.put("endedBy", growth.end().word());
    fit.put(
        "method",
        "Least squares through the logarithm of phaseDistance; standard error with neighbours"
            + " dependent over one small swing, Student's interval with as many degrees of freedom"
            + " as the window has small swings, less one. In trials with ten such swings intervals so"
            + " made held the true rate in about 85 of 100 cases, not in 95.");
    fit.put("source", "W. K. Newey, K. D. West, Econometrica 55 (1987) 703");
    members.put("growthRate", Body.of(fit));
    Map<String, Object> exponent = new LinkedHashMap<>();
    exponent.put("perS", rate(growth.first()));
    exponent.put("secondPerS", rate(growth.second()));
    exponent.put("fromS", 0.0);
    exponent.put("untilS", time(growth.until()));
    exponent.put(
        "method",
        "Variational equation beside each path for an infinitesimal shift in the direction of the"
            + " asked one, brought back to length 1 after every step.");
    exponent.put("source", "G. Benettin and others, Meccanica 15 (1980) 9 and 21");
    members.put("finiteTimeExponent", Body.of(exponent));
  }

  /** Samples of both paths up to the time to which the separation is known. */
  private int shown() {
    Samples one = first.path().samples();
    int count = Math.min(one.count(), second.path().samples().count());
    double last = pair.shownUntil() * (1 + ROUNDING);
    while (count > 1 && one.t(count - 1) > last) {
      count--;
    }
    return count;
  }

  private double distance(int i) {
    Samples one = first.path().samples();
    Samples other = second.path().samples();
    return Math.hypot(other.x()[i] - one.x()[i], other.y()[i] - one.y()[i]);
  }

  private double phaseDistance(int i) {
    Samples one = first.path().samples();
    Samples other = second.path().samples();
    double speeds = Math.hypot(other.vx()[i] - one.vx()[i], other.vy()[i] - one.vy()[i]);
    return Math.hypot(distance(i), speeds / pair.rate());
  }

  private Body separation() {
    int count = shown();
    Samples one = first.path().samples();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("t", IntStream.range(0, count).mapToObj(i -> time(one.t(i))).toList());
    members.put("distance", IntStream.range(0, count).mapToObj(i -> apart(distance(i))).toList());
    members.put(
        "phaseDistance", IntStream.range(0, count).mapToObj(i -> apart(phaseDistance(i))).toList());
    return Body.of(members);
  }

  /** The table: both places and how far apart they are, as long as that is known. */
  byte[] csv(CsvDialect dialect) {
    Samples one = first.path().samples();
    Samples other = second.path().samples();
    String unit = request.first().bench() ? "_mm" : "";
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              request.first().bench() ? "t_s" : "t",
              "x1" + unit,
              "y1" + unit,
              "x2" + unit,
              "y2" + unit,
              "distance" + unit,
              "phase_distance" + unit);
      for (int i = 0; i < shown(); i++) {
        csv.number(time(one.t(i)))
            .number(length(one.x()[i]))
            .number(length(one.y()[i]))
            .number(length(other.x()[i]))
            .number(length(other.y()[i]))
            .number(apart(distance(i)))
            .number(apart(phaseDistance(i)))
            .endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Whether a value is a figure, not words that may begin as one. */
  static boolean isFigure(TwinsValue value, String written) {
    return switch (value) {
      case SENTENCE, ALIKE, OUTCOME, SECOND_OUTCOME, SURE, TWINS_ID -> false;
      case GROWTH_RATE,
          GROWTH_RATE_LOW,
          GROWTH_RATE_HIGH,
          EXPONENT,
          SECOND_EXPONENT,
          PARTED_AT,
          SHOWN_UNTIL ->
          !written.equals(NOT_REACHED);
    };
  }

  /** One value for a cell of a spreadsheet. */
  String value(TwinsValue value) {
    return switch (value) {
      case SENTENCE -> words.sentence();
      case GROWTH_RATE -> rate(pair.growth().map(g -> g.rate().value()));
      case GROWTH_RATE_LOW -> rate(pair.growth().map(g -> g.rate().interval().low()));
      case GROWTH_RATE_HIGH -> rate(pair.growth().map(g -> g.rate().interval().high()));
      case EXPONENT -> rate(pair.growth().map(TwinsResult.Growth::first));
      case SECOND_EXPONENT -> rate(pair.growth().map(TwinsResult.Growth::second));
      case PARTED_AT -> figure(pair.partedAt());
      case SHOWN_UNTIL -> Numbers.shortest(time(pair.shownUntil()));
      case ALIKE ->
          first.decided() && second.decided()
              ? Boolean.toString(first.endsLike(second))
              : "undecided";
      case OUTCOME -> first.outcomeWords();
      case SECOND_OUTCOME -> second.outcomeWords();
      case SURE -> Boolean.toString(sure());
      case TWINS_ID -> request.id();
    };
  }

  private static String rate(Optional<Double> rate) {
    return rate.map(value -> Numbers.shortest(rate(value))).orElse(NOT_REACHED);
  }

  private static String figure(OptionalDouble time) {
    return time.isPresent() ? Numbers.shortest(time(time.getAsDouble())) : NOT_REACHED;
  }

  private Body links() {
    String self = request.url();
    String layout = "/v1/layouts/" + request.layout().layoutId();
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", self);
    links.put("csv", self + "?format=csv");
    links.put("paths", self + "/paths");
    links.put("separation", self + "/separation");
    links.put("firstTrace", layout + "/trace?" + query(request.first().release()));
    links.put("secondTrace", layout + "/trace?" + query(request.second().release()));
    links.put("layout", layout);
    return Body.of(links);
  }

  private String query(List<Double> release) {
    return "x="
        + Numbers.shortest(release.get(0))
        + "&y="
        + Numbers.shortest(release.get(1))
        + "&vx="
        + Numbers.shortest(release.get(2))
        + "&vy="
        + Numbers.shortest(release.get(3))
        + "&durationS="
        + Numbers.shortest(request.first().durationS())
        + "&sampleIntervalS="
        + Numbers.shortest(request.first().sampleIntervalS())
        + "&placingAccuracy="
        + Numbers.shortest(request.first().placingAccuracy());
  }

  private static void put(Map<String, Object> members, String name, OptionalDouble time) {
    time.ifPresent(value -> members.put(name, time(value)));
  }

  /** Nanoseconds are the last digit. */
  private static double time(double time) {
    return Math.rint(time * 1e9) / 1e9 + 0.0;
  }

  private double length(double value) {
    return request.layout().shown(value);
  }

  /** A distance to seven digits: it runs over many powers of ten. */
  private double apart(double value) {
    return significant(value * request.layout().shownPerUnit());
  }

  private static double rate(double value) {
    return significant(value);
  }

  private static double significant(double value) {
    return BigDecimal.valueOf(value).round(DIGITS).doubleValue();
  }
}
