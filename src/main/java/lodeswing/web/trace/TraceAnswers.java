package lodeswing.web.trace;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.stream.IntStream;
import lodeswing.analysis.trace.Samples;
import lodeswing.analysis.trace.TraceEvent;
import lodeswing.analysis.trace.TraceResult;
import lodeswing.figure.PathThinning;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.restpoint.RestPlace;

/** A trace as documents, tables and single values, in the layout's own units. */
final class TraceAnswers {

  private static final String NOT_REACHED = "not reached";

  private final TraceRequest request;
  private final StoredPath stored;
  private final TraceResult path;
  private final TraceWords words;

  TraceAnswers(TraceRequest request, byte[] result) {
    this(request, StoredPath.read(result));
  }

  TraceAnswers(TraceRequest request, StoredPath stored) {
    this.request = request;
    this.stored = stored;
    this.path = stored.path();
    this.words = new TraceWords(request, stored);
  }

  StoredPath stored() {
    return stored;
  }

  TraceWords words() {
    return words;
  }

  /** The document. */
  byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("traceId", request.id());
    putCommon(members);
    members.put("release", request.canonical().object("release"));
    members.put("samples", samples());
    members.put("events", path.events().stream().map(this::event).toList());
    members.put("sampleIntervalS", request.sampleIntervalS());
    members.put("followedUntilS", time(path.followedUntil()));
    members.put("links", links());
    return bytes(members);
  }

  /** The document of the outcome alone. */
  byte[] outcomeJson() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("x", request.release().get(0));
    members.put("y", request.release().get(1));
    putCommon(members);
    members.put("links", links());
    return bytes(members);
  }

  private void putCommon(Map<String, Object> members) {
    members.put("layoutId", request.layout().layoutId());
    members.put("model", request.layout().model());
    members.put("units", Body.of(new LinkedHashMap<>(request.layout().units())));
    outcome().ifPresent(outcome -> members.put("outcome", outcome));
    members.put("sure", path.sure());
    stored.otherMapEnd().ifPresent(end -> members.put("mapOutcome", end(end)));
    put(members, "sealedAtS", path.sealedAt());
    put(members, "settledAtS", path.settledAt());
    put(members, "trustedUntilS", path.trustedUntil());
    put(members, "foretoldUntilS", path.foretoldUntil());
    members.put("notReached", words.notReached());
    members.put("notes", words.notes());
    members.put("engineRevision", (double) request.revision());
  }

  /** The rest point, or what ended the motion before; empty while undecided. */
  Optional<Body> outcome() {
    return path.restPoint().isPresent()
        ? Optional.of(outcome(path.restPoint().getAsInt()))
        : path.ending().map(event -> ended(event.kind()));
  }

  private static Body ended(TraceEvent.Kind kind) {
    return ended(kind.word(), TraceWords.text(kind));
  }

  static Body ended(String kind, String name) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("kind", kind);
    members.put("name", name);
    return Body.of(members);
  }

  /** An end as a map numbers it. */
  private Body end(int index) {
    return words
        .ends()
        .special(index)
        .map(special -> ended(special.word(), words.ends().name(index)))
        .orElseGet(() -> outcome(index));
  }

  private Body outcome(int index) {
    RestPlace place = stored.places().get(index);
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("kind", "rest-point");
    members.put("restPointId", place.id());
    words.names().label(index).ifPresent(label -> members.put("label", label));
    members.put("name", words.names().name(index));
    if (place.ring()) {
      members.put("ringRadius", length(place.radius()));
    } else {
      members.put("x", length(place.x()));
      members.put("y", length(place.y()));
    }
    return Body.of(members);
  }

  Body event(TraceEvent event) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("tS", time(event.time()));
    members.put("kind", event.kind().word());
    members.put("text", TraceWords.text(event.kind()));
    return Body.of(members);
  }

  Body samples() {
    if (request.cubics()) {
      return SparePath.of(path.curve(), request).columns();
    }
    Samples samples = path.samples();
    int[] kept = kept();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("t", IntStream.of(kept).mapToObj(i -> time(samples.t(i))).toList());
    members.put("x", column(samples.x(), kept));
    members.put("y", column(samples.y(), kept));
    members.put("vx", column(samples.vx(), kept));
    members.put("vy", column(samples.vy(), kept));
    members.put(
        request.bench() ? "energyJ" : "energy",
        IntStream.of(kept).mapToObj(i -> energy(samples.energy()[i])).toList());
    return Body.of(members);
  }

  private List<Double> column(double[] values, int[] kept) {
    return IntStream.of(kept).mapToObj(i -> length(values[i])).toList();
  }

  /** Indices of the samples that stay when the path is thinned. */
  private int[] kept() {
    Samples samples = path.samples();
    OptionalDouble thin = request.thin();
    return thin.isPresent()
        ? PathThinning.indices(
            samples.times(), samples.x(), samples.y(), thin.getAsDouble() * request.unit())
        : IntStream.range(0, samples.count()).toArray();
  }

  /** The table. */
  byte[] csv(CsvDialect dialect) {
    Samples samples = path.samples();
    boolean bench = request.bench();
    var out = new StringBuilder();
    try {
      var csv =
          bench
              ? new CsvWriter(
                  out, dialect, "t_s", "x_mm", "y_mm", "vx_mm_per_s", "vy_mm_per_s", "energy_j")
              : new CsvWriter(out, dialect, "t", "x", "y", "vx", "vy", "energy");
      if (request.cubics()) {
        SparePath.of(path.curve(), request).write(csv);
        return out.toString().getBytes(StandardCharsets.UTF_8);
      }
      for (int i : kept()) {
        csv.number(time(samples.t(i)))
            .number(length(samples.x()[i]))
            .number(length(samples.y()[i]))
            .number(length(samples.vx()[i]))
            .number(length(samples.vy()[i]))
            .number(energy(samples.energy()[i]))
            .endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** The outcome as a table of one row, its first columns those of a list of outcomes. */
  byte[] outcomeCsv(CsvDialect dialect) {
    String length = request.bench() ? "_mm" : "";
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              "x" + length,
              "y" + length,
              "outcome",
              "settled_s",
              "sealed_s",
              "sure",
              "trusted_until_s",
              "foretold_until_s",
              "map_outcome");
      csv.number(request.release().get(0)).number(request.release().get(1)).text(words.outcome());
      time(csv, path.settledAt());
      time(csv, path.sealedAt());
      csv.text(Boolean.toString(path.sure()));
      time(csv, path.trustedUntil());
      time(csv, path.foretoldUntil());
      if (stored.otherMapEnd().isPresent()) {
        csv.text(words.mapOutcome());
      } else {
        csv.empty();
      }
      csv.endRow();
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void time(CsvWriter csv, OptionalDouble time) throws IOException {
    if (time.isPresent()) {
      csv.number(time(time.getAsDouble()));
    } else {
      csv.empty();
    }
  }

  /** One value for a cell of a spreadsheet. */
  String value(TraceValue value) {
    return switch (value) {
      case OUTCOME -> words.outcome();
      case SURE -> Boolean.toString(path.sure());
      case SEALED_AT -> time(path.sealedAt());
      case SETTLED_AT -> time(path.settledAt());
      case TRUSTED_UNTIL -> time(path.trustedUntil());
      case FORETOLD_UNTIL -> time(path.foretoldUntil());
      case MAP_OUTCOME -> words.mapOutcome();
      case TRACE_ID -> request.id();
    };
  }

  private static String time(OptionalDouble time) {
    return time.isPresent() ? Numbers.shortest(time(time.getAsDouble())) : NOT_REACHED;
  }

  private Body links() {
    String self = "/v1/traces/" + request.id();
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", self);
    links.put("csv", self + "?format=csv");
    links.put("path", self + "/path");
    links.put("glow", self + "/glow");
    links.put("animation", self + "/animation");
    links.put("layout", "/v1/layouts/" + request.layout().layoutId());
    links.put("restPoints", "/v1/layouts/" + request.layout().layoutId() + "/rest-points");
    return Body.of(links);
  }

  static void put(Map<String, Object> members, String name, OptionalDouble time) {
    time.ifPresent(value -> members.put(name, time(value)));
  }

  private static byte[] bytes(Map<String, Object> members) {
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  /** Nanoseconds are the last digit. */
  static double time(double time) {
    return rounded(time, 1e9);
  }

  private double length(double value) {
    return request.layout().shown(value);
  }

  /** Twelve decimals: a barrier has some millijoules. */
  private static double energy(double value) {
    return rounded(value, 1e12);
  }

  /** Rounded to a decimal; the sum turns -0 into 0. */
  private static double rounded(double value, double perUnit) {
    return Math.rint(value * perUnit) / perUnit + 0.0;
  }
}
