package lodeswing.web.field;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.analysis.field.FieldLine;
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

/** Lines along the field as document, table, picture and single values. */
final class LinesAnswers {

  static final String[] VALUES = {"sentence", "count", "outOfCut"};

  private final FieldRequest request;
  private final FieldSubject.Lines subject;
  private final StoredField stored;
  private final List<FieldLine> lines;
  private final FieldWords words;

  LinesAnswers(FieldRequest request, StoredField stored) {
    this.request = request;
    this.subject = (FieldSubject.Lines) request.subject();
    this.stored = stored;
    this.lines = stored.lines();
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
    return ShownSpot.ofBoth(stored.spots(), words.neighbours());
  }

  private String sentence() {
    return (words.lines(lines.size(), stored.outOfCut())
            + " "
            + words.marked(shown(), subject.spots()))
        .strip();
  }

  private Drawing drawing() {
    return new FieldPictures(request, words).lines(lines, shown(), sentence());
  }

  private Reply cell(String value, QueryParameters query) {
    return switch (value) {
      case "count" -> Reply.ofFigure(Integer.toString(lines.size()), query);
      case "outOfCut" ->
          Reply.ofFigure(Numbers.shortest(Numbers.rounded(stored.outOfCut())), query);
      default -> Reply.ofWords(words.lines(lines.size(), stored.outOfCut()));
    };
  }

  /** Places of a line in the layout's frame [m]. */
  private double[][] places(FieldLine line) {
    double[][] places = new double[3][line.count()];
    Surface surface = request.view().surface(request.plate());
    for (int i = 0; i < line.count(); i++) {
      if (subject.turnDeg().isPresent()) {
        CutPlane cut = CutPlane.of(request.view(), subject.turnDeg().get());
        places[0][i] = cut.x(line.u(i));
        places[1][i] = cut.y(line.u(i));
        places[2][i] = line.v(i);
      } else {
        places[0][i] = line.u(i);
        places[1][i] = line.v(i);
        places[2][i] = surface.height(line.u(i), line.v(i));
      }
    }
    return places;
  }

  private byte[] csv(QueryParameters query) {
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(out, TableDialect.of(query), "line", "x_mm", "y_mm", "z_mm", "field_mT");
      for (int n = 0; n < lines.size(); n++) {
        double[][] places = places(lines.get(n));
        for (int i = 0; i < lines.get(n).count(); i++) {
          csv.integer(n + 1);
          for (double[] axis : places) {
            csv.number(FieldUnits.length(axis[i]));
          }
          csv.number(FieldUnits.strength(lines.get(n).strength(i))).endRow();
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private byte[] json() {
    Map<String, Object> members = FieldUnits.head(request);
    members.put("cut", subject.turnDeg().isPresent() ? "upright" : "plan");
    subject
        .turnDeg()
        .ifPresent(
            turn -> {
              members.put("turnDeg", turn);
              members.put("outOfCut", Numbers.rounded(stored.outOfCut()));
            });
    members.put("apartMm", subject.apartMm());
    List<Object> all = new ArrayList<>();
    for (FieldLine line : lines) {
      double[][] places = places(line);
      Map<String, Object> about = new LinkedHashMap<>();
      about.put("closed", line.closed());
      about.put("lengthMm", FieldUnits.length(line.length()));
      String[] axes = {"x", "y", "z"};
      for (int axis = 0; axis < 3; axis++) {
        List<Object> column = new ArrayList<>();
        for (double place : places[axis]) {
          column.add(FieldUnits.length(place));
        }
        about.put(axes[axis], column);
      }
      List<Object> strengths = new ArrayList<>();
      for (int i = 0; i < line.count(); i++) {
        strengths.add(FieldUnits.strength(line.strength(i)));
      }
      about.put("strengthMillitesla", strengths);
      all.add(Body.of(about));
    }
    members.put("lines", all);
    if (subject.spots()) {
      members.put("weakSpots", SpotTable.bodies(words, shown()));
    }
    members.put("method", FieldWords.LINES_SOURCE);
    members.put("sentence", sentence());
    members.put("notes", List.of(FieldWords.BOB_LEFT_OUT, FieldWords.MODEL));
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    members.put("links", FieldUnits.links(request, true));
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }
}
