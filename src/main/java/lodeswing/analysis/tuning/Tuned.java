package lodeswing.analysis.tuning;

import java.util.List;
import lodeswing.core.chance.EndCounts;
import lodeswing.core.rest.RestPoint;

/**
 * A rig as it is or as it was tuned, counted in full.
 *
 * @param setting steps of each figure
 * @param restPoints the rig's rest points
 * @param counted tries of the seed
 * @param confirmed tries of another one
 */
public record Tuned(
    List<Integer> setting, List<RestPoint> restPoints, EndCounts counted, EndCounts confirmed) {

  public Tuned {
    setting = List.copyOf(setting);
    restPoints = List.copyOf(restPoints);
  }
}
