package lodeswing.safety;

import java.util.List;
import java.util.Map;

/** Magnetic stripes and watches: how far what disturbs them reaches. */
record CardRule() implements SafetyRule {

  @Override
  public SafetyCode code() {
    return SafetyCode.CARDS_AND_WATCHES;
  }

  @Override
  public boolean applies(SafetyFacts facts) {
    return facts.hasMagnets();
  }

  @Override
  public Severity severity(SafetyFacts facts) {
    return Severity.CAUTION;
  }

  @Override
  public List<String> sentences(SafetyFacts facts) {
    return List.of(SafetyNote.USUAL);
  }

  @Override
  public Map<SafetyFigure, Double> figures(SafetyFacts facts) {
    return Map.of(
        SafetyFigure.CARD_DISTANCE,
        facts.reach(SafetyLimit.CARDS),
        SafetyFigure.WATCH_DISTANCE,
        facts.reach(SafetyLimit.WATCHES));
  }

  @Override
  public List<SafetyLimit> limits() {
    return List.of(SafetyLimit.CARDS, SafetyLimit.WATCHES);
  }
}
