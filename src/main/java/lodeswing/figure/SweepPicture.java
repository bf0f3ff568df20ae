package lodeswing.figure;

import java.util.List;

/**
 * All that a picture of a sweep shows.
 *
 * @param title a short name of the picture
 * @param axes one quantity, or two: the first goes to the right, the second upwards
 * @param panels what was measured, a panel each; a map shows the first
 * @param captions lines below it
 * @param alternative the result in words
 */
public record SweepPicture(
    String title,
    List<Axis> axes,
    List<Panel> panels,
    List<String> captions,
    AlternativeText alternative) {

  public SweepPicture {
    title = PlainText.of(title);
    axes = List.copyOf(axes);
    panels = List.copyOf(panels);
    captions = captions.stream().map(PlainText::of).toList();
  }

  /**
   * A quantity.
   *
   * @param words its name with its unit
   * @param values its values in order, as texts
   * @param places its values as numbers; empty where they are words
   */
  public record Axis(String words, List<String> values, List<Double> places) {

    public Axis {
      words = PlainText.of(words);
      values = values.stream().map(PlainText::of).toList();
      places = List.copyOf(places);
    }
  }

  /** What was measured, a point after the other, the second quantity first through its values. */
  public sealed interface Panel {

    /** What it is, with its unit. */
    String words();

    /**
     * Numbers.
     *
     * @param words what they are, with their unit
     * @param values the figures; NaN where there is none
     * @param low lower ends of their intervals; NaN where there are none
     * @param high upper ends
     */
    record Numbers(String words, List<Double> values, List<Double> low, List<Double> high)
        implements Panel {

      public Numbers {
        words = PlainText.of(words);
        values = List.copyOf(values);
        low = List.copyOf(low);
        high = List.copyOf(high);
      }
    }

    /**
     * Words of a few kinds.
     *
     * @param words what they are
     * @param kinds the kinds in the order of the legend
     * @param which the kind at each point by its number; -1 where there is none
     */
    record Words(String words, List<Kind> kinds, List<Integer> which) implements Panel {

      public Words {
        words = PlainText.of(words);
        kinds = List.copyOf(kinds);
        which = List.copyOf(which);
      }
    }
  }

  /**
   * A kind of word.
   *
   * @param name the word
   * @param ground its colour
   * @param ink what is legible on that
   * @param mark its mark, for those who do not see the colour
   */
  public record Kind(String name, Tint ground, Tint ink, Mark mark) {

    public Kind {
      name = PlainText.of(name);
    }
  }
}
