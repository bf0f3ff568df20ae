package lodeswing.web.body;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import lodeswing.web.problem.Fault;
import lodeswing.web.problem.ProblemCode;
import lodeswing.web.problem.ProblemException;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class BodyReaderTest {

  private static final ObjectShape RIG =
      ObjectShape.named("Rig", "A rig.")
          .required("lengthMm", NumberShape.between(10, 100).in("millimetres"), "Length.")
          .required("pole", ChoiceShape.of("north", "south"), "Pole.")
          .withDefault("turnDeg", NumberShape.between(0, 360), 0.0, "Turn.")
          .optional("title", new TextShape(10), "Title.")
          .optional("laser", new FlagShape(), "Laser.")
          .optional("places", new ListShape(NumberShape.above(0, 5), 0, 3), "Places.")
          .optional("count", NumberShape.count(1, 9), "Count.")
          .optional("grade", new TextShape(5), "Grade.")
          .optional("remanenceT", NumberShape.above(0, 2), "Remanence.")
          .exactlyOneOf(List.of("grade"), List.of("remanenceT"))
          .build();

  private static Body read(String json) {
    return BodyReader.read(json.getBytes(StandardCharsets.UTF_8), RIG);
  }

  private static ProblemException refused(String json) {
    return assertThrows(ProblemException.class, () -> read(json));
  }

  private static Map<String, String> faults(String json) {
    var byPointer = new TreeMap<String, String>();
    for (Fault fault : refused(json).faults()) {
      byPointer.put(fault.pointer(), fault.detail());
    }
    return byPointer;
  }

  @Test
  void membersComeInTheShapesOrderWithDefaultsFilledIn() {
    Body body = read("{\"grade\":\"N35\",\"pole\":\"north\",\"lengthMm\":4.2e1}");

    assertEquals(
        "{\"lengthMm\":42,\"pole\":\"north\",\"turnDeg\":0,\"grade\":\"N35\"}", body.toJson());
  }

  @Test
  void fiveFaultsAreReportedTogetherEachWithItsPointer() {
    Map<String, String> faults =
        faults(
            "{\"lengthMm\":\"long\",\"pole\":\"nort\",\"turnDeg\":361,\"tittle\":\"x\","
                + "\"places\":[1,0,2],\"grade\":\"N35\"}");

    assertEquals(
        Map.of(
            "/lengthMm",
            "must be a number from 10 to 100 (millimetres), not the text \"long\"",
            "/pole",
            "must be one of \"north\", \"south\", not the text \"nort\"; did you mean \"north\"?",
            "/turnDeg",
            "must be a number from 0 to 360, not the number 361",
            "/tittle",
            "is not known here; did you mean \"title\"?",
            "/places/1",
            "must be a number above 0 up to 5, not the number 0"),
        faults);
  }

  @Test
  void missingAndRivalMembersAreNamed() {
    Map<String, String> faults = faults("{\"pole\":\"north\",\"grade\":\"a\",\"remanenceT\":1}");

    assertEquals(
        Map.of(
            "/lengthMm",
            "is missing; must be a number from 10 to 100 (millimetres)",
            "",
            "has more than one of grade or remanenceT; keep one"),
        faults);
    assertEquals(
        "needs grade or remanenceT", faults("{\"lengthMm\":10,\"pole\":\"north\"}").get(""));
  }

  @Test
  void memberGivenTwiceIsReportedBesideOtherFaults() {
    Map<String, String> faults =
        faults("{\"lengthMm\":10,\"lengthMm\":20,\"pole\":1,\"grade\":\"N35\"}");

    assertEquals("is given twice; give it once", faults.get("/lengthMm"));
    assertEquals(2, faults.size());
  }

  @ParameterizedTest
  @ValueSource(strings = {"NaN", "Infinity", "-Infinity", "1e999", "-1e999", "null", "true", "[]"})
  void whatIsNoFiniteNumberIsRefusedAtItsPointer(String value) {
    Map<String, String> faults =
        faults("{\"lengthMm\":" + value + ",\"pole\":\"north\",\"grade\":\"N35\"}");

    assertEquals(List.of("/lengthMm"), List.copyOf(faults.keySet()));
  }

  @Test
  void wholeNumberMayBeWrittenWithAFractionOfZeroOnly() {
    String rig = "{\"lengthMm\":10,\"pole\":\"north\",\"grade\":\"N35\",\"count\":%s}";

    assertEquals(3, read(String.format(rig, "3.0")).number("count"));
    assertEquals(
        "must be a whole number from 1 to 9, not the number 3.5",
        faults(String.format(rig, "3.5")).get("/count"));
  }

  @Test
  void textWithControlCharactersOrHalfACharacterIsRefused() {
    String rig = "{\"lengthMm\":10,\"pole\":\"north\",\"grade\":\"N35\",\"title\":\"%s\"}";

    assertTrue(faults(String.format(rig, "a\\u0000b")).containsKey("/title"));
    assertTrue(faults(String.format(rig, "a\\ud800")).containsKey("/title"));
    assertTrue(faults(String.format(rig, "")).containsKey("/title"));
    assertTrue(faults(String.format(rig, "elevenchars")).containsKey("/title"));
    assertEquals("Grüße 🌊", read(String.format(rig, "Grüße 🌊")).text("title"));
  }

  @Test
  void pointersEscapeTildeAndSlash() {
    Map<String, String> faults =
        faults("{\"a/b~c\":1,\"lengthMm\":10,\"pole\":\"north\",\"grade\":\"N35\"}");

    assertEquals(List.of("/a~1b~0c"), List.copyOf(faults.keySet()));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {
        "",
        "  ",
        "{",
        "{\"a\":1",
        "{\"a\":}",
        "{} {}",
        "nul",
        "{'a':1}",
        "{\"a\":1,}",
        "\uFEFF\"",
        "{\"a\":01}",
        "{\"a\":\"\u0001\"}",
        "// x\n{}"
      })
  void whatIsNoJsonIsMalformed(String text) {
    assertEquals(ProblemCode.MALFORMED_BODY, refused(text).code());
  }

  @Test
  void byteOrderMarkBeforeABodyIsPassedOver() {
    assertEquals(
        20,
        read("\uFEFF{\"grade\":\"N35\",\"pole\":\"north\",\"lengthMm\":20}").number("lengthMm"));
  }

  @ParameterizedTest
  @ValueSource(
      strings = {"{\"a\":\n 1,}", "{\"a\":\n nan}", "{\"a\":\n 'x'}", "{\"a\":\n 01}", "{\n"})
  void placeWhereReadingStoppedIsToldInOurWords(String text) {
    ProblemException refused = refused(text);
    String told = refused.getMessage() + " " + refused.faults().get(0).detail();

    assertTrue(told.matches("(?s).* line 2, column \\d+.*"), told);
    for (String foreign : List.of("NaN", "token", "Parser", "Unexpected", "Feature", "JsonRead")) {
      assertFalse(told.contains(foreign), told);
    }
  }

  @Test
  void bytesThatAreNotUtf8AreMalformed() {
    byte[] latin = "{\"title\":\"Gr\u00fcn\"}".getBytes(StandardCharsets.ISO_8859_1);

    var refused = assertThrows(ProblemException.class, () -> BodyReader.read(latin, RIG));

    assertEquals(ProblemCode.MALFORMED_BODY, refused.code());
  }

  @Test
  void deepNestingLongNumbersAndLongTextsEndTheReading() {
    for (String text :
        List.of(
            "[".repeat(100_000),
            "{\"a\":".repeat(50_000),
            "{\"lengthMm\":" + "9".repeat(5000) + "}",
            "{\"title\":\"" + "x".repeat(BodyReader.LONGEST_TEXT + 1) + "\"}",
            "{\"" + "n".repeat(5000) + "\":1}")) {
      assertEquals(ProblemCode.MALFORMED_BODY, refused(text).code());
    }
  }

  @Test
  void moreFaultsThanAreListedAreCounted() {
    var text = new StringBuilder("{");
    for (int i = 0; i < 150; i++) {
      text.append("\"m").append(i).append("\":1,");
    }
    ProblemException refused = refused(text.append("\"z\":1}").toString());

    assertEquals(FaultList.LISTED, refused.faults().size());
    assertTrue(String.valueOf(refused.getMessage()).startsWith("The request has 154 faults"));
  }
}
