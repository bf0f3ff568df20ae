package lodeswing.safety;

import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The swinging mass, at the height of eyes that bend over a table. */
record SwingRule() implements SafetyRule {

  @Override
  public SafetyCode code() {
    return SafetyCode.SWINGING_BOB;
  }

  @Override
  public boolean applies(SafetyFacts facts) {
    return true;
  }

  @Override
  public Severity severity(SafetyFacts facts) {
    return SafetyLimit.PROJECTILE.reachedBy(facts.swingEnergy())
        ? Severity.WARNING
        : Severity.CAUTION;
  }

  @Override
  public List<String> sentences(SafetyFacts facts) {
    return List.of(
        "usual", SafetyLimit.PROJECTILE.reachedBy(facts.swingEnergy()) ? "heavy" : "light");
  }

  @Override
  public Map<SafetyFigure, Double> figures(SafetyFacts facts) {
    Map<SafetyFigure, Double> figures = new EnumMap<>(SafetyFigure.class);
    figures.put(SafetyFigure.SWINGING_MASS, facts.bench().suspension().body().mass());
    figures.put(SafetyFigure.SPEED, facts.speed());
    figures.put(SafetyFigure.SWING_ENERGY, facts.swingEnergy());
    figures.put(SafetyFigure.REACH, facts.reachOfSwing());
    figures.put(SafetyFigure.LOWEST, facts.bench().gap());
    figures.put(SafetyFigure.HIGHEST, facts.highest());
    return figures;
  }

  @Override
  public List<SafetyLimit> limits() {
    return List.of(SafetyLimit.PROJECTILE);
  }
}
