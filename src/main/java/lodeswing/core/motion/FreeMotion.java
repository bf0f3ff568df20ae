package lodeswing.core.motion;

import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Layout;
import lodeswing.core.rig.TextbookLayout;

/** The motion of a rig whose magnets are set aside. */
public final class FreeMotion {

  private FreeMotion() {}

  /** Equations of motion of a layout without the magnets of its plate; the bob keeps its own. */
  public static Motion of(Layout layout) {
    return layout instanceof TextbookLayout textbook
        ? new TextbookMotion(textbook.withoutMagnets())
        : BenchMotion.withoutMagnets(((BenchLayout) layout).withoutMagnets());
  }
}
