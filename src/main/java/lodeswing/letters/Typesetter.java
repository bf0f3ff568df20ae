package lodeswing.letters;

import com.ibm.icu.text.Bidi;
import com.ibm.icu.text.BreakIterator;
import java.awt.Font;
import java.awt.font.FontRenderContext;
import java.awt.font.GlyphVector;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.TreeSet;
import java.util.function.ToDoubleFunction;

/**
 * Sets lines of text: direction by the Unicode Bidirectional Algorithm (UAX 9, ICU4J), letters
 * joined and marks placed by the typefaces' own rules (HarfBuzz, which is the JDK's shaper), lines
 * broken by UAX 14 (ICU4J).
 *
 * <p>A character that no typeface has is set as U+FFFD, which is a mark to see and no empty box;
 * {@link #missing} tells which those are.
 */
public final class Typesetter {

  /** Where shaping is done; large, so that places are exact to a thousandth of the size. */
  private static final float SIZE = 2048;

  private static final FontRenderContext CONTEXT = new FontRenderContext(null, true, true);
  private static final int REPLACEMENT = 0xFFFD;
  private static final int NO_GLYPH = 0xFFFE;
  private static final int NO_GLYPHS_FROM = 0xFFFF;

  private Typesetter() {}

  /** The characters of a text that no typeface has, each once, in the order of their numbers. */
  public static List<Integer> missing(String text) {
    var missing = new TreeSet<Integer>();
    text.codePoints().filter(c -> !invisible(c) && Typeface.of(c).isEmpty()).forEach(missing::add);
    return List.copyOf(missing);
  }

  /** Sets one line. */
  public static SetLine line(String text) {
    if (text.isEmpty()) {
      return new SetLine(text, false, 0, List.of(), true);
    }
    String known = known(text);
    char[] letters = known.toCharArray();
    var bidi = new Bidi(known, Bidi.DIRECTION_DEFAULT_LEFT_TO_RIGHT);
    List<Glyph> glyphs = new ArrayList<>();
    double width = 0;
    for (int i = 0; i < bidi.countRuns(); i++) {
      var run = bidi.getVisualRun(i);
      boolean back = run.getDirection() == Bidi.RTL;
      List<Piece> pieces = pieces(known, run.getStart(), run.getLimit());
      for (int p = 0; p < pieces.size(); p++) {
        Piece piece = pieces.get(back ? pieces.size() - 1 - p : p);
        width += set(piece, letters, back, width, glyphs);
      }
    }
    var read = new StringBuilder();
    glyphs.forEach(glyph -> read.append(glyph.text()));
    boolean back = bidi.getParaLevel() % 2 == 1;
    boolean whole = glyphs.stream().noneMatch(glyph -> glyph.text().isEmpty());
    return new SetLine(text, back, width, glyphs, whole && read.toString().equals(text));
  }

  /** Width of a line at a font size, in the unit of the size. */
  public static double width(String text, double size) {
    return line(text).width() * size;
  }

  /**
   * Breaks a text where its language allows into lines that fit a width; a word wider than that is
   * broken between letters.
   *
   * @param width in units of the font size
   */
  public static List<String> lines(String text, double width, Locale locale) {
    return lines(text, width, locale, line -> line(line).width());
  }

  /**
   * The same by a measure that may know lines from before.
   *
   * @param measure the width of a line in units of the font size
   */
  public static List<String> lines(
      String text, double width, Locale locale, ToDoubleFunction<String> measure) {
    List<String> lines = new ArrayList<>();
    BreakIterator places = BreakIterator.getLineInstance(locale);
    places.setText(text);
    int start = 0;
    int fitting = 0;
    int next = places.next();
    while (start < text.length()) {
      boolean more = next != BreakIterator.DONE;
      if (more && measure.applyAsDouble(text.substring(start, next).strip()) <= width) {
        fitting = next;
        next = places.next();
        continue;
      }
      if (fitting == start && more) {
        fitting = start + letters(text.substring(start, next), width, locale, measure);
      }
      String line = text.substring(start, fitting).strip();
      if (!line.isEmpty()) {
        lines.add(line);
      }
      start = fitting;
      if (!more) {
        break;
      }
    }
    return lines;
  }

  /** How much of a word fits a width: one letter at least. */
  private static int letters(
      String word, double width, Locale locale, ToDoubleFunction<String> measure) {
    BreakIterator letters = BreakIterator.getCharacterInstance(locale);
    letters.setText(word);
    int end = letters.next();
    for (int next = letters.next(); next != BreakIterator.DONE; next = letters.next()) {
      if (measure.applyAsDouble(word.substring(0, next)) > width) {
        break;
      }
      end = next;
    }
    return end;
  }

  /** The text with a mark in place of each character that cannot be set. */
  private static String known(String text) {
    var known = new StringBuilder(text.length());
    text.codePoints()
        .forEach(
            c -> {
              boolean sets = invisible(c) || Typeface.of(c).isPresent();
              // As many chars as before, so that places in both texts agree.
              known.appendCodePoint(sets ? c : REPLACEMENT);
              if (!sets && Character.charCount(c) == 2) {
                known.append('\u200B');
              }
            });
    return known.toString();
  }

  private static boolean invisible(int c) {
    return c == 0x200B || c == 0x200C || c == 0x200D;
  }

  private record Piece(Typeface typeface, int start, int limit) {}

  private static List<Piece> pieces(String text, int start, int limit) {
    List<Piece> pieces = new ArrayList<>();
    Typeface current = Typeface.SANS;
    int from = start;
    for (int i = start; i < limit; ) {
      int c = text.codePointAt(i);
      Typeface own = stays(c, current) ? current : Typeface.of(c).orElse(Typeface.SANS);
      if (own != current) {
        if (i > from) {
          pieces.add(new Piece(current, from, i));
        }
        from = i;
        current = own;
      }
      i += Character.charCount(c);
    }
    pieces.add(new Piece(current, from, limit));
    return pieces;
  }

  /** Blanks and joiners stay with the letters about them. */
  private static boolean stays(int c, Typeface current) {
    return invisible(c) || (c == ' ' && current.sets(' '));
  }

  /** Sets a piece of one typeface and direction from a place on; returns its width. */
  private static double set(
      Piece piece, char[] letters, boolean back, double from, List<Glyph> glyphs) {
    Font font = piece.typeface().sized(SIZE);
    GlyphVector shaped =
        font.layoutGlyphVector(
            CONTEXT,
            letters,
            piece.start(),
            piece.limit(),
            back ? Font.LAYOUT_RIGHT_TO_LEFT : Font.LAYOUT_LEFT_TO_RIGHT);
    int count = shaped.getNumGlyphs();
    int[] places = new int[count];
    var starts = new TreeSet<Integer>();
    for (int i = 0; i < count; i++) {
      places[i] = piece.start() + shaped.getGlyphCharIndex(i);
      starts.add(places[i]);
    }
    for (int i = 0; i < count; i++) {
      int code = shaped.getGlyphCode(i);
      if (code == NO_GLYPH || code == NO_GLYPHS_FROM) {
        continue;
      }
      boolean first = i == 0 || places[i] != places[i - 1];
      int end = Optional.ofNullable(starts.higher(places[i])).orElse(piece.limit());
      glyphs.add(
          new Glyph(
              piece.typeface(),
              code,
              from + shaped.getGlyphPosition(i).getX() / SIZE,
              -shaped.getGlyphPosition(i).getY() / SIZE,
              first ? new String(letters, places[i], end - places[i]) : ""));
    }
    return shaped.getGlyphPosition(count).getX() / SIZE;
  }
}
