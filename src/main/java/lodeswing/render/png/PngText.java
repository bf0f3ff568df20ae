package lodeswing.render.png;

import java.io.ByteArrayOutputStream;
import java.nio.ByteBuffer;
import java.nio.charset.StandardCharsets;
import java.util.zip.CRC32;
import lodeswing.figure.AlternativeText;

/**
 * Puts texts into a PNG file as uncompressed iTXt chunks behind its header chunk, and the size of a
 * pixel (W3C, Portable Network Graphics, third edition, 11.3.4.3).
 */
final class PngText {
  /** Signature, and the header chunk with its length, type, 13 bytes of data and check sum. */
  private static final int BEHIND_HEADER = 8 + 4 + 4 + 13 + 4;

  private PngText() {}

  static byte[] added(byte[] png, AlternativeText text) {
    ByteArrayOutputStream out = new ByteArrayOutputStream(png.length + 2048);
    out.write(png, 0, BEHIND_HEADER);
    out.writeBytes(chunk("Title", text.language(), text.title()));
    out.writeBytes(chunk("Description", text.language(), text.description()));
    out.write(png, BEHIND_HEADER, png.length - BEHIND_HEADER);
    return out.toByteArray();
  }

  /**
   * The file with the size of its pixels, so that it prints in true scale.
   *
   * @param pixel side of a pixel [m]
   */
  static byte[] sized(byte[] png, double pixel) {
    int perMetre = (int) Math.rint(1 / pixel);
    byte[] body =
        ByteBuffer.allocate(13)
            .put("pHYs".getBytes(StandardCharsets.US_ASCII))
            .putInt(perMetre)
            .putInt(perMetre)
            .put((byte) 1) // the unit is the metre
            .array();
    ByteArrayOutputStream out = new ByteArrayOutputStream(png.length + 32);
    out.write(png, 0, BEHIND_HEADER);
    out.writeBytes(framed(body));
    out.write(png, BEHIND_HEADER, png.length - BEHIND_HEADER);
    return out.toByteArray();
  }

  private static byte[] chunk(String keyword, String language, String text) {
    ByteArrayOutputStream data = new ByteArrayOutputStream();
    data.writeBytes("iTXt".getBytes(StandardCharsets.US_ASCII));
    data.writeBytes(keyword.getBytes(StandardCharsets.ISO_8859_1));
    data.writeBytes(new byte[3]); // end of keyword, not compressed, compression method 0
    data.writeBytes(language.getBytes(StandardCharsets.US_ASCII));
    data.writeBytes(new byte[2]); // end of language, empty translated keyword
    data.writeBytes(text.getBytes(StandardCharsets.UTF_8));
    return framed(data.toByteArray());
  }

  /** A chunk from its type and data. */
  private static byte[] framed(byte[] body) {
    CRC32 sum = new CRC32();
    sum.update(body);
    return ByteBuffer.allocate(body.length + 8)
        .putInt(body.length - 4)
        .put(body)
        .putInt((int) sum.getValue())
        .array();
  }
}
