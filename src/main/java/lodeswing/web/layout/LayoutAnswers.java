package lodeswing.web.layout;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
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
import lodeswing.web.representation.Subject;

/** What is answered about layouts: the documents and their schemas. */
final class LayoutAnswers {
  private static final Shape ANY_TEXT = new TextShape(10_000);

  /** About a layout. */
  static final ObjectShape SUMMARY = summary("LayoutSummary", "A layout in short.").build();

  /** A layout with everything said. */
  static final ObjectShape FULL =
      summary("LayoutDocument", "A stored layout.")
          .required("layout", LayoutShapes.CANONICAL, "The layout; may be posted as it is.")
          .build();

  /** The samples. */
  static final ObjectShape SAMPLES =
      ObjectShape.named("SampleLayouts", "The layouts that come with the service.")
          .open()
          .required(
              "samples",
              new ListShape(
                  ObjectShape.named("SampleLayout", "A layout that comes with the service.")
                      .open()
                      .required("name", ANY_TEXT, "Its name in addresses.")
                      .required("layoutId", ANY_TEXT, "Its id.")
                      .required("title", ANY_TEXT, "Its title.")
                      .required("description", ANY_TEXT, "What it shows.")
                      .required("model", ChoiceShape.of("bench", "textbook"), "The model.")
                      .required("links", new MapShape(ANY_TEXT, 50, 40), "Where to go from here.")
                      .optional(
                          Subject.WARNINGS,
                          new ListShape(LayoutWarning.SHAPE, 0, 100),
                          "The limits that it passes.")
                      .build(),
                  0,
                  100),
              "One for each.")
          .build();

  /** An owner's. */
  static final ObjectShape OWN =
      ObjectShape.named("PrivateLayouts", "The private layouts of whoever asks.")
          .open()
          .required(
              "layouts",
              new ListShape(
                  ObjectShape.named("PrivateLayout", "A private layout.")
                      .open()
                      .required("layoutId", ANY_TEXT, "Its id.")
                      .optional("title", ANY_TEXT, "Its title.")
                      .required("model", ChoiceShape.of("bench", "textbook"), "The model.")
                      .required("links", new MapShape(ANY_TEXT, 50, 40), "Where to go from here.")
                      .build(),
                  0,
                  1_000_000),
              "The newest first.")
          .build();

  private LayoutAnswers() {}

  private static ObjectShape.Builder summary(String name, String description) {
    return ObjectShape.named(name, description)
        .open()
        .required("layoutId", ANY_TEXT, "The layout's id: the same for the same layout, for ever.")
        .optional("title", ANY_TEXT, "The title.")
        .required("model", ChoiceShape.of("bench", "textbook"), "The model.")
        .required("units", new MapShape(ANY_TEXT, 20, 40), "The units of its answers by quantity.")
        .required("links", new MapShape(ANY_TEXT, 50, 40), "Where to go from here.")
        .required(
            Subject.WARNINGS,
            new ListShape(LayoutWarning.SHAPE, 0, 100_000),
            "What was probably not meant.")
        .optional(
            "dryRun", new FlagShape(), "True where nothing was stored because of dry-run=true.")
        .optional(
            "preparingWork",
            NumberShape.between(0, 1e300),
            "In a dry run: evaluations of a magnet's potential that making the layout ready for"
                + " traces and rest points will take, against the limit of the same name in"
                + " getLimits.")
        .optional(
            "costReleases",
            NumberShape.between(0, 1e18),
            "In a dry run: what making the layout ready will cost, about, in releases of a textbook"
                + " map, as other dry runs tell their work; storing it costs nothing.");
  }

  /** In short, without the warnings, which every answer is told. */
  static Map<String, Object> summaryOf(LayoutDocument document) {
    var members = new LinkedHashMap<String, Object>();
    members.put("layoutId", document.layoutId());
    document.title().ifPresent(title -> members.put("title", title));
    members.put("model", document.model());
    members.put("units", texts(document.units()));
    members.put("links", links(document.layoutId()));
    return members;
  }

  /** With the layout itself. */
  static Map<String, Object> fullOf(LayoutDocument document) {
    Map<String, Object> members = summaryOf(document);
    members.put("layout", document.shown());
    return members;
  }

  /** All samples. */
  static Map<String, Object> samplesOf(SampleLayouts samples) {
    var entries = new ArrayList<Body>();
    for (SampleLayouts.Sample sample : samples.all()) {
      LayoutDocument document = sample.document();
      var about = new LinkedHashMap<String, Object>();
      about.put("name", sample.name());
      about.put("layoutId", document.layoutId());
      about.put("title", document.title().orElse(sample.name()));
      about.put("description", sample.description());
      about.put("model", document.model());
      Body links = links(document.layoutId());
      about.put("links", links.with("thumbnail", links.text("plate")));
      if (!document.cautions().isEmpty()) {
        about.put(Subject.WARNINGS, document.cautions().stream().map(LayoutWarning::body).toList());
      }
      entries.add(Body.of(about));
    }
    var members = new LinkedHashMap<String, Object>();
    members.put("samples", List.copyOf(entries));
    return members;
  }

  /** An owner's layouts. */
  static Map<String, Object> ownOf(List<LayoutDocument> own) {
    List<Body> entries = new ArrayList<>();
    for (LayoutDocument document : own) {
      var about = new LinkedHashMap<String, Object>();
      about.put("layoutId", document.layoutId());
      document.title().ifPresent(title -> about.put("title", title));
      about.put("model", document.model());
      about.put("links", links(document.layoutId()));
      entries.add(Body.of(about));
    }
    var members = new LinkedHashMap<String, Object>();
    members.put("layouts", entries);
    return members;
  }

  /** All samples as a table. */
  static byte[] samplesCsv(SampleLayouts samples, CsvDialect dialect) {
    var out = new StringBuilder();
    try {
      var csv =
          new CsvWriter(
              out, dialect, "name", "layout_id", "title", "model", "magnets", "description");
      for (SampleLayouts.Sample sample : samples.all()) {
        LayoutDocument document = sample.document();
        csv.text(sample.name())
            .text(document.layoutId())
            .text(document.title().orElse(sample.name()))
            .text(document.model())
            .integer(document.labels().size())
            .text(sample.description())
            .endRow();
      }
    } catch (IOException e) {
      throw new UncheckedIOException("memory does not fail to be written", e);
    }
    return out.toString().getBytes(StandardCharsets.UTF_8);
  }

  /** As JSON. */
  static byte[] json(Map<String, Object> members) {
    return Body.of(members).toJson().getBytes(StandardCharsets.UTF_8);
  }

  private static Body links(String layoutId) {
    String self = "/v1/layouts/" + layoutId;
    var links = new LinkedHashMap<String, String>();
    links.put("self", self);
    links.put("variant", self + "/variant");
    links.put("plate", self + "/plate");
    links.put("check", self + "/check");
    links.put("safetyNotes", self + "/safety-notes");
    links.put("restPoints", self + "/rest-points");
    links.put("outcome", self + "/outcome");
    links.put("outcomes", self + "/outcomes");
    links.put("basin", self + "/basin");
    links.put("basins", "/v1/basins");
    links.put("trace", self + "/trace");
    links.put("traces", "/v1/traces");
    links.put("twins", self + "/twins");
    links.put("odds", self + "/odds");
    links.put("tunings", "/v1/tunings");
    links.put("sweep", self + "/sweep");
    links.put("occupancy", self + "/occupancy");
    links.put("field", self + "/field?x=0&y=0");
    links.put("fieldMap", self + "/field/map");
    links.put("fieldLines", self + "/field/lines");
    links.put("fieldFilings", self + "/field/filings");
    links.put("weakSpots", self + "/field/weak-spots");
    links.put("freeSwing", self + "/free-swing");
    links.put("freeSwingDesign", self + "/free-swing/design");
    return texts(links);
  }

  private static Body texts(Map<String, String> texts) {
    return Body.of(new LinkedHashMap<String, Object>(texts));
  }
}
