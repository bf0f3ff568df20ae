package lodeswing.figure;

import java.util.List;
import java.util.Optional;

/**
 * All that a picture of a plate shows, with one path, two paths side by side, or none.
 *
 * @param title a short name of the picture
 * @param captions lines below it, each a sentence or two
 * @param measure the units of its figures
 * @param plate outline of the plate about the origin; none where it is not known
 * @param magnets the magnets on the plate
 * @param trails no path, for the plate alone, or one or two
 */
public record PathPicture(
    String title,
    List<String> captions,
    Measure measure,
    Optional<Outline> plate,
    List<PlateMagnet> magnets,
    List<Trail> trails) {

  /**
   * Copies the lists and clears the texts of anything that is not text.
   *
   * @throws IllegalArgumentException where there are more than two trails
   */
  public PathPicture {
    title = PlainText.of(title);
    captions = captions.stream().map(PlainText::of).toList();
    magnets = List.copyOf(magnets);
    trails = List.copyOf(trails);
    if (trails.size() > 2) {
      throw new IllegalArgumentException("A picture shows two paths at most.");
    }
  }
}
