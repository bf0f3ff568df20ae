package lodeswing.analysis.odds;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import lodeswing.analysis.trace.TrialLayouts;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.chance.HandSpread;
import lodeswing.core.chance.NormalSpread;
import lodeswing.core.chance.OddsSpec;
import lodeswing.core.chance.PartTolerances;
import lodeswing.core.integrate.lane.LaneProvider;
import lodeswing.core.landscape.Landscape;
import lodeswing.core.outcome.OutcomeFinders;
import lodeswing.core.rig.BenchLayout;
import lodeswing.core.rig.Release;
import lodeswing.core.statistics.IntervalRule;
import org.junit.jupiter.api.Test;

class PartsTrialTest {

  private static final OutcomeFinders FINDERS = new OutcomeFinders(LaneProvider.choose());

  @Test
  void exactPartsMakeRigsThatAreAlike() {
    BenchLayout rig = TrialLayouts.bench("one-well");
    Landscape exact = Landscape.of(rig);
    OddsSpec spec =
        new OddsSpec(
            new HandSpread(new Release(0.04, 0.02, 0, 0), new NormalSpread(0.003), 0),
            0.1,
            IntervalRule.WILSON,
            1,
            600);
    List<EndCounts> counts =
        new PartsTrial(rig, new PartTolerances(0, 0, 0, 0), 2, 256)
            .run(exact, spec, FINDERS, Double.POSITIVE_INFINITY, part -> {});

    assertEquals(List.of(256, 256), counts.stream().map(EndCounts::total).toList());
    counts.forEach(rigs -> assertEquals(256, rigs.of(0)));
  }
}
