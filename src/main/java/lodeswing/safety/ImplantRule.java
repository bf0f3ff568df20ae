package lodeswing.safety;

import java.util.List;
import java.util.Map;

/** Cardiac devices and other implants: how far 0.5 mT reaches. */
record ImplantRule() implements SafetyRule {

  @Override
  public SafetyCode code() {
    return SafetyCode.IMPLANTS;
  }

  @Override
  public boolean applies(SafetyFacts facts) {
    return facts.hasMagnets();
  }

  @Override
  public Severity severity(SafetyFacts facts) {
    return Severity.DANGER;
  }

  @Override
  public List<String> sentences(SafetyFacts facts) {
    return List.of(SafetyNote.USUAL);
  }

  @Override
  public Map<SafetyFigure, Double> figures(SafetyFacts facts) {
    return Map.of(
        SafetyFigure.IMPLANT_DISTANCE,
        facts.reach(SafetyLimit.IMPLANTS),
        SafetyFigure.IMPLANT_DISTANCE_TOGETHER,
        facts.reachTogether(SafetyLimit.IMPLANTS));
  }

  @Override
  public List<SafetyLimit> limits() {
    return List.of(SafetyLimit.IMPLANTS);
  }
}
