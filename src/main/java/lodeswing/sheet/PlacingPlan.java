package lodeswing.sheet;

import java.util.List;
import java.util.Optional;
import lodeswing.figure.Outline;

/**
 * What a placing sheet is to show; lengths in metres.
 *
 * @param title the layout's title; empty where it has none
 * @param plate outline of the plate about the point under the bob
 * @param magnets the magnets in the layout's order
 * @param release where the bob is to be let go
 * @param parts the table of parts
 * @param cautions short sentences on what can hurt
 */
public record PlacingPlan(
    String title,
    Optional<Outline> plate,
    List<SheetMagnet> magnets,
    Optional<Spot> release,
    Table parts,
    List<String> cautions) {

  /** Copies the lists. */
  public PlacingPlan {
    magnets = List.copyOf(magnets);
    cautions = List.copyOf(cautions);
  }

  /** A point of the plate. */
  public record Spot(double x, double y) {}
}
