package lodeswing.analysis.fit;

import java.util.List;
import java.util.Optional;
import lodeswing.core.motion.Motion;

/** The rigs among which a recorded one is sought: one for every value of the unknown figures. */
@FunctionalInterface
public interface RigFamily {

  /**
   * The motion of a rig; empty where it cannot be built.
   *
   * @param figures values of the unknown figures, in their own units and order
   */
  Optional<Motion> motion(List<Double> figures);
}
