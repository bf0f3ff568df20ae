package lodeswing.analysis.basin;

import java.util.List;
import java.util.Optional;
import lodeswing.core.statistics.WadaTest;

/**
 * Whether every piece of the border between outcomes touches all of them, down to a pixel.
 *
 * @param verdict what the test says
 * @param ends the outcomes that took part; very rare ones are set aside
 * @param share share of the border's pixels that have every outcome within {@link WadaTest#RADIUS}
 *     pixels; empty where the test could not be made
 * @param source the publication of the test
 * @param sentence what it says, for a pupil, in plain English
 */
public record WadaFinding(
    WadaTest.Verdict verdict,
    List<Integer> ends,
    Optional<SummaryFigure> share,
    String source,
    String sentence) {

  public WadaFinding {
    ends = List.copyOf(ends);
  }
}
