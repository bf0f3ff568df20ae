package lodeswing.figure;

/**
 * A magnet as a picture of the plate shows it.
 *
 * @param number its number in the layout, from 1
 * @param x centre [model units]
 * @param y centre
 * @param outline its plan
 * @param face what it turns to the bob
 * @param label what it stands for; empty where it has no label
 */
public record PlateMagnet(
    int number, double x, double y, Outline outline, Face face, String label) {

  /**
   * Clears the label of anything that is not text.
   *
   * @throws IllegalArgumentException where the centre is not finite
   */
  public PlateMagnet {
    if (!Double.isFinite(x) || !Double.isFinite(y)) {
      throw new IllegalArgumentException("A magnet's centre is finite.");
    }
    label = PlainText.of(label);
  }

  /** What a magnet turns to the bob. */
  public enum Face {
    NORTH("N", Mark.DISC, Tint.Role.NORTH, Tint.Role.NORTH_FACE),
    SOUTH("S", Mark.SQUARE, Tint.Role.SOUTH, Tint.Role.SOUTH_FACE),
    ATTRACTS("+", Mark.DISC, Tint.Role.ATTRACTING, Tint.Role.ATTRACTING_FACE),
    REPELS("−", Mark.SQUARE, Tint.Role.REPELLING, Tint.Role.REPELLING_FACE);

    private final String letter;
    private final Mark badge;
    private final Tint.Role strong;
    private final Tint.Role pale;

    Face(String letter, Mark badge, Tint.Role strong, Tint.Role pale) {
      this.letter = letter;
      this.badge = badge;
      this.strong = strong;
      this.pale = pale;
    }

    /** The letter of its pole, or the sign of its strength. */
    public String letter() {
      return letter;
    }

    /** The shape that the letter stands on. */
    public Mark badge() {
      return badge;
    }

    Tint strong() {
      return strong;
    }

    Tint pale() {
      return pale;
    }
  }
}
