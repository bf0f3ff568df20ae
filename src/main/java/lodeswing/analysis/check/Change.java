package lodeswing.analysis.check;

import java.util.Optional;
import java.util.OptionalDouble;

/** One member of a layout with another value. */
public sealed interface Change permits Change.OfFigure, Change.OfWord {

  /** JSON Pointer of the member in the canonical layout. */
  String pointer();

  /**
   * A figure, in the member's unit.
   *
   * @param from as it is; empty where the layout does not say
   * @param to as it should be
   */
  record OfFigure(String pointer, OptionalDouble from, double to) implements Change {}

  /**
   * A word.
   *
   * @param from as it is; empty where the layout does not say
   * @param to as it should be
   */
  record OfWord(String pointer, Optional<String> from, String to) implements Change {}
}
