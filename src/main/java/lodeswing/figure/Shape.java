package lodeswing.figure;

import java.util.List;

/**
 * One thing to draw. Places and sizes are in model units with y upwards; line widths, text sizes
 * and symbol sizes are in pixels at the drawing's nominal width.
 */
public sealed interface Shape {

  /**
   * Shapes that belong together.
   *
   * @param role what the group is, a short word for scripts and style sheets
   * @param title what it shows, for readers; may be empty
   * @param shapes its parts, first drawn first
   */
  record Group(String role, String title, List<Shape> shapes) implements Shape {

    /** Copies the list and clears the title of anything that is not text. */
    public Group {
      title = PlainText.of(title);
      shapes = List.copyOf(shapes);
    }
  }

  /**
   * What of some shapes lies within a box; nothing of them beyond it is seen.
   *
   * @param box the part of the plane that shows them
   * @param shapes what is drawn, first drawn first
   */
  record Clipped(ViewBox box, List<Shape> shapes) implements Shape {

    /** Copies the list. */
    public Clipped {
      shapes = List.copyOf(shapes);
    }
  }

  /**
   * An open line through points.
   *
   * @param points the points, two or more
   * @param stroke how it is drawn
   * @param dashOffset how far into the dash pattern it begins [px]
   */
  record Polyline(Points points, Stroke stroke, double dashOffset) implements Shape {}

  /**
   * An open line of cubic Bezier curves, each beginning where the last one ended.
   *
   * @param controls the first place, then for each curve its two controls and its end
   * @param stroke how it is drawn
   * @param dashOffset how far into the dash pattern it begins [px]
   */
  record Curve(Points controls, Stroke stroke, double dashOffset) implements Shape {

    /**
     * @throws IllegalArgumentException where the controls are not three a curve and one more
     */
    public Curve {
      if (controls.count() % 3 != 1) {
        throw new IllegalArgumentException("A curve has three controls a piece and its start.");
      }
    }
  }

  /** A circle of a given radius [model units]. */
  record Circle(double x, double y, double radius, Style style) implements Shape {}

  /** The part of the plane between two circles about one centre [model units]. */
  record Ring(double x, double y, double inner, double outer, Style style) implements Shape {}

  /**
   * A rectangle about its centre.
   *
   * @param x centre
   * @param y centre
   * @param width extent along its own first axis
   * @param height extent along its own second axis
   * @param turn angle of the first axis from the x axis, anticlockwise [rad]
   * @param style fill and outline
   */
  record Rectangle(double x, double y, double width, double height, double turn, Style style)
      implements Shape {}

  /**
   * The area within a closed border.
   *
   * @param border its corners in order, three or more
   * @param style fill and outline
   */
  record Polygon(Points border, Style style) implements Shape {}

  /**
   * The area within closed borders, less what a second one encloses again, and so on by turns.
   *
   * @param borders corners of each in order, three or more
   * @param style fill and outline
   */
  record Region(List<Points> borders, Style style) implements Shape {

    /** Copies the list. */
    public Region {
      borders = List.copyOf(borders);
    }
  }

  /**
   * A great many short open lines that look alike.
   *
   * @param pieces points of each, two or more
   * @param stroke how they are drawn
   */
  record Strokes(List<Points> pieces, Stroke stroke) implements Shape {

    /** Copies the list. */
    public Strokes {
      pieces = List.copyOf(pieces);
    }
  }

  /**
   * A symbol of fixed size.
   *
   * @param mark its outline
   * @param x centre
   * @param y centre
   * @param size diameter of the circle that holds it [px]
   * @param turn angle by which it is turned anticlockwise [rad]
   * @param style fill and outline
   */
  record Symbol(Mark mark, double x, double y, double size, double turn, Style style)
      implements Shape {}

  /**
   * A line of text.
   *
   * @param text the text; control and direction characters are taken out
   * @param x place of the anchor
   * @param y place of the baseline
   * @param size font size [px]
   * @param anchor which part lies at x
   * @param tint colour
   * @param halo whether an edge of paper sets it off from what lies below
   */
  record Text(String text, double x, double y, double size, Anchor anchor, Tint tint, boolean halo)
      implements Shape {

    /** Clears the text of anything that is not text. */
    public Text {
      text = PlainText.of(text);
    }
  }

  /**
   * The inked pixels of a pattern in a rectangle.
   *
   * @param pattern which pattern
   * @param x left edge
   * @param y upper edge
   * @param columns its width [px]
   * @param rows its height [px]
   * @param tint colour of the ink
   */
  record Inked(Pattern pattern, double x, double y, int columns, int rows, Tint tint)
      implements Shape {}
}
