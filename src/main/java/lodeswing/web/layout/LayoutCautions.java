package lodeswing.web.layout;

import java.util.List;
import java.util.Map;
import java.util.function.IntFunction;
import lodeswing.safety.Exceeded;
import lodeswing.words.Language;
import lodeswing.words.Words;

/** The warnings that every answer about a layout has whose magnets pass a limit. */
final class LayoutCautions {

  private static final int DIGITS = 3;

  private LayoutCautions() {}

  /**
   * The warnings.
   *
   * @param passed the limits that the layout passes
   * @param magnet pointer of a magnet of the plate by its index
   */
  static List<LayoutWarning> of(List<Exceeded> passed, IntFunction<String> magnet) {
    if (passed.isEmpty()) {
      return List.of();
    }
    Words words = Words.of("safety", Language.ENGLISH.locale());
    return passed.stream().map(one -> warning(one, words, magnet)).toList();
  }

  private static LayoutWarning warning(Exceeded passed, Words words, IntFunction<String> magnet) {
    var figure = passed.limit().figure();
    Map<String, Object> figures =
        Map.of(
            "magnets",
            passed.magnets(),
            "value",
            words.number(figure.shown(passed.value()), DIGITS),
            "limit",
            words.number(figure.shown(passed.limit().value()), DIGITS));
    return new LayoutWarning(
        passed.code().word() + "-limit",
        words.text("limit." + passed.code().word(), figures),
        passed.kind().bob() ? "/bobMagnet" : magnet.apply(passed.kind().plate().get(0)));
  }
}
