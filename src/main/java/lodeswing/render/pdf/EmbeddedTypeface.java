package lodeswing.render.pdf;

import java.io.ByteArrayOutputStream;
import java.io.IOException;
import java.io.OutputStream;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.zip.CRC32;
import lodeswing.letters.Glyph;
import lodeswing.letters.Typeface;
import org.apache.fontbox.ttf.TTFParser;
import org.apache.fontbox.ttf.TTFSubsetter;
import org.apache.fontbox.ttf.TrueTypeFont;
import org.apache.pdfbox.cos.COSArray;
import org.apache.pdfbox.cos.COSDictionary;
import org.apache.pdfbox.cos.COSInteger;
import org.apache.pdfbox.cos.COSName;
import org.apache.pdfbox.cos.COSStream;
import org.apache.pdfbox.io.RandomAccessReadBuffer;
import org.apache.pdfbox.pdmodel.PDDocument;

/**
 * A typeface of one document: codes for the glyphs that are used, in the order in which they come,
 * and in the end a subset of its file with those alone (ISO 32000-1:2008, 9.7, composite fonts).
 *
 * <p>A code stands for a glyph and the text that it was set for, so that text is read out as it was
 * written, whatever glyph shaping made of it.
 */
final class EmbeddedTypeface implements AutoCloseable {

  private static final List<String> TABLES =
      List.of("head", "hhea", "loca", "maxp", "cvt ", "prep", "glyf", "hmtx", "fpgm");

  /** What a part of another glyph reads as: nothing to see, in no word's way. */
  private static final String NOTHING = "\u200B";

  private static final int EM = 1000;
  private static final int SYMBOLIC = 4;
  private static final int LETTERS_OF_TAG = 6;
  private static final int BLOCK = 100;

  private record Use(int code, String text) {}

  private final Typeface typeface;
  private final String resource;
  private final TrueTypeFont font;
  private final Map<Use, Integer> codes = new LinkedHashMap<>();
  private final COSDictionary dictionary = new COSDictionary();

  EmbeddedTypeface(Typeface typeface) throws IOException {
    this.typeface = typeface;
    this.resource = "F-" + typeface.fontName();
    this.font = new TTFParser().parse(new RandomAccessReadBuffer(typeface.file()));
  }

  /** Its name in a page's resources. */
  String resource() {
    return resource;
  }

  COSDictionary dictionary() {
    return dictionary;
  }

  /** The code of a glyph, from 1. */
  int code(Glyph glyph) {
    String text = glyph.text().isEmpty() ? NOTHING : glyph.text();
    return codes.computeIfAbsent(new Use(glyph.code(), text), use -> codes.size() + 1);
  }

  /** Width of a glyph in thousandths of the size, as the document states it. */
  int advance(Glyph glyph) throws IOException {
    return advance(glyph.code());
  }

  private int advance(int glyph) throws IOException {
    return (int) Math.round((double) font.getAdvanceWidth(glyph) * EM / font.getUnitsPerEm());
  }

  /** Writes the subset into the dictionary, once all text is set. */
  void finish(PDDocument document) throws IOException {
    var used = new TreeSet<Integer>();
    codes.keySet().forEach(use -> used.add(use.code()));
    var subsetter = new TTFSubsetter(font, TABLES);
    subsetter.addGlyphIds(used);
    var file = new ByteArrayOutputStream();
    subsetter.writeToStream(file);
    Map<Integer, Integer> places = new HashMap<>();
    subsetter.getGIDMap().forEach((place, glyph) -> places.put(glyph, place));
    String name = tag(used) + "+" + typeface.fontName();
    COSDictionary descendant = descendant(document, name, file.toByteArray(), places);
    var descendants = new COSArray();
    descendants.add(descendant);
    dictionary.setItem(COSName.TYPE, COSName.FONT);
    dictionary.setItem(COSName.SUBTYPE, COSName.TYPE0);
    dictionary.setName(COSName.BASE_FONT, name);
    dictionary.setItem(COSName.ENCODING, COSName.IDENTITY_H);
    dictionary.setItem(COSName.DESCENDANT_FONTS, descendants);
    dictionary.setItem(
        COSName.TO_UNICODE, stream(document, toUnicode().getBytes(StandardCharsets.US_ASCII)));
  }

  private COSDictionary descendant(
      PDDocument document, String name, byte[] file, Map<Integer, Integer> places)
      throws IOException {
    var descendant = new COSDictionary();
    descendant.setItem(COSName.TYPE, COSName.FONT);
    descendant.setItem(COSName.SUBTYPE, COSName.CID_FONT_TYPE2);
    descendant.setName(COSName.BASE_FONT, name);
    var system = new COSDictionary();
    system.setString(COSName.REGISTRY, "Adobe");
    system.setString(COSName.ORDERING, "Identity");
    system.setInt(COSName.SUPPLEMENT, 0);
    descendant.setItem(COSName.CIDSYSTEMINFO, system);
    descendant.setItem(COSName.FONT_DESC, descriptor(document, name, file));
    descendant.setInt(COSName.DW, EM);
    var widths = new COSArray();
    var glyphs = new ByteArrayOutputStream();
    glyphs.write(0);
    glyphs.write(0);
    for (Use use : codes.keySet()) {
      widths.add(COSInteger.get(advance(use.code())));
      int place = places.getOrDefault(use.code(), 0);
      glyphs.write(place >> 8);
      glyphs.write(place & 0xFF);
    }
    var all = new COSArray();
    all.add(COSInteger.ONE);
    all.add(widths);
    descendant.setItem(COSName.W, all);
    descendant.setItem(COSName.CID_TO_GID_MAP, stream(document, glyphs.toByteArray()));
    return descendant;
  }

  private COSDictionary descriptor(PDDocument document, String name, byte[] file)
      throws IOException {
    double unit = (double) EM / font.getUnitsPerEm();
    var descriptor = new COSDictionary();
    descriptor.setItem(COSName.TYPE, COSName.FONT_DESC);
    descriptor.setName(COSName.FONT_NAME, name);
    descriptor.setInt(COSName.FLAGS, SYMBOLIC);
    var box = new COSArray();
    for (int edge :
        new int[] {
          font.getHeader().getXMin(),
          font.getHeader().getYMin(),
          font.getHeader().getXMax(),
          font.getHeader().getYMax()
        }) {
      box.add(COSInteger.get(Math.round(edge * unit)));
    }
    descriptor.setItem(COSName.FONT_BBOX, box);
    descriptor.setInt(COSName.ITALIC_ANGLE, 0);
    long ascent = Math.round(font.getHorizontalHeader().getAscender() * unit);
    descriptor.setLong(COSName.ASCENT, ascent);
    descriptor.setLong(
        COSName.DESCENT, Math.round(font.getHorizontalHeader().getDescender() * unit));
    descriptor.setLong(COSName.CAP_HEIGHT, ascent);
    descriptor.setInt(COSName.STEM_V, 80);
    COSStream embedded = stream(document, file);
    embedded.setInt(COSName.LENGTH1, file.length);
    descriptor.setItem(COSName.FONT_FILE2, embedded);
    return descriptor;
  }

  /** What each code reads as. Source: Adobe Technical Note 5411, ToUnicode mapping files. */
  private String toUnicode() {
    var map = new StringBuilder();
    map.append("/CIDInit /ProcSet findresource begin\n12 dict begin\nbegincmap\n");
    map.append("/CIDSystemInfo <</Registry (Adobe) /Ordering (UCS) /Supplement 0>> def\n");
    map.append("/CMapName /Adobe-Identity-UCS def\n/CMapType 2 def\n");
    map.append("1 begincodespacerange\n<0000> <FFFF>\nendcodespacerange\n");
    List<Map.Entry<Use, Integer>> all = new ArrayList<>(codes.entrySet());
    for (int from = 0; from < all.size(); from += BLOCK) {
      List<Map.Entry<Use, Integer>> some = all.subList(from, Math.min(all.size(), from + BLOCK));
      map.append(some.size()).append(" beginbfchar\n");
      for (Map.Entry<Use, Integer> use : some) {
        map.append(String.format(Locale.ROOT, "<%04X> <", use.getValue()));
        map.append(hexadecimal(use.getKey().text())).append(">\n");
      }
      map.append("endbfchar\n");
    }
    return map.append("endcmap\nCMapName currentdict /CMap defineresource pop\nend\nend\n")
        .toString();
  }

  /** UTF-16 as hexadecimal digits. */
  static String hexadecimal(String text) {
    var digits = new StringBuilder(4 * text.length());
    text.chars().forEach(unit -> digits.append(String.format(Locale.ROOT, "%04X", unit)));
    return digits.toString();
  }

  /** Six letters by what the subset holds. */
  private static String tag(Set<Integer> glyphs) {
    var sum = new CRC32();
    sum.update(glyphs.toString().getBytes(StandardCharsets.US_ASCII));
    long rest = sum.getValue();
    var letters = new StringBuilder();
    for (int i = 0; i < LETTERS_OF_TAG; i++) {
      letters.append((char) ('A' + rest % 26));
      rest /= 26;
    }
    return letters.toString();
  }

  private static COSStream stream(PDDocument document, byte[] bytes) throws IOException {
    COSStream stream = document.getDocument().createCOSStream();
    try (OutputStream out = stream.createOutputStream(COSName.FLATE_DECODE)) {
      out.write(bytes);
    }
    return stream;
  }

  @Override
  public void close() throws IOException {
    font.close();
  }
}
