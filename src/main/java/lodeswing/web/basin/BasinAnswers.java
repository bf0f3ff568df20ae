package lodeswing.web.basin;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import lodeswing.analysis.basin.BasinMap;
import lodeswing.analysis.basin.SpecialEnd;
import lodeswing.core.window.PixelGrid;
import lodeswing.figure.Pattern;
import lodeswing.render.Palette;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.render.png.BasinPainter;
import lodeswing.web.body.Body;

/** A map as documents and tables, in the layout's own units. */
final class BasinAnswers {

  static final int TILE_SIZE = 256;

  /** Raised with every change of a picture; in the addresses of pictures, so that caches let go. */
  private static final int LOOK = 1;

  private static final double[] SHADES = {0.1, 0.5, 0.9};
  private static final int PLACE_DIGITS = 15;
  private static final int TIME_DIGITS = 7;

  private final BasinRequest request;
  private final StoredSurvey survey;
  private final EndNames names;

  BasinAnswers(BasinRequest request, StoredSurvey survey) {
    this.request = request;
    this.survey = survey;
    this.names = new EndNames(request.layout(), survey.places());
  }

  EndNames names() {
    return names;
  }

  /** The indices that a legend lists: every rest point, and what else can become of a bob here. */
  List<Integer> indices() {
    List<Integer> indices = new ArrayList<>();
    for (int i = 0; i < names.restPoints(); i++) {
      indices.add(i);
    }
    for (SpecialEnd end : SpecialEnd.values()) {
      if (survey.possible().contains(end)) {
        indices.add(names.restPoints() + end.place());
      }
    }
    return indices;
  }

  /** The document. */
  byte[] json() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("basinId", request.id());
    members.put("layoutId", request.layout().layoutId());
    members.put("model", request.layout().model());
    members.put("window", request.windowBody());
    putGrid(members);
    members.put("preview", self() + "/preview?look=" + LOOK);
    members.put("overlay", self() + "/overlay?look=" + LOOK);
    members.put("legend", legend());
    members.put("shading", shading());
    members.put("steadyShare", survey.survey().steadyShare());
    members.put("followedS", survey.followed());
    members.put("notes", new BasinWords(request, survey).notes());
    members.put("engineRevision", (double) request.revision());
    members.put("links", links());
    return bytes(members);
  }

  private void putGrid(Map<String, Object> members) {
    members.put("tiles", self() + "/tiles/{z}/{x}/{y}?look=" + LOOK);
    members.put(
        "zoom",
        body(
            "min",
            0.0,
            "max",
            (double) survey.survey().servedZoom(),
            "steady",
            (double) survey.survey().deepestZoom()));
    members.put("tileSize", (double) TILE_SIZE);
    members.put("origin", point(-1, 1));
    members.put("yDown", true);
    members.put("unitsPerTile", 2 * request.halfWidth());
    members.put("units", Body.of(new LinkedHashMap<>(request.layout().units())));
  }

  /** A corner or side of the window. */
  private Body point(int right, int up) {
    return body(
        "x",
        request.x() + right * request.halfWidth(),
        "y",
        request.y() + up * request.halfWidth());
  }

  /** What a tile viewer needs. */
  byte[] viewerJson() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("basinId", request.id());
    putGrid(members);
    members.put("pixelsPerUnit", TILE_SIZE / (2 * request.halfWidth()));
    members.put("bounds", List.of(point(-1, -1), point(1, 1)));
    members.put("overlay", self() + "/overlay?look=" + LOOK);
    members.put("alternative", new BasinWords(request, survey).alternative().description());
    return bytes(members);
  }

  /** The legend as a document. */
  byte[] legendJson() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("legend", legend());
    members.put("shading", shading());
    return bytes(members);
  }

  /** The legend in words, a line for each end. */
  List<String> legendLines() {
    List<String> lines = new ArrayList<>();
    for (int index : indices()) {
      Pattern pattern = BasinPainter.pattern(index, names.restPoints(), true);
      String with = pattern == Pattern.PLAIN ? "" : " with " + pattern.description();
      lines.add(names.name(index) + ": " + colourName(index) + with);
    }
    lines.add(new BasinWords(request, survey).scale());
    return lines;
  }

  private List<Body> legend() {
    return indices().stream().map(this::legendLine).toList();
  }

  private Body legendLine(int index) {
    int restPoints = names.restPoints();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("index", (double) index);
    members.put("kind", names.kind(index));
    names.place(index).ifPresent(place -> members.put("restPointId", place.id()));
    names.label(index).ifPresent(label -> members.put("label", label));
    members.put("name", names.name(index));
    names
        .place(index)
        .filter(place -> !place.ring())
        .ifPresent(
            place -> {
              members.put("x", request.layout().shown(place.x()));
              members.put("y", request.layout().shown(place.y()));
            });
    members.put("color", shade(index, 0.5));
    List<String> shades = new ArrayList<>();
    for (double depth : index < restPoints ? SHADES : new double[] {0.5}) {
      shades.add(shade(index, depth));
    }
    members.put("shades", shades);
    members.put("colorName", colourName(index));
    Pattern pattern = BasinPainter.pattern(index, restPoints, true);
    members.put("pattern", pattern.word());
    members.put("patternRows", patternRows(pattern));
    members.put("ink", Palette.colour(BasinPainter.tint(index, restPoints, 0.5, true)).hex());
    members.put("alwaysPatterned", BasinPainter.pattern(index, restPoints, false) != Pattern.PLAIN);
    return Body.of(members);
  }

  /** One period of a pattern, from the top: 1 is a pixel of ink. */
  private static List<String> patternRows(Pattern pattern) {
    return IntStream.range(0, Pattern.PERIOD)
        .mapToObj(
            y ->
                IntStream.range(0, Pattern.PERIOD)
                    .mapToObj(x -> pattern.inked(x, y) ? "1" : "0")
                    .collect(Collectors.joining()))
        .toList();
  }

  private String shade(int index, double depth) {
    return Palette.colour(BasinPainter.tint(index, names.restPoints(), depth, false)).hex();
  }

  private String colourName(int index) {
    return index < names.restPoints() ? Palette.word(index) : "grey";
  }

  private Body shading() {
    return body(
        "by",
        "lightness",
        "halfTimeS",
        BasinWords.time(survey.survey().halfTime()),
        "meaning",
        new BasinWords(request, survey).scale());
  }

  /** A tile as a table, row by row from the top. */
  byte[] csv(BasinMap map, PixelGrid grid, CsvDialect dialect) {
    var out = new StringBuilder(40 * grid.count());
    String unit = request.bench() ? "_mm" : "";
    try {
      List<String> columns =
          new ArrayList<>(List.of("x" + unit, "y" + unit, "index", "outcome", "sealed_s"));
      if (map.settles()) {
        columns.add("settled_s");
      }
      var csv = new CsvWriter(out, dialect, columns.toArray(String[]::new));
      for (int row = 0; row < grid.height(); row++) {
        double y = grid.y(row) * request.layout().shownPerUnit();
        for (int column = 0; column < grid.width(); column++) {
          double x = grid.x(column) * request.layout().shownPerUnit();
          int index = map.index(column, row);
          csv.number(x, PLACE_DIGITS)
              .number(y, PLACE_DIGITS)
              .integer(index)
              .text(names.name(index));
          time(csv, map.sealedAt(column, row));
          if (map.settles()) {
            time(csv, map.settledAt(column, row));
          }
          csv.endRow();
        }
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private static void time(CsvWriter csv, float time) throws IOException {
    if (Float.isNaN(time)) {
      csv.empty();
    } else {
      csv.number(time, TIME_DIGITS);
    }
  }

  private String self() {
    return "/v1/basins/" + request.id();
  }

  private Body links() {
    Map<String, Object> links = new LinkedHashMap<>();
    links.put("self", self());
    links.put("viewer", self() + "/viewer");
    links.put("summary", self() + "/summary");
    links.put("legend", self() + "/legend");
    links.put("legendPicture", self() + "/legend?format=svg&look=" + LOOK);
    links.put("layout", "/v1/layouts/" + request.layout().layoutId());
    links.put("restPoints", "/v1/layouts/" + request.layout().layoutId() + "/rest-points");
    return Body.of(links);
  }

  private static Body body(Object... namesAndValues) {
    Map<String, Object> members = new LinkedHashMap<>();
    for (int i = 0; i < namesAndValues.length; i += 2) {
      members.put((String) namesAndValues[i], namesAndValues[i + 1]);
    }
    return Body.of(members);
  }

  private static byte[] bytes(Map<String, Object> members) {
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }
}
