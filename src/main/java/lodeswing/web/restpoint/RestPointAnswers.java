package lodeswing.web.restpoint;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import lodeswing.job.ComputationKey;
import lodeswing.render.csv.CsvDialect;
import lodeswing.render.csv.CsvWriter;
import lodeswing.web.body.Body;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.FlagShape;
import lodeswing.web.body.ListShape;
import lodeswing.web.body.MapShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.ObjectShape;
import lodeswing.web.body.Shape;
import lodeswing.web.body.TextShape;
import lodeswing.web.layout.LayoutDocument;
import lodeswing.web.restpoint.RestPointComputation.BorderPlace;
import lodeswing.web.restpoint.RestPointComputation.PassPlace;

/** What is answered about rest points: the document, the table and their schema. */
final class RestPointAnswers {
  private static final Shape TEXT = new TextShape(10_000);
  private static final Shape NUMBER = NumberShape.between(-1e300, 1e300);
  private static final int MOST = 100_000;

  private static final ObjectShape POINT =
      ObjectShape.named("RestPoint", "A place where the bob can come to rest.")
          .open()
          .required("id", TEXT, "Its id in this layout.")
          .required("x", NUMBER, "Plan position.")
          .required("y", NUMBER, "Plan position.")
          .optional(
              "label",
              TEXT,
              "The label it stands for: of the magnet within whose half width, or, if the magnet"
                  + " attracts the bob, within a quarter of the clear distance to the nearest other"
                  + " magnet beyond that, it lies.")
          .required("name", TEXT, "Its label, or its place in words.")
          .optional("energyJ", NUMBER, "Potential energy there (bench).")
          .optional("energy", NUMBER, "Potential energy there (textbook).")
          .optional("barrierJ", NUMBER, "Energy from there to the lowest way out (bench).")
          .optional("barrier", NUMBER, "Energy from there to the lowest way out (textbook).")
          .required(
              "periodsS",
              new ListShape(NUMBER, 1, 2),
              "Periods of small swings there, short first; on a ring the one across it.")
          .optional(
              "ringRadius",
              NUMBER,
              "Radius about the middle of the ring of which this is one place: any other is as"
                  + " good.")
          .required("sentence", TEXT, "How a bob rests there, in words.")
          .build();

  private static final ObjectShape SADDLE =
      ObjectShape.named("Saddle", "The lowest place of a way between two neighbours.")
          .open()
          .required("x", NUMBER, "Plan position.")
          .required("y", NUMBER, "Plan position.")
          .optional("energyJ", NUMBER, "Potential energy there (bench).")
          .optional("energy", NUMBER, "Potential energy there (textbook).")
          .required("between", new ListShape(TEXT, 0, 2), "Ids of the rest points on its sides.")
          .build();

  private static final ObjectShape BORDER =
      ObjectShape.named("ModelBorder", "The lowest place at which the model stops to hold.")
          .open()
          .required("kind", TEXT, "What happens there, such as magnet-contact.")
          .required("x", NUMBER, "Plan position.")
          .required("y", NUMBER, "Plan position.")
          .optional("energyJ", NUMBER, "Potential energy there (bench).")
          .optional("energy", NUMBER, "Potential energy there (textbook).")
          .required("catches", new FlagShape(), "Whether the bob would stay there.")
          .build();

  /** The document's schema. */
  static final ObjectShape DOCUMENT =
      ObjectShape.named("RestPoints", "Where the bob can rest, and the ways between.")
          .open()
          .required("layoutId", TEXT, "The layout.")
          .required("model", ChoiceShape.of("bench", "textbook"), "The model.")
          .required("units", new MapShape(TEXT, 20, 40), "Units by quantity.")
          .required("restPoints", new ListShape(POINT, 0, MOST), "The stable rest points.")
          .required("saddles", new ListShape(SADDLE, 0, MOST), "The passes between them.")
          .required("borders", new ListShape(BORDER, 0, MOST), "Where the model stops to hold.")
          .required("complete", new FlagShape(), "Whether all checks of completeness hold.")
          .required("engineRevision", NUMBER, "Revision of the engine.")
          .build();

  private final LayoutDocument document;
  private final RestPointComputation found;
  private final RestPointNames names;
  private final boolean bench;

  RestPointAnswers(LayoutDocument document, byte[] result) {
    this.document = document;
    this.found = RestPointComputation.read(result);
    this.names = new RestPointNames(document, found.places());
    this.bench = document.model().equals("bench");
  }

  byte[] json() {
    var members = new LinkedHashMap<String, Object>();
    members.put("layoutId", document.layoutId());
    members.put("model", document.model());
    members.put("units", Body.of(new LinkedHashMap<>(document.units())));
    members.put("restPoints", found.places().stream().map(this::point).toList());
    members.put("saddles", found.passes().stream().map(this::saddle).toList());
    members.put("borders", found.borders().stream().map(this::border).toList());
    members.put("complete", found.complete());
    members.put("engineRevision", (double) ComputationKey.ENGINE_REVISION);
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  byte[] csv(CsvDialect dialect) {
    var out = new StringBuilder();
    String length = bench ? "_mm" : "";
    String energy = bench ? "_j" : "";
    String time = bench ? "_s" : "";
    try {
      var csv =
          new CsvWriter(
              out,
              dialect,
              "id",
              "name",
              "x" + length,
              "y" + length,
              "energy" + energy,
              "barrier" + energy,
              "period_short" + time,
              "period_long" + time);
      for (RestPlace place : found.places()) {
        csv.text(place.id())
            .text(names.name(place.index()))
            .number(length(place.x()))
            .number(length(place.y()))
            .number(place.energy())
            .number(place.barrier());
        for (double period : place.periods()) {
          if (Double.isFinite(period)) {
            csv.number(period);
          } else {
            csv.empty();
          }
        }
        csv.endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  private Body point(RestPlace place) {
    var members = new LinkedHashMap<String, Object>();
    members.put("id", place.id());
    members.put("x", length(place.x()));
    members.put("y", length(place.y()));
    if (place.ring()) {
      members.put("ringRadius", length(place.radius()));
    }
    names.label(place.index()).ifPresent(label -> members.put("label", label));
    members.put("name", names.name(place.index()));
    putEnergy(members, "energy", place.energy());
    putEnergy(members, "barrier", place.barrier());
    members.put("periodsS", place.periods().stream().filter(Double::isFinite).toList());
    members.put("sentence", names.sentence(place.index()));
    return Body.of(members);
  }

  private Body saddle(PassPlace pass) {
    var members = new LinkedHashMap<String, Object>();
    members.put("x", length(pass.x()));
    members.put("y", length(pass.y()));
    putEnergy(members, "energy", pass.energy());
    List<String> between = new ArrayList<>();
    for (int side : new int[] {pass.one(), pass.other()}) {
      if (side >= 0) {
        between.add(found.places().get(side).id());
      }
    }
    members.put("between", between);
    return Body.of(members);
  }

  private Body border(BorderPlace border) {
    var members = new LinkedHashMap<String, Object>();
    members.put("kind", border.border());
    members.put("x", length(border.x()));
    members.put("y", length(border.y()));
    putEnergy(members, "energy", border.energy());
    members.put("catches", border.catches());
    return Body.of(members);
  }

  private void putEnergy(Map<String, Object> members, String name, double value) {
    if (Double.isFinite(value)) {
      members.put(bench ? name + "J" : name, value);
    }
  }

  private double length(double value) {
    return document.shown(value);
  }
}
