package lodeswing.web.odds;

import java.util.List;
import java.util.Optional;
import java.util.stream.DoubleStream;
import lodeswing.analysis.odds.PartsTrial;
import lodeswing.core.statistics.Interval;
import lodeswing.core.statistics.VarianceSplit;

/**
 * One label, or one end that has none, among the odds.
 *
 * @param index its first end's number in the legend of a map
 * @param kind a word for programs
 * @param restPointIds the rest points that it stands for
 * @param label its label
 * @param name its label, place or event in words
 * @param releases tries that ended so
 * @param chance their share
 * @param interval its 95 % interval
 * @param byRig tries that ended so on each varied rig
 */
record OddsLine(
    int index,
    String kind,
    List<String> restPointIds,
    Optional<String> label,
    String name,
    int releases,
    double chance,
    Interval interval,
    List<Integer> byRig) {

  OddsLine {
    restPointIds = List.copyOf(restPointIds);
    byRig = List.copyOf(byRig);
  }

  /** Its chance on each varied rig. */
  DoubleStream chances() {
    return byRig.stream().mapToDouble(count -> (double) count / PartsTrial.RELEASES);
  }

  /** Standard deviation of its chance from rig to rig, that of counting taken off. */
  double deviation() {
    int[] counts = byRig.stream().mapToInt(Integer::intValue).toArray();
    return VarianceSplit.deviation(counts, PartsTrial.RELEASES);
  }

  boolean restPoint() {
    return kind.equals("rest-point");
  }
}
