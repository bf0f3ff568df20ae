package lodeswing.web.trace;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.analysis.trace.TraceSpec;
import lodeswing.core.rig.Release;
import lodeswing.job.ComputationKey;
import lodeswing.web.body.Body;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.limits.Limits;
import lodeswing.web.posted.Posted;
import lodeswing.web.posted.PostedKind;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/**
 * A trace as it is asked for, in the layout's own units, with every default filled in.
 *
 * @param layout the layout
 * @param release {@code x, y, vx, vy} [mm and mm/s on the bench]
 * @param durationS how long samples are taken
 * @param sampleIntervalS time between samples
 * @param placingAccuracy how exactly a hand places the bob [mm on the bench]
 * @param thin distance by which a thinned path may differ [mm on the bench]; empty for all samples
 * @param cubics whether cubics lie between the places that are answered, and not straight lines
 * @param revision of the engine that answers
 */
public record TraceRequest(
    LayoutDocument layout,
    List<Double> release,
    double durationS,
    double sampleIntervalS,
    double placingAccuracy,
    OptionalDouble thin,
    boolean cubics,
    int revision)
    implements Posted<TraceRequest> {

  static final PostedKind KIND =
      new PostedKind(
          "trc",
          "trace",
          "/v1/traces/",
          TraceShapes.STORED,
          "No trace of this id is stored; post it again at /v1/traces.");

  /** Raised with every change of the form in which paths are stored. */
  private static final String FORM = "form=3";

  /** Copies the list. */
  public TraceRequest {
    release = List.copyOf(release);
  }

  /** From a body that {@link TraceShapes#REQUEST} has read. */
  public static TraceRequest of(LayoutDocument layout, Body body) {
    Body release = body.object("release");
    return of(
        layout,
        List.of(
            release.number("x"), release.number("y"), release.number("vx"), release.number("vy")),
        body);
  }

  private static TraceRequest of(LayoutDocument layout, List<Double> release, Body body) {
    TraceDefaults defaults = TraceDefaults.of(layout);
    return new TraceRequest(
        layout,
        release,
        body.findNumber("durationS").orElse(defaults.durationS()),
        body.findNumber("sampleIntervalS").orElse(defaults.sampleIntervalS()),
        body.findNumber("placingAccuracy").orElse(defaults.placingAccuracy()),
        body.findNumber("thin"),
        body.findText("between").filter(TraceShapes.CUBICS::equals).isPresent(),
        ComputationKey.ENGINE_REVISION);
  }

  @Override
  public Body canonical() {
    Map<String, Object> place = new LinkedHashMap<>();
    place.put("x", release.get(0));
    place.put("y", release.get(1));
    place.put("vx", release.get(2));
    place.put("vy", release.get(3));
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("release", Body.of(place));
    members.put("durationS", durationS);
    members.put("sampleIntervalS", sampleIntervalS);
    members.put("placingAccuracy", placingAccuracy);
    thin.ifPresent(distance -> members.put("thin", distance));
    if (cubics) {
      members.put("between", TraceShapes.CUBICS);
    }
    return Body.of(members);
  }

  @Override
  public PostedKind kind() {
    return KIND;
  }

  @Override
  public TraceRequest of(int other) {
    return new TraceRequest(
        layout, release, durationS, sampleIntervalS, placingAccuracy, thin, cubics, other);
  }

  /** The same with its release shifted by {@code x, y, vx, vy}. */
  public TraceRequest shifted(List<Double> shift) {
    List<Double> moved = new ArrayList<>();
    for (int i = 0; i < shift.size(); i++) {
      moved.add(release.get(i) + shift.get(i));
    }
    return new TraceRequest(
        layout, moved, durationS, sampleIntervalS, placingAccuracy, thin, cubics, revision);
  }

  /** Names the path alone: labels and what is left out do not change it. */
  ComputationKey pathKey() {
    Body physics = canonical().without("thin").without("between");
    return new ComputationKey(
        "pth",
        KIND.word() + "|" + FORM + "|" + layout.physicsKey() + "|" + physics.toJson(),
        revision);
  }

  /** Whether lengths are millimetres and times seconds. */
  public boolean bench() {
    return layout.model().equals("bench");
  }

  /** Metres in a unit of length of this layout. */
  public double unit() {
    return 1 / layout.shownPerUnit();
  }

  /** What the analysis is asked. */
  public TraceSpec spec(Limits limits) {
    return new TraceSpec(
        new Release(
            release.get(0) * unit(),
            release.get(1) * unit(),
            release.get(2) * unit(),
            release.get(3) * unit()),
        durationS,
        sampleIntervalS,
        placingAccuracy * unit(),
        Math.max(durationS, limits.durationS()));
  }

  /** How many samples the path has before thinning. */
  public long samples() {
    return TraceSpec.samples(durationS, sampleIntervalS);
  }

  /**
   * Refuses what costs too much, saying what to ask instead.
   *
   * @throws ProblemException {@code too-costly}
   */
  public void checkCost(Limits limits, boolean fromQuery) {
    List<Fault> faults = new ArrayList<>();
    if (durationS > limits.durationS()) {
      faults.add(
          new Fault(
              pointer("durationS", fromQuery),
              "is " + plain(durationS) + "; lower it to " + plain(limits.durationS())));
    }
    long samples = samples();
    if (samples > limits.samplesPerTrace()) {
      double least = Math.min(durationS, limits.durationS()) / (limits.samplesPerTrace() - 1);
      faults.add(
          new Fault(
              pointer("sampleIntervalS", fromQuery),
              "makes "
                  + samples
                  + " samples of at most "
                  + limits.samplesPerTrace()
                  + "; raise it to "
                  + roundedUp(least)));
    }
    if (!faults.isEmpty()) {
      throw new ProblemException(
          ProblemCode.TOO_COSTLY, "The trace asks for more than a trace may cost.", faults);
    }
  }

  private static String pointer(String name, boolean fromQuery) {
    return fromQuery ? "?" + name : "/" + name;
  }

  private static String plain(double value) {
    return value == Math.rint(value) ? Long.toString((long) value) : Double.toString(value);
  }

  private static String roundedUp(double value) {
    double scale = Math.pow(10, 3 - Math.ceil(Math.log10(value)));
    return String.format(Locale.ROOT, "%.3g", Math.ceil(value * scale) / scale);
  }

  /** The title of the layout. */
  public Optional<String> title() {
    return layout.title();
  }
}
