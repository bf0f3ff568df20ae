package lodeswing.analysis.tuning;

import java.util.List;

/**
 * What a search for a tuning found.
 *
 * @param before the rig as it is
 * @param nearest the rigs that come nearest, the nearest first; the rig as it is may be among them
 * @param tried how many settings were tried
 * @param refused how many settings nobody could build
 */
public record TuningResult(Tuned before, List<Tuned> nearest, int tried, int refused) {

  public TuningResult {
    nearest = List.copyOf(nearest);
  }
}
