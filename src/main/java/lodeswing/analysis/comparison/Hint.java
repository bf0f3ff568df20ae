package lodeswing.analysis.comparison;

import java.util.List;

/**
 * What alone would make the rig follow the recording.
 *
 * @param kind what that is
 * @param changes by how much: two of an origin, none of a release, one of all others
 * @param reversed whether the y axis would have to be reversed, too
 * @param until up to when it explains the recording [s, by the recording's own time]
 */
public record Hint(Kind kind, List<Change> changes, boolean reversed, double until) {

  public Hint {
    changes = List.copyOf(changes);
  }

  /**
   * A change of what is stated.
   *
   * @param value of a period or a scale by which part it would be greater, of axes their further
   *     turn [rad], of an origin how much farther out along an axis [m]
   * @param halfWidth of its 95 % interval
   */
  public record Change(double value, double halfWidth) {}

  /** What may be off. */
  public enum Kind {
    /** The bob was let go otherwise than told; all else may be as it is stated. */
    RELEASE("release"),
    /** Swings take longer or shorter than foretold. */
    PERIOD("period"),
    /** A unit of the recording is longer or shorter than stated. */
    SCALE("scale"),
    /** The recording's origin lies elsewhere on the plate than stated. */
    ORIGIN("origin"),
    /** The axes are turned, or one is reversed. */
    AXES("axes");

    private final String word;

    Kind(String word) {
      this.word = word;
    }

    /** Whether it is of how the recording lies on the plate. */
    public boolean ofFrame() {
      return this == SCALE || this == ORIGIN || this == AXES;
    }

    /** The word for programs. */
    public String word() {
      return word;
    }
  }
}
