package lodeswing.sheet;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.BiFunction;
import java.util.function.Consumer;
import lodeswing.figure.Anchor;
import lodeswing.figure.Shape;
import lodeswing.figure.Tint;

/**
 * Headings, paragraphs, lists, tables and figures one below the other, on as many pages as they
 * take. A table that goes on has its head again; a heading stays with what follows it.
 */
public final class Flow {

  private static final double HEADING = 16;
  private static final double SUBHEADING = 12;
  private static final double BODY = 10;
  private static final double SMALL = 9;
  private static final double GAP = 2.2 * Ink.MM;
  private static final double CELL_GAP = 1.4 * Ink.MM;
  private static final double ROW_GAP = 0.7 * Ink.MM;
  private static final double INDENT = 4 * Ink.MM;
  private static final double WRITING = 8 * Ink.MM;

  /** Room that a heading wants below it, for some lines of what it is the heading of. */
  private static final double COMPANY = 22 * Ink.MM;

  /** Lines of a paragraph, or rows of a table, that stay together at a page's end and head. */
  private static final int COMPANIONS = 2;

  private final double left;
  private final double width;
  private final double top;
  private final double bottom;
  private final Locale locale;
  private final List<List<PageItem.Block>> pages = new ArrayList<>();
  private double place;

  /**
   * Empty pages.
   *
   * @param format the paper
   * @param margin at every side [m]
   * @param foot kept free over the lower margin [m]
   * @param locale whose rules break lines
   */
  public Flow(Paper.Format format, double margin, double foot, Locale locale) {
    this.left = margin;
    this.width = format.width() - 2 * margin;
    this.top = format.height() - margin;
    this.bottom = margin + foot;
    this.locale = locale;
    turn();
  }

  /** Empty pages like those of another. */
  private Flow(Flow other) {
    this.left = other.left;
    this.width = other.width;
    this.top = other.top;
    this.bottom = other.bottom;
    this.locale = other.locale;
    turn();
  }

  /** Width for text [m]. */
  public double width() {
    return width;
  }

  /** The parts of each page. */
  public List<List<PageItem.Block>> pages() {
    return pages.stream().map(List::copyOf).toList();
  }

  private void turn() {
    pages.add(new ArrayList<>());
    place = top;
  }

  private boolean fresh() {
    return place == top;
  }

  /** Makes room; on the next page where this one has too little. */
  private void need(double height) {
    if (place - height < bottom && !fresh()) {
      turn();
    }
  }

  /** Parts that stay on one page where a page can hold them. */
  public Flow together(Consumer<Flow> parts) {
    Flow trial = new Flow(this);
    parts.accept(trial);
    if (trial.pages.size() == 1) {
      // What ends with a gap may begin with one instead.
      need(trial.top - trial.place);
    }
    parts.accept(this);
    return this;
  }

  private void add(PageItem.Block block) {
    pages.get(pages.size() - 1).add(block);
  }

  /** The title. */
  public Flow heading(String text) {
    return heading(text, Tag.HEADING, HEADING);
  }

  /** The heading of a part. */
  public Flow subheading(String text) {
    gap(fresh() ? 0 : GAP);
    return heading(text, Tag.SUBHEADING, SUBHEADING);
  }

  private Flow heading(String text, Tag tag, double size) {
    List<String> lines = Ink.lines(text, width, size, locale);
    double height = Ink.height(lines.size(), size);
    need(height + COMPANY);
    add(PageItem.of(tag, Ink.block(lines, left, place, width, size, Tint.Role.INK)));
    place -= height;
    return gap(GAP / 2);
  }

  /** Free space, none at the head of a page. */
  public Flow gap(double height) {
    place -= fresh() ? 0 : height;
    return this;
  }

  /** A paragraph. */
  public Flow paragraph(String text) {
    return paragraph(text, BODY, Tint.Role.INK);
  }

  /** A paragraph in small letters, for a remark. */
  public Flow remark(String text) {
    return paragraph(text, SMALL, Tint.Role.SOFT_INK);
  }

  private Flow paragraph(String text, double size, Tint tint) {
    List<String> rest = Ink.lines(text, width, size, locale);
    while (!rest.isEmpty()) {
      int count = rest.size();
      // Fewer than four lines cannot be parted without leaving one alone.
      need(Ink.height(count < 2 * COMPANIONS ? count : COMPANIONS, size));
      int fit = Math.max(1, (int) ((place - bottom) / Ink.height(1, size) + 1e-9));
      int first = fit >= count ? count : Math.max(1, Math.min(fit, count - COMPANIONS));
      List<String> now = rest.subList(0, first);
      add(PageItem.of(Tag.PARAGRAPH, Ink.block(now, left, place, width, size, tint)));
      place -= Ink.height(now.size(), size);
      rest = rest.subList(now.size(), rest.size());
    }
    return gap(GAP);
  }

  /** A list, each thing behind a dot. */
  public Flow list(List<String> things) {
    List<PageItem> items = new ArrayList<>();
    for (String thing : things) {
      List<String> lines = Ink.lines(thing, width - INDENT, BODY, locale);
      double height = Ink.height(lines.size(), BODY);
      if (place - height < bottom && !fresh()) {
        listed(items);
        items.clear();
        turn();
      }
      Shape dot = Ink.block(List.of("•"), left + INDENT / 4, place, 0, BODY, Tint.Role.INK).get(0);
      List<Shape> text =
          Ink.block(lines, left + INDENT, place, width - INDENT, BODY, Tint.Role.INK);
      items.add(
          new PageItem.Block(
              Tag.LIST_ITEM,
              "",
              List.of(PageItem.of(Tag.ORNAMENT, List.of(dot)), PageItem.of(Tag.LIST_BODY, text))));
      place -= height + ROW_GAP;
    }
    listed(items);
    return gap(GAP - ROW_GAP);
  }

  private void listed(List<PageItem> items) {
    if (!items.isEmpty()) {
      add(new PageItem.Block(Tag.LIST, "", items));
    }
  }

  /**
   * A figure at the left edge.
   *
   * @param alternative the text that stands for it
   * @param height [m]
   * @param shapes its shapes, by the place of its lower left corner
   */
  public Flow figure(
      String alternative, double height, BiFunction<Double, Double, List<Shape>> shapes) {
    need(height);
    add(PageItem.figure(alternative, shapes.apply(left, place - height)));
    place -= height;
    return gap(GAP);
  }

  /** A table. */
  public Flow table(Table table) {
    double[] widths = widths(table);
    List<PageItem> rows = new ArrayList<>();
    List<String> heads = table.columns().stream().map(Table.Column::head).toList();
    double head = rowHeight(heads, widths);
    double[] heights = table.rows().stream().mapToDouble(row -> rowHeight(row, widths)).toArray();
    need(head + Arrays.stream(heights).limit(COMPANIONS).sum());
    rows.add(row(heads, widths, table, true));
    for (int i = 0; i < heights.length; i++) {
      List<String> row = table.rows().get(i);
      // The last row does not go on alone.
      double height = heights[i] + (i == heights.length - COMPANIONS ? heights[i + 1] : 0);
      if (place - height < bottom && !fresh() && !rows.isEmpty()) {
        add(new PageItem.Block(Tag.TABLE, "", rows));
        rows.clear();
        turn();
        rows.add(row(heads, widths, table, true));
      }
      rows.add(row(row, widths, table, false));
    }
    add(new PageItem.Block(Tag.TABLE, "", rows));
    return gap(2 * GAP);
  }

  /**
   * A table to be filled in by hand: as wide as the page, ruled all round.
   *
   * @param least height of a row at least [m]
   */
  public Flow form(Table table, double least) {
    double[] widths = spread(widths(table));
    List<PageItem> rows = new ArrayList<>();
    List<String> heads = table.columns().stream().map(Table.Column::head).toList();
    double all = rowHeight(heads, widths);
    for (List<String> row : table.rows()) {
      all += Math.max(least, rowHeight(row, widths));
    }
    // Together where a page can hold it.
    need(all <= top - bottom ? all : rowHeight(heads, widths) + least);
    rows.add(fields(heads, widths, table, true, 0));
    for (List<String> row : table.rows()) {
      if (place - Math.max(least, rowHeight(row, widths)) < bottom && !fresh()) {
        add(new PageItem.Block(Tag.TABLE, "", rows));
        rows.clear();
        turn();
        rows.add(fields(heads, widths, table, true, 0));
      }
      rows.add(fields(row, widths, table, false, least));
    }
    add(new PageItem.Block(Tag.TABLE, "", rows));
    return gap(2 * GAP);
  }

  /** A question with lines to write on, which stay with it. */
  public Flow question(String text, int count) {
    int asked = Ink.lines(text, width, BODY, locale).size();
    need(Ink.height(asked, BODY) + GAP + count * WRITING);
    paragraph(text);
    List<Shape> lines = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      place -= WRITING;
      lines.add(Ink.segment(left, place, left + width, place, Ink.line(Tint.Role.PLATE_EDGE, 0.2)));
    }
    add(PageItem.of(Tag.ORNAMENT, lines));
    return gap(GAP);
  }

  /** Columns that share what is left of the page's width. */
  private double[] spread(double[] widths) {
    double more = (width - Arrays.stream(widths).sum()) / widths.length;
    return Arrays.stream(widths).map(one -> one + Math.max(0, more)).toArray();
  }

  private PageItem.Block fields(
      List<String> texts, double[] widths, Table table, boolean head, double least) {
    double height = Math.max(least, rowHeight(texts, widths));
    double above = place;
    place -= (height - rowHeight(texts, widths)) / 2;
    PageItem.Block row = row(texts, widths, table, head);
    place = above - height;
    List<PageItem> items = new ArrayList<>();
    for (PageItem item : row.items()) {
      if (!(item instanceof PageItem.Block block && block.tag() == Tag.ORNAMENT)) {
        items.add(item);
      }
    }
    List<Shape> rules = new ArrayList<>();
    var line = Ink.line(Tint.Role.INK, head ? 0.3 : 0.15);
    double x = left;
    rules.add(Ink.segment(x, above, x, place, line));
    for (double one : widths) {
      x += one;
      rules.add(Ink.segment(x, above, x, place, line));
    }
    rules.add(Ink.segment(left, place, x, place, line));
    if (head) {
      rules.add(Ink.segment(left, above, x, above, line));
    }
    items.add(PageItem.of(Tag.ORNAMENT, rules));
    return new PageItem.Block(Tag.ROW, "", items);
  }

  /** Each column as wide as its texts want; where that is too much, the widest give way. */
  private double[] widths(Table table) {
    int count = table.columns().size();
    double[] widths = new double[count];
    for (int i = 0; i < count; i++) {
      widths[i] = Ink.width(table.columns().get(i).head(), SMALL);
      for (List<String> row : table.rows()) {
        widths[i] = Math.max(widths[i], Ink.width(row.get(i), SMALL));
      }
      // A hair more, so that no text is broken by rounding.
      widths[i] += 2 * CELL_GAP + 0.05 * Ink.MM;
    }
    double most = most(widths, width);
    for (int i = 0; i < count; i++) {
      widths[i] = Math.min(widths[i], most);
    }
    return widths;
  }

  /** The width that no column may pass for all to fit. */
  private static double most(double[] widths, double available) {
    if (Arrays.stream(widths).sum() <= available) {
      return available;
    }
    double[] sorted = Arrays.stream(widths).sorted().toArray();
    double left = available;
    for (int i = 0; i < sorted.length; i++) {
      double share = left / (sorted.length - i);
      if (sorted[i] > share) {
        return share;
      }
      left -= sorted[i];
    }
    return available;
  }

  private List<String> cell(String text, double width) {
    return Ink.lines(text, width - 2 * CELL_GAP, SMALL, locale);
  }

  private double rowHeight(List<String> texts, double[] widths) {
    int most = 1;
    for (int i = 0; i < widths.length; i++) {
      most = Math.max(most, cell(texts.get(i), widths[i]).size());
    }
    return Ink.height(most, SMALL) + 2 * ROW_GAP;
  }

  private PageItem.Block row(List<String> texts, double[] widths, Table table, boolean head) {
    double height = rowHeight(texts, widths);
    List<PageItem> cells = new ArrayList<>();
    double x = left;
    for (int i = 0; i < widths.length; i++) {
      double inner = widths[i] - 2 * CELL_GAP;
      List<String> lines = cell(texts.get(i), widths[i]);
      Tag tag = head ? Tag.COLUMN_HEAD : i == 0 ? Tag.ROW_HEAD : Tag.CELL;
      double from = x + CELL_GAP;
      cells.add(PageItem.of(tag, letters(lines, from, inner, table.columns().get(i).figures())));
      x += widths[i];
    }
    double line = place - height;
    Shape rule =
        Ink.segment(
            left,
            line,
            x,
            line,
            Ink.line(head ? Tint.Role.INK : Tint.Role.PLATE_EDGE, head ? 0.3 : 0.12));
    cells.add(PageItem.of(Tag.ORNAMENT, List.of(rule)));
    place -= height;
    return new PageItem.Block(Tag.ROW, "", cells);
  }

  private List<Shape> letters(List<String> lines, double from, double inner, boolean figures) {
    double first = place - ROW_GAP;
    if (!figures) {
      return Ink.block(lines, from, first, inner, SMALL, Tint.Role.INK);
    }
    List<Shape> shapes = new ArrayList<>();
    double baseline = first - SMALL * Ink.POINT * (Ink.LEADING + Ink.CAPITALS) / 2;
    for (String text : lines) {
      shapes.add(Ink.text(text, from + inner, baseline, SMALL, Anchor.END, Tint.Role.INK));
      baseline -= SMALL * Ink.POINT * Ink.LEADING;
    }
    return shapes;
  }
}
