package lodeswing.core.field;

import java.util.Optional;
import lodeswing.core.motion.BenchMotion;
import lodeswing.core.motion.Motion;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;

/** Where the bob magnet's centre passes: the bowl that its suspension lets it move on. */
public final class BobPath implements Surface {

  private final BenchLayout layout;
  private final Motion motion;

  /** The bowl of a rig. */
  public BobPath(BenchLayout layout) {
    this(layout, BenchMotion.withoutMagnets(layout));
  }

  /** The bowl of a rig whose motion is there already, with its magnets or without. */
  public BobPath(BenchLayout layout, Motion motion) {
    this.layout = layout;
    this.motion = motion;
  }

  @Override
  public double height(double x, double y) {
    Optional<double[]> state = motion.toState(new Release(x, y, 0, 0));
    return state.isPresent() ? layout.bobHeight(state.get()[0], state.get()[1]) : Double.NaN;
  }
}
