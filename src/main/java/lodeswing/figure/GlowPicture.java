package lodeswing.figure;

import java.util.List;
import java.util.Optional;

/**
 * What a picture of a long exposure shows beside the light itself.
 *
 * @param title a short name of the picture
 * @param measure the units of its figures
 * @param paper what of the plane the picture shows
 * @param pixel side of a pixel [model units]
 * @param plate outline of the plate about the origin; none where it is not known
 * @param magnets the magnets on the plate
 * @param start how the bob was let go
 * @param light what was done with the light
 * @param result what came of it
 */
public record GlowPicture(
    String title,
    Measure measure,
    ViewBox paper,
    double pixel,
    Optional<Outline> plate,
    List<PlateMagnet> magnets,
    Trail.Start start,
    Light light,
    Result result) {

  /** Copies the list and clears the title of anything that is not text. */
  public GlowPicture {
    title = PlainText.of(title);
    magnets = List.copyOf(magnets);
  }

  /**
   * What was done with the light.
   *
   * @param spot width of the spot at half its brightness [model units]
   * @param shown time of light that the picture shows
   * @param exposure time of light that was asked for
   * @param lookedAfter time from its end until the paper is looked at
   * @param leftOut why the light after {@code shown} is left out, as a clause to follow "because";
   *     empty where nothing is left out
   */
  public record Light(
      double spot, double shown, double exposure, double lookedAfter, String leftOut) {}

  /**
   * What came of the light.
   *
   * @param brightestX the brightest place [model units]
   * @param brightestY the brightest place
   * @param near share of all the glow that lies within a spot's width of that place
   * @param oldest share of its glow that the place of the release has left
   * @param newest share of its glow that the last place shown has left
   * @param fading tau of the paper's decay 1/(1 + t/tau)^p
   * @param exponent p of that decay
   * @param end where the bob comes to rest, as a sentence; empty where the light shows no end
   */
  public record Result(
      double brightestX,
      double brightestY,
      double near,
      double oldest,
      double newest,
      double fading,
      double exponent,
      String end) {}
}
