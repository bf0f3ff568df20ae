package lodeswing.web.layout;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.HashSet;
import java.util.List;
import lodeswing.core.magnet.Pole;
import lodeswing.core.rig.BenchLayout;
import org.junit.jupiter.api.Test;

class SampleLayoutsTest {

  private final SampleLayouts samples = SampleLayouts.load();

  private BenchLayout bench(String name) {
    return assertInstanceOf(
        BenchLayout.class, samples.find(name).orElseThrow().document().layout());
  }

  @Test
  void samplesAreElevenDifferentLayoutsWithoutWarnings() {
    var ids = new HashSet<String>();
    for (SampleLayouts.Sample sample : samples.all()) {
      ids.add(sample.document().layoutId());
      assertEquals(List.of(), sample.document().warnings(), sample.name());
      assertTrue(sample.document().title().isPresent(), sample.name());
    }
    assertEquals(11, ids.size());
  }

  @Test
  void polesAttractRepelAndMixAsTheDescriptionsSay() {
    assertEquals(3, attracting(bench("three-stations")));
    assertEquals(0, attracting(bench("closed-doors")));
    assertEquals(5, attracting(bench("turned-centre")));
    assertEquals(6, bench("turned-centre").magnetCount());
    assertEquals(27, attracting(bench("crowded-shelf")));
    assertEquals(0, bench("quiet-plate").magnetCount());
  }

  /** North down over south up attracts. */
  private static long attracting(BenchLayout layout) {
    Pole down = layout.bob().orElseThrow().poleDown();
    return layout.magnets().stream().filter(m -> m.poleUp() != down).count();
  }
}
