package lodeswing.figure;

/** What a colour stands for; the palette of a renderer says which colour that is. */
public sealed interface Tint {

  /** Fixed parts of a picture. */
  enum Role implements Tint {
    /** The sheet that everything lies on. */
    PAPER,
    /** Surface of the plate. */
    PLATE,
    /** Outline of the plate and guide lines. */
    PLATE_EDGE,
    /** Text and main marks. */
    INK,
    /** Lesser text. */
    SOFT_INK,
    /** A magnet with its north pole up. */
    NORTH,
    /** A magnet with its south pole up. */
    SOUTH,
    /** A point that attracts. */
    ATTRACTING,
    /** A point that repels. */
    REPELLING,
    /** Face of a magnet with its north pole up. */
    NORTH_FACE,
    /** Face of a magnet with its south pole up. */
    SOUTH_FACE,
    /** Surroundings of an attracting point. */
    ATTRACTING_FACE,
    /** Surroundings of a repelling point. */
    REPELLING_FACE,
    /** The mark at the sealing point. */
    SEALED,
    /** The mark of an event such as a touch. */
    EVENT,
    /** Paper that glows in the dark, where it is dark. */
    GLOW_PAPER,
    /** Thin lines over it. */
    GLOW_GUIDE,
    /** Text on it. */
    GLOW_LETTERS
  }

  /**
   * A place on a path, by its age.
   *
   * @param trail 0 for the first path of a picture, 1 for the second
   * @param progress 0 at the start of the path (palest), 1 at its end (strongest)
   * @param trusted false where the computed path is not trusted: paler
   */
  record Age(int trail, double progress, boolean trusted) implements Tint {

    /**
     * @throws IllegalArgumentException where progress lies outside 0 to 1 or trail is negative
     */
    public Age {
      if (!(progress >= 0 && progress <= 1) || trail < 0) {
        throw new IllegalArgumentException("An age lies between 0 and 1, a trail from 0 up.");
      }
    }
  }

  /**
   * One of many things told apart by colour, such as outcomes.
   *
   * @param index from 0 up
   */
  record Entry(int index) implements Tint {

    /**
     * @throws IllegalArgumentException where the index is negative
     */
    public Entry {
      if (index < 0) {
        throw new IllegalArgumentException("An entry's index is 0 or more.");
      }
    }
  }

  /**
   * One of many things, by how late it was decided.
   *
   * @param index from 0 up, as in {@link Entry}
   * @param depth 0 decided at once (lightest) to 1 never (darkest)
   * @param ink whether the ink of a pattern on it is meant
   */
  record Shade(int index, double depth, boolean ink) implements Tint {

    /**
     * @throws IllegalArgumentException where the index is negative or the depth outside 0 to 1
     */
    public Shade {
      if (index < 0 || !(depth >= 0 && depth <= 1)) {
        throw new IllegalArgumentException("A shade has an index from 0 and a depth in 0 to 1.");
      }
    }
  }

  /**
   * How much of something there is.
   *
   * @param ramp which scale of colours, from 0 up
   * @param value 0 for the least (lightest) to 1 for the most (darkest)
   */
  record Level(int ramp, double value) implements Tint {

    /**
     * @throws IllegalArgumentException where the ramp is negative or the value outside 0 to 1
     */
    public Level {
      if (ramp < 0 || !(value >= 0 && value <= 1)) {
        throw new IllegalArgumentException("A level has a ramp from 0 and a value in 0 to 1.");
      }
    }
  }

  /**
   * Something without a colour of its own, in grey.
   *
   * @param place which of the greys, from 0 up
   * @param ink whether the ink of a pattern on it is meant
   */
  record Neutral(int place, boolean ink) implements Tint {}
}
