package lodeswing.sheet;

import java.util.List;
import java.util.Optional;

/**
 * What an outcome sheet is to show; lengths in metres, or in the model's own unit.
 *
 * @param title the layout's title; empty where it has none
 * @param places where the labels belong
 * @param trueScale whether lengths are metres
 * @param hand the hand whose chances stand beside the labels, in words
 * @param cautions short sentences on what can hurt
 */
public record OutcomePlan(
    String title,
    List<Place> places,
    boolean trueScale,
    Optional<String> hand,
    List<String> cautions) {

  /** Copies the lists. */
  public OutcomePlan {
    places = List.copyOf(places);
    cautions = List.copyOf(cautions);
  }

  /**
   * A place with a label.
   *
   * @param number of its magnet
   * @param label its label, or its number in words where it has none
   * @param x of the magnet
   * @param y of the magnet
   * @param reach of the magnet's outline
   * @param chance of the label
   */
  public record Place(
      int number, String label, double x, double y, double reach, Optional<Chance> chance) {}

  /**
   * How likely a label is.
   *
   * @param share 0 to 1
   * @param low of its 95 % interval
   * @param high of its 95 % interval
   */
  public record Chance(double share, double low, double high) {}
}
