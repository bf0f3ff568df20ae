package lodeswing.core.magnet;

/** Which pole of a magnet faces up (on the plate) or down (on the bob). */
public enum Pole {
  NORTH(1),
  SOUTH(-1);

  private final int sign;

  Pole(int sign) {
    this.sign = sign;
  }

  /** +1 for north, -1 for south: the sign of the moment towards the named side. */
  public int sign() {
    return sign;
  }

  /** The other pole. */
  public Pole opposite() {
    return this == NORTH ? SOUTH : NORTH;
  }
}
