package lodeswing.analysis.check;

import java.util.List;

/** Which members a line misses. */
final class Needs {

  private Needs() {}

  /** What must be there for magnets to act. */
  static List<String> magnets(Trial trial) {
    boolean bobless = trial.bench().map(bench -> bench.bob().isEmpty()).orElse(false);
    boolean bare = trial.rig().layout().magnetCount() == 0;
    if (bobless && bare) {
      return List.of("/bobMagnet", "/magnets");
    }
    return List.of(bobless ? "/bobMagnet" : "/magnets");
  }
}
