package lodeswing.safety;

import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The two strongest magnets, between which fingers come. */
record PinchingRule() implements SafetyRule {

  @Override
  public SafetyCode code() {
    return SafetyCode.PINCHING;
  }

  @Override
  public boolean applies(SafetyFacts facts) {
    return facts.pair().isPresent();
  }

  private static double force(SafetyFacts facts) {
    return facts.pair().map(StrongestPair::force).orElse(0.0);
  }

  static Severity bySize(double force) {
    if (SafetyLimit.CRUSHING.reachedBy(force)) {
      return Severity.DANGER;
    }
    return SafetyLimit.FINGERS.reachedBy(force) ? Severity.WARNING : Severity.CAUTION;
  }

  @Override
  public Severity severity(SafetyFacts facts) {
    return bySize(force(facts));
  }

  @Override
  public List<String> sentences(SafetyFacts facts) {
    List<String> sentences = new ArrayList<>();
    boolean steel = facts.pair().filter(StrongestPair::steel).isPresent();
    sentences.add(steel ? "steel" : "pair");
    if (facts.jump().isPresent()) {
      sentences.add("jump");
    }
    sentences.add(bySize(force(facts)).word());
    return sentences;
  }

  @Override
  public Map<SafetyFigure, Double> figures(SafetyFacts facts) {
    Map<SafetyFigure, Double> figures = new EnumMap<>(SafetyFigure.class);
    figures.put(SafetyFigure.PINCH_FORCE, force(facts));
    facts.jump().ifPresent(gap -> figures.put(SafetyFigure.JUMP_DISTANCE, gap));
    return figures;
  }

  @Override
  public List<SafetyLimit> limits() {
    return List.of(SafetyLimit.FINGERS, SafetyLimit.CRUSHING);
  }
}
