package lodeswing.render.png;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.HashMap;
import java.util.Map;
import java.util.zip.CRC32;
import java.util.zip.Deflater;

/**
 * Writes pixels as a PNG file, fast: with a colour table where 256 colours do, else in true colour,
 * rows unfiltered, lightly deflated.
 *
 * <p>Source: W3C, Portable Network Graphics (PNG) Specification, third edition: 5.2 (signature),
 * 11.2.1 to 11.2.4 (IHDR, PLTE, IDAT, IEND), 5.5 (check sums). The same pixels give the same bytes
 * on the same Java version.
 */
public final class RasterWriter {

  private static final byte[] SIGNATURE = {(byte) 0x89, 'P', 'N', 'G', '\r', '\n', 0x1A, '\n'};
  private static final int TRUE_COLOUR = 2;
  private static final int TABLE = 3;
  private static final int MOST_IN_TABLE = 256;

  /** Beyond this level the files hardly shrink and the time doubles. */
  private static final int LEVEL = 3;

  private RasterWriter() {}

  /**
   * The bytes of a PNG file.
   *
   * @param pixels row by row from the top, red highest of 24 bits
   * @param width columns
   * @param height rows
   */
  public static byte[] write(int[] pixels, int width, int height) {
    if (pixels.length != width * height || width < 1) {
      throw new IllegalArgumentException("a picture has one value a pixel");
    }
    int[] table = new int[MOST_IN_TABLE];
    byte[] indexed = new byte[height * (width + 1)];
    int colours = index(pixels, width, table, indexed);
    boolean fits = colours <= MOST_IN_TABLE;
    var out = new ByteArrayOutputStream(pixels.length / 2 + 1024);
    out.writeBytes(SIGNATURE);
    ByteBuffer header = ByteBuffer.allocate(13).putInt(width).putInt(height);
    header.put((byte) 8).put((byte) (fits ? TABLE : TRUE_COLOUR));
    chunk(out, "IHDR", header.array(), 13);
    if (fits) {
      ByteBuffer entries = ByteBuffer.allocate(3 * colours);
      for (int i = 0; i < colours; i++) {
        put(entries, table[i]);
      }
      chunk(out, "PLTE", entries.array(), 3 * colours);
    }
    byte[] rows = fits ? indexed : trueColour(pixels, width);
    deflated(out, rows);
    chunk(out, "IEND", new byte[0], 0);
    return out.toByteArray();
  }

  /** Numbers the colours in the order they come; returns how many, or one more than fit. */
  private static int index(int[] pixels, int width, int[] table, byte[] rows) {
    Map<Integer, Integer> known = new HashMap<>();
    int last = -1;
    int number = 0;
    int place = 0;
    for (int i = 0; i < pixels.length; i++) {
      if (i % width == 0) {
        place++;
      }
      if (pixels[i] != last) {
        last = pixels[i];
        Integer found = known.get(last);
        if (found == null) {
          found = known.size();
          if (found == MOST_IN_TABLE) {
            return MOST_IN_TABLE + 1;
          }
          known.put(last, found);
          table[found] = last;
        }
        number = found;
      }
      rows[place++] = (byte) number;
    }
    return known.size();
  }

  private static byte[] trueColour(int[] pixels, int width) {
    ByteBuffer rows = ByteBuffer.allocate(3 * pixels.length + pixels.length / width);
    for (int i = 0; i < pixels.length; i++) {
      if (i % width == 0) {
        rows.put((byte) 0);
      }
      put(rows, pixels[i]);
    }
    return rows.array();
  }

  private static void put(ByteBuffer out, int colour) {
    out.put((byte) (colour >> 16)).put((byte) (colour >> 8)).put((byte) colour);
  }

  private static void deflated(ByteArrayOutputStream out, byte[] rows) {
    Deflater deflater = new Deflater(LEVEL);
    try {
      deflater.setInput(rows);
      deflater.finish();
      byte[] data = new byte[rows.length + rows.length / 1000 + 64];
      int length = 0;
      while (!deflater.finished()) {
        length += deflater.deflate(data, length, data.length - length);
      }
      chunk(out, "IDAT", data, length);
    } finally {
      deflater.end();
    }
  }

  private static void chunk(ByteArrayOutputStream out, String type, byte[] data, int length) {
    byte[] name = type.getBytes(StandardCharsets.US_ASCII);
    CRC32 sum = new CRC32();
    sum.update(name);
    sum.update(data, 0, length);
    out.writeBytes(ByteBuffer.allocate(4).putInt(length).array());
    out.writeBytes(name);
    out.write(data, 0, length);
    out.writeBytes(ByteBuffer.allocate(4).putInt((int) sum.getValue()).array());
  }
}
