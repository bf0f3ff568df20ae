package lodeswing.web.occupancy;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import lodeswing.core.statistics.Estimate;
import lodeswing.figure.Drawing;
import lodeswing.job.ComputationKey;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.occupancy.StoredOccupancy.Figure;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** An occupancy as document, table, picture and single values. */
final class OccupancyAnswers {

  private static final double MILLI = 1e3;
  private static final String SPEARMAN =
      "C. Spearman, Am. J. Psychol. 15 (1904) 72: rank correlation over the cells of the circle";

  private final OccupancyRequest request;
  private final StoredOccupancy stored;
  private final OccupancyWords words;

  OccupancyAnswers(OccupancyRequest request, byte[] result) {
    this.request = request;
    this.stored = StoredOccupancy.read(result);
    this.words = new OccupancyWords(request, stored);
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
    return new OccupancyPicture(request, stored, words).drawing();
  }

  private Reply cell(QueryParameters query) {
    OccupancyValue value = query.find(OccupancyController.VALUE).orElse(OccupancyValue.SENTENCE);
    if (value == OccupancyValue.SENTENCE) {
      return Reply.ofWords(words.sentence());
    }
    OptionalDouble figure = figure(value);
    return figure.isPresent()
        ? Reply.ofFigure(Numbers.shortest(Numbers.rounded(figure.getAsDouble())), query)
        : Reply.ofWords("none");
  }

  private OptionalDouble figure(OccupancyValue value) {
    return switch (value) {
      case SENTENCE -> OptionalDouble.empty();
      case CORRELATION -> of(Figure.CORRELATION);
      case LOW -> low(Figure.CORRELATION);
      case HIGH -> high(Figure.CORRELATION);
      case CHANGE -> of(Figure.CHANGE);
      case CHANGE_LOW -> low(Figure.CHANGE);
      case CHANGE_HIGH -> high(Figure.CHANGE);
      case MEAN_FIELD -> shown(of(Figure.MEAN_FIELD));
      case FREE_MEAN_FIELD -> shown(of(Figure.FREE_MEAN_FIELD));
      case OVER_MAGNETS -> of(Figure.OVER_MAGNETS);
      case FREE_OVER_MAGNETS -> of(Figure.FREE_OVER_MAGNETS);
    };
  }

  private OptionalDouble of(Figure which) {
    return stored.figure(which).stream().mapToDouble(Estimate::value).findFirst();
  }

  private OptionalDouble low(Figure which) {
    return stored.figure(which).stream().mapToDouble(found -> found.interval().low()).findFirst();
  }

  private OptionalDouble high(Figure which) {
    return stored.figure(which).stream().mapToDouble(found -> found.interval().high()).findFirst();
  }

  private OptionalDouble shown(OptionalDouble strength) {
    return strength.isPresent() ? OptionalDouble.of(unit() * strength.getAsDouble()) : strength;
  }

  private double unit() {
    return request.bench() ? MILLI : 1;
  }

  private byte[] csv(CsvDialect dialect) {
    String length = request.bench() ? "_mm" : "";
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              "x" + length,
              "y" + length,
              request.bench() ? "field_mT" : "field",
              "time_share",
              "free_time_share");
      for (int cell = 0; cell < stored.grid().count(); cell++) {
        csv.number(request.layout().shown(stored.grid().x(cell)))
            .number(request.layout().shown(stored.grid().y(cell)));
        if (Double.isFinite(stored.strength(cell))) {
          csv.number(Numbers.rounded(unit() * stored.strength(cell)));
        } else {
          csv.empty();
        }
        csv.number(stored.share(cell)).number(stored.freeShare(cell)).endRow();
      }
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
    members.put("radius", request.radius());
    members.put("durationS", request.durationS());
    members.put("releases", (double) request.releases());
    members.put("seed", (double) request.seed());
    put(members, "correlation", Figure.CORRELATION, 1);
    put(members, "freeCorrelation", Figure.FREE_CORRELATION, 1);
    put(members, "change", Figure.CHANGE, 1);
    String field = request.bench() ? "FieldMillitesla" : "Field";
    put(members, "mean" + field, Figure.MEAN_FIELD, unit());
    put(members, "freeMean" + field, Figure.FREE_MEAN_FIELD, unit());
    put(members, "overMagnets", Figure.OVER_MAGNETS, 1);
    put(members, "freeOverMagnets", Figure.FREE_OVER_MAGNETS, 1);
    members.put("source", SPEARMAN);
    members.put("notReleased", (double) stored.notReleased());
    members.put("endedEarly", (double) stored.endedEarly());
    members.put("elsewhere", stored.elsewhere());
    members.put("cells", cells());
    members.put("sentence", words.sentence());
    members.put("notes", words.notes());
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    members.put("links", links());
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private void put(Map<String, Object> members, String name, Figure which, double unit) {
    stored
        .figure(which)
        .ifPresent(
            found -> {
              Map<String, Object> figure = new LinkedHashMap<>();
              figure.put("value", Numbers.rounded(unit * found.value()));
              figure.put("low", Numbers.rounded(unit * found.interval().low()));
              figure.put("high", Numbers.rounded(unit * found.interval().high()));
              members.put(name, Body.of(figure));
            });
  }

  private Body cells() {
    Map<String, Object> cells = new LinkedHashMap<>();
    cells.put("halfWidth", request.layout().shown(stored.grid().halfWidth()));
    cells.put("side", (double) stored.grid().side());
    List<Object> shares = new ArrayList<>();
    List<Object> free = new ArrayList<>();
    for (int cell = 0; cell < stored.grid().count(); cell++) {
      shares.add(Numbers.rounded(stored.share(cell)));
      free.add(Numbers.rounded(stored.freeShare(cell)));
    }
    cells.put("timeShares", shares);
    cells.put("freeTimeShares", free);
    return Body.of(cells);
  }

  private Body links() {
    String self = request.url();
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", self);
    links.put("picture", self + "&format=png");
    links.put("csv", self + "&format=csv");
    links.put("freeSwing", request.base() + "/free-swing");
    links.put("layout", request.base());
    return Body.of(links);
  }
}
