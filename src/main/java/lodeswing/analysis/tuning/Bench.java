package lodeswing.analysis.tuning;

import java.util.Optional;
import lodeswing.core.chance.HandSpread;
import lodeswing.core.rig.Layout;

/**
 * What may be changed, in whole steps of a hand, and what comes of it.
 *
 * <p>A setting is an array of steps, one for each figure that may change; all 0 is the rig as it
 * is.
 */
public interface Bench {

  /** The figures that may change, those of the rig first. */
  int figures();

  /** How many of them, the last ones, are of the hand's aim alone and leave the rig as it is. */
  int aims();

  /** Least step of a figure, 0 or below. */
  int least(int figure);

  /** Greatest step of a figure, 0 or above. */
  int most(int figure);

  /** The nearest setting that keeps all bounds, those that several figures share included. */
  int[] within(int[] setting);

  /** The rig of a setting; nothing where nobody could build it, or it may not be. */
  Optional<Layout> layout(int[] setting);

  /** The hand of a setting. */
  HandSpread hand(int[] setting);
}
