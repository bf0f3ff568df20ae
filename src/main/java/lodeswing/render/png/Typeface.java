package lodeswing.render.png;

import java.awt.Font;
import java.awt.FontFormatException;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;

/** The bundled typeface, so that letters look the same on every machine. */
final class Typeface {
  private static final String FILE = "/fonts/DejaVuSans.ttf";
  private static final Font FONT = load();

  private Typeface() {}

  static Font sized(double size) {
    return FONT.deriveFont((float) size);
  }

  private static Font load() {
    try (InputStream in = Typeface.class.getResourceAsStream(FILE)) {
      if (in == null) {
        throw new IllegalStateException("The typeface " + FILE + " is missing from the program.");
      }
      return Font.createFont(Font.TRUETYPE_FONT, in);
    } catch (IOException e) {
      throw new UncheckedIOException("The typeface " + FILE + " could not be read.", e);
    } catch (FontFormatException e) {
      throw new IllegalStateException("The typeface " + FILE + " is damaged.", e);
    }
  }
}
