package lodeswing.web.check;

import java.util.Arrays;
import java.util.Optional;
import java.util.stream.IntStream;
import lodeswing.analysis.check.Knob;
import lodeswing.analysis.check.Setting;
import lodeswing.web.layout.LayoutDocument;

/** What a hand can set of a layout's members. */
record LayoutWorkshopSteps(LayoutDocument document) {

  double of(String pointer) {
    var workshop = new LayoutWorkshop(document);
    int magnets = document.labels().size();
    return Arrays.stream(Knob.values())
        .flatMap(
            knob ->
                IntStream.range(0, Math.max(1, magnets))
                    .mapToObj(i -> workshop.setting(knob, i))
                    .flatMap(Optional::stream))
        .filter(setting -> setting.pointer().equals(pointer))
        .mapToDouble(Setting::step)
        .findFirst()
        .orElseThrow();
  }
}
