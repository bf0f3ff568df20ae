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
    return facts.grip().isPresent();
  }

  @Override
  public Severity severity(SafetyFacts facts) {
    if (SafetyLimit.CRUSHING.reachedBy(facts.pinch())) {
      return Severity.DANGER;
    }
    return SafetyLimit.FINGERS.reachedBy(facts.pinch()) ? Severity.WARNING : Severity.CAUTION;
  }

  @Override
  public List<String> sentences(SafetyFacts facts) {
    List<String> sentences = new ArrayList<>();
    boolean pair = facts.grip().flatMap(Grip::pair).isPresent();
    sentences.add(pair ? "pair" : "steel");
    if (facts.jump().isPresent()) {
      sentences.add("jump");
    }
    sentences.add(severity(facts).word());
    return sentences;
  }

  @Override
  public Map<SafetyFigure, Double> figures(SafetyFacts facts) {
    Map<SafetyFigure, Double> figures = new EnumMap<>(SafetyFigure.class);
    Grip grip = facts.grip().orElseThrow();
    grip.pair().ifPresent(pair -> figures.put(SafetyFigure.PINCH_FORCE, pair.force()));
    figures.put(SafetyFigure.STEEL_FORCE, grip.onSteel());
    figures.put(SafetyFigure.GRIP, grip.force());
    facts.jump().ifPresent(gap -> figures.put(SafetyFigure.JUMP_DISTANCE, gap));
    return figures;
  }

  @Override
  public List<SafetyLimit> limits() {
    return List.of(SafetyLimit.FINGERS, SafetyLimit.CRUSHING);
  }
}
