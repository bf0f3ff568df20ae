package lodeswing.web.freeswing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import lodeswing.analysis.freeswing.Parting;
import lodeswing.analysis.freeswing.WholeRatio;
import lodeswing.core.swing.SmallSwings;
import lodeswing.figure.Drawing;
import lodeswing.job.ComputationKey;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** A free swing as document, table, picture and single values, in the layout's own units. */
final class FreeSwingAnswers {

  private static final String NONE = "none";
  private static final String NOT_REACHED = "not reached";
  private static final String AIRY =
      "G. B. Airy, Mon. Not. R. Astron. Soc. 11 (1851) 160: 3/8 omega a b / l^2";

  private final FreeSwingRequest request;
  private final SwingFigures figures;
  private final StoredSwing stored;
  private final SwingWords words;

  FreeSwingAnswers(FreeSwingRequest request, byte[] result) {
    this.request = request;
    this.figures = new SwingFigures(request);
    this.stored = StoredSwing.read(result);
    this.words = new SwingWords(request, figures, stored);
  }

  /** The answer in a form. */
  Reply in(Representation form, QueryParameters query) {
    return switch (form) {
      case CSV -> Reply.of(form, csv(TableDialect.of(query)));
      case TEXT -> cell(query);
      case SVG, PNG -> DrawnReply.of(form, drawing(), query);
      default -> Reply.ofJson(form, json());
    };
  }

  private Drawing drawing() {
    return new FreeSwingPicture(request, words, stored).drawing();
  }

  private Reply cell(QueryParameters query) {
    FreeSwingValue value = query.find(FreeSwingController.VALUE).orElse(FreeSwingValue.SENTENCE);
    return switch (value) {
      case SENTENCE -> Reply.ofWords(words.sentence());
      case FIGURE ->
          // a sheet takes 2:3 for a time of day
          Reply.ofWords(figures.figure().y() + " to " + figures.figure().x());
      default -> {
        OptionalDouble figure = figure(value);
        yield figure.isPresent()
            ? Reply.ofFigure(Numbers.shortest(Numbers.rounded(figure.getAsDouble())), query)
            : Reply.ofWords(value == FreeSwingValue.PARTED_AT ? NOT_REACHED : NONE);
      }
    };
  }

  private OptionalDouble figure(FreeSwingValue value) {
    SmallSwings swings = figures.swings();
    return switch (value) {
      case SENTENCE, FIGURE -> OptionalDouble.empty();
      case PERIOD_X -> OptionalDouble.of(swings.periodX());
      case PERIOD_Y -> OptionalDouble.of(swings.periodY());
      case RATIO -> OptionalDouble.of(swings.ratio());
      case CLOSES_AFTER -> OptionalDouble.of(figures.figure().closesAfter(swings));
      case FORMS_AFTER -> figures.formsAfter(figures.figure());
      case HALVES_X -> figures.halves(true);
      case HALVES_Y -> figures.halves(false);
      case HALVED_AT -> stored.free().halvedAt();
      case PRECESSION -> figures.precession();
      case WIDEST -> OptionalDouble.of(request.layout().shown(stored.free().widest()));
      case PARTED_AT -> stored.parting().map(Parting.Result::at).orElse(OptionalDouble.empty());
    };
  }

  private byte[] csv(CsvDialect dialect) {
    String time = request.bench() ? "_s" : "";
    String length = request.bench() ? "_mm" : "";
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              "period_x" + time,
              "period_y" + time,
              "ratio",
              "figure_y",
              "figure_x",
              "closes_after" + time,
              "forms_after" + time,
              "halves_x" + time,
              "halves_y" + time,
              "halved_at" + time,
              request.bench() ? "precession_deg_per_s" : "precession_deg",
              "widest" + length,
              "parted_at" + time);
      for (FreeSwingValue value : FreeSwingValue.values()) {
        if (value == FreeSwingValue.FIGURE) {
          csv.integer(figures.figure().y()).integer(figures.figure().x());
        } else if (value != FreeSwingValue.SENTENCE) {
          OptionalDouble figure = figure(value);
          if (figure.isPresent()) {
            csv.number(Numbers.rounded(figure.getAsDouble()));
          } else {
            csv.empty();
          }
        }
      }
      csv.endRow();
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", request.layout().layoutId());
    members.put("model", request.layout().model());
    members.put("units", Body.of(new LinkedHashMap<>(request.layout().units())));
    members.put("release", release());
    members.put("durationS", request.durationS());
    Map<String, Object> periods = new LinkedHashMap<>();
    periods.put("x", period(true));
    periods.put("y", period(false));
    members.put("periods", Body.of(periods));
    members.put("ratio", Numbers.rounded(figures.swings().ratio()));
    members.put("figure", ratio(figures.figure()));
    members.put(
        "nearestRatios",
        WholeRatio.nearest(figures.swings().ratio()).stream().map(this::ratio).toList());
    members.put("decay", decay());
    figures.precession().ifPresent(rate -> members.put("precession", precession(rate)));
    members.put("widest", request.layout().shown(stored.free().widest()));
    stored.free().end().ifPresent(end -> members.put("endedAtS", Numbers.rounded(end.time())));
    stored.parting().ifPresent(parting -> members.put("magnets", magnets(parting)));
    members.put("sentence", words.sentence());
    members.put("notes", words.notes());
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    members.put("links", links());
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private Body release() {
    Map<String, Object> place = new LinkedHashMap<>();
    place.put("x", request.release().get(0));
    place.put("y", request.release().get(1));
    place.put("vx", request.release().get(2));
    place.put("vy", request.release().get(3));
    return Body.of(place);
  }

  private Body period(boolean alongX) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("smallS", Numbers.rounded(2 * Math.PI / figures.rate(alongX)));
    put(members, "withLossS", figures.withLoss(alongX));
    put(members, "atReleaseS", figures.atRelease(alongX));
    return Body.of(members);
  }

  private Body ratio(WholeRatio ratio) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("ratio", ratio.toString());
    members.put("y", (double) ratio.y());
    members.put("x", (double) ratio.x());
    members.put(
        "offPercent", Numbers.rounded(100 * (figures.swings().ratio() / ratio.value() - 1)));
    members.put("closesAfterS", Numbers.rounded(ratio.closesAfter(figures.swings())));
    put(members, "formsAfterS", figures.formsAfter(ratio));
    return Body.of(members);
  }

  private Body decay() {
    Map<String, Object> members = new LinkedHashMap<>();
    for (boolean alongX : new boolean[] {true, false}) {
      OptionalDouble halves = figures.halves(alongX);
      if (halves.isPresent()) {
        Map<String, Object> axis = new LinkedHashMap<>();
        double rate = figures.rate(alongX);
        axis.put("halvesInS", Numbers.rounded(halves.getAsDouble()));
        axis.put("swingsToHalf", Numbers.rounded(halves.getAsDouble() * rate / (2 * Math.PI)));
        // Q = omega/gamma with gamma = 2 ln 2 over the halving time
        axis.put("qualityFactor", Numbers.rounded(rate * halves.getAsDouble() / (2 * Math.log(2))));
        members.put(alongX ? "x" : "y", Body.of(axis));
      }
    }
    put(members, "halvedAtS", stored.free().halvedAt());
    return Body.of(members);
  }

  private Body precession(double rate) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("degPerS", Numbers.rounded(rate));
    members.put("degPerSwing", Numbers.rounded(rate * figures.swings().periodX()));
    OptionalDouble loss = figures.swings().lossX();
    if (loss.isPresent() && loss.getAsDouble() > 0) {
      // the area a b falls as exp(-gamma t)
      members.put("degInAll", Numbers.rounded(rate / loss.getAsDouble()));
    }
    members.put("source", AIRY);
    return Body.of(members);
  }

  private Body magnets(Parting.Result parting) {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("within", request.among().orElseThrow().within());
    put(members, "partedAtS", parting.at());
    members.put("sure", parting.sure());
    parting
        .end()
        .ifPresent(
            end -> {
              members.put("endedAtS", Numbers.rounded(end.time()));
              members.put("endedBy", SwingWords.text(end));
            });
    stored.second().ifPresent(second -> put(members, "trustedUntilS", second.trustedUntil()));
    return Body.of(members);
  }

  private Body links() {
    String self = request.url();
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", self);
    links.put("picture", self + "&format=svg");
    links.put("csv", self + "&format=csv");
    links.put("design", request.base() + "/free-swing/design?ratio=" + figures.figure());
    links.put("trace", request.traceUrl());
    links.put("layout", request.base());
    return Body.of(links);
  }

  private static void put(Map<String, Object> members, String name, OptionalDouble value) {
    value.ifPresent(figure -> members.put(name, Numbers.rounded(figure)));
  }
}
