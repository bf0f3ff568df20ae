package lodeswing.web.fit;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import lodeswing.core.recording.Recording;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;

/** A fit as a document, a table and single values, in the layout's own units. */
final class FitAnswers {

  private final FitRequest request;
  private final StoredFit stored;
  private final Recording recording;
  private final FoundQuantities found;
  private final FitWords words;

  FitAnswers(FitRequest request, byte[] result) {
    this.request = request;
    this.stored = StoredFit.read(result);
    this.recording = request.recording();
    this.found = new FoundQuantities(request, stored);
    this.words = new FitWords(request, stored, found);
  }

  StoredFit stored() {
    return stored;
  }

  Recording recording() {
    return recording;
  }

  /** The document. */
  byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("fitId", request.id());
    members.put("layoutId", request.layout().layoutId());
    members.put("units", Body.of(new LinkedHashMap<>(request.layout().units())));
    members.put("sentence", words.sentence());
    members.put("parameters", found.sought().stream().map(this::parameter).toList());
    members.put("correlations", correlations());
    members.put("residualRms", Numbers.rounded(shownResidual()));
    members.put(
        "residualOverNoise",
        stored.noise() > 0 ? Numbers.rounded(stored.residual() / stored.noise()) : 0.0);
    members.put("neighbourCorrelation", Numbers.rounded(stored.found().number("neighbours")));
    members.put("usedPlaces", (double) stored.used());
    members.put("usedUntilS", Numbers.rounded(stored.until(recording)));
    members.put("endedBy", stored.found().text("end"));
    members.put("converged", stored.found().flag("converged"));
    members.put("reading", request.kept().reading(stored.frame().mirrored()));
    members.put("residuals", residuals());
    LayoutDocument fitted = found.layout();
    Map<String, Object> layout = new LinkedHashMap<>();
    layout.put("layoutId", fitted.layoutId());
    layout.put("layout", fitted.shown());
    members.put("layout", Body.of(layout));
    members.put("notes", words.notes());
    members.put("engineRevision", (double) request.revision());
    members.put("links", links(fitted));
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private Body parameter(String name) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("name", name);
    if (!found.unit(name).isEmpty()) {
      members.put("unit", found.unit(name));
    }
    members.put("start", Numbers.rounded(found.begin(name, recording)));
    members.put("value", Numbers.rounded(found.value(name)));
    members.put("determined", found.determined(name));
    if (found.determined(name)) {
      members.put("standardError", Numbers.rounded(found.error(name)));
      members.put("low", Numbers.rounded(found.value(name) - found.half(name)));
      members.put("high", Numbers.rounded(found.value(name) + found.half(name)));
    }
    return Body.of(members);
  }

  private Body correlations() {
    List<String> told = found.sought().stream().filter(found::determined).toList();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("names", told);
    members.put(
        "rows",
        told.stream()
            .map(
                row ->
                    told.stream()
                        .map(column -> Numbers.rounded(found.correlation(row, column)))
                        .toList())
            .toList());
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

  /** What was found of each quantity. */
  FoundQuantities found() {
    return found;
  }

  /** The result in words. */
  String sentence() {
    return words.sentence();
  }

  private double shownResidual() {
    return stored.residual() * request.layout().shownPerUnit();
  }

  /** One value for a cell; a number, or words. */
  Object value(FitValue value, String quantity) {
    return switch (value) {
      case SENTENCE -> sentence();
      case VALUE -> Numbers.rounded(found.value(quantity));
      case LOW ->
          found.determined(quantity)
              ? Numbers.rounded(found.value(quantity) - found.half(quantity))
              : "none";
      case HIGH ->
          found.determined(quantity)
              ? Numbers.rounded(found.value(quantity) + found.half(quantity))
              : "none";
      case STANDARD_ERROR ->
          found.determined(quantity) ? Numbers.rounded(found.error(quantity)) : "none";
      case RESIDUAL_RMS -> Numbers.rounded(shownResidual());
      case USED_UNTIL -> Numbers.rounded(stored.until(recording));
      case ENDED_BY -> stored.found().text("end");
      case LAYOUT_ID -> found.layout().layoutId();
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
}
