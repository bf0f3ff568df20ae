package lodeswing.safety;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** What holds the plate's magnets against each other and against the bob. */
record FixingRule() implements SafetyRule {

  @Override
  public SafetyCode code() {
    return SafetyCode.FIXING;
  }

  @Override
  public boolean applies(SafetyFacts facts) {
    return !facts.bench().magnets().isEmpty();
  }

  @Override
  public Severity severity(SafetyFacts facts) {
    return Severity.CAUTION;
  }

  @Override
  public List<String> sentences(SafetyFacts facts) {
    return List.of(
        facts.sideways().isPresent() ? "neighbours" : "alone", fixed(facts) ? "fixed" : "loose");
  }

  @Override
  public Map<SafetyFigure, Double> figures(SafetyFacts facts) {
    Map<SafetyFigure, Double> figures = new EnumMap<>(SafetyFigure.class);
    facts.sideways().ifPresent(force -> figures.put(SafetyFigure.SIDEWAYS, force));
    figures.put(SafetyFigure.LIFT, facts.lift());
    return figures;
  }

  @Override
  public List<String> needs(SafetyFacts facts) {
    return facts.rig().fixed().isPresent() ? List.of() : List.of("/plate/fixing");
  }

  private static boolean fixed(SafetyFacts facts) {
    return facts.rig().fixed().orElse(false);
  }
}
