package lodeswing.web.swingcount;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import java.util.stream.Collectors;
import lodeswing.analysis.swingcount.Along;
import lodeswing.analysis.swingcount.CountedFigures;
import lodeswing.analysis.swingcount.Figure;
import lodeswing.analysis.swingcount.Measured;
import lodeswing.analysis.swingcount.SwingCount;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.swing.SmallSwings;
import lodeswing.job.ComputationKey;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** A swing count as document, table and single values. */
final class SwingCountAnswers {

  private static final String NONE = "none";
  private static final double PERCENT = 100;
  private static final int DIGITS = 6;

  private final LayoutDocument layout;
  private final BenchLayout rig;
  private final SwingCountQuery query;
  private final CountedFigures counted;
  private final Optional<CountedLength> length;
  private final SwingCountWords words;
  private final Optional<Suggestion> suggestion;

  SwingCountAnswers(LayoutDocument layout, BenchLayout rig, SwingCountQuery query) {
    this.layout = layout;
    this.rig = rig;
    this.query = query;
    this.counted = new SwingCount(rig, query.readings()).figures();
    this.length =
        counted.find(Figure.LENGTHENING).map(longer -> CountedLength.of(layout, rig, longer));
    this.words = new SwingCountWords(rig, query, counted, length);
    this.suggestion = Suggestion.of(layout, rig, counted, words.agrees());
  }

  /** The layout that would swing as counted. */
  Optional<Suggestion> suggestion() {
    return suggestion;
  }

  /** The answer in a form. */
  Reply in(Representation form, QueryParameters asked) {
    return switch (form) {
      case CSV -> Reply.of(form, csv(TableDialect.of(asked)));
      case TEXT -> cell(asked);
      default -> Reply.ofJson(form, json());
    };
  }

  private Reply cell(QueryParameters asked) {
    SwingCountValue value = asked.find(SwingCountController.VALUE).orElse(SwingCountValue.SENTENCE);
    return switch (value) {
      case SENTENCE -> Reply.ofWords(words.sentence());
      case SMALL_PERIOD -> figure(Figure.SMALL_PERIOD, Measured::value, asked);
      case SMALL_PERIOD_LOW -> figure(Figure.SMALL_PERIOD, Measured::low, asked);
      case SMALL_PERIOD_HIGH -> figure(Figure.SMALL_PERIOD, Measured::high, asked);
      case EXPECTED_PERIOD -> figure(Figure.EXPECTED_PERIOD, Measured::value, asked);
      case OFF -> figure(Figure.PERIOD_RATIO, SwingCountAnswers::offPercent, asked);
      case AGREES ->
          Reply.ofWords(
              counted.find(Figure.PERIOD_RATIO).isPresent()
                  ? Boolean.toString(words.agrees())
                  : NONE);
      case LENGTH -> length(Measured::value, asked);
      case LENGTH_LOW -> length(Measured::low, asked);
      case LENGTH_HIGH -> length(Measured::high, asked);
      case CHANGE -> number(length.map(of -> of.counted().value() - of.own()), asked);
      case SWINGS_TO_HALF -> figure(Figure.SWINGS_TO_HALF, Measured::value, asked);
      case QUALITY_FACTOR -> figure(Figure.QUALITY_FACTOR, Measured::value, asked);
      case QUALITY_FACTOR_LOW -> figure(Figure.QUALITY_FACTOR, Measured::low, asked);
      case QUALITY_FACTOR_HIGH -> figure(Figure.QUALITY_FACTOR, Measured::high, asked);
      case DAMPING_RATE -> figure(Figure.DAMPING_RATE, Measured::value, asked);
      case LINEAR_LOSS -> figure(Figure.LINEAR_LOSS, Measured::value, asked);
      case LAYOUT_ID -> Reply.ofWords(suggestion.map(Suggestion::layout).orElse(layout).layoutId());
    };
  }

  private static double offPercent(Measured ratio) {
    return PERCENT * (ratio.value() - 1);
  }

  private Reply figure(Figure figure, ToDoubleFunction<Measured> part, QueryParameters asked) {
    return number(counted.find(figure).map(part::applyAsDouble), asked);
  }

  private Reply length(ToDoubleFunction<Measured> part, QueryParameters asked) {
    return number(length.map(CountedLength::counted).map(part::applyAsDouble), asked);
  }

  private static Reply number(Optional<Double> value, QueryParameters asked) {
    return value
        .map(found -> Reply.ofFigure(Numbers.shortest(rounded(found)), asked))
        .orElseGet(() -> Reply.ofWords(NONE));
  }

  private static double rounded(double value) {
    return value == 0 ? 0 : Numbers.toDigits(value, DIGITS);
  }

  private byte[] csv(CsvDialect dialect) {
    var out = new StringBuilder();
    try {
      var csv = new CsvWriter(out, dialect, "figure", "unit", "value", "low", "high", "layout");
      row(csv, "period", "s", counted.find(Figure.PERIOD), OptionalDouble.empty());
      row(csv, "small period", "s", counted.find(Figure.SMALL_PERIOD), expected());
      if (length.isPresent()) {
        CountedLength of = length.get();
        row(csv, of.words(), "mm", Optional.of(of.counted()), OptionalDouble.of(of.own()));
      }
      row(csv, "swings to half", "", counted.find(Figure.SWINGS_TO_HALF), ownSwingsToHalf());
      row(csv, "quality factor", "", counted.find(Figure.QUALITY_FACTOR), ownQuality());
      row(csv, "damping rate", "1/s", counted.find(Figure.DAMPING_RATE), ownRate());
      row(
          csv,
          "linear loss",
          "N s/m",
          counted.find(Figure.LINEAR_LOSS),
          OptionalDouble.of(rig.loss().linear()));
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void row(
      CsvWriter csv, String name, String unit, Optional<Measured> figure, OptionalDouble own)
      throws IOException {
    if (figure.isEmpty()) {
      return;
    }
    csv.text(name)
        .text(unit)
        .number(rounded(figure.get().value()))
        .number(rounded(figure.get().low()))
        .number(rounded(figure.get().high()));
    if (own.isPresent()) {
      csv.number(rounded(own.getAsDouble())).endRow();
    } else {
      csv.empty().endRow();
    }
  }

  private OptionalDouble expected() {
    return counted
        .find(Figure.EXPECTED_PERIOD)
        .map(period -> OptionalDouble.of(period.value()))
        .orElse(OptionalDouble.empty());
  }

  private boolean alongX() {
    return query.readings().along() == Along.X;
  }

  /** The layout's own gamma of the swing; empty where its loss has another law too, or none. */
  private OptionalDouble ownGamma() {
    SmallSwings own = SmallSwings.of(rig);
    OptionalDouble gamma = alongX() ? own.lossX() : own.lossY();
    return gamma.isPresent() && gamma.getAsDouble() > 0 ? gamma : OptionalDouble.empty();
  }

  private double ownPeriod() {
    SmallSwings own = SmallSwings.of(rig);
    return alongX() ? own.periodX() : own.periodY();
  }

  private OptionalDouble ownSwingsToHalf() {
    OptionalDouble gamma = ownGamma();
    return gamma.isPresent()
        ? OptionalDouble.of(2 * Math.log(2) / gamma.getAsDouble() / ownPeriod())
        : gamma;
  }

  private OptionalDouble ownQuality() {
    OptionalDouble gamma = ownGamma();
    return gamma.isPresent()
        ? OptionalDouble.of(2 * Math.PI / ownPeriod() / gamma.getAsDouble())
        : gamma;
  }

  private OptionalDouble ownRate() {
    OptionalDouble gamma = ownGamma();
    return gamma.isPresent() ? OptionalDouble.of(gamma.getAsDouble() / 2) : gamma;
  }

  private byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", layout.layoutId());
    members.put("along", query.readings().along().word());
    query.readings().timing().ifPresent(timing -> putPeriod(members, timing.swings()));
    length.ifPresent(of -> members.put("length", length(of)));
    counted.find(Figure.SWINGS_TO_HALF).ifPresent(half -> members.put("loss", loss()));
    suggestion.ifPresent(of -> members.put("suggestion", suggestion(of)));
    members.put("sentence", words.sentence());
    members.put("notes", words.notes());
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    members.put("links", links());
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private void putPeriod(Map<String, Object> members, int swings) {
    Map<String, Object> period = new LinkedHashMap<>();
    period.put("swings", (double) swings);
    period.put("meanS", range(counted.get(Figure.PERIOD)));
    period.put("smallS", range(counted.get(Figure.SMALL_PERIOD)));
    period.put("expectedS", range(counted.get(Figure.EXPECTED_PERIOD)));
    Measured ratio = counted.get(Figure.PERIOD_RATIO);
    period.put(
        "offPercent", range(new Measured(PERCENT * (ratio.value() - 1), PERCENT * ratio.error())));
    period.put("agrees", words.agrees());
    members.put("period", Body.of(period));
  }

  private Body length(CountedLength of) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("name", of.name());
    members.put("ownMm", rounded(of.own()));
    members.put("countedMm", range(of.counted()));
    members.put("changeMm", rounded(of.counted().value() - of.own()));
    return Body.of(members);
  }

  private Body loss() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("swingsToHalf", range(counted.get(Figure.SWINGS_TO_HALF)));
    members.put("qualityFactor", range(counted.get(Figure.QUALITY_FACTOR)));
    members.put("dampingRatePerS", range(counted.get(Figure.DAMPING_RATE)));
    members.put("linearNsPerM", range(counted.get(Figure.LINEAR_LOSS)));
    ownSwingsToHalf().ifPresent(own -> members.put("ownSwingsToHalf", rounded(own)));
    words.lawWord().ifPresent(law -> members.put("law", law));
    return Body.of(members);
  }

  private static Body range(Measured measured) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("value", rounded(measured.value()));
    members.put("low", rounded(measured.low()));
    members.put("high", rounded(measured.high()));
    return Body.of(members);
  }

  private Body suggestion(Suggestion of) {
    Map<String, Object> changes = new LinkedHashMap<>();
    of.changes().forEach((name, value) -> changes.put(name, Double.parseDouble(value)));
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", of.layout().layoutId());
    members.put("changes", Body.of(changes));
    return Body.of(members);
  }

  private Body links() {
    String base = "/v1/layouts/" + layout.layoutId();
    String self =
        base
            + "/swing-count?"
            + query.written().entrySet().stream()
                .map(one -> one.getKey() + "=" + one.getValue())
                .collect(Collectors.joining("&"));
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", self);
    links.put("csv", self + "&format=csv");
    links.put("layout", base);
    links.put("freeSwing", base + "/free-swing");
    suggestion.ifPresent(
        of -> {
          links.put("suggestedLayout", "/v1/layouts/" + of.layout().layoutId());
          links.put("variant", base + "/variant?" + of.query());
        });
    return Body.of(links);
  }
}
