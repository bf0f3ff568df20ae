package lodeswing.web.field;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.core.field.Frame;
import lodeswing.core.field.Surface;
import lodeswing.figure.Drawing;
import lodeswing.job.ComputationKey;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.representation.DrawnReply;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** A map of the field's strength as document, table, picture and single values. */
final class MapAnswers {

  static final String[] VALUES = {"sentence", "most", "least", "median"};

  private final FieldRequest request;
  private final FieldSubject.Strength subject;
  private final StoredField stored;
  private final Frame frame;
  private final MapFigures figures;
  private final FieldWords words;

  MapAnswers(FieldRequest request, StoredField stored) {
    this.request = request;
    this.subject = (FieldSubject.Strength) request.subject();
    this.stored = stored;
    this.frame = request.view().frame(subject.side());
    this.figures = MapFigures.of(stored.strengths(), frame);
    this.words = new FieldWords(request);
  }

  Reply in(Representation form, QueryParameters query, String value) {
    return switch (form) {
      case CSV -> Reply.of(form, csv(query));
      case TEXT -> cell(value, query);
      case SVG, PNG -> DrawnReply.of(form, drawing(), query);
      default -> Reply.ofJson(form, json());
    };
  }

  private List<ShownSpot> shown() {
    return ShownSpot.of(stored.spots(), subject.inPlane());
  }

  private String sentence() {
    return (words.map(figures) + " " + words.marked(shown(), subject.spots())).strip();
  }

  private Drawing drawing() {
    return new FieldPictures(request, words)
        .map(stored.strengths(), frame, shown(), subject.inPlane(), sentence());
  }

  private Reply cell(String value, QueryParameters query) {
    if (value.equals("sentence")) {
      return Reply.ofWords(words.map(figures));
    }
    if (figures.isEmpty()) {
      return Reply.ofWords("none");
    }
    double figure =
        switch (value) {
          case "most" -> figures.most();
          case "least" -> figures.least();
          default -> figures.median();
        };
    return Reply.ofFigure(Numbers.shortest(FieldUnits.strength(figure)), query);
  }

  private byte[] csv(QueryParameters query) {
    Surface surface = request.view().surface(request.plate());
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              TableDialect.of(query),
              "x_mm",
              "y_mm",
              "z_mm",
              subject.inPlane() ? "field_in_plane_mT" : "field_mT");
      for (int i = 0; i < frame.count(); i++) {
        double x = frame.x(i % frame.columns());
        double y = frame.y(i / frame.columns());
        double z = surface.height(x, y);
        csv.number(FieldUnits.length(x)).number(FieldUnits.length(y));
        if (Double.isFinite(z)) {
          csv.number(FieldUnits.length(z));
        } else {
          csv.empty();
        }
        if (Double.isFinite(stored.strengths()[i])) {
          csv.number(FieldUnits.strength(stored.strengths()[i])).endRow();
        } else {
          csv.empty().endRow();
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private byte[] json() {
    Map<String, Object> members = FieldUnits.head(request);
    members.put("part", subject.inPlane() ? "plane" : "whole");
    members.put("side", (double) subject.side());
    if (!figures.isEmpty()) {
      members.put("mostMillitesla", FieldUnits.strength(figures.most()));
      members.put("leastMillitesla", FieldUnits.strength(figures.least()));
      members.put("medianMillitesla", FieldUnits.strength(figures.median()));
    }
    members.put("levelsMillitesla", List.copyOf(FieldLevels.of(stored.strengths())));
    List<Object> strengths = new ArrayList<>();
    for (double strength : stored.strengths()) {
      strengths.add(
          Double.isFinite(strength) ? (Object) FieldUnits.strength(strength) : Optional.empty());
    }
    members.put("strengthsMillitesla", strengths);
    if (subject.spots()) {
      members.put("weakSpots", SpotTable.bodies(words, shown()));
    }
    members.put("sentence", sentence());
    members.put("notes", List.of(FieldWords.BOB_LEFT_OUT, FieldWords.MODEL));
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    members.put("links", FieldUnits.links(request, true));
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }
}
