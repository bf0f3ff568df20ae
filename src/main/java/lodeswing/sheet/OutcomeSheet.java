package lodeswing.sheet;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Anchor;
import lodeswing.figure.Points;
import lodeswing.figure.Shape;
import lodeswing.figure.Style;
import lodeswing.figure.Tint;
import lodeswing.letters.Typesetter;
import lodeswing.words.Words;

/**
 * The labels of a chooser to print: in wedges about the point under the bob, one disc in true
 * scale, or on tags to cut out, each as large as its place. Letters grow until they fit.
 */
public final class OutcomeSheet {

  private static final double MARGIN = 12 * Ink.MM;
  private static final double HEADING = 14;
  private static final double SMALL = 9;
  private static final double NUMBER = 8;
  private static final double PADDING = 1.5 * Ink.MM;

  /** Least size of letters in a wedge; where a label would be smaller, there are tags [pt]. */
  private static final double READABLE = 9;

  /** Least size of letters on a tag [pt]. */
  private static final double SMALLEST = 4;

  /** Room for labels beyond the outermost magnet. */
  private static final double RIM = 45 * Ink.MM;

  private static final double HUB = 5 * Ink.MM;

  /** Wedges narrower than this are none. */
  private static final double NARROWEST = Math.toRadians(12);

  private static final double LEAST_WIDTH = 26 * Ink.MM;
  private static final double MOST_WIDTH = 88 * Ink.MM;
  private static final double USUAL_WIDTH = 60 * Ink.MM;

  /** Height of a tag by its width. */
  private static final double SHAPE = 0.5;

  /** Share of the way to the nearest other magnet that a tag is wide. */
  private static final double OF_SPACING = 0.92;

  private final OutcomePlan plan;
  private final Paper.Format format;
  private final Words words;
  private final double top;

  private OutcomeSheet(OutcomePlan plan, Paper.Format format, Words words) {
    this.plan = plan;
    this.format = format;
    this.words = words;
    this.top = format.height() - MARGIN;
  }

  /** How the labels come. */
  public enum Pieces {
    WEDGES("wedges"),
    TAGS("tags");

    private final String word;

    Pieces(String word) {
      this.word = word;
    }

    /** The word in addresses. */
    public String word() {
      return word;
    }
  }

  /**
   * The sheet.
   *
   * @param pieces how the labels come; where empty, in wedges if they fit
   * @param words of the subject {@code sheet}
   * @return empty where wedges are asked for, and labels or magnets do not fit into any
   */
  public static Optional<PrintedSheet> of(
      OutcomePlan plan, Paper.Format format, Optional<Pieces> pieces, Words words) {
    var sheet = new OutcomeSheet(plan, format, words);
    Optional<List<PageItem.Block>> disc =
        pieces.equals(Optional.of(Pieces.TAGS)) ? Optional.empty() : sheet.disc();
    if (disc.isEmpty() && pieces.equals(Optional.of(Pieces.WEDGES))) {
      return Optional.empty();
    }
    List<List<PageItem.Block>> pages = new ArrayList<>();
    disc.ifPresentOrElse(pages::add, () -> pages.addAll(sheet.tags()));
    pages.addAll(sheet.notes());
    return Optional.of(sheet.numbered(pages));
  }

  private PrintedSheet numbered(List<List<PageItem.Block>> all) {
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      List<PageItem.Block> blocks = new ArrayList<>(all.get(i));
      String text = words.text("page", Map.of("page", i + 1, "count", all.size()));
      blocks.add(
          PageItem.of(
              Tag.ORNAMENT,
              List.of(
                  Ink.text(
                      text,
                      format.width() - MARGIN,
                      MARGIN - NUMBER * Ink.POINT,
                      NUMBER,
                      Anchor.END,
                      Tint.Role.SOFT_INK))));
      pages.add(new Page(format, blocks));
    }
    var about =
        new AlternativeText(
            words.locale().toLanguageTag(),
            heading(),
            words.text("outcome.description", Map.of("labels", plan.places().size())));
    return new PrintedSheet(about, pages);
  }

  private String heading() {
    return plan.title().isEmpty()
        ? words.text("outcome.title")
        : words.text("outcome.heading", Map.of("title", plan.title()));
  }

  /** The title, cut to one line that fits, and a line below it. */
  private List<PageItem.Block> head(String below) {
    double width = format.width() - 2 * MARGIN;
    double size = HEADING;
    while (size > SMALL && Ink.width(heading(), size) > width) {
      size -= 0.5;
    }
    List<String> title = Ink.lines(heading(), width, size, words.locale()).subList(0, 1);
    List<String> lines = Ink.lines(below, width, SMALL, words.locale());
    return List.of(
        PageItem.of(Tag.HEADING, Ink.block(title, MARGIN, top, width, size, Tint.Role.INK)),
        PageItem.of(
            Tag.PARAGRAPH,
            Ink.block(lines, MARGIN, top - Ink.height(1, HEADING), width, SMALL, Tint.Role.INK)));
  }

  /** The label of a place, or a line to write it on where it cannot be set. */
  private String label(OutcomePlan.Place place) {
    return Typesetter.missing(place.label()).isEmpty()
        ? place.label()
        : place.number() + "\u00A0______________";
  }

  private Lettering lettering(OutcomePlan.Place place) {
    return new Lettering(label(place), place.chance().map(this::chance).orElse(""), words.locale());
  }

  private String chance(OutcomePlan.Chance chance) {
    return words.text("outcome.chance", Map.of("percent", percent(chance.share())));
  }

  private String percent(double share) {
    return words.number(Math.rint(share * 1000) / 10, 4);
  }

  /** One disc of wedges; empty where it would not fit. */
  private Optional<List<PageItem.Block>> disc() {
    List<OutcomePlan.Place> places =
        plan.places().stream().sorted(Comparator.comparingDouble(OutcomeSheet::angle)).toList();
    double room = Math.min(format.width(), format.height() - 2 * 22 * Ink.MM) / 2 - MARGIN;
    double outermost =
        places.stream().mapToDouble(p -> Math.hypot(p.x(), p.y()) + p.reach()).max().orElse(0);
    double scale = plan.trueScale() ? 1 : 0.6 * room / Math.max(outermost, 1e-9);
    double radius = Math.min(room, outermost * scale + RIM);
    List<double[]> sides = sides(places);
    boolean narrow = sides.stream().anyMatch(side -> side[1] < NARROWEST);
    boolean middle = places.stream().anyMatch(p -> Math.hypot(p.x(), p.y()) * scale < HUB);
    if (places.isEmpty() || narrow || middle || outermost * scale > radius) {
      return Optional.empty();
    }
    double x = format.width() / 2;
    double y = MARGIN + (top - 12 * Ink.MM - MARGIN) / 2;
    List<Crowd.Body> holes = new ArrayList<>();
    holes.add(Crowd.Body.disc(x, y, HUB));
    for (OutcomePlan.Place p : places) {
      holes.add(Crowd.Body.disc(x + p.x() * scale, y + p.y() * scale, p.reach() * scale + PADDING));
    }
    List<PageItem> items = new ArrayList<>();
    items.add(PageItem.of(Tag.ORNAMENT, base(places, x, y, radius, scale)));
    for (int i = 0; i < places.size(); i++) {
      double from = sides.get(i)[0];
      double angle = sides.get(i)[1];
      var wedge = new Lettering.Wedge(x, y, radius - PADDING, from, angle, holes);
      var lettering = lettering(places.get(i));
      Optional<Lettering.Found> found = lettering.largest(wedge, READABLE);
      if (found.isEmpty()) {
        return Optional.empty();
      }
      items.add(
          new PageItem.Block(
              Tag.LIST_ITEM,
              "",
              List.of(
                  PageItem.of(Tag.ORNAMENT, side(x, y, radius, from, places.size())),
                  PageItem.of(Tag.LIST_BODY, lettering.shapes(found.get())))));
    }
    List<PageItem.Block> blocks =
        new ArrayList<>(
            head(words.text(plan.trueScale() ? "outcome.wedges" : "outcome.wedges-free")));
    blocks.add((PageItem.Block) items.remove(0));
    blocks.add(new PageItem.Block(Tag.LIST, "", items));
    return Optional.of(blocks);
  }

  private static double angle(OutcomePlan.Place place) {
    return Math.atan2(place.y(), place.x());
  }

  /** Where each wedge begins and how far it reaches: half way to its neighbours [rad]. */
  private static List<double[]> sides(List<OutcomePlan.Place> sorted) {
    int count = sorted.size();
    List<double[]> sides = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double own = angle(sorted.get(i));
      double before = angle(sorted.get((i + count - 1) % count)) - (i == 0 ? 2 * Math.PI : 0);
      double after = angle(sorted.get((i + 1) % count)) + (i == count - 1 ? 2 * Math.PI : 0);
      double from = (own + before) / 2;
      sides.add(new double[] {from, (own + after) / 2 - from});
    }
    return sides;
  }

  private static List<Shape> base(
      List<OutcomePlan.Place> places, double x, double y, double radius, double scale) {
    var line = Ink.line(Tint.Role.INK, 0.3);
    var fine = Ink.dashed(Tint.Role.PLATE_EDGE, 0.25);
    List<Shape> shapes = new ArrayList<>();
    shapes.add(new Shape.Circle(x, y, radius, Style.outlined(line)));
    shapes.add(new Shape.Circle(x, y, HUB / 2, Style.outlined(fine)));
    shapes.addAll(Ink.cross(x, y, HUB, Ink.line(Tint.Role.INK, 0.15)));
    for (OutcomePlan.Place p : places) {
      double reach = Math.max(2 * Ink.MM, p.reach() * scale);
      shapes.add(
          new Shape.Circle(x + p.x() * scale, y + p.y() * scale, reach, Style.outlined(fine)));
      shapes.addAll(
          Ink.cross(
              x + p.x() * scale, y + p.y() * scale, 1.5 * Ink.MM, Ink.line(Tint.Role.INK, 0.13)));
    }
    return shapes;
  }

  private static List<Shape> side(double x, double y, double radius, double from, int count) {
    if (count == 1) {
      return List.of();
    }
    double cos = Math.cos(from);
    double sin = Math.sin(from);
    return List.of(
        new Shape.Polyline(
            new Points(
                new double[] {x + HUB * cos, x + radius * cos},
                new double[] {y + HUB * sin, y + radius * sin}),
            Ink.line(Tint.Role.INK, 0.3),
            0));
  }

  /** Width of a place's tag. */
  private double tagWidth(OutcomePlan.Place place) {
    if (!plan.trueScale()) {
      return USUAL_WIDTH;
    }
    double spacing =
        plan.places().stream()
            .filter(other -> other.number() != place.number())
            .mapToDouble(other -> Math.hypot(other.x() - place.x(), other.y() - place.y()))
            .min()
            .orElse(MOST_WIDTH);
    double most = Math.min(MOST_WIDTH, format.width() - 2 * MARGIN);
    return Math.max(LEAST_WIDTH, Math.min(most, OF_SPACING * spacing));
  }

  /** Tags side by side, on as many pages as they take. */
  private List<List<PageItem.Block>> tags() {
    List<List<PageItem.Block>> pages = new ArrayList<>();
    pages.add(new ArrayList<>(head(words.text("outcome.tags"))));
    double upper = top - 24 * Ink.MM;
    double left = MARGIN;
    double row = 0;
    List<PageItem> items = new ArrayList<>();
    for (OutcomePlan.Place place : plan.places()) {
      double width = tagWidth(place);
      double height = SHAPE * width;
      if (left > MARGIN && left + width > format.width() - MARGIN + 1e-9) {
        left = MARGIN;
        upper -= row;
        row = 0;
      }
      if (upper - height < MARGIN) {
        close(pages, items);
        pages.add(new ArrayList<>());
        upper = top;
        left = MARGIN;
        row = 0;
      }
      items.add(tag(place, left, upper, width, height));
      left += width;
      row = Math.max(row, height);
    }
    close(pages, items);
    return pages;
  }

  private static void close(List<List<PageItem.Block>> pages, List<PageItem> items) {
    if (!items.isEmpty()) {
      pages.get(pages.size() - 1).add(new PageItem.Block(Tag.LIST, "", items));
      items.clear();
    }
  }

  private PageItem.Block tag(
      OutcomePlan.Place place, double left, double upper, double width, double height) {
    double x = left + width / 2;
    double y = upper - height / 2;
    var lettering = lettering(place);
    var card = new Lettering.Card(x, y, width - 2 * PADDING, height - 2 * PADDING);
    List<Shape> letters =
        lettering.largest(card, SMALLEST).map(lettering::shapes).orElse(List.of());
    Shape edge =
        new Shape.Rectangle(x, y, width, height, 0, Style.outlined(Ink.line(Tint.Role.INK, 0.2)));
    return new PageItem.Block(
        Tag.LIST_ITEM,
        "",
        List.of(PageItem.of(Tag.ORNAMENT, List.of(edge)), PageItem.of(Tag.LIST_BODY, letters)));
  }

  /** What stands beside the labels, and what to mind. */
  private List<List<PageItem.Block>> notes() {
    var flow = new Flow(format, 15 * Ink.MM, 3 * Ink.MM, words.locale());
    flow.subheading(words.text("outcome.notes"));
    List<String> unset =
        plan.places().stream()
            .filter(place -> !Typesetter.missing(place.label()).isEmpty())
            .map(place -> Integer.toString(place.number()))
            .toList();
    if (!unset.isEmpty()) {
      flow.paragraph(words.text("outcome.unset", Map.of("numbers", words.list(unset))));
    }
    plan.hand().ifPresent(hand -> flow.paragraph(hand));
    flow.table(table());
    if (!plan.cautions().isEmpty()) {
      flow.subheading(words.text("placing.cautions"));
      flow.list(plan.cautions());
    }
    return flow.pages();
  }

  private Table table() {
    List<Table.Column> columns = new ArrayList<>();
    columns.add(new Table.Column(words.text("column.number"), false));
    columns.add(new Table.Column(words.text("column.label"), false));
    boolean chances = plan.hand().isPresent();
    if (chances) {
      columns.add(new Table.Column(words.text("column.chance"), true));
      columns.add(new Table.Column(words.text("column.interval"), true));
    }
    List<List<String>> rows = new ArrayList<>();
    for (OutcomePlan.Place place : plan.places()) {
      List<String> row = new ArrayList<>(List.of(Integer.toString(place.number()), place.label()));
      if (chances) {
        row.add(place.chance().map(this::chance).orElse(""));
        row.add(
            place
                .chance()
                .map(
                    chance ->
                        words.text(
                            "outcome.interval",
                            Map.of("low", percent(chance.low()), "high", percent(chance.high()))))
                .orElse(""));
      }
      rows.add(row);
    }
    return new Table(columns, rows);
  }
}
