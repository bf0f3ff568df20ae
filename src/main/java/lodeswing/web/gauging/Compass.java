package lodeswing.web.gauging;

import lodeswing.core.magnet.Pole;

/**
 * Which end of a compass needle a face attracts.
 *
 * <p>The end that points north is a north pole, and unlike poles attract (J. D. Jackson, Classical
 * Electrodynamics, 3rd ed. (1999), section 5.1, for the needle as a dipole that turns along B).
 */
enum Compass {
  NORTH_END("north-end-attracted", Pole.SOUTH),
  SOUTH_END("south-end-attracted", Pole.NORTH);

  private final String word;
  private final Pole face;

  Compass(String word, Pole face) {
    this.word = word;
    this.face = face;
  }

  String word() {
    return word;
  }

  /** The pole of the face that attracts it. */
  Pole face() {
    return face;
  }

  String faceWord() {
    return face == Pole.NORTH ? "north" : "south";
  }

  String sentence() {
    String end = this == NORTH_END ? "north" : "south";
    return "The face that attracts the "
        + end
        + "-pointing end of the needle is the magnet's "
        + faceWord()
        + " pole.";
  }
}
