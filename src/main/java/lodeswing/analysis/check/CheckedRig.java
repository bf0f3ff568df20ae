package lodeswing.analysis.check;

import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import lodeswing.core.rig.Layout;

/**
 * A rig with all that a check may know of it.
 *
 * @param layout what moves
 * @param labelled for each magnet whether its place stands for something
 * @param masses of the plate's magnets [kg], where they are known
 * @param around what stands about it
 */
public record CheckedRig(
    Layout layout, List<Boolean> labelled, List<OptionalDouble> masses, Surroundings around) {

  public CheckedRig {
    labelled = List.copyOf(labelled);
    masses = List.copyOf(masses);
  }

  /**
   * What stands about a rig.
   *
   * @param stand what holds the pivot
   * @param plate what the magnets lie on
   * @param hook what the pendulum hangs in
   * @param gapError how far the gap may be off [m]
   * @param youngest age of the youngest who uses it [years]
   */
  public record Surroundings(
      Stand stand, Plate plate, Hook hook, OptionalDouble gapError, OptionalDouble youngest) {}

  /**
   * A stand.
   *
   * @param height of the pivot over the plate [m]
   * @param base width of its base [m]
   * @param tilt from upright [rad]
   */
  public record Stand(OptionalDouble height, OptionalDouble base, OptionalDouble tilt) {}

  /**
   * A plate.
   *
   * @param fixed whether its magnets are glued, screwed or let in, where that is said
   * @param friction coefficient at rest
   */
  public record Plate(Optional<Boolean> fixed, OptionalDouble friction) {}

  /**
   * A hook.
   *
   * @param opening its width [m]
   * @param depth of its bottom below its tip [m]
   * @param rated the load that its maker allows [N]
   */
  public record Hook(OptionalDouble opening, OptionalDouble depth, OptionalDouble rated) {}
}
