package lodeswing.figure;

/** Which part of a line of text lies at its place. */
public enum Anchor {
  START,
  MIDDLE,
  END
}
