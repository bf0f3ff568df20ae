package lodeswing.web.fit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import lodeswing.analysis.fit.FitResult;
import lodeswing.core.recording.Recording;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.FigureUnits;
import lodeswing.web.layout.LayoutDocument;

/** A fit as a document, a table and single values, in the layout's own units. */
final class FitAnswers {

  /** Neighbouring residuals that hang together more than this are told of. */
  private static final double RUNS_ON = 0.3;

  private final FitRequest request;
  private final StoredFit stored;
  private final FitQuantities quantities;
  private final Recording recording;
  private final List<String> sought;

  FitAnswers(FitRequest request, byte[] result) {
    this.request = request;
    this.stored = StoredFit.read(result);
    this.quantities = new FitQuantities(request);
    this.recording = request.recording();
    this.sought = quantities.sought();
  }

  StoredFit stored() {
    return stored;
  }

  Recording recording() {
    return recording;
  }

  /** Value of a quantity in its own unit. */
  private double value(String name) {
    return stored.value(quantities.names().indexOf(name)) / quantities.inSi(name);
  }

  private double error(String name) {
    return stored.standardError(sought.indexOf(name)) / quantities.inSi(name);
  }

  private double half(String name) {
    return stored.halfWidth(sought.indexOf(name)) / quantities.inSi(name);
  }

  private boolean determined(String name) {
    return stored.determined(sought.indexOf(name));
  }

  /** The layout with what was found, rounded where the error is. */
  LayoutDocument layout() {
    Map<String, Double> figures = new LinkedHashMap<>();
    for (String name : quantities.figures()) {
      double step = determined(name) ? Math.pow(10, Math.floor(Math.log10(error(name))) - 2) : 0;
      double value = value(name);
      boolean round = step > 0 && step < Math.abs(value) && Double.isFinite(step);
      figures.put(name, round ? Numbers.toDigits(Math.rint(value / step) * step, 12) : value);
    }
    return FitQuantities.changed(request.layout(), figures);
  }

  private double until() {
    return recording.since(stored.used() - 1);
  }

  private String lengthUnit() {
    return request.layout().model().equals("bench") ? " mm" : "";
  }

  private String timeUnit() {
    return request.layout().model().equals("bench") ? " s" : "";
  }

  /** The result in words. */
  String sentence() {
    StringBuilder words = new StringBuilder();
    List<String> told = sought.stream().filter(this::isFigureOrFrame).limit(4).toList();
    for (String name : told) {
      words.append(words.isEmpty() ? "" : ", ").append(FigureUnits.words(name)).append(' ');
      words.append(determined(name) ? figure(name) : "not told by this recording");
    }
    if (words.isEmpty()) {
      words.append("release at ").append(figure("x")).append(", ").append(figure("y"));
    }
    words.append("; ").append(stored.used()).append(" of ").append(recording.count());
    words.append(" places followed, ").append(short3(until())).append(timeUnit());
    words.append(", residuals ").append(short3(residual())).append(lengthUnit());
    words.append("; ").append(endWords()).append('.');
    return Character.toUpperCase(words.charAt(0)) + words.substring(1);
  }

  private boolean isFigureOrFrame(String name) {
    return !FitQuantities.OF_RELEASE.contains(name);
  }

  private String figure(String name) {
    String unit = unit(name);
    return short3(value(name), half(name))
        + " ± "
        + short2(half(name))
        + (unit.isEmpty() ? "" : " " + unit);
  }

  private String endWords() {
    return switch (FitResult.End.valueOf(stored.found().text("end").toUpperCase(Locale.ROOT))) {
      case WHOLE -> "the whole recording is followed";
      case HORIZON ->
          "beyond, the fitted path is too uncertain to be told from others, as chaotic paths are";
      case DISAGREES -> "beyond, no such rig follows what was recorded";
      case WORK -> "ended there since as much was computed as may be";
    };
  }

  private double residual() {
    return stored.found().number("residualRms") * request.layout().shownPerUnit();
  }

  private double noise() {
    return stored.found().number("noise") * request.layout().shownPerUnit();
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    List<String> untold = sought.stream().filter(name -> !determined(name)).toList();
    if (!untold.isEmpty()) {
      notes.add(
          "The recording does not tell "
              + String.join(", ", untold)
              + ": another value gives the same path.");
    }
    if (stored.found().number("neighbours") > RUNS_ON) {
      notes.add(
          "The residuals run on from place to place: something of the rig or the recording is"
              + " missing from the model, and the intervals are too narrow.");
    }
    if (stored.found().text("end").equals("disagrees")) {
      notes.add(
          "Seek more (the gap, the magnets' remanence, the frame), or look whether a magnet or the"
              + " support was moved, the bob touched, or the camera turned.");
    }
    if (stored.frame().mirrored()) {
      notes.add("The recording is mirrored: its y axis points the other way than the plate's.");
    }
    notes.add(
        "Intervals are of 95 %, for noise without memory and a rig that the model describes.");
    return notes;
  }

  /** The document. */
  byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("fitId", request.id());
    members.put("layoutId", request.layout().layoutId());
    members.put("units", Body.of(new LinkedHashMap<>(request.layout().units())));
    members.put("sentence", sentence());
    members.put("parameters", sought.stream().map(this::parameter).toList());
    members.put("correlations", correlations());
    members.put("residualRms", Numbers.rounded(residual()));
    members.put("residualOverNoise", noise() > 0 ? Numbers.rounded(residual() / noise()) : 0.0);
    members.put("neighbourCorrelation", Numbers.rounded(stored.found().number("neighbours")));
    members.put("usedPlaces", (double) stored.used());
    members.put("usedUntilS", Numbers.rounded(until()));
    members.put("endedBy", stored.found().text("end"));
    members.put("converged", stored.found().flag("converged"));
    members.put("reading", reading());
    members.put("residuals", residuals());
    LayoutDocument fitted = layout();
    Map<String, Object> layout = new LinkedHashMap<>();
    layout.put("layoutId", fitted.layoutId());
    layout.put("layout", fitted.canonical());
    members.put("layout", Body.of(layout));
    members.put("notes", notes());
    members.put("engineRevision", (double) request.revision());
    members.put("links", links(fitted));
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private Body parameter(String name) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("name", name);
    if (!unit(name).isEmpty()) {
      members.put("unit", unit(name));
    }
    members.put("start", Numbers.rounded(quantities.begin(name, recording)));
    members.put("value", Numbers.rounded(value(name)));
    members.put("determined", determined(name));
    if (determined(name)) {
      members.put("standardError", Numbers.rounded(error(name)));
      members.put("low", Numbers.rounded(value(name) - half(name)));
      members.put("high", Numbers.rounded(value(name) + half(name)));
    }
    return Body.of(members);
  }

  private String unit(String name) {
    boolean bench = request.layout().model().equals("bench");
    return switch (name) {
      case "x", "y", "originX", "originY" -> bench ? "mm" : "";
      case "vx", "vy" -> bench ? "mm/s" : "";
      default -> FigureUnits.of(name);
    };
  }

  private Body correlations() {
    List<String> told = sought.stream().filter(this::determined).toList();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("names", told);
    members.put(
        "rows",
        told.stream()
            .map(
                row ->
                    told.stream()
                        .map(
                            column ->
                                Numbers.rounded(
                                    stored.correlation(
                                        sought.indexOf(row), sought.indexOf(column))))
                        .toList())
            .toList());
    return Body.of(members);
  }

  private Body reading() {
    double unit = request.layout().shownPerUnit();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("places", (double) recording.count());
    members.put("gaps", (double) request.gaps());
    members.put("durationS", Numbers.rounded(recording.since(recording.count() - 1)));
    members.put("usualIntervalS", Numbers.rounded(recording.usualInterval()));
    members.put("longestIntervalS", Numbers.rounded(recording.longestInterval()));
    members.put("mirrored", stored.frame().mirrored());
    members.put("noise", Numbers.rounded(recording.noise() * unit));
    return Body.of(members);
  }

  /** A recorded place on the plate, as the frame was fitted. */
  double[] plan(int i) {
    double[] plan = new double[2];
    stored.frame().toPlan(recording.x(i), recording.y(i), plan);
    return plan;
  }

  private double fittedX(int i) {
    return stored.found().numbers("fittedX").get(i);
  }

  private double fittedY(int i) {
    return stored.found().numbers("fittedY").get(i);
  }

  private double apart(int i) {
    double[] plan = plan(i);
    return Math.hypot(plan[0] - fittedX(i), plan[1] - fittedY(i));
  }

  private Body residuals() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("t", IntStream.range(0, stored.used()).mapToObj(recording::t).toList());
    members.put("x", shown(i -> plan(i)[0]));
    members.put("y", shown(i -> plan(i)[1]));
    members.put("fittedX", shown(this::fittedX));
    members.put("fittedY", shown(this::fittedY));
    members.put("distance", shown(this::apart));
    return Body.of(members);
  }

  private List<Double> shown(IntToDoubleFunction column) {
    return IntStream.range(0, stored.used())
        .mapToObj(i -> request.layout().shown(column.applyAsDouble(i)))
        .toList();
  }

  /** The table: each recorded place on the plate, the fitted one, and how far they are apart. */
  byte[] csv(CsvDialect dialect) {
    boolean bench = request.layout().model().equals("bench");
    String unit = bench ? "_mm" : "";
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              bench ? "t_s" : "t",
              "x" + unit,
              "y" + unit,
              "fitted_x" + unit,
              "fitted_y" + unit,
              "distance" + unit);
      for (int i = 0; i < stored.used(); i++) {
        double[] plan = plan(i);
        csv.number(recording.t(i))
            .number(request.layout().shown(plan[0]))
            .number(request.layout().shown(plan[1]))
            .number(request.layout().shown(fittedX(i)))
            .number(request.layout().shown(fittedY(i)))
            .number(request.layout().shown(apart(i)))
            .endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** Whether a quantity is among those that were sought. */
  boolean seeks(String name) {
    return sought.contains(name);
  }

  List<String> sought() {
    return sought;
  }

  /** One value for a cell; a number, or words. */
  Object value(FitValue value, String quantity) {
    return switch (value) {
      case SENTENCE -> sentence();
      case VALUE -> Numbers.rounded(value(quantity));
      case LOW -> determined(quantity) ? Numbers.rounded(value(quantity) - half(quantity)) : "none";
      case HIGH ->
          determined(quantity) ? Numbers.rounded(value(quantity) + half(quantity)) : "none";
      case STANDARD_ERROR -> determined(quantity) ? Numbers.rounded(error(quantity)) : "none";
      case RESIDUAL_RMS -> Numbers.rounded(residual());
      case USED_UNTIL -> Numbers.rounded(until());
      case ENDED_BY -> stored.found().text("end");
      case LAYOUT_ID -> layout().layoutId();
      case FIT_ID -> request.id();
    };
  }

  private Body links(LayoutDocument fitted) {
    String self = request.url();
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", self);
    links.put("csv", self + "?format=csv");
    links.put("paths", self + "/paths");
    links.put("layout", "/v1/layouts/" + request.layout().layoutId());
    links.put("fittedLayout", "/v1/layouts/" + fitted.layoutId());
    return Body.of(links);
  }

  /** A value to the digits that its error leaves. */
  private static String short3(double value, double half) {
    if (!(half > 0)) {
      return short3(value);
    }
    int digits = (int) Math.max(0, 1 - Math.floor(Math.log10(half)));
    return BigDecimal.valueOf(value)
        .setScale(Math.min(digits, 12), RoundingMode.HALF_EVEN)
        .toPlainString();
  }

  private static String short3(double value) {
    return Numbers.plain(Numbers.toDigits(value, 3));
  }

  private static String short2(double value) {
    return Numbers.plain(Numbers.toDigits(value, 2));
  }
}
