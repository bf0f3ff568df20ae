package lodeswing.web.comparison;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import lodeswing.analysis.comparison.ComparisonResult;
import lodeswing.analysis.comparison.Hint;
import lodeswing.analysis.comparison.RecordedEnd;
import lodeswing.analysis.comparison.Track;
import lodeswing.core.motion.FreeMotion;
import lodeswing.core.recording.Recording;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.comparison.StoredComparison.StoredStart;
import lodeswing.web.restpoint.RestPointNames;
import lodeswing.web.trace.TraceRequest;
import lodeswing.web.trace.TracedPath;

/** A comparison as a document, a table and single values, in the layout's own units. */
final class ComparisonAnswers {

  private static final String NOT_REACHED = "not reached";
  private static final String NONE = "none";

  private final ComparisonRequest request;
  private final StoredComparison stored;
  private final ComparisonResult found;
  private final Recording plate;
  private final TracedPath foretold;
  private final RestPointNames names;
  private final ComparisonWords words;

  ComparisonAnswers(ComparisonRequest request, byte[] result) {
    this.request = request;
    this.stored = StoredComparison.read(result);
    this.found = stored.found();
    this.plate = request.kept().inSi().onPlate(frame());
    this.foretold = new TracedPath(traced(), stored.path());
    this.names = new RestPointNames(request.layout(), stored.path().places());
    this.words = new ComparisonWords(request, this);
  }

  private RecordingFrame frame() {
    RecordingFrame stated = request.kept().frameInSi();
    return new RecordingFrame(
        stated.originX(),
        stated.originY(),
        stated.turn(),
        stated.scale(),
        stored.start().mirrored());
  }

  /** The foretold path as the trace that it is. */
  private TraceRequest traced() {
    StoredStart start = stored.start();
    double shown = request.layout().shownPerUnit();
    double duration = plate.since(plate.count() - 1) - start.time();
    return new TraceRequest(
        request.layout(),
        List.of(
            start.release().x() * shown,
            start.release().y() * shown,
            start.release().vx() * shown,
            start.release().vy() * shown),
        duration,
        duration,
        1,
        OptionalDouble.empty(),
        false,
        request.revision());
  }

  StoredComparison stored() {
    return stored;
  }

  ComparisonResult found() {
    return found;
  }

  /** The recorded places on the plate. */
  Recording plate() {
    return plate;
  }

  /** The foretold path. */
  TracedPath foretold() {
    return foretold;
  }

  RestPointNames names() {
    return names;
  }

  ComparisonWords words() {
    return words;
  }

  /** Whether both end alike; empty where one of the ends is not known. */
  Optional<Boolean> endsAgree() {
    if (found.end().isEmpty() || !foretold.decided()) {
      return Optional.empty();
    }
    RecordedEnd end = found.end().get();
    return Optional.of(end.belongs() && end.nearest().equals(foretold.path().restPoint()));
  }

  /** Small swings that were compared. */
  double swings() {
    return (until() - from()) / period();
  }

  /** Time of a small swing. */
  double period() {
    return 2 * Math.PI / FreeMotion.of(request.layout().layout()).naturalRate();
  }

  /** Places that were recorded in a small swing, as a rule. */
  double placesPerSwing() {
    return period() / plate.usualInterval();
  }

  /** Time of the first place that was compared. */
  double from() {
    return plate.t(found.track().first());
  }

  /** Time of the last place that was compared. */
  double until() {
    return plate.t(found.track().first() + Math.max(0, found.track().count() - 1));
  }

  /** Distance at a place that noise, start and parts explain [SI]. */
  double explained(int i) {
    return ComparisonResult.BEYOND * Math.hypot(found.noise(), found.track().deviation()[i]);
  }

  /** The document. */
  byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("comparisonId", request.id());
    members.put("layoutId", request.layout().layoutId());
    members.put("model", request.layout().model());
    members.put("units", Body.of(new LinkedHashMap<>(request.layout().units())));
    members.put("sentence", words.sentence());
    members.put("verdict", found.verdict().word());
    members.put("start", start());
    members.put("comparedFromS", time(from()));
    members.put("comparedUntilS", time(until()));
    members.put("swings", Numbers.rounded(swings()));
    members.put("noise", length(found.noise()));
    members.put("startRms", length(found.near().startRms()));
    members.put("rms", length(found.near().rms()));
    members.put("greatest", length(found.near().greatest()));
    members.put("rmsUntilS", time(found.near().until()));
    put(members, "departedAtS", found.departedAt());
    put(members, "partedAtS", found.partedAt());
    members.put("partedDistance", length(found.partedDistance()));
    put(members, "trustedUntilS", found.trustedUntil());
    put(members, "foretoldUntilS", found.foretoldUntil());
    members.put("notReached", words.notReached());
    members.put("ends", ends());
    members.put("hints", found.hints().stream().map(this::hint).toList());
    members.put("reading", request.kept().reading(stored.start().mirrored()));
    members.put("track", track());
    members.put("notes", words.notes());
    members.put("engineRevision", (double) request.revision());
    members.put("links", links());
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private Body start() {
    StoredStart start = stored.start();
    int last = found.track().first() + start.places() - 1;
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("taken", request.release().isPresent() ? "told" : "from-recording");
    members.put("tS", time(plate.t(0) + start.time()));
    members.put("x", length(start.release().x()));
    members.put("y", length(start.release().y()));
    members.put("vx", length(start.release().vx()));
    members.put("vy", length(start.release().vy()));
    Map<String, Object> errors = new LinkedHashMap<>();
    List<String> components = List.of("x", "y", "vx", "vy");
    for (int k = 0; k < components.size(); k++) {
      errors.put(components.get(k), length(start.errors().get(k)));
    }
    errors.put("tS", time(start.errors().get(components.size())));
    members.put("errors", Body.of(errors));
    members.put("places", (double) start.places());
    members.put("untilS", time(plate.t(Math.min(last, plate.count() - 1))));
    members.put("scatter", length(start.scatter()));
    return Body.of(members);
  }

  private Body ends() {
    Map<String, Object> members = new LinkedHashMap<>();
    found.end().ifPresent(end -> members.put("recorded", recorded(end)));
    members.put("predicted", foretold.outcome());
    members.put("sure", foretold.path().sure());
    endsAgree().ifPresent(agree -> members.put("agree", agree));
    return Body.of(members);
  }

  private Body recorded(RecordedEnd end) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("x", length(end.x()));
    members.put("y", length(end.y()));
    if (end.nearest().isPresent()) {
      int nearest = end.nearest().getAsInt();
      if (end.belongs()) {
        members.put("restPointId", names.places().get(nearest).id());
        names.label(nearest).ifPresent(label -> members.put("label", label));
        members.put("name", names.name(nearest));
      }
      members.put("distance", length(end.distance()));
    }
    return Body.of(members);
  }

  private Body hint(Hint hint) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("kind", hint.kind().word());
    members.put(
        "changes",
        IntStream.range(0, hint.changes().size()).mapToObj(k -> change(hint, k)).toList());
    members.put("reversed", hint.reversed());
    members.put("untilS", time(hint.until()));
    members.put("text", words.hint(hint));
    return Body.of(members);
  }

  private Body change(Hint hint, int k) {
    Hint.Change change = hint.changes().get(k);
    double shown = words.shown(hint.kind());
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("name", ComparisonWords.names(hint.kind()).get(k));
    members.put("value", Numbers.rounded(change.value() * shown));
    members.put("low", Numbers.rounded((change.value() - change.halfWidth()) * shown));
    members.put("high", Numbers.rounded((change.value() + change.halfWidth()) * shown));
    return Body.of(members);
  }

  private Body track() {
    Track track = found.track();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("t", column(i -> recordedTime(i)));
    members.put("x", lengths(i -> plate.x(track.first() + i)));
    members.put("y", lengths(i -> plate.y(track.first() + i)));
    members.put("predictedX", lengths(i -> track.x()[i]));
    members.put("predictedY", lengths(i -> track.y()[i]));
    members.put("distance", lengths(i -> track.distance()[i]));
    members.put("explained", lengths(this::explained));
    members.put("trusted", column(this::trusted));
    members.put("foretold", column(this::isForetold));
    return Body.of(members);
  }

  private <T> List<T> column(IntFunction<T> value) {
    return IntStream.range(0, found.track().count()).mapToObj(value).toList();
  }

  private List<Double> lengths(IntToDoubleFunction value) {
    return column(i -> length(value.applyAsDouble(i)));
  }

  private double recordedTime(int i) {
    return plate.t(found.track().first() + i);
  }

  private boolean trusted(int i) {
    return recordedTime(i) <= found.trustedUntil().orElse(Double.POSITIVE_INFINITY);
  }

  private boolean isForetold(int i) {
    return trusted(i) && recordedTime(i) < found.foretoldUntil().orElse(Double.POSITIVE_INFINITY);
  }

  /** The table: each recorded place on the plate, the foretold one, and how far they are apart. */
  byte[] csv(CsvDialect dialect) {
    Track track = found.track();
    String unit = request.bench() ? "_mm" : "";
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              request.bench() ? "t_s" : "t",
              "x" + unit,
              "y" + unit,
              "predicted_x" + unit,
              "predicted_y" + unit,
              "distance" + unit,
              "explained" + unit,
              "trusted",
              "foretold");
      for (int i = 0; i < track.count(); i++) {
        csv.number(recordedTime(i))
            .number(length(plate.x(track.first() + i)))
            .number(length(plate.y(track.first() + i)))
            .number(length(track.x()[i]))
            .number(length(track.y()[i]))
            .number(length(track.distance()[i]))
            .number(length(explained(i)))
            .text(Boolean.toString(trusted(i)))
            .text(Boolean.toString(isForetold(i)))
            .endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** One value for a cell; a number, or words. */
  Object value(ComparisonValue value) {
    return switch (value) {
      case SENTENCE -> words.sentence();
      case VERDICT -> found.verdict().word();
      case PARTED_AT -> orNot(found.partedAt());
      case DEPARTED_AT -> orNot(found.departedAt());
      case TRUSTED_UNTIL -> orNot(found.trustedUntil());
      case FORETOLD_UNTIL -> orNot(found.foretoldUntil());
      case RMS -> length(found.near().rms());
      case GREATEST -> length(found.near().greatest());
      case START_RMS -> length(found.near().startRms());
      case NOISE -> length(found.noise());
      case PERIOD_PERCENT -> period(0);
      case PERIOD_LOW_PERCENT -> period(-1);
      case PERIOD_HIGH_PERCENT -> period(1);
      case HINT -> found.hints().stream().findFirst().map(words::hint).orElse(NONE);
      case ENDS_AGREE -> endsAgree().map(Object::toString).orElse("undecided");
      case RECORDED_END -> recordedEnd();
      case OUTCOME -> foretold.outcomeWords();
      case COMPARISON_ID -> request.id();
    };
  }

  private static Object orNot(OptionalDouble time) {
    return time.isPresent() ? (Object) time(time.getAsDouble()) : NOT_REACHED;
  }

  /** The period's change, or an end of its interval: -1 the lower one, 1 the upper one. */
  private Object period(int end) {
    return found.hints().stream()
        .filter(hint -> hint.kind() == Hint.Kind.PERIOD)
        .map(hint -> hint.changes().get(0))
        .map(
            change ->
                (Object)
                    Numbers.rounded(
                        (change.value() + end * change.halfWidth())
                            * words.shown(Hint.Kind.PERIOD)))
        .findFirst()
        .orElse(NONE);
  }

  private String recordedEnd() {
    if (found.end().isEmpty()) {
      return "not at rest";
    }
    RecordedEnd end = found.end().get();
    return end.belongs() && end.nearest().isPresent()
        ? names.name(end.nearest().getAsInt())
        : "no rest point";
  }

  private Body links() {
    String self = request.url();
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", self);
    links.put("csv", self + "?format=csv");
    links.put("paths", self + ComparisonReplies.PATHS);
    links.put("distance", self + ComparisonReplies.DISTANCE);
    links.put("layout", "/v1/layouts/" + request.layout().layoutId());
    links.put("fits", "/v1/fits");
    return Body.of(links);
  }

  /** A length as answers show it. */
  double length(double metres) {
    return request.layout().shown(metres);
  }

  static double time(double seconds) {
    return Numbers.rounded(seconds);
  }

  private static void put(Map<String, Object> members, String name, OptionalDouble time) {
    time.ifPresent(value -> members.put(name, time(value)));
  }
}
