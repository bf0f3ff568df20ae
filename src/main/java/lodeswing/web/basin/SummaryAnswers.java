package lodeswing.web.basin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lodeswing.analysis.basin.BasinSummary;
import lodeswing.analysis.basin.OutcomeShare;
import lodeswing.analysis.basin.SpecialEnd;
import lodeswing.analysis.basin.SummaryFigure;
import lodeswing.analysis.basin.WadaFinding;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;

/** A summary as document and table, in the layout's own units and names. */
final class SummaryAnswers {

  private static final int DIGITS = 6;

  private final SummaryRequest request;
  private final StoredSummary stored;
  private final BasinSummary summary;
  private final EndNames names;

  SummaryAnswers(SummaryRequest request, StoredSummary stored) {
    this.request = request;
    this.stored = stored;
    this.summary = stored.summary();
    this.names = new EndNames(request.basin().layout(), stored.survey().places());
  }

  /** The document. */
  byte[] json() {
    BasinRequest basin = request.basin();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("basinId", basin.id());
    members.put("layoutId", basin.layout().layoutId());
    members.put("model", basin.layout().model());
    members.put("window", basin.windowBody());
    members.put("units", Body.of(new LinkedHashMap<>(basin.layout().units())));
    members.put("side", (double) request.side());
    members.put("releases", (double) releases());
    members.put("sentence", summary.sentence());
    members.put("shares", summary.shares().stream().map(this::share).toList());
    members.put("shareSource", BasinSummary.SHARE_SOURCE);
    put(members, "boxDimension", summary.boxDimension());
    put(members, "uncertaintyExponent", summary.uncertaintyExponent());
    put(members, "basinEntropy", summary.basinEntropy());
    put(members, "boundaryBasinEntropy", summary.boundaryBasinEntropy());
    members.put("wada", wada(summary.wada()));
    stored.drawn().ifPresent(drawn -> members.put("drawn", drawn(drawn)));
    members.put("steadyShare", stored.survey().survey().steadyShare());
    members.put("followedS", stored.survey().followed());
    members.put("notes", notes());
    members.put("engineRevision", (double) basin.revision());
    members.put("links", links());
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private int releases() {
    return request.side() * request.side();
  }

  private int index(int end) {
    return SpecialEnd.index(end, names.restPoints());
  }

  private Body share(OutcomeShare share) {
    int index = index(share.end());
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("index", (double) index);
    members.put("kind", names.kind(index));
    names.place(index).ifPresent(place -> members.put("restPointId", place.id()));
    names.label(index).ifPresent(label -> members.put("label", label));
    members.put("name", names.name(index));
    members.put("releases", (double) share.releases());
    members.put("share", share.share());
    members.put("low", share.low());
    members.put("high", share.high());
    return Body.of(members);
  }

  private static void put(
      Map<String, Object> members, String name, Optional<SummaryFigure> figure) {
    figure.ifPresent(found -> members.put(name, figure(found)));
  }

  private static Body figure(SummaryFigure figure) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("value", figure.value());
    members.put("low", figure.low());
    members.put("high", figure.high());
    members.put("source", figure.source());
    members.put("sentence", figure.sentence());
    return Body.of(members);
  }

  private Body wada(WadaFinding wada) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("verdict", verdict(wada));
    members.put("indices", wada.ends().stream().map(end -> (double) index(end)).toList());
    put(members, "share", wada.share());
    members.put("source", wada.source());
    members.put("sentence", wada.sentence());
    return Body.of(members);
  }

  /** The word for a verdict. */
  static String verdict(WadaFinding wada) {
    return wada.verdict().name().toLowerCase(Locale.ROOT).replace('_', '-');
  }

  private Body drawn(StoredSummary.Drawn drawn) {
    double unit = request.basin().layout().shownPerUnit();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("releases", (double) drawn.releases());
    members.put("seed", (double) request.seed());
    members.put("smallest", drawn.smallest() * unit);
    members.put("largest", drawn.largest() * unit);
    return Body.of(members);
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "Figures are of this window and of scales down to its pixels: a narrower window has figures"
            + " of its own.");
    stored
        .drawn()
        .ifPresent(
            drawn ->
                notes.add(
                    "Neighbouring pixels are mixed too finely to give an uncertainty exponent; it"
                        + " comes from "
                        + drawn.releases()
                        + " more releases, drawn closer together than the pixels."));
    new BasinWords(request.basin(), stored.survey()).chance().ifPresent(notes::add);
    return notes;
  }

  private Body links() {
    String basin = "/v1/basins/" + request.basin().id();
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", request.url());
    links.put("csv", request.url() + "&format=csv");
    links.put("basin", basin);
    links.put("legend", basin + "/legend");
    links.put("layout", "/v1/layouts/" + request.basin().layout().layoutId());
    return Body.of(links);
  }

  /** The figures as a table, one a row; a cell is empty where there is nothing to say. */
  byte[] csv(CsvDialect dialect) {
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              "figure",
              "index",
              "outcome",
              "value",
              "low",
              "high",
              "releases",
              "source");
      for (OutcomeShare share : summary.shares()) {
        int index = index(share.end());
        csv.text("share").integer(index).text(names.name(index));
        csv.number(share.share(), DIGITS).number(share.low(), DIGITS).number(share.high(), DIGITS);
        csv.integer(share.releases()).text(BasinSummary.SHARE_SOURCE).endRow();
      }
      row(csv, "boxDimension", "", summary.boxDimension());
      row(csv, "uncertaintyExponent", "", summary.uncertaintyExponent());
      row(csv, "basinEntropy", "", summary.basinEntropy());
      row(csv, "boundaryBasinEntropy", "", summary.boundaryBasinEntropy());
      row(csv, "wada", verdict(summary.wada()), summary.wada().share());
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void row(
      CsvWriter csv, String name, String outcome, Optional<SummaryFigure> figure)
      throws IOException {
    csv.text(name).empty().text(outcome);
    if (figure.isPresent()) {
      csv.number(figure.get().value(), DIGITS);
      csv.number(figure.get().low(), DIGITS).number(figure.get().high(), DIGITS);
      csv.empty().text(figure.get().source());
    } else {
      csv.empty().empty().empty().empty().empty();
    }
    csv.endRow();
  }
}
