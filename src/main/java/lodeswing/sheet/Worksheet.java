package lodeswing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.IntFunction;
import java.util.stream.IntStream;
import lodeswing.figure.AlternativeText;
import lodeswing.sheet.WorksheetFacts.Aim;
import lodeswing.sheet.WorksheetFacts.Chance;
import lodeswing.sheet.WorksheetFacts.Spot;
import lodeswing.words.Words;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * A sheet of activities with blank tables and grids; on pages of its own the key, computed for this
 * very rig.
 */
public final class Worksheet {

  private static final double FIELD = 9 * Ink.MM;
  private static final double SKETCH = 92 * Ink.MM;

  /** Tries from one place, and from anywhere. */
  private static final int SAME_PLACE_TRIES = 10;

  private static final int FAIR_TRIES = 30;

  /** To write an answer on. */
  private static final int LINES = 2;

  private static final int COUNTED_SWINGS = 10;

  /** Pupils of this age compare counts by chi-squared: common practice. */
  private static final int STATISTICS_FROM = 15;

  private static final double LEVEL = 0.95;
  private static final double MILLI = 1e-3;
  private static final double CENTI = 1e-2;

  private final WorksheetFacts facts;
  private final List<WorksheetActivity> activities;
  private final int age;
  private final Words words;
  private final Paper.Format format;
  private final List<Page> pages = new ArrayList<>();

  private Worksheet(
      WorksheetFacts facts,
      List<WorksheetActivity> activities,
      int age,
      Paper.Format format,
      Words words) {
    this.facts = facts;
    this.activities = activities;
    this.age = age;
    this.format = format;
    this.words = words;
  }

  /**
   * The sheet.
   *
   * @param age of the youngest [years]
   * @param answers whether the key follows
   * @param words of the subject {@code worksheet}
   */
  public static PrintedSheet of(
      WorksheetFacts facts,
      List<WorksheetActivity> activities,
      int age,
      boolean answers,
      Paper paper,
      Words words) {
    return new Worksheet(facts, activities, age, paper.lying(false), words).sheet(answers);
  }

  private PrintedSheet sheet(boolean answers) {
    List<List<PageItem.Block>> all = new ArrayList<>(tasks());
    if (answers) {
      all.addAll(key());
    }
    for (int i = 0; i < all.size(); i++) {
      List<PageItem.Block> blocks = new ArrayList<>(all.get(i));
      blocks.add(number(i + 1, all.size()));
      pages.add(new Page(format, blocks));
    }
    String about = words.text("about", Map.of("activities", activities.size()));
    return new PrintedSheet(
        new AlternativeText(words.locale().toLanguageTag(), heading(), about), pages);
  }

  private String heading() {
    return facts.title().isEmpty()
        ? words.text("title")
        : words.text("heading", Map.of("title", facts.title()));
  }

  private Flow flow() {
    return new Flow(format, Tiling.MARGIN, PageFoot.ROOM, words.locale());
  }

  private PageItem.Block number(int page, int count) {
    String number = words.text("page", Map.of("page", page, "count", count));
    return PageFoot.of(heading(), number, format, words.locale());
  }

  private List<List<PageItem.Block>> tasks() {
    Flow flow = flow().heading(heading());
    flow.paragraph(words.text("names"));
    if (!facts.cautions().isEmpty()) {
      flow.subheading(words.text("before")).list(facts.cautions());
    }
    for (int k = 0; k < activities.size(); k++) {
      WorksheetActivity one = activities.get(k);
      int number = k + 1;
      // What to do stays with where it is done.
      flow.together(
          parts -> {
            parts.subheading(words.text("number", Map.of("number", number, "title", title(one))));
            parts.paragraph(words.text(one.word() + ".how", arguments()));
            field(one, parts);
          });
      more(one, flow);
      flow.question(words.text(one.word() + ".think"), LINES);
    }
    return flow.pages();
  }

  /** What pupils draw or write into first. */
  private void field(WorksheetActivity one, Flow flow) {
    switch (one) {
      case PREDICT -> sketch(flow, facts.aims());
      case TWICE -> twice(flow);
      case FAIR -> fair(flow);
      case WEAK_SPOTS -> sketch(flow, List.of());
      case FREE_SWING -> freeSwing(flow);
      case DAMPING -> damping(flow);
    }
  }

  /** What follows it. */
  private void more(WorksheetActivity one, Flow flow) {
    switch (one) {
      case PREDICT -> predict(flow);
      case TWICE -> places(flow);
      case FAIR -> chiSquared(flow);
      case WEAK_SPOTS -> weakSpots(flow);
      case FREE_SWING, DAMPING -> {}
    }
  }

  private String title(WorksheetActivity one) {
    return words.text(one.word() + ".title");
  }

  private Map<String, Object> arguments() {
    return Map.of(
        "tries",
        SAME_PLACE_TRIES,
        "many",
        FAIR_TRIES,
        "swings",
        COUNTED_SWINGS,
        "radius",
        words.number(facts.reach() / CENTI, 2),
        "aside",
        words.number(aside() / CENTI, 2));
  }

  /** How far to pull a free pendulum: a tenth of its length, or half of what releases reach. */
  private double aside() {
    OptionalDouble length = facts.swing().length();
    double aside = length.isPresent() ? length.getAsDouble() / 10 : facts.reach() / 2;
    return Math.rint(aside / CENTI) * CENTI;
  }

  private void sketch(Flow flow, List<Aim> aims) {
    PlateSketch sketch = new PlateSketch(facts, aims, SKETCH);
    flow.figure(
        words.text("sketch", Map.of("magnets", facts.magnets().size(), "places", aims.size())),
        SKETCH,
        sketch::shapes);
    flow.remark(words.text("sketch-scale", Map.of("times", words.number(sketch.reduction(), 3))));
  }

  private void predict(Flow flow) {
    if (facts.aims().isEmpty()) {
      flow.remark(words.text("no-place"));
      return;
    }
    flow.form(
        table(
            facts.aims().size(),
            k -> List.of(place(k), at(facts.aims().get(k)), "", "", "", ""),
            "column.place",
            "column.at",
            "column.guess",
            "column.first",
            "column.second",
            "column.third"),
        FIELD);
  }

  private void twice(Flow flow) {
    flow.form(
        table(
            ends().size(),
            k -> List.of(ends().get(k), "", "", "", ""),
            "column.end",
            "column.tally-p",
            "column.count",
            "column.tally-q",
            "column.count"),
        FIELD);
  }

  private void places(Flow flow) {
    if (facts.pair().isEmpty()) {
      flow.remark(words.text("no-place"));
      return;
    }
    flow.remark(
        words.text(
            "twice.places", Map.of("p", at(facts.pair().get(0)), "q", at(facts.pair().get(1)))));
  }

  /** Labels, and a row for all else. */
  private List<String> ends() {
    List<String> ends = new ArrayList<>(facts.labels());
    ends.add(words.text("elsewhere"));
    return ends;
  }

  private void fair(Flow flow) {
    flow.form(
        table(
            ends().size(),
            k -> List.of(ends().get(k), "", "", expected(k), ""),
            "column.end",
            "column.tally",
            "column.count",
            "column.if-fair",
            "column.difference"),
        FIELD);
  }

  private void chiSquared(Flow flow) {
    if (age >= STATISTICS_FROM && facts.labels().size() > 1) {
      int freedom = facts.labels().size() - 1;
      double limit = new ChiSquaredDistribution(freedom).inverseCumulativeProbability(LEVEL);
      flow.paragraph(
          words.text(
              "fair.chi-squared", Map.of("limit", words.number(limit, 3), "freedom", freedom)));
    }
  }

  private String expected(int row) {
    int labels = facts.labels().size();
    return row < labels ? words.number((double) FAIR_TRIES / labels, 3) : words.number(0, 1);
  }

  private void weakSpots(Flow flow) {
    flow.form(
        table(
            5,
            k -> List.of(words.number(k + 1, 2), "", "", ""),
            "column.number",
            "column.x-cm",
            "column.y-cm",
            "column.seen"),
        FIELD);
  }

  private void freeSwing(Flow flow) {
    flow.form(
        table(
            3,
            k -> List.of(words.number(k + 1, 2), "", "", "", ""),
            "column.try",
            "column.time-x",
            "column.period-x",
            "column.time-y",
            "column.period-y"),
        FIELD);
  }

  private void damping(Flow flow) {
    flow.form(
        table(
            6,
            k -> List.of(words.number(COUNTED_SWINGS * k, 3), "", "", ""),
            "column.after-swings",
            "column.width",
            "column.part",
            "column.time"),
        FIELD);
  }

  private Table table(int rows, IntFunction<List<String>> row, String... columns) {
    List<Table.Column> heads = new ArrayList<>();
    for (String column : columns) {
      heads.add(new Table.Column(words.text(column, arguments()), false));
    }
    return new Table(heads, IntStream.range(0, rows).mapToObj(row).toList());
  }

  private static String place(int k) {
    return PlacingSheet.letters(k);
  }

  private String at(Aim aim) {
    return words.text("at", Map.of("x", millimetres(aim.x()), "y", millimetres(aim.y())));
  }

  private String millimetres(double metres) {
    return words.number(Math.rint(metres / MILLI) + 0.0, 5);
  }

  private List<List<PageItem.Block>> key() {
    Flow flow = flow().heading(words.text("key.heading", Map.of("title", heading())));
    flow.paragraph(words.text("key.how", Map.of("hand", words.number(facts.hand() / MILLI, 2))));
    for (int k = 0; k < activities.size(); k++) {
      WorksheetActivity one = activities.get(k);
      flow.subheading(words.text("number", Map.of("number", k + 1, "title", title(one))));
      switch (one) {
        case PREDICT -> chances(flow, facts.aims(), false);
        case TWICE -> chances(flow, facts.pair(), true);
        case FAIR -> fairKey(flow);
        case WEAK_SPOTS -> spots(flow);
        case FREE_SWING -> swing(flow);
        case DAMPING -> halving(flow);
      }
      if (one != WorksheetActivity.DAMPING || facts.swing().halves().isPresent()) {
        flow.paragraph(words.text(one.word() + ".key"));
      }
    }
    return flow.pages();
  }

  private void chances(Flow flow, List<Aim> aims, boolean pair) {
    if (aims.isEmpty()) {
      flow.paragraph(words.text("no-place"));
      return;
    }
    List<List<String>> rows = new ArrayList<>();
    for (int k = 0; k < aims.size(); k++) {
      Aim aim = aims.get(k);
      Chance most = aim.chances().get(0);
      Optional<Chance> next = aim.chances().stream().skip(1).findFirst();
      rows.add(
          List.of(
              pair ? (k == 0 ? "P" : "Q") : place(k),
              at(aim),
              most.end(),
              interval(most),
              next.map(Chance::end).orElse("–"),
              next.map(this::interval).orElse("–")));
    }
    flow.table(
        new Table(
            heads(
                "column.place",
                "column.at",
                "column.most",
                "column.chance",
                "column.next",
                "column.chance"),
            rows));
  }

  private List<Table.Column> heads(String... keys) {
    List<Table.Column> heads = new ArrayList<>();
    for (String key : keys) {
      heads.add(new Table.Column(words.text(key, arguments()), false));
    }
    return heads;
  }

  private String percent(double share) {
    return words.text("percent", Map.of("share", share));
  }

  private String interval(Chance chance) {
    return words.text(
        "interval", Map.of("share", chance.share(), "low", chance.low(), "high", chance.high()));
  }

  private void fairKey(Flow flow) {
    List<List<String>> rows = new ArrayList<>();
    for (Chance one : facts.anywhere()) {
      rows.add(List.of(one.end(), interval(one), words.number(one.share() * FAIR_TRIES, 2)));
    }
    flow.table(new Table(heads("column.end", "column.chance", "column.of-many"), rows));
    flow.paragraph(words.text("fair.tries", Map.of("tries", facts.tries())));
  }

  private void spots(Flow flow) {
    List<List<String>> rows = new ArrayList<>();
    for (Spot spot : facts.spots()) {
      rows.add(
          List.of(
              words.number(rows.size() + 1, 3),
              words.number(Math.rint(spot.x() / MILLI) / 10 + 0.0, 4),
              words.number(Math.rint(spot.y() / MILLI) / 10 + 0.0, 4),
              words.number(spot.strength() / MILLI, 2)));
    }
    if (rows.isEmpty()) {
      flow.paragraph(words.text("weak-spots.none"));
    } else {
      flow.table(
          new Table(heads("column.number", "column.x-cm", "column.y-cm", "column.strength"), rows));
    }
  }

  private void swing(Flow flow) {
    WorksheetFacts.Swing swing = facts.swing();
    flow.paragraph(
        words.text(
            "free-swing.periods",
            Map.of(
                "x",
                words.number(swing.periodX(), 3),
                "y",
                words.number(swing.periodY(), 3),
                "manyX",
                words.number(COUNTED_SWINGS * swing.periodX(), 3),
                "manyY",
                words.number(COUNTED_SWINGS * swing.periodY(), 3),
                "swings",
                COUNTED_SWINGS)));
    swing
        .length()
        .ifPresent(
            length ->
                flow.paragraph(
                    words.text(
                        "free-swing.length", Map.of("length", words.number(length / CENTI, 3)))));
  }

  private void halving(Flow flow) {
    WorksheetFacts.Swing swing = facts.swing();
    if (swing.halves().isEmpty()) {
      flow.paragraph(words.text("damping.other-law"));
      return;
    }
    double halves = swing.halves().getAsDouble();
    double perSwing = Math.pow(0.5, swing.periodX() / halves);
    flow.paragraph(
        words.text(
            "damping.halves",
            Map.of(
                "swings",
                words.number(halves / swing.periodX(), 3),
                "time",
                words.number(halves, 3),
                "lost",
                1 - perSwing)));
    List<List<String>> rows = new ArrayList<>();
    for (int k : List.of(0, 1, 2, 3, 4, 5)) {
      int swings = COUNTED_SWINGS * k;
      rows.add(List.of(words.number(swings, 3), percent(Math.pow(perSwing, swings))));
    }
    flow.table(new Table(heads("column.after-swings", "column.part"), rows));
  }
}
