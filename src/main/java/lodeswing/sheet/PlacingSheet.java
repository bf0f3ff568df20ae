package lodeswing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.DoublePredicate;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Anchor;
import lodeswing.figure.PlateMagnet;
import lodeswing.figure.Shape;
import lodeswing.figure.Style;
import lodeswing.figure.Tint;
import lodeswing.figure.ViewBox;
import lodeswing.words.Words;

/**
 * The sheet by which magnets are placed: the plate in true scale, on as many pages as it takes,
 * with marks by which they are joined and lines that show a printer that scales; then the parts,
 * the places and the cautions.
 */
public final class PlacingSheet {

  private static final double CHECK = 100 * Ink.MM;
  private static final double SQUARE = 50 * Ink.MM;
  private static final double TICK = 1.5 * Ink.MM;
  private static final double HEADLINE = 13;
  private static final double SUBLINE = 9;
  private static final double NUMBER = 8;
  private static final double SEAM_RING = 2 * Ink.MM;
  private static final double SEAM_ARM = 4 * Ink.MM;

  /** Marks along each edge at which two pages meet. */
  private static final int SEAM_MARKS = 3;

  private static final double MAP_WIDTH = 34 * Ink.MM;
  private static final double MAP_HEIGHT = 13 * Ink.MM;
  private static final double OVERVIEW = 75 * Ink.MM;

  private final PlacingPlan plan;
  private final Words words;
  private final Tiling tiling;
  private final PlateDrawing drawing;
  private final PrintedTiles tiles;

  private PlacingSheet(PlacingPlan plan, Tiling tiling, Words words) {
    this.plan = plan;
    this.words = words;
    this.tiling = tiling;
    this.drawing = new PlateDrawing(plan, words, tiling.seams());
    this.tiles = PrintedTiles.of(tiling, drawing::shows);
  }

  /** How many pages the plate itself takes at most. */
  public static long plates(PlacingPlan plan, Paper paper, Optional<Boolean> landscape) {
    return Tiling.of(plan, paper, landscape).count();
  }

  /**
   * The sheet.
   *
   * @param landscape whether the paper lies across; where empty, as it takes fewer pages
   * @param words of the subject {@code sheet}
   */
  public static PrintedSheet of(
      PlacingPlan plan, Paper paper, Optional<Boolean> landscape, Words words) {
    Tiling tiling = Tiling.of(plan, paper, landscape);
    return new PlacingSheet(plan, tiling, words).sheet();
  }

  private PrintedSheet sheet() {
    boolean tiled = tiles.count() > 1;
    List<List<PageItem.Block>> listed = lists(tiled);
    List<List<PageItem.Block>> plates = new ArrayList<>();
    for (int row = 0; row < tiling.rows(); row++) {
      for (int column = 0; column < tiling.columns(); column++) {
        if (tiles.has(column, row)) {
          plates.add(plate(column, row, tiled));
        }
      }
    }
    List<List<PageItem.Block>> all = new ArrayList<>(tiled ? listed : plates);
    all.addAll(tiled ? plates : listed);
    List<Page> pages = new ArrayList<>();
    for (int i = 0; i < all.size(); i++) {
      List<PageItem.Block> blocks = new ArrayList<>(all.get(i));
      blocks.add(number(i + 1, all.size()));
      pages.add(new Page(tiling.format(), blocks));
    }
    return new PrintedSheet(about(), pages);
  }

  private String heading() {
    return plan.title().isEmpty()
        ? words.text("placing.title")
        : words.text("placing.heading", Map.of("title", plan.title()));
  }

  private AlternativeText about() {
    return new AlternativeText(words.locale().toLanguageTag(), heading(), description());
  }

  private String description() {
    return words.text(
        "placing.description", Map.of("magnets", plan.magnets().size(), "pages", tiles.count()));
  }

  private PageItem.Block number(int page, int count) {
    String number = words.text("page", Map.of("page", page, "count", count));
    return PageFoot.of(heading(), number, tiling.format(), words.locale());
  }

  private List<PageItem.Block> plate(int column, int row, boolean tiled) {
    ViewBox window = tiling.window(column, row);
    var shift = new Shift(Tiling.pageLeft() - window.left(), Tiling.pageBottom() - window.bottom());
    List<PageItem.Block> blocks = new ArrayList<>(head(column, row, tiled));
    ViewBox seen =
        new ViewBox(Tiling.pageLeft(), Tiling.pageBottom(), tiling.width(), tiling.height());
    List<Shape> shapes =
        new ArrayList<>(shift.all(drawing.within(window, tiling.own(column, row))));
    List<Shape> marks = shift.all(seams(column, row));
    List<PageItem> items = new ArrayList<>();
    items.add(new PageItem.Marks(List.of(new Shape.Clipped(seen, shapes))));
    items.add(new PageItem.Marks(marks));
    blocks.add(new PageItem.Block(Tag.FIGURE, shown(window), items));
    blocks.addAll(checks());
    return blocks;
  }

  /** What a window shows, in words. */
  private String shown(ViewBox window) {
    List<String> seen = new ArrayList<>();
    for (SheetMagnet one : plan.magnets()) {
      PlateMagnet magnet = one.magnet();
      if (window.contains(magnet.x(), magnet.y())) {
        String name =
            magnet.label().isEmpty()
                ? Integer.toString(magnet.number())
                : magnet.number() + " " + magnet.label();
        seen.add(
            words.text(
                "placing.magnet-at",
                Map.of(
                    "name",
                    name,
                    "pole",
                    words.text("pole." + magnet.face().letter()),
                    "x",
                    PlateDrawing.millimetres(magnet.x(), words),
                    "y",
                    PlateDrawing.millimetres(magnet.y(), words))));
      }
    }
    String all = seen.isEmpty() ? words.text("placing.no-magnet") : String.join("; ", seen);
    return words.text("placing.shown", Map.of("magnets", all));
  }

  private List<PageItem.Block> head(int column, int row, boolean tiled) {
    double top = tiling.format().height() - Tiling.MARGIN;
    double width = tiling.format().width() - 2 * Tiling.MARGIN - (tiled ? MAP_WIDTH : 0);
    String first =
        tiled
            ? words.text("placing.tile", Map.of("row", row + 1, "column", column + 1))
            : heading();
    double size = HEADLINE;
    while (size > SUBLINE && Ink.width(first, size) > width) {
      size -= 0.5;
    }
    List<String> line = Ink.lines(first, width, size, words.locale()).subList(0, 1);
    List<PageItem.Block> blocks = new ArrayList<>();
    blocks.add(
        PageItem.of(
            tiled ? Tag.SUBHEADING : Tag.HEADING,
            Ink.block(line, Tiling.MARGIN, top, width, size, Tint.Role.INK)));
    List<String> below = Ink.lines(words.text("placing.how"), width, SUBLINE, words.locale());
    blocks.add(
        PageItem.of(
            Tag.PARAGRAPH,
            Ink.block(
                below.subList(0, Math.min(2, below.size())),
                Tiling.MARGIN,
                top - Ink.height(1, HEADLINE),
                width,
                SUBLINE,
                Tint.Role.INK)));
    if (tiled) {
      double left = tiling.format().width() - Tiling.MARGIN - MAP_WIDTH;
      blocks.add(
          PageItem.of(
              Tag.ORNAMENT,
              map(left, top - MAP_HEIGHT, MAP_WIDTH, MAP_HEIGHT, column, row, false)));
    }
    return blocks;
  }

  /** The pages side by side, one of them dark. */
  private List<Shape> map(
      double left, double bottom, double width, double height, int column, int row, boolean named) {
    double across = tiling.columns() * (tiling.width() - Tiling.OVERLAP) + Tiling.OVERLAP;
    double down = tiling.rows() * (tiling.height() - Tiling.OVERLAP) + Tiling.OVERLAP;
    double scale = Math.min(width / across, height / down);
    double x0 = left + (named ? 0 : width - across * scale);
    double y0 = bottom + height;
    List<Shape> shapes = new ArrayList<>();
    for (int r = 0; r < tiling.rows(); r++) {
      for (int c = 0; c < tiling.columns(); c++) {
        if (!tiles.has(c, r)) {
          continue;
        }
        ViewBox own = tiling.own(c, r);
        double x = x0 + (own.left() + own.width() / 2 - tiling.left()) * scale;
        double y = y0 - (tiling.top() - own.top() + own.height() / 2) * scale;
        var line = Ink.line(Tint.Role.INK, 0.2);
        Style style =
            c == column && r == row ? Style.of(Tint.Role.PLATE_EDGE, line) : Style.outlined(line);
        shapes.add(new Shape.Rectangle(x, y, own.width() * scale, own.height() * scale, 0, style));
        if (named) {
          shapes.add(
              Ink.text(
                  words.text("placing.tile-short", Map.of("row", r + 1, "column", c + 1)),
                  x - own.width() * scale / 2 + Ink.MM,
                  y + own.height() * scale / 2 - 3.2 * Ink.MM,
                  NUMBER,
                  Anchor.START,
                  Tint.Role.INK));
        }
      }
    }
    if (named) {
      for (SheetMagnet one : plan.magnets()) {
        PlateMagnet magnet = one.magnet();
        double x = x0 + (magnet.x() - tiling.left()) * scale;
        double y = y0 - (tiling.top() - magnet.y()) * scale;
        double reach = Math.max(0.5 * Ink.MM, magnet.outline().reach() * scale);
        shapes.add(new Shape.Circle(x, y, reach, Style.outlined(Ink.line(Tint.Role.INK, 0.15))));
      }
    }
    return shapes;
  }

  /** Marks at which a page meets its neighbours, with the same letter on both. */
  private List<Shape> seams(int column, int row) {
    ViewBox window = tiling.window(column, row);
    ViewBox own = tiling.own(column, row);
    List<Shape> shapes = new ArrayList<>();
    for (int side = 0; side < 2; side++) {
      int seam = column + side;
      if (tiles.has(seam - 1, row) && tiles.has(seam, row)) {
        double x = tiling.seamX(seam);
        shapes.add(guide(x, window.bottom(), x, window.top()));
        for (int i = 0; i < SEAM_MARKS; i++) {
          double middle = own.bottom() + own.height() * (2 * i + 1) / (2 * SEAM_MARKS);
          double y = clear(middle, own.height(), at -> drawing.covers(x, at, SEAM_ARM));
          mark(x, y, upright(seam, row) + i, shapes);
        }
      }
      int level = row + side;
      if (tiles.has(column, level - 1) && tiles.has(column, level)) {
        double y = tiling.seamY(level);
        shapes.add(guide(window.left(), y, window.right(), y));
        for (int i = 0; i < SEAM_MARKS; i++) {
          double middle = own.left() + own.width() * (2 * i + 1) / (2 * SEAM_MARKS);
          double x = clear(middle, own.width(), at -> drawing.covers(at, y, SEAM_ARM));
          mark(x, y, lying(level, column) + i, shapes);
        }
      }
    }
    return shapes;
  }

  /** The place nearest to a wanted one, within its part of a seam, that no magnet covers. */
  private static double clear(double wanted, double seam, DoublePredicate covered) {
    double most = seam / (2 * SEAM_MARKS) - SEAM_ARM;
    for (double shift = 0; shift <= most; shift += Ink.MM) {
      for (double at : new double[] {wanted + shift, wanted - shift}) {
        if (!covered.test(at)) {
          return at;
        }
      }
    }
    return wanted;
  }

  private int upright(int seam, int row) {
    return SEAM_MARKS * ((seam - 1) * tiling.rows() + row);
  }

  private int lying(int level, int column) {
    int before = SEAM_MARKS * (tiling.columns() - 1) * tiling.rows();
    return before + SEAM_MARKS * ((level - 1) * tiling.columns() + column);
  }

  private static Shape guide(double fromX, double fromY, double toX, double toY) {
    return Ink.segment(fromX, fromY, toX, toY, Ink.dashed(Tint.Role.PLATE_EDGE, 0.15));
  }

  private static void mark(double x, double y, int number, List<Shape> shapes) {
    var line = Ink.line(Tint.Role.INK, 0.15);
    shapes.add(new Shape.Circle(x, y, SEAM_RING, Style.outlined(line)));
    shapes.addAll(Ink.cross(x, y, SEAM_ARM, line));
    shapes.add(
        Ink.text(
            letters(number),
            x + SEAM_RING,
            y + SEAM_RING / 2,
            NUMBER,
            Anchor.START,
            Tint.Role.INK));
  }

  /** A to Z, then AA to AZ and so on. */
  static String letters(int number) {
    String last = Character.toString('A' + number % 26);
    return number < 26 ? last : letters(number / 26 - 1) + last;
  }

  /** Two lines at a right angle, each 100 mm long, and what to do with them. */
  private List<PageItem.Block> checks() {
    double x = Tiling.MARGIN + Tiling.SIDE / 2;
    double y = Tiling.MARGIN + Tiling.FOOT / 2;
    var line = Ink.line(Tint.Role.INK, 0.25);
    List<Shape> shapes = new ArrayList<>();
    shapes.add(Ink.segment(x, y, x + CHECK, y, line));
    shapes.add(Ink.segment(x, y, x, y + CHECK, line));
    for (int i = 0; i <= 10; i++) {
      double at = i * CHECK / 10;
      double tick = i % 10 == 0 ? 2 * TICK : i % 5 == 0 ? 1.5 * TICK : TICK;
      shapes.add(Ink.segment(x + at, y - (i == 0 ? 0 : tick), x + at, y, line));
      shapes.add(Ink.segment(x - (i == 0 ? 0 : tick), y + at, x, y + at, line));
    }
    shapes.add(
        Ink.text(
            "100 mm",
            x + CHECK / 2,
            y - 1.5 * TICK - NUMBER * Ink.POINT,
            NUMBER,
            Anchor.MIDDLE,
            Tint.Role.INK));
    double left = x + CHECK + 4 * Ink.MM;
    double width = tiling.format().width() - Tiling.MARGIN - left;
    List<String> lines = Ink.lines(words.text("check.lines"), width, NUMBER, words.locale());
    return List.of(
        PageItem.figure(words.text("check.alternative"), shapes),
        PageItem.of(
            Tag.PARAGRAPH,
            Ink.block(lines, left, y + Ink.height(1, NUMBER) * 1.4, width, NUMBER, Tint.Role.INK)));
  }

  /** With the check square where it takes fewer pages: at the end, or else before the lists. */
  private List<List<PageItem.Block>> lists(boolean tiled) {
    List<List<PageItem.Block>> last = lists(tiled, false);
    List<List<PageItem.Block>> first = lists(tiled, true);
    return first.size() < last.size() ? first : last;
  }

  private List<List<PageItem.Block>> lists(boolean tiled, boolean squareFirst) {
    var flow = new Flow(tiling.format(), Tiling.MARGIN, PageFoot.ROOM, words.locale());
    if (tiled) {
      flow.heading(heading());
      flow.paragraph(
          words.text(
              "placing.join",
              Map.of("pages", tiles.count(), "columns", tiling.columns(), "rows", tiling.rows())));
      if (tiles.leftOut() > 0) {
        flow.paragraph(words.text("placing.left-out", Map.of("count", tiles.leftOut())));
      }
    } else {
      flow.subheading(words.text("placing.lists"));
    }
    flow.paragraph(words.text("placing.use"));
    if (!plan.cautions().isEmpty()) {
      flow.subheading(words.text("placing.cautions"));
      flow.list(plan.cautions());
    }
    if (squareFirst) {
      flow.together(this::checkSquare);
    }
    if (tiled) {
      flow.together(this::overview);
    }
    flow.subheading(words.text("placing.parts"));
    flow.table(plan.parts());
    if (!plan.magnets().isEmpty()) {
      flow.subheading(words.text("placing.places"));
      flow.paragraph(words.text("placing.axes"));
      flow.table(places());
    }
    if (!drawing.unnamed().isEmpty()) {
      flow.remark(
          words.text(
              "placing.unnamed",
              Map.of(
                  "numbers",
                  words.list(drawing.unnamed().stream().map(String::valueOf).toList()))));
    }
    if (!squareFirst) {
      flow.together(this::checkSquare);
    }
    return flow.pages();
  }

  private void checkSquare(Flow flow) {
    flow.subheading(words.text("check.square-title"));
    flow.paragraph(words.text("check.square"));
    flow.figure(words.text("check.square-alternative"), SQUARE + 2 * Ink.MM, PlacingSheet::square);
  }

  private static List<Shape> square(double left, double bottom) {
    double x = left + SQUARE / 2 + Ink.MM;
    double y = bottom + SQUARE / 2 + Ink.MM;
    var line = Ink.line(Tint.Role.INK, 0.25);
    double half = SQUARE / 2;
    return List.of(
        new Shape.Rectangle(x, y, SQUARE, SQUARE, 0, Style.outlined(line)),
        Ink.segment(x - half, y - half, x + half, y + half, Ink.line(Tint.Role.INK, 0.1)),
        Ink.segment(x - half, y + half, x + half, y - half, Ink.line(Tint.Role.INK, 0.1)));
  }

  private void overview(Flow flow) {
    flow.subheading(words.text("placing.overview"));
    double across = tiling.columns() * (tiling.width() - Tiling.OVERLAP) + Tiling.OVERLAP;
    double down = tiling.rows() * (tiling.height() - Tiling.OVERLAP) + Tiling.OVERLAP;
    double width = flow.width();
    double height = Math.min(OVERVIEW, width * down / across);
    flow.figure(
        words.text(
            "placing.overview-alternative",
            Map.of("columns", tiling.columns(), "rows", tiling.rows())),
        height,
        (left, bottom) -> map(left, bottom, width, height, -1, -1, true));
  }

  private Table places() {
    List<Table.Column> columns =
        List.of(
            new Table.Column(words.text("column.number"), false),
            new Table.Column(words.text("column.x"), true),
            new Table.Column(words.text("column.y"), true),
            new Table.Column(words.text("column.turn"), true),
            new Table.Column(words.text("column.pole"), false),
            new Table.Column(words.text("column.kind"), false),
            new Table.Column(words.text("column.grade"), false),
            new Table.Column(words.text("column.label"), false));
    List<List<String>> rows = new ArrayList<>();
    for (SheetMagnet one : plan.magnets()) {
      PlateMagnet magnet = one.magnet();
      String turn =
          magnet.outline() instanceof lodeswing.figure.Outline.Oblong block
              ? words.number(Math.rint(Math.toDegrees(block.turn()) * 100) / 100 + 0.0, 5)
              : "";
      rows.add(
          List.of(
              Integer.toString(magnet.number()),
              PlateDrawing.millimetres(magnet.x(), words),
              PlateDrawing.millimetres(magnet.y(), words),
              turn,
              words.text("pole." + magnet.face().letter()),
              one.kind(),
              one.grade(),
              magnet.label()));
    }
    return withoutEmpty(columns, rows);
  }

  /** The table less the columns in which no row says anything. */
  private static Table withoutEmpty(List<Table.Column> columns, List<List<String>> rows) {
    List<Integer> kept = new ArrayList<>();
    for (int i = 0; i < columns.size(); i++) {
      int column = i;
      if (rows.stream().anyMatch(row -> !row.get(column).isEmpty())) {
        kept.add(i);
      }
    }
    return new Table(
        kept.stream().map(columns::get).toList(),
        rows.stream().map(row -> kept.stream().map(row::get).toList()).toList());
  }
}
