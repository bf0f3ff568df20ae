package lodeswing.web.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.stream.Stream;
import lodeswing.analysis.check.Change;
import lodeswing.analysis.check.CheckCode;
import lodeswing.analysis.check.Finding;
import lodeswing.analysis.check.Verdict;
import lodeswing.web.layout.LayoutDocument;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Bad choosers, whose ends tell: each is found and mended by the change that its line asks for. */
class BadChoosersTest {

  static Stream<Arguments> choosers() {
    return Stream.of(
        Arguments.of(
            "well without a label",
            Rigs.sample("paper-triangle", "/magnets/1/label", "-"),
            CheckCode.WELLS_WITHOUT_LABEL,
            "/magnets/1/label"),
        Arguments.of(
            "labels without wells, since the bob is too high",
            Rigs.sample("paper-triangle", "/height", "1.1"),
            CheckCode.LABELS_WITHOUT_WELL,
            "/height"),
        Arguments.of(
            "magnet with its pole turned",
            dipoles("/magnets/1/poleUp", "\"north\""),
            CheckCode.LABELS_WITHOUT_WELL,
            "/magnets/1/poleUp"),
        Arguments.of(
            "dipoles too far below",
            dipoles("/gapMm", "60"),
            CheckCode.LABELS_WITHOUT_WELL,
            "/gapMm"),
        Arguments.of(
            "bob that rests at once",
            Rigs.sample("paper-triangle", "/drag", "1.2"),
            CheckCode.SWINGS_BEFORE_REST,
            "/drag"),
        Arguments.of(
            "bob that ends alike each time",
            Rigs.sample("paper-triangle", "/drag", "4"),
            CheckCode.TWO_TRIES_DIFFER,
            "/drag"));
  }

  private static LayoutDocument dipoles(String pointer, String value) {
    return Rigs.sample(
        "three-stations",
        "/bobMagnet",
        "{\"shape\":\"dipole\",\"momentAm2\":0.84,\"poleDown\":\"north\"}",
        "/magnets/0",
        dipole(45, 0, "Tide"),
        "/magnets/1",
        dipole(-22.5, 38.97, "Dune"),
        "/magnets/2",
        dipole(-22.5, -38.97, "Reef"),
        pointer,
        value);
  }

  private static String dipole(double x, double y, String label) {
    return "{\"x\":"
        + x
        + ",\"y\":"
        + y
        + ",\"shape\":\"dipole\",\"momentAm2\":0.75,\"poleUp\":\"south\",\"label\":\""
        + label
        + "\"}";
  }

  @ParameterizedTest(name = "{0}")
  @MethodSource("choosers")
  void badChooserIsFoundAndMendedByTheChangeAskedFor(
      String name, LayoutDocument document, CheckCode code, String pointer) {
    Finding bad = Rigs.line(document, code);
    assertEquals(Verdict.FAILS, bad.measure().verdict(), bad.toString());
    Change change = bad.change().orElseThrow(() -> new AssertionError(bad.toString()));
    assertTrue(change.pointer().startsWith(pointer), change.toString());
    Finding mended =
        Rigs.line(Rigs.mended(document, change), code, CheckRequest.usualRadius(document));
    assertEquals(Verdict.GOOD, mended.measure().verdict(), change + " gives " + mended);
  }
}
