package lodeswing.letters;

import com.ibm.icu.lang.UScript;
import java.awt.Font;
import java.awt.FontFormatException;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.util.Optional;

/** The typefaces that come with the program; the licence of each lies beside its file. */
public enum Typeface {
  /** Latin, Greek, Cyrillic, Arabic, Hebrew, Armenian, Georgian and signs. */
  SANS("DejaVuSans"),
  /** Devanagari. */
  DEVANAGARI("NotoSansDevanagari-Regular"),
  /** Chinese and Japanese: the ideographs of the basic plane and kana; hardly any hangul. */
  IDEOGRAPHS("DroidSansFallbackFull");

  private final String name;

  // Never handed out for writing; a Font has no setters.
  @SuppressWarnings("ImmutableEnumChecker")
  private final Font font;

  Typeface(String name) {
    this.name = name;
    try {
      this.font = Font.createFont(Font.TRUETYPE_FONT, new ByteArrayInputStream(read(name)));
    } catch (IOException e) {
      throw new UncheckedIOException("The typeface " + name + " could not be read.", e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("The typeface " + name + " is damaged.", e);
    }
  }

  /** Its name, as it stands in a PDF file. */
  public String fontName() {
    return name;
  }

  /** The bytes of its TrueType file. */
  public byte[] file() {
    try {
      return read(name);
    } catch (IOException e) {
      throw new UncheckedIOException("The typeface " + name + " could not be read.", e);
    }
  }

  /** The typeface at a size, to measure and to shape by. */
  Font sized(float size) {
    return font.deriveFont(size);
  }

  /** The typeface that a character is set in; empty where none has a glyph for it. */
  static Optional<Typeface> of(int codePoint) {
    for (Typeface typeface : values()) {
      if (typeface.sets(codePoint)) {
        return Optional.of(typeface);
      }
    }
    return Optional.empty();
  }

  /** Whether it has a glyph, and what the glyph's script needs to be set by the rules. */
  boolean sets(int codePoint) {
    return font.canDisplay(codePoint) && meant(codePoint);
  }

  private boolean meant(int codePoint) {
    int script = UScript.getScript(codePoint);
    return switch (this) {
      case SANS -> true;
      case DEVANAGARI -> script == UScript.DEVANAGARI;
      case IDEOGRAPHS ->
          script == UScript.HAN
              || script == UScript.HIRAGANA
              || script == UScript.KATAKANA
              || script == UScript.BOPOMOFO
              || (codePoint >= 0x3000 && codePoint <= 0x33FF)
              || (codePoint >= 0xFF00 && codePoint <= 0xFFEF);
    };
  }

  private static byte[] read(String name) throws IOException {
    String file = "/fonts/" + name + ".ttf";
    try (InputStream in = Typeface.class.getResourceAsStream(file)) {
      if (in == null) {
        throw new IllegalStateException("The typeface " + file + " is missing from the program.");
      }
      return in.readAllBytes();
    }
  }
}
