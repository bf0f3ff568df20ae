package lodeswing.web.sweep;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;
import lodeswing.web.body.ChoiceShape;
import lodeswing.web.body.NumberShape;
import lodeswing.web.body.TextShape;
import lodeswing.web.hand.HandShapes;
import lodeswing.web.landscape.DryRun;
import lodeswing.web.layout.LayoutStore;
import lodeswing.web.layout.SampleLayouts;
import lodeswing.web.openapi.OperationDescription;
import lodeswing.web.openapi.OperationDescription.AnswerText;
import lodeswing.web.openapi.OperationDescription.ParameterText;
import lodeswing.web.openapi.OperationDescription.RequestText;
import lodeswing.web.openapi.PendingAnswer;
import lodeswing.web.openapi.SharedTexts;
import lodeswing.web.representation.DrawnReply;
import org.springframework.context.annotation.Bean;
import org.springframework.context.annotation.Configuration;

/** What the operations on sweeps say about themselves. */
@Configuration(proxyBeanMethods = false)
class SweepOperations {

  private static final String TAG = "Sweeps";
  private static final String SAMPLE = "three-stations";

  private final SampleLayouts samples;

  SweepOperations(LayoutStore layouts) {
    this.samples = layouts.samples();
  }

  @Bean
  OperationDescription describeCreateSweep() {
    return new OperationDescription(
        "createSweep",
        TAG,
        "Vary one or two quantities and measure",
        "Varies one or two figures of a layout or its release over values, and answers a table of"
            + " measures, a row a point, the last quantity first through its values. Quantities go"
            + " by the names of getLayoutVariant, and by x, y, vx and vy for the release; how the"
            + " magnets stand goes by ring.count, ring.radiusMm and ring.poles (letters n and s),"
            + " and magnet.2.radiusMm and magnet.2.angleDeg for one of them. A point whose layout"
            + " cannot be built has a row with the reason in the column problem and no figures."
            + " The work is done in pieces that are kept one by one: after a restart it goes on"
            + " where it was, and sweeps share the points that they have in common.",
        List.of(SharedTexts.dryRun(), value(), column(), row()),
        Optional.of(new RequestText(SweepShapes.REQUEST, examples())),
        List.of(
            new AnswerText(
                200,
                "The sweep, or what a dry run tells.",
                List.of(SweepShapes.DOCUMENT, DryRun.DOCUMENT),
                SweepController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 413, 415, 422, 503));
  }

  private Map<String, Body> examples() {
    Map<String, Object> release = new LinkedHashMap<>();
    release.put("x", -70.0);
    release.put("y", 30.0);
    Map<String, Object> gaps = new LinkedHashMap<>();
    gaps.put("layoutId", samples.get(SAMPLE).document().layoutId());
    gaps.put("vary", List.of(range("gapMm", 25, 40, 4)));
    gaps.put("measures", List.of(measure("outcome"), measure("barrier"), measure("contact")));
    gaps.put("release", Body.of(release));
    Map<String, Object> plane = new LinkedHashMap<>();
    plane.put("layout", samples.get("paper-triangle").sent());
    plane.put("vary", List.of(range("drag", 0.1, 0.4, 4), range("x", 0.5, 1.5, 5)));
    plane.put("measures", List.of(measure("outcome"), measure("sealedAtS")));
    Map<String, Object> y = new LinkedHashMap<>();
    y.put("y", 0.4);
    plane.put("release", Body.of(y));
    Map<String, Body> examples = new LinkedHashMap<>();
    examples.put("barrier-by-gap", Body.of(gaps));
    examples.put("outcome-by-drag-and-place", Body.of(plane));
    return examples;
  }

  private static Body range(String quantity, double from, double to, double steps) {
    Map<String, Object> range = new LinkedHashMap<>();
    range.put("quantity", quantity);
    range.put("from", from);
    range.put("to", to);
    range.put("steps", steps);
    return Body.of(range);
  }

  private static Body measure(String word) {
    return Body.of(Map.of("measure", word));
  }

  @Bean
  OperationDescription describeGetSweep() {
    return new OperationDescription(
        "getSweep",
        TAG,
        "Get a sweep again",
        "Never changes, so that it may be kept for good.",
        List.of(sweepId(), value(), column(), row()),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The sweep.", SweepShapes.DOCUMENT, SweepController.DOCUMENT),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  @Bean
  OperationDescription describeGetSweepPlot() {
    return new OperationDescription(
        "getSweepPlot",
        TAG,
        "Get the picture of a sweep",
        "Over one quantity, lines one below the other with intervals as bands, and marks for words;"
            + " over two, a map of one column with its legend, outcomes in colours and patterns.",
        List.of(sweepId(), column(), SharedTexts.pixels(DrawnReply.USUAL_WIDTH)),
        Optional.empty(),
        List.of(
            new AnswerText(200, "The picture.", SweepShapes.DOCUMENT, SweepController.PICTURE),
            PendingAnswer.ACCEPTED),
        List.of(404, 503));
  }

  @Bean
  OperationDescription describeGetLayoutSweep() {
    List<ParameterText> all = new ArrayList<>();
    all.add(SharedTexts.layoutId(samples.get(SAMPLE).document().layoutId()));
    all.add(ParameterText.needed("vary", new TextShape(80), "The quantity.", "gapMm"));
    all.add(ParameterText.optional("from", SweepShapes.FIGURE, "Its first value.", "25"));
    all.add(ParameterText.optional("to", SweepShapes.FIGURE, "Its last value.", "40"));
    all.add(
        ParameterText.optional(
            "steps", SweepShapes.STEPS, "How many values, both ends among them.", "4"));
    all.add(ParameterText.optional("spacing", SweepShapes.SPACING, "Between the values.", "even"));
    all.add(
        ParameterText.optional(
            "values",
            new TextShape(4_000),
            "Every value instead, with semicolons between them, or commas where the decimal sign is"
                + " a point.",
            "25;30;40"));
    all.add(
        ParameterText.needed(
            "measure",
            new TextShape(300),
            "Measures with commas between them, of "
                + String.join(", ", SweepShapes.MEASURE.words())
                + ".",
            "barrier"));
    all.add(
        ParameterText.optional(
            "label", new TextShape(200), "The label of chance, share or barrier.", "Tide"));
    all.add(
        ParameterText.optional(
            "x", SweepShapes.PLACE, "The release, where it does not vary.", "-70"));
    all.add(
        ParameterText.optional(
            "y", SweepShapes.PLACE, "The release, where it does not vary.", "30"));
    all.add(ParameterText.optional("vx", SweepShapes.SPEED, "Push along x.", "0"));
    all.add(ParameterText.optional("vy", SweepShapes.SPEED, "Push along y.", "0"));
    all.add(
        ParameterText.optional(
            "spreadMm",
            HandShapes.SIZE,
            "How far the hand wanders, where a measure is of its odds: standard deviation, radius,"
                + " or outer radius; in a textbook layout a plain number.",
            "3"));
    all.add(
        ParameterText.optional(
            "kind", ChoiceShape.of("gaussian", "disc", "ring"), "How it wanders.", "gaussian"));
    all.add(ParameterText.optional("innerMm", HandShapes.SIZE, "Inner radius of a ring.", "0"));
    all.add(
        ParameterText.optional(
            "spreadMmPerS", HandShapes.SPEED_SIZE, "How far its push wanders.", "0"));
    all.add(
        ParameterText.optional(
            "width", SweepShapes.WIDTH, "Longest interval of a chance.", "0.05"));
    all.add(ParameterText.optional("seed", SweepShapes.SEED, "Seed of the tries.", "1"));
    all.add(
        ParameterText.optional(
            "halfWidth", SweepShapes.HALF_WIDTH, "Half of the small map's window.", "80"));
    all.add(
        ParameterText.optional(
            "side", SweepShapes.SIDE, "Pixels along the side of the small map.", "64"));
    all.add(SharedTexts.pixels(DrawnReply.USUAL_WIDTH));
    all.add(value());
    all.add(column());
    all.add(row());
    return new OperationDescription(
        "getLayoutSweep",
        TAG,
        "Vary one quantity by address alone",
        "As createSweep with one quantity, for clients that cannot post. Every other figure of the"
            + " layout may be changed on the way, as in getLayoutVariant.",
        all,
        Optional.empty(),
        List.of(
            new AnswerText(200, "The sweep.", SweepShapes.DOCUMENT, LayoutSweepController.OFFERED),
            PendingAnswer.ACCEPTED),
        List.of(404, 422, 503));
  }

  private static ParameterText value() {
    return SharedTexts.word(
        "value",
        SweepValue.values(),
        SweepValue::word,
        "One value as text, for a cell of a spreadsheet: cell is that of row and column; least and"
            + " greatest are of a column, leastAt and greatestAt the first quantity's value there;"
            + " changes names the places from which a word is another than before.",
        "cell");
  }

  private static ParameterText column() {
    return ParameterText.optional(
        "column",
        new TextShape(300),
        "The column that a value or a map is of; the first measure if left out.",
        "barrierJ");
  }

  private static ParameterText row() {
    return ParameterText.optional(
        "row", NumberShape.count(1, SweepShapes.MOST_VALUES), "The row of a cell, from 1.", "1");
  }

  private static ParameterText sweepId() {
    return SharedTexts.id("sweepId", "The id, as createSweep gave it.", "swp-…");
  }
}
