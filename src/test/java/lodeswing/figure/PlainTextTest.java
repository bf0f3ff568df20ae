package lodeswing.figure;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.io.InputStream;
import java.util.List;
import java.util.Objects;
import org.junit.jupiter.api.Test;

class PlainTextTest {

  @Test
  void controlAndDirectionCharactersAreTakenOut() {
    // Directional formatting characters: Unicode Standard Annex 9, section 2.
    for (int c :
        new int[] {
          0, 7, 0x1B, 0x7F, 0x9B, 0x200B, 0x200E, 0x200F, 0x061C, 0x202A, 0x202B, 0x202C, 0x202D,
          0x202E, 0x2066, 0x2067, 0x2068, 0x2069, 0xFEFF, 0xFFFE, 0xE000, 0xD800, 0xDFFF, 0xE0001
        }) {
      assertEquals("Reef", PlainText.of("Re" + new String(new int[] {c}, 0, 1) + "ef"));
    }
  }

  @Test
  void markupAndOtherScriptsStayAsTheyAre() {
    for (String text :
        List.of(
            "</text><script>", "\"a\" & 'b'", "Łódź", "Риф", "礁", "ריף", "🧲 magnet", "n = −3")) {
      assertEquals(text, PlainText.of(text));
    }
  }

  @Test
  void blanksAndLineEndsBecomeOneBlank() {
    assertEquals("a b c", PlainText.of("  a \t\r\n b\u2028c\u2029 "));
    assertEquals("7.4\u00a0s", PlainText.of("7.4\u00a0s"));
  }

  @Test
  void pilesOfCombiningMarksAreCutToFour() {
    assertEquals("a" + "\u0301".repeat(4) + "b", PlainText.of("a" + "\u0301".repeat(50) + "b"));
  }

  @Test
  void longTextsAreCutBetweenCodePoints() {
    assertEquals("🧲🧲…", PlainText.shortened("🧲".repeat(9), 3));
    assertEquals("abc", PlainText.shortened("abc", 3));
  }

  @Test
  void widthsAgreeWithTheBundledTypeface() throws Exception {
    Font font;
    try (InputStream in = PlainTextTest.class.getResourceAsStream("/fonts/DejaVuSans.ttf")) {
      font = Font.createFont(Font.TRUETYPE_FONT, Objects.requireNonNull(in)).deriveFont(1000f);
    }
    FontRenderContext context = new FontRenderContext(null, true, true);
    for (char c = 32; c < 127; c++) {
      String letter = String.valueOf(c);
      assertEquals(font.getStringBounds(letter, context).getWidth(), TextWidth.of(letter, 1000), 1);
    }
    for (String text : List.of("sealed 7.42\u00a0s", "Łódź", "Риф на мысе", "settled −3 …")) {
      double real = font.getStringBounds(text, context).getWidth();
      double taken = TextWidth.of(text, 1000);
      assertTrue(taken > 0.95 * real && taken < 1.3 * real, () -> text + ": " + taken / real);
    }
  }

  @Test
  void wrappedLinesFitAndLoseNothing() {
    String text = "released at (80, 27.3) mm and then a verylongwordthatfitsnoline at all";
    List<String> lines = TextLines.wrapped(text, 12, 90, 20);
    for (String line : lines) {
      assertTrue(TextWidth.of(line, 12) <= 90, line);
    }
    assertEquals(text.replace(" ", ""), String.join("", lines).replace(" ", ""));
    assertTrue(TextLines.wrapped(text, 12, 90, 2).get(1).endsWith("…"));
  }
}
