package lodeswing.analysis.fit;

import java.util.List;
import lodeswing.core.geometry.Vec3;
import lodeswing.core.recording.Recording;

/**
 * What is sought behind a recording.
 *
 * @param recording what was recorded
 * @param parameters every quantity, in the order of {@link FitParameter.Role}, figures last
 * @param mirroring whether the recording's y axis is reversed
 * @param family the rigs
 * @param naturalRate small-swing rate of the rig as it is thought to be [rad/s]
 * @param spacing distance between whose parts a bob's fate is decided: of the nearest magnets, or
 *     the size of the swing [m]
 * @param anchors where it may have swung about beside the plate's middle: near its magnets
 * @param mostPaths how many paths may be computed
 */
public record FitSpec(
    Recording recording,
    List<FitParameter> parameters,
    Mirroring mirroring,
    RigFamily family,
    double naturalRate,
    double spacing,
    List<Vec3> anchors,
    int mostPaths) {

  /** Whether a recording's y axis is reversed. */
  public enum Mirroring {
    /** It is not. */
    NONE,
    /** It is. */
    MIRRORED,
    /** Both are tried. */
    UNKNOWN
  }

  public FitSpec {
    parameters = List.copyOf(parameters);
    anchors = List.copyOf(anchors);
    for (int i = 0; i < parameters.size(); i++) {
      if (parameters.get(i).role() != FitParameter.Role.at(i)) {
        throw new IllegalArgumentException("parameter " + i + " is out of order");
      }
    }
  }

  /** Time of a small swing [s]. */
  double period() {
    return 2 * Math.PI / naturalRate;
  }

  /** How many quantities are sought. */
  public int freeCount() {
    return (int) parameters.stream().filter(FitParameter::free).count();
  }
}
