package lodeswing.sheet;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import lodeswing.figure.AlternativeText;
import lodeswing.figure.Drawing;
import lodeswing.figure.Shape;
import lodeswing.figure.ViewBox;

/**
 * A page to print.
 *
 * @param format its paper
 * @param items what is on it, in the order of reading
 */
public record Page(Paper.Format format, List<PageItem.Block> items) {

  /** Pixels of a drawing to the metre where a page has its true size: 96 to the inch (CSS). */
  public static final double PIXELS = 96 / 0.0254;

  /** Pixels of a drawing to the point, 72 to the inch. */
  public static final double POINT = 96.0 / 72;

  /** Copies the list. */
  public Page {
    items = List.copyOf(items);
  }

  /** The page as a drawing of its true size. */
  public Drawing drawing(AlternativeText alternative) {
    List<Shape> shapes = new ArrayList<>();
    items.forEach(item -> shapes.add(group(item)));
    return new Drawing(
        new ViewBox(0, 0, format.width(), format.height()),
        format.width() * PIXELS,
        shapes,
        List.of(),
        alternative);
  }

  private static Shape group(PageItem.Block block) {
    List<Shape> shapes = new ArrayList<>();
    for (PageItem item : block.items()) {
      if (item instanceof PageItem.Block part) {
        shapes.add(group(part));
      } else if (item instanceof PageItem.Marks marks) {
        shapes.addAll(marks.shapes());
      }
    }
    String role = block.tag().name().toLowerCase(Locale.ROOT).replace('_', '-');
    return new Shape.Group(role, block.alternative(), shapes);
  }
}
