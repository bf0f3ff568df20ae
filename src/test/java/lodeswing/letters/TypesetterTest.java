package lodeswing.letters;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import java.util.Locale;
import org.junit.jupiter.api.Test;

class TypesetterTest {

  /** Advance widths of DejaVu Sans in 2048ths of the size (its hmtx table). */
  @Test
  void widthsAreThoseOfTheTypeface() {
    assertEquals((1401 + 569) / 2048.0, Typesetter.line("Al").width(), 1e-3);
    assertEquals(3.0, Typesetter.line("潮汐站").width(), 1e-6);
    assertEquals(0, Typesetter.line("").width());
  }

  @Test
  void arabicLettersJoinAndStandFromTheRight() {
    SetLine line = Typesetter.line("باب");
    assertTrue(line.rightToLeft());
    // The first letter is the rightmost glyph, and not the one that stands alone.
    Glyph first = line.glyphs().get(line.glyphs().size() - 1);
    assertEquals("ب", first.text());
    assertFalse(first.code() == Typesetter.line("ب").glyphs().get(0).code());
    // Lam and alef become one glyph that stands for both.
    assertEquals(List.of("لا"), Typesetter.line("لا").glyphs().stream().map(Glyph::text).toList());
  }

  @Test
  void figuresInArabicKeepTheirOwnDirection() {
    List<String> seen = Typesetter.line("مد 25").glyphs().stream().map(Glyph::text).toList();
    assertEquals(List.of("2", "5"), seen.subList(0, 2));
  }

  @Test
  void whatNoTypefaceHasIsNamedAndMarked() {
    assertEquals(List.of(0x0E44, 0x1F30A), Typesetter.missing("Tide 🌊ไ🌊"));
    assertEquals(List.of(), Typesetter.missing("Tide مد 潮 दिल्ली שלום Ω Ж ⌀ −"));
    SetLine line = Typesetter.line("🌊");
    assertEquals("\uFFFD", line.glyphs().get(0).text());
    assertTrue(line.glyphs().stream().allMatch(glyph -> glyph.code() > 0));
  }

  @Test
  void linesFitAndLoseNothing() {
    String text =
        "The quick brown fox jumps over the lazy dog and Donaudampfschifffahrtsgesellschaft"
            + " 潮汐站沙丘站礁石站潮汐站沙丘站礁石站 محطة المد والجزر";
    for (double width : new double[] {1.2, 4, 9, 100}) {
      List<String> lines = Typesetter.lines(text, width, Locale.ENGLISH);
      assertEquals(text.replace(" ", ""), String.join("", lines).replace(" ", ""));
      for (String line : lines) {
        assertTrue(Typesetter.line(line).width() <= width || line.length() == 1, line);
      }
    }
    assertEquals(List.of(), Typesetter.lines("", 5, Locale.ENGLISH));
  }
}
