package lodeswing.web.field;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import lodeswing.analysis.field.SpaceNull;
import lodeswing.analysis.field.SpotKind;
import lodeswing.analysis.field.WeakSpot;
import lodeswing.analysis.field.WeakSpotSearch;
import lodeswing.core.field.Frame;
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

/** Weak spots as document, table, picture and single values. */
final class SpotAnswers {

  static final String[] VALUES = {
    "sentence", "count", "saddles", "nulls", "weakestX", "weakestY", "weakest"
  };

  private static final int PICTURE_SIDE = 161;

  private final FieldRequest request;
  private final StoredField stored;
  private final WeakSpotSearch.Found found;
  private final boolean inPlane;
  private final Function<Frame, double[]> strengths;
  private final FieldWords words;

  /**
   * Answers.
   *
   * @param inPlane whether the picture and single values are of the part in the plane
   * @param strengths of that at the places of a frame [T]
   */
  SpotAnswers(
      FieldRequest request,
      StoredField stored,
      boolean inPlane,
      Function<Frame, double[]> strengths) {
    this.request = request;
    this.stored = stored;
    this.found = stored.spots().orElseThrow();
    this.inPlane = inPlane;
    this.strengths = strengths;
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

  private Drawing drawing() {
    Frame frame = request.view().frame(PICTURE_SIDE);
    return new FieldPictures(request, words)
        .map(
            strengths.apply(frame),
            frame,
            ShownSpot.of(stored.spots(), inPlane),
            inPlane,
            sentence() + marked());
  }

  /** Which of the spots that the sentence counts are in the picture. */
  private String marked() {
    int count = (inPlane ? found.inPlane() : found.whole()).size();
    return " Marked here: "
        + count
        + (inPlane ? " of the part in the plane." : " of the whole field.");
  }

  private String sentence() {
    return words.spots(found);
  }

  private Reply cell(String value, QueryParameters query) {
    List<WeakSpot> list = inPlane ? found.inPlane() : found.whole();
    return switch (value) {
      case "count" -> Reply.ofFigure(Integer.toString(list.size()), query);
      case "saddles" ->
          Reply.ofFigure(
              Long.toString(
                  found.inPlane().stream().filter(s -> s.kind() == SpotKind.SADDLE).count()),
              query);
      case "nulls" -> Reply.ofFigure(Integer.toString(stored.nulls().nulls().size()), query);
      case "weakestX", "weakestY", "weakest" ->
          list.stream()
              .min(Comparator.comparingDouble(WeakSpot::strength))
              .map(
                  spot ->
                      value.equals("weakest")
                          ? FieldUnits.strength(spot.strength())
                          : FieldUnits.length(value.equals("weakestX") ? spot.x() : spot.y()))
              .map(figure -> Reply.ofFigure(Numbers.shortest(figure), query))
              .orElseGet(() -> Reply.ofWords("none"));
      default -> Reply.ofWords(sentence());
    };
  }

  private byte[] csv(QueryParameters query) {
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              TableDialect.of(query),
              "of",
              "number",
              "kind",
              "index",
              "x_mm",
              "y_mm",
              "z_mm",
              "strength_mT",
              "vertical_mT",
              "zone_area_mm2",
              "zone_across_mm",
              "pass_mT",
              "pass_x_mm",
              "pass_y_mm",
              "where");
      rows(csv, "plane", found.inPlane());
      rows(csv, "whole", found.whole());
      int number = 0;
      for (SpaceNull one : stored.nulls().nulls()) {
        number++;
        csv.text("space").integer(number).text("saddle").integer(one.index());
        csv.number(FieldUnits.length(one.x()))
            .number(FieldUnits.length(one.y()))
            .number(FieldUnits.length(one.z()))
            .number(0)
            .number(0);
        for (int i = 0; i < 5; i++) {
          csv.empty();
        }
        csv.text(words.neighbours().words(one.x(), one.y())).endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private void rows(CsvWriter csv, String of, List<WeakSpot> spots) throws IOException {
    int number = 0;
    for (WeakSpot spot : spots) {
      number++;
      csv.text(of).integer(number).text(spot.kind().word()).integer(spot.kind().index());
      csv.number(FieldUnits.length(spot.x()))
          .number(FieldUnits.length(spot.y()))
          .number(FieldUnits.length(spot.z()))
          .number(FieldUnits.strength(spot.strength()))
          .number(FieldUnits.strength(spot.vertical()));
      if (spot.zone().isPresent()) {
        WeakSpot.Zone zone = spot.zone().get();
        csv.number(Numbers.rounded(1e6 * zone.area()))
            .number(FieldUnits.length(zone.across()))
            .number(FieldUnits.strength(zone.pass()))
            .number(FieldUnits.length(zone.passX()))
            .number(FieldUnits.length(zone.passY()));
      } else {
        for (int i = 0; i < 5; i++) {
          csv.empty();
        }
      }
      csv.text(words.neighbours().words(spot.x(), spot.y())).endRow();
    }
  }

  private byte[] json() {
    Map<String, Object> members = FieldUnits.head(request);
    members.put("upright", found.level());
    members.put("inPlane", SpotTable.bodies(words, ShownSpot.of(stored.spots(), true)));
    members.put("whole", SpotTable.bodies(words, ShownSpot.of(stored.spots(), false)));
    Map<String, Object> count = new LinkedHashMap<>();
    count.put("indexSum", (double) found.indexSum());
    found.edgeTurns().ifPresent(turns -> count.put("edgeTurns", (double) turns));
    count.put("agrees", found.agrees());
    count.put("gridSide", (double) found.side());
    members.put("count", Body.of(count));
    members.put("space", space());
    members.put("sentence", sentence());
    List<String> notes = new ArrayList<>();
    notes.add(FieldWords.BOB_LEFT_OUT);
    if (!request.bench().magnets().isEmpty() && !found.level()) {
      notes.add(words.count(found));
      notes.add("In the space above the magnets: " + words.spaceCount(stored.nulls()));
    }
    notes.add(
        "A zone is where the strength is below half way from the spot to the lowest way out of it."
            + " Two zeros within one cell of the grid whose indices cancel may be missed.");
    notes.add(FieldWords.MODEL);
    members.put("notes", notes);
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    members.put("links", FieldUnits.links(request, true));
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private Body space() {
    double[] heights = stored.nullHeights();
    Map<String, Object> about = new LinkedHashMap<>();
    about.put("fromMm", FieldUnits.length(heights[0]));
    about.put("toMm", FieldUnits.length(heights[1]));
    List<Body> nulls = new ArrayList<>();
    for (SpaceNull one : stored.nulls().nulls()) {
      Map<String, Object> members = new LinkedHashMap<>();
      members.put("number", (double) (nulls.size() + 1));
      members.put("kind", "saddle");
      members.put("index", (double) one.index());
      members.put("x", FieldUnits.length(one.x()));
      members.put("y", FieldUnits.length(one.y()));
      members.put("z", FieldUnits.length(one.z()));
      members.put(
          "spine",
          FieldUnits.vector(
              Numbers.rounded(one.spineX()),
              Numbers.rounded(one.spineY()),
              Numbers.rounded(one.spineZ())));
      members.put("sentence", words.space(one));
      nulls.add(Body.of(members));
    }
    about.put("nulls", nulls);
    about.put("indexSum", (double) stored.nulls().indexSum());
    about.put("surfaceCovers", (double) stored.nulls().covers());
    about.put("agrees", stored.nulls().agrees());
    return Body.of(about);
  }
}
