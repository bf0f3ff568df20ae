package lodeswing.web.odds;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalLong;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import lodeswing.analysis.odds.PartsTrial;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.GoodnessOfFit;
import lodeswing.core.statistics.TellingApart;
import lodeswing.core.statistics.VarianceSplit;
import lodeswing.figure.ChanceFigure;
import lodeswing.figure.Drawing;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.render.png.BasinPainter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.landscape.LayoutPlace;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;

/** Odds as document, table, picture and single values, in the layout's own units and names. */
final class OddsAnswers {

  private static final int DIGITS = 6;
  private static final int PAIRED = 6;
  private static final String NONE = "none";

  private final OddsRequest request;
  private final StoredOdds stored;
  private final OddsTable table;
  private final OddsWords words;
  private final Optional<CountedClass> counted;

  OddsAnswers(OddsRequest request, byte[] result, LayoutPlace place) {
    this.request = request;
    this.stored = StoredOdds.read(result);
    this.table = new OddsTable(request, stored);
    this.words = new OddsWords(request, stored, table);
    this.counted =
        request.counts().isEmpty()
            ? Optional.empty()
            : Optional.of(new CountedClass(table, request.counts(), place));
  }

  /** The document. */
  byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("oddsId", request.id());
    members.put("layoutId", request.layout().layoutId());
    members.put("model", request.layout().model());
    members.put("units", Body.of(new LinkedHashMap<>(request.layout().units())));
    for (String name : List.of("release", "spread", "width", "interval", "seed")) {
      Optional.ofNullable(request.canonical().members().get(name))
          .ifPresent(value -> members.put(name, value));
    }
    members.put("sentence", words.sentence());
    members.put("outcomes", table.all().stream().map(this::outcome).toList());
    members.put("releases", (double) table.releases());
    Estimate repeatability = table.repeatability();
    members.put("repeatability", repeatability.value());
    members.put("repeatabilityLow", repeatability.interval().low());
    members.put("repeatabilityHigh", repeatability.interval().high());
    members.put("tellApart", pairs());
    counted.ifPresent(found -> members.put("counted", found.body()));
    table.split().ifPresent(split -> members.put("parts", parts(split)));
    members.put("stepError", stored.stepError());
    members.put("followedS", stored.followed());
    members.put("notes", words.notes());
    members.put("engineRevision", (double) request.revision());
    members.put("links", links());
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private Body outcome(OddsLine line) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("index", (double) line.index());
    members.put("kind", line.kind());
    members.put("restPointIds", line.restPointIds());
    line.label().ifPresent(label -> members.put("label", label));
    members.put("name", line.name());
    members.put("chance", line.chance());
    members.put("low", line.interval().low());
    members.put("high", line.interval().high());
    members.put("releases", (double) line.releases());
    if (!line.byRig().isEmpty()) {
      Map<String, Object> rigs = new LinkedHashMap<>();
      rigs.put("mean", line.chances().average().orElseThrow());
      rigs.put("deviation", line.deviation());
      rigs.put("lowest", line.chances().min().orElseThrow());
      rigs.put("highest", line.chances().max().orElseThrow());
      members.put("parts", Body.of(rigs));
    }
    return Body.of(members);
  }

  private List<Body> pairs() {
    List<OddsLine> places = table.all().stream().filter(OddsLine::restPoint).limit(PAIRED).toList();
    List<Body> pairs = new ArrayList<>();
    for (int i = 0; i < places.size(); i++) {
      for (int j = i + 1; j < places.size(); j++) {
        pairs.add(pair(places.get(i), places.get(j)));
      }
    }
    return pairs;
  }

  /** Tries that tell two ends apart; empty where these odds cannot tell which is likelier. */
  private OptionalLong tries(OddsLine one, OddsLine other) {
    return TellingApart.doubtful(one.releases(), other.releases(), table.releases())
        ? OptionalLong.empty()
        : TellingApart.trials(one.chance(), other.chance());
  }

  private Body pair(OddsLine one, OddsLine other) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("names", List.of(one.name(), other.name()));
    OptionalLong tries = tries(one, other);
    tries.ifPresent(count -> members.put("tries", (double) count));
    members.put(
        "sentence",
        tries.isPresent()
            ? "A class of "
                + tries.getAsLong()
                + " tries has four chances in five to show, at the 5 % level, that "
                + one.name()
                + " comes oftener than "
                + other.name()
                + "."
            : one.name()
                + " and "
                + other.name()
                + " are as likely as each other, as far as these odds can tell.");
    return Body.of(members);
  }

  private Body parts(VarianceSplit split) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("tolerances", request.canonical().object("tolerances"));
    members.put("rigs", (double) stored.rigs().size());
    members.put("releasesPerRig", (double) PartsTrial.RELEASES);
    members.put("agreeSameRig", split.within());
    members.put("agreeOtherRig", split.across());
    Map<String, Object> share = new LinkedHashMap<>();
    share.put("value", split.between().value());
    share.put("low", split.between().interval().low());
    share.put("high", split.between().interval().high());
    members.put("shareOfParts", Body.of(share));
    members.put("source", OddsWords.source(split));
    members.put("robust", words.robust());
    members.put("sentence", words.partsSentence().orElse(""));
    return Body.of(members);
  }

  private Body links() {
    String self = request.url();
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", self);
    links.put("csv", self + "?format=csv");
    links.put("bars", self + "/bars");
    links.put("layout", "/v1/layouts/" + request.layout().layoutId());
    links.put("restPoints", "/v1/layouts/" + request.layout().layoutId() + "/rest-points");
    return Body.of(links);
  }

  /** The table, an end a row. */
  byte[] csv(CsvDialect dialect) {
    var out = new StringBuilder();
    List<String> header = new ArrayList<>(List.of("outcome", "chance", "low", "high", "releases"));
    if (!stored.rigs().isEmpty()) {
      header.addAll(List.of("rigs_mean", "rigs_deviation", "rigs_lowest", "rigs_highest"));
    }
    if (counted.isPresent()) {
      header.addAll(List.of("counted", "expected"));
    }
    try {
      var csv = new CsvWriter(out, dialect, header.toArray(String[]::new));
      for (OddsLine line : table.all()) {
        row(csv, line);
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void row(CsvWriter csv, OddsLine line) throws IOException {
    csv.text(line.name()).number(line.chance(), DIGITS);
    csv.number(line.interval().low(), DIGITS).number(line.interval().high(), DIGITS);
    csv.integer(line.releases());
    if (!stored.rigs().isEmpty()) {
      csv.number(line.chances().average().orElseThrow(), DIGITS);
      csv.number(line.deviation(), DIGITS);
      csv.number(line.chances().min().orElseThrow(), DIGITS);
      csv.number(line.chances().max().orElseThrow(), DIGITS);
    }
    if (counted.isPresent()) {
      Optional<CountedClass.Line> found =
          counted.get().lines().stream().filter(c -> c.name().equals(line.name())).findFirst();
      if (found.isPresent()) {
        csv.integer(found.get().counted()).number(found.get().expected(), DIGITS);
      } else {
        csv.integer(0).number(0, DIGITS);
      }
    }
    csv.endRow();
  }

  /** The picture. */
  Drawing bars() {
    List<ChanceFigure.Bar> bars = new ArrayList<>();
    for (OddsLine line : table.all()) {
      int places = table.restPoints();
      bars.add(
          new ChanceFigure.Bar(
              line.name(),
              line.chance(),
              line.interval().low(),
              line.interval().high(),
              BasinPainter.tint(line.index(), places, 0.5, false),
              BasinPainter.tint(line.index(), places, 0.5, true),
              BasinPainter.pattern(line.index(), places, true)));
    }
    return ChanceFigure.draw(
        words.title(), bars, words.sentence() + " " + request.url(), words.alternative());
  }

  /**
   * One value for a cell.
   *
   * @param outcome the label or name that a chance is asked of; the likeliest where empty
   * @throws ProblemException {@code invalid-request} where no end has that name
   */
  String value(OddsValue value, Optional<String> outcome) {
    return switch (value) {
      case SENTENCE -> words.sentence();
      case OUTCOME -> table.all().get(0).name();
      case CHANCE -> Numbers.plain(line(outcome).map(OddsLine::chance).orElse(0.0));
      case LOW -> Numbers.plain(line(outcome).map(found -> found.interval().low()).orElse(0.0));
      case HIGH ->
          Numbers.plain(line(outcome).map(OddsLine::interval).orElseGet(table::none).high());
      case REPEATABILITY -> Numbers.plain(table.repeatability().value());
      case RELEASES -> Integer.toString(table.releases());
      case TRIES -> tries();
      case SHARE_OF_PARTS ->
          table.split().map(of -> Numbers.plain(of.between().value())).orElse(NONE);
      case SOURCE -> table.split().map(OddsWords::source).orElse(NONE);
      case ROBUST -> table.split().map(of -> Boolean.toString(words.robust())).orElse(NONE);
      case ODDS_ID -> request.id();
      case EXPECTED -> expected(outcome);
      case CHI_SQUARE -> of(CountedClass::fit, GoodnessOfFit::statistic);
      case DEGREES_OF_FREEDOM -> of(CountedClass::fit, GoodnessOfFit::degreesOfFreedom);
      case P_VALUE -> of(CountedClass::fit, GoodnessOfFit::pValue);
      case COUNTED_SENTENCE -> counted.map(CountedClass::whole).orElse(NONE);
    };
  }

  private String of(
      Function<CountedClass, Optional<GoodnessOfFit>> fit, ToDoubleFunction<GoodnessOfFit> figure) {
    return counted
        .flatMap(fit)
        .map(found -> Numbers.plain(figure.applyAsDouble(found)))
        .orElse(NONE);
  }

  /** How often an end is expected in as many tries as the class made. */
  private String expected(Optional<String> outcome) {
    if (counted.isEmpty()) {
      return NONE;
    }
    Optional<OddsLine> line = line(outcome);
    Predicate<CountedClass.Line> asked =
        one ->
            line.map(found -> found.name().equals(one.name()))
                .orElseGet(() -> OddsTable.meant(one.name(), outcome.orElseThrow()));
    return Numbers.plain(
        counted.get().lines().stream()
            .filter(asked)
            .findFirst()
            .map(CountedClass.Line::expected)
            .orElse(0.0));
  }

  /** Tries that show which of the two likeliest places is the likelier. */
  private String tries() {
    List<OddsLine> places = table.all().stream().filter(OddsLine::restPoint).limit(2).toList();
    OptionalLong tries =
        places.size() < 2 ? OptionalLong.empty() : tries(places.get(0), places.get(1));
    return tries.isPresent() ? Long.toString(tries.getAsLong()) : NONE;
  }

  /** The line of a label or name, or of the words in which a cell got it. */
  private Optional<OddsLine> line(Optional<String> asked) {
    if (asked.isEmpty()) {
      return Optional.of(table.all().get(0));
    }
    String name = asked.get();
    Optional<OddsLine> found =
        table.all().stream().filter(l -> OddsTable.meant(l.name(), name)).findFirst();
    if (found.isEmpty()
        && table.known().stream().noneMatch(known -> OddsTable.meant(known, name))) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "No end of a release has this name.",
          List.of(new Fault("?outcome", "is not one of " + String.join(", ", table.known()))));
    }
    return found;
  }
}
