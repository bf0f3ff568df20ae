package lodeswing.analysis.basin;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import lodeswing.core.outcome.Ends;
import lodeswing.core.statistics.BasinEntropy;
import lodeswing.core.statistics.BoxCount;
import lodeswing.core.statistics.Estimate;
import lodeswing.core.statistics.Interval;
import lodeswing.core.statistics.LabelGrid;
import lodeswing.core.statistics.Proportion;
import lodeswing.core.statistics.ScalingLaw;
import lodeswing.core.statistics.UncertainPairs;
import lodeswing.core.statistics.WadaTest;

/**
 * What a square map of outcomes amounts to: shares, and how tangled the border between them is.
 *
 * <p>Shares are of all releases of the map, special ends included. Their intervals are those of
 * Clopper and Pearson at 95 %, for the part of the window's area, as if each pixel were drawn at
 * random by itself. Pixels stand on a grid, one in each cell, and such a draw is at least as exact
 * as a random one (W. G. Cochran, Sampling Techniques, 3rd ed. 1977, section 5.6, from memory), so
 * the intervals are rather too wide than too narrow; only a pattern that repeats with the pixels
 * themselves could deceive them. They say nothing of how exactly a hand places the bob.
 *
 * <p>For the other figures a release that cannot begin is no release and an unsettled one is not
 * known: both count as gaps. Contact, slack, an angle's limit and being held by friction are
 * outcomes like rest points. A figure that the map is too coarse for, or that a map without a
 * border does not have, is absent. Their intervals hold the scatter between the parts of the map
 * and about the law fitted, as if the map were a sample of a wider plane; they are thus wider than
 * the doubt about this very map. Scales are those of the pixels: a narrower window has figures of
 * its own.
 *
 * @param shares every end that occurs, by its code
 * @param boxDimension box-counting dimension of the border, 1 to 2
 * @param uncertaintyExponent alpha, 0 to 1; the border's dimension is 2 - alpha
 * @param basinEntropy 0 to ln(number of outcomes)
 * @param boundaryBasinEntropy the same over squares on the border; above ln 2 it proves a fractal
 * @param wada the test for the Wada property
 * @param sentence the whole in one sentence, for a pupil, in plain English
 */
public record BasinSummary(
    List<OutcomeShare> shares,
    Optional<SummaryFigure> boxDimension,
    Optional<SummaryFigure> uncertaintyExponent,
    Optional<SummaryFigure> basinEntropy,
    Optional<SummaryFigure> boundaryBasinEntropy,
    WadaFinding wada,
    String sentence) {

  /** Fewest pixels along a side of a map that is summarised. */
  public static final int LEAST_SIDE = 64;

  private static final String BOX_SOURCE =
      "S. W. McDonald, C. Grebogi, E. Ott, J. A. Yorke, Physica D 17 (1985) 125";
  private static final String EXPONENT_SOURCE =
      "C. Grebogi, S. W. McDonald, E. Ott, J. A. Yorke, Phys. Lett. A 99 (1983) 415";
  private static final String ENTROPY_SOURCE =
      "A. Daza, A. Wagemakers, B. Georgeot, D. Guery-Odelin, M. A. F. Sanjuan,"
          + " Sci. Rep. 6 (2016) 31416";
  private static final String WADA_SOURCE =
      "A. Daza, A. Wagemakers, M. A. F. Sanjuan, Sci. Rep. 8 (2018) 9954";

  /** The publication of the shares' intervals. */
  public static final String SHARE_SOURCE =
      "C. J. Clopper, E. S. Pearson, Biometrika 26 (1934) 404";

  public BasinSummary {
    shares = List.copyOf(shares);
  }

  /**
   * Summarises a map.
   *
   * @param side pixels along a side, {@value #LEAST_SIDE} or more
   * @param ends side * side ends, row by row: rest points' indices or codes of {@link Ends}
   */
  public static BasinSummary of(int side, int[] ends) {
    if (side < LEAST_SIDE || ends.length != side * side) {
      throw new IllegalArgumentException(ends.length + " ends for a side of " + side);
    }
    LabelGrid outcomes = LabelGrid.of(side, Arrays.stream(ends).map(BasinSummary::label).toArray());
    Optional<ScalingLaw> dimension = BoxCount.of(outcomes).dimension();
    Optional<ScalingLaw> exponent = UncertainPairs.of(outcomes).exponent();
    Optional<BasinEntropy> entropy =
        outcomes.labelled() == 0 ? Optional.empty() : Optional.of(BasinEntropy.of(outcomes));
    return new BasinSummary(
        shares(LabelGrid.of(side, ends)),
        dimension.map(law -> figure(law.exponent(), BOX_SOURCE, SummaryWording.dimension(law))),
        exponent.map(law -> figure(law.exponent(), EXPONENT_SOURCE, SummaryWording.exponent(law))),
        entropy.map(BasinSummary::overall),
        entropy.flatMap(BasinSummary::boundary),
        wada(outcomes),
        sentence(outcomes, exponent));
  }

  /**
   * This summary with an uncertainty exponent found below the map's pixels, and its sentence.
   *
   * @param law from {@link FineSampling}, where the map itself gives none
   */
  public BasinSummary withExponent(ScalingLaw law) {
    SummaryFigure exponent = figure(law.exponent(), EXPONENT_SOURCE, SummaryWording.exponent(law));
    return new BasinSummary(
        shares,
        boxDimension,
        Optional.of(exponent),
        basinEntropy,
        boundaryBasinEntropy,
        wada,
        exponent.sentence());
  }

  /** Whether the map has a border between known ends. */
  public boolean hasBorder() {
    return boundaryBasinEntropy.isPresent();
  }

  private static int label(int end) {
    return Ends.known(end) ? end : LabelGrid.NO_LABEL;
  }

  private static List<OutcomeShare> shares(LabelGrid all) {
    List<OutcomeShare> shares = new ArrayList<>();
    for (int end : all.labels()) {
      Proportion proportion = new Proportion(all.count(end), all.labelled());
      Interval interval = proportion.clopperPearson(Estimate.CONFIDENCE);
      shares.add(
          new OutcomeShare(
              end, all.count(end), proportion.share(), interval.low(), interval.high()));
    }
    return shares;
  }

  private static SummaryFigure overall(BasinEntropy entropy) {
    return figure(
        entropy.overall(),
        ENTROPY_SOURCE,
        SummaryWording.entropy(entropy.overall().value(), entropy.boxSide()));
  }

  private static Optional<SummaryFigure> boundary(BasinEntropy entropy) {
    boolean fractal = entropy.lnTwoCriterion() == BasinEntropy.Fractality.FRACTAL;
    return entropy
        .boundary()
        .map(
            estimate ->
                figure(
                    estimate,
                    ENTROPY_SOURCE,
                    SummaryWording.boundaryEntropy(estimate.value(), fractal)));
  }

  private static WadaFinding wada(LabelGrid outcomes) {
    WadaTest test = WadaTest.of(outcomes);
    return new WadaFinding(
        test.verdict(),
        Arrays.stream(test.labels()).boxed().toList(),
        test.share()
            .map(share -> figure(share, WADA_SOURCE, SummaryWording.wadaShare(share.value()))),
        WADA_SOURCE,
        SummaryWording.wada(test.verdict()));
  }

  private static String sentence(LabelGrid outcomes, Optional<ScalingLaw> exponent) {
    return switch (outcomes.labels().length) {
      case 0 -> "No release on this map has a known end.";
      case 1 -> "Every release on this map whose end is known ends in the same way.";
      default ->
          exponent
              .map(SummaryWording::exponent)
              .orElse(
                  "The outcomes are mixed too finely, or too rarely, for this map to show how much a"
                      + " more exact hand would help.");
    };
  }

  private static SummaryFigure figure(Estimate estimate, String source, String sentence) {
    return new SummaryFigure(
        estimate.value(), estimate.interval().low(), estimate.interval().high(), source, sentence);
  }
}
