package lodeswing.core.outcome;

/** Tells releases by their number, so that a great many need not be held at once. */
@FunctionalInterface
public interface ReleaseSource {

  /**
   * Writes plan x, y, vx, vy of some releases side by side.
   *
   * @param from first release
   * @param to one past the last release
   * @param out receives four entries a release, the first release's from index 0
   */
  void write(int from, int to, double[] out);
}
