package lodeswing.figure;

import java.util.List;

/**
 * All that a picture of a plate's field shows.
 *
 * @param title a short name of the picture
 * @param captions lines below it, each a sentence or two
 * @param window what is shown of the plan, or of an upright cut with heights upwards
 * @param magnets the plate's magnets as seen from above; none in a cut
 * @param bodies what an upright cut meets; none in the plan
 * @param ground what is drawn of the field
 * @param spots weak spots to mark
 * @param legend further lines of the legend
 * @param alternative the picture in words
 */
public record FieldPicture(
    String title,
    List<String> captions,
    ViewBox window,
    List<PlateMagnet> magnets,
    List<Body> bodies,
    Ground ground,
    List<Spot> spots,
    List<LegendEntry> legend,
    AlternativeText alternative) {

  /** Copies the lists and clears the texts of anything that is not text. */
  public FieldPicture {
    title = PlainText.of(title);
    captions = captions.stream().map(PlainText::of).toList();
    magnets = List.copyOf(magnets);
    bodies = List.copyOf(bodies);
    spots = List.copyOf(spots);
    legend = List.copyOf(legend);
  }

  /** What is drawn of the field. */
  public sealed interface Ground {

    /** Its strength in steps, from weak to strong. */
    record Bands(List<Band> bands) implements Ground {

      /** Copies the list. */
      public Bands {
        bands = List.copyOf(bands);
      }
    }

    /** Lines along it. */
    record Lines(List<Line> lines) implements Ground {

      /** Copies the list. */
      public Lines {
        lines = List.copyOf(lines);
      }
    }

    /**
     * Short strokes along it.
     *
     * @param strokes by thickness, thin ones first
     */
    record Filings(List<List<Points>> strokes) implements Ground {

      /** Copies the lists. */
      public Filings {
        strokes = strokes.stream().map(List::copyOf).toList();
      }
    }
  }

  /**
   * Where the strength is at least a level.
   *
   * @param words the level with its unit; empty for the lowest band, which is the whole window
   * @param borders closed borders of it
   */
  public record Band(String words, List<Points> borders) {

    /** Copies the list. */
    public Band {
      borders = List.copyOf(borders);
    }
  }

  /**
   * A line along the field.
   *
   * @param points in the field's direction
   * @param weights how strong the field is from each point to the next: 0, 1 or 2
   */
  public record Line(Points points, List<Integer> weights) {

    /** Copies the list. */
    public Line {
      weights = List.copyOf(weights);
    }
  }

  /**
   * What an upright cut meets of a magnet.
   *
   * @param from left edge [model units]
   * @param to right edge
   * @param bottom lower edge
   * @param top upper edge
   * @param northUp whether its north pole is up
   * @param label what it stands for; empty where it has no label
   */
  public record Body(
      double from, double to, double bottom, double top, boolean northUp, String label) {

    /** Clears the label of anything that is not text. */
    public Body {
      label = PlainText.of(label);
    }
  }

  /**
   * A weak spot.
   *
   * @param x place [model units]
   * @param y place
   * @param number in the list that goes with the picture
   * @param sign how it is marked
   */
  public record Spot(double x, double y, int number, Sign sign) {}

  /** How weak spots are marked. */
  public enum Sign {
    /** The field in the plane comes from two sides and leaves to two. */
    SADDLE(Mark.CROSS, 11, "weak spot: the field comes in from two sides and leaves to two"),
    /** It runs away, or in, on all sides, off the magnets. */
    NODE(Mark.DISC, 9, "weak spot: the field runs away, or in, on all sides"),
    /** The same over a magnet, as a ring about its pole's sign. */
    POLE(Mark.DISC, 19, "weak in the plane: over this pole the field stands upright"),
    /** It turns round. */
    TURN(Mark.HEXAGON, 12, "weak spot: the field turns round it"),
    /** A line of zeros. */
    LINE(Mark.PLUS, 11, "one place of a line on which the field in the plane vanishes"),
    /** The strength is least, and not 0. */
    LEAST(Mark.DIAMOND, 12, "weak spot: weaker than all round, but not 0");

    private final Mark mark;
    private final double size;
    private final String words;

    Sign(Mark mark, double size, String words) {
      this.mark = mark;
      this.size = size;
      this.words = words;
    }

    Mark mark() {
      return mark;
    }

    double size() {
      return size;
    }

    String words() {
      return words;
    }

    /** A ring is seen round a pole's sign; the others are filled. */
    Style style() {
      Stroke line = Stroke.solid(Tint.Role.PAPER, 1.2);
      return this == POLE
          ? Style.outlined(Stroke.solid(Tint.Role.SEALED, 2))
          : Style.of(Tint.Role.SEALED, line);
    }
  }
}
