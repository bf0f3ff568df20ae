package lodeswing.analysis.fit;

import java.util.Arrays;
import lodeswing.core.recording.RecordingFrame;
import lodeswing.core.regression.FreeParameter;

/**
 * One quantity behind a recording, sought or known.
 *
 * @param role what it is
 * @param value its name, its start or known value in SI (a figure's in its own unit), and its
 *     bounds
 * @param free whether it is sought
 * @param given whether its start is named by who asks, so that no other is tried
 */
public record FitParameter(Role role, FreeParameter value, boolean free, boolean given) {

  /** What a quantity is. */
  public enum Role {
    /** Plan place of the release [m]. */
    X(0),
    /** Plan place of the release [m]. */
    Y(1),
    /** Plan velocity of the release [m/s]. */
    VX(2),
    /** Plan velocity of the release [m/s]. */
    VY(3),
    /** When the bob was let go, after the first recorded place [s]. */
    RELEASE_TIME(4),
    /** {@link RecordingFrame#originX}. */
    ORIGIN_X(5),
    /** {@link RecordingFrame#originY}. */
    ORIGIN_Y(6),
    /** {@link RecordingFrame#turn}. */
    TURN(7),
    /** {@link RecordingFrame#scale}. */
    SCALE(8),
    /** A figure of the rig, in the order of {@link RigFamily}. */
    FIGURE(9);

    private final int place;

    Role(int place) {
      this.place = place;
    }

    /** The role of a place among the quantities; figures fill all places from theirs on. */
    public static Role at(int place) {
      return Arrays.stream(values()).filter(role -> role.place == place).findFirst().orElse(FIGURE);
    }

    /** Its place among the quantities; the first one's of the figures. */
    public int place() {
      return place;
    }
  }
}
