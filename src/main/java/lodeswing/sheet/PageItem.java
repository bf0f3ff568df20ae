package lodeswing.sheet;

import java.util.List;
import lodeswing.figure.Shape;

/** A part of a page, in the order in which it is read and drawn. */
public sealed interface PageItem {

  /**
   * Parts that are one thing together.
   *
   * @param tag what it is
   * @param alternative the text that stands for a figure; empty for all else
   * @param items its parts
   */
  record Block(Tag tag, String alternative, List<PageItem> items) implements PageItem {

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException where a figure has no text that stands for it
     */
    public Block {
      if ((tag == Tag.FIGURE) == alternative.isEmpty()) {
        throw new IllegalArgumentException("A figure, and nothing else, has an alternative text.");
      }
      items = List.copyOf(items);
    }
  }

  /**
   * What is drawn.
   *
   * @param shapes in metres from the page's lower left corner, y upwards
   */
  record Marks(List<Shape> shapes) implements PageItem {

    /** Copies the list. */
    public Marks {
      shapes = List.copyOf(shapes);
    }
  }

  /** A part with shapes alone. */
  static Block of(Tag tag, List<Shape> shapes) {
    return new Block(tag, "", List.of(new Marks(shapes)));
  }

  /** A figure with shapes alone. */
  static Block figure(String alternative, List<Shape> shapes) {
    return new Block(Tag.FIGURE, alternative, List.of(new Marks(shapes)));
  }
}
