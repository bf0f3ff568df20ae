package lodeswing.web.tuning;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import lodeswing.analysis.tuning.TuningSpec;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Drawing;
import lodeswing.figure.Measure;
import lodeswing.figure.MovesFigure;
import lodeswing.render.csv.CellText;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.plate.PlateMap;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** A tuning as document, tables, picture and single values, in the layout's own units and names. */
final class TuningAnswers {

  private static final int DIGITS = 6;
  private static final int MOST_NAMES = 8;

  private final TuningRequest request;
  private final StoredTuning stored;
  private final List<TunedLayout> layouts;
  private final LabelOdds before;
  private final LabelOdds beforeConfirmed;

  TuningAnswers(TuningRequest request, StoredTuning stored) {
    this.request = request;
    this.stored = stored;
    WorkBench bench = new WorkBench(request);
    this.layouts =
        stored.nearest().stream().map(rig -> new TunedLayout(request, bench, rig)).toList();
    TunedLayout own = new TunedLayout(request, bench, stored.before());
    this.before = own.counted();
    this.beforeConfirmed = own.confirmed();
  }

  private TunedLayout best() {
    return layouts.get(0);
  }

  /** The document. */
  byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("tuningId", request.id());
    members.put("layoutId", request.layout().layoutId());
    members.put("model", request.layout().model());
    members.put("units", Body.of(new LinkedHashMap<>(request.layout().units())));
    members.put("release", request.canonical().object("release"));
    members.put("spread", request.canonical().object("spread"));
    members.put("wanted", wanted());
    for (String name :
        List.of(
            "tolerance",
            "move",
            "answers",
            "candidates",
            "width",
            "interval",
            "seed",
            "confirmSeed")) {
      Optional.ofNullable(request.canonical().members().get(name))
          .ifPresent(value -> members.put(name, value));
    }
    members.put("sentence", sentence());
    members.put("met", best().met());
    members.put("before", before.body());
    List<Body> found = new ArrayList<>();
    for (int k = 0; k < layouts.size(); k++) {
      found.add(layouts.get(k).body(request.url(), k + 1));
    }
    members.put("layouts", found);
    members.put("tried", (double) stored.tried());
    members.put("refused", (double) stored.refused());
    members.put("notes", notes());
    members.put("engineRevision", (double) request.revision());
    members.put("links", links());
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private List<Body> wanted() {
    List<Body> wanted = new ArrayList<>();
    List<String> labels = request.labels();
    for (int k = 0; k < labels.size(); k++) {
      Map<String, Object> line = new LinkedHashMap<>();
      line.put("label", labels.get(k));
      line.put("chance", request.wanted().get(k));
      wanted.add(Body.of(line));
    }
    return wanted;
  }

  private Body links() {
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", request.url());
    links.put("csv", request.url() + "?format=csv");
    links.put("moves", request.url() + "?format=csv&table=moves");
    links.put("plate", request.url() + "/plate");
    links.put("layout", "/v1/layouts/" + request.layout().layoutId());
    links.put("tunedLayout", "/v1/layouts/" + best().document().layoutId());
    return Body.of(links);
  }

  private static String points(double share) {
    return String.format(Locale.ROOT, "%.1f", 100 * share);
  }

  private static String listed(LabelOdds odds) {
    List<LabelOdds.Line> lines = odds.labelled();
    List<String> words = new ArrayList<>();
    for (LabelOdds.Line line : lines.subList(0, Math.min(MOST_NAMES, lines.size()))) {
      words.add(
          String.format(
              Locale.ROOT,
              "%s %.1f %% (%.1f to %.1f %%)",
              line.name(),
              100 * line.chance(),
              100 * line.interval().low(),
              100 * line.interval().high()));
    }
    return String.join(", ", words);
  }

  /** The whole in words. */
  String sentence() {
    TunedLayout best = best();
    LabelOdds confirmed = best.confirmed();
    String off =
        points(confirmed.distance())
            + " points ("
            + points(confirmed.distanceLow())
            + " to "
            + points(confirmed.distanceHigh())
            + ")";
    String tolerance = points(request.tolerance()) + " points";
    if (best.unmoved() && best.met()) {
      return "As it is, the layout has what is wanted within "
          + tolerance
          + ": "
          + listed(confirmed)
          + ". Nothing is to be moved.";
    }
    String was = " Before: " + listed(before) + ".";
    if (best.met()) {
      return best.sentence()
          + " Then, by a new seed: "
          + listed(confirmed)
          + ", off what is wanted by "
          + off
          + " at most, within the tolerance of "
          + tolerance
          + (best.certain() ? "" : " by the count, though its interval reaches beyond")
          + "."
          + was;
    }
    return "What is wanted was not reached: of "
        + stored.tried()
        + " layouts that were tried within these bounds the nearest is off by "
        + off
        + ", more than "
        + tolerance
        + ": "
        + listed(confirmed)
        + "."
        + laterOnes()
        + bounds(best)
        + " "
        + best.sentence()
        + was;
  }

  /** Names a layout further down that is within the tolerance, where the nearest is not. */
  private String laterOnes() {
    for (int k = 1; k < layouts.size(); k++) {
      if (layouts.get(k).met()) {
        return " By the new seed layout " + (k + 1) + " of the list is within the tolerance.";
      }
    }
    return "";
  }

  private String bounds(TunedLayout best) {
    String refused =
        stored.refused() > 0
            ? " "
                + stored.refused()
                + " more could not be built or started, since magnets would overlap, leave the"
                + " plate, or be in the bob's way."
            : "";
    return best.atBounds().isEmpty()
        ? refused
            + " It ran into no bound; more candidates, a finer step or other parts may come nearer."
        : refused
            + " It ran into the bound of "
            + String.join(
                ", ", best.atBounds().subList(0, Math.min(MOST_NAMES, best.atBounds().size())))
            + "; wider bounds may come nearer.";
  }

  private List<String> notes() {
    List<String> notes = new ArrayList<>();
    notes.add(
        "The nearest layouts were chosen by tries of the seed; those of confirmSeed had no part in"
            + " it, and met is judged by them alone. Intervals are at 95 %, each for one label.");
    notes.add(
        "Candidates are tried with "
            + TuningSpec.GLANCE
            + " releases each, so a layout that is nearer still may have been passed over.");
    if (request.bench()) {
      notes.add(
          "Where the rig as built is off by more than a step, its odds are others: ask the tuned"
              + " layout's odds with tolerances how robust they are. Move magnets one at a time with"
              + " the bob away, keep fingers from between them, and keep them from small children"
              + " and from cardiac devices; local rules and trained staff come first.");
    }
    return notes;
  }

  /** A table. */
  byte[] csv(String table, CsvDialect dialect) {
    var out = new StringBuilder();
    try {
      if (table.equals("moves")) {
        moves(out, dialect);
      } else {
        odds(out, dialect);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void odds(StringBuilder out, CsvDialect dialect) throws IOException {
    var csv =
        new CsvWriter(
            out,
            dialect,
            "label",
            "wanted",
            "before",
            "before_low",
            "before_high",
            "after",
            "after_low",
            "after_high",
            "confirmed",
            "confirmed_low",
            "confirmed_high");
    for (int k = 0; k < before.labelled().size(); k++) {
      LabelOdds.Line own = before.labelled().get(k);
      csv.text(own.name()).number(own.wanted().orElse(0.0), DIGITS);
      for (LabelOdds odds : List.of(before, best().counted(), best().confirmed())) {
        LabelOdds.Line line = odds.labelled().get(k);
        csv.number(line.chance(), DIGITS)
            .number(line.interval().low(), DIGITS)
            .number(line.interval().high(), DIGITS);
      }
      csv.endRow();
    }
  }

  private void moves(StringBuilder out, CsvDialect dialect) throws IOException {
    String unit = request.bench() ? "_mm" : "";
    var csv =
        new CsvWriter(
            out,
            dialect,
            "rank",
            "magnet",
            "label",
            "dx" + unit,
            "dy" + unit,
            "x" + unit,
            "y" + unit);
    for (int rank = 0; rank < layouts.size(); rank++) {
      for (TunedLayout.Move move : layouts.get(rank).moves()) {
        csv.integer(rank + 1L).integer(move.magnet() + 1L).text(request.name(move.magnet()));
        csv.number(move.dx(), DIGITS).number(move.dy(), DIGITS);
        csv.number(move.x(), DIGITS).number(move.y(), DIGITS);
        csv.endRow();
      }
    }
  }

  /**
   * The picture of a layout's moves.
   *
   * @param rank from 1; the last one where there are fewer
   */
  Drawing plate(int rank) {
    TunedLayout shown = layouts.get(Math.min(rank, layouts.size()) - 1);
    PlateMap after = new PlateMap(shown.document());
    String title = request.layout().heading("magnets moved for the wanted odds");
    String odds = "Then, by a new seed: " + listed(shown.confirmed()) + ".";
    return MovesFigure.draw(
        title,
        List.of(shown.sentence(), odds + " Before: " + listed(before) + ".", request.url()),
        request.bench() ? Measure.BENCH : Measure.TEXTBOOK,
        after.outline(),
        new PlateMap(request.layout()).magnets(),
        after.magnets(),
        new AlternativeText(
            "en", title, shown == best() ? sentence() : shown.sentence() + " " + odds));
  }

  /**
   * One value for a cell.
   *
   * @param label that a chance is asked of; the one farthest from what is wanted where empty
   * @throws ProblemException {@code invalid-request} where no magnet has that label
   */
  String value(TuningValue value, Optional<String> label) {
    return switch (value) {
      case SENTENCE -> sentence();
      case MOVES -> best().sentence();
      case MET -> Boolean.toString(best().met());
      case DISTANCE -> Numbers.plain(best().confirmed().distance());
      case BEFORE -> Numbers.plain(line(beforeConfirmed, label).chance());
      case CHANCE -> Numbers.plain(line(best().confirmed(), label).chance());
      case LOW -> Numbers.plain(line(best().confirmed(), label).interval().low());
      case HIGH -> Numbers.plain(line(best().confirmed(), label).interval().high());
      case LAYOUT_ID -> best().document().layoutId();
      case TUNING_ID -> request.id();
    };
  }

  private LabelOdds.Line line(LabelOdds odds, Optional<String> label) {
    List<LabelOdds.Line> lines = odds.labelled();
    if (label.isEmpty()) {
      return lines.stream()
          .reduce((a, b) -> b.distance() > a.distance() ? b : a)
          .orElseThrow(() -> unknown(lines));
    }
    return lines.stream()
        .filter(line -> meant(line.name(), label.get()))
        .findFirst()
        .orElseThrow(() -> unknown(lines));
  }

  private static boolean meant(String name, String written) {
    return name.equals(written)
        || CellText.line(name).equals(written)
        || CellText.guarded(name).equals(written);
  }

  private static ProblemException unknown(List<LabelOdds.Line> lines) {
    return new ProblemException(
        ProblemCode.INVALID_REQUEST,
        "No magnet has this label.",
        List.of(
            new Fault(
                "?label",
                "is not one of "
                    + String.join(", ", lines.stream().map(LabelOdds.Line::name).toList()))));
  }
}
