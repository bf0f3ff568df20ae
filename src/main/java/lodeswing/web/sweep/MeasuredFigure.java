package lodeswing.web.sweep;

import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import lodeswing.web.body.Body;

/**
 * A measure as it is asked for.
 *
 * @param measure which
 * @param label of which label; empty where it is of none
 */
record MeasuredFigure(SweepMeasure measure, Optional<String> label) {

  static MeasuredFigure of(Body body) {
    String word = body.text("measure");
    SweepMeasure measure =
        Arrays.stream(SweepMeasure.values())
            .filter(one -> one.word().equals(word))
            .findFirst()
            .orElseThrow();
    return new MeasuredFigure(measure, body.findText("label"));
  }

  Body body() {
    Map<String, Object> members = new LinkedHashMap<>();
    members.put("measure", measure.word());
    label.ifPresent(of -> members.put("label", of));
    return Body.of(members);
  }

  /** The name of its column. */
  String name() {
    return measure.word() + label.map(of -> "." + of).orElse("");
  }
}
