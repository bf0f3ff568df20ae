package lodeswing.figure;

import java.util.Locale;

/**
 * Filling of an area, so that areas can be told apart without colour: each pixel is inked or not.
 *
 * <p>A pattern repeats every {@link #PERIOD} pixels, counted from one corner of the whole map, so
 * that it runs on across the seams of pictures cut from it.
 */
public enum Pattern {
  PLAIN("no pattern"),
  RISING("rising lines"),
  DOTTED("dots"),
  LEVEL("level lines"),
  FALLING("falling lines"),
  UPRIGHT("upright lines"),
  GRID("a grid"),
  CROSSED("crossed slanting lines"),
  BRICKS("bricks"),
  BANDED("broad rising bands"),
  ZIGZAG("zigzag lines"),
  DASHED("dashes");

  /** Pixels after which every pattern repeats, across and down. */
  public static final int PERIOD = 16;

  private final String description;

  Pattern(String description) {
    this.description = description;
  }

  /** The word in answers. */
  public String word() {
    return name().toLowerCase(Locale.ROOT);
  }

  /** What it looks like, to follow the word "with". */
  public String description() {
    return description;
  }

  /**
   * Whether a pixel is inked.
   *
   * @param x pixels from the left edge of the whole map, of any sign
   * @param y pixels from its upper edge
   */
  public boolean inked(int x, int y) {
    return switch (this) {
      case PLAIN -> false;
      case RISING -> (x + y & 7) < 2;
      case DOTTED -> ((x & 7) < 3 && (y & 7) < 3) || ((x + 4 & 7) < 3 && (y + 4 & 7) < 3);
      case LEVEL -> (y & 7) < 2;
      case FALLING -> (x - y & 7) < 2;
      case UPRIGHT -> (x & 7) < 2;
      case GRID -> (x & 7) == 0 || (y & 7) == 0;
      case CROSSED -> (x + y & 7) == 0 || (x - y & 7) == 0;
      case BRICKS -> (y & 7) == 0 || (x + (y & 8) & 15) == 0;
      case BANDED -> (x + y & 15) < 5;
      case ZIGZAG -> (y + Math.abs((x & 7) - 4) & 7) < 2;
      case DASHED -> (y & 3) == 0 && (x + (y & 4) & 7) < 4;
    };
  }
}
