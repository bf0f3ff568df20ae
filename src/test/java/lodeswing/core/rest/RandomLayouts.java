package lodeswing.core.rest;

import java.util.ArrayList;
import java.util.List;
import java.util.SplittableRandom;
import lodeswing.core.rig.TextbookLayout;
import lodeswing.core.rig.TextbookLayout.Attractor;

/** Random textbook layouts of three to nine magnets of mixed sign. */
final class RandomLayouts {

  private RandomLayouts() {}

  static TextbookLayout layout(long seed) {
    SplittableRandom random = new SplittableRandom(seed);
    int count = 3 + random.nextInt(7);
    double shareAttracting = random.nextDouble();
    List<Attractor> magnets = new ArrayList<>();
    for (int i = 0; i < count; i++) {
      double strength = 0.3 + random.nextDouble();
      double sign = random.nextDouble() < shareAttracting ? 1 : -1;
      magnets.add(
          new Attractor(
              2.4 * random.nextDouble() - 1.2, 2.4 * random.nextDouble() - 1.2, sign * strength));
    }
    return new TextbookLayout(
        0.4 + random.nextDouble(),
        0.1 + 0.2 * random.nextDouble(),
        0.2 + 0.3 * random.nextDouble(),
        magnets);
  }
}
