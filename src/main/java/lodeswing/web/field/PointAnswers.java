package lodeswing.web.field;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.analysis.field.PlateField;
import lodeswing.core.magnet.PlacedMagnet;
import lodeswing.job.ComputationKey;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.Numbers;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import lodeswing.web.representation.QueryParameters;
import lodeswing.web.representation.Reply;
import lodeswing.web.representation.Representation;
import lodeswing.web.representation.TableDialect;

/** The field at a point as document, table and single values; made at each request. */
final class PointAnswers {

  static final String[] VALUES = {"magnitude", "x", "y", "z", "inPlane", "sentence"};

  private static final double MILLI = 1e-3;

  private final LayoutDocument layout;
  private final double[] place;
  private final double[] field;
  private final List<String> notes = new ArrayList<>();

  private PointAnswers(LayoutDocument layout, double[] place, double[] field) {
    this.layout = layout;
    this.place = place;
    this.field = field;
  }

  /**
   * The field at a point.
   *
   * @param zMm height [mm]; nothing for that of the bob's path
   * @throws ProblemException where the bob cannot be, or where a dipole stands
   */
  static PointAnswers of(
      LayoutDocument layout, PlateField plate, double xMm, double yMm, Optional<Double> zMm) {
    double x = MILLI * xMm;
    double y = MILLI * yMm;
    double z = zMm.map(height -> MILLI * height).orElseGet(() -> plate.bobPath().height(x, y));
    if (Double.isNaN(z)) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "The bob cannot hang above that place, so its path has no height there.",
          List.of(new Fault("?z", "is missing: give a height, or a place nearer to the middle")));
    }
    double[] field = new double[3];
    plate.magnets().field(x, y, z, field);
    if (!Double.isFinite(field[0] + field[1] + field[2])) {
      throw new ProblemException(
          ProblemCode.INVALID_REQUEST,
          "A point dipole or the sharp edge of a block lies at that point, where the field has no"
              + " bound.",
          List.of(new Fault("?z", "meets it; give a point beside it")));
    }
    PointAnswers answers = new PointAnswers(layout, new double[] {xMm, yMm, z / MILLI}, field);
    answers.notes.add(FieldWords.BOB_LEFT_OUT);
    if (zMm.isEmpty()) {
      answers.notes.add("No height was given: this is where the bob magnet's centre passes.");
    }
    for (int i = 0; i < plate.layout().magnets().size(); i++) {
      if (holds(plate.layout().magnets().get(i), x, y, z)) {
        answers.notes.add(
            "The point lies in "
                + layout.labels().get(i).orElse("magnet " + (i + 1))
                + " or in its hole: what is told there is the flux density.");
      }
    }
    answers.notes.add(FieldWords.MODEL);
    return answers;
  }

  private static boolean holds(PlacedMagnet placed, double x, double y, double z) {
    double across = Math.hypot(x - placed.centre().x(), y - placed.centre().y());
    return across < placed.magnet().planRadius()
        && Math.abs(z - placed.centre().z()) < placed.magnet().halfHeight();
  }

  Reply in(Representation form, QueryParameters query, String value) {
    return switch (form) {
      case CSV -> Reply.of(form, csv(query));
      case TEXT ->
          value.equals("sentence")
              ? Reply.ofWords(sentence())
              : Reply.ofFigure(Numbers.shortest(figure(value)), query);
      default -> Reply.ofJson(form, json());
    };
  }

  private double figure(String value) {
    return switch (value) {
      case "x" -> shown(field[0]);
      case "y" -> shown(field[1]);
      case "z" -> shown(field[2]);
      case "inPlane" -> shown(Math.hypot(field[0], field[1]));
      default -> shown(size());
    };
  }

  private double size() {
    return Math.sqrt(field[0] * field[0] + field[1] * field[1] + field[2] * field[2]);
  }

  private static double shown(double tesla) {
    return Numbers.rounded(FieldWords.MILLI * tesla);
  }

  private String sentence() {
    return "The field at "
        + FieldWords.place(MILLI * place[0], MILLI * place[1])
        + " and "
        + Numbers.plain(place[2])
        + " mm over the plate is "
        + FieldWords.tesla(size())
        + ": "
        + FieldWords.tesla(field[0])
        + " along x and "
        + FieldWords.tesla(field[1])
        + " along y and "
        + FieldWords.tesla(field[2])
        + " upwards.";
  }

  private byte[] csv(QueryParameters query) {
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out,
              TableDialect.of(query),
              "x_mm",
              "y_mm",
              "z_mm",
              "field_x_mT",
              "field_y_mT",
              "field_z_mT",
              "magnitude_mT");
      for (double coordinate : place) {
        csv.number(Numbers.rounded(coordinate));
      }
      for (double component : field) {
        csv.number(shown(component));
      }
      csv.number(shown(size())).endRow();
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private byte[] json() {
    String base = "/v1/layouts/" + layout.layoutId();
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("layoutId", layout.layoutId());
    members.put("units", FieldUnits.of(layout));
    members.put(
        "place",
        FieldUnits.vector(
            Numbers.rounded(place[0]), Numbers.rounded(place[1]), Numbers.rounded(place[2])));
    members.put(
        "fieldMillitesla", FieldUnits.vector(shown(field[0]), shown(field[1]), shown(field[2])));
    members.put("magnitudeMillitesla", shown(size()));
    members.put("sentence", sentence());
    members.put("notes", List.copyOf(notes));
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    Map<String, Object> links = new LinkedHashMap<>();
    links.put(
        "self",
        base
            + "/field?x="
            + Numbers.shortest(place[0])
            + "&y="
            + Numbers.shortest(place[1])
            + "&z="
            + Numbers.shortest(place[2]));
    links.put("map", base + "/field/map");
    links.put("weakSpots", base + "/field/weak-spots");
    links.put("layout", base);
    members.put("links", Body.of(links));
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }
}
